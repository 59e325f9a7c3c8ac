package baywright.safety;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.plan.Bay;
import baywright.plan.Plan;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.script.Problem;
import baywright.site.LibraryFolder;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Cases over the standard library, with stages and items of a test's own. */
final class Cases {

    static final LocalDateTime MONDAY = LocalDateTime.of(2026, 12, 7, 8, 0);
    static final LocalDate DAY = MONDAY.toLocalDate();

    /** Everything that heavy compounding needs to find. */
    static final List<String> READY = List.of(
            "booked-in",
            "measured",
            "spot-proven",
            "washed",
            "iron-clear",
            "tar-clear",
            "clayed",
            "decontaminated",
            "dry",
            "masked",
            "rinsed");

    private static final Path STAGES = Path.of("..", "stage-scripts");
    private static final Map<String, LibraryLoader.Loaded> LOADED = new HashMap<>();
    private static LibraryFolder standard;

    private final List<Item> items = new ArrayList<>();
    private final Map<String, String> scripts = new HashMap<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Bay> bays = new ArrayList<>();
    private Map<String, String> facts = Map.of();
    private List<String> states = READY;
    SafetySettings settings = SafetySettings.USUAL;
    JobSafety job = JobSafety.NONE;
    List<Worker> people = List.of(
            new Worker("p1", "One", List.of()),
            new Worker("p2", "Two", List.of()),
            new Worker("p3", "Three", List.of()));
    int vehicles = 1;

    private static synchronized LibraryFolder standard() {
        if (standard == null) {
            standard = LibraryFolder.of(STAGES);
        }
        return standard;
    }

    Cases item(String id, List<String> hazards, String... groups) {
        items.add(new Item(
                id,
                id,
                baywright.quantity.Quantity.of(1000, baywright.quantity.Unit.MILLILITRE),
                BigDecimal.TEN,
                false,
                Optional.empty(),
                hazards,
                List.of("gloves"),
                List.of(groups),
                ""));
        return this;
    }

    /** A stage of a test's own on paint and wheels. */
    Cases stage(String id, String... lines) {
        scripts.put(
                "own/" + id + ".groovy",
                "stage('" + id + "') {\n    title '" + id + "'\n    family 'wheels'\n    worksOn 'paint', 'wheel'\n    "
                        + String.join("\n    ", lines) + "\n}\n");
        return this;
    }

    /** Any other words of the stage language. */
    Cases words(String text) {
        scripts.put("own/words-" + scripts.size() + ".groovy", text);
        return this;
    }

    Cases step(String stage, String... zones) {
        return step(stage, Optional.empty(), zones);
    }

    Cases step(String stage, Optional<LocalDateTime> at, String... zones) {
        steps.add(
                new Step("s" + (steps.size() + 1), stage, List.of(zones), Map.of(), Step.Priority.MUST, at, Map.of()));
        return this;
    }

    Cases drivers(Map<String, BigDecimal> drivers) {
        Step last = steps.remove(steps.size() - 1);
        steps.add(new Step(last.id(), last.stage(), last.zones(), last.with(), last.priority(), last.at(), drivers));
        return this;
    }

    Cases facts(Map<String, String> surveyed) {
        facts = surveyed;
        return this;
    }

    Cases found(String... ids) {
        states = Arrays.asList(ids);
        return this;
    }

    Cases settings(SafetySettings others) {
        settings = others;
        return this;
    }

    Cases job(JobSafety says) {
        job = says;
        return this;
    }

    Cases people(Worker... there) {
        people = List.of(there);
        return this;
    }

    /** In place of a wash bay and a lit bay. */
    Cases bay(Bay bay) {
        bays.add(bay);
        return this;
    }

    Cases vehicles(int alike) {
        vehicles = alike;
        return this;
    }

    SafetyCase build() {
        Shape shape = standard().shapes().stream()
                .filter(s -> s.id().equals("saloon"))
                .findFirst()
                .orElseThrow();
        if (bays.isEmpty()) {
            List<String> gives =
                    List.of("cool", "shade", "lit", "drained", "ventilated", "engine-cold", "electrics-covered");
            bays.add(new Bay("wash", "Wash bay", List.of("wash", "isolated"), gives));
            bays.add(new Bay("lit", "Lit bay", List.of("lit", "indoors", "flat", "reception"), gives));
        }
        Setting setting = new Setting(library(), shape, new Survey(facts, states, Map.of()), bays, MONDAY);
        return SafetyCase.of(setting, new Plan(steps), settings, job, people, vehicles);
    }

    SafetyReport check() {
        return SafetyCheck.of(build());
    }

    private Library library() {
        Map<String, String> texts = new HashMap<>(scripts);
        try (Stream<Path> files = Files.walk(STAGES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".groovy")).toList()) {
                String name = file.getFileName().toString();
                boolean ofStage = !file.getParent().equals(STAGES) || name.equals("factors.groovy");
                if (ofStage && steps.stream().noneMatch(step -> name.equals(step.stage() + ".groovy"))) {
                    continue;
                }
                texts.put(STAGES.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<Item> all = new ArrayList<>(standard().items());
        all.addAll(items);
        LibraryLoader.Loaded loaded =
                LOADED.computeIfAbsent(texts + " " + items, key -> LibraryLoader.load(texts, all));
        List<Problem> errors = loaded.problems().stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .toList();
        if (!errors.isEmpty()) {
            throw new AssertionError(errors.toString());
        }
        return loaded.library();
    }

    static BigDecimal number(String text) {
        return new BigDecimal(text);
    }
}
