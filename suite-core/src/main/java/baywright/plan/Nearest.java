package baywright.plan;

import java.util.Collection;

/** Finds the id that a mistyped one most likely meant. */
final class Nearest {

    private Nearest() {}

    /** The closest of the known ids, by letters changed, added or dropped; empty when none is near. */
    static String to(String met, Collection<String> known) {
        String best = "";
        int least = Math.max(2, met.length() / 3) + 1;
        for (String id : known) {
            if (Math.abs(id.length() - met.length()) >= least) {
                continue;
            }
            int distance = distance(met, id);
            if (distance < least || (distance == least && !best.isEmpty() && id.compareTo(best) < 0)) {
                least = distance;
                best = id;
            }
        }
        return best;
    }

    private static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, Math.min(above[j], row[j - 1]) + 1);
            }
            int[] swap = above;
            above = row;
            row = swap;
        }
        return above[b.length()];
    }
}
