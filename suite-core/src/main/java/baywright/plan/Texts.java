package baywright.plan;

import baywright.quantity.Quantity;
import baywright.script.Value;
import java.math.BigDecimal;

/** Short texts of values, for trails and messages. */
final class Texts {

    private Texts() {}

    /** {@code 3}, {@code 2 um}, {@code heavy}, {@code true}. */
    static String of(Value value) {
        if (value.raw() instanceof BigDecimal number) {
            return Math.abs((long) number.scale()) > 40 ? number.toString() : number.toPlainString();
        }
        if (value.raw() instanceof Quantity quantity) {
            return of(Value.of(quantity.amount(), value.place())) + " "
                    + quantity.unit().symbol();
        }
        if (value.raw() instanceof String || value.raw() instanceof Boolean) {
            return value.raw().toString();
        }
        return value.described();
    }
}
