package baywright.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Why something wanted is not in a composed plan. */
public sealed interface Hindrance {

    /**
     * A rule forbids it, or something else stops the only steps that lead there.
     *
     * @param from the first day on which the rule no longer would, where that is known
     */
    record Stopped(Finding finding, Optional<LocalDate> from) implements Hindrance {

        /** Something that no day changes. */
        public Stopped(Finding finding) {
            this(finding, Optional.empty());
        }
    }

    /** No stage of the library brings the state about on these zones. */
    record NoStage(String state) implements Hindrance {}

    /** The stage that would bring it about needs a state that nothing brings about there; {@code byBay}: no bay gives it. */
    record Lacks(String stage, String state, boolean byBay) implements Hindrance {}

    /** The stage that would bring it about must not find a state that was found, and nothing ends it. */
    record Finds(String stage, String state) implements Hindrance {}

    /** The shop has no bay of the kind that the stage needs. */
    record NoBay(String stage, String bay) implements Hindrance {}

    /** It can be had alone, but not together with what is wanted on the same zones and more. */
    record Against(List<String> states) implements Hindrance {
        public Against {
            states = List.copyOf(states);
        }
    }

    /** The vehicle has no such zone. */
    record NoZone() implements Hindrance {}

    /** No way was found; nothing more is known of it. */
    record NoWay() implements Hindrance {}

    /** The search came to its end before it found a way. */
    record TooMany() implements Hindrance {}
}
