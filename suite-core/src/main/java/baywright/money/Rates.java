package baywright.money;

import static baywright.money.Percent.share;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;

/**
 * What a site charges and what its hours and materials cost, without tax. Field names are those of the shop's file, so
 * that a trail can name them.
 *
 * @param currency              the site's currency; never a pseudo-currency such as gold
 * @param charge                charge-out per attended hour by grade, each above zero
 * @param wage                  pay per paid hour, not negative
 * @param employerPercent       what the employer adds to the pay, not negative
 * @param utilisationPercent    share of paid hours that land on a job, above 0 to 100
 * @param overhead              rent, power, insurance … per sold hour, not negative
 * @param machine               wear per hour that a machine runs, not negative
 * @param wastePerJob           rags, discs, effluent … once a job, not negative
 * @param reworkPercent         reserve on the cost of labour, not negative
 * @param materialMarkupPercent what is added to the cost of materials, not negative
 * @param margins               margins below which the owner signs
 * @param contingency           what is held ready above the price
 * @param bySkill               for steps that ask for a skill, by the skill; steps of other skills go by the job's grade
 */
public record Rates(
        CurrencyUnit currency,
        Map<String, BigDecimal> charge,
        BigDecimal wage,
        BigDecimal employerPercent,
        BigDecimal utilisationPercent,
        BigDecimal overhead,
        BigDecimal machine,
        BigDecimal wastePerJob,
        BigDecimal reworkPercent,
        BigDecimal materialMarkupPercent,
        Margins margins,
        Contingency contingency,
        Map<String, SkillRate> bySkill) {

    /** Precision of every division of money: 34 significant digits, half even. */
    static final MathContext PRECISION = MathContext.DECIMAL128;

    /**
     * What a skill is charged and paid.
     *
     * @param grade one of the charge-out rates
     * @param wage  pay per paid hour where it differs from the shop's, not negative
     */
    public record SkillRate(String grade, Optional<BigDecimal> wage) {}

    /**
     * Margins, as percent of the net price, below which the owner signs.
     *
     * @param afterDirectPercent after the pay of the hours worked and the materials, below 100
     * @param afterAllPercent    after everything that the job costs, below 100
     * @param targetPercent      what the shop would like to be left after everything, below 100 and not below
     *                           {@code afterAllPercent}
     */
    public record Margins(
            BigDecimal afterDirectPercent, BigDecimal afterAllPercent, Optional<BigDecimal> targetPercent) {
        public Margins {
            targetPercent.ifPresent(target -> {
                requireBelow100("margins.targetPercent", target);
                if (target.compareTo(afterAllPercent) < 0) {
                    throw new IllegalArgumentException(
                            "margins.targetPercent must not be below afterAllPercent, got " + target.toPlainString());
                }
            });
            requireBelow100("margins.afterDirectPercent", afterDirectPercent);
            requireBelow100("margins.afterAllPercent", afterAllPercent);
        }

        /** Without a target. */
        public Margins(BigDecimal afterDirectPercent, BigDecimal afterAllPercent) {
            this(afterDirectPercent, afterAllPercent, Optional.empty());
        }

        private static void requireBelow100(String field, BigDecimal percent) {
            if (percent.compareTo(Percent.HUNDRED) >= 0) {
                throw new IllegalArgumentException(field + " must be below 100, got " + percent.toPlainString());
            }
        }
    }

    /**
     * Percent of labour held ready above the price, by how well the paint is known.
     *
     * @param trialDonePercent after a trial section
     * @param noTrialPercent   without one
     * @param riskyPercent     on unknown, single-stage or repainted panels
     * @param confidencePercent where given, the contingency is instead what it takes to carry the hands-on time with this
     *                          confidence, 50 to 99
     */
    public record Contingency(
            BigDecimal trialDonePercent,
            BigDecimal noTrialPercent,
            BigDecimal riskyPercent,
            Optional<BigDecimal> confidencePercent) {
        public Contingency {
            requireNotNegative("contingency.trialDonePercent", trialDonePercent);
            requireNotNegative("contingency.noTrialPercent", noTrialPercent);
            requireNotNegative("contingency.riskyPercent", riskyPercent);
            confidencePercent.ifPresent(percent -> {
                if (percent.compareTo(BigDecimal.valueOf(50)) < 0 || percent.compareTo(BigDecimal.valueOf(99)) > 0) {
                    throw new IllegalArgumentException(
                            "contingency.confidencePercent must be from 50 to 99, got " + percent.toPlainString());
                }
            });
        }

        /** By how well the paint is known only. */
        public Contingency(BigDecimal trialDonePercent, BigDecimal noTrialPercent, BigDecimal riskyPercent) {
            this(trialDonePercent, noTrialPercent, riskyPercent, Optional.empty());
        }

        public BigDecimal percent(Confidence confidence) {
            return switch (confidence) {
                case TRIAL_DONE -> trialDonePercent;
                case NO_TRIAL -> noTrialPercent;
                case RISKY -> riskyPercent;
            };
        }
    }

    public Rates {
        if (currency.isPseudoCurrency()) {
            throw new IllegalArgumentException("currency " + currency + " has no coins to round to");
        }
        if (charge.isEmpty()) {
            throw new IllegalArgumentException("rates.charge needs at least one grade with its rate");
        }
        charge.forEach((grade, rate) -> {
            if (rate.signum() <= 0) {
                throw new IllegalArgumentException(
                        "rates.charge." + grade + " must be above zero, got " + rate.toPlainString());
            }
        });
        requireNotNegative("rates.wage", wage);
        requireNotNegative("rates.employerPercent", employerPercent);
        if (utilisationPercent.signum() <= 0 || utilisationPercent.compareTo(Percent.HUNDRED) > 0) {
            throw new IllegalArgumentException("rates.utilisationPercent must be above 0 and at most 100, got "
                    + utilisationPercent.toPlainString());
        }
        requireNotNegative("rates.overhead", overhead);
        requireNotNegative("rates.machine", machine);
        requireNotNegative("rates.wastePerJob", wastePerJob);
        requireNotNegative("rates.reworkPercent", reworkPercent);
        requireNotNegative("rates.materialMarkupPercent", materialMarkupPercent);
        for (Map.Entry<String, SkillRate> skill : bySkill.entrySet()) {
            String field = "rates.bySkill." + skill.getKey();
            if (!charge.containsKey(skill.getValue().grade())) {
                throw new IllegalArgumentException(
                        field + " names the rate '" + skill.getValue().grade() + "', which rates.charge has not");
            }
            skill.getValue().wage().ifPresent(pay -> requireNotNegative(field + ".wage", pay));
        }
        bySkill = Collections.unmodifiableSortedMap(new TreeMap<>(bySkill));
        SortedMap<String, BigDecimal> sorted = new TreeMap<>(charge);
        charge = Collections.unmodifiableSortedMap(sorted);
    }

    /** The same for every skill. */
    public Rates(
            CurrencyUnit currency,
            Map<String, BigDecimal> charge,
            BigDecimal wage,
            BigDecimal employerPercent,
            BigDecimal utilisationPercent,
            BigDecimal overhead,
            BigDecimal machine,
            BigDecimal wastePerJob,
            BigDecimal reworkPercent,
            BigDecimal materialMarkupPercent,
            Margins margins,
            Contingency contingency) {
        this(
                currency,
                charge,
                wage,
                employerPercent,
                utilisationPercent,
                overhead,
                machine,
                wastePerJob,
                reworkPercent,
                materialMarkupPercent,
                margins,
                contingency,
                Map.of());
    }

    private static void requireNotNegative(String field, BigDecimal amount) {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException(field + " must not be negative, got " + amount.toPlainString());
        }
    }

    /**
     * Charge-out per attended hour.
     *
     * @throws IllegalArgumentException when the shop has no such grade
     */
    public BigDecimal chargeFor(String grade) {
        BigDecimal rate = charge.get(grade);
        if (rate == null) {
            throw new IllegalArgumentException(
                    "no rate is called '" + grade + "'; the shop has " + String.join(", ", charge.keySet()));
        }
        return rate;
    }

    /** What an hour costs, by the paid and by the sold hour. */
    public HourCost hourCost() {
        return hourCost(wage);
    }

    /** What an hour of a skill costs; the empty text, and skills without a wage of their own, go by the shop's. */
    public HourCost hourCostOf(String skill) {
        return hourCost(wageOf(skill).orElse(wage));
    }

    /** The wage that the shop names for a skill. */
    Optional<BigDecimal> wageOf(String skill) {
        return Optional.ofNullable(bySkill.get(skill)).flatMap(SkillRate::wage);
    }

    /** The charge-out grade of a skill, or the job's. */
    String gradeOf(String skill, String jobs) {
        return Optional.ofNullable(bySkill.get(skill)).map(SkillRate::grade).orElse(jobs);
    }

    private HourCost hourCost(BigDecimal pay) {
        return new HourCost(pay.multiply(BigDecimal.ONE.add(share(employerPercent))), share(utilisationPercent));
    }
}
