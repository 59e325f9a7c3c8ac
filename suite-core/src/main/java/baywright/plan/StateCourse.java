package baywright.plan;

import baywright.plan.Explanation.Change;
import baywright.plan.Explanation.Moment;
import baywright.plan.Explanation.Strip;
import baywright.plan.Explanation.Way;
import baywright.script.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The states of a zone along a plan as a table: a row for each state that it has at any time, a cell for each step.
 *
 * @param zone  its id
 * @param steps ids of the plan's steps in order
 * @param rows  found states first, then in the order in which they first come or go
 */
public record StateCourse(String zone, List<String> steps, List<Row> rows) {

    public StateCourse {
        steps = List.copyOf(steps);
        rows = List.copyOf(rows);
    }

    /** What becomes of a state while a step is done. */
    public enum Mark {
        /** It does not hold, before or after. */
        ABSENT,
        /** It holds before and after. */
        HELD,
        /** It comes. */
        SET,
        /** It goes. */
        CLEARED,
        /** It comes and goes again, or goes and comes. */
        BRIEF
    }

    /**
     * A state at a step.
     *
     * @param mark   what becomes of it
     * @param itself whether the last change comes by itself as time passes
     * @param place  the line of the library that says the last change; empty without one
     */
    public record Cell(Mark mark, boolean itself, Optional<Place> place) {
        static final Cell ABSENT = new Cell(Mark.ABSENT, false, Optional.empty());
        static final Cell HELD = new Cell(Mark.HELD, false, Optional.empty());
    }

    /**
     * A state along the plan.
     *
     * @param state its id
     * @param found whether it held when the vehicle came
     * @param cells one for each step
     */
    public record Row(String state, boolean found, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** Whether it holds when all is done. */
        public boolean lasts() {
            boolean holds = found;
            for (Cell cell : cells) {
                holds = switch (cell.mark()) {
                    case SET, HELD -> true;
                    case CLEARED, ABSENT -> false;
                    case BRIEF -> holds;
                };
            }
            return holds;
        }
    }

    /** The table of a strip of the explanation of this plan. */
    public static StateCourse of(Strip strip, Plan plan) {
        Map<String, List<Cell>> cells = new LinkedHashMap<>();
        Map<String, Boolean> holds = new LinkedHashMap<>();
        strip.found().forEach(state -> holds.put(state, true));
        strip.moments().stream().flatMap(m -> m.changes().stream()).forEach(c -> holds.putIfAbsent(c.state(), false));
        holds.keySet().forEach(state -> cells.put(state, new ArrayList<>()));
        int next = 0;
        for (Step step : plan.steps()) {
            Map<String, List<Change>> changes = new LinkedHashMap<>();
            Map<Change, Boolean> itself = new LinkedHashMap<>();
            while (next < strip.moments().size()
                    && strip.moments().get(next).step().equals(step.id())) {
                Moment moment = strip.moments().get(next++);
                for (Change change : moment.changes()) {
                    changes.computeIfAbsent(change.state(), s -> new ArrayList<>())
                            .add(change);
                    itself.put(change, moment.way() == Way.ITSELF);
                }
            }
            cells.forEach((state, row) -> {
                boolean held = holds.get(state);
                List<Change> here = changes.getOrDefault(state, List.of());
                if (here.isEmpty()) {
                    row.add(held ? Cell.HELD : Cell.ABSENT);
                    return;
                }
                Change last = here.get(here.size() - 1);
                holds.put(state, last.comes());
                row.add(new Cell(mark(held, last.comes()), itself.get(last), last.place()));
            });
        }
        List<Row> rows = new ArrayList<>();
        cells.forEach((state, row) -> rows.add(new Row(state, strip.found().contains(state), row)));
        return new StateCourse(strip.zone(), plan.steps().stream().map(Step::id).toList(), rows);
    }

    private static Mark mark(boolean held, boolean holds) {
        if (held == holds) {
            return Mark.BRIEF;
        }
        return holds ? Mark.SET : Mark.CLEARED;
    }
}
