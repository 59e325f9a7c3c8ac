package baywright.share;

import baywright.library.Input;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.script.Value;
import baywright.vehicle.Reading;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Many jobs out of a few: the same trade on other vehicles, with other inputs, zones, facts, readings and days. The same seed
 * gives the same jobs. Some prove and some do not, as with offers that nobody has thought through yet.
 */
public final class Estate {

    private static final List<String> SHAPES = List.of("small-five-door", "saloon", "estate", "coupe");

    /** Of so many jobs one has a day of arrival; the others are offers. */
    private static final int BOOKED_ONE_IN = 5;

    private static final int DAYS = 730;

    private final List<Job> like;
    private final Library library;
    private final List<String> shapes;
    private final Random random;

    private Estate(List<Job> like, Library library, List<String> shapes, long seed) {
        this.like = List.copyOf(like);
        this.library = library;
        this.shapes = shapes.stream().filter(SHAPES::contains).toList();
        this.random = new Random(seed);
    }

    /**
     * Makes jobs.
     *
     * @param like   at least one, taken in turn
     * @param shapes ids of the shapes that there are
     */
    public static List<Job> of(List<Job> like, Library library, List<String> shapes, int count, long seed) {
        Estate estate = new Estate(like, library, shapes, seed);
        List<Job> jobs = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            jobs.add(estate.job(i));
        }
        return jobs;
    }

    private Job job(int number) {
        Job of = like.get(number % like.size());
        String id = String.format("estate-%05d", number);
        Optional<LocalDateTime> arrives = random.nextInt(BOOKED_ONE_IN) > 0
                ? Optional.empty()
                : Optional.of(LocalDateTime.of(2026, 12, 7, 8, 0).plusDays(random.nextInt(DAYS)));
        boolean otherShape = !shapes.isEmpty() && of.vehicle().zones().isEmpty() && random.nextInt(3) == 0;
        Job.Vehicle vehicle = new Job.Vehicle(
                otherShape
                        ? shapes.get(random.nextInt(shapes.size()))
                        : of.vehicle().shape(),
                of.vehicle().description(),
                of.vehicle().colour(),
                Optional.empty(),
                of.vehicle().zones());
        return new Job(
                id,
                of.title(),
                "",
                vehicle,
                1 + (random.nextInt(8) == 0 ? random.nextInt(5) : 0),
                arrives,
                Optional.empty(),
                of.cap(),
                of.rate(),
                of.wishes(),
                of.goals(),
                survey(of.survey()),
                plan(of.plan()),
                of.discountLabourPercent(),
                of.safety(),
                of.language(),
                of.discountPercent());
    }

    private Survey survey(Survey of) {
        Map<String, ZoneSurvey> zones = new HashMap<>();
        of.zones()
                .forEach((id, zone) -> zones.put(
                        id,
                        new ZoneSurvey(
                                zone.facts(),
                                zone.states(),
                                zone.counts(),
                                zone.readings().stream().map(this::near).toList(),
                                zone.unreadable(),
                                zone.notes())));
        Map<String, String> facts = new HashMap<>(of.facts());
        for (String id : List.of("soiling", "hardness")) {
            library.facts().stream()
                    .filter(f -> f.id().equals(id) && !f.choices().isEmpty() && random.nextInt(3) == 0)
                    .forEach(f -> facts.put(
                            id, f.choices().get(random.nextInt(f.choices().size()))));
        }
        return new Survey(facts, of.states(), zones);
    }

    private Reading near(Reading of) {
        BigDecimal more = BigDecimal.valueOf(random.nextInt(13) - 6L);
        return new Reading(of.micrometres().add(more).max(BigDecimal.TEN), of.source());
    }

    private Plan plan(Plan of) {
        List<Step> steps = new ArrayList<>();
        for (Step step : of.steps()) {
            if (random.nextInt(25) > 0) {
                steps.add(step(step));
            }
        }
        return new Plan(steps);
    }

    private Step step(Step of) {
        List<String> zones = of.zones().size() > 1 && random.nextInt(6) == 0
                ? of.zones().subList(0, of.zones().size() - 1)
                : of.zones();
        Map<String, Value> with = new HashMap<>(of.with());
        Stage stage = library.stageById().get(of.stage());
        if (stage != null && !stage.inputs().isEmpty() && random.nextInt(4) == 0) {
            Input input = stage.inputs().get(random.nextInt(stage.inputs().size()));
            List<Value> samples = input.samples();
            if (!samples.isEmpty()) {
                with.put(input.name(), samples.get(random.nextInt(samples.size())));
            }
        }
        return new Step(of.id(), of.stage(), zones, with, of.priority(), of.at(), of.drivers());
    }
}
