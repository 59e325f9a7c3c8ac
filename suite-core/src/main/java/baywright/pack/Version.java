package baywright.pack;

import java.util.regex.Pattern;
import org.semver4j.Semver;
import org.semver4j.SemverException;

/**
 * A version by Semantic Versioning 2.0.0 (semver.org), in its exact spelling. Two versions that differ in build metadata alone are of
 * the same precedence and still not equal.
 */
public final class Version implements Comparable<Version> {

    static final int LONGEST = 64;

    /** The library reckons with 32-bit numbers, and with 64-bit ones in a prerelease. */
    private static final Pattern LONG_NUMBER = Pattern.compile("[^+]*\\d{10}.*");

    private final Semver semver;

    private Version(Semver semver) {
        this.semver = semver;
    }

    /**
     * Reads a version such as {@code 1.4.0} or {@code 2.0.0-rc.1}.
     *
     * @throws IllegalArgumentException when the text is none, is longer than {@value #LONGEST} characters or has ten digits in a row
     *     before the build metadata
     */
    public static Version of(String text) {
        return new Version(semver(text));
    }

    private static Semver semver(String text) {
        if (text.length() <= LONGEST && !LONG_NUMBER.matcher(text).matches()) {
            try {
                Semver semver = new Semver(text);
                if (semver.getVersion().equals(text)) {
                    return semver;
                }
            } catch (SemverException e) {
                throw new IllegalArgumentException(text + " is no version", e);
            }
        }
        throw new IllegalArgumentException(text + " is no version");
    }

    /** Whether a text is a version. */
    public static boolean isVersion(String text) {
        try {
            return !semver(text).getVersion().isEmpty();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    Semver semver() {
        return semver;
    }

    /** The next one that mends: {@code 1.4.1} after {@code 1.4.0}, {@code 2.0.0} after {@code 2.0.0-rc.1}. */
    public Version nextPatch() {
        return new Version(semver.nextPatch());
    }

    /** Precedence by section 11 of the specification; build metadata plays no part. */
    @Override
    public int compareTo(Version other) {
        return semver.compareTo(other.semver);
    }

    /** Whether this one goes before the other by precedence. */
    public boolean isBefore(Version other) {
        return compareTo(other) < 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Version version && toString().equals(version.toString());
    }

    @Override
    public int hashCode() {
        return toString().hashCode();
    }

    @Override
    public String toString() {
        return semver.getVersion();
    }
}
