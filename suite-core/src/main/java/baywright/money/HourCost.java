package baywright.money;

import java.math.BigDecimal;

/**
 * What an hour of a person costs. Only a share of the hours that are paid can be sold, so a sold hour costs more than a
 * paid one; common method of cost accounting.
 *
 * @param perPaidHour pay and employer's extra for an hour that is paid, not negative
 * @param soldShare   share of paid hours that are sold, above 0 to 1
 */
public record HourCost(BigDecimal perPaidHour, BigDecimal soldShare) {

    public HourCost {
        if (perPaidHour.signum() < 0) {
            throw new IllegalArgumentException("an hour's cost must not be negative, got " + perPaidHour);
        }
        if (soldShare.signum() <= 0 || soldShare.compareTo(BigDecimal.ONE) > 0) {
            throw new IllegalArgumentException(
                    "the share of hours that are sold must be above 0 and at most 1, got " + soldShare);
        }
    }

    /**
     * From a year's figures of one person.
     *
     * @param pay             pay of the year without the employer's extra
     * @param employerPercent the employer's extra
     * @param paidHours       hours paid, above zero
     * @param absentHours     hours paid but not present: holidays, sickness
     * @param onJobsPercent   share of the hours present that land on a job
     */
    public static HourCost ofYear(
            BigDecimal pay,
            BigDecimal employerPercent,
            BigDecimal paidHours,
            BigDecimal absentHours,
            BigDecimal onJobsPercent) {
        BigDecimal sold = paidHours.subtract(absentHours).multiply(Percent.share(onJobsPercent));
        return new HourCost(
                pay.multiply(Percent.raised(employerPercent)).divide(paidHours, Rates.PRECISION),
                sold.divide(paidHours, Rates.PRECISION));
    }

    /** Cost of an hour that is sold, to 34 significant digits. */
    public BigDecimal perSoldHour() {
        return perPaidHour.divide(soldShare, Rates.PRECISION);
    }

    /** Paid time that lands on no job, for each hour that is sold. */
    public BigDecimal idlePerSoldHour() {
        return perSoldHour().subtract(perPaidHour);
    }
}
