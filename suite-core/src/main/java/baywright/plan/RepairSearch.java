package baywright.plan;

import baywright.plan.RepairChoices.Leave;
import baywright.plan.RepairDemand.Ruling;
import baywright.plan.RepairResult.Smallest;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Searches for the smallest repair by deepening: first whether one edit does, then two, and so on. At each variant it
 * takes the demand that fewest edits can answer and tries each of them. A variant is given up when more demands than
 * edits are left that no edit answers together; when one edit is left, only edits are tried that answer every demand.
 */
final class RepairSearch {

    /** Demands of a variant that are looked at closely; leaving some out only makes the bound weaker. */
    private static final int CLOSE_LOOK = 16;

    /** Demands that a last edit must answer all of; leaving some out only means more variants to walk. */
    private static final int LAST_LOOK = 40;

    private static final int SMALLEST_AFTERMATH = 200;
    private static final int ASK_EVERY = 16;

    private final Prover prover;
    private final Plan plan;
    private final Repair.Options options;
    private final RepairStages stages;
    private final RepairChoices choices;
    private final long started = System.nanoTime();
    private final Map<Object, RepairNode> found = new LinkedHashMap<>();
    private final Map<List<Object>, Integer> seen = new HashMap<>();

    private final boolean mendsRules;
    private Set<List<String>> spoken = Set.of();
    private boolean heedsRules;
    private long longest;
    private Leave leave = Leave.NOTHING;
    private int walked;
    private int stopAfter;
    private Optional<Smallest> stopped = Optional.empty();

    /** A search for repairs that leave nothing forbidden either. */
    RepairSearch(Prover prover, Plan plan, Repair.Options options) {
        this(prover, plan, options, true);
    }

    /**
     * A search.
     *
     * @param mendsRules whether what rules forbid is mended too; else a repair only lets no further rule forbid
     */
    RepairSearch(Prover prover, Plan plan, Repair.Options options, boolean mendsRules) {
        this.mendsRules = mendsRules;
        longest = options.time().toNanos();
        this.prover = prover;
        this.plan = plan;
        this.options = options;
        stages = new RepairStages(prover);
        choices = new RepairChoices(prover, stages);
        stopAfter = options.variants();
    }

    RepairResult run() {
        List<Finding> stops = prover.stops(plan);
        Set<String> ids = new HashSet<>();
        boolean twice = plan.steps().stream().anyMatch(s -> !ids.add(s.id()));
        heedsRules = mendsRules && prover.hasRules();
        List<Finding> beyond = beyond(stops, twice);
        spoken = rulesIn(stops);
        RepairNode root = new RepairNode(prover, plan);
        List<RepairDemand> demands = new ArrayList<>();
        if (!twice) {
            demands.addAll(root.demands());
            demands.addAll(heedsRules ? root.ruled() : List.of());
        }
        if (demands.isEmpty()) {
            List<Repair> none = stops.isEmpty() ? List.of(repair(root)) : List.of();
            return new RepairResult(none, Smallest.PROVED, List.of(), beyond, figures(0));
        }
        List<RepairDemand> lossOnly = demands.stream()
                .filter(d -> choices.of(root, d, Leave.OPTIONAL).isEmpty())
                .toList();
        List<Finding> lost = new ArrayList<>();
        lossOnly.forEach(
                d -> findingOf(root, d, stops).filter(f -> !lost.contains(f)).ifPresent(lost::add));
        boolean ruled = heedsRules && !root.ruled().isEmpty();
        longest = ruled ? options.time().toNanos() * 2 / 3 : longest;
        RepairResult result = search(root, !lossOnly.isEmpty(), lost, beyond);
        boolean called = options.cancelled().getAsBoolean();
        return ruled && result.repairs().isEmpty() && !called ? withoutRules(root, result, stops) : result;
    }

    /** What is left of the time goes to the stops that are no rule's, so that at least those are mended. */
    private RepairResult withoutRules(RepairNode root, RepairResult before, List<Finding> stops) {
        heedsRules = false;
        longest = options.time().toNanos();
        stopAfter = Math.max(walked, options.variants()) + SMALLEST_AFTERMATH;
        stopped = Optional.empty();
        List<Finding> beyond = beyond(stops, false);
        List<Finding> lost =
                before.lossOnly().stream().filter(f -> !beyond.contains(f)).toList();
        RepairResult result = root.demands().isEmpty() ? before : search(root, !lost.isEmpty(), lost, beyond);
        return new RepairResult(
                result.repairs(),
                before.proof(),
                lost,
                beyond,
                figures(before.figures().least()));
    }

    /** Stops that this search does not mend. */
    private List<Finding> beyond(List<Finding> stops, boolean twice) {
        return stops.stream()
                .filter(f ->
                        twice || f.step().isEmpty() || f.code().equals(Codes.STEP_TWICE) || (!heedsRules && ofRule(f)))
                .toList();
    }

    /** Gentle repairs of every size first; work that must be done is left out only when there is none. */
    private RepairResult search(RepairNode root, boolean mustLose, List<Finding> lost, List<Finding> beyond) {
        Smallest proof = Smallest.EDIT_LIMIT;
        int least = 1;
        boolean optional = plan.steps().stream().anyMatch(s -> s.priority() != Step.Priority.MUST);
        for (Leave most : mustLose ? List.of(Leave.ANYTHING) : List.of(Leave.OPTIONAL, Leave.ANYTHING)) {
            boolean sure = true;
            for (int size = 1; size <= options.edits() && found.isEmpty() && stopped.isEmpty(); size++) {
                for (Leave level : levels(most, optional)) {
                    deepen(root, size, level);
                }
                sure &= found.isEmpty() ? stopped.isEmpty() : true;
                least = most == Leave.OPTIONAL || mustLose ? size : least;
                proof = found.isEmpty() ? stopped.orElse(Smallest.EDIT_LIMIT) : proof;
                if (!found.isEmpty()) {
                    proof = Smallest.PROVED;
                }
            }
            if (!found.isEmpty() || !sure) {
                break;
            }
        }
        return new RepairResult(best(), proof, lost, beyond, figures(least));
    }

    private static List<Leave> levels(Leave most, boolean optional) {
        if (most == Leave.ANYTHING) {
            return List.of(Leave.ANYTHING);
        }
        return optional ? List.of(Leave.NOTHING, Leave.OPTIONAL) : List.of(Leave.NOTHING);
    }

    private void deepen(RepairNode root, int size, Leave level) {
        if (found.isEmpty() && stopped.isEmpty()) {
            leave = level;
            seen.clear();
            search(root, size);
        }
    }

    // ---- one variant

    private boolean search(RepairNode node, int left) {
        if (isOver() || seen.getOrDefault(key(node), -1) >= left) {
            return false;
        }
        walked++;
        List<RepairDemand> demands = node.demands();
        if (demands.isEmpty() && heedsRules) {
            demands = node.ruled();
        }
        if (demands.isEmpty()) {
            return enter(node);
        }
        boolean any = false;
        for (RepairChoice choice : next(node, demands, left)) {
            any |= follow(node, choice, left);
        }
        if (!any && stopped.isEmpty() && !isOver()) {
            seen.merge(key(node), left, Math::max);
        }
        return any;
    }

    /**
     * What to try; nothing when the edits left cannot do, which is told from the first demands that show it: more of them
     * than edits are left that no edit answers together.
     */
    private List<RepairChoice> next(RepairNode node, List<RepairDemand> demands, int left) {
        List<List<RepairChoice>> answers = new ArrayList<>();
        List<List<RepairChoice>> costly = new ArrayList<>();
        List<List<RepairChoice>> apart = new ArrayList<>();
        int looked = Math.min(demands.size(), left <= 1 ? LAST_LOOK : CLOSE_LOOK);
        for (RepairDemand demand : demands.subList(0, looked)) {
            List<RepairChoice> answer = choices.of(node, demand, leave);
            if (answer.isEmpty()) {
                return List.of();
            }
            answers.add(answer);
            if (answer.stream().noneMatch(RepairChoice::free)) {
                costly.add(answer);
                if (apart.stream().noneMatch(a -> meet(a, answer))) {
                    apart.add(answer);
                }
            }
            if (apart.size() > left) {
                return List.of();
            }
        }
        if (costly.isEmpty() || left == 0) {
            List<RepairChoice> fewest = fewest(answers);
            return left == 0 ? fewest.stream().filter(RepairChoice::free).toList() : fewest;
        }
        if (left > 1 || costly.size() < answers.size()) {
            return fewest(costly.size() < answers.size() && left == 1 ? answers : costly);
        }
        return inAll(costly);
    }

    private static List<RepairChoice> fewest(List<List<RepairChoice>> answers) {
        List<RepairChoice> least = Collections.min(
                answers,
                Comparator.comparingInt(
                        a -> a.stream().mapToInt(RepairChoice::size).sum()));
        return ordered(least);
    }

    private static List<RepairChoice> ordered(List<RepairChoice> choices) {
        List<RepairChoice> sorted = new ArrayList<>(choices);
        sorted.sort(Comparator.comparing(RepairChoice::kind));
        return sorted;
    }

    private static List<RepairChoice> inAll(List<List<RepairChoice>> answers) {
        List<RepairChoice> common = answers.get(0);
        for (List<RepairChoice> answer : answers.subList(1, answers.size())) {
            List<RepairChoice> both = new ArrayList<>();
            for (RepairChoice a : common) {
                for (RepairChoice b : answer) {
                    a.and(b).filter(c -> !both.contains(c)).ifPresent(both::add);
                }
            }
            common = both;
        }
        return ordered(common);
    }

    private static boolean meet(List<RepairChoice> some, List<RepairChoice> others) {
        for (RepairChoice a : some) {
            for (RepairChoice b : others) {
                if (a.meets(b)) {
                    return true;
                }
            }
        }
        return false;
    }

    // ---- its edits

    /** Tries a choice at its places, the nearest first, until one of them leads to a repair. */
    private boolean follow(RepairNode node, RepairChoice choice, int left) {
        if (choice.free()) {
            return search(node.widened(choice.step(), zones(node, choice)), left);
        }
        for (Edit edit : edits(node, choice)) {
            if (isOver()) {
                return false;
            }
            if (search(node.with(edit), left - 1)) {
                return true;
            }
        }
        return false;
    }

    private List<String> zones(RepairNode node, RepairChoice choice) {
        return choices.widened(step(node, choice.step()), choice.rows());
    }

    private static Step step(RepairNode node, String id) {
        return node.plan.steps().get(indexOf(node, id));
    }

    private static int indexOf(RepairNode node, String id) {
        for (int i = 0; i < node.plan.steps().size(); i++) {
            if (node.plan.steps().get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalStateException("variant of the plan without its step " + id);
    }

    private List<Edit> edits(RepairNode node, RepairChoice choice) {
        if (choice.edit().isPresent()) {
            return List.of(choice.edit().get());
        }
        List<Edit> edits = new ArrayList<>();
        switch (choice.kind()) {
            case INSERT -> {
                Step step = stages.inserted(
                        freshId(node),
                        choice.use().orElseThrow(),
                        choice.rows(),
                        step(node, choice.step()).priority());
                int served = indexOf(node, choice.step());
                for (int gap = Math.min(choice.high(), served); gap >= choice.low(); gap--) {
                    edits.add(new Edit.Insert(step, gap));
                }
                for (int gap = Math.max(choice.low(), served + 1); gap <= choice.high(); gap++) {
                    edits.add(new Edit.Insert(step, gap));
                }
            }
            case MOVE -> {
                int now = indexOf(node, choice.step());
                for (int gap = choice.low(); gap <= choice.high(); gap++) {
                    if (gap != now && gap != now + 1) {
                        edits.add(new Edit.Move(choice.step(), gap > now ? gap - 1 : gap));
                    }
                }
                edits.sort(Comparator.comparingInt(e -> Math.abs(((Edit.Move) e).position() - now)));
            }
            default -> edits.add(new Edit.ChangeZones(choice.step(), zones(node, choice)));
        }
        return edits;
    }

    /** Neither in the variant nor in the plan as it was, so that edits can be left out one by one. */
    private String freshId(RepairNode node) {
        Set<String> taken = new HashSet<>();
        plan.steps().forEach(s -> taken.add(s.id()));
        node.plan.steps().forEach(s -> taken.add(s.id()));
        int number = plan.steps().size() + 1;
        while (taken.contains("s" + number)) {
            number++;
        }
        return "s" + number;
    }

    /** Two variants with the same key do the same and may be changed in the same ways. */
    private List<Object> key(RepairNode node) {
        List<Object> key = new ArrayList<>();
        for (int i = 0; i < node.steps.size(); i++) {
            Step step = node.plan.steps().get(i);
            boolean placed = node.placed.contains(step.id());
            key.add(node.steps.get(i));
            key.add(placed && node.open.contains(step.id()) ? "" : step.id());
            key.add(step.at());
            key.add(placed);
        }
        return key;
    }

    // ---- what was found

    private boolean enter(RepairNode node) {
        if (prover.hasRules() && !heedsRules && !spoken.containsAll(rulesIn(prover.stops(node.plan)))) {
            return false;
        }
        if (found.isEmpty()) {
            stopAfter = Math.min(stopAfter, walked + Math.max(walked, SMALLEST_AFTERMATH));
        }
        found.putIfAbsent(shape(node), node);
        return true;
    }

    private static boolean ofRule(Finding finding) {
        return finding.code().equals(Codes.RULE_FORBIDS) || finding.code().equals(Codes.RULE_FAILS);
    }

    /** Which rules forbid which steps; a repair must not make more of them speak. */
    private static Set<List<String>> rulesIn(List<Finding> stops) {
        Set<List<String>> spoken = new HashSet<>();
        for (Finding stop : stops) {
            if (stop.reason() instanceof Reason.RuleSpeaks r) {
                spoken.add(List.of(r.step(), r.rule()));
            }
        }
        return spoken;
    }

    /** Repairs that differ only in where an inserted or moved step goes are one. */
    private static Object shape(RepairNode node) {
        Map<Object, Integer> shape = new HashMap<>();
        for (Edit edit : node.edits) {
            shape.merge(shape(edit), 1, Integer::sum);
        }
        return shape;
    }

    private static Object shape(Edit edit) {
        if (edit instanceof Edit.Insert insert) {
            return List.of(
                    insert.step().stage(), insert.step().zones(), insert.step().with());
        }
        return edit instanceof Edit.Move ? edit.stepId() : edit;
    }

    private List<Repair> best() {
        Map<Repair, Integer> lost = new HashMap<>();
        List<Repair> repairs = new ArrayList<>();
        for (RepairNode node : found.values()) {
            Repair repair = repair(node);
            lost.put(repair, losses(node));
            repairs.add(repair);
        }
        repairs.sort(Comparator.<Repair>comparingInt(lost::get)
                .thenComparing(Repair::addedCost)
                .thenComparingInt(RepairSearch::upheaval)
                .thenComparingInt(this::carried));
        return repairs.subList(0, Math.min(repairs.size(), options.alternatives()));
    }

    private int losses(RepairNode node) {
        Plan now = plan;
        int losses = 0;
        for (Edit edit : node.edits) {
            losses += edit instanceof Edit.Drop || narrows(edit, now) ? 1 : 0;
            now = edit.applyTo(now);
        }
        return losses;
    }

    private boolean narrows(Edit edit, Plan now) {
        if (!(edit instanceof Edit.ChangeZones change)) {
            return false;
        }
        BitSet before = rows(now, change.stepId());
        before.andNot(rows(change.applyTo(now), change.stepId()));
        return !before.isEmpty();
    }

    private BitSet rows(Plan now, String id) {
        BitSet rows = new BitSet();
        for (Step step : now.steps()) {
            if (step.id().equals(id)) {
                for (int row : prover.compile(step).rows()) {
                    rows.set(row);
                }
            }
        }
        return rows;
    }

    /** Changed inputs and starts weigh more than insertions and moves of the same cost. */
    private static int upheaval(Repair repair) {
        return (int) repair.edits().stream()
                .filter(e -> e instanceof Edit.ChangeInput || e instanceof Edit.Delay || e instanceof Edit.ChangeZones)
                .count();
    }

    /** How far steps are moved altogether. */
    private int carried(Repair repair) {
        int sum = 0;
        Plan now = plan;
        for (Edit edit : repair.edits()) {
            if (edit instanceof Edit.Move move) {
                sum += Math.abs(move.position()
                        - now.steps().stream().map(Step::id).toList().indexOf(move.stepId()));
            }
            now = edit.applyTo(now);
        }
        return sum;
    }

    private Repair repair(RepairNode node) {
        BigDecimal added = cost(node.plan).subtract(cost(plan));
        return new Repair(node.edits, node.plan, added);
    }

    private BigDecimal cost(Plan of) {
        return options.price()
                .map(price -> price.apply(of))
                .orElseGet(() -> prover.work(of).attendedMinutes().mean());
    }

    private static Optional<Finding> findingOf(RepairNode root, RepairDemand demand, List<Finding> stops) {
        if (demand.problem().isPresent()) {
            return demand.problem();
        }
        String step = root.plan.steps().get(demand.step()).id();
        return stops.stream()
                .filter(f -> f.step().equals(Optional.of(step)))
                .filter(f -> concerns(f.reason(), demand))
                .findFirst();
    }

    private static Optional<String> rule(Reason reason) {
        if (reason instanceof Reason.RuleSpeaks speaks) {
            return Optional.of(speaks.rule());
        }
        return reason instanceof Reason.RuleFails fails ? Optional.of(fails.rule()) : Optional.empty();
    }

    private static boolean concerns(Reason reason, RepairDemand demand) {
        List<String> anyOf = demand.condition().map(c -> c.need().anyOf()).orElse(List.of());
        return switch (demand.kind()) {
            case NEEDS ->
                reason instanceof Reason.NeedUnmet unmet && unmet.anyOf().equals(anyOf);
            case REFUSES -> reason instanceof Reason.MustNotHold must && anyOf.contains(must.state());
            case NO_BAY -> reason instanceof Reason.NoBay;
            case TOO_LATE -> reason instanceof Reason.TooLate;
            case TOO_SOON -> reason instanceof Reason.TooSoon;
            case OVERLAPS -> reason instanceof Reason.Overlaps;
            case BEFORE_START -> reason instanceof Reason.BeforeStart;
            case RULE -> demand.rule().map(Ruling::id).equals(rule(reason));
            case USE -> false;
        };
    }

    // ---- limits

    private boolean isOver() {
        if (stopped.isPresent()) {
            return true;
        }
        if (walked >= stopAfter) {
            stopped = Optional.of(Smallest.NODE_LIMIT);
        } else if (walked % ASK_EVERY == 0) {
            if (options.cancelled().getAsBoolean()) {
                stopped = Optional.of(Smallest.CANCELLED);
            } else if (System.nanoTime() - started > longest) {
                stopped = Optional.of(Smallest.TIME_LIMIT);
            }
        }
        return stopped.isPresent();
    }

    private RepairResult.Figures figures(int least) {
        return new RepairResult.Figures(walked, least, Duration.ofNanos(System.nanoTime() - started));
    }
}
