package baywright.money;

import baywright.money.LineKind.Column;
import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Predicate;
import org.joda.money.CurrencyUnit;

/**
 * The roll-up of a plan: every line with its trail. Nothing in it is rounded to coins.
 *
 * @param currency  of cost and price
 * @param terms     what is agreed about the job
 * @param lines     by step in the plan's order, then what the job as a whole needs
 * @param purchases items in order of first use
 */
public record Ledger(CurrencyUnit currency, JobTerms terms, List<LedgerLine> lines, List<Purchase> purchases) {

    public Ledger {
        lines = List.copyOf(lines);
        purchases = List.copyOf(purchases);
    }

    /** Lines of one kind. */
    public List<LedgerLine> lines(LineKind kind) {
        return lines.stream().filter(line -> line.kind() == kind).toList();
    }

    /** Lines of one step. */
    public List<LedgerLine> linesOf(String step) {
        return lines.stream()
                .filter(line -> line.step().filter(step::equals).isPresent())
                .toList();
    }

    public BigDecimal total(LineKind kind) {
        return sum(line -> line.kind() == kind);
    }

    public BigDecimal total(Column column) {
        return sum(line -> line.kind().column() == column);
    }

    /** Sum of a column over the lines of one priority; what comes on top of the priorities before it. */
    public BigDecimal total(Column column, Priority priority) {
        return sum(line -> line.kind().column() == column && line.priority() == priority);
    }

    /** Sum of one kind over this priority and those before it. */
    public BigDecimal totalUpTo(LineKind kind, Priority priority) {
        return sum(line -> line.kind() == kind && line.priority().compareTo(priority) <= 0);
    }

    /** Hands-on minutes with all set-ups. */
    public BigDecimal minutes() {
        return total(Column.MINUTES);
    }

    /** Exact price without tax. */
    public BigDecimal net() {
        return total(Column.PRICE);
    }

    /** Exact price of labour after discount, without tax: what contingency is a share of. */
    public BigDecimal labourNet() {
        return total(LineKind.LABOUR).add(total(LineKind.DISCOUNT));
    }

    /** What is let off the price, not above zero. */
    public BigDecimal discount() {
        return total(LineKind.DISCOUNT).add(total(LineKind.MATERIAL_DISCOUNT));
    }

    /** Everything that the job costs the shop; a price below it is a loss. */
    public BigDecimal cost() {
        return total(Column.COST);
    }

    /** Pay of the hours worked, and materials. */
    public BigDecimal directCost() {
        return sum(line -> line.kind().isDirect());
    }

    private BigDecimal sum(Predicate<LedgerLine> which) {
        return lines.stream().filter(which).map(LedgerLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
