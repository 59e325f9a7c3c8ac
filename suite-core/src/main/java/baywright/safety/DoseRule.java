package baywright.safety;

import baywright.plan.Finding;
import baywright.plan.Severity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Vibration and noise of a day against their values. */
final class DoseRule {

    private DoseRule() {}

    static List<Finding> check(SafetySettings settings, List<PersonDay> days) {
        List<Finding> findings = new ArrayList<>();
        days.forEach(day -> vibration(settings.vibration(), day).ifPresent(findings::add));
        days.forEach(day -> noise(settings.noise(), day).ifPresent(findings::add));
        return findings;
    }

    private static Optional<Finding> vibration(SafetySettings.VibrationRule rule, PersonDay day) {
        double daily = day.dailyVibration();
        if (rule.comparison().reached(daily, rule.limit())) {
            return Optional.of(finding(Severity.STOP, Agent.VIBRATION, "limit", day, daily, rule.limit()));
        }
        return rule.comparison().reached(daily, rule.action())
                ? Optional.of(finding(Severity.WARN, Agent.VIBRATION, "action", day, daily, rule.action()))
                : Optional.empty();
    }

    /** The limit is judged under the protector, the action values without (Directive 2003/10/EC, art. 3(2)). */
    private static Optional<Finding> noise(SafetySettings.NoiseRule rule, PersonDay day) {
        if (day.noise().isEmpty()) {
            return Optional.empty();
        }
        double open = day.dailyNoise();
        if (rule.comparison().reached(day.protectedNoise(), rule.limit())) {
            return Optional.of(finding(Severity.STOP, Agent.NOISE, "limit", day, day.protectedNoise(), rule.limit()));
        }
        if (rule.comparison().reached(open, rule.upper())) {
            return Optional.of(finding(Severity.WARN, Agent.NOISE, "upper", day, open, rule.upper()));
        }
        return rule.comparison().reached(open, rule.lower())
                ? Optional.of(finding(Severity.NOTE, Agent.NOISE, "lower", day, open, rule.lower()))
                : Optional.empty();
    }

    private static Finding finding(
            Severity severity, Agent agent, String grade, PersonDay day, double value, double border) {
        double points = agent == Agent.VIBRATION ? Vibration.toPoints(value) : Noise.points(value);
        SafetyReason reason = new SafetyReason.Dose(
                agent,
                grade,
                day.day(),
                day.hand(),
                rounded(value, 1),
                BigDecimal.valueOf(border).stripTrailingZeros(),
                rounded(points, 0),
                day.name());
        String code = agent == Agent.VIBRATION ? SafetyCodes.VIBRATION : SafetyCodes.NOISE;
        return new Finding(code, severity, day.worst(agent), List.of(), reason);
    }

    static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
