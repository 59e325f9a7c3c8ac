package baywright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.MetricPrefix;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tech.units.indriya.AbstractUnit;

/** Our units convert as those of Indriya do, the reference implementation of the Units of Measurement API (JSR 385). */
class UnitAgainstIndriyaTest {

    private static final Map<Unit, javax.measure.Unit<?>> THEIRS = new EnumMap<>(Unit.class);

    static {
        THEIRS.put(Unit.SECOND, SECOND);
        THEIRS.put(Unit.MINUTE, MINUTE);
        THEIRS.put(Unit.HOUR, HOUR);
        THEIRS.put(Unit.DAY, DAY);
        THEIRS.put(Unit.MILLILITRE, MetricPrefix.MILLI(LITRE));
        THEIRS.put(Unit.LITRE, LITRE);
        THEIRS.put(Unit.GRAM, GRAM);
        THEIRS.put(Unit.KILOGRAM, KILOGRAM);
        THEIRS.put(Unit.SQUARE_METRE, SQUARE_METRE);
        THEIRS.put(Unit.METRE, METRE);
        THEIRS.put(Unit.MICROMETRE, MetricPrefix.MICRO(METRE));
        // A thousandth of an inch of 2.54 cm exactly: NIST SP 811 (2008), appendix B.8. Indriya has no inch.
        THEIRS.put(Unit.MIL, MetricPrefix.CENTI(METRE).multiply(254).divide(100_000));
        THEIRS.put(Unit.CELSIUS, CELSIUS);
        THEIRS.put(Unit.PERCENT, PERCENT);
        THEIRS.put(Unit.EACH, ONE);
        THEIRS.put(Unit.METRE_PER_SECOND_SQUARED, METRE_PER_SQUARE_SECOND);
    }

    /** A level is a logarithm against a reference, which JSR 385 leaves out; it is alone in its dimension. */
    private static Unit base(Unit unit) {
        for (Unit other : Unit.values()) {
            boolean isOne = other.toBase(BigDecimal.ONE).compareTo(BigDecimal.ONE) == 0;
            if (other.dimension() == unit.dimension() && isOne) {
                return other;
            }
        }
        throw new AssertionError("no unit of " + unit.dimension() + " has the factor 1");
    }

    @ParameterizedTest
    @EnumSource(value = Unit.class, names = "DECIBEL", mode = EnumSource.Mode.EXCLUDE)
    void everyUnitConvertsToItsBaseAsIndriyaSays(Unit unit) throws javax.measure.IncommensurableException {
        BigDecimal amount = new BigDecimal("7.25");
        Number converted =
                THEIRS.get(unit).getConverterToAny(THEIRS.get(base(unit))).convert((Number) amount);

        assertThat(unit.toBase(amount))
                .isCloseTo(new BigDecimal(converted.toString()), Percentage.withPercentage(1e-12));
    }

    @Test
    void unitsOfOneDimensionHereAreOfOneThereToo() {
        for (Unit one : THEIRS.keySet()) {
            for (Unit other : THEIRS.keySet()) {
                if (one.dimension() == other.dimension()) {
                    assertThat(((AbstractUnit<?>) THEIRS.get(one)).isCompatible(THEIRS.get(other)))
                            .as(one + " and " + other)
                            .isTrue();
                }
            }
        }
    }
}
