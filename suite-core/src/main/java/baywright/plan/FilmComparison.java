package baywright.plan;

import baywright.plan.FilmBudget.ZoneBudget;
import baywright.quantity.Spread;
import baywright.quantity.StudentT;
import baywright.vehicle.FilmStatistics;
import baywright.vehicle.Reading;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Readings after the work against those before it, zone by zone. Means are compared, since what one polish takes off
 * cannot be seen in a single reading. The same gauge on the same marks is taken for granted: its own error then falls out.
 *
 * @param zones zones that were read before and after, in the vehicle's order
 */
public record FilmComparison(List<Removed> zones) {

    private static final double CONFIDENCE = 0.95;

    public FilmComparison {
        zones = List.copyOf(zones);
    }

    /** What the difference of the means says. */
    public enum Answer {
        /** One reading before or after says nothing about its spread. */
        TOO_FEW,
        /** Thicker than before: other marks, another gauge, or something lies on it. */
        THICKER,
        /** Less than what can be told from nothing. */
        NOT_SEEN,
        LESS_THAN_PLANNED,
        AS_PLANNED,
        MORE_THAN_PLANNED
    }

    /**
     * One zone.
     *
     * @param before      its budget, with the readings before
     * @param after       the readings after
     * @param difference  mean before less mean after, µm
     * @param uncertainty expanded uncertainty of the difference at 95 %, µm; empty for a single reading
     */
    public record Removed(
            ZoneBudget before, FilmStatistics after, double difference, Optional<Double> uncertainty, Answer answer) {}

    /** Compares with readings by zone; zones without readings before are left out. */
    public static FilmComparison of(FilmBudget before, Map<String, List<Reading>> after) {
        return new FilmComparison(before.zones().stream()
                .flatMap(zone -> FilmStatistics.of(
                                after.getOrDefault(zone.film().zone(), List.of()))
                        .stream()
                        .flatMap(read -> zone.film().statistics().stream().map(first -> of(zone, first, read))))
                .toList());
    }

    private static Removed of(ZoneBudget zone, FilmStatistics first, FilmStatistics after) {
        double difference = first.spread().mean() - after.spread().mean();
        Optional<Double> uncertainty = uncertainty(first.spread(), after.spread());
        return new Removed(zone, after, difference, uncertainty, answer(zone, difference, uncertainty));
    }

    /**
     * Uncertainty of a difference of two means with their own spreads: Welch, Biometrika 34 (1947) 28, degrees of freedom
     * rounded down; coverage factor of Student's t (GUM, JCGM 100:2008, annex G).
     */
    private static Optional<Double> uncertainty(Spread a, Spread b) {
        if (a.count() < 2 || b.count() < 2) {
            return Optional.empty();
        }
        double ofA = a.ofMean() * a.ofMean();
        double ofB = b.ofMean() * b.ofMean();
        double sum = ofA + ofB;
        if (sum == 0) {
            return Optional.of(0.0);
        }
        double degrees = sum * sum / (ofA * ofA / (a.count() - 1) + ofB * ofB / (b.count() - 1));
        return Optional.of(StudentT.coverage(CONFIDENCE, Math.max(1, (int) degrees)) * Math.sqrt(sum));
    }

    private static Answer answer(ZoneBudget zone, double difference, Optional<Double> uncertainty) {
        if (uncertainty.isEmpty()) {
            return Answer.TOO_FEW;
        }
        double off = uncertainty.get();
        if (difference + off < 0) {
            return Answer.THICKER;
        }
        if (difference - off > zone.planned().most().doubleValue()) {
            return Answer.MORE_THAN_PLANNED;
        }
        if (difference + off < zone.planned().least().doubleValue()) {
            return Answer.LESS_THAN_PLANNED;
        }
        return difference - off <= 0 ? Answer.NOT_SEEN : Answer.AS_PLANNED;
    }
}
