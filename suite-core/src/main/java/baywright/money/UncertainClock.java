package baywright.money;

import baywright.chance.Activity;
import baywright.chance.Link;
import baywright.chance.Network;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Step;
import baywright.plan.StepWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The plan's simple clock as a network: each step waits for the one before it, for its fixed start, and for what stands. With
 * every step at its mean it is the clock of the proof. Waits are taken as certain.
 */
final class UncertainClock {

    /** Minutes that the clock may be off by its rounding to ten-thousandths. */
    private static final BigDecimal ROUNDING = new BigDecimal("0.01");

    private UncertainClock() {}

    static Optional<Network> network(Plan plan, Proof proof, PlanWork work, Causes causes) {
        Set<String> fixed = plan.steps().stream()
                .filter(step -> step.at().isPresent())
                .map(Step::id)
                .collect(Collectors.toSet());
        Map<String, StepWork> byId = new HashMap<>();
        work.steps().forEach(step -> byId.put(step.step(), step));
        List<Proof.Slot> slots = proof.clock().stream()
                .filter(slot -> byId.containsKey(slot.step()))
                .toList();
        if (slots.isEmpty()) {
            return Optional.empty();
        }
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            Proof.Slot slot = slots.get(i);
            StepWork step = byId.get(slot.step());
            Activity activity = Activity.of(slot.step(), step.elapsed())
                    .with(causes.loadings(step))
                    .with(causes.rework());
            if (i == 0 || fixed.contains(slot.step())) {
                activity = activity.notBefore(Math.max(0, slot.start().doubleValue()));
            }
            if (i > 0) {
                links.add(Link.after(slots.get(i - 1).step(), slot.step()));
                if (!fixed.contains(slot.step()) && gap(slots.get(i - 1), slot) > 0) {
                    links.add(waitFor(slots.subList(0, i), byId, slot)
                            .orElse(Link.after(slots.get(i - 1).step(), slot.step(), gap(slots.get(i - 1), slot))));
                }
            }
            activities.add(activity);
        }
        return Optional.of(new Network(activities, links));
    }

    /** The wait that a step begins at the end of, if there is one. */
    private static Optional<Link> waitFor(List<Proof.Slot> before, Map<String, StepWork> byId, Proof.Slot slot) {
        for (int j = before.size() - 1; j >= 0; j--) {
            Proof.Slot earlier = before.get(j);
            BigDecimal stood = slot.start().subtract(earlier.end());
            BigDecimal usual = byId.get(earlier.step()).usualStanding();
            if (usual.signum() > 0 && stood.subtract(usual).abs().compareTo(ROUNDING) <= 0) {
                return Optional.of(Link.after(earlier.step(), slot.step(), usual.doubleValue()));
            }
        }
        return Optional.empty();
    }

    private static double gap(Proof.Slot before, Proof.Slot slot) {
        BigDecimal gap = slot.start().subtract(before.end());
        return gap.compareTo(ROUNDING) > 0 ? gap.doubleValue() : 0;
    }
}
