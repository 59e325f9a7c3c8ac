package baywright.schedule;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Makes a timetable better until it is proved that it cannot be, the effort is spent or somebody says stop. */
public final class Improver {

    private static final int FIRST_LIMIT = 200;

    private final Project project;
    private final long seed;
    private final long effort;
    private final BooleanSupplier stop;
    private final Consumer<Improvement> better;
    private Optional<Timetable> best;
    private long lowerBound;
    private Model model;
    private Search search;

    private Improver(
            Project project,
            Optional<Timetable> first,
            long seed,
            long effort,
            BooleanSupplier stop,
            Consumer<Improvement> better) {
        this.project = project;
        this.seed = seed;
        this.effort = effort;
        this.stop = stop;
        this.better = better;
        best = first;
    }

    /**
     * Improves a timetable. With the same seed and no stop before the effort is spent the result is the same each time.
     *
     * @param first  where to begin, if there is one
     * @param seed   which of equal ways are tried first
     * @param effort contradictions to meet at most, above 0
     * @param stop   asked often from the same thread; once true the best so far is given back
     * @param better told of each better timetable, from the same thread
     */
    public static Improvement improve(
            Project project,
            Optional<Timetable> first,
            long seed,
            long effort,
            BooleanSupplier stop,
            Consumer<Improvement> better) {
        return new Improver(project, first, seed, effort, stop, better).run();
    }

    private Improvement run() {
        model = new Model(project);
        if (!model.bounds.begin()) {
            return new Improvement(Optional.empty(), 0, true, 0);
        }
        search = new Search(model, seed, stop);
        best.ifPresent(search::follow);
        lowerBound = model.bounds.least(model.goal);
        int round = 0;
        while (!done()) {
            long limit = FIRST_LIMIT * (long) luby(round + 1);
            boolean inOrder = best.isEmpty() ? round % 4 != 3 : round % 8 == 5;
            boolean fromBelow = best.isPresent() && round % 3 == 2;
            attempt(fromBelow ? lowerBound : most(), limit, inOrder);
            round++;
        }
        boolean none = best.isEmpty() && lowerBound > model.bounds.most(model.goal);
        return state(none);
    }

    private long most() {
        return best.map(t -> t.goal() - 1).orElse((long) Integer.MAX_VALUE / 2);
    }

    private boolean done() {
        boolean proved = best.map(t -> t.goal() <= lowerBound).orElse(lowerBound > Integer.MAX_VALUE / 2);
        return proved || model.bounds.conflicts() >= effort || stop.getAsBoolean();
    }

    private void attempt(long most, long limit, boolean inOrder) {
        switch (search.run(most, Math.min(limit, effort - model.bounds.conflicts()), inOrder)) {
            case FOUND -> {
                best = search.found();
                better.accept(state(false));
            }
            case NONE -> lowerBound = Math.max(lowerBound, most + 1);
            case LIMIT -> lowerBound = Math.max(lowerBound, model.bounds.rootLeast(model.goal));
        }
    }

    private Improvement state(boolean none) {
        long bound = best.map(t -> Math.min(lowerBound, t.goal())).orElse(lowerBound);
        return new Improvement(best, bound, none, model.bounds.conflicts());
    }

    /** 1 1 2 1 1 2 4 …: M. Luby, A. Sinclair, D. Zuckerman, Information Processing Letters 47 (1993) 173-180. */
    private static int luby(int i) {
        int k = 1;
        while ((1 << k) - 1 < i) {
            k++;
        }
        return (1 << k) - 1 == i ? 1 << (k - 1) : luby(i - (1 << (k - 1)) + 1);
    }
}
