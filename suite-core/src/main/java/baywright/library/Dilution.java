package baywright.library;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a concentrate is thinned. {@code 1:10} is one part of concentrate and ten of water, so eleven parts in all;
 * {@code 1 in 10} is one part in ten of ready mix.
 *
 * @param concentrate parts of concentrate, above zero
 * @param all         parts of ready mix, not below {@code concentrate}
 */
record Dilution(BigDecimal concentrate, BigDecimal all) {

    private static final String NUMBER = "(\\d{1,6}(?:\\.\\d{1,6})?)";
    private static final Pattern PARTS = Pattern.compile(NUMBER + "\\s*:\\s*" + NUMBER);
    private static final Pattern IN = Pattern.compile(NUMBER + "\\s+in\\s+" + NUMBER);

    /** Reads {@code 1:10} or {@code 1 in 10}; empty for anything else. */
    static Optional<Dilution> read(String text) {
        Matcher parts = PARTS.matcher(text.strip());
        if (parts.matches()) {
            BigDecimal concentrate = new BigDecimal(parts.group(1));
            return of(concentrate, concentrate.add(new BigDecimal(parts.group(2))));
        }
        Matcher in = IN.matcher(text.strip());
        return in.matches() ? of(new BigDecimal(in.group(1)), new BigDecimal(in.group(2))) : Optional.empty();
    }

    private static Optional<Dilution> of(BigDecimal concentrate, BigDecimal all) {
        boolean sound = concentrate.signum() > 0 && all.compareTo(concentrate) >= 0;
        return sound ? Optional.of(new Dilution(concentrate, all)) : Optional.empty();
    }

    /** Concentrate in an amount of ready mix, to 16 significant digits. */
    Quantity concentrateIn(Quantity mix) {
        BigDecimal amount = mix.amount().multiply(concentrate).divide(all, Quantity.PRECISION);
        return new Quantity(amount, mix.unit());
    }
}
