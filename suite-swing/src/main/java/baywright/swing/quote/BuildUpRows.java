package baywright.swing.quote;

import baywright.money.BuildUp;
import baywright.money.BuildUp.Bar;
import baywright.money.BuildUp.What;
import baywright.money.LineKind;
import baywright.money.Quote;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.swing.table.AbstractTableModel;

/** The bars of a quote's price, then those of its cost, as rows with a number, a name and an amount. */
final class BuildUpRows extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    /** Columns. */
    static final int NUMBER = 0;

    static final int NAME = 1;
    static final int AMOUNT = 2;

    private transient List<Bar> bars = List.of();
    private transient int ofPrice;
    private transient Quote quote;
    private transient Figures figures;

    void show(Quote now, Figures written) {
        BuildUp built = BuildUp.of(now);
        List<Bar> all = new ArrayList<>(built.price());
        all.addAll(built.cost());
        bars = all;
        ofPrice = built.price().size();
        quote = now;
        figures = written;
        fireTableStructureChanged();
    }

    void clear() {
        bars = List.of();
        ofPrice = 0;
        fireTableStructureChanged();
    }

    List<Bar> bars() {
        return bars;
    }

    Bar bar(int row) {
        return bars.get(row);
    }

    /** How many rows belong to the price; the others tell the cost. */
    int ofPrice() {
        return ofPrice;
    }

    /** What a bar is, in words. */
    String name(Bar bar) {
        return switch (bar.what()) {
            case LINES -> {
                LineKind kind = bar.kind().orElseThrow();
                yield bar.of().isEmpty() ? Words.of("kind", kind) : Words.of("bar.labour-at", bar.of());
            }
            case TAX -> Words.of("bar.tax", quote.terms().tax().name(), bar.of());
            case CONTINGENCY -> Words.of("bar.contingency", bar.of());
            case LEFT -> Words.of(bar.amount().signum() < 0 ? "bar.lost" : "bar.left");
            default -> Words.of("bar", bar.what());
        };
    }

    @Override
    public int getRowCount() {
        return bars.size();
    }

    @Override
    public int getColumnCount() {
        return 3;
    }

    @Override
    public String getColumnName(int column) {
        return switch (column) {
            case NUMBER -> Words.of("column.number");
            case NAME -> Words.of("column.what");
            default -> figures == null ? "" : figures.currency().getCode();
        };
    }

    @Override
    public Object getValueAt(int row, int column) {
        Bar bar = bars.get(row);
        return switch (column) {
            case NUMBER -> Integer.toString(row + 1);
            case NAME -> name(bar);
            default -> signed(bar);
        };
    }

    /** What is added has a plus, what is let off a minus, sums neither. */
    private String signed(Bar bar) {
        BigDecimal size = bar.amount().abs();
        // less than a coin may have been rounded away
        String amount = bar.what() == What.ROUNDING ? figures.exact(size) : figures.bare(size);
        if (bar.what().isSum()) {
            return amount;
        }
        return bar.amount().signum() < 0 ? Words.of("minus", amount) : Words.of("plus", amount);
    }

    /** Whether a row is the net price that cost is held against. */
    boolean isSum(int row) {
        return bars.get(row).what().isSum();
    }

    /** Whether a bar tells of a loss. */
    static boolean isLoss(Bar bar) {
        return bar.what() == What.LEFT && bar.amount().signum() < 0;
    }
}
