package baywright.plan;

import baywright.library.Family;
import baywright.library.Library;
import baywright.library.Rule;
import baywright.plan.RuleCheck.Speech;
import baywright.quantity.Quantity;
import baywright.script.Nearest;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Proves plans against a setting: walks the steps along a simple clock and reports what does not hold, with its causes.
 * It remembers what it worked out, so that proving thousands of variants of a plan is cheap. For one thread.
 *
 * <p>The simple clock does one step after the other from the setting's start, without working hours and with as many
 * people as each stage asks for at least. A step takes its set-up and the mean of its hands-on time. A step without a
 * fixed start begins when the step before it ends, the usual waits on its zones are over, and states that it needs and
 * that come by themselves have come.
 */
public final class Prover {

    private final Setting setting;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final BayIndex bays;
    private final FactSheet facts;
    private final FilmSheet film;
    private final RuleBook rules;
    private final StepCompiler compiler;
    private final Tracks surveyed;
    private final List<Finding> ofSetting = new ArrayList<>();

    private Prover(Setting setting) {
        this.setting = setting;
        Library library = setting.library();
        states = new StateIndex(library.states());
        vehicle = new VehicleIndex(setting.shape());
        bays = new BayIndex(setting.bays(), states);
        facts = new FactSheet(library, vehicle, setting.survey());
        compiler = new StepCompiler(setting, states, vehicle, facts);
        ofSetting.addAll(facts.bad());
        film = FilmSheet.of(setting);
        strangers(library, setting.house());
        rules = new RuleBook(library, states, vehicle);
        surveyed = new Tracks(states, vehicle);
        setting.survey().states().forEach(s -> survey(vehicle.vehicle(), s, List.of()));
        for (int row : vehicle.real()) {
            String id = vehicle.id(row);
            setting.survey().zone(id).states().forEach(s -> survey(row, s, List.of(id)));
        }
        setting.survey().zone(VehicleIndex.VEHICLE).states().forEach(s -> survey(vehicle.vehicle(), s, List.of()));
    }

    private void strangers(Library library, HouseRules house) {
        Set<String> known = library.rules().stream().map(Rule::id).collect(Collectors.toCollection(TreeSet::new));
        Set<String> named = new TreeSet<>(house.softened().keySet());
        named.addAll(house.off().keySet());
        named.removeAll(known);
        for (String id : named) {
            Reason reason = new Reason.RuleGone(id, Nearest.to(id, known).orElse(""));
            ofSetting.add(new Finding(Codes.RULE_GONE, Severity.WARN, Optional.empty(), List.of(), reason));
        }
    }

    private void survey(int row, String id, List<String> zones) {
        int state = states.of(id);
        if (state >= 0) {
            surveyed.set(row, state, Tracks.SURVEY, 0);
        } else {
            Reason reason =
                    new Reason.StateUnknown(id, Nearest.to(id, states.ids()).orElse(""));
            ofSetting.add(new Finding(Codes.STATE_UNKNOWN, Severity.STOP, Optional.empty(), zones, reason));
        }
    }

    /** A prover for many plans in one setting. */
    public static Prover forSetting(Setting setting) {
        return new Prover(setting);
    }

    /** Proves one plan. Never fails, whatever the plan says; what is wrong with it is a finding. */
    public static Proof prove(Setting setting, Plan plan) {
        return forSetting(setting).prove(plan);
    }

    /** Which steps lean on steps that are wanted less; proves each part of the plan by priority. */
    public Leaning leaning(Plan plan, Proof proof) {
        return Leaning.of(this, plan, proof);
    }

    /** The whole proof of a plan. */
    public Proof prove(Plan plan) {
        List<CompiledStep> steps = compile(plan);
        List<String> ids = ids(plan);
        Walk walk = walk(plan, steps, ids, true);
        List<Proof.Slot> clock = new ArrayList<>(steps.size());
        for (int i = 0; i < steps.size(); i++) {
            clock.add(new Proof.Slot(
                    ids.get(i),
                    Ticks.minutes(walk.starts[i]),
                    Ticks.minutes(walk.ends[i]),
                    Ticks.minutes(walk.waits[i])));
        }
        return new Proof(findings(plan, steps, ids, walk), clock, ends(walk.tracks()));
    }

    /** Only the findings that stop a plan, in the order of the proof. */
    public List<Finding> stops(Plan plan) {
        List<CompiledStep> steps = compile(plan);
        List<String> ids = ids(plan);
        return findings(plan, steps, ids, walk(plan, steps, ids, true)).stream()
                .filter(f -> f.severity() == Severity.STOP)
                .toList();
    }

    /** What a plan takes. */
    public PlanWork work(Plan plan) {
        List<StepWork> works = new ArrayList<>();
        Map<String, List<String>> families = new LinkedHashMap<>();
        for (Step step : plan.steps()) {
            work(step).ifPresent(work -> {
                works.add(work);
                families.computeIfAbsent(work.family(), f -> new ArrayList<>()).add(work.step());
            });
        }
        List<PlanWork.FamilySetUp> setUps = new ArrayList<>();
        families.forEach((id, users) -> family(id)
                .filter(f -> minutes(f).signum() > 0)
                .ifPresent(f -> setUps.add(new PlanWork.FamilySetUp(id, minutes(f), f.place(), users))));
        return new PlanWork(works, setUps);
    }

    /** What one step takes; empty when its stage is gone or cannot be worked out, or no zone fits. */
    public Optional<StepWork> work(Step step) {
        return compiler.compile(step).work().map(w -> w.as(step.id()));
    }

    private Optional<Family> family(String id) {
        return setting.library().families().stream()
                .filter(f -> f.id().equals(id))
                .findFirst();
    }

    private static BigDecimal minutes(Family family) {
        Quantity setUp = family.setUp();
        return setUp.inBase();
    }

    List<CompiledStep> compile(Plan plan) {
        List<CompiledStep> steps = new ArrayList<>(plan.steps().size());
        plan.steps().forEach(s -> steps.add(compiler.compile(s)));
        return steps;
    }

    private static List<String> ids(Plan plan) {
        return plan.steps().stream().map(Step::id).toList();
    }

    /** The rules that stop a plan whose steps are compiled, in the order of the steps: they forbid a step, or fail at it. */
    List<Speech> forbidding(Plan plan, List<CompiledStep> steps) {
        return walk(plan, steps, ids(plan), true).speeches().stream()
                .filter(this::stops)
                .toList();
    }

    private boolean stops(Speech speech) {
        String rule = speech.entry().rule().id();
        return speech.verdict()
                .spoken()
                .map(s -> setting.house().of(rule, s.severity()) == Rule.Severity.FORBIDS)
                .orElse(true);
    }

    /** Walks a plan whose steps are compiled, without asking the rules, for those who look at many variants. */
    Walk walk(Plan plan, List<CompiledStep> steps) {
        return walk(plan, steps, ids(plan), false);
    }

    private Walk walk(Plan plan, List<CompiledStep> steps, List<String> ids, boolean withRules) {
        Walk walk = walkable(plan, steps, ids, withRules);
        walk.run();
        return walk;
    }

    /** A walk that has not begun, without rules, for those who look on. */
    Walk walkable(Plan plan, List<CompiledStep> steps) {
        return walkable(plan, steps, ids(plan), false);
    }

    private Walk walkable(Plan plan, List<CompiledStep> steps, List<String> ids, boolean withRules) {
        long[] fixed = new long[steps.size()];
        for (int i = 0; i < fixed.length; i++) {
            fixed[i] = plan.steps()
                    .get(i)
                    .at()
                    .map(at -> Ticks.between(setting.start(), at))
                    .orElse(Ticks.NEVER);
        }
        return new Walk(this, steps, ids, fixed, withRules);
    }

    private List<Finding> findings(Plan plan, List<CompiledStep> steps, List<String> ids, Walk walk) {
        FindingSheet sheet = new FindingSheet(vehicle, ids);
        ofSetting.forEach(sheet::add);
        twice(ids, sheet);
        for (int i = 0; i < steps.size(); i++) {
            String id = ids.get(i);
            for (var problem : steps.get(i).problems()) {
                sheet.add(i, problem.apply(id));
            }
            fixed(i, plan.steps().get(i), walk, sheet);
        }
        for (int i : walk.withoutBay) {
            String kind = steps.get(i).parts().get(0).terms().terms.where().bay();
            sheet.add(i, stop(Codes.NO_BAY, ids.get(i), new Reason.NoBay(ids.get(i), kind)));
        }
        for (int[] pair : walk.overlaps) {
            overlap(pair[0], pair[1], steps, ids, walk, sheet);
        }
        walk.lapses.forEach(sheet::addLapse);
        sheet.addSpeeches(walk.speeches(), setting.house());
        if (!walk.failures.isEmpty()) {
            sheet.addFailures(walk.failures, new Later(this, steps, ids).causesOf(walk.failures));
        }
        return sheet.inOrder();
    }

    private static void twice(List<String> ids, FindingSheet sheet) {
        Map<String, Integer> times = new HashMap<>();
        ids.forEach(id -> times.merge(id, 1, Integer::sum));
        for (int i = 0; i < ids.size() && times.size() < ids.size(); i++) {
            Integer count = times.remove(ids.get(i));
            if (count != null && count > 1) {
                sheet.add(i, stop(Codes.STEP_TWICE, ids.get(i), new Reason.StepTwice(ids.get(i), count)));
            }
        }
    }

    private void fixed(int i, Step step, Walk walk, FindingSheet sheet) {
        if (walk.starts[i] < 0 && step.at().isPresent()) {
            BigDecimal early = Ticks.minutes(-walk.starts[i]);
            sheet.add(i, stop(Codes.BEFORE_START, step.id(), new Reason.BeforeStart(step.id(), early)));
        }
    }

    /** Two steps at once on one zone cannot be; on different zones it takes a second pair of hands. */
    private void overlap(int i, int other, List<CompiledStep> steps, List<String> ids, Walk walk, FindingSheet sheet) {
        if (other < 0) {
            return;
        }
        BigDecimal minutes = Ticks.minutes(walk.ends[other] - walk.starts[i]);
        Reason reason = new Reason.Overlaps(ids.get(i), ids.get(other), minutes);
        CompiledStep here = steps.get(i);
        CompiledStep there = steps.get(other);
        List<String> shared = new ArrayList<>();
        for (int row : here.rows()) {
            if (here.vehicle() || there.vehicle() || Arrays.binarySearch(there.rows(), row) >= 0) {
                shared.add(vehicle.id(row));
            }
        }
        Severity severity = shared.isEmpty() ? Severity.WARN : Severity.STOP;
        sheet.add(i, new Finding(Codes.OVERLAPS, severity, Optional.of(ids.get(i)), shared, reason));
    }

    private static Finding stop(String code, String step, Reason reason) {
        return new Finding(code, Severity.STOP, Optional.of(step), List.of(), reason);
    }

    private Map<String, Set<String>> ends(Tracks tracks) {
        Map<String, Set<String>> ends = new HashMap<>();
        for (int row = 0; row < vehicle.rows(); row++) {
            ends.put(vehicle.id(row), tracks.namesOn(row));
        }
        return ends;
    }

    /** States of each zone at the end of a plan, once everything promised has come; for worked examples. */
    Map<String, Set<String>> endsWithPromises(Plan plan) {
        Walk walk = walk(plan, compile(plan), ids(plan), false);
        walk.tracks().arriveAll();
        return ends(walk.tracks());
    }

    CompiledStep compile(Step step) {
        return compiler.compile(step);
    }

    Setting setting() {
        return setting;
    }

    StateIndex states() {
        return states;
    }

    VehicleIndex vehicle() {
        return vehicle;
    }

    BayIndex bays() {
        return bays;
    }

    Tracks surveyed() {
        return surveyed;
    }

    FactSheet facts() {
        return facts;
    }

    FilmSheet film() {
        return film;
    }

    boolean hasRules() {
        return !rules.isEmpty();
    }

    RuleBook rules() {
        return rules;
    }

    LocalDateTime start() {
        return setting.start();
    }
}
