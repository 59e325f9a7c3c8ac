package baywright.plan;

import baywright.library.StageTerms;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one step takes: every line with its trail, and the sums. Times are for one person; who helps is the business of
 * whoever schedules or prices.
 *
 * @param step     step id
 * @param stage    stage id
 * @param family   id of the stage's family
 * @param zones    zones worked on, in the vehicle's order
 * @param parts    the terms, by groups of zones that agree on everything the terms depend on
 * @param attended hands-on time
 * @param setUps   getting ready for this use
 * @param standing waits, one after the other; of groups that differ the longest
 * @param uses     consumables
 * @param removals film taken off, for each zone
 * @param crew     people; of groups that differ the one that takes longest
 */
public record StepWork(
        String step,
        String stage,
        String family,
        List<String> zones,
        List<Part> parts,
        List<Attended> attended,
        List<SetUp> setUps,
        List<Standing> standing,
        List<Use> uses,
        List<Removal> removals,
        StageTerms.Crew crew) {

    public StepWork {
        zones = List.copyOf(zones);
        parts = List.copyOf(parts);
        attended = List.copyOf(attended);
        setUps = List.copyOf(setUps);
        standing = List.copyOf(standing);
        uses = List.copyOf(uses);
        removals = List.copyOf(removals);
    }

    /** Zones with the same terms. */
    public record Part(List<String> zones, StageTerms terms) {
        public Part {
            zones = List.copyOf(zones);
        }
    }

    /** Hands-on minutes: {@code each} for one of the driver, {@code minutes} for all with times and factors. */
    public record Attended(ThreePoint minutes, ThreePoint each, Trail trail) {}

    /** Minutes to get ready. */
    public record SetUp(BigDecimal minutes, Trail trail) {}

    /** A wait in minutes after the hands-on time; {@code most} empty: as long as it likes. */
    public record Standing(BigDecimal least, BigDecimal usual, Optional<BigDecimal> most, String why, Trail trail) {}

    /** An amount of an item as it comes from the pack. */
    public record Use(String item, Quantity amount, String dilution, Trail trail) {}

    /** Film taken off a zone, µm. */
    public record Removal(String zone, ThreePoint micrometres, Trail trail) {}

    /** The same work under another step id. */
    StepWork as(String id) {
        return id.equals(step)
                ? this
                : new StepWork(id, stage, family, zones, parts, attended, setUps, standing, uses, removals, crew);
    }

    /** Sum of the hands-on lines in minutes, without set-up. */
    public ThreePoint attendedMinutes() {
        return attended.stream().map(Attended::minutes).reduce(ThreePoint.ZERO, ThreePoint::plus);
    }

    /** Sum of the set-ups of this use in minutes, without the family's. */
    public BigDecimal setUpMinutes() {
        return setUps.stream().map(SetUp::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What a plan reckons with for the waits, in minutes. */
    public BigDecimal usualStanding() {
        return standing.stream().map(Standing::usual).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Sum of the least waits in minutes. */
    public BigDecimal leastStanding() {
        return standing.stream().map(Standing::least).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Sum of the longest waits in minutes; empty when there is none or one of them has no end. */
    public Optional<BigDecimal> mostStanding() {
        if (standing.isEmpty() || standing.stream().anyMatch(s -> s.most().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(standing.stream().map(s -> s.most().get()).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** Amount of each item, in order of first use. */
    public Map<String, Quantity> items() {
        Map<String, Quantity> sums = new LinkedHashMap<>();
        uses.forEach(u -> sums.merge(u.item(), u.amount(), PlanWork::sum));
        return sums;
    }

    /** Film taken off a zone, µm. */
    public ThreePoint removalOf(String zone) {
        return removals.stream()
                .filter(r -> r.zone().equals(zone))
                .map(Removal::micrometres)
                .reduce(ThreePoint.ZERO, ThreePoint::plus);
    }

    /**
     * Minutes from start to end of the hands-on time with as many people as the stage asks for at least: mean of the
     * hands-on time times the crew's share, and the set-up.
     */
    public BigDecimal elapsedMinutes() {
        return attendedMinutes().mean().multiply(share(crew, crew.people())).add(setUpMinutes());
    }

    /** The same as three points; the set-up is certain. */
    public ThreePoint elapsed() {
        BigDecimal setUp = setUpMinutes();
        return attendedMinutes().times(share(crew, crew.people())).plus(new ThreePoint(setUp, setUp, setUp));
    }

    /** Elapsed time with so many people as a share of one person's; more than the crew's most do not help. */
    public static BigDecimal share(StageTerms.Crew crew, int people) {
        int hands = Math.max(1, Math.min(people, Math.max(crew.most(), crew.people())));
        if (hands <= crew.shares().size()) {
            return crew.shares().get(hands - 1);
        }
        return BigDecimal.ONE.divide(BigDecimal.valueOf(hands), Quantity.PRECISION);
    }
}
