package baywright.money;

import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What hours cost and what they are sold for. */
final class Labour {

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private final Rates rates;
    private final JobTerms terms;
    private final HourCost hour;
    private final BigDecimal soldHour;
    private final BigDecimal idleHour;
    private final BigDecimal charge;

    /** Whose hours: a step's, or a family's for the whole job. */
    private record Work(
            Optional<String> step, Priority priority, String subject, BigDecimal minutes, BigDecimal hours) {

        Work(Optional<String> step, Priority priority, String subject, BigDecimal minutes) {
            this(step, priority, subject, minutes, minutes.divide(SIXTY, Rates.PRECISION));
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
        hour = rates.hourCost();
        soldHour = hour.perSoldHour();
        idleHour = hour.idlePerSoldHour();
        charge = rates.chargeFor(terms.grade());
    }

    /** Cost and price of so many minutes; nothing for none, and no line for a rate of nothing. */
    List<LedgerLine> of(Optional<String> step, Priority priority, String subject, BigDecimal minutes) {
        if (minutes.signum() == 0) {
            return List.of();
        }
        Work work = new Work(step, priority, subject, minutes);
        return Stream.of(pay(work), idle(work), overhead(work), rework(work), price(work), discount(work))
                .filter(line -> line.rate().signum() != 0)
                .toList();
    }

    /** Wear of the machine of a step over so many minutes. */
    LedgerLine machine(String step, Priority priority, String stage, BigDecimal minutes) {
        Work work = new Work(Optional.of(step), priority, stage, minutes);
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
                LineKind.LABOUR_COST, work.hours(), "h", hour.perPaidHour(), work.origin(), wage(), employer());
    }

    private LedgerLine idle(Work work) {
        return work.line(
                LineKind.IDLE_COST,
                work.hours(),
                "h",
                idleHour,
                work.origin(),
                wage(),
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
        BigDecimal cost = work.hours().multiply(soldHour);
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
                charge,
                work.origin(),
                new Origin.Term("rates.charge." + terms.grade(), charge));
    }

    private LedgerLine discount(Work work) {
        BigDecimal price = work.hours().multiply(charge);
        return work.line(
                LineKind.DISCOUNT,
                price,
                rates.currency().getCode(),
                Percent.share(terms.discountLabourPercent()).negate(),
                Origin.Lines.of(price, LineKind.LABOUR),
                new Origin.Term("price.discountLabourPercent", terms.discountLabourPercent()));
    }

    private Origin wage() {
        return new Origin.Term("rates.wage", rates.wage());
    }

    private Origin employer() {
        return new Origin.Term("rates.employerPercent", rates.employerPercent());
    }
}
