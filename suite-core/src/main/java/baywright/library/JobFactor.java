package baywright.library;

import baywright.script.Place;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * Makes times (and, where it says so, quantities of items) larger or smaller by a surveyed fact: hard paint, heavy soil.
 *
 * @param id       stable kebab-case id
 * @param fact     the surveyed fact that it reads; the fact {@code size} is a number and multiplies as it is
 * @param values   factor by the fact's value; a value that is not listed counts 1
 * @param families families whose stages it touches; empty: every family
 * @param stages   stages that it touches whatever their family; empty: none beyond {@code families}
 * @param except   stages that it leaves alone
 * @param onlyPer  only lines with this driver, or the empty text for every driver
 * @param items    whether quantities of items are multiplied too
 * @param place    where it was declared
 */
public record JobFactor(
        String id,
        String fact,
        Map<String, BigDecimal> values,
        List<String> families,
        List<String> stages,
        List<String> except,
        String onlyPer,
        boolean items,
        Place place) {

    public JobFactor {
        values = Map.copyOf(values);
        families = List.copyOf(families);
        stages = List.copyOf(stages);
        except = List.copyOf(except);
    }

    /** Whether it touches a line of this stage with this driver. */
    public boolean touches(String stage, String family, String driver) {
        if (except.contains(stage) || (!onlyPer.isEmpty() && !onlyPer.equals(driver))) {
            return false;
        }
        return stages.contains(stage) || families.contains(family) || (families.isEmpty() && stages.isEmpty());
    }
}
