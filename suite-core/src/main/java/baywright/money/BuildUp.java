package baywright.money;

import baywright.money.LineKind.Column;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a quote's figures pile up: each bar begins where the one before ends, sums begin at zero. In the currency of the quote, without
 * tax up to the net price.
 *
 * @param price from labour by the shop's charge rates up to the most that may be asked for
 * @param cost  what the job costs the shop, and what the net price leaves of it
 */
public record BuildUp(List<Bar> price, List<Bar> cost) {

    private static final String CHARGE = "rates.charge.";

    public BuildUp {
        price = List.copyOf(price);
        cost = List.copyOf(cost);
    }

    /** What a bar is. */
    public enum What {
        /** Lines of the ledger of one kind. */
        LINES,
        /** From the exact net to the net in coins, or to what a round price leaves; left out when nothing is rounded. */
        ROUNDING,
        /** Sum: the price without tax. */
        NET,
        TAX,
        /** Sum: what the customer pays. */
        PRICE,
        /** What the high end of the range adds, with tax. */
        CONTINGENCY,
        /** Sum: the high end of the range. */
        MOST,
        /** Sum: everything that the job costs. */
        COST,
        /** From all cost to the net price; falls when the price is a loss. */
        LEFT;

        /** Whether it begins at zero. */
        public boolean isSum() {
            return this == NET || this == PRICE || this == MOST || this == COST;
        }
    }

    /**
     * One bar.
     *
     * @param kind  of its lines; empty for what is no line
     * @param of    for labour the charge rate's name, for tax and contingency their percent; else empty
     * @param from  where it begins
     * @param to    where it ends, less than {@code from} for what is let off
     * @param lines of the ledger behind it
     */
    public record Bar(
            What what, Optional<LineKind> kind, String of, BigDecimal from, BigDecimal to, List<LedgerLine> lines) {
        public Bar {
            lines = List.copyOf(lines);
        }

        /** What it adds; for a sum all of it. */
        public BigDecimal amount() {
            return to.subtract(from);
        }
    }

    public static BuildUp of(Quote quote) {
        return new BuildUp(price(quote), cost(quote));
    }

    private static List<Bar> price(Quote quote) {
        Pile pile = new Pile();
        Ledger ledger = quote.ledger();
        Map<String, List<LedgerLine>> labour = new LinkedHashMap<>();
        for (LedgerLine line : ledger.lines(LineKind.LABOUR)) {
            labour.computeIfAbsent(charge(line), grade -> new ArrayList<>()).add(line);
        }
        labour.forEach((grade, lines) -> pile.add(LineKind.LABOUR, grade, lines));
        for (LineKind kind : LineKind.values()) {
            if (kind.column() == Column.PRICE && kind != LineKind.LABOUR) {
                pile.add(kind, "", ledger.lines(kind));
            }
        }
        pile.to(What.ROUNDING, "", quote.price().net().getAmount());
        pile.sum(What.NET);
        BigDecimal taxed = quote.price().net().getAmount();
        for (Price.Tax tax : quote.price().taxes()) {
            taxed = taxed.add(tax.tax().getAmount());
            pile.always(What.TAX, tax.percent().toPlainString(), taxed);
        }
        pile.sum(What.PRICE);
        pile.always(
                What.CONTINGENCY,
                quote.range().contingencyPercent().toPlainString(),
                quote.range().high().gross().getAmount());
        pile.sum(What.MOST);
        return pile.bars;
    }

    /** The charge rate that a line of labour goes by. */
    private static String charge(LedgerLine line) {
        return line.trail().stream()
                .filter(Origin.Term.class::isInstance)
                .map(origin -> ((Origin.Term) origin).field())
                .filter(field -> field.startsWith(CHARGE))
                .map(field -> field.substring(CHARGE.length()))
                .findFirst()
                .orElse("");
    }

    private static List<Bar> cost(Quote quote) {
        Pile pile = new Pile();
        for (LineKind kind : LineKind.values()) {
            if (kind.column() == Column.COST) {
                pile.add(kind, "", quote.ledger().lines(kind));
            }
        }
        pile.sum(What.COST);
        pile.always(What.LEFT, "", quote.price().net().getAmount());
        pile.sum(What.NET);
        return pile.bars;
    }

    /** Bars so far and where the last one ended. */
    private static final class Pile {

        private final List<Bar> bars = new ArrayList<>();
        private BigDecimal top = BigDecimal.ZERO;

        void add(LineKind kind, String of, List<LedgerLine> lines) {
            if (!lines.isEmpty()) {
                BigDecimal from = top;
                top = lines.stream().map(LedgerLine::amount).reduce(top, BigDecimal::add);
                bars.add(new Bar(What.LINES, Optional.of(kind), of, from, top, lines));
            }
        }

        void to(What what, String of, BigDecimal end) {
            if (end.compareTo(top) != 0) {
                always(what, of, end);
            }
        }

        void always(What what, String of, BigDecimal end) {
            bars.add(new Bar(what, Optional.empty(), of, top, end, List.of()));
            top = end;
        }

        void sum(What what) {
            bars.add(new Bar(what, Optional.empty(), "", BigDecimal.ZERO, top, List.of()));
        }
    }
}
