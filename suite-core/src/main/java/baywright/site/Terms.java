package baywright.site;

import baywright.money.Confidence;
import baywright.money.JobTerms;
import baywright.money.SiteTerms;
import baywright.workspace.Job;
import baywright.workspace.Shop;

/** What a quote rests on, out of the shop's and the job's files. */
final class Terms {

    private Terms() {}

    static SiteTerms of(Shop shop) {
        return new SiteTerms(
                shop.rates(), shop.tax(), shop.quote().validDays(), shop.quote().depositPercent());
    }

    /** A job that names no rate takes the shop's only one, or the first by name. */
    static JobTerms of(Job job, Shop shop, Confidence confidence) {
        String grade = job.rate()
                .orElseGet(() -> shop.rates().charge().keySet().iterator().next());
        return new JobTerms(grade, job.vehicles(), job.discountLabourPercent(), job.discountPercent(), confidence);
    }
}
