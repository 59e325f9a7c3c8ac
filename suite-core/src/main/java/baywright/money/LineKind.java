package baywright.money;

/** What a ledger line counts. */
public enum LineKind {
    /** Hands-on minutes. */
    HANDS_ON(Column.MINUTES),
    /** Minutes to get ready each time a stage is used. */
    SET_UP(Column.MINUTES),
    /** Minutes to get out and put away a family's tools, once a visit. */
    FAMILY_SET_UP(Column.MINUTES),
    /** Minutes that pass by themselves; they hold the bay and cost nobody's time. */
    STANDING(Column.WAITING),

    /** Pay, with the employer's extra, of the hours worked. */
    LABOUR_COST(Column.COST),
    /** Paid time that lands on no job, carried by the hours that do. */
    IDLE_COST(Column.COST),
    /** Materials at what they cost. */
    MATERIAL_COST(Column.COST),
    OVERHEAD(Column.COST),
    /** Wear of machines. */
    MACHINE(Column.COST),
    WASTE(Column.COST),
    /** Reserve for doing work again. */
    REWORK(Column.COST),

    /** Labour at charge-out. */
    LABOUR(Column.PRICE),
    /** Materials at cost with the mark-up. */
    MATERIAL(Column.PRICE),
    /** Taken off the price of labour. */
    DISCOUNT(Column.PRICE),
    /** Taken off the price of materials. */
    MATERIAL_DISCOUNT(Column.PRICE);

    /** Lines of one column add up. */
    public enum Column {
        MINUTES,
        WAITING,
        COST,
        PRICE
    }

    private final Column column;

    LineKind(Column column) {
        this.column = column;
    }

    public Column column() {
        return column;
    }

    /** Whether it is a cost that arises only because the job is done: pay of the hours worked, and materials. */
    public boolean isDirect() {
        return this == LABOUR_COST || this == MATERIAL_COST;
    }
}
