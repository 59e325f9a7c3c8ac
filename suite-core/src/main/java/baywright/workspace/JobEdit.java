package baywright.workspace;

import baywright.plan.JobGoal;
import baywright.plan.Plan;
import baywright.safety.JobSafety;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A job with some of its values changed, held to what its file may hold. Each call changes this object; {@link #job} gives the job. */
public final class JobEdit {

    private static final int LONGEST_TEXT = 4000;
    private static final int MOST_VEHICLES = 1000;

    private final JobParts parts;

    private JobEdit(Job base) {
        parts = new JobParts(base);
    }

    /** An edit of a job. */
    public static JobEdit of(Job job) {
        return new JobEdit(job);
    }

    /** A job with nothing surveyed, wanted or planned yet. */
    public static JobEdit blank(String id, String title, String shape) {
        return new JobEdit(new Job(
                id,
                title,
                "",
                new Job.Vehicle(shape, "", "", Optional.empty(), Map.of()),
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Survey.NOTHING,
                new Plan(List.of()),
                BigDecimal.ZERO,
                JobSafety.NONE,
                Optional.empty(),
                BigDecimal.ZERO));
    }

    /**
     * The job on another shape of vehicle; findings and changes on zones that it has not are left out, as they would name nothing. Photos
     * of such zones become photos of the whole vehicle.
     */
    public static Job onShape(Job job, Shape shape) {
        Map<String, Job.ZoneChange> changes = new HashMap<>(job.vehicle().zones());
        changes.keySet().retainAll(shape.zonesById().keySet());
        Map<String, ZoneSurvey> found = new HashMap<>(job.survey().zones());
        found.keySet().retainAll(shape.zonesById().keySet());
        Job.Vehicle vehicle = job.vehicle();
        return of(job).vehicle(
                        new Job.Vehicle(shape.id(), vehicle.description(), vehicle.colour(), vehicle.vin(), changes))
                .photos(job.photos().stream()
                        .map(p -> p.zone()
                                        .filter(z -> !shape.zonesById().containsKey(z))
                                        .isPresent()
                                ? p.on(Optional.empty())
                                : p)
                        .toList())
                .job()
                .withSurvey(new Survey(job.survey().facts(), job.survey().states(), found));
    }

    /** An id made from words for people, which no other job has: {@code Müller, estate} becomes {@code muller-estate}. */
    public static String idFor(String title, Collection<String> taken) {
        return idFor(title, "job", taken);
    }

    /** @param otherwise what the id begins with when the words hold nothing that an id may */
    static String idFor(String title, String otherwise, Collection<String> taken) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-");
        String stem = trimmed(plain, Fields.LONGEST_ID - 4);
        String first = stem.isEmpty() ? otherwise : stem;
        String id = first;
        for (int n = 2; taken.contains(id); n++) {
            id = first + "-" + n;
        }
        return id;
    }

    private static String trimmed(String text, int most) {
        String cut = text.startsWith("-") ? text.substring(1) : text;
        cut = cut.length() > most ? cut.substring(0, most) : cut;
        return cut.endsWith("-") ? cut.substring(0, cut.length() - 1) : cut;
    }

    public JobEdit id(String other) {
        parts.id = other;
        return this;
    }

    public JobEdit title(String other) {
        parts.title = other;
        return this;
    }

    public JobEdit customer(String other) {
        parts.customer = other;
        return this;
    }

    public JobEdit vehicle(Job.Vehicle other) {
        parts.vehicle = other;
        return this;
    }

    public JobEdit vehicles(int other) {
        parts.vehicles = other;
        return this;
    }

    public JobEdit arrives(Optional<LocalDateTime> other) {
        parts.arrives = other;
        return this;
    }

    public JobEdit wanted(Optional<LocalDateTime> other) {
        parts.wanted = other;
        return this;
    }

    public JobEdit cap(Optional<BigDecimal> other) {
        parts.cap = other;
        return this;
    }

    public JobEdit rate(Optional<String> other) {
        parts.rate = other;
        return this;
    }

    public JobEdit wishes(List<String> others) {
        parts.wishes = others;
        return this;
    }

    public JobEdit goals(List<JobGoal> others) {
        parts.goals = others;
        return this;
    }

    /** Other photos; their files are in the job's folder already. */
    public JobEdit photos(List<JobPhoto> others) {
        parts.photos = others;
        return this;
    }

    /** Other words about its safety. */
    public JobEdit safety(JobSafety other) {
        parts.safety = other;
        return this;
    }

    /**
     * The changed job.
     *
     * @throws IllegalArgumentException when a value could not stand in a job's file; the message says which and how to mend it
     */
    public Job job() {
        Job job = parts.job();
        refuseUnless(Fields.isId(job.id()), "'" + Shown.plain(job.id()) + "' is no id; use " + Fields.AN_ID);
        refuseUnless(!job.title().isBlank(), "a job needs a title; give a few words such as 'Estate, two-year coat'");
        refuseUnless(
                job.vehicles() >= 1 && job.vehicles() <= MOST_VEHICLES, "give 1 to " + MOST_VEHICLES + " vehicles");
        job.arrives().ifPresent(JobEdit::yearFits);
        job.wanted().ifPresent(JobEdit::yearFits);
        refuseUnless(
                job.arrives().isEmpty()
                        || job.wanted().isEmpty()
                        || job.wanted().get().isAfter(job.arrives().get()),
                "the vehicle is wanted before it comes; give a later time than its arrival");
        refuseUnless(
                job.cap().filter(c -> !Span.MONEY.holds(c)).isEmpty(),
                "the cap is out of range; give an amount " + Span.MONEY.words());
        wordsFit(job.title());
        wordsFit(job.customer());
        wordsFit(job.vehicle().description());
        wordsFit(job.vehicle().colour());
        job.wishes().forEach(JobEdit::wordsFit);
        job.photos().forEach(p -> wordsFit(p.caption()));
        job.safety().acknowledgements().forEach(JobEdit::answerFits);
        job.safety().climate().forEach(JobEdit::climateFits);
        return job;
    }

    private static void answerFits(JobSafety.Acknowledgement answer) {
        refuseUnless(!answer.by().isBlank(), "nobody is named; give the name of the person who answers for it");
        wordsFit(answer.by());
        yearFits(answer.at());
    }

    private static void climateFits(JobSafety.DayClimate air) {
        yearFits(air.day().atStartOfDay());
        fits("the air's temperature in °C", air.temperature(), JobSafetyJson.CELSIUS);
        fits("the relative humidity in percent", air.humidity(), JobSafetyJson.HUMIDITY);
        air.surface().ifPresent(s -> fits("the surface's temperature in °C", s, JobSafetyJson.CELSIUS));
    }

    private static void fits(String what, BigDecimal number, Span span) {
        refuseUnless(span.holds(number), what + " is out of range; give a number " + span.words());
    }

    private static void yearFits(LocalDateTime time) {
        refuseUnless(
                time.getYear() >= Fields.FIRST_YEAR && time.getYear() <= Fields.LAST_YEAR,
                "the year is out of range; give one from " + Fields.FIRST_YEAR + " to " + Fields.LAST_YEAR);
    }

    private static void wordsFit(String text) {
        refuseUnless(
                text.length() <= LONGEST_TEXT, "the text has more than " + LONGEST_TEXT + " characters; shorten it");
    }

    private static void refuseUnless(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
