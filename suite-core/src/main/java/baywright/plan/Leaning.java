package baywright.plan;

import baywright.plan.Composition.Because;
import baywright.plan.Step.Priority;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where steps of a plan lean on steps that are wanted less, so that a part of the plan by priority cannot be done alone.
 *
 * @param findings one for each step that others lean on, and one for each step that a rule then stops
 * @param broken   priorities up to which the plan does not prove by itself
 */
public record Leaning(List<Finding> findings, Set<Priority> broken) {

    /** No step leans on one that is wanted less, or nobody has looked. */
    public static final Leaning NONE = new Leaning(List.of(), Set.of());

    public Leaning {
        findings = List.copyOf(findings);
        broken = Collections.unmodifiableSet(new LinkedHashSet<>(broken));
    }

    /** Proves each part by itself; looks at nothing in a plan that does not prove as a whole. */
    static Leaning of(Prover prover, Plan plan, Proof proof) {
        if (!proof.holds()) {
            return NONE;
        }
        Map<String, Step> steps = new LinkedHashMap<>();
        plan.steps().forEach(step -> steps.put(step.id(), step));
        Map<String, Set<String>> stopped = new LinkedHashMap<>();
        Set<Priority> broken = EnumSet.noneOf(Priority.class);
        for (Priority last : List.of(Priority.MUST, Priority.SHOULD)) {
            List<Step> kept = plan.steps().stream()
                    .filter(step -> step.priority().compareTo(last) <= 0)
                    .toList();
            if (kept.isEmpty() || kept.size() == plan.steps().size()) {
                continue;
            }
            Proof part = prover.prove(new Plan(kept));
            if (!part.holds()) {
                broken.add(last);
            }
            for (Finding finding : part.findings()) {
                if (finding.severity() == Severity.STOP) {
                    finding.step()
                            .ifPresent(id -> stopped.computeIfAbsent(id, x -> new LinkedHashSet<>())
                                    .addAll(states(finding.reason())));
                }
            }
        }
        if (stopped.isEmpty()) {
            return new Leaning(List.of(), broken);
        }
        Map<String, List<String>> leaning = new LinkedHashMap<>();
        stopped.keySet().forEach(id -> leaning.put(id, new ArrayList<>()));
        for (Because because : new Reliance(prover, plan).reasons()) {
            List<String> on = leaning.get(because.forStep());
            if (on != null
                    && stopped.get(because.forStep()).contains(because.state())
                    && isWantedLess(steps, because.step(), because.forStep())
                    && !on.contains(because.step())) {
                on.add(because.step());
            }
        }
        return new Leaning(findings(steps, leaning), broken);
    }

    /** What a step lacks, or must not find. */
    private static List<String> states(Reason reason) {
        if (reason instanceof Reason.NeedUnmet unmet) {
            return unmet.anyOf();
        }
        return reason instanceof Reason.MustNotHold found ? List.of(found.state()) : List.of();
    }

    private static boolean isWantedLess(Map<String, Step> steps, String id, String than) {
        return steps.get(id).priority().compareTo(steps.get(than).priority()) > 0;
    }

    private static List<Finding> findings(Map<String, Step> steps, Map<String, List<String>> leaning) {
        Map<String, List<String>> byGround = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        leaning.forEach((id, on) -> {
            on.forEach(ground ->
                    byGround.computeIfAbsent(ground, g -> new ArrayList<>()).add(id));
            if (on.isEmpty()) {
                findings.add(finding(
                        id,
                        steps.get(id).priority(),
                        new Reason.StopsAlone(id, steps.get(id).priority())));
            }
        });
        byGround.forEach((ground, leaners) -> {
            Priority dearest = leaners.stream()
                    .map(id -> steps.get(id).priority())
                    .min(Priority::compareTo)
                    .orElseThrow();
            findings.add(finding(
                    ground,
                    dearest,
                    new Reason.LeansOn(leaners, ground, steps.get(ground).priority())));
        });
        return findings;
    }

    private static Finding finding(String step, Priority dearest, Reason reason) {
        Severity severity = dearest == Priority.MUST ? Severity.WARN : Severity.NOTE;
        return new Finding(Codes.LEANS_ON_LESS, severity, Optional.of(step), List.of(), reason);
    }
}
