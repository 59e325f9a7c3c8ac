package baywright.safety;

/**
 * Dew point by the Magnus formula with the constants of Alduchov and Eskridge, J. Appl. Meteor. 35 (1996) 601, for air from
 * -40 to 50 °C over water.
 */
public final class DewPoint {

    /** Kelvin that a surface must be above the dew point before coating (ISO 8502-4). */
    public static final double MARGIN = 3;

    private static final double A = 17.625;
    private static final double B = 243.04;

    private DewPoint() {}

    /**
     * Dew point in °C.
     *
     * @param celsius  air temperature
     * @param humidity relative humidity in percent, above 0 to 100
     */
    public static double of(double celsius, double humidity) {
        if (!(humidity > 0 && humidity <= 100)) {
            throw new IllegalArgumentException("relative humidity is above 0 to 100 %, got " + humidity);
        }
        double gamma = Math.log(humidity / 100) + A * celsius / (B + celsius);
        return B * gamma / (A - gamma);
    }

    /** Relative humidity in percent of air with this dew point, which is not above its temperature. */
    public static double humidity(double celsius, double dewPoint) {
        if (dewPoint > celsius) {
            throw new IllegalArgumentException(
                    "a dew point is not above the air's temperature, got " + dewPoint + " above " + celsius);
        }
        return 100 * Math.exp(A * dewPoint / (B + dewPoint) - A * celsius / (B + celsius));
    }

    /** Lowest surface temperature for coating, °C. */
    public static double leastSurface(double celsius, double humidity) {
        return of(celsius, humidity) + MARGIN;
    }

    /** A temperature in °F as °C. */
    public static double ofFahrenheit(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    public static double toFahrenheit(double celsius) {
        return celsius * 1.8 + 32;
    }

    /** A difference in °F as K, without the 32. */
    public static double differenceOfFahrenheit(double difference) {
        return difference / 1.8;
    }
}
