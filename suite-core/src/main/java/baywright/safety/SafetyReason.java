package baywright.safety;

import baywright.plan.Reason;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/** Why there is a finding about safety. Numbers are rounded as they are shown, so that equal reasons compare equal. */
public sealed interface SafetyReason extends Reason.Beyond {

    /**
     * A pair of hands takes in more of something on a day than a value allows.
     *
     * @param grade {@code limit}, {@code action}, {@code upper} or {@code lower}
     * @param value m/s² or dB(A), one decimal
     * @param points exposure points of the day
     * @param name   who it is; empty: nobody in particular
     */
    record Dose(
            Agent agent,
            String grade,
            LocalDate day,
            int hand,
            BigDecimal value,
            BigDecimal border,
            BigDecimal points,
            String name)
            implements SafetyReason {
        @Override
        public String key() {
            return agent.risk() + "." + grade;
        }

        @Override
        public List<Object> values() {
            Object who = name.isEmpty() ? hand : name;
            return List.of(day, who, value, border, points);
        }
    }

    /**
     * Two things meet that must not.
     *
     * @param first  what was there before
     * @param second what comes
     * @param other  the step that brought the first, by id; of another job by its words
     * @param where  {@code zone}, {@code day} or {@code together}
     * @param bay    title of the bay; empty on a zone
     * @param job    title of the other job; empty: this one
     */
    record Meets(String first, String second, String other, String where, String bay, String job, String why)
            implements SafetyReason {
        @Override
        public String key() {
            return "keep-apart." + where + (job.isEmpty() ? "" : ".job");
        }

        @Override
        public List<Object> values() {
            return List.of(first, second, job.isEmpty() ? new StepName(other) : other, why, bay, job);
        }
    }

    /** Less light in a bay than a stage wants, lux. */
    record Dim(BigDecimal there, String bay, BigDecimal wanted) implements SafetyReason {
        @Override
        public String key() {
            return SafetyCodes.LIGHT;
        }

        @Override
        public List<Object> values() {
            return List.of(there, bay, wanted);
        }
    }

    /** A caution that no named person has taken on. */
    record NotAcknowledged(Caution caution) implements SafetyReason {
        @Override
        public String key() {
            return "acknowledge." + caution.id();
        }

        @Override
        public List<Object> values() {
            return List.of(caution.id());
        }
    }

    /** A caution that someone answers for. */
    record Acknowledged(Caution caution, String by, LocalDateTime at) implements SafetyReason {
        @Override
        public String key() {
            return "acknowledged." + caution.id();
        }

        @Override
        public List<Object> values() {
            return List.of(by, at);
        }
    }

    /**
     * Air or surface of a day is outside a stage's bounds or near them.
     *
     * @param what {@code temperature} or {@code humidity}
     */
    record OutOfBounds(LocalDate day, String what, boolean near, BigDecimal met, BigDecimal bound)
            implements SafetyReason {
        @Override
        public String key() {
            return "climate." + what + (near ? ".near" : "");
        }

        @Override
        public List<Object> values() {
            return List.of(day, met, bound);
        }
    }

    /** A surface is too near the dew point. */
    record Damp(LocalDate day, BigDecimal surface, BigDecimal needed) implements SafetyReason {
        @Override
        public String key() {
            return SafetyCodes.DEW_POINT;
        }

        @Override
        public List<Object> values() {
            return List.of(day, surface, needed);
        }
    }

    /** Nobody of the shop is trained for an item. */
    record NotTrained(String item, String skill) implements SafetyReason {
        @Override
        public String key() {
            return SafetyCodes.TRAINED_PERSON;
        }

        @Override
        public List<Object> values() {
            return List.of(item, skill);
        }
    }

    /** One person alone does what should have another within call. */
    record Alone(String risk) implements SafetyReason {
        @Override
        public String key() {
            return SafetyCodes.LONE_WORK;
        }

        @Override
        public List<Object> values() {
            return List.of(risk);
        }
    }

    /** A stage asks for more people than there are. */
    record TooFew(int needed, int there) implements SafetyReason {
        @Override
        public String key() {
            return SafetyCodes.TOO_FEW_PEOPLE;
        }

        @Override
        public List<Object> values() {
            return List.of(needed, there);
        }
    }

    /** Vapour in a bay over a day as a share of its limit, in percent. */
    record Vapour(LocalDate day, String bay, BigDecimal percent, String grade) implements SafetyReason {
        @Override
        public String key() {
            return SafetyCodes.SOLVENT_AIR + "." + grade;
        }

        @Override
        public List<Object> values() {
            return List.of(day, bay, percent);
        }
    }
}
