package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.JobGoal;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.safety.JobSafety;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Survey;
import baywright.vehicle.Vin;
import baywright.vehicle.ZoneSurvey;
import com.networknt.schema.InputFormat;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class JobRoundTripTest {

    private static final Place ANYWHERE = Place.ofFile("anywhere");

    @Property(tries = 200)
    void aJobIsReadAsItWasWritten(@ForAll("jobs") Job job) {
        assertThat(plain(read(JsonForm.of(JobJson.draft(job).onto(null))).job()))
                .isEqualTo(plain(job));
    }

    @Property(tries = 100)
    void aWrittenJobFitsThePublishedForm(@ForAll("jobs") Job job) {
        assertThat(Forms.of(Mill.JOB).validate(JsonForm.of(JobJson.draft(job).onto(null)), InputFormat.JSON))
                .isEmpty();
    }

    @Property(tries = 100)
    void writingWhatWasReadChangesNothing(@ForAll("jobs") Job job) {
        JobJson.Read read = read(JsonForm.of(JobJson.draft(job).onto(null)));

        assertThat(JobJson.draft(read.job()).onto(read.document())).isSameAs(read.document());
    }

    @Property(tries = 200)
    void whateverOneJobBecomesItIsReadAsWhatItBecame(@ForAll("jobs") Job before, @ForAll("jobs") Job after) {
        Json.Obj document = read(JsonForm.of(JobJson.draft(before).onto(null))).document();

        assertThat(plain(read(JsonForm.of(JobJson.draft(after).onto(document))).job()))
                .isEqualTo(plain(after));
    }

    @Property(tries = 200)
    void unknownFieldsSurviveAnyChangeOfKnownOnes(
            @ForAll("jobs") Job before, @ForAll("jobs") Job after, @ForAll("json") Json unknown) {
        Json.Obj document = withUnknown((Json.Obj) JobJson.draft(before).onto(null), unknown);
        Json.Obj reread = read(JsonForm.of(document)).document();

        Json.Obj changed = (Json.Obj) JobJson.draft(after).onto(reread);

        assertThat(plain(read(JsonForm.of(changed, new Source(Mill.JOB, JsonForm.of(document))))
                        .job()))
                .isEqualTo(plain(after));
        for (String holder : List.of("", "customer", "vehicle", "survey", "plan", "price")) {
            Json.Obj object =
                    holder.isEmpty() ? changed : (Json.Obj) changed.members().get(holder);
            assertThat(JsonForm.of(object.members().get("unknown"))).isEqualTo(JsonForm.of(unknown));
        }
    }

    @Property(tries = 200)
    void jsonIsReadAsItWasWritten(@ForAll("json") Json value) {
        String text = JsonForm.of(value);
        Report report = new Report(new Source("any.json", text));

        assertThat(JsonForm.of(JsonReader.read(report).orElseThrow())).isEqualTo(text);
        assertThat(report.problems()).isEmpty();
    }

    private static Json.Obj withUnknown(Json.Obj object, Json unknown) {
        Map<String, Json> members = new LinkedHashMap<>(object.members());
        for (String holder : List.of("customer", "vehicle", "survey", "plan", "price")) {
            Map<String, Json> inner = members.get(holder) instanceof Json.Obj held
                    ? new LinkedHashMap<>(held.members())
                    : new LinkedHashMap<>();
            inner.put("unknown", unknown);
            members.put(holder, new Json.Obj(inner, Json.NOWHERE));
        }
        members.put("unknown", unknown);
        return new Json.Obj(members, Json.NOWHERE);
    }

    private static JobJson.Read read(String text) {
        Report report = new Report(new Source(Mill.JOB, text));
        Optional<JobJson.Read> read = JobJson.read(report);
        assertThat(report.problems().stream().filter(FileProblem::isError)).isEmpty();
        return read.orElseThrow();
    }

    /** The job without the places of its inputs and without zones of which nothing is said. */
    private static Job plain(Job job) {
        List<Step> steps = job.plan().steps().stream()
                .map(s -> new Step(s.id(), s.stage(), s.zones(), plain(s.with()), s.priority(), s.at(), s.drivers()))
                .toList();
        Map<String, ZoneSurvey> zones = job.survey().zones().entrySet().stream()
                .filter(z -> !z.getValue().equals(ZoneSurvey.NOTHING))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return job.withPlan(new Plan(steps))
                .withSurvey(new Survey(job.survey().facts(), job.survey().states(), zones));
    }

    private static Map<String, Value> plain(Map<String, Value> inputs) {
        return inputs.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, i -> i.getValue().at(ANYWHERE)));
    }

    // random values

    private static JobSafety safety(int count, String text, Optional<LocalDateTime> at) {
        if (count % 3 == 0 || at.isEmpty() || text.isBlank()) {
            return JobSafety.NONE;
        }
        return new JobSafety(
                List.of(new JobSafety.Acknowledgement("jacks", text, at.get())),
                List.of(new JobSafety.DayClimate(
                        at.get().toLocalDate(),
                        BigDecimal.valueOf(count % 30),
                        BigDecimal.valueOf(1 + count % 100),
                        count % 2 == 0 ? Optional.empty() : Optional.of(new BigDecimal("12.5")))),
                Map.of(
                        "s1",
                        new JobSafety.StepSafety(count % 5 + 1, Optional.of(new BigDecimal("3.5")), Optional.empty())));
    }

    private static List<JobGoal> goals(int count, String id, String text) {
        JobGoal named = JobGoal.of(id, List.of(Step.Priority.values()).get(count % 3), "surface:paint", "-" + id);
        JobGoal stated = new JobGoal(
                Optional.of(id).filter(i -> count % 2 == 0),
                text,
                Optional.empty(),
                List.of(id),
                List.of("vehicle"),
                Step.Priority.MUST,
                Optional.empty());
        return List.of(stated, named.worth(BigDecimal.valueOf(count, 1)), named).subList(0, count % 4 % 3 + count % 2);
    }

    private static Arbitrary<String> ids() {
        return Arbitraries.strings()
                .withCharRange('a', 'z')
                .numeric()
                .ofMinLength(1)
                .ofMaxLength(4);
    }

    private static Arbitrary<String> texts() {
        return Arbitraries.strings()
                .withCharRange(' ', '~')
                .withChars("\n\t\"\\/äß€漢")
                .ofMaxLength(12)
                .map(t -> t + "\uD83D\uDE97");
    }

    private static Arbitrary<BigDecimal> amounts(int most) {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, BigDecimal.valueOf(most))
                .ofScale(3);
    }

    private static Arbitrary<Optional<LocalDateTime>> times(int year) {
        return Arbitraries.integers()
                .between(0, 500_000)
                .map(m -> LocalDateTime.of(year, 1, 1, 0, 0).plusMinutes(m))
                .optional();
    }

    private static Arbitrary<Value> inputs() {
        return Arbitraries.oneOf(
                        texts().map(t -> (Object) t),
                        amounts(1000).map(a -> (Object) a),
                        amounts(1000).map(a -> (Object) new Quantity(a, Unit.MICROMETRE)),
                        Arbitraries.of(true, false).map(b -> (Object) b))
                .map(raw -> Value.of(raw, ANYWHERE));
    }

    private static Arbitrary<List<Step>> steps() {
        Arbitrary<Step> step = Combinators.combine(
                        ids(),
                        ids(),
                        Arbitraries.of("bonnet", "surface:paint", "-roof")
                                .list()
                                .ofMaxSize(3),
                        Arbitraries.maps(ids(), inputs()).ofMaxSize(3),
                        Arbitraries.of(Step.Priority.class),
                        times(2030),
                        Arbitraries.maps(ids(), amounts(1000)).ofMaxSize(2))
                .as(Step::new);
        return step.list().ofMaxSize(5).uniqueElements(Step::id);
    }

    private static Arbitrary<Survey> surveys() {
        Arbitrary<ZoneSurvey> zone = Combinators.combine(
                        Arbitraries.maps(ids(), texts()).ofMaxSize(2),
                        ids().list().ofMaxSize(2),
                        Arbitraries.maps(ids(), amounts(1000)).ofMaxSize(2),
                        Arbitraries.of(true, false),
                        texts().list().ofMaxSize(2))
                .as((facts, states, counts, unreadable, notes) ->
                        new ZoneSurvey(facts, states, counts, List.of(), unreadable, notes));
        return Combinators.combine(
                        Arbitraries.maps(ids(), texts()).ofMaxSize(2),
                        ids().list().ofMaxSize(2),
                        Arbitraries.maps(ids(), zone).ofMaxSize(3))
                .as(Survey::new);
    }

    private static Arbitrary<Job.Vehicle> vehicles() {
        Arbitrary<Job.ZoneChange> change = Combinators.combine(
                        ids().optional(),
                        texts().optional(),
                        Arbitraries.maps(ids(), amounts(1000)).ofMaxSize(2))
                .as(Job.ZoneChange::new);
        return Combinators.combine(
                        ids(),
                        texts(),
                        texts(),
                        Arbitraries.of("ZZZBW4713ST000392", "ZZZBW3A0XTT000014")
                                .map(Vin::new)
                                .optional(),
                        Arbitraries.maps(ids(), change).ofMaxSize(2))
                .as(Job.Vehicle::new);
    }

    @Provide
    Arbitrary<Job> jobs() {
        Arbitrary<Job> bare = Combinators.combine(
                        ids(),
                        texts(),
                        vehicles(),
                        Arbitraries.integers().between(1, 1000),
                        times(2028),
                        times(2032),
                        amounts(10_000).optional(),
                        surveys())
                .as((id, text, vehicle, count, arrives, wanted, cap, survey) -> new Job(
                        id,
                        text,
                        text,
                        vehicle,
                        count,
                        arrives,
                        wanted,
                        cap,
                        cap.map(c -> id),
                        List.of(text),
                        goals(count, id, text),
                        survey,
                        new Plan(List.of()),
                        BigDecimal.valueOf(count % 101),
                        safety(count, text, arrives),
                        count % 2 == 0 ? Optional.empty() : Optional.of("de"),
                        BigDecimal.valueOf(count % 7)));
        return Combinators.combine(bare, steps()).as((job, steps) -> job.withPlan(new Plan(steps)));
    }

    @Provide
    Arbitrary<Json> json() {
        Arbitrary<Json> leaf = Arbitraries.oneOf(
                texts().map(t -> (Json) new Json.Text(t, Json.NOWHERE)),
                Arbitraries.of("0", "-1.50", "1e2", "12E-3", "1e999999").map(n -> (Json) new Json.Num(n, Json.NOWHERE)),
                Arbitraries.of(true, false).map(b -> (Json) new Json.Bool(b, Json.NOWHERE)),
                Arbitraries.just(new Json.Null(Json.NOWHERE)));
        return json(leaf, 3);
    }

    /** Bounded in depth: a tree that grows by chance alone can grow without end. */
    private static Arbitrary<Json> json(Arbitrary<Json> leaf, int depth) {
        if (depth == 0) {
            return leaf;
        }
        Arbitrary<Json> inner = json(leaf, depth - 1);
        return Arbitraries.oneOf(
                leaf,
                inner.list().ofMaxSize(3).map(l -> (Json) new Json.Arr(new ArrayList<>(l), Json.NOWHERE)),
                Arbitraries.maps(texts(), inner).ofMaxSize(3).map(m ->
                        (Json) new Json.Obj(new LinkedHashMap<>(m), Json.NOWHERE)));
    }
}
