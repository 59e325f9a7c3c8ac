package baywright.bench;

import java.util.Locale;
import java.util.Optional;

/**
 * One line of the page.
 *
 * @param what     what was measured
 * @param measured what it came to, with its unit
 * @param baseline what it is held against, and what that came to in the same run
 * @param ratio    measured against the baseline; empty when there is none
 * @param budget   the most that it may be; empty when it is only told
 * @param held     whether it is within the budget; true when there is none
 */
record Figure(String what, String measured, String baseline, Optional<Double> ratio, String budget, boolean held) {

    /** A figure without a budget. */
    static Figure told(String what, String measured, String baseline, double ratio) {
        return new Figure(what, measured, baseline, Optional.of(ratio), "", true);
    }

    String row() {
        String by = ratio.map(r -> String.format(Locale.ROOT, "%.2f", r)).orElse("");
        String verdict = budget.isEmpty() ? "" : held ? "held" : "**over**";
        return String.join(" | ", "| " + what, measured, baseline, by, budget, verdict + " |");
    }

    static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.2f s", seconds);
    }

    static String milliseconds(double milliseconds) {
        return String.format(Locale.ROOT, milliseconds < 10 ? "%.2f ms" : "%.0f ms", milliseconds);
    }
}
