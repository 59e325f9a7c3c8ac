package baywright.plan;

import baywright.quantity.ThreePoint;
import baywright.vehicle.FilmBand;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.ZoneFilm;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a plan takes off each painted zone, set against what may be taken off, and what is then left. Neither the order of
 * the steps nor the clock matters to it.
 *
 * @param zones  in the vehicle's order
 * @param limits that they were judged by
 */
public record FilmBudget(List<ZoneBudget> zones, FilmLimits limits) {

    public FilmBudget {
        zones = List.copyOf(zones);
    }

    /** How the sums stand to the budget and the total to its bands. Common practice, no source. */
    public enum Verdict {
        CLEAR,
        /** The most may be over the budget, the paint is thin, or nothing is known about it. */
        WARNS,
        /** Even the likely removal is over the budget, or the paint is too thin for anything abrasive. */
        FORBIDS
    }

    /** A removal with the step that it belongs to. */
    public record Taken(String step, StepWork.Removal removal) {}

    /**
     * One zone.
     *
     * @param film     before the work
     * @param taken    every removal, in the plan's order
     * @param planned  their sum, point by point, µm
     * @param anywhere what will be left at any place of the zone; empty when it is not known what is there
     * @param thinnest what will be left where the lowest reading was taken; empty likewise
     * @param verdict  what it comes to
     */
    public record ZoneBudget(
            ZoneFilm film,
            List<Taken> taken,
            ThreePoint planned,
            Optional<RemainingFilm> anywhere,
            Optional<RemainingFilm> thinnest,
            Verdict verdict) {

        public ZoneBudget {
            taken = List.copyOf(taken);
        }

        /** Chance, 0 to 1, of ending below the floor: the greater of anywhere and the thinnest place. */
        public Optional<Double> chanceBelow(BigDecimal floor) {
            return thinnest.map(t -> Math.max(
                    t.chanceBelow(floor.doubleValue()), anywhere.orElse(t).chanceBelow(floor.doubleValue())));
        }
    }

    /** The budget of a plan. Steps that cannot be worked out take nothing; the proof reports them. */
    public static FilmBudget of(Setting setting, Plan plan) {
        return of(FilmSheet.of(setting), PlanWork.of(setting, plan).steps());
    }

    /** The budget of work on a vehicle. */
    public static FilmBudget of(FilmSheet sheet, List<StepWork> steps) {
        Map<String, List<Taken>> taken = new HashMap<>();
        for (StepWork step : steps) {
            for (StepWork.Removal removal : step.removals()) {
                taken.computeIfAbsent(removal.zone(), z -> new ArrayList<>()).add(new Taken(step.step(), removal));
            }
        }
        List<ZoneBudget> zones = sheet.zones().stream()
                .map(film -> budget(film, taken.getOrDefault(film.zone(), List.of()), sheet.limits()))
                .toList();
        return new FilmBudget(zones, sheet.limits());
    }

    /** What steps take off each zone in all, µm; a zone that nothing is taken off is missing. */
    public static Map<String, ThreePoint> planned(List<StepWork> steps) {
        Map<String, ThreePoint> sums = new HashMap<>();
        for (StepWork step : steps) {
            step.removals().forEach(r -> sums.merge(r.zone(), r.micrometres(), ThreePoint::plus));
        }
        return sums;
    }

    private static ZoneBudget budget(ZoneFilm film, List<Taken> taken, FilmLimits limits) {
        List<ThreePoint> removals =
                taken.stream().map(t -> t.removal().micrometres()).toList();
        ThreePoint planned = removals.stream().reduce(ThreePoint.ZERO, ThreePoint::plus);
        var read = film.statistics().filter(s -> film.readable());
        return new ZoneBudget(
                film,
                taken,
                planned,
                read.map(s -> RemainingFilm.anywhere(s.spread(), limits).less(removals)),
                read.map(s -> RemainingFilm.at(s.lowest().micrometres(), limits).less(removals)),
                verdict(film, planned));
    }

    /** What clay or the like may take at most does not make a step abrasive: only a likely removal does. */
    static Verdict verdict(ZoneFilm film, ThreePoint planned) {
        if (planned.likely().signum() == 0) {
            return Verdict.CLEAR;
        }
        boolean overLikely =
                film.budget().filter(b -> planned.likely().compareTo(b) > 0).isPresent();
        if (overLikely || film.band() == FilmBand.STOP) {
            return Verdict.FORBIDS;
        }
        boolean overMost =
                film.budget().filter(b -> planned.most().compareTo(b) > 0).isPresent();
        return overMost || film.band().isThin() ? Verdict.WARNS : Verdict.CLEAR;
    }

    /**
     * The zone that the plan brings nearest to the floor: the one most likely to end below it, of equals the one with least
     * left; empty when no zone is worked on that something is known of.
     */
    public Optional<ZoneBudget> tightest() {
        return zones.stream()
                .filter(z -> z.planned().most().signum() > 0)
                .filter(z -> z.thinnest().isPresent())
                .max(Comparator.comparing((ZoneBudget z) ->
                                z.chanceBelow(limits.stopBelow()).orElse(0.0))
                        .thenComparing(z -> -z.thinnest().orElseThrow().mean()));
    }

    /** The budget of one zone; empty for one that is neither painted nor read. */
    public Optional<ZoneBudget> zone(String id) {
        return zones.stream().filter(z -> z.film().zone().equals(id)).findFirst();
    }
}
