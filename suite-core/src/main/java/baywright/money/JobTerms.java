package baywright.money;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * What is agreed about the price of one job.
 *
 * @param grade                 which of the site's charge-out rates applies
 * @param vehicles              how many vehicles alike, from 1; each is set up for by itself
 * @param discountLabourPercent taken off the price of labour, 0 to 100
 * @param discountPercent       taken off what is then left of the price of everything, 0 to 100
 * @param confidence            how well the paint is known
 */
public record JobTerms(
        String grade,
        int vehicles,
        BigDecimal discountLabourPercent,
        BigDecimal discountPercent,
        Confidence confidence) {
    public JobTerms {
        Objects.requireNonNull(grade, "grade");
        Objects.requireNonNull(confidence, "confidence");
        if (vehicles < 1) {
            throw new IllegalArgumentException("vehicles must be 1 or more, got " + vehicles);
        }
        requirePercent("price.discountLabourPercent", discountLabourPercent);
        requirePercent("price.discountPercent", discountPercent);
    }

    /** Without a discount on everything. */
    public JobTerms(String grade, int vehicles, BigDecimal discountLabourPercent, Confidence confidence) {
        this(grade, vehicles, discountLabourPercent, BigDecimal.ZERO, confidence);
    }

    private static void requirePercent(String field, BigDecimal percent) {
        if (percent.signum() < 0 || percent.compareTo(Percent.HUNDRED) > 0) {
            throw new IllegalArgumentException(field + " must be from 0 to 100, got " + percent.toPlainString());
        }
    }

    /** One vehicle at a grade, no discount. */
    public static JobTerms at(String grade, Confidence confidence) {
        return new JobTerms(grade, 1, BigDecimal.ZERO, confidence);
    }
}
