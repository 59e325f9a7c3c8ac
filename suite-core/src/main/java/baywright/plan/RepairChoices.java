package baywright.plan;

import baywright.library.Rule.Reach;
import baywright.library.Stage;
import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.RepairChoice.Kind;
import baywright.plan.RepairChoice.Use;
import baywright.plan.RepairDemand.Cell;
import baywright.plan.RepairEffects.Effect;
import baywright.plan.RuleBook.Question;
import baywright.script.Value;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * All edits that can have a part in answering one demand: every repair contains one of them, or widens a step that an
 * edit has made. Why the list for a needed state y of step i on a row is complete: take a repair that leaves i and its
 * need. In the repaired plan some last writer of y before i sets it. It is (a) an inserted step: an insertion of a stage
 * that sets y; (b) a step of the plan that did not set y on the row: a change of its zones or inputs; (c) a step of the
 * plan that did, and stood after i: it or i is moved; or stood before i: then the last clearer c after it is moved,
 * dropped, changed or shielded, or the setter comes behind c, or i is moved. If neither c nor i is touched, (a) to (c)
 * happen between c and i, so those edits need no other place. When nothing in the plan sets y and the survey did not
 * find it, only (a) and (b) are left, at any place. A refused state goes the same way with setter and clearer changed
 * over.
 *
 * <p>A rule forbids while the answers that decided it stay as they are; every edit of the plan that may change one of
 * them is in its list: of the step itself, of steps and goods that it asks for, of what makes or ends a state.
 *
 * <p>Kinds of edit that are not looked for: a stage that takes film, inserted to please a rule; a later start for one; an insertion or a longer step only to let time pass; more than one input of
 * a step changed at once; measures as inputs; a step of other work moved only to end a wait. For waits and starts: steps
 * between the two, or whose own wait holds those up, are moved or dropped; the later one, or one that ends what the
 * earlier one made (and the later one ends), is done in between; or starts are changed.
 */
final class RepairChoices {

    /** Which work may be left out. */
    enum Leave {
        NOTHING,
        OPTIONAL,
        ANYTHING
    }

    private static final int NOT_FOUND = -2;

    private final Prover prover;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final RepairEffects effects;
    private final RepairStages stages;

    RepairChoices(Prover prover, RepairStages stages) {
        this.prover = prover;
        this.stages = stages;
        states = prover.states();
        vehicle = prover.vehicle();
        effects = new RepairEffects(states, vehicle);
    }

    List<RepairChoice> of(RepairNode node, RepairDemand demand, Leave leave) {
        Sheet sheet = new Sheet(node, demand, leave);
        sheet.fill();
        return List.copyOf(sheet.choices);
    }

    /** The choices for one demand, as they are gathered. */
    private final class Sheet {
        private final RepairNode node;
        private final RepairDemand demand;
        private final Leave leave;
        private final int i;
        private final int n;
        private final List<RepairChoice> choices = new ArrayList<>();

        Sheet(RepairNode node, RepairDemand demand, Leave leave) {
            this.node = node;
            this.demand = demand;
            this.leave = leave;
            i = demand.step();
            n = node.steps.size();
        }

        void fill() {
            switch (demand.kind()) {
                case NEEDS -> {
                    demand.cells().forEach(c -> needs(c, i, 0));
                    remove();
                }
                case REFUSES -> {
                    demand.cells().forEach(this::refuses);
                    remove();
                }
                case TOO_LATE -> late();
                case TOO_SOON -> soon();
                case OVERLAPS -> overlaps();
                case BEFORE_START -> {
                    restart(i, Optional.empty());
                    restart(i, Optional.of(prover.setting().start()));
                    drop(i);
                }
                case NO_BAY -> {
                    inputs(
                            i,
                            c -> c.parts().stream()
                                    .noneMatch(
                                            p -> p.terms().terms.where().bay().equals(bay())));
                    drop(i);
                }
                case USE -> use();
                case RULE -> ruled();
            }
        }

        private String bay() {
            return node.steps.get(i).parts().get(0).terms().terms.where().bay();
        }

        // ---- states

        private void needs(Cell cell, int before, int depth) {
            if (cell.state() < 0 || states.isCondition(cell.state())) {
                return;
            }
            int setter = prover.surveyed().holds(cell.row(), cell.state()) ? Tracks.NOBODY : NOT_FOUND;
            int clearer = NOT_FOUND;
            boolean later = false;
            Effect[] all = effectsOn(cell);
            for (int j = 0; j < n; j++) {
                if (j < before && all[j] == Effect.SETS) {
                    setter = j;
                    clearer = NOT_FOUND;
                } else if (j < before && all[j] != Effect.NONE) {
                    clearer = j;
                }
                later |= j > before && all[j] == Effect.SETS;
            }
            if (setter == NOT_FOUND && !later) {
                insertSetters(cell, 0, n);
            } else if (setter == NOT_FOUND) {
                insertSetters(cell, 0, before);
                moveAll(all, Effect.SETS, 0, before);
                move(before, before + 2, n);
            } else if (clearer != NOT_FOUND) {
                insertSetters(cell, clearer + 1, before);
                moveAll(all, Effect.SETS, clearer + 1, before);
                move(before, 0, n);
                unclear(cell, clearer, all[clearer], depth);
            } else {
                insertSetters(cell, setter + 1, before);
                moveAll(all, Effect.SETS, setter + 1, before);
                hurry(Math.max(setter, 0), before);
            }
            widenAndChange(cell, all, Effect.SETS, stages.setters(cell.state()));
        }

        private void unclear(Cell cell, int clearer, Effect effect, int depth) {
            move(clearer, 0, n);
            drop(clearer);
            narrow(clearer, one(cell.row()));
            inputs(clearer, c -> effects.of(c, cell.row(), cell.state()) == Effect.NONE);
            if (depth == 0 && states.isZoneScope(cell.state()) && effect == Effect.MAY_CLEAR) {
                shields(clearer).forEach(s -> needs(new Cell(s, cell.row()), clearer, depth + 1));
            }
        }

        private Set<Integer> shields(int clearer) {
            Set<Integer> shields = new LinkedHashSet<>();
            for (Part part : node.steps.get(clearer).parts()) {
                for (Change change : part.terms().clears) {
                    for (long[] alternative : change.unless()) {
                        BitSet.valueOf(alternative).stream().forEach(shields::add);
                    }
                }
            }
            return shields;
        }

        private void refuses(Cell cell) {
            if (cell.state() < 0 || states.isCondition(cell.state())) {
                return;
            }
            Effect[] all = effectsOn(cell);
            int setter = Tracks.NOBODY;
            for (int j = 0; j < i; j++) {
                setter = all[j] == Effect.SETS ? j : setter;
            }
            insertClearers(cell, setter + 1, i);
            moveAll(all, Effect.CLEARS, setter + 1, i);
            moveAll(all, Effect.MAY_CLEAR, setter + 1, i);
            move(i, 0, n);
            if (setter >= 0) {
                move(setter, 0, n);
                drop(setter);
                narrow(setter, one(cell.row()));
                inputs(setter, c -> effects.of(c, cell.row(), cell.state()) != Effect.SETS);
            }
            restart(i, Optional.empty());
            widenAndChange(cell, all, Effect.CLEARS, stages.clearers(cell.state()));
        }

        private Effect[] effectsOn(Cell cell) {
            Effect[] all = new Effect[n];
            for (int j = 0; j < n; j++) {
                all[j] = effects.of(node.steps.get(j), cell.row(), cell.state());
            }
            return all;
        }

        private void insertSetters(Cell cell, int low, int high) {
            for (Use use : stages.setters(cell.state())) {
                insert(use, cell, Effect.SETS, low, high);
            }
        }

        private void insertClearers(Cell cell, int low, int high) {
            for (Use use : stages.clearers(cell.state())) {
                insert(use, cell, Effect.CLEARS, low, high);
            }
        }

        /** On the rows that lack it, else where the step works, else wherever the stage can do it. */
        private void insert(Use use, Cell cell, Effect wanted, int low, int high) {
            BitSet fitting = stages.rowsOf(use.stage());
            for (BitSet wish : List.of(demand.rows(), rowsOf(i), fitting)) {
                BitSet rows = (BitSet) wish.clone();
                rows.and(fitting);
                boolean does =
                        !rows.isEmpty() && effects.of(stages.compiled(use, rows), cell.row(), cell.state()) == wanted;
                if (does) {
                    insert(use, rows, low, high);
                    return;
                }
            }
        }

        private void insert(Use use, BitSet rows, int low, int high) {
            String serves = node.plan.steps().get(i).id();
            note(new RepairChoice(Kind.INSERT, serves, Optional.of(use), rows, low, high, Optional.empty(), false));
        }

        private void widenAndChange(Cell cell, Effect[] all, Effect wanted, List<Use> able) {
            Set<String> ables = new HashSet<>();
            able.forEach(use -> ables.add(use.stage()));
            for (int j = 0; j < n; j++) {
                if (all[j] == wanted || !ables.contains(node.plan.steps().get(j).stage())) {
                    continue;
                }
                if (effects.worksOn(node.steps.get(j), cell.row()) || !states.isZoneScope(cell.state())) {
                    inputs(j, c -> effects.of(c, cell.row(), cell.state()) == wanted);
                } else {
                    widen(j, cell, wanted);
                }
            }
        }

        private void widen(int j, Cell cell, Effect wanted) {
            Step step = node.plan.steps().get(j);
            BitSet more = (BitSet) demand.rows().clone();
            more.and(stages.rowsOf(step.stage()));
            more.andNot(rowsOf(j));
            if (!more.get(cell.row())) {
                return;
            }
            CompiledStep wider = prover.compile(Steps.withZones(step, widened(step, more)));
            if (effects.of(wider, cell.row(), cell.state()) == wanted) {
                Kind kind = node.open.contains(step.id()) ? Kind.WIDEN_OPEN : Kind.WIDEN;
                note(new RepairChoice(kind, step.id(), Optional.empty(), more, 0, 0, Optional.empty(), false));
            }
        }

        // ---- the step itself

        private void remove() {
            Condition condition = demand.condition().orElseThrow();
            inputs(i, c -> !asks(c, demand.row(), condition));
            narrow(i, demand.rows());
            drop(i);
        }

        private boolean asks(CompiledStep step, int row, Condition condition) {
            for (Part part : step.parts()) {
                boolean here = step.vehicle() || Arrays.binarySearch(part.rows(), row) >= 0;
                for (Condition other : part.terms().conditions) {
                    if (here
                            && !other.wish()
                            && other.need().absent() == condition.need().absent()
                            && other.need().anyOf().equals(condition.need().anyOf())) {
                        return true;
                    }
                }
            }
            return false;
        }

        private void use() {
            Reason reason = demand.problem().orElseThrow().reason();
            Step step = node.plan.steps().get(i);
            if (reason instanceof Reason.BadInput bad) {
                add(new Edit.ChangeInput(step.id(), bad.input(), Optional.empty()), Kind.CHANGE, false);
            } else if ((reason instanceof Reason.WrongSurface || reason instanceof Reason.ZoneUnknown)
                    && node.steps.get(i).rows().length > 0) {
                List<String> zones = stages.written(rowsOf(i));
                add(new Edit.ChangeZones(step.id(), zones), Kind.CHANGE, false);
            }
            drop(i);
        }

        // ---- waits and starts

        private void late() {
            int from = demand.after();
            int row = demand.row();
            Step step = node.plan.steps().get(i);
            BitSet own = (BitSet) demand.rows().clone();
            own.and(stages.rowsOf(step.stage()));
            if (!own.isEmpty()) {
                insert(new Use(step.stage(), step.with()), own, from + 1, i);
            }
            BitSet made = new BitSet();
            for (int state = 0; state < states.count(); state++) {
                if (!states.isCondition(state) && effects.of(node.steps.get(from), row, state) == Effect.SETS) {
                    made.set(state);
                }
            }
            BitSet ended = ended(made, i, row);
            BitSet end = ended.isEmpty() ? made : ended;
            end.stream().forEach(s -> insertClearers(new Cell(s, home(row, s)), from + 1, i));
            for (int j = 0; j < n; j++) {
                if ((j < from || j > i) && effects.worksOn(node.steps.get(j), row) && serves(j, row, end)) {
                    move(j, from + 1, i);
                }
            }
            hurry(from, i);
            restart(i, Optional.of(timeOf(demand.ticks(), RoundingMode.FLOOR)));
            narrow(i, demand.rows());
            drop(i);
            drop(from);
        }

        private int home(int row, int state) {
            return states.isZoneScope(state) ? row : vehicle.vehicle();
        }

        /** Whether a step ends something of what was made, or is the late step's stage once more. */
        private boolean serves(int j, int row, BitSet made) {
            boolean same = node.plan
                    .steps()
                    .get(j)
                    .stage()
                    .equals(node.plan.steps().get(i).stage());
            return same || !ended(made, j, row).isEmpty();
        }

        private BitSet ended(BitSet made, int j, int row) {
            BitSet ended = new BitSet();
            made.stream()
                    .filter(s -> effects.of(node.steps.get(j), home(row, s), s) == Effect.CLEARS)
                    .forEach(ended::set);
            return ended;
        }

        /** Less time between two steps: what is between them, or still stands from before and holds one of those up. */
        private void hurry(int from, int to) {
            move(to, 0, n);
            restart(to, Optional.empty());
            for (int j = 0; j < from; j++) {
                if (holdsUp(j, node.walk().ends[from])) {
                    move(j, 0, n);
                    drop(j);
                }
            }
            for (int j = from; j < to; j++) {
                move(j, 0, n);
                restart(j, Optional.empty());
                if (j > from) {
                    drop(j);
                }
            }
        }

        private boolean holdsUp(int j, long after) {
            long wait = 0;
            for (Part part : node.steps.get(j).parts()) {
                wait = Math.max(wait, part.terms().usualWait);
                for (Change change : part.terms().sets) {
                    wait = Math.max(wait, change.after());
                }
            }
            return wait > 0 && node.walk().ends[j] + wait > after;
        }

        private void soon() {
            restart(i, Optional.of(timeOf(demand.ticks(), RoundingMode.CEILING)));
            restart(i, Optional.empty());
            restart(demand.after(), Optional.empty());
            move(i, 0, n);
            move(demand.after(), 0, n);
            drop(i);
            drop(demand.after());
        }

        private void overlaps() {
            restart(i, Optional.of(timeOf(demand.ticks(), RoundingMode.CEILING)));
            restart(i, Optional.empty());
            move(i, 0, n);
            for (int j = 0; j < i; j++) {
                restart(j, Optional.empty());
                move(j, 0, n);
                drop(j);
            }
            drop(i);
        }

        private LocalDateTime timeOf(long ticks, RoundingMode rounding) {
            long minutes = Ticks.minutes(ticks).setScale(0, rounding).longValue();
            return prover.setting().start().plusMinutes(minutes);
        }

        // ---- rules

        /** What may change one of the answers that decided it; while they all stay, the rule forbids. */
        private void ruled() {
            demand.rule().orElseThrow().asked().forEach(this::answerOtherwise);
            narrow(i, demand.rows());
            drop(i);
        }

        private void answerOtherwise(Question question) {
            switch (question.kind()) {
                case FOUND, SURVEYED, SETTING -> {}
                case HOLDS, SINCE_SET -> state(question.index(), question.reach());
                case SINCE, COUNT, LAST, LAST_INPUT -> stages(question, 0, i);
                case NEXT, LATER -> stages(question, i + 1, n);
                case INPUT, USES -> inputs(i, c -> true);
                case USED_SINCE -> {
                    users(question.index());
                    state(states.of(question.name()), question.reach());
                }
                case SINCE_USE -> users(question.index());
                case NAMED -> named(question.name());
            }
        }

        private void state(int state, Reach reach) {
            for (int plain : states.parts(state)) {
                if (!states.isCondition(plain)) {
                    for (int row : rowsAsked(reach, plain)) {
                        state(new Cell(plain, row));
                    }
                }
            }
            move(i, 0, n);
            restart(i, Optional.empty());
        }

        private int[] rowsAsked(Reach reach, int state) {
            int row = demand.row();
            if (!states.isZoneScope(state)) {
                return vehicle.whole();
            }
            if (row == vehicle.vehicle() || reach == Reach.ANYWHERE) {
                return vehicle.real();
            }
            return reach == Reach.NEAR ? vehicle.near(row) : new int[] {row};
        }

        private void state(Cell cell) {
            Effect[] all = effectsOn(cell);
            insertSetters(cell, 0, i);
            insertClearers(cell, 0, i);
            for (int j = 0; j < n; j++) {
                if (all[j] != Effect.NONE && j != i) {
                    Effect now = all[j];
                    move(j, 0, n);
                    drop(j);
                    narrow(j, one(cell.row()));
                    inputs(j, c -> effects.of(c, cell.row(), cell.state()) != now);
                }
            }
            widenAndChange(cell, all, Effect.SETS, stages.setters(cell.state()));
            widenAndChange(cell, all, Effect.CLEARS, stages.clearers(cell.state()));
        }

        private void stages(Question question, int low, int high) {
            Set<String> asked = prover.rules().stagesOf(question.index());
            for (String stage : asked) {
                BitSet rows = (BitSet) demand.rows().clone();
                rows.and(stages.rowsOf(stage));
                BitSet there = rows.isEmpty() ? stages.rowsOf(stage) : rows;
                if (!there.isEmpty() && !abrades(stage)) {
                    insert(new Use(stage, Map.of()), there, low, high);
                }
            }
            for (int j = 0; j < n; j++) {
                if (j != i && asked.contains(node.plan.steps().get(j).stage())) {
                    other(j);
                    widen(j);
                }
            }
            move(i, 0, n);
            restart(i, Optional.empty());
        }

        /** Paint is not spent to please a rule. */
        private boolean abrades(String stage) {
            Stage known = prover.setting().library().stageById().get(stage);
            return !known.usualTerms().removals().isEmpty();
        }

        private void users(int what) {
            for (int j = 0; j < n; j++) {
                if (j != i && prover.rules().uses(node.steps.get(j), what)) {
                    other(j);
                }
            }
            move(i, 0, n);
            restart(i, Optional.empty());
        }

        /** Another step that an answer depends on is moved, changed or left out. */
        private void other(int j) {
            move(j, 0, n);
            drop(j);
            narrow(j, demand.rows());
            inputs(j, c -> true);
        }

        private void widen(int j) {
            Step step = node.plan.steps().get(j);
            BitSet more = (BitSet) demand.rows().clone();
            more.and(stages.rowsOf(step.stage()));
            more.andNot(rowsOf(j));
            if (!more.isEmpty()) {
                Kind kind = node.open.contains(step.id()) ? Kind.WIDEN_OPEN : Kind.WIDEN;
                note(new RepairChoice(kind, step.id(), Optional.empty(), more, 0, 0, Optional.empty(), false));
            }
        }

        private void named(String name) {
            if (name.startsWith("film.planned")) {
                for (int j = 0; j < n; j++) {
                    if (effects.worksOn(node.steps.get(j), demand.row()) && takesFilm(node.steps.get(j))) {
                        drop(j);
                        narrow(j, one(demand.row()));
                        inputs(j, c -> true);
                    }
                }
            } else if (name.startsWith("step.")) {
                inputs(i, c -> true);
                move(i, 0, n);
                restart(i, Optional.empty());
            }
        }

        private boolean takesFilm(CompiledStep step) {
            return step.parts().stream()
                    .anyMatch(p -> !p.terms().terms.removals().isEmpty());
        }

        // ---- edits

        private void note(RepairChoice choice) {
            if (!choices.contains(choice)) {
                choices.add(choice);
            }
        }

        private BitSet rowsOf(int j) {
            BitSet rows = new BitSet();
            for (int row : node.steps.get(j).rows()) {
                rows.set(row);
            }
            return rows;
        }

        private void moveAll(Effect[] all, Effect effect, int low, int high) {
            for (int j = 0; j < n; j++) {
                if (all[j] == effect && j != i) {
                    move(j, low, high);
                }
            }
        }

        private void move(int j, int low, int high) {
            String id = node.plan.steps().get(j).id();
            if (low <= high && !node.placed.contains(id)) {
                note(new RepairChoice(
                        Kind.MOVE, id, Optional.empty(), new BitSet(), low, high, Optional.empty(), false));
            }
        }

        private void drop(int j) {
            Step step = node.plan.steps().get(j);
            if (mayLose(step)) {
                add(new Edit.Drop(step.id()), Kind.LOSE, true);
            }
        }

        private void narrow(int j, BitSet rows) {
            Step step = node.plan.steps().get(j);
            BitSet left = rowsOf(j);
            left.andNot(rows);
            if (mayLose(step)
                    && !left.isEmpty()
                    && left.cardinality() < node.steps.get(j).rows().length) {
                add(new Edit.ChangeZones(step.id(), stages.written(left)), Kind.LOSE, true);
            }
        }

        private boolean mayLose(Step step) {
            boolean own = node.open.contains(step.id()) || node.placed.contains(step.id());
            return !own
                    && (leave == Leave.ANYTHING || (leave == Leave.OPTIONAL && step.priority() != Step.Priority.MUST));
        }

        private void inputs(int j, Predicate<CompiledStep> does) {
            Step step = node.plan.steps().get(j);
            Stage stage = prover.setting().library().stageById().get(step.stage());
            if (stage == null || stage.inputs().isEmpty() || node.placed.contains(step.id())) {
                return;
            }
            for (Map<String, Value> with : RepairStages.variants(stage, step.with())) {
                CompiledStep changed = prover.compile(new Step(
                        step.id(), step.stage(), step.zones(), with, step.priority(), step.at(), step.drivers()));
                if (!with.equals(step.with()) && does.test(changed)) {
                    add(change(step, with), Kind.CHANGE, false);
                }
            }
        }

        private Edit change(Step step, Map<String, Value> with) {
            for (Map.Entry<String, Value> entry : with.entrySet()) {
                if (!entry.getValue().equals(step.with().get(entry.getKey()))) {
                    return new Edit.ChangeInput(step.id(), entry.getKey(), Optional.of(entry.getValue()));
                }
            }
            String gone = step.with().keySet().stream()
                    .filter(k -> !with.containsKey(k))
                    .findFirst()
                    .orElseThrow();
            return new Edit.ChangeInput(step.id(), gone, Optional.empty());
        }

        private void restart(int j, Optional<LocalDateTime> at) {
            Step step = node.plan.steps().get(j);
            if (step.at().isPresent() && !step.at().equals(at)) {
                add(new Edit.Delay(step.id(), at), Kind.CHANGE, false);
            }
        }

        private void add(Edit edit, Kind kind, boolean loses) {
            note(new RepairChoice(kind, edit.stepId(), Optional.empty(), new BitSet(), 0, 0, Optional.of(edit), loses));
        }
    }

    private static BitSet one(int row) {
        BitSet rows = new BitSet();
        rows.set(row);
        return rows;
    }

    /** The zones of a step as written, and these rows. */
    List<String> widened(Step step, BitSet more) {
        List<String> zones = new ArrayList<>(step.zones());
        if (zones.stream().anyMatch(z -> z.startsWith("-"))) {
            zones = new ArrayList<>(ZoneChoice.resolve(zones, vehicle.shape()));
        }
        zones.addAll(stages.written(more));
        return zones;
    }
}
