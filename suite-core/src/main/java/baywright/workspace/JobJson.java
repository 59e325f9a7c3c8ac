package baywright.workspace;

import baywright.plan.JobGoal;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.quantity.Quantity;
import baywright.safety.JobSafety;
import baywright.script.Value;
import baywright.vehicle.Survey;
import baywright.vehicle.Vin;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** {@code job.json} to {@link Job} and back. Readings are in a file of their own. */
final class JobJson {

    static final String KIND = "job";
    static final int VERSION = 1;

    private static final Map<String, Step.Priority> PRIORITIES = ShopJson.inOrder(
            Map.entry("must", Step.Priority.MUST),
            Map.entry("should", Step.Priority.SHOULD),
            Map.entry("could", Step.Priority.COULD));

    /** A zone id, every zone of a surface, or either taken away. */
    private static final Pattern ZONE_CHOICE = Pattern.compile("-?(surface:)?" + Fields.ID.pattern());

    private static final Span WITH = Span.from(-1_000_000_000, 1_000_000_000);
    private static final String A_ZONE =
            "the id of a zone such as \"bonnet\", or \"surface:paint\", or either after a hyphen to leave it out";
    private static final String FACT = "a text, a number, true or false";

    /** A job with the object that it was read from. */
    record Read(Job job, Json.Obj document) {}

    private JobJson() {}

    static Optional<Read> read(Report report) {
        return Fields.ofDocument(report, KIND, VERSION).flatMap(in -> job(in).map(job -> new Read(job, in.object())));
    }

    private static Optional<Job> job(Fields in) {
        String id = in.id("id");
        String title = in.title("title");
        String customer = in.objectIfGiven("customer").map(JobJson::customer).orElse("");
        Optional<Job.Vehicle> vehicle = in.object("vehicle").map(JobJson::vehicle);
        int vehicles = in.whole("vehicles", Span.from(1, 1000), 1);
        Optional<LocalDateTime> arrives = in.time("arrives");
        Optional<LocalDateTime> wanted = in.time("wanted");
        if (arrives.isPresent() && wanted.isPresent() && !wanted.get().isAfter(arrives.get())) {
            in.refuse("wanted", "the time is not after arrives, " + arrives.get(), "give a later one");
        }
        Optional<BigDecimal> cap = in.numberIfGiven("cap", Span.MONEY);
        Optional<String> rate = in.idIfGiven("rate");
        List<String> wishes = in.texts("wishes");
        List<JobGoal> goals = goals(in);
        Survey survey = in.objectIfGiven("survey").map(JobJson::survey).orElse(Survey.NOTHING);
        Plan plan = in.objectIfGiven("plan").map(JobJson::plan).orElse(new Plan(List.of()));
        Discounts discounts = in.objectIfGiven("price").map(JobJson::discounts).orElse(Discounts.NONE);
        JobSafety safety = JobSafetyJson.read(in, plan);
        Optional<String> language = language(in);
        List<JobPhoto> photos = photos(in);
        in.done();
        return in.report()
                .whenSound(() -> new Job(
                        id,
                        title,
                        customer,
                        vehicle.orElseThrow(),
                        vehicles,
                        arrives,
                        wanted,
                        cap,
                        rate,
                        wishes,
                        goals,
                        survey,
                        plan,
                        discounts.labour(),
                        safety,
                        language,
                        discounts.all(),
                        photos));
    }

    private static Optional<String> language(Fields in) {
        String language = in.text("language", "");
        if (!language.isEmpty() && !ShopJson.LANGUAGE.matcher(language).matches()) {
            in.refuse("language", "met the text " + Shown.quoted(language), "give a language such as \"de\"");
        }
        return Optional.of(language).filter(l -> !l.isEmpty());
    }

    private static List<JobPhoto> photos(Fields in) {
        List<JobPhoto> photos = new ArrayList<>();
        Map<String, String> first = new HashMap<>();
        for (Fields one : in.objects("photos")) {
            String file = one.text("file");
            String caption = one.text("caption", "");
            Optional<String> zone = one.idIfGiven("zone");
            Optional<LocalDateTime> added = one.time("added");
            one.done();
            if (Fields.isStandIn(file)) {
                continue;
            }
            if (!JobPhoto.isFileName(file)) {
                one.refuse("file", Shown.quoted(file) + " is no name of a photo", "give " + JobPhoto.A_FILE_NAME);
                continue;
            }
            String before = first.putIfAbsent(file.toLowerCase(Locale.ROOT), one.path("file"));
            if (before != null) {
                one.refuse("file", Shown.quoted(file) + " stands in " + before + " already", "name each photo once");
            }
            photos.add(new JobPhoto(file, caption, zone, added));
        }
        return photos;
    }

    private static String customer(Fields in) {
        String name = in.text("name", "");
        in.done();
        return name;
    }

    /** Percent let off labour, and off everything. */
    private record Discounts(BigDecimal labour, BigDecimal all) {
        static final Discounts NONE = new Discounts(BigDecimal.ZERO, BigDecimal.ZERO);
    }

    private static Discounts discounts(Fields in) {
        Discounts discounts = new Discounts(
                in.number("discountLabourPercent", Span.PERCENT, BigDecimal.ZERO),
                in.number("discountPercent", Span.PERCENT, BigDecimal.ZERO));
        in.done();
        return discounts;
    }

    private static Job.Vehicle vehicle(Fields in) {
        String shape = in.id("shape");
        String description = in.text("description", "");
        String colour = in.text("colour", "");
        Optional<Vin> vin = vin(in);
        Map<String, Job.ZoneChange> zones = mapped(in.objectsById("zones"), JobJson::zoneChange);
        in.done();
        return new Job.Vehicle(shape, description, colour, vin, zones);
    }

    private static Optional<Vin> vin(Fields in) {
        String text = in.text("vin", "");
        if (text.isEmpty() || Fields.isStandIn(text)) {
            return Optional.empty();
        }
        try {
            Vin vin = new Vin(text);
            if (!vin.checkDigitFits()) {
                in.warn(
                        "vin",
                        "the check digit at position 9 is '" + text.charAt(8) + "', the other characters ask for '"
                                + vin.expectedCheckDigit() + "'",
                        "compare it with the vehicle; outside North America it may be right all the same");
            }
            return Optional.of(vin);
        } catch (IllegalArgumentException e) {
            in.refuse("vin", String.valueOf(e.getMessage()), "copy it from the vehicle or leave it empty");
            return Optional.empty();
        }
    }

    private static Job.ZoneChange zoneChange(Fields in) {
        Job.ZoneChange change = new Job.ZoneChange(
                in.idIfGiven("surface"),
                Optional.of(in.text("substrate", "")).filter(s -> !s.isEmpty()),
                ShapesJson.measures(in));
        in.done();
        return change;
    }

    private static <T> Map<String, T> mapped(Map<String, Fields> all, Function<Fields, T> read) {
        Map<String, T> mapped = new LinkedHashMap<>();
        all.forEach((id, fields) -> mapped.put(id, read.apply(fields)));
        return mapped;
    }

    private static Survey survey(Fields in) {
        Survey survey = new Survey(facts(in), in.ids("states"), mapped(in.objectsById("zones"), JobJson::zoneSurvey));
        in.done();
        return survey;
    }

    private static ZoneSurvey zoneSurvey(Fields in) {
        ZoneSurvey zone = new ZoneSurvey(
                facts(in),
                in.ids("states"),
                in.numbers("counts", Span.AMOUNT),
                List.of(),
                in.yesNo("unreadable", false),
                in.texts("notes"));
        in.done();
        return zone;
    }

    private static Map<String, String> facts(Fields in) {
        return in.values("facts", (value, at) -> {
            if (value instanceof Json.Text text) {
                return in.text(text, at);
            }
            if (value instanceof Json.Bool bool) {
                return Boolean.toString(bool.value());
            }
            if (value instanceof Json.Num) {
                return in.number(value, at, WITH).toPlainString();
            }
            return in.wrongKind(value, at, FACT, "");
        });
    }

    private static List<JobGoal> goals(Fields in) {
        List<Fields> all = in.objects("goals");
        Map<Integer, JobGoal> sound = new LinkedHashMap<>();
        for (int i = 0; i < all.size(); i++) {
            int at = i;
            goal(all.get(i)).ifPresent(goal -> sound.put(at, goal));
        }
        List<Integer> named = sound.keySet().stream()
                .filter(i -> sound.get(i).id().isPresent())
                .toList();
        Fields.refuseRepeated(
                named.stream().map(all::get).toList(),
                named.stream().map(i -> sound.get(i).id().orElseThrow()).toList());
        return List.copyOf(sound.values());
    }

    private static Optional<JobGoal> goal(Fields in) {
        int before = in.report().count();
        Optional<String> id = in.idIfGiven("id");
        String title = in.text("title", "");
        Optional<String> goal = in.idIfGiven("goal");
        List<String> states = in.ids("states");
        List<String> zones = in.texts("zones", ZONE_CHOICE, A_ZONE);
        Step.Priority priority = in.choice("priority", PRIORITIES, Step.Priority.MUST);
        Optional<BigDecimal> worth = in.numberIfGiven("worth", Span.AMOUNT);
        in.done();
        if (in.report().hasErrors() && in.report().count() > before) {
            return Optional.empty();
        }
        if (goal.isPresent() && !states.isEmpty()) {
            in.refuse("states", "stand beside 'goal'", "name a goal of the library or states, not both");
            return Optional.empty();
        }
        if (goal.isEmpty() && states.isEmpty()) {
            in.refuse("goal", "is missing", "name a goal of the library, or 'states' that are wanted");
            return Optional.empty();
        }
        if (goal.isEmpty() && zones.isEmpty()) {
            in.refuse("zones", "names no zone", "say where the states are wanted, such as [\"surface:paint\"]");
            return Optional.empty();
        }
        return Optional.of(new JobGoal(id, title, goal, states, zones, priority, worth));
    }

    private static Plan plan(Fields in) {
        List<Fields> all = in.objects("steps");
        List<Step> steps = all.stream().map(JobJson::step).toList();
        Fields.refuseRepeated(all, steps.stream().map(Step::id).toList());
        in.done();
        return new Plan(steps);
    }

    private static Step step(Fields in) {
        Step step = new Step(
                in.id("id"),
                in.id("stage"),
                in.texts("zones", ZONE_CHOICE, A_ZONE),
                in.values("with", (value, at) -> input(in, value, at)),
                in.choice("priority", PRIORITIES, Step.Priority.MUST),
                in.time("at"),
                in.numbers("drivers", Span.AMOUNT));
        in.done();
        return step;
    }

    /** An input of a stage; a text such as {@code 2 um} is a quantity. */
    private static Value input(Fields in, Json value, String at) {
        Object raw = Value.NOTHING;
        if (value instanceof Json.Text) {
            String text = in.text(value, at);
            Optional<Quantity> quantity = Fields.quantity(text);
            raw = quantity.isPresent() ? quantity.get() : text;
        } else if (value instanceof Json.Num) {
            raw = in.number(value, at, WITH);
        } else if (value instanceof Json.Bool bool) {
            raw = bool.value();
        } else {
            in.wrongKind(value, at, FACT, "");
        }
        return Value.of(raw, in.report().source().place(value.offset()));
    }

    // writing

    /** The job as the program would write it; {@link Draft#onto} brings it into what a file holds already. */
    static Draft draft(Job job) {
        return Draft.object()
                .with("schema", Draft.text("baywright/" + KIND + "/" + VERSION))
                .with("id", Draft.text(job.id()))
                .with("title", Draft.text(job.title()))
                .with("customer", Draft.object().usually("name", Draft.text(job.customer()), ""))
                .with("vehicle", draft(job.vehicle()))
                .usually("vehicles", Draft.number(BigDecimal.valueOf(job.vehicles())), "1")
                .with("arrives", Draft.time(job.arrives()))
                .with("wanted", Draft.time(job.wanted()))
                .with("cap", Draft.number(job.cap()))
                .with("rate", Draft.text(job.rate()))
                .with("wishes", Draft.texts(job.wishes()))
                .with("goals", Draft.list(job.goals(), JobJson::draft))
                .with("survey", draft(job.survey()))
                .with("plan", Draft.object().with("steps", Draft.list(job.plan().steps(), JobJson::draft)))
                .with(
                        "price",
                        Draft.object()
                                .usually("discountLabourPercent", job.discountLabourPercent(), BigDecimal.ZERO)
                                .usually("discountPercent", job.discountPercent(), BigDecimal.ZERO))
                .with("acknowledgements", JobSafetyJson.acknowledgements(job.safety()))
                .with("climate", JobSafetyJson.climate(job.safety()))
                .with("safety", JobSafetyJson.steps(job.safety()))
                .with("language", Draft.text(job.language()))
                .with(
                        "photos",
                        new Draft.Arr(job.photos().stream().map(JobJson::draft).toList(), "file", true));
    }

    private static Draft draft(JobPhoto photo) {
        return Draft.object()
                .with("file", Draft.text(photo.file()))
                .usually("caption", Draft.text(photo.caption()), "")
                .with("zone", Draft.text(photo.zone()))
                .with("added", Draft.time(photo.added()));
    }

    private static Draft draft(Job.Vehicle vehicle) {
        return Draft.object()
                .with("shape", Draft.text(vehicle.shape()))
                .usually("description", Draft.text(vehicle.description()), "")
                .usually("colour", Draft.text(vehicle.colour()), "")
                .usually("vin", Draft.text(vehicle.vin().map(Vin::text).orElse("")), "")
                .with("zones", Draft.map(vehicle.zones(), JobJson::draft));
    }

    private static Draft draft(Job.ZoneChange change) {
        return Draft.object()
                .with("surface", Draft.text(change.surface()))
                .usually("substrate", Draft.text(change.substrate().orElse("")), "")
                .with("measures", Draft.map(change.measures(), Draft::number));
    }

    private static Draft draft(Survey survey) {
        return Draft.object()
                .with("facts", Draft.map(survey.facts(), Draft::text))
                .with("states", Draft.texts(survey.states()))
                .with("zones", Draft.sparseMap(survey.zones(), JobJson::draft));
    }

    /** Readings stand in their own file, so that a zone with nothing else says nothing here. */
    private static Draft draft(ZoneSurvey zone) {
        return Draft.object()
                .with("facts", Draft.map(zone.facts(), Draft::text))
                .with("states", Draft.texts(zone.states()))
                .with("counts", Draft.map(zone.counts(), Draft::number))
                .usually("unreadable", Draft.bool(zone.unreadable()), "false")
                .with("notes", Draft.texts(zone.notes()));
    }

    private static Draft draft(JobGoal goal) {
        return Draft.object()
                .with("id", Draft.text(goal.id()))
                .usually("title", Draft.text(goal.title()), "")
                .with("goal", Draft.text(goal.goal()))
                .with("states", Draft.texts(goal.states()))
                .with("zones", Draft.texts(goal.zones()))
                .usually("priority", Draft.text(word(goal.priority())), word(Step.Priority.MUST))
                .with("worth", Draft.number(goal.worth()));
    }

    private static Draft draft(Step step) {
        return Draft.object()
                .with("id", Draft.text(step.id()))
                .with("stage", Draft.text(step.stage()))
                .with("zones", Draft.texts(step.zones()))
                .with("with", Draft.map(step.with(), JobJson::draft))
                .usually("priority", Draft.text(word(step.priority())), word(Step.Priority.MUST))
                .with("at", Draft.time(step.at()))
                .with("drivers", Draft.map(step.drivers(), Draft::number));
    }

    private static String word(Step.Priority priority) {
        return PRIORITIES.entrySet().stream()
                .filter(p -> p.getValue() == priority)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private static Draft draft(Value value) {
        if (value.raw() instanceof BigDecimal number) {
            return Draft.number(number);
        }
        if (value.raw() instanceof Boolean yes) {
            return Draft.bool(yes);
        }
        if (value.raw() instanceof String || value.raw() instanceof Quantity) {
            return Draft.text(value.raw().toString());
        }
        throw new IllegalArgumentException(
                "an input in a job's file is a text, a number, a quantity, true or false; got " + value.described());
    }
}
