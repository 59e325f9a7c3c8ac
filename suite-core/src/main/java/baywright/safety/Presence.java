package baywright.safety;

import baywright.plan.StepWork;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * A step in a bay, with what it brings there.
 *
 * @param work   the step
 * @param bay    id of the bay; empty: none is known
 * @param from   when it comes
 * @param to     until when its things are in use or stand open on the vehicle
 * @param things what it brings
 */
record Presence(StepWork work, String bay, LocalDateTime from, LocalDateTime to, List<Hazards.Thing> things) {

    private static final String OPEN = "live";
    private static final String RINSED = "rinsed";

    Presence {
        things = List.copyOf(things);
    }

    /** Where and when what stands, by the clock of a plan. */
    static List<Presence> of(SafetyCase all, List<DayBook.Stint> stints) {
        Hazards hazards = new Hazards(all);
        List<Presence> presences = new ArrayList<>();
        IdentityHashMap<StepWork, List<Hazards.Thing>> things = new IdentityHashMap<>();
        for (int i = 0; i < stints.size(); i++) {
            DayBook.Stint stint = stints.get(i);
            presences.add(new Presence(
                    stint.work(),
                    stint.bay(),
                    stint.from(),
                    end(stints, i),
                    things.computeIfAbsent(stint.work(), work -> List.copyOf(hazards.things(work)))));
        }
        return presences;
    }

    /** What is left on the vehicle stands open until a rinse, at most until the end of that day. */
    private static LocalDateTime end(List<DayBook.Stint> stints, int at) {
        DayBook.Stint stint = stints.get(at);
        if (!sets(stint.work(), OPEN)) {
            return stint.to();
        }
        Optional<LocalDateTime> rinsed = stints.subList(at + 1, stints.size()).stream()
                .filter(later -> sets(later.work(), RINSED))
                .filter(later -> later.work().zones().stream()
                        .anyMatch(z -> stint.work().zones().contains(z)))
                .map(DayBook.Stint::to)
                .findFirst();
        LocalDateTime midnight = stint.day().plusDays(1).atStartOfDay();
        return rinsed.filter(r -> r.isBefore(midnight)).orElse(midnight);
    }

    static boolean sets(StepWork work, String state) {
        return Hazards.terms(work).stream()
                .flatMap(t -> t.effects().stream())
                .anyMatch(e -> e.sets() && e.state().equals(state));
    }
}
