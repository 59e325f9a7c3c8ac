package baywright.safety;

import java.util.List;

/**
 * Hand-arm vibration of a day: ISO 5349-1:2001, 5.3, and Directive 2002/44/EC, annex A.1. Values are total values (root of
 * the sum of squares over three axes) in m/s². A machine's declared value is from a test bench; in use it is often higher.
 */
public final class Vibration {

    /** Action and limit value of the Directive, art. 3(1), m/s² over eight hours. */
    public static final double ACTION = 2.5;

    public static final double LIMIT = 5;

    private static final double HOURS = 8;

    private Vibration() {}

    /**
     * One tool of the day.
     *
     * @param level m/s², not negative
     * @param hours time with the trigger pulled, not negative
     */
    public record Use(double level, double hours) {
        public Use {
            if (!(level >= 0) || !(hours >= 0)) {
                throw new IllegalArgumentException(
                        "vibration needs a level and hours from 0, got " + level + " m/s² and " + hours + " h");
            }
        }

        /** Exposure points, {@code 2 a² t} (UK guidance L140); 100 points are 2.5 m/s². */
        public double points() {
            return 2 * level * level * hours;
        }

        /** This tool's part of the day's exposure, m/s². */
        public double partial() {
            return ofPoints(points());
        }
    }

    /** Points of a day; the order of tools does not matter. */
    public static double points(List<Use> day) {
        return day.stream().mapToDouble(Use::points).sum();
    }

    /** A(8) of a day, m/s². */
    public static double daily(List<Use> day) {
        return ofPoints(points(day));
    }

    /** A(8) for so many points: a quarter of their root. */
    public static double ofPoints(double points) {
        return Math.sqrt(points) / 4;
    }

    /** Points for an A(8). */
    public static double toPoints(double daily) {
        return 16 * daily * daily;
    }

    /** Hours at a level until a day's value is reached, also beyond a day. */
    public static double hoursUntil(double value, double level) {
        return HOURS * (value / level) * (value / level);
    }

    /**
     * Years until ten in a hundred of those exposed have finger blanching (ISO 5349-1:2001, annex C). For a text of advice;
     * never a forecast for one person.
     */
    public static double yearsToBlanching(double daily) {
        return 31.8 * Math.pow(daily, -1.06);
    }
}
