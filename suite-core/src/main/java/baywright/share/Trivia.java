package baywright.share;

import java.util.Optional;

/** Merges what stands between statements: comments are never lost, blanks never clash. */
final class Trivia {

    private Trivia() {}

    /** The merged text; empty when both sides wrote another comment. */
    static Optional<String> merge(String base, String ours, String theirs) {
        if (ours.equals(theirs) || base.equals(theirs)) {
            return Optional.of(ours);
        }
        if (base.equals(ours)) {
            return Optional.of(theirs);
        }
        String was = said(base);
        String our = said(ours);
        String their = said(theirs);
        if (our.equals(their)) {
            return Optional.of(shorter(ours, theirs));
        }
        return was.equals(our) ? Optional.of(theirs) : was.equals(their) ? Optional.of(ours) : Optional.empty();
    }

    private static String said(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private static String shorter(String one, String other) {
        int by = Integer.compare(one.length(), other.length());
        return by < 0 || (by == 0 && one.compareTo(other) < 0) ? one : other;
    }
}
