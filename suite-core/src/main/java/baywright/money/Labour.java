package baywright.money;

import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What hours cost and what they are sold for. */
final class Labour {

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private final Rates rates;
    private final JobTerms terms;
    private final Map<String, Pay> bySkill = new HashMap<>();

    /** What an hour of a skill costs and is sold for; worked out once. */
    private record Pay(
            String skill, HourCost hour, BigDecimal sold, BigDecimal idle, String grade, BigDecimal charge) {}

    /** Whose hours: a step's, or a family's for the whole job. */
    private record Work(
            Optional<String> step, Priority priority, String subject, BigDecimal minutes, BigDecimal hours, Pay pay) {

        Work(Optional<String> step, Priority priority, String subject, BigDecimal minutes, Pay pay) {
            this(step, priority, subject, minutes, minutes.divide(SIXTY, Rates.PRECISION), pay);
        }

        Origin origin() {
            return step.isPresent()
                    ? Origin.Lines.of(minutes, LineKind.HANDS_ON, LineKind.SET_UP)
                    : Origin.Lines.of(minutes, LineKind.FAMILY_SET_UP);
        }

        LedgerLine line(LineKind kind, BigDecimal quantity, String unit, BigDecimal rate, Origin... origins) {
            return new LedgerLine(kind, step, priority, subject, quantity, unit, rate, List.of(origins));
        }
    }

    Labour(Rates rates, JobTerms terms) {
        this.rates = rates;
        this.terms = terms;
    }

    /** The pay of a skill; the empty text for work that asks for none. */
    private Pay pay(String skill) {
        return bySkill.computeIfAbsent(skill, s -> {
            HourCost hour = rates.hourCostOf(s);
            String grade = rates.gradeOf(s, terms.grade());
            return new Pay(s, hour, hour.perSoldHour(), hour.idlePerSoldHour(), grade, rates.chargeFor(grade));
        });
    }

    /** Cost and price of so many minutes; nothing for none, and no line for a rate of nothing. */
    List<LedgerLine> of(Optional<String> step, Priority priority, String subject, BigDecimal minutes, String skill) {
        if (minutes.signum() == 0) {
            return List.of();
        }
        Work work = new Work(step, priority, subject, minutes, pay(skill));
        return Stream.of(
                        pay(work),
                        idle(work),
                        overhead(work),
                        rework(work),
                        price(work),
                        discount(work),
                        discountOfAll(work))
                .filter(line -> line.rate().signum() != 0)
                .toList();
    }

    /** Wear of the machine of a step over so many minutes. */
    LedgerLine machine(String step, Priority priority, String stage, BigDecimal minutes) {
        Work work = new Work(Optional.of(step), priority, stage, minutes, pay(""));
        return work.line(
                LineKind.MACHINE,
                work.hours(),
                "h",
                rates.machine(),
                Origin.Lines.of(minutes, LineKind.HANDS_ON),
                new Origin.Term("rates.machine", rates.machine()));
    }

    private LedgerLine pay(Work work) {
        return work.line(
                LineKind.LABOUR_COST,
                work.hours(),
                "h",
                work.pay().hour().perPaidHour(),
                work.origin(),
                wage(work),
                employer());
    }

    private LedgerLine idle(Work work) {
        return work.line(
                LineKind.IDLE_COST,
                work.hours(),
                "h",
                work.pay().idle(),
                work.origin(),
                wage(work),
                employer(),
                new Origin.Term("rates.utilisationPercent", rates.utilisationPercent()));
    }

    private LedgerLine overhead(Work work) {
        return work.line(
                LineKind.OVERHEAD,
                work.hours(),
                "h",
                rates.overhead(),
                work.origin(),
                new Origin.Term("rates.overhead", rates.overhead()));
    }

    private LedgerLine rework(Work work) {
        BigDecimal cost = work.hours().multiply(work.pay().sold());
        return work.line(
                LineKind.REWORK,
                cost,
                rates.currency().getCode(),
                Percent.share(rates.reworkPercent()),
                Origin.Lines.of(cost, LineKind.LABOUR_COST, LineKind.IDLE_COST),
                new Origin.Term("rates.reworkPercent", rates.reworkPercent()));
    }

    private LedgerLine price(Work work) {
        return work.line(
                LineKind.LABOUR,
                work.hours(),
                "h",
                work.pay().charge(),
                work.origin(),
                new Origin.Term("rates.charge." + work.pay().grade(), work.pay().charge()));
    }

    private LedgerLine discount(Work work) {
        BigDecimal price = work.hours().multiply(work.pay().charge());
        return work.line(
                LineKind.DISCOUNT,
                price,
                rates.currency().getCode(),
                Percent.share(terms.discountLabourPercent()).negate(),
                Origin.Lines.of(price, LineKind.LABOUR),
                new Origin.Term("price.discountLabourPercent", terms.discountLabourPercent()));
    }

    /** What is let off everything is let off what the discount on labour leaves. */
    private LedgerLine discountOfAll(Work work) {
        BigDecimal left = work.hours()
                .multiply(work.pay().charge())
                .multiply(Percent.share(Percent.HUNDRED.subtract(terms.discountLabourPercent())));
        return work.line(
                LineKind.DISCOUNT,
                left,
                rates.currency().getCode(),
                Percent.share(terms.discountPercent()).negate(),
                Origin.Lines.of(left, LineKind.LABOUR, LineKind.DISCOUNT),
                new Origin.Term("price.discountPercent", terms.discountPercent()));
    }

    private Origin wage(Work work) {
        String skill = work.pay().skill();
        return rates.wageOf(skill)
                .map(own -> new Origin.Term("rates.bySkill." + skill + ".wage", own))
                .orElse(new Origin.Term("rates.wage", rates.wage()));
    }

    private Origin employer() {
        return new Origin.Term("rates.employerPercent", rates.employerPercent());
    }
}
