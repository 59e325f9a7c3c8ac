package baywright.script;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Finds the known name that a mistyped one most likely meant. */
public final class Nearest {

    private static final int FEW = 16;

    private Nearest() {}

    /**
     * The candidate with the fewest edits (insert, drop, change, swap of neighbours), if they are few enough: one for up
     * to four letters, two for up to eight, else three. Of equally near ones the first in the alphabet. Failing that
     * the only one that is a longer or shorter form of it.
     */
    public static Optional<String> to(String met, Collection<String> candidates) {
        int allowed = met.length() <= 4 ? 1 : met.length() <= 8 ? 2 : 3;
        String best = null;
        int least = allowed + 1;
        for (String candidate : candidates.stream().sorted().toList()) {
            if (Math.abs(candidate.length() - met.length()) >= least) {
                continue;
            }
            int edits = edits(met, candidate);
            if (edits < least && edits < Math.max(met.length(), candidate.length())) {
                least = edits;
                best = candidate;
            }
        }
        return best != null ? Optional.of(best) : begun(met, candidates);
    }

    /** The only candidate that begins like the met name, or with which it begins, by at least four letters. */
    private static Optional<String> begun(String met, Collection<String> candidates) {
        List<String> found = candidates.stream()
                .filter(c -> Math.min(c.length(), met.length()) >= 4 && (c.startsWith(met) || met.startsWith(c)))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** Words for the end of a message: {@code ; nearest is 'washed'}, or nothing. */
    public static String hint(String met, Collection<String> candidates) {
        return to(met, candidates).map(n -> "; nearest is '" + n + "'").orElse("");
    }

    /** The same; where nothing is near and there are few, all of them. */
    public static String hintOrAll(String met, Collection<String> candidates) {
        String hint = hint(met, candidates);
        if (!hint.isEmpty() || candidates.isEmpty() || candidates.size() > FEW) {
            return hint;
        }
        return (candidates.size() == 1 ? "; there is '" : "; there are '")
                + String.join("', '", new TreeSet<>(candidates)) + "'";
    }

    /** Optimal string alignment distance (Damerau, CACM 7 (1964) 171, with each part edited once). */
    public static int edits(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] now = new int[b.length() + 1];
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(Math.min(now[j - 1] + 1, last[j] + 1), last[j - 1] + change);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    now[j] = Math.min(now[j], before[j - 2] + 1);
                }
            }
            before = last;
            last = now;
        }
        return last[b.length()];
    }
}
