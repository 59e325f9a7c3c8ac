package baywright.schedule;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** Looks for a timetable whose goal is not above a bound, or for the proof that there is none. */
final class Search {

    /** How it ended. */
    enum End {
        FOUND,
        NONE,
        LIMIT
    }

    private static final int KEPT = 4000;

    private final Model model;
    private final Bounds bounds;
    private final BooleanSupplier stop;
    private final int[] phase;
    private final int[] decided;
    private final boolean[] choice;
    private int kept = KEPT;
    private Timetable found;

    Search(Model model, long seed, BooleanSupplier stop) {
        this.model = model;
        bounds = model.bounds;
        this.stop = stop;
        int most = 0;
        Bounds.Ints all = new Bounds.Ints();
        for (int i = 0; i < model.starts.length; i++) {
            all.add(model.starts[i]);
            most = Math.max(most, model.starts[i]);
            for (int[] choice : model.choices[i]) {
                for (int variable : choice) {
                    all.add(variable);
                    most = Math.max(most, variable);
                }
            }
        }
        for (int[] choice : model.holdChoices) {
            for (int variable : choice) {
                all.add(variable);
                most = Math.max(most, variable);
            }
        }
        decided = all.toArray();
        phase = new int[most + 1];
        java.util.Arrays.fill(phase, Integer.MIN_VALUE);
        choice = new boolean[most + 1];
        for (int variable : decided) {
            choice[variable] = true;
        }
        for (int variable : model.starts) {
            choice[variable] = false;
        }
        SplittableRandom random = new SplittableRandom(seed);
        for (int variable : decided) {
            bounds.favour(variable, random.nextDouble());
        }
    }

    Optional<Timetable> found() {
        return Optional.ofNullable(found);
    }

    void follow(Timetable timetable) {
        model.remember(timetable, phase);
    }

    /**
     * Searches until so many contradictions were met.
     *
     * @param inOrder whether to guess in order of time, else by what was in the contradictions
     */
    End run(long most, long limit, boolean inOrder) {
        long end = bounds.conflicts() + limit;
        bounds.backTo(0);
        bounds.forget(kept);
        kept += kept / 400;
        while (true) {
            if (bounds.level() == 0) {
                if (bounds.least(model.goal) > most) {
                    return End.NONE;
                }
                if (bounds.most(model.goal) > most) {
                    if (!settle(bounds.guess(2 * model.goal + 1, (int) -most))) {
                        return End.NONE;
                    }
                    continue;
                }
            }
            if (bounds.conflicts() >= end || stop.getAsBoolean()) {
                bounds.backTo(0);
                return End.LIMIT;
            }
            int variable = inOrder ? firstInTime() : mostActive();
            if (variable < 0) {
                found = model.timetable();
                follow(found);
                bounds.backTo(0);
                return End.FOUND;
            }
            if (!settle(guess(variable, inOrder))) {
                return End.NONE;
            }
        }
    }

    private boolean settle(boolean sound) {
        return sound || bounds.learn();
    }

    private boolean guess(int variable, boolean early) {
        int least = bounds.least(variable);
        int most = bounds.most(variable);
        int wish = phase[variable];
        boolean known = wish >= least && wish <= most;
        if (choice[variable] && (early || !known)) {
            return bounds.guess(2 * variable, 1);
        }
        if (early || !known) {
            return bounds.guess(2 * variable + 1, -least);
        }
        return wish < most ? bounds.guess(2 * variable + 1, -wish) : bounds.guess(2 * variable, wish);
    }

    private int mostActive() {
        int best = -1;
        double activity = -1;
        for (int variable : decided) {
            if (!bounds.fixed(variable) && bounds.activityOf(variable) > activity) {
                activity = bounds.activityOf(variable);
                best = variable;
            }
        }
        return best;
    }

    private int firstInTime() {
        int best = -1;
        int bestLeast = Integer.MAX_VALUE;
        int bestMost = Integer.MAX_VALUE;
        for (int i = 0; i < model.starts.length; i++) {
            int variable = model.starts[i];
            int least = bounds.least(variable);
            int most = bounds.most(variable);
            boolean open = least < most || openChoice(model.choices[i]) >= 0;
            if (open && (least < bestLeast || (least == bestLeast && most < bestMost))) {
                best = i;
                bestLeast = least;
                bestMost = most;
            }
        }
        if (best < 0) {
            return openChoice(model.holdChoices);
        }
        return bounds.fixed(model.starts[best]) ? openChoice(model.choices[best]) : model.starts[best];
    }

    private int openChoice(int[][] choices) {
        for (int[] choice : choices) {
            for (int variable : choice) {
                if (!bounds.fixed(variable)) {
                    return variable;
                }
            }
        }
        return -1;
    }
}
