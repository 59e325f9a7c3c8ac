package baywright.share;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that both sides changed, each in its own way. Nobody but a person can say which is right.
 *
 * @param declaration what it is in, such as {@code stage iron-removal}; for what is no declaration the name of its file
 * @param path        from there inwards, such as {@code time}, {@code attended per m2}; empty: the declaration as a whole
 * @param kind        what happened
 * @param before      what both began from; empty: it was not there
 * @param ours        what this site has made of it; empty: it was taken out
 * @param theirs      what the other side has made of it; empty: it was taken out
 * @param decided     whose is in the result; empty: nobody has decided, ours is
 */
public record Clash(
        String declaration,
        List<String> path,
        Kind kind,
        Optional<Written> before,
        Optional<Written> ours,
        Optional<Written> theirs,
        Optional<Side> decided) {

    /** Ours or theirs. */
    public enum Side {
        OURS,
        THEIRS;

        /** As it is written in a command. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** How it came to be. */
    public enum Kind {
        /** Both changed it. */
        CHANGED,
        /** Both changed the comment beside it. */
        COMMENT,
        /** Both added one. */
        ADDED,
        /** We took out what they changed. */
        TAKEN_OUT_HERE,
        /** They took out what we changed. */
        TAKEN_OUT_THERE
    }

    /**
     * A text where it stands.
     *
     * @param file below the folder of the scripts
     * @param text as written
     */
    public record Written(String file, String text) {}

    public Clash {
        path = List.copyOf(path);
    }

    /** A name of its own within a merge: the declaration and the way inwards, parted by {@code /}. */
    public String name() {
        return path.isEmpty() ? declaration : declaration + "/" + String.join("/", path);
    }

    /** Whether it is what a name means, or lies inside of it. */
    public boolean isIn(String name) {
        return name().equals(name) || name().startsWith(name + "/");
    }
}
