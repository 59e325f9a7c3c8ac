package baywright.plan;

import baywright.script.Place;
import java.math.BigDecimal;
import java.util.List;

/**
 * Where a figure of a step comes from.
 *
 * @param place   the line of the script
 * @param driver  what the line counts by; empty for a line that counts by nothing
 * @param amount  how much of the driver the step has
 * @param source  where that amount comes from
 * @param times   further factor that the line itself names
 * @param given   inputs and facts that the line depends on, with their values
 * @param factors job factors that were applied, in the library's order
 * @param zones   zones that the line was worked out for, in the vehicle's order
 */
public record Trail(
        Place place,
        String driver,
        BigDecimal amount,
        Source source,
        BigDecimal times,
        List<Given> given,
        List<Applied> factors,
        List<String> zones) {

    public Trail {
        given = List.copyOf(given);
        factors = List.copyOf(factors);
        zones = List.copyOf(zones);
    }

    /** Where the amount of a driver comes from. */
    public enum Source {
        /** One step is one: the driver {@code vehicle}, a set-up, a wait. */
        USE,
        /** Written in the step. */
        STEP,
        /** Counted in the survey. */
        SURVEY,
        /** Measures of the vehicle's zones. */
        SHAPE,
        /** Counted in the survey on some zones, measures of the shape on the others. */
        SURVEY_AND_SHAPE
    }

    /** Who gave a value. */
    public enum Giver {
        STEP,
        SURVEY,
        USUAL
    }

    /** An input or a fact with its value as text. */
    public record Given(String name, String value, Giver giver) {}

    /** A job factor with the fact's value and what it made of it. */
    public record Applied(String factor, String fact, String value, BigDecimal by, Place place) {}
}
