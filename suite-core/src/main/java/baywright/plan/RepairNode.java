package baywright.plan;

import baywright.library.Rule.Spoken;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.RepairDemand.Cell;
import baywright.plan.RepairDemand.Kind;
import baywright.plan.RepairDemand.Ruling;
import baywright.plan.RuleBook.Question;
import baywright.plan.RuleCheck.Speech;
import baywright.plan.Walk.Failure;
import baywright.plan.Walk.Fault;
import baywright.plan.Walk.Lapse;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A variant of a plan, walked, with the edits that led to it and what still stops it. */
final class RepairNode {

    final Plan plan;
    final List<CompiledStep> steps;
    final List<Edit> edits;
    /** Ids of steps that an edit has placed: their place is not changed again. */
    final Set<String> placed;
    /** Ids of steps that an edit made or whose zones it changed: they may take in zones without a further edit. */
    final Set<String> open;

    private final Prover prover;
    private final IdentityHashMap<Step, CompiledStep> compiled;
    private List<RepairDemand> demands;
    private List<RepairDemand> ruled;
    private Walk walk;

    /** The plan as it is. */
    RepairNode(Prover prover, Plan plan) {
        this(prover, plan, List.of(), Set.of(), Set.of(), new IdentityHashMap<>());
    }

    private RepairNode(
            Prover prover,
            Plan plan,
            List<Edit> edits,
            Set<String> placed,
            Set<String> open,
            IdentityHashMap<Step, CompiledStep> compiled) {
        this.prover = prover;
        this.plan = plan;
        this.edits = edits;
        this.placed = placed;
        this.open = open;
        this.compiled = compiled;
        steps = new ArrayList<>(plan.steps().size());
        for (Step step : plan.steps()) {
            steps.add(compiled.computeIfAbsent(step, prover::compile));
        }
    }

    RepairNode with(Edit edit) {
        List<Edit> more = new ArrayList<>(edits);
        more.add(edit);
        Set<String> nowPlaced = placed;
        Set<String> nowOpen = open;
        if (edit instanceof Edit.Insert || edit instanceof Edit.Move) {
            nowPlaced = new HashSet<>(placed);
            nowPlaced.add(edit.stepId());
        }
        if (edit instanceof Edit.Insert || edit instanceof Edit.ChangeZones) {
            nowOpen = new HashSet<>(open);
            nowOpen.add(edit.stepId());
        }
        return new RepairNode(prover, edit.applyTo(plan), more, nowPlaced, nowOpen, compiled);
    }

    /** The same edits, but the one that made or widened a step gives it more zones. */
    RepairNode widened(String id, List<String> zones) {
        List<Edit> same = new ArrayList<>();
        for (Edit edit : edits) {
            if (!edit.stepId().equals(id)) {
                same.add(edit);
            } else if (edit instanceof Edit.Insert insert) {
                same.add(new Edit.Insert(Steps.withZones(insert.step(), zones), insert.position()));
            } else {
                same.add(edit instanceof Edit.ChangeZones ? new Edit.ChangeZones(id, zones) : edit);
            }
        }
        Plan wider = new Edit.ChangeZones(id, zones).applyTo(plan);
        return new RepairNode(prover, wider, same, placed, open, compiled);
    }

    Walk walk() {
        if (walk == null) {
            walk = prover.walk(plan, steps);
        }
        return walk;
    }

    /** What rules forbid, a demand for each step and rule, in the order of the steps; the plan is walked for it anew. */
    List<RepairDemand> ruled() {
        if (!prover.hasRules()) {
            return List.of();
        }
        if (ruled == null) {
            Map<List<Object>, RepairDemand> byKey = new LinkedHashMap<>();
            for (Speech speech : prover.forbidding(plan, steps)) {
                Ruling ruling = ruling(speech);
                byKey.computeIfAbsent(List.of(speech.step(), ruling), k -> demand(speech.step(), ruling))
                        .rows()
                        .set(speech.row());
            }
            ruled = List.copyOf(byKey.values());
        }
        return ruled;
    }

    private static Ruling ruling(Speech speech) {
        List<Integer> read = speech.verdict()
                .spoken()
                .map(Spoken::read)
                .orElseGet(() -> speech.entry().all());
        List<Question> asked =
                read.stream().map(q -> speech.entry().question(q).question()).toList();
        return new Ruling(speech.entry().rule().id(), asked);
    }

    private static RepairDemand demand(int step, Ruling ruling) {
        return new RepairDemand(
                Kind.RULE,
                step,
                -1,
                List.of(),
                new BitSet(),
                Optional.empty(),
                0,
                Optional.empty(),
                Optional.of(ruling));
    }

    /** What stops the plan, rules apart, in the order of the steps; empty when nothing does. */
    List<RepairDemand> demands() {
        if (demands == null) {
            demands = new ArrayList<>();
            collect();
        }
        return demands;
    }

    private void collect() {
        Walk walked = walk();
        for (int i = 0; i < steps.size(); i++) {
            Step step = plan.steps().get(i);
            for (var problem : steps.get(i).problems()) {
                Finding finding = problem.apply(step.id());
                if (finding.severity() == Severity.STOP) {
                    add(Kind.USE, i, -1, new BitSet(), 0, Optional.of(finding));
                }
            }
            if (step.at().isPresent() && walked.starts[i] < 0) {
                add(Kind.BEFORE_START, i, -1, new BitSet(), 0, Optional.empty());
            }
        }
        walked.withoutBay.forEach(i -> add(Kind.NO_BAY, i, -1, new BitSet(), 0, Optional.empty()));
        states(walked);
        waits(walked);
        for (int[] pair : walked.overlaps) {
            if (pair[1] >= 0 && shareRows(steps.get(pair[0]), steps.get(pair[1]))) {
                add(Kind.OVERLAPS, pair[0], pair[1], new BitSet(), walked.ends[pair[1]], Optional.empty());
            }
        }
    }

    private void add(Kind kind, int step, int after, BitSet rows, long ticks, Optional<Finding> problem) {
        demands.add(new RepairDemand(kind, step, after, List.of(), rows, Optional.empty(), ticks, problem));
    }

    /** Failures of one step and condition that lack the same states are one demand, on several rows. */
    private void states(Walk walked) {
        List<RepairDemand> ofStep = new ArrayList<>();
        for (Failure failure : walked.failures) {
            Condition condition = failure.condition();
            if (condition.wish()) {
                continue;
            }
            if (!ofStep.isEmpty() && ofStep.get(0).step() != failure.step()) {
                demands.addAll(ofStep);
                ofStep.clear();
            }
            boolean absent = condition.need().absent();
            boolean apart = absent
                    ? condition.alternatives().stream().allMatch(RepairNode::single)
                    : condition.alternatives().size() == 1;
            if (!apart || failure.faults().isEmpty()) {
                gather(failure, failure.faults(), ofStep);
            } else {
                failure.faults().forEach(f -> gather(failure, List.of(f), ofStep));
            }
        }
        demands.addAll(ofStep);
    }

    private static void gather(Failure failure, List<Fault> faults, List<RepairDemand> ofStep) {
        for (RepairDemand known : ofStep) {
            Condition condition = known.condition().orElseThrow();
            if (sameStates(known.cells(), faults)
                    && condition.need().equals(failure.condition().need())) {
                known.rows().set(failure.row());
                return;
            }
        }
        RepairDemand fresh = demand(failure, faults, failure.condition().need().absent());
        fresh.rows().set(failure.row());
        ofStep.add(fresh);
    }

    private static boolean sameStates(List<Cell> cells, List<Fault> faults) {
        if (cells.size() != faults.size()) {
            return false;
        }
        for (int f = 0; f < faults.size(); f++) {
            if (cells.get(f).state() != faults.get(f).state()) {
                return false;
            }
        }
        return true;
    }

    private static boolean single(long[] states) {
        int count = 0;
        for (long word : states) {
            count += Long.bitCount(word);
        }
        return count == 1;
    }

    private static RepairDemand demand(Failure failure, List<Fault> faults, boolean absent) {
        List<Cell> cells =
                faults.stream().map(f -> new Cell(f.state(), f.home())).toList();
        Kind kind = absent ? Kind.REFUSES : Kind.NEEDS;
        return new RepairDemand(
                kind, failure.step(), -1, cells, new BitSet(), Optional.of(failure.condition()), 0, Optional.empty());
    }

    private void waits(Walk walked) {
        Map<List<Object>, RepairDemand> byKey = new LinkedHashMap<>();
        for (Lapse lapse : walked.lapses) {
            if (lapse.after() == Tracks.NOBODY) {
                continue;
            }
            Kind kind = lapse.late() ? Kind.TOO_LATE : Kind.TOO_SOON;
            long bound = walked.ends[lapse.after()] + lapse.bound();
            byKey.computeIfAbsent(
                            List.of(kind, lapse.step(), lapse.after()),
                            k -> new RepairDemand(
                                    kind,
                                    lapse.step(),
                                    lapse.after(),
                                    List.of(),
                                    new BitSet(),
                                    Optional.empty(),
                                    bound,
                                    Optional.empty()))
                    .rows()
                    .set(lapse.row());
        }
        demands.addAll(byKey.values());
    }

    private static boolean shareRows(CompiledStep a, CompiledStep b) {
        if (a.vehicle() || b.vehicle()) {
            return a.rows().length > 0 && b.rows().length > 0;
        }
        BitSet rows = new BitSet();
        for (int row : a.rows()) {
            rows.set(row);
        }
        for (int row : b.rows()) {
            if (rows.get(row)) {
                return true;
            }
        }
        return false;
    }
}
