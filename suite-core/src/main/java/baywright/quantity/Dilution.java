package baywright.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a product is thinned before use, by parts. {@code 1:10} is one part of product and ten parts of water; some labels
 * mean one part in ten of the mix, which is written {@code 1 in 10}. Both readings are common practice, no source.
 *
 * @param product parts of product as it comes from the pack, above zero
 * @param mix     parts of the ready mix, not below {@code product}
 */
public record Dilution(BigDecimal product, BigDecimal mix) {

    /** Used as it comes from the pack. */
    public static final Dilution NEAT = new Dilution(BigDecimal.ONE, BigDecimal.ONE);

    private static final Pattern WRITTEN =
            Pattern.compile("\\s*(\\d{1,6}(?:\\.\\d{1,6})?)(?:\\s*(:)\\s*|\\s+in\\s+)(\\d{1,6}(?:\\.\\d{1,6})?)\\s*");

    public Dilution {
        if (product.signum() <= 0 || mix.compareTo(product) < 0) {
            throw new IllegalArgumentException("a dilution needs 0 < parts of product <= parts of mix, got "
                    + product.toPlainString() + " in " + mix.toPlainString());
        }
    }

    /**
     * Reads {@code 1:10} or {@code 1 in 10}.
     *
     * @throws IllegalArgumentException when it is neither, has no product, or asks for more product than mix
     */
    public static Dilution parse(String written) {
        Matcher parts = WRITTEN.matcher(written);
        if (!parts.matches()) {
            throw new IllegalArgumentException("a dilution is written '1:10' (one part product, ten parts water) or "
                    + "'1 in 10' (one part product in ten parts of mix), got '" + written + "'");
        }
        BigDecimal product = new BigDecimal(parts.group(1));
        BigDecimal other = new BigDecimal(parts.group(3));
        if (product.signum() == 0) {
            throw new IllegalArgumentException("a dilution needs some product, got '" + written + "'");
        }
        if (parts.group(2) != null) {
            return new Dilution(product, product.add(other));
        }
        if (other.compareTo(product) < 0) {
            throw new IllegalArgumentException("a mix cannot hold more product than mix, got '" + written + "'");
        }
        return new Dilution(product, other);
    }

    /** The product in an amount of ready mix, in the same unit, to 16 significant digits. */
    public Quantity concentrateOf(Quantity readyMix) {
        return new Quantity(readyMix.amount().multiply(product).divide(mix, Quantity.PRECISION), readyMix.unit());
    }

    /** The water in an amount of ready mix, in the same unit; with {@link #concentrateOf} it adds up to the mix. */
    public Quantity waterOf(Quantity readyMix) {
        return new Quantity(readyMix.amount().subtract(concentrateOf(readyMix).amount()), readyMix.unit());
    }

    /** The product as a share of the mix, above 0 to 1. */
    public BigDecimal strength() {
        return product.divide(mix, Quantity.PRECISION);
    }
}
