package baywright.plan;

import java.math.BigDecimal;

/** A link of the chain that explains a finding. */
public sealed interface Cause {

    /** Nothing in the plan sets the state, and the survey did not find it. */
    record NeverSet(String state) implements Cause {}

    /** The survey found the state. */
    record Surveyed(String state) implements Cause {}

    /** A step set the state. */
    record SetBy(String state, String step) implements Cause {}

    /** A step cleared the state. */
    record ClearedBy(String state, String step) implements Cause {}

    /** The state was set and has run out. */
    record Perished(String state, String step, BigDecimal afterMinutes, BigDecimal lastsMinutes) implements Cause {}

    /** A step started what will bring the state, but it is not there yet. */
    record NotYet(String state, String step, BigDecimal missingMinutes) implements Cause {}

    /** The bay does not give the condition. */
    record BayLacks(String state, String bay) implements Cause {}

    /** The bay gives a condition that is not wanted. */
    record BayGives(String state, String bay) implements Cause {}

    /** Only a later step sets the state. */
    record SetLater(String state, String step) implements Cause {}

    /** Only a later step clears the state. */
    record ClearedLater(String state, String step) implements Cause {}
}
