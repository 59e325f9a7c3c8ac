package baywright.plan;

import baywright.script.Place;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Why a plan is as it is: for each step what it relies on, what relies on it, what it makes and ends; for each zone its
 * states along the plan. Only what holds is told; what does not is a finding. Everything is told with the line of the
 * library that says so.
 *
 * @param steps  an account for each step, in the plan's order
 * @param strips a strip for each zone, in the vehicle's order, the vehicle as a whole included
 */
public record Explanation(List<Account> steps, List<Strip> strips) {

    /** Who made a state, or ended it. */
    public enum Giver {
        /** An earlier step. */
        STEP,
        /** It was found so when the vehicle came. */
        SURVEY,
        /** The bay in which the step is done. */
        BAY
    }

    /** How a step relies on a state. */
    public enum Kind {
        /** It needs it. */
        NEEDED,
        /** It would go on without it. */
        PREFERRED,
        /** It must not find it. */
        REFUSED,
        /** Where it holds, the step's reach does no harm. */
        SHIELDS
    }

    /**
     * A step relies on a state that is there, or on one that is gone.
     *
     * @param step   id of the step that relies
     * @param state  id of a plain state; a worked-out one is told by its parts
     * @param kind   how it relies on it
     * @param gone   whether the state must not be there, and was ended
     * @param spared for a shield: the state that would else have been ended, or made; else empty
     * @param giver  who made or ended it
     * @param by     id of the step or the bay; empty for the survey
     * @param zones  where, in the vehicle's order
     * @param why    the reason that the stage gives; may be empty
     * @param place  the line of the stage that asks for it
     * @param giving the line of the giver that makes or ends it; empty when the giver is no step
     */
    public record Link(
            String step,
            String state,
            Kind kind,
            boolean gone,
            String spared,
            Giver giver,
            String by,
            List<String> zones,
            String why,
            Place place,
            Optional<Place> giving) {
        public Link {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(giver, "giver");
            Objects.requireNonNull(place, "place");
            zones = List.copyOf(zones);
        }
    }

    /** A state on some zones, in the vehicle's order, with the line that makes or ends it. */
    public record Where(String state, List<String> zones, Optional<Place> place) {
        public Where {
            zones = List.copyOf(zones);
        }
    }

    /**
     * What there is to say of a step.
     *
     * @param step     its id
     * @param reliesOn what it relies on
     * @param carries  what later steps rely on it for
     * @param makes    states that it makes and that did not hold before
     * @param ends     states that it ends and that held before
     * @param lasts    states that still hold at the end of the plan and were last made by it
     * @param serves   ids of later steps that rely on it in the end, directly or not, and that nothing relies on
     */
    public record Account(
            String step,
            List<Link> reliesOn,
            List<Link> carries,
            List<Where> makes,
            List<Where> ends,
            List<Where> lasts,
            List<String> serves) {
        public Account {
            reliesOn = List.copyOf(reliesOn);
            carries = List.copyOf(carries);
            makes = List.copyOf(makes);
            ends = List.copyOf(ends);
            lasts = List.copyOf(lasts);
            serves = List.copyOf(serves);
        }
    }

    /**
     * The states of one zone along the plan.
     *
     * @param zone    its id
     * @param found   what held when the vehicle came
     * @param moments what came and went, in order; steps that change nothing there and do not work on it are left out
     */
    public record Strip(String zone, List<String> found, List<Moment> moments) {
        public Strip {
            found = List.copyOf(found);
            moments = List.copyOf(moments);
        }
    }

    /** How changes come about. */
    public enum Way {
        /** A step works on the zone. */
        WORKS,
        /** A step works elsewhere and reaches the zone. */
        SPREADS,
        /** Time passes, before a step or while it is done. */
        ITSELF
    }

    /**
     * Changes on a zone at one time.
     *
     * @param step    id of the step that is done then
     * @param way     how they come about
     * @param changes what comes and goes; none for a step that works there and leaves everything as it was
     */
    public record Moment(String step, Way way, List<Change> changes) {
        public Moment {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A state that comes or goes.
     *
     * @param state its id
     * @param comes whether it holds from now; else it holds no more
     * @param by    id of the step that made or ended it, or that promised it or last made it when it comes or goes by
     *              itself; empty when that was the survey
     * @param place the line that says so: of the step's stage, or of the state that does not last
     */
    public record Change(String state, boolean comes, String by, Optional<Place> place) {}

    public Explanation {
        steps = List.copyOf(steps);
        strips = List.copyOf(strips);
    }

    /** Explains a plan; never fails, whatever the plan says. */
    public static Explanation of(Setting setting, Plan plan) {
        return new ExplanationWitness(Prover.forSetting(setting), plan).explanation();
    }

    /** What there is to say of a step; of steps that share an id, the first. */
    public Optional<Account> step(String id) {
        return steps.stream().filter(s -> s.step().equals(id)).findFirst();
    }

    /** The strip of a zone. */
    public Optional<Strip> zone(String id) {
        return strips.stream().filter(s -> s.zone().equals(id)).findFirst();
    }
}
