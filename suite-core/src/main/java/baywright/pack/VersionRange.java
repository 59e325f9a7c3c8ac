package baywright.pack;

import java.util.Arrays;
import java.util.List;

/**
 * Which versions will do: one to {@value #MOST} conditions with single blanks between them, all of which must hold. A condition is a
 * version with one of {@code >=}, {@code >}, {@code <=}, {@code <}, {@code =}, {@code ^} (up to the next that may break) or {@code ~}
 * (up to the next minor one) before it, or a version alone, which means itself. A prerelease will do only where a condition names a
 * prerelease of the same three numbers.
 *
 * @param text as it was written, such as {@code >=1.2.0 <2.0.0}
 */
public record VersionRange(String text) {

    static final int MOST = 4;

    private static final List<String> SIGNS = List.of(">=", "<=", ">", "<", "=", "^", "~");

    /** What a range is, in words for a message. */
    static final String A_RANGE = "conditions such as \">=1.2.0 <2.0.0\" or \"^1.2.0\"";

    /** @throws IllegalArgumentException when the text is none */
    public VersionRange {
        if (!isRange(text)) {
            throw new IllegalArgumentException(text + " is no range of versions");
        }
    }

    /** Whether a text is a range. */
    public static boolean isRange(String text) {
        String[] conditions = text.split(" ", -1);
        return conditions.length <= MOST
                && Arrays.stream(conditions).map(VersionRange::unsigned).allMatch(Version::isVersion);
    }

    private static String unsigned(String condition) {
        return SIGNS.stream()
                .filter(condition::startsWith)
                .findFirst()
                .map(sign -> condition.substring(sign.length()))
                .orElse(condition);
    }

    /** Whether a version will do. */
    public boolean holds(Version version) {
        return version.semver().satisfies(text);
    }

    @Override
    public String toString() {
        return text;
    }
}
