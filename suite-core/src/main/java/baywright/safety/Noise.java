package baywright.safety;

import java.util.List;

/**
 * Noise of a day and a week, Directive 2003/10/EC: equal energy over eight hours in dB(A). The US rule of
 * {@link UsNoise} is another one; a site keeps to one of them.
 */
public final class Noise {

    /** Values of art. 3(1), dB(A) over eight hours. */
    public static final double LOWER_ACTION = 80;

    public static final double UPPER_ACTION = 85;

    /** Judged with the hearing protector taken into account, art. 3(2). */
    public static final double LIMIT = 87;

    private static final double HOURS = 8;
    private static final double HEARING_THRESHOLD = 20e-6;
    private static final double WORKING_DAYS = 5;

    private Noise() {}

    /**
     * One source of the day.
     *
     * @param level dB(A) at the ear
     * @param hours not negative
     */
    public record Use(double level, double hours) {
        public Use {
            if (!Double.isFinite(level) || !(hours >= 0)) {
                throw new IllegalArgumentException(
                        "noise needs a level and hours from 0, got " + level + " dB and " + hours + " h");
            }
        }
    }

    /** LEX,8h in dB(A); negative infinity for a day without noise. */
    public static double daily(List<Use> day) {
        double energy = day.stream()
                .mapToDouble(u -> u.hours() * Math.pow(10, u.level() / 10))
                .sum();
        return 10 * Math.log10(energy / HOURS);
    }

    /** LEX of a week from the levels of its days. */
    public static double weekly(List<Double> days) {
        double energy = days.stream().mapToDouble(d -> Math.pow(10, d / 10)).sum();
        return 10 * Math.log10(energy / WORKING_DAYS);
    }

    /** Exposure points of a day (UK ready-reckoner): 100 at 85 dB(A). */
    public static double points(double daily) {
        return 100 * Math.pow(10, (daily - UPPER_ACTION) / 10);
    }

    /** Level of a day or, divided by five, of a week for so many points. */
    public static double ofPoints(double points) {
        return UPPER_ACTION + 10 * Math.log10(points / 100);
    }

    /** Level that gives a day's value in so many hours. */
    public static double levelFor(double daily, double hours) {
        return daily + 10 * Math.log10(HOURS / hours);
    }

    /** Peak sound pressure in Pa as a level in dB. */
    public static double peakLevel(double pascal) {
        return 20 * Math.log10(pascal / HEARING_THRESHOLD);
    }
}
