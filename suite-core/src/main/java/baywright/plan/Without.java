package baywright.plan;

import baywright.plan.Explanation.Where;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a plan would be without one of its steps, by proving it both ways.
 *
 * @param brings findings that it then has and does not have now, each with the zones that are new; in the proof's order
 * @param mends  findings that it has now, on other steps or none, and then not
 * @param loses  states that hold at the end now and then not; without a place
 * @param gains  states that hold at the end then and not now; without a place
 */
public record Without(List<Finding> brings, List<Finding> mends, List<Where> loses, List<Where> gains) {

    public Without {
        brings = List.copyOf(brings);
        mends = List.copyOf(mends);
        loses = List.copyOf(loses);
        gains = List.copyOf(gains);
    }

    /**
     * Takes a step out and proves.
     *
     * @throws IllegalArgumentException when the plan has no step of that id
     */
    public static Without of(Setting setting, Plan plan, String step) {
        Prover prover = Prover.forSetting(setting);
        Proof now = prover.prove(plan);
        Proof then = prover.prove(new Edit.Drop(step).applyTo(plan));
        List<Finding> others = now.findings().stream()
                .filter(f -> !f.step().equals(Optional.of(step)))
                .toList();
        return new Without(
                more(then.findings(), now.findings()),
                more(others, then.findings()),
                more(setting, now.ends(), then.ends()),
                more(setting, then.ends(), now.ends()));
    }

    /** What makes two findings the same though their causes or figures differ. */
    private record Matter(String code, Optional<String> step, String about) {
        static Matter of(Finding finding) {
            return new Matter(finding.code(), finding.step(), about(finding.reason()));
        }

        private static String about(Reason reason) {
            if (reason instanceof Reason.NeedUnmet r) {
                return String.join("|", r.anyOf());
            }
            if (reason instanceof Reason.MustNotHold r) {
                return r.state();
            }
            if (reason instanceof Reason.RuleSpeaks r) {
                return r.rule();
            }
            if (reason instanceof Reason.TooSoon r) {
                return r.after();
            }
            return reason instanceof Reason.TooLate r ? r.after() : "";
        }
    }

    private static List<Finding> more(List<Finding> these, List<Finding> thanThose) {
        Map<Matter, Set<String>> known = new HashMap<>();
        thanThose.forEach(
                f -> known.computeIfAbsent(Matter.of(f), m -> new TreeSet<>()).addAll(f.zones()));
        List<Finding> more = new ArrayList<>();
        for (Finding finding : these) {
            Set<String> before = known.get(Matter.of(finding));
            List<String> zones = finding.zones().stream()
                    .filter(z -> before == null || !before.contains(z))
                    .toList();
            if (before == null || !zones.isEmpty()) {
                more.add(new Finding(finding.code(), finding.severity(), finding.step(), zones, finding.reason()));
            }
        }
        return more;
    }

    private static List<Where> more(
            Setting setting, Map<String, Set<String>> these, Map<String, Set<String>> thanThose) {
        Map<String, Set<String>> zonesByState = new TreeMap<>();
        VehicleIndex vehicle = new VehicleIndex(setting.shape());
        for (int row = 0; row < vehicle.rows(); row++) {
            String zone = vehicle.id(row);
            Set<String> others = thanThose.getOrDefault(zone, Set.of());
            these.getOrDefault(zone, Set.of()).stream()
                    .filter(s -> !others.contains(s))
                    .forEach(s -> zonesByState
                            .computeIfAbsent(s, x -> new LinkedHashSet<>())
                            .add(zone));
        }
        List<Where> more = new ArrayList<>();
        zonesByState.forEach((state, zones) -> more.add(new Where(state, List.copyOf(zones), Optional.empty())));
        return more;
    }
}
