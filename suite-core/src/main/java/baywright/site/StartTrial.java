package baywright.site;

import baywright.plan.Edit;
import baywright.plan.Finding;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What another start of a step does to a plan.
 *
 * @param judged the job with this start
 * @param gained what is found then and is not found now, the gravest first
 * @param gone   what is found now and is not found then, the gravest first
 */
public record StartTrial(JudgedJob judged, List<Finding> gained, List<Finding> gone) {

    public StartTrial {
        gained = List.copyOf(gained);
        gone = List.copyOf(gone);
    }

    /**
     * Tries a start.
     *
     * @param now  the job as it is
     * @param step id of a step of its plan
     * @param at   local time of the shop; empty: as soon as it can
     */
    public static StartTrial of(Site site, JudgedJob now, String step, Optional<LocalDateTime> at) {
        Edit start = new Edit.Delay(step, at);
        JudgedJob then = site.judge(now.job().withPlan(start.applyTo(now.job().plan())));
        return new StartTrial(then, without(then, now), without(now, then));
    }

    private static List<Finding> without(JudgedJob of, JudgedJob other) {
        return of.findings().stream()
                .filter(f -> other.findings().stream().noneMatch(o -> isSame(f, o)))
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** The same matter, though its minutes differ. */
    private static boolean isSame(Finding one, Finding other) {
        return one.code().equals(other.code())
                && one.severity() == other.severity()
                && one.step().equals(other.step())
                && one.zones().equals(other.zones());
    }
}
