package baywright.workspace;

import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.safety.Caution;
import baywright.safety.JobSafety;
import baywright.script.Nearest;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What {@code job.json} says about safety: {@code acknowledgements}, {@code climate} and {@code safety}. */
final class JobSafetyJson {

    private static final String A_DAY = "a day such as \"2026-12-07\", years 2000 to 2100";
    static final Span CELSIUS = Span.from(-40, 90);
    static final Span HUMIDITY = Span.above(0, 100);
    private static final Span LEVEL = Span.from(0, 200);

    private JobSafetyJson() {}

    static JobSafety read(Fields in, Plan plan) {
        List<JobSafety.Acknowledgement> acknowledgements = new ArrayList<>();
        for (Fields one : in.objects("acknowledgements")) {
            acknowledgement(one).ifPresent(acknowledgements::add);
        }
        List<JobSafety.DayClimate> climate = new ArrayList<>();
        Set<LocalDate> days = new HashSet<>();
        for (Fields one : in.objects("climate")) {
            climate(one).ifPresent(c -> {
                if (!days.add(c.day())) {
                    one.refuse("day", "the day " + c.day() + " is there already", "give one entry for each day");
                }
                climate.add(c);
            });
        }
        Map<String, JobSafety.StepSafety> steps = new LinkedHashMap<>();
        in.objectIfGiven("safety").ifPresent(safety -> {
            Map<String, Fields> given = safety.objectsById("steps");
            given.forEach((id, fields) -> steps.put(id, step(fields)));
            if (!in.report().hasErrors()) {
                warnOfUnknown(given, plan);
            }
            safety.done();
        });
        return new JobSafety(acknowledgements, climate, steps);
    }

    /** What is said of a step that is not there protects nobody. */
    private static void warnOfUnknown(Map<String, Fields> given, Plan plan) {
        Set<String> known = plan.steps().stream().map(Step::id).collect(Collectors.toSet());
        given.forEach((id, fields) -> {
            if (!known.contains(id)) {
                fields.report()
                        .warning(
                                fields.object().offset(),
                                "safety.steps." + id,
                                "the plan has no step '" + id + "'" + Nearest.hint(id, known),
                                "name a step of the plan, or leave it out");
            }
        });
    }

    private static void warnOfUnknown(Fields in, String id) {
        Set<String> known = Stream.of(Caution.values()).map(Caution::id).collect(Collectors.toSet());
        if (!Fields.isStandIn(id) && !known.contains(id)) {
            in.warn(
                    "id",
                    "'" + id + "' is no caution" + Nearest.hintOrAll(id, known),
                    "name one, or leave the answer out: it silences nothing");
        }
    }

    private static Optional<JobSafety.Acknowledgement> acknowledgement(Fields in) {
        String id = in.id("id");
        warnOfUnknown(in, id);
        String by = in.title("by");
        Optional<LocalDateTime> at = in.time("at");
        if (at.isEmpty() && !in.report().hasErrors()) {
            in.refuse("at", "is missing", "give a date and time such as \"2026-12-07T08:00\"");
        }
        in.done();
        return at.map(time -> new JobSafety.Acknowledgement(id, by, time));
    }

    private static Optional<JobSafety.DayClimate> climate(Fields in) {
        Optional<LocalDate> day = day(in);
        BigDecimal temperature = in.number("temperature", CELSIUS);
        BigDecimal humidity = in.number("humidity", HUMIDITY);
        Optional<BigDecimal> surface = in.numberIfGiven("surface", CELSIUS);
        in.done();
        return day.map(d -> new JobSafety.DayClimate(d, temperature, humidity, surface));
    }

    private static Optional<LocalDate> day(Fields in) {
        String text = in.text("day");
        try {
            LocalDate day = LocalDate.parse(text);
            if (day.getYear() >= 2000 && day.getYear() <= 2100) {
                return Optional.of(day);
            }
        } catch (DateTimeException e) {
            if (Fields.isStandIn(text)) {
                return Optional.empty();
            }
        }
        in.refuse("day", "met the text " + Shown.quoted(text), "give " + A_DAY);
        return Optional.empty();
    }

    private static JobSafety.StepSafety step(Fields in) {
        JobSafety.StepSafety step = new JobSafety.StepSafety(
                in.whole("people", Span.from(0, 100), 0),
                in.numberIfGiven("vibration", LEVEL),
                in.numberIfGiven("noise", LEVEL));
        in.done();
        return step;
    }

    // writing

    static Draft acknowledgements(JobSafety safety) {
        return Draft.list(
                safety.acknowledgements(),
                a -> Draft.object()
                        .with("id", Draft.text(a.id()))
                        .with("by", Draft.text(a.by()))
                        .with("at", Draft.time(Optional.of(a.at()))));
    }

    static Draft climate(JobSafety safety) {
        return Draft.list(
                safety.climate(),
                c -> Draft.object()
                        .with("day", Draft.text(c.day().toString()))
                        .with("temperature", Draft.number(c.temperature()))
                        .with("humidity", Draft.number(c.humidity()))
                        .with("surface", Draft.number(c.surface())));
    }

    static Draft steps(JobSafety safety) {
        return Draft.object()
                .with(
                        "steps",
                        Draft.map(
                                safety.steps(),
                                s -> Draft.object()
                                        .usually("people", Draft.number(BigDecimal.valueOf(s.people())), "0")
                                        .with("vibration", Draft.number(s.vibration()))
                                        .with("noise", Draft.number(s.noise()))));
    }
}
