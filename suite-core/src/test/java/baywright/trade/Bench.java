package baywright.trade;

import baywright.library.Library;
import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Reason;
import baywright.plan.Setting;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.ZoneChoice;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Reading;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneSurvey;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A case from the bench: a vehicle as surveyed, a short plan, and what a proof must say of it. Written as data in
 * {@code bench/*.json}; the words of the data are explained there.
 *
 * @param id     by which people know it
 * @param title  in a few words
 * @param extra  scripts of the shop's own, added to the library; empty: none
 * @param expect the expected findings as lines; see {@link #lines}
 */
record Bench(
        String id,
        String title,
        String extra,
        Shape shape,
        Survey survey,
        List<Bay> bays,
        LocalDateTime start,
        Plan plan,
        List<String> expect) {

    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 12, 7, 8, 0);
    private static final Place DATA = Place.ofFile("bench");

    /** Washed, free of dirt and dry, measured and tried: what the minimal plans take for granted. */
    private static final Map<String, List<String>> PRESETS = Map.of(
            "dirty", List.of("loose-soil"),
            "wet", List.of("washed", "rinsed", "wet", "iron-clear", "tar-clear"),
            "dry", List.of("washed", "rinsed", "dry", "seams-dry"),
            "ready",
                    List.of(
                            "washed",
                            "rinsed",
                            "dry",
                            "seams-dry",
                            "iron-clear",
                            "tar-clear",
                            "clayed",
                            "measured",
                            "spot-proven"),
            "polished",
                    List.of(
                            "washed",
                            "rinsed",
                            "dry",
                            "seams-dry",
                            "iron-clear",
                            "tar-clear",
                            "clayed",
                            "measured",
                            "spot-proven",
                            "polished"),
            "wiped",
                    List.of(
                            "washed",
                            "rinsed",
                            "dry",
                            "seams-dry",
                            "iron-clear",
                            "tar-clear",
                            "clayed",
                            "measured",
                            "spot-proven",
                            "polished",
                            "panel-wiped",
                            "finish-checked"));

    /** The three bays of the demo's first site. */
    private static final List<Bay> BAYS = List.of(
            new Bay(
                    "wash",
                    "Wash bay",
                    List.of("wash", "isolated"),
                    List.of("cool", "shade", "drained", "ventilated", "engine-cold", "electrics-covered")),
            new Bay(
                    "lit",
                    "Lit bay",
                    List.of("lit", "indoors", "flat", "reception"),
                    List.of("cool", "shade", "lit", "ventilated")),
            new Bay(
                    "clean",
                    "Clean bay",
                    List.of("clean", "film", "indoors"),
                    List.of("cool", "shade", "lit", "ventilated", "still", "heated")));

    static Bench read(JsonNode in) {
        Shape shape = Shipped.shape(in.path("shape").asText("saloon"));
        LocalDateTime start =
                in.has("start") ? LocalDateTime.parse(in.path("start").asText()) : MORNING;
        List<String> vehicle = new ArrayList<>(List.of("booked-in", "surveyed", "torqued"));
        in.path("vehicle").forEach(s -> vehicle.add(s.asText()));
        Map<String, List<String>> states = new LinkedHashMap<>();
        Map<String, Map<String, String>> facts = new HashMap<>();
        Map<String, List<Reading>> readings = new HashMap<>();
        List<String> unreadable = new ArrayList<>();
        String preset = in.path("preset").asText("ready");
        for (Zone zone : shape.zones()) {
            if (!zone.id().equals("vehicle")) {
                states.put(zone.id(), new ArrayList<>(PRESETS.get(preset)));
            }
        }
        in.path("zones").properties().forEach(e -> {
            for (String zone : zones(e.getKey(), shape)) {
                JsonNode found = e.getValue();
                found.path("states").forEach(s -> states.get(zone).add(s.asText()));
                found.path("not").forEach(s -> states.get(zone).remove(s.asText()));
                found.path("facts")
                        .properties()
                        .forEach(f -> facts.computeIfAbsent(zone, z -> new HashMap<>())
                                .put(f.getKey(), f.getValue().asText()));
                found.path("readings")
                        .forEach(r -> readings.computeIfAbsent(zone, z -> new ArrayList<>())
                                .add(new Reading(r.decimalValue(), "bench")));
                if (found.path("unreadable").asBoolean()) {
                    unreadable.add(zone);
                }
            }
        });
        Map<String, ZoneSurvey> found = new HashMap<>();
        states.forEach((zone, all) -> found.put(
                zone,
                new ZoneSurvey(
                        facts.getOrDefault(zone, Map.of()),
                        all,
                        Map.of(),
                        readings.getOrDefault(zone, List.of()),
                        unreadable.contains(zone),
                        List.of())));
        Map<String, String> whole = new HashMap<>();
        in.path("facts")
                .properties()
                .forEach(f -> whole.put(f.getKey(), f.getValue().asText()));
        List<Step> steps = new ArrayList<>();
        for (JsonNode step : in.path("steps")) {
            steps.add(step(step.asText(), steps.size() + 1));
        }
        List<String> expect = new ArrayList<>();
        in.path("expect").forEach(x -> expect.add(x.asText()));
        return new Bench(
                in.path("id").asText(),
                in.path("title").asText(),
                in.path("extra").asText(""),
                shape,
                new Survey(whole, vehicle, found),
                in.path("oneBay").asBoolean() ? List.of(oneBay()) : bays(in.path("bays")),
                start,
                new Plan(steps),
                expect);
    }

    /** The bays with other conditions where the case gives them. */
    private static List<Bay> bays(JsonNode others) {
        return BAYS.stream()
                .map(bay -> {
                    if (!others.has(bay.id())) {
                        return bay;
                    }
                    List<String> conditions = new ArrayList<>();
                    others.path(bay.id()).forEach(c -> conditions.add(c.asText()));
                    return new Bay(bay.id(), bay.title(), bay.kind(), conditions);
                })
                .toList();
    }

    private static Bay oneBay() {
        return new Bay(
                "hall",
                "The only bay",
                BAYS.stream().flatMap(b -> b.kind().stream()).distinct().toList(),
                BAYS.stream().flatMap(b -> b.conditions().stream()).distinct().toList());
    }

    private static List<String> zones(String choice, Shape shape) {
        return ZoneChoice.of(Arrays.asList(choice.split(" ", -1)), shape).zones();
    }

    /** {@code stage zone zone … [input=value] [driver#amount] [@2026-12-07T10:00]}. */
    private static Step step(String text, int number) {
        List<String> zones = new ArrayList<>();
        Map<String, Value> with = new TreeMap<>();
        Map<String, BigDecimal> drivers = new TreeMap<>();
        Optional<LocalDateTime> at = Optional.empty();
        String[] words = text.split(" ", -1);
        for (String word : Arrays.asList(words).subList(1, words.length)) {
            int equals = word.indexOf('=');
            int hash = word.indexOf('#');
            if (word.startsWith("@")) {
                at = Optional.of(LocalDateTime.parse(word.substring(1)));
            } else if (equals > 0) {
                String value = word.substring(equals + 1);
                Object raw = value.equals("true") ? true : value;
                with.put(word.substring(0, equals), Value.of(raw, DATA));
            } else if (hash > 0) {
                drivers.put(word.substring(0, hash), new BigDecimal(word.substring(hash + 1)));
            } else {
                zones.add(word.equals("paint") ? "surface:paint" : word);
            }
        }
        return new Step("s" + number, words[0], zones, with, Step.Priority.MUST, at, drivers);
    }

    Proof proof(Library library) {
        return Prover.prove(new Setting(library, shape, survey, bays, start), plan);
    }

    /**
     * What a proof says, of every stop, and of other findings those that the case expects: {@code severity what step:
     * zones}, where {@code what} is a rule, the states needed or refused, or a code; all painted zones are written
     * {@code paint}, all wheels {@code wheels}.
     */
    List<String> lines(Library library) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : proof(library).findings()) {
            String line = line(finding);
            if (finding.severity() == Severity.STOP
                    || expect.contains(line)
                    || finding.code().startsWith("rule")) {
                lines.add(line);
            }
        }
        lines.sort(null);
        return lines;
    }

    private String line(Finding finding) {
        String severity = finding.severity().name().toLowerCase(Locale.ROOT);
        return severity + " " + what(finding) + " " + finding.step().orElse("-") + ": " + shown(finding.zones());
    }

    private static String what(Finding finding) {
        Reason reason = finding.reason();
        if (reason instanceof Reason.RuleSpeaks r) {
            return r.rule();
        }
        if (reason instanceof Reason.NeedUnmet r) {
            return "needs " + String.join("/", r.anyOf());
        }
        if (reason instanceof Reason.MustNotHold r) {
            return "refuses " + r.state();
        }
        return finding.code();
    }

    private String shown(List<String> zones) {
        if (zones.equals(zones("surface:paint", shape))) {
            return "paint";
        }
        return zones.equals(zones("surface:wheel", shape)) ? "wheels" : String.join(" ", zones);
    }

    @Override
    public String toString() {
        return id + ": " + title;
    }
}
