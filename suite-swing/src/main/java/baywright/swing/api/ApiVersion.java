package baywright.swing.api;

/**
 * Version of this package by semantic versioning: the major number changes when a plug-in of before may no longer work, the minor one
 * when there is something new to use.
 *
 * @param major from 0
 * @param minor from 0
 */
public record ApiVersion(int major, int minor) implements Comparable<ApiVersion> {

    /** What this suite offers. */
    public static final ApiVersion CURRENT = new ApiVersion(1, 0);

    public ApiVersion {
        if (major < 0 || minor < 0) {
            throw new IllegalArgumentException("a version counts from 0, got " + major + "." + minor);
        }
    }

    /** Whether a plug-in that was made for {@code wanted} works with this version. */
    public boolean serves(ApiVersion wanted) {
        return major == wanted.major && minor >= wanted.minor;
    }

    @Override
    public int compareTo(ApiVersion other) {
        return major == other.major ? Integer.compare(minor, other.minor) : Integer.compare(major, other.major);
    }

    @Override
    public String toString() {
        return major + "." + minor;
    }
}
