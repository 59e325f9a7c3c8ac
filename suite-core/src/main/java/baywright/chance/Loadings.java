package baywright.chance;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much of a figure's ups and downs it shares with others: one hard paint makes every panel slow. Each driver is a
 * standard normal score drawn once a run; a figure's own score is {@code Σ loading × driver + √(1 − Σ loading²) × own}.
 * This is a Gaussian copula by common factors: the distributions of the single figures stay as they are, and two figures
 * with loadings a and b on one driver have normal scores that correlate by {@code a b}, hence ranks that correlate by
 * {@code 6/π asin(a b / 2)} (K. Pearson 1907; Kruskal, J. American Statistical Association 53 (1958) 814).
 *
 * @param on loading from −1 to 1 by driver; the squares add up to 1 at most
 */
public record Loadings(Map<String, Double> on) {

    /** Shares nothing. */
    public static final Loadings NONE = new Loadings(Map.of());

    /** What a sum of squares may be above 1 by rounding. */
    private static final double SLACK = 1e-9;

    public Loadings {
        SortedMap<String, Double> sorted = new TreeMap<>(on);
        double squares = 0;
        for (double loading : sorted.values()) {
            squares += loading * loading;
        }
        if (!(squares <= 1 + SLACK)) {
            throw new IllegalArgumentException("the squares of loadings must add up to 1 at most, got " + sorted);
        }
        on = Collections.unmodifiableSortedMap(sorted);
    }

    /**
     * Shares a part of the variance, in equal parts with each of some drivers.
     *
     * @param part    0 to 1; nothing when there is no driver
     * @param drivers names, each once
     */
    public static Loadings evenly(double part, Iterable<String> drivers) {
        SortedMap<String, Double> even = new TreeMap<>();
        drivers.forEach(driver -> even.put(driver, 0.0));
        even.replaceAll((driver, none) -> Math.sqrt(part / even.size()));
        return new Loadings(even);
    }

    /** Loading on what the figure has for itself. */
    double own() {
        double squares = 0;
        for (double loading : on.values()) {
            squares += loading * loading;
        }
        return Math.sqrt(Math.max(0, 1 - squares));
    }
}
