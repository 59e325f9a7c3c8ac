package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.library.Library;
import baywright.library.LibraryLoader.Loaded;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.quantity.ThreePoint;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class StandardLibraryTest {

    private static Loaded loaded;
    private static Library library;

    @BeforeAll
    static void load() {
        loaded = Shipped.library();
        library = loaded.library();
    }

    @Test
    void loadsWithoutAProblem() {
        assertThat(loaded.problems()).isEmpty();
    }

    @Test
    void holdsAllStagesOfTheTrade() {
        assertThat(library.stages()).hasSize(69);
    }

    @Test
    void everyScriptHoldsTheStageThatItsNameSaysInTheFolderOfItsFamily() throws IOException {
        Set<String> met = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Shipped.STAGES, 2)) {
            files.filter(f -> Shipped.STAGES.relativize(f).getNameCount() == 2)
                    .filter(f -> !f.getParent().endsWith("rules"))
                    .forEach(
                            f -> met.add(Shipped.STAGES.relativize(f).toString().replace('\\', '/')));
        }
        assertThat(met)
                .isEqualTo(library.stages().stream()
                        .map(s -> s.family() + "/" + s.id() + ".groovy")
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void everyScriptSaysWhereItsFiguresComeFrom() throws IOException {
        try (Stream<Path> files = Files.walk(Shipped.STAGES, 2)) {
            assertThat(files.filter(f -> Shipped.STAGES.relativize(f).getNameCount() == 2))
                    .allSatisfy(
                            f -> assertThat(Files.readAllLines(f).get(0)).contains("from memory", "common practice"));
        }
    }

    @Test
    void everyStageHasTwoExamplesAndASentenceOnWhenItIsDone() {
        assertThat(library.stages()).allSatisfy(s -> {
            assertThat(s.examples()).as(s.id()).hasSizeGreaterThanOrEqualTo(2);
            assertThat(s.examples()).allSatisfy(e -> assertThat(e.attended()).isPresent());
            assertThat(s.usualTerms().checks()).as(s.id()).isNotEmpty();
            assertThat(s.usualTerms().mistakes()).as(s.id()).isNotEmpty();
            assertThat(s.about()).as(s.id()).isNotBlank();
        });
    }

    @Test
    void nothingIsDoneBeforeTheVehicleIsBookedInButTheArrivalCheck() {
        assertThat(library.stages())
                .allSatisfy(s -> assertThat(needs(s).contains("booked-in"))
                        .as(s.id())
                        .isEqualTo(!s.id().equals("arrival-check")));
    }

    @Test
    void aStageThatLeavesAProductLiveSaysHowLongItMayStandAndAsksForACoolShadyPlace() {
        List<Stage> live = library.stages().stream()
                .filter(s -> s.usualTerms().effects().stream()
                        .anyMatch(e -> e.sets() && e.state().equals("live")))
                .toList();
        assertThat(live).hasSize(9).allSatisfy(s -> {
            assertThat(s.usualTerms().standing())
                    .as(s.id())
                    .singleElement()
                    .satisfies(t -> assertThat(t.most()).isPresent());
            assertThat(needs(s)).as(s.id()).contains("cool", "shade");
        });
    }

    @Test
    void everyMachineStageUndoesThePanelWipeOnTheWholeVehicle() {
        assertThat(List.of(
                        "machine-sand",
                        "refine-sand",
                        "spot-sand",
                        "heavy-compound",
                        "compound",
                        "one-step",
                        "polish",
                        "finishing-polish"))
                .allSatisfy(id -> {
                    StageTerms terms = library.stageById().get(id).usualTerms();
                    assertThat(terms.effects())
                            .anyMatch(e -> !e.sets()
                                    && e.state().equals("panel-wiped")
                                    && e.reach() == StageTerms.Reach.VEHICLE);
                    assertThat(terms.effects())
                            .anyMatch(e -> e.sets() && e.state().equals("dusty"));
                    assertThat(terms.removals()).isNotEmpty();
                });
    }

    // ---- trade facts that everybody agrees on, each to a factor of two on the medium saloon

    /** Common practice, no source: about a litre of iron remover for an average car. */
    @Test
    void anAverageCarTakesAboutALitreOfIronRemover() throws IOException {
        assertAbout(1000, used("iron-removal", "iron-remover", Set.of("paint")));
    }

    /** Common practice, no source: about three rolls for a full tape-up. */
    @Test
    void aFullTapeUpTakesAboutThreeRolls() throws IOException {
        assertAbout(3, used("tape-up", "masking-tape", Set.of("trim")));
    }

    /** Common practice, no source: about an hour for a careful hand wash of an average car. */
    @Test
    void aCarefulHandWashTakesAboutAnHour() throws IOException {
        double minutes = 0;
        for (String stage : List.of("pressure-rinse", "snow-foam", "contact-wash", "final-rinse", "towel-dry")) {
            minutes += attended(stage, BigDecimal.ZERO);
        }
        assertAbout(60, minutes);
    }

    /** Common practice, no source: a couple of hours for the chips of a whole car, taken as a score of chips. */
    @Test
    void theChipsOfAWholeCarTakeACoupleOfHours() throws IOException {
        assertAbout(120, attended("chip-touch-in", new BigDecimal(20)));
    }

    private static void assertAbout(double known, double met) {
        assertThat(Math.log(met / known) / Math.log(2))
                .as("%s against %s", met, known)
                .isCloseTo(0, within(1.0));
    }

    private static List<String> needs(Stage stage) {
        return stage.usualTerms().needs().stream()
                .filter(n -> !n.absent())
                .flatMap(n -> n.anyOf().stream())
                .toList();
    }

    private static double used(String stage, String item, Set<String> surfaces) throws IOException {
        double sum = 0;
        for (StageTerms.Use use : library.stageById().get(stage).usualTerms().uses()) {
            if (use.item().equals(item)) {
                sum += use.amount().amount().doubleValue() * onSaloon(use.per(), surfaces);
            }
        }
        return sum;
    }

    private static double attended(String id, BigDecimal counted) throws IOException {
        Stage stage = library.stageById().get(id);
        double sum = 0;
        for (StageTerms.Attended line : stage.usualTerms().attended()) {
            ThreePoint minutes = line.minutes();
            double mean = (minutes.least().doubleValue()
                            + 4 * minutes.likely().doubleValue()
                            + minutes.most().doubleValue())
                    / 6;
            double amount =
                    counted.signum() > 0 ? counted.doubleValue() : onSaloon(line.per(), Set.copyOf(stage.surfaces()));
            sum += mean * amount;
        }
        return sum;
    }

    private static double onSaloon(String driver, Set<String> surfaces) throws IOException {
        if (driver.equals("vehicle")) {
            return 1;
        }
        double sum = 0;
        for (JsonNode shape :
                Shipped.json(Shipped.STAGES.resolve("shapes.json")).path("shapes")) {
            if (shape.path("id").asText().equals("saloon")) {
                for (JsonNode zone : shape.path("zones")) {
                    sum += surfaces.contains(zone.path("surface").asText())
                            ? zone.path("measures").path(driver).asDouble(0)
                            : 0;
                }
            }
        }
        return sum;
    }
}
