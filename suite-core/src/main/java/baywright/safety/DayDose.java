package baywright.safety;

import baywright.plan.Severity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One thing that a pair of hands takes in on a day, beside the values that it is judged by.
 *
 * @param kind    what it is
 * @param day     the day
 * @param hand    from 1
 * @param name    who it is; empty: nobody in particular
 * @param value   in the unit of the kind
 * @param borders the values, the least first
 */
public record DayDose(Kind kind, LocalDate day, int hand, String name, double value, List<Border> borders) {

    /** What is taken in, and how it is told. */
    public enum Kind {
        /** A(8), m/s². */
        VIBRATION,
        /** LEX,8h at the ear without protector, dB(A): judged by the action values (Directive 2003/10/EC, art. 3(2)). */
        NOISE,
        /** The same under the protectors that the stages ask for: judged by the limit. */
        NOISE_WORN,
        /** Percent of the limits of solvent vapour over eight hours that their own steps give off. */
        VAPOUR
    }

    /**
     * A value that something is judged by.
     *
     * @param grade   {@code action}, {@code lower}, {@code upper} or {@code limit}
     * @param reached whether the dose has reached it, by the comparison that the shop has set
     */
    public record Border(String grade, double value, boolean reached) {

        /** Whether it is never to be passed. */
        public boolean isLimit() {
            return grade.equals(LIMIT);
        }

        /** How grave it is to reach it: from the lower action value on, protectors are offered and nothing more is asked. */
        public Severity severity() {
            if (isLimit()) {
                return Severity.STOP;
            }
            return grade.equals("lower") ? Severity.NOTE : Severity.WARN;
        }
    }

    private static final String LIMIT = "limit";
    private static final double PERCENT = 100;

    public DayDose {
        borders = List.copyOf(borders);
    }

    /** What a day brings; what it brings nothing of is left out. */
    public static List<DayDose> of(PersonDay day, SafetySettings settings) {
        List<DayDose> doses = new ArrayList<>();
        if (!day.vibration().isEmpty()) {
            SafetySettings.VibrationRule rule = settings.vibration();
            double daily = day.dailyVibration();
            doses.add(dose(
                    Kind.VIBRATION,
                    day,
                    daily,
                    border("action", rule.action(), daily, rule.comparison()),
                    border(LIMIT, rule.limit(), daily, rule.comparison())));
        }
        if (!day.noise().isEmpty()) {
            SafetySettings.NoiseRule rule = settings.noise();
            double open = day.dailyNoise();
            double worn = day.protectedNoise();
            doses.add(dose(
                    Kind.NOISE,
                    day,
                    open,
                    border("lower", rule.lower(), open, rule.comparison()),
                    border("upper", rule.upper(), open, rule.comparison())));
            doses.add(dose(Kind.NOISE_WORN, day, worn, border(LIMIT, rule.limit(), worn, rule.comparison())));
        }
        if (day.vapour() > 0) {
            doses.add(dose(Kind.VAPOUR, day, day.vapour(), border(LIMIT, PERCENT, day.vapour(), Comparison.EXCEEDS)));
        }
        return doses;
    }

    private static DayDose dose(Kind kind, PersonDay day, double value, Border... borders) {
        return new DayDose(kind, day.day(), day.hand(), day.name(), value, List.of(borders));
    }

    private static Border border(String grade, double border, double value, Comparison comparison) {
        return new Border(grade, border, comparison.reached(value, border));
    }

    /** The gravest value that it has reached; empty: it is below them all. */
    public Optional<Border> reached() {
        return borders.stream().filter(Border::reached).reduce((least, most) -> most);
    }

    /** What it comes from, step by step; empty for vapour, which comes from what the steps use. */
    public List<PersonDay.Dose> from(PersonDay of) {
        return switch (kind) {
            case VIBRATION -> of.vibration();
            case NOISE, NOISE_WORN -> of.noise();
            case VAPOUR -> List.of();
        };
    }
}
