package baywright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which steps of interest to rules were done on which rows of one plan, and which are still to come. */
final class RuleHistory {

    private static final int NONE = -1;

    private final RuleBook book;
    private final VehicleIndex vehicle;
    private final List<CompiledStep> steps;
    private final int rows;
    private final int[][] lastOn;
    private final int[][] countOn;
    private final int[] lastAnywhere;
    private final int[] countAnywhere;
    private final List<Map<String, Integer>> lastInBay = new ArrayList<>();
    private final int[][] lastUseOn;
    private final int[] lastUseAnywhere;
    private final int[][][] comingOn;
    private final int[][] nextOn;
    private final int[][] coming;
    private final int[] next;

    RuleHistory(RuleBook book, VehicleIndex vehicle, List<CompiledStep> steps) {
        this.book = book;
        this.vehicle = vehicle;
        this.steps = steps;
        rows = vehicle.rows();
        int sets = book.stepSets();
        lastOn = filled(sets, rows);
        countOn = new int[sets][rows];
        lastAnywhere = new int[sets];
        Arrays.fill(lastAnywhere, NONE);
        countAnywhere = new int[sets];
        for (int s = 0; s < sets; s++) {
            lastInBay.add(new HashMap<>());
        }
        lastUseOn = filled(book.goods(), rows);
        lastUseAnywhere = new int[book.goods()];
        Arrays.fill(lastUseAnywhere, NONE);
        comingOn = new int[sets][][];
        coming = new int[sets][];
        nextOn = new int[sets][];
        next = new int[sets];
        if (book.looksAhead()) {
            lookAhead();
        }
    }

    private static int[][] filled(int sets, int rows) {
        int[][] all = new int[sets][rows];
        for (int[] one : all) {
            Arrays.fill(one, NONE);
        }
        return all;
    }

    private int[] rowsOf(CompiledStep step) {
        if (!step.vehicle()) {
            return step.rows();
        }
        int[] all = new int[rows];
        for (int row = 0; row < rows; row++) {
            all[row] = row;
        }
        return all;
    }

    private int[] setsOf(CompiledStep step) {
        return step.parts().isEmpty()
                ? new int[0]
                : step.stage().map(book::setsOf).orElse(new int[0]);
    }

    /** Lists the steps of each set once, on each row and altogether. */
    private void lookAhead() {
        int sets = book.stepSets();
        int[][] counts = new int[sets][rows];
        int[] all = new int[sets];
        for (CompiledStep step : steps) {
            for (int set : setsOf(step)) {
                all[set]++;
                for (int row : rowsOf(step)) {
                    counts[set][row]++;
                }
            }
        }
        for (int set = 0; set < sets; set++) {
            coming[set] = new int[all[set]];
            comingOn[set] = new int[rows][];
            nextOn[set] = new int[rows];
            for (int row = 0; row < rows; row++) {
                comingOn[set][row] = new int[counts[set][row]];
            }
        }
        Arrays.fill(all, 0);
        for (int i = 0; i < steps.size(); i++) {
            for (int set : setsOf(steps.get(i))) {
                coming[set][all[set]++] = i;
                for (int row : rowsOf(steps.get(i))) {
                    int[] on = comingOn[set][row];
                    on[on.length - counts[set][row]--] = i;
                }
            }
        }
    }

    /** Notes a step once it is done. */
    void done(int i, String bay) {
        CompiledStep step = steps.get(i);
        int[] sets = setsOf(step);
        if (sets.length > 0) {
            int[] on = rowsOf(step);
            for (int set : sets) {
                lastAnywhere[set] = i;
                countAnywhere[set]++;
                lastInBay.get(set).put(bay, i);
                for (int row : on) {
                    lastOn[set][row] = i;
                    countOn[set][row]++;
                }
            }
        }
        for (CompiledStep.Part part : step.parts()) {
            for (int what : book.goodsOf(part.terms())) {
                lastUseAnywhere[what] = i;
                for (int row : part.rows()) {
                    lastUseOn[what][row] = i;
                }
            }
        }
    }

    /** The last step of a set on a row, or -1. */
    int last(int set, int row) {
        return lastOn[set][row];
    }

    int lastAnywhere(int set) {
        return lastAnywhere[set];
    }

    int lastInBay(int set, String bay) {
        return lastInBay.get(set).getOrDefault(bay, NONE);
    }

    int count(int set, int row) {
        return countOn[set][row];
    }

    int countAnywhere(int set) {
        return countAnywhere[set];
    }

    int lastUse(int what, int row) {
        return lastUseOn[what][row];
    }

    int lastUseAnywhere(int what) {
        return lastUseAnywhere[what];
    }

    /** The first step of a set on a row that comes after a step, or -1. */
    int next(int set, int row, int after) {
        int[] on = comingOn[set][row];
        int at = nextOn[set][row];
        while (at < on.length && on[at] <= after) {
            at++;
        }
        nextOn[set][row] = at;
        return at < on.length ? on[at] : NONE;
    }

    int nextAnywhere(int set, int after) {
        int[] all = coming[set];
        int at = next[set];
        while (at < all.length && all[at] <= after) {
            at++;
        }
        next[set] = at;
        return at < all.length ? all[at] : NONE;
    }

    VehicleIndex vehicle() {
        return vehicle;
    }

    CompiledStep step(int i) {
        return steps.get(i);
    }
}
