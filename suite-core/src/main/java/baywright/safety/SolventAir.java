package baywright.safety;

import java.util.List;

/**
 * Solvent vapour in a bay. Even mixing is assumed, which never holds near the floor and the work: results are for choosing
 * ventilation, never an allowance.
 */
public final class SolventAir {

    /** Gas constant, J/(mol K), CODATA 2018. */
    private static final double GAS = 8.314462618;

    private static final double ZERO = 273.15;
    private static final double ATMOSPHERE = 101.325;
    private static final double HOURS = 8;

    private SolventAir() {}

    /** So long at a concentration. */
    public record Period(double hours, double ppm) {}

    /** A substance in the air with its limit, in one unit. */
    public record Part(double concentration, double limit) {}

    /** Litres that a mole of vapour fills at a temperature and 101.325 kPa. */
    public static double molarVolume(double celsius) {
        return GAS * (celsius + ZERO) / ATMOSPHERE;
    }

    /** mg/m³ of so many ppm at a temperature; the European convention is 20 °C. */
    public static double milligrams(double ppm, double molarMass, double celsius) {
        return ppm * molarMass / molarVolume(celsius);
    }

    /** Time-weighted average over eight hours (29 CFR 1910.1000(d)(1)). */
    public static double average(List<Period> day) {
        return day.stream().mapToDouble(p -> p.ppm() * p.hours()).sum() / HOURS;
    }

    /** Sum of the shares of the limits; up to 1 is within them (29 CFR 1910.1000(d)(2)). */
    public static double mixture(List<Part> parts) {
        return parts.stream().mapToDouble(p -> p.concentration() / p.limit()).sum();
    }

    /** Litres of vapour that a millilitre of liquid becomes. */
    public static double vapour(double density, double molarMass, double celsius) {
        return density / molarMass * molarVolume(celsius);
    }

    /**
     * Air that keeps a concentration, m³/h.
     *
     * @param millilitresPerHour liquid that evaporates
     * @param density            g/ml
     * @param molarMass          g/mol
     * @param ppm                concentration to be kept
     * @param mixing             factor for uneven mixing, usually 3 to 10
     */
    public static double ventilation(
            double millilitresPerHour, double density, double molarMass, double ppm, double mixing, double celsius) {
        return millilitresPerHour * vapour(density, molarMass, celsius) * mixing / (ppm * 1e-6) / 1000;
    }

    /** Concentration in ppm that so much air in m³/h leaves; the inverse of {@link #ventilation}. */
    public static double concentration(
            double millilitresPerHour, double density, double molarMass, double air, double mixing, double celsius) {
        return millilitresPerHour * vapour(density, molarMass, celsius) * mixing / air / 1000 * 1e6;
    }

    /** The same in US units: pints a minute to ft³ a minute (ACGIH, Industrial Ventilation, dilution for health). */
    public static double ventilationUs(
            double pintsPerMinute, double density, double molarMass, double ppm, double mixing) {
        return 403e6 * density * pintsPerMinute * mixing / (molarMass * ppm);
    }

    /**
     * Air against fire in ft³ a minute (ACGIH, Industrial Ventilation, dilution for fire and explosion).
     *
     * @param lel   lower explosive limit, percent by volume
     * @param share safety factor, 4 to 12
     * @param heat  1 to 120 °C, 0.7 above
     */
    public static double ventilationForFireUs(
            double pintsPerMinute, double density, double molarMass, double lel, double share, double heat) {
        return 403 * density * pintsPerMinute * 100 * share / (molarMass * lel * heat);
    }

    /** Millilitres of liquid whose vapour fills a bay to a tenth of the lower explosive limit. Never an allowance. */
    public static double millilitresToTenthOfLel(
            double cubicMetres, double lel, double density, double molarMass, double celsius) {
        return cubicMetres * 1000 * lel / 100 / 10 / vapour(density, molarMass, celsius);
    }

    /** Minutes of airing until a share of the vapour is left. */
    public static double purgeMinutes(double cubicMetres, double air, double share) {
        return cubicMetres / air * Math.log(1 / share) * 60;
    }

    /** Share of the vapour that is left after so many minutes of airing. */
    public static double left(double cubicMetres, double air, double minutes) {
        return Math.exp(-minutes / 60 * air / cubicMetres);
    }

    /** Percent by volume over an open tray, from the vapour pressure in mmHg. */
    public static double saturated(double mmHg) {
        return mmHg / 760 * 100;
    }
}
