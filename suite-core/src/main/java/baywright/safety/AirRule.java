package baywright.safety;

import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.plan.StepWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Solvent vapour that a day's work leaves in a bay, averaged over eight hours, as a sum of shares of the limits. Reckoned
 * for items whose solvent and bays whose ventilation the shop has named; all of the liquid is taken to evaporate while the
 * step is worked.
 */
final class AirRule {

    private static final double ROOM = 20;
    private static final double HOURS = 8;
    private static final double NEAR = 50;

    private record Place(LocalDate day, String bay) {}

    private record Sum(StepWork worst, double percent) {}

    private final SafetyCase all;

    AirRule(SafetyCase all) {
        this.all = all;
    }

    List<Finding> check(List<DayBook.Stint> stints) {
        Map<Place, Sum> sums = new LinkedHashMap<>();
        for (DayBook.Stint stint : stints) {
            String bay = stint.bay();
            double percent = stint.share() * percent(stint.work(), bay);
            if (percent > 0) {
                sums.merge(
                        new Place(stint.day(), bay),
                        new Sum(stint.work(), percent),
                        (a, b) ->
                                new Sum(a.percent() >= b.percent() ? a.worst() : b.worst(), a.percent() + b.percent()));
            }
        }
        List<Finding> findings = new ArrayList<>();
        sums.forEach((place, sum) -> finding(place, sum).ifPresent(findings::add));
        return findings;
    }

    /** What a step leaves in a bay; 0 where nothing is known of its air. */
    double percent(StepWork work, String bay) {
        Double air = all.settings().air().ventilation().get(bay);
        return air == null || air <= 0 ? 0 : percent(work, (double) air);
    }

    /** Vapour does not know how long it took: volume over eight hours is concentration times time over eight hours. */
    private double percent(StepWork work, double air) {
        double percent = 0;
        for (StepWork.Use use : work.uses()) {
            SafetySettings.Solvent solvent = all.settings().air().items().get(use.item());
            Optional<Substance> substance = solvent == null ? Optional.empty() : Substance.of(solvent.substance());
            if (substance.isPresent() && use.amount().dimension() == baywright.quantity.Dimension.VOLUME) {
                double millilitres = use.amount().inBase().doubleValue() * solvent.percent() / 100;
                double ppm = SolventAir.concentration(
                        millilitres / HOURS,
                        substance.get().density(),
                        substance.get().molarMass(),
                        air,
                        all.settings().air().mixing(),
                        ROOM);
                percent += 100
                        * ppm
                        / substance.get().limit(all.settings().air().limits()).ppm();
            }
        }
        return percent;
    }

    private Optional<Finding> finding(Place place, Sum sum) {
        boolean over = Comparison.EXCEEDS.reached(sum.percent(), 100);
        if (!over && sum.percent() < NEAR) {
            return Optional.empty();
        }
        SafetyReason reason = new SafetyReason.Vapour(
                place.day(), place.bay(), DoseRule.rounded(sum.percent(), 0), over ? "limit" : "near");
        return Optional.of(new Finding(
                SafetyCodes.SOLVENT_AIR,
                over ? Severity.STOP : Severity.WARN,
                Optional.of(sum.worst().step()),
                List.of(),
                reason));
    }
}
