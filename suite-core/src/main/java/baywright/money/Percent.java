package baywright.money;

import java.math.BigDecimal;

/** Percents as shares, exactly. */
public final class Percent {

    static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Percent() {}

    /** 25 becomes 0.25. */
    public static BigDecimal share(BigDecimal percent) {
        return percent.movePointLeft(2);
    }

    /** 25 becomes 1.25. */
    public static BigDecimal raised(BigDecimal percent) {
        return BigDecimal.ONE.add(share(percent));
    }
}
