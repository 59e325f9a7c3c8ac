package baywright.plan;

import baywright.library.Stage;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Looks for the place in a plan where one step more does best. */
public final class Placing {

    private Placing() {}

    /**
     * The place at which the plan with the step has the fewest stops, each counted by its zones; of equals the nearest to the
     * place wished for, of two as near the later one.
     *
     * @param step      with an id that the plan does not have
     * @param wished    place from 0; beyond the end: at the end
     * @param cancelled asked before each try; true ends the search with the best so far
     * @return place from 0 to the number of steps
     */
    public static int best(Setting setting, Plan plan, Step step, int wished, BooleanSupplier cancelled) {
        int count = plan.steps().size();
        int from = Math.max(0, Math.min(wished, count));
        Prover prover = Prover.forSetting(setting);
        int best = from;
        int least = Integer.MAX_VALUE;
        for (int away = 0; away <= count && least > 0 && !cancelled.getAsBoolean(); away++) {
            for (int place : away == 0 ? List.of(from) : List.of(from + away, from - away)) {
                if (place < 0 || place > count) {
                    continue;
                }
                int stops = stops(prover, new Edit.Insert(step, place).applyTo(plan));
                if (stops < least) {
                    least = stops;
                    best = place;
                }
            }
        }
        return best;
    }

    /**
     * A step of a stage for a plan, on every zone of the stage's surfaces that the vehicle has, on the vehicle as a whole where
     * the stage works on that; with a free id and every input at its usual value.
     *
     * @return empty when the library has no such stage, or the vehicle nothing that it works on
     */
    public static Optional<Step> fresh(Setting setting, Plan plan, String stage) {
        Stage known = setting.library().stageById().get(stage);
        if (known == null) {
            return Optional.empty();
        }
        List<String> zones = known.surfaces().contains(VehicleIndex.VEHICLE)
                ? List.of(VehicleIndex.VEHICLE)
                : known.surfaces().stream()
                        .map(s -> "surface:" + s)
                        .filter(z ->
                                !ZoneChoice.resolve(List.of(z), setting.shape()).isEmpty())
                        .toList();
        return zones.isEmpty()
                ? Optional.empty()
                : Optional.of(new Step(
                        plan.freeId(), stage, zones, Map.of(), Step.Priority.MUST, Optional.empty(), Map.of()));
    }

    private static int stops(Prover prover, Plan plan) {
        return prover.stops(plan).stream()
                .mapToInt(f -> Math.max(1, f.zones().size()))
                .sum();
    }
}
