package baywright.library;

import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.script.Place;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a stage says for one use: its script evaluated with the inputs and the surveyed facts of a step. Immutable; every
 * line knows its place and the inputs and facts that it depends on.
 *
 * @param needs     states that must be found, in order of writing
 * @param prefers   states that would be better found
 * @param effects   what it makes and unmakes
 * @param attended  hands-on time, lines add up
 * @param standing  time that passes by itself after the hands-on time
 * @param setUps    minutes to get ready each time the stage is used
 * @param uses      consumables
 * @param hazards   dangers, protection, what to keep apart
 * @param crew      people
 * @param where     bay and equipment
 * @param climate   what air and surface must be like
 * @param removals  film taken off
 * @param checks    what must be confirmed
 * @param mistakes  what commonly goes wrong
 * @param dependsOn names of all inputs and facts that were read; terms are the same for steps that agree on them
 */
public record StageTerms(
        List<Need> needs,
        List<Need> prefers,
        List<Effect> effects,
        List<Attended> attended,
        List<Standing> standing,
        List<SetUp> setUps,
        List<Use> uses,
        Hazards hazards,
        Crew crew,
        Where where,
        Climate climate,
        List<Removal> removals,
        List<Note> checks,
        List<Note> mistakes,
        Set<String> dependsOn) {

    public StageTerms {
        needs = List.copyOf(needs);
        prefers = List.copyOf(prefers);
        effects = List.copyOf(effects);
        attended = List.copyOf(attended);
        standing = List.copyOf(standing);
        setUps = List.copyOf(setUps);
        uses = List.copyOf(uses);
        removals = List.copyOf(removals);
        checks = List.copyOf(checks);
        mistakes = List.copyOf(mistakes);
        dependsOn = Set.copyOf(dependsOn);
    }

    /** Where a line stands in its script and which inputs and facts it depends on. */
    public record Origin(Place place, Set<String> from) {
        public Origin {
            from = Set.copyOf(from);
        }

        public static Origin at(Place place) {
            return new Origin(place, Set.of());
        }
    }

    /**
     * A condition on what a step finds.
     *
     * @param anyOf  one of these states must hold ({@code absent}: none of them may hold)
     * @param absent true for a state that must not hold
     * @param why    the reason, may be empty
     */
    public record Need(List<String> anyOf, boolean absent, String why, Origin origin) {
        public Need {
            anyOf = List.copyOf(anyOf);
        }
    }

    /** How far an effect reaches from the zones of the step. */
    public enum Reach {
        ZONE,
        NEIGHBOURS,
        VEHICLE
    }

    /**
     * A state made or unmade.
     *
     * @param state  the state
     * @param sets   true: made, false: unmade
     * @param after  for a state that arrives by itself: how long after the hands-on time; empty: at the end of the step
     * @param reach  how far it goes
     * @param unless zones that hold this state are spared when the effect reaches beyond the step's own; empty: none
     * @param unlessPlace where that is written; where nothing is, the place of the effect
     */
    public record Effect(
            String state,
            boolean sets,
            Optional<Quantity> after,
            Reach reach,
            String unless,
            Place unlessPlace,
            Origin origin) {

        public Effect(String state, boolean sets, Optional<Quantity> after, Reach reach, String unless, Origin origin) {
            this(state, sets, after, reach, unless, origin.place(), origin);
        }
    }

    /**
     * Hands-on minutes of one person for each unit of the driver.
     *
     * @param minutes three points, in minutes
     * @param per     driver: vehicle, zone, m2, wheel, m, seat, pane, panel, or a counted thing such as chip, spot, piece
     * @param times   further factor, not negative
     */
    public record Attended(ThreePoint minutes, String per, BigDecimal times, Origin origin) {}

    /**
     * Time that passes by itself. It holds the zone and the bay, not the person.
     *
     * @param least  shortest wait before the next step on the zone, minutes
     * @param most   longest wait before the next step on the zone must begin; empty: it may stand as long as it likes
     * @param usual  what a plan reckons with, from least to most
     * @param why    the reason, may be empty
     */
    public record Standing(BigDecimal least, Optional<BigDecimal> most, BigDecimal usual, String why, Origin origin) {}

    /** Minutes to get ready, once for each use of the stage. */
    public record SetUp(BigDecimal minutes, Origin origin) {}

    /**
     * A consumable taken for each unit of the driver.
     *
     * @param item     id in the price list
     * @param amount   of concentrate as it comes from the pack; already worked out from a dilution
     * @param dilution as written, for example {@code 1:10}; empty when used neat
     * @param per      driver, as for {@link Attended}
     * @param times    further factor, not negative
     */
    public record Use(String item, Quantity amount, String dilution, String per, BigDecimal times, Origin origin) {}

    /**
     * Dangers of doing it.
     *
     * @param from      items whose hazard statements apply
     * @param risks     physical dangers such as vibration, noise, slip, electricity, ignition, dust, lifting, heat
     * @param wear      protection beyond what the items ask for
     * @param keepApart what must not meet this
     */
    public record Hazards(List<Named> from, List<Risk> risks, List<Named> wear, List<Apart> keepApart) {
        public static final Hazards NONE = new Hazards(List.of(), List.of(), List.of(), List.of());

        public Hazards {
            from = List.copyOf(from);
            risks = List.copyOf(risks);
            wear = List.copyOf(wear);
            keepApart = List.copyOf(keepApart);
        }
    }

    /** A name with its place. */
    public record Named(String id, Origin origin) {}

    /** A physical danger, with a level (m/s² for vibration, dB for noise) where the script gives one. */
    public record Risk(String kind, Optional<Quantity> level, Origin origin) {}

    /** Something that must not meet this stage's items: an item, a reactivity group or a word for people. */
    public record Apart(String what, String why, Origin origin) {}

    /**
     * Who does it.
     *
     * @param people  fewest who can do it
     * @param most    most who help at all
     * @param shares  elapsed time as a share of one person's, by number of people; missing: 1/number
     * @param skill   what the person must know, may be empty
     * @param checker whether a second person must look
     */
    public record Crew(
            int people, int most, List<BigDecimal> shares, String skill, boolean checker, Optional<Origin> origin) {
        public static final Crew ONE = new Crew(1, 1, List.of(BigDecimal.ONE), "", false, Optional.empty());

        public Crew {
            shares = List.copyOf(shares);
        }
    }

    /** Which bay (empty: any) and which equipment. */
    public record Where(String bay, List<Named> equipment, Optional<Origin> origin) {
        public static final Where ANY = new Where("", List.of(), Optional.empty());

        public Where {
            equipment = List.copyOf(equipment);
        }
    }

    /** Bounds on the surface's temperature (°C) and the air's relative humidity (%); empty: no bound. */
    public record Climate(
            Optional<Quantity> coldest,
            Optional<Quantity> warmest,
            Optional<Quantity> driest,
            Optional<Quantity> dampest,
            Optional<Origin> origin) {
        public static final Climate ANY =
                new Climate(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Film taken off each zone, µm.
     *
     * @param micrometres three points
     * @param times       further factor, such as the number of passes
     */
    public record Removal(ThreePoint micrometres, BigDecimal times, Origin origin) {}

    /** A sentence for people. */
    public record Note(String text, Origin origin) {}
}
