package baywright.plan;

import baywright.plan.Composition.PutOff;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts work off that a rule forbids on the first days and allows later. What goes before it and does not last, such as a wipe, is put
 * off with it: of the steps that may begin the day the one with the fewest warnings is taken, then one whose work would have gone stale
 * meanwhile, then the last.
 */
final class ComposeDelay {

    private static final int MOST_STEPS = 6;

    /** What belongs together on one day stands side by side in a composed plan. */
    private static final int REACH = 8;

    private final Prover prover;
    private final Delays delays;
    private final Map<String, PutOff> putOff = new HashMap<>();

    ComposeDelay(Prover prover, Delays delays) {
        this.prover = prover;
        this.delays = delays;
    }

    /** @param lasting whether what the first step does there would have lasted without it */
    private record Variant(Plan plan, Step first, long stops, long warnings, boolean lasting) {}

    /** The plan with work put off where that is all that is wrong with it; it has no more stops than before. */
    Plan putOff(Plan plan) {
        Plan now = plan;
        boolean more = delays.done().isPresent();
        for (int steps = 0; more && steps < MOST_STEPS; steps++) {
            Optional<Variant> later = later(now);
            more = later.isPresent();
            now = later.map(Variant::plan).orElse(now);
        }
        return now;
    }

    private Optional<Variant> later(Plan plan) {
        for (Finding stop : prover.stops(plan)) {
            Optional<Variant> best = morning(plan, stop).flatMap(at -> later(plan, stop, at));
            if (best.isPresent()) {
                putOff.put(
                        best.get().first().id(),
                        new PutOff(best.get().first().id(), stop.step().orElseThrow(), stop));
                return best;
            }
        }
        return Optional.empty();
    }

    private Optional<Variant> later(Plan plan, Finding stop, LocalDateTime at) {
        long stops = prover.stops(plan).size();
        int place = place(plan, stop);
        List<Variant> variants = new ArrayList<>();
        for (int first = place; first >= Math.max(0, place - REACH); first--) {
            Step step = plan.steps().get(first);
            if (step.at().isEmpty()) {
                List<Step> steps = new ArrayList<>(plan.steps());
                steps.set(first, step.withAt(at));
                Variant variant = variant(new Plan(steps), step, stop);
                if (variant.stops() < stops && isInTime(variant.plan())) {
                    variants.add(variant);
                }
            }
        }
        return variants.stream()
                .min(Comparator.comparingLong(Variant::stops)
                        .thenComparingLong(Variant::warnings)
                        .thenComparing(Variant::lasting));
    }

    private Variant variant(Plan plan, Step first, Finding stop) {
        List<Finding> findings = prover.prove(plan).findings();
        return new Variant(
                plan, first, count(findings, Severity.STOP), count(findings, Severity.WARN), lasts(first, stop));
    }

    private boolean lasts(Step step, Finding stop) {
        boolean there = ZoneChoice.resolve(step.zones(), prover.setting().shape()).stream()
                .anyMatch(stop.zones()::contains);
        return !there
                || prover.compile(step).parts().stream()
                        .flatMap(part -> part.terms().sets.stream())
                        .allMatch(change -> prover.states().lasts(change.state()) == Ticks.NEVER);
    }

    private static long count(List<Finding> findings, Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }

    private boolean isInTime(Plan plan) {
        BigDecimal end = prover.prove(plan).clock().stream()
                .map(Proof.Slot::end)
                .max(BigDecimal::compareTo)
                .orElse(BigDecimal.ZERO);
        LocalDateTime done = prover.setting()
                .start()
                .plusMinutes(end.setScale(0, RoundingMode.CEILING).longValueExact());
        return delays.done().filter(latest -> !done.isAfter(latest)).isPresent();
    }

    private static int place(Plan plan, Finding stop) {
        return plan.steps().stream().map(Step::id).toList().indexOf(stop.step().orElseThrow());
    }

    /** The first day on which a rule that forbids a step would let it be; empty where no day changes that. */
    Optional<LocalDate> from(Plan plan, Finding stop) {
        return morning(plan, stop).map(LocalDateTime::toLocalDate);
    }

    private Optional<LocalDateTime> morning(Plan plan, Finding stop) {
        if (!(stop.reason() instanceof Reason.RuleSpeaks spoken) || stop.step().isEmpty()) {
            return Optional.empty();
        }
        Step step = plan.steps().get(place(plan, stop));
        // a rule that a step breaks only after others says nothing of days
        Stream<LocalDateTime> all = isForbidden(step, spoken.rule()) ? delays.mornings().stream() : Stream.empty();
        return all.filter(at -> at.isAfter(prover.setting().start()))
                .filter(at -> !isForbidden(step.withAt(at), spoken.rule()))
                .findFirst();
    }

    private boolean isForbidden(Step step, String rule) {
        return prover.stops(new Plan(List.of(step))).stream()
                .anyMatch(f -> f.reason() instanceof Reason.RuleSpeaks speaks
                        && speaks.rule().equals(rule));
    }

    /** What was put off in a plan, by the ids that its steps have now. */
    List<PutOff> of(Plan plan, Map<String, String> idOf) {
        List<PutOff> all = new ArrayList<>();
        for (Step step : plan.steps()) {
            putOff.values().stream()
                    .filter(p -> step.at().isPresent() && step.id().equals(idOf.get(p.step())))
                    .filter(p -> idOf.containsKey(p.forStep()))
                    .map(p -> new PutOff(step.id(), idOf.get(p.forStep()), p.stop()))
                    .forEach(all::add);
        }
        return all;
    }
}
