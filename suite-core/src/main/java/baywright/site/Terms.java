package baywright.site;

import baywright.money.Confidence;
import baywright.money.JobTerms;
import baywright.money.SiteTerms;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Setting;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import java.util.Set;

/** What a quote rests on, out of the shop's and the job's files. */
final class Terms {

    /** The state that a trial section brings. */
    private static final String PROVEN = "spot-proven";

    /** The surveyed fact that tells the paint system, and its values that make a price risky. */
    private static final String PAINT = "paint";

    private static final Set<String> RISKY = Set.of("single-stage", "unknown");

    private Terms() {}

    static SiteTerms of(Shop shop) {
        return new SiteTerms(
                shop.rates(), shop.tax(), shop.quote().validDays(), shop.quote().depositPercent());
    }

    /** A job that names no rate takes the shop's only one, or the first by name. */
    static JobTerms of(Job job, Shop shop, Confidence confidence) {
        String grade = job.rate()
                .orElseGet(() -> shop.rates().charge().keySet().iterator().next());
        return new JobTerms(grade, job.vehicles(), job.discountLabourPercent(), confidence);
    }

    /**
     * How well the paint is known: risky where work meets single-stage or unknown paint, proven where a trial section was
     * made or is part of the plan (common practice, no source).
     */
    static Confidence confidence(Setting setting, PlanWork work, Proof proof) {
        boolean risky = work.steps().stream()
                .flatMap(step -> step.zones().stream())
                .distinct()
                .anyMatch(zone -> RISKY.contains(fact(setting, zone)));
        if (risky) {
            return Confidence.RISKY;
        }
        boolean proven = proof.ends().values().stream().anyMatch(states -> states.contains(PROVEN));
        return proven ? Confidence.TRIAL_DONE : Confidence.NO_TRIAL;
    }

    private static String fact(Setting setting, String zone) {
        String ofVehicle = setting.survey().facts().getOrDefault(PAINT, "");
        return setting.survey().zone(zone).facts().getOrDefault(PAINT, ofVehicle);
    }
}
