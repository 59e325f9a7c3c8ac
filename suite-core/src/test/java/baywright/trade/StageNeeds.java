package baywright.trade;

import baywright.library.Library;
import baywright.library.Stage;
import baywright.library.StageTerms.Need;
import baywright.library.State;
import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Reason;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneSurvey;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What each stage of the trade must find, would like to find and must not find, as the workshop lists it: common practice,
 * no source. Each line is put to a proof by itself.
 *
 * @param stage  id of the stage
 * @param given  input or fact that the line holds for, such as {@code hardness=soft}; empty: always
 * @param kind   needs, prefers or refuses
 * @param states one of these, apart by {@code /}
 */
record StageNeeds(String stage, String given, String kind, String states) {

    private static final Path TABLE = Path.of("src", "test", "resources", "baywright", "trade", "needs.csv");
    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 12, 7, 8, 0);

    static List<StageNeeds> table() {
        try {
            return Files.readAllLines(TABLE, StandardCharsets.UTF_8).stream()
                    .filter(l -> !l.startsWith("#") && !l.isBlank())
                    .skip(1)
                    .map(l -> l.split(",", -1))
                    .map(c -> new StageNeeds(c[0], c[1], c[2], c[3]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return stage + (given.isEmpty() ? "" : " [" + given + "]") + " " + kind + " " + states;
    }

    /** What a proof says of the stage's only step when everything is as the table wants it, but for this line. */
    boolean isTold(Library library, List<StageNeeds> all) {
        return findings(library, all, Optional.of(this)).stream().anyMatch(this::isMeant);
    }

    private boolean isMeant(Finding finding) {
        if (finding.code().equals("prefers") != kind.equals("prefers")) {
            return false;
        }
        if (finding.reason() instanceof Reason.NeedUnmet r) {
            return !kind.equals("refuses") && String.join("/", r.anyOf()).equals(states);
        }
        return finding.reason() instanceof Reason.MustNotHold r
                && kind.equals("refuses")
                && r.state().equals(states);
    }

    /** What a proof says of needs when everything is as the table wants it. */
    static List<Finding> whenAllIsWell(Library library, List<StageNeeds> all, String stage, String given) {
        return new StageNeeds(stage, given, "", "").findings(library, all, Optional.empty());
    }

    private List<Finding> findings(Library library, List<StageNeeds> all, Optional<StageNeeds> broken) {
        Stage of = library.stageById().get(stage);
        Shape shape = shape(of);
        Set<String> found = new LinkedHashSet<>();
        Set<String> conditions = new LinkedHashSet<>();
        for (StageNeeds line : all) {
            boolean holds = line.stage.equals(stage) && (line.given.isEmpty() || line.given.equals(given));
            if (holds && !line.kind.equals("refuses") && !broken.equals(Optional.of(line))) {
                String first = line.states.split("/", -1)[0];
                if (library.stateById().get(first).scope() == State.Scope.CONDITION) {
                    conditions.add(first);
                } else {
                    found.addAll(plain(library, first));
                }
            }
        }
        broken.ifPresent(line -> {
            if (line.kind.equals("refuses")) {
                found.add(line.states);
            } else {
                Arrays.stream(line.states.split("/", -1)).forEach(s -> {
                    List<String> parts = plain(library, s);
                    found.remove(parts.get(parts.size() - 1));
                });
            }
        });
        Map<String, ZoneSurvey> zones = new HashMap<>();
        for (Zone zone : shape.zones()) {
            zones.put(zone.id(), new ZoneSurvey(Map.of(), List.copyOf(found), Map.of(), List.of(), false, List.of()));
        }
        Map<String, String> facts = new HashMap<>();
        Map<String, Value> with = new LinkedHashMap<>();
        if (!given.isEmpty()) {
            String[] pair = given.split("=", 2);
            if (library.facts().stream().anyMatch(f -> f.id().equals(pair[0]))) {
                facts.put(pair[0], pair[1]);
            } else {
                with.put(pair[0], Value.of(pair[1], Place.ofFile("needs")));
            }
        }
        List<String> kinds = library.stages().stream()
                .map(s -> s.usualTerms().where().bay())
                .filter(k -> !k.isEmpty())
                .distinct()
                .toList();
        Bay bay = new Bay("hall", "Hall", kinds, new ArrayList<>(conditions));
        List<String> on = of.surfaces().contains("vehicle")
                ? List.of("vehicle")
                : List.of("surface:" + of.surfaces().get(0));
        Step step = new Step("s1", stage, on, with, Step.Priority.MUST, Optional.empty(), Map.of());
        Survey survey = new Survey(facts, List.of(), zones);
        Setting setting = new Setting(library, shape, survey, List.of(bay), MORNING);
        return Prover.prove(setting, new Plan(List.of(step))).findings().stream()
                .filter(f -> f.reason() instanceof Reason.NeedUnmet || f.reason() instanceof Reason.MustNotHold)
                .toList();
    }

    private static List<String> plain(Library library, String state) {
        List<String> parts = library.stateById().get(state).madeOf();
        return parts.isEmpty() ? List.of(state) : parts;
    }

    private static Shape shape(Stage stage) {
        return Shipped.shape(
                stage.surfaces().contains("fabric-roof") && stage.surfaces().size() == 1 ? "convertible" : "saloon");
    }

    /** The lines that a library's stage comes to for one input or fact; for the comparison with the table. */
    static Set<String> of(Library library, Stage stage, String given) {
        Map<String, Value> with = new HashMap<>();
        Map<String, Value> facts = new HashMap<>();
        if (!given.isEmpty()) {
            String[] pair = given.split("=", 2);
            boolean fact = library.facts().stream().anyMatch(f -> f.id().equals(pair[0]));
            (fact ? facts : with).put(pair[0], Value.of(pair[1], Place.ofFile("needs")));
        }
        Set<String> lines = new LinkedHashSet<>();
        for (Need need : stage.terms().of(with, facts).needs()) {
            lines.add((need.absent() ? "refuses " : "needs ") + String.join("/", need.anyOf()));
        }
        for (Need need : stage.terms().of(with, facts).prefers()) {
            lines.add("prefers " + String.join("/", need.anyOf()));
        }
        return lines;
    }
}
