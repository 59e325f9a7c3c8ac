package baywright.workspace;

import baywright.plan.JobGoal;
import baywright.plan.Plan;
import baywright.safety.JobSafety;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Vin;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One job as its folder describes it: {@code job.json} with the readings of {@code readings.csv} in the survey. Times
 * are local times of the site.
 *
 * @param id                    stable kebab-case id, the name of its folder
 * @param title                 words for people
 * @param customer              who it is for; may be empty
 * @param vehicle               what is worked on
 * @param vehicles              how many alike, 1 to 1000
 * @param arrives               when the vehicle comes, if agreed
 * @param wanted                when it must be ready, if agreed; after {@code arrives}
 * @param cap                   the most that the customer pays, with tax, in the site's currency, from 0
 * @param rate                  name of the shop's charge rate; empty: the shop's only one
 * @param wishes                in the customer's words
 * @param goals                 the same in the library's words; a plan can be composed from them
 * @param survey                what was found, with readings
 * @param plan                  steps in order; zones as written, see {@link baywright.plan.Step}
 * @param discountLabourPercent what is let off the price of labour, 0 to 100
 * @param safety                what it says about its own safety
 * @param language              BCP 47 language of its customer's documents; empty: the shop's
 * @param discountPercent       what is let off what is then left of the whole price, 0 to 100
 * @param photos                pictures of its vehicle, in the order in which they are shown
 */
public record Job(
        String id,
        String title,
        String customer,
        Vehicle vehicle,
        int vehicles,
        Optional<LocalDateTime> arrives,
        Optional<LocalDateTime> wanted,
        Optional<BigDecimal> cap,
        Optional<String> rate,
        List<String> wishes,
        List<JobGoal> goals,
        Survey survey,
        Plan plan,
        BigDecimal discountLabourPercent,
        JobSafety safety,
        Optional<String> language,
        BigDecimal discountPercent,
        List<JobPhoto> photos) {

    public Job {
        wishes = List.copyOf(wishes);
        goals = List.copyOf(goals);
        photos = List.copyOf(photos);
    }

    /** A job without photos. */
    public Job(
            String id,
            String title,
            String customer,
            Vehicle vehicle,
            int vehicles,
            Optional<LocalDateTime> arrives,
            Optional<LocalDateTime> wanted,
            Optional<BigDecimal> cap,
            Optional<String> rate,
            List<String> wishes,
            List<JobGoal> goals,
            Survey survey,
            Plan plan,
            BigDecimal discountLabourPercent,
            JobSafety safety,
            Optional<String> language,
            BigDecimal discountPercent) {
        this(
                id,
                title,
                customer,
                vehicle,
                vehicles,
                arrives,
                wanted,
                cap,
                rate,
                wishes,
                goals,
                survey,
                plan,
                discountLabourPercent,
                safety,
                language,
                discountPercent,
                List.of());
    }

    /** The same job with another plan. */
    public Job withPlan(Plan other) {
        return withPlan(other, safety);
    }

    /** The same job with another survey. */
    public Job withSurvey(Survey other) {
        JobParts parts = new JobParts(this);
        parts.survey = other;
        return parts.job();
    }

    /** The same job with other photos. */
    public Job withPhotos(List<JobPhoto> others) {
        JobParts parts = new JobParts(this);
        parts.photos = others;
        return parts.job();
    }

    /** The same job with another plan and other words about its safety. */
    public Job withPlan(Plan other, JobSafety words) {
        JobParts parts = new JobParts(this);
        parts.plan = other;
        parts.safety = words;
        return parts.job();
    }

    /**
     * What is worked on.
     *
     * @param shape       id of the vehicle shape
     * @param description words for people, may be empty
     * @param colour      words for people, may be empty
     * @param vin         vehicle identification number, where recorded
     * @param zones       what differs from the shape, by zone id
     */
    public record Vehicle(
            String shape, String description, String colour, Optional<Vin> vin, Map<String, ZoneChange> zones) {

        public Vehicle {
            zones = Map.copyOf(zones);
        }

        /** The shape with this vehicle's own zones; a change of a zone that the shape has not is without effect. */
        public Shape on(Shape base) {
            List<Zone> own = new ArrayList<>();
            for (Zone zone : base.zones()) {
                ZoneChange change = zones.get(zone.id());
                own.add(change == null ? zone : change.on(zone));
            }
            return new Shape(base.id(), base.title(), base.size(), own);
        }
    }

    /**
     * How a zone of the vehicle differs from that of its shape.
     *
     * @param surface   id of another surface
     * @param substrate another substrate
     * @param measures  drivers that count for another amount; those not named stay
     */
    public record ZoneChange(Optional<String> surface, Optional<String> substrate, Map<String, BigDecimal> measures) {

        public ZoneChange {
            measures = Map.copyOf(measures);
        }

        Zone on(Zone zone) {
            Map<String, BigDecimal> all = new HashMap<>(zone.measures());
            all.putAll(measures);
            return new Zone(
                    zone.id(),
                    zone.title(),
                    surface.orElse(zone.surface()),
                    substrate.orElse(zone.substrate()),
                    all,
                    zone.neighbours());
        }
    }
}
