package baywright.cli;

import baywright.site.PlanLimits;
import baywright.site.Site;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.util.Optional;
import picocli.CommandLine.Option;

/** A cap given on the command line in place of the job's, and what is held to it. */
final class CapOptions {

    /** Digits before the decimal point; more is a slip of the hand. */
    private static final long MOST_DIGITS = 12;

    @Option(names = "--cap", paramLabel = "AMOUNT", descriptionKey = "cap")
    private Optional<String> cap = Optional.empty();

    @Option(names = "--price-only", descriptionKey = "price-only")
    private boolean priceOnly;

    /** What a plan for a job is held to. */
    PlanLimits limits(Session session, Site site, Job job) {
        PlanLimits own = PlanLimits.of(job).forPriceOnly(priceOnly);
        return cap.map(given -> own.withCap(amount(session, site, given))).orElse(own);
    }

    private static BigDecimal amount(Session session, Site site, String given) {
        int decimals = site.shop().currency().getDecimalPlaces();
        try {
            BigDecimal amount = new BigDecimal(given);
            boolean fine = amount.stripTrailingZeros().scale() <= decimals;
            if (fine && amount.signum() >= 0 && (long) amount.precision() - amount.scale() <= MOST_DIGITS) {
                return amount;
            }
        } catch (NumberFormatException e) {
            // told below, like any other amount that cannot be a cap
        }
        throw session.badInput("fit.bad-cap", given, site.shop().currency().getCode(), decimals);
    }
}
