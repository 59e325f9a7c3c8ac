package baywright.plan;

import baywright.script.Place;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Why there is a finding: typed data with its numbers. */
public sealed interface Reason {

    /** None of the states that a step needs holds; {@code because} runs from the nearest cause back. */
    record NeedUnmet(String step, List<String> anyOf, String why, List<Cause> because) implements Reason {
        public NeedUnmet {
            anyOf = List.copyOf(anyOf);
            because = List.copyOf(because);
        }
    }

    /** A state holds that a step must not find. */
    record MustNotHold(String step, String state, String why, List<Cause> because) implements Reason {
        public MustNotHold {
            because = List.copyOf(because);
        }
    }

    /** A step comes sooner on its zone than an earlier step's standing time allows, though its start is fixed. */
    record TooSoon(String step, String after, BigDecimal waitedMinutes, BigDecimal leastMinutes, String why)
            implements Reason {}

    /** A step comes later on its zone than an earlier step's standing time allows. */
    record TooLate(String step, String after, BigDecimal waitedMinutes, BigDecimal mostMinutes, String why)
            implements Reason {}

    /** A step starts before the step before it has ended. */
    record Overlaps(String step, String with, BigDecimal minutes) implements Reason {}

    /** The plan names a stage that the library does not have; {@code nearest} may be empty. */
    record StageGone(String step, String stage, String nearest) implements Reason {}

    /** The plan names a zone that the vehicle does not have; {@code nearest} may be empty. */
    record ZoneUnknown(String step, String zone, String nearest) implements Reason {}

    /** A stage does not work on the surface of a zone. */
    record WrongSurface(String step, String surface, List<String> worksOn) implements Reason {
        public WrongSurface {
            worksOn = List.copyOf(worksOn);
        }
    }

    /** An input of a step is not what its stage takes. */
    record BadInput(String step, String input, String met, String wanted) implements Reason {}

    /** A step has no zone to work on. */
    record NoZone(String step) implements Reason {}

    /** No bay of the shop is of the kind that a step needs. */
    record NoBay(String step, String bay) implements Reason {}

    /** A step is fixed before the vehicle is there. */
    record BeforeStart(String step, BigDecimal minutes) implements Reason {}

    /** Something that may stand only so long is not followed by any step on its zones. */
    record LeftStanding(String step, BigDecimal mostMinutes, String why) implements Reason {}

    /** Two steps have one id; {@code count} of them in all. */
    record StepTwice(String step, int count) implements Reason {}

    /** The script of a stage cannot be worked out for the step's inputs and facts. */
    record StageFails(String step, String stage, String message) implements Reason {}

    /** An amount that a step gives for a driver cannot be. */
    record BadDriver(String step, String driver, String met) implements Reason {}

    /**
     * A surveyed fact that the library does not have ({@code wanted} empty), or a value that it cannot take;
     * {@code nearest} may be empty.
     */
    record BadFact(String fact, String met, String wanted, String nearest) implements Reason {}

    /** The survey names a state that the library does not have; {@code nearest} may be empty. */
    record StateUnknown(String state, String nearest) implements Reason {}

    /**
     * A reason of a room that stands above the plan. It names a sentence of {@code findings.properties} and brings the
     * values for it: texts, numbers, and steps as {@link StepName}.
     */
    non-sealed interface Beyond extends Reason {
        /** Key of the sentence. */
        String key();

        /** Values for the sentence's places from {@code {2}} on; step and zones of the finding are {@code {0}} and {@code {1}}. */
        List<Object> values();
    }

    /** The plan ends without states of a goal of the job. */
    record GoalMissed(String goal, String title, List<String> states) implements Beyond {
        public GoalMissed {
            states = List.copyOf(states);
        }

        @Override
        public String key() {
            return Codes.GOAL_MISSED;
        }

        @Override
        public List<Object> values() {
            return List.of(title, "'" + String.join("', '", states) + "'");
        }
    }

    /** The job names a goal that the library does not have; {@code nearest} may be empty. */
    record GoalGone(String goal, String nearest) implements Beyond {
        @Override
        public String key() {
            return nearest.isEmpty() ? Codes.GOAL_GONE : Codes.GOAL_GONE + ".nearest";
        }

        @Override
        public List<Object> values() {
            return List.of(goal, nearest);
        }
    }

    /** Steps need what a step brings that is wanted less than they; {@code leaners} are their ids, at least one. */
    record LeansOn(List<String> leaners, String on, Step.Priority wanted) implements Beyond {
        public LeansOn {
            leaners = List.copyOf(leaners);
            if (leaners.isEmpty()) {
                throw new IllegalArgumentException("'" + on + "' has no step that leans on it");
            }
        }

        @Override
        public String key() {
            return Codes.LEANS_ON_LESS;
        }

        @Override
        public List<Object> values() {
            return List.of(wanted.name().toLowerCase(Locale.ROOT), new StepName(leaners.get(0)), leaners.size() - 1);
        }
    }

    /** A step is stopped when the steps that are wanted less than it are left out, by more than a state that one of them brings. */
    record StopsAlone(String step, Step.Priority wanted) implements Beyond {
        @Override
        public String key() {
            return Codes.LEANS_ON_LESS + ".rule";
        }

        @Override
        public List<Object> values() {
            return List.of(wanted.name().toLowerCase(Locale.ROOT));
        }
    }

    /** A step that a sentence calls by its stage's title. */
    record StepName(String id) {}

    /**
     * A rule of the library speaks.
     *
     * @param rule   its id
     * @param title  the rule in a few words
     * @param why    its reason
     * @param read   figures that decided it, as text by what was asked, in the rule's order
     * @param place  where the rule was declared
     * @param note   why the shop has softened it; empty when it has not
     */
    record RuleSpeaks(
            String step, String rule, String title, String why, Map<String, String> read, Place place, String note)
            implements Reason {
        public RuleSpeaks {
            read = Collections.unmodifiableMap(new LinkedHashMap<>(read));
        }
    }

    /** The shop has softened a rule that the library does not have; {@code nearest} may be empty. */
    record RuleGone(String rule, String nearest) implements Reason {}

    /** A rule of the library cannot be worked out for a step. */
    record RuleFails(String step, String rule, String message) implements Reason {}
}
