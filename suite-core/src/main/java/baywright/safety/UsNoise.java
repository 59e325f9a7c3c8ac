package baywright.safety;

import java.util.List;

/** Noise dose by 29 CFR 1910.95, appendix A: five decibels halve the time. Never mixed with {@link Noise}. */
public final class UsNoise {

    private UsNoise() {}

    /** Hours allowed at a level. */
    public static double allowedHours(double level) {
        return 8 / Math.pow(2, (level - 90) / 5);
    }

    /** Dose of a day in percent; 50 is the action level. */
    public static double dose(List<Noise.Use> day) {
        return 100
                * day.stream()
                        .mapToDouble(u -> u.hours() / allowedHours(u.level()))
                        .sum();
    }

    /** Eight-hour average for a dose in percent, dB. */
    public static double average(double dose) {
        return 16.61 * Math.log10(dose / 100) + 90;
    }
}
