package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import baywright.library.Item;
import baywright.vehicle.Shape;
import baywright.workspace.NewShop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FirstStageTest {

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    /** The standard library's terms without its stages: it loads fast. */
    @BeforeAll
    static void open() throws Exception {
        Path library = Files.createDirectories(folder.resolve("library"));
        for (String name : List.of(
                "items.json", "shapes.json", "states.groovy", "surfaces.groovy", "families.groovy", "facts.groovy")) {
            Files.copy(Path.of("..", "stage-scripts", name), library.resolve(name));
        }
        NewShop usual = NewShop.usual(Locale.UK, ZoneId.of("Europe/London"));
        new NewShop(
                        "Mill Lane",
                        usual.currency(),
                        usual.timeZone(),
                        usual.language(),
                        usual.taxName(),
                        usual.taxPercent(),
                        usual.charge(),
                        usual.wage(),
                        usual.hours(),
                        usual.bays(),
                        List.of(new NewShop.NewPerson("Ilse Brandmoor", "")))
                .create(folder.resolve("shop"), library);
        shop = OpenShop.open(folder.resolve("shop"), Clock.systemUTC(), DemoSite.SCRIPTS);
    }

    private static Item item(String id) {
        return shop.items().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
    }

    private static Shape saloon() {
        return shop.site().workspace().shapes().stream()
                .filter(s -> s.id().equals("saloon"))
                .findFirst()
                .orElseThrow();
    }

    private static FirstStage stage(String id, String title, FirstStage.Time time, String amount) {
        return new FirstStage(
                id,
                title,
                "decontamination",
                List.of("paint"),
                Optional.of(time),
                Optional.of(new FirstStage.Use(item("iron-remover"), amount, "panel")),
                List.of("slip"),
                List.of("washed", "cool"),
                List.of("iron-clear", "wet"),
                "It doesn't bleed any more");
    }

    private static FirstStage fine() {
        return stage("iron-again", "Ilse's iron wash", new FirstStage.Time("1", "1,5", "3", "panel"), "40");
    }

    @Test
    void whatIsAnsweredLoadsWorksAndPassesItsOwnExample() {
        assertThat(fine().faults(shop)).isEmpty();
        FirstStage.Tried tried = fine().tryOn(shop, saloon(), DemoSite.SCRIPTS);
        assertThat(tried.problems()).allMatch(p -> p.message().startsWith("no stage sets"));
        assertThat(tried.accepted()).isTrue();
        assertThat(tried.text())
                .contains("title 'Ilse\\'s iron wash'", "example '" + saloon().title() + "'", "'iron-remover': ");
        OpenShop with = shop.withText(fine().file(), tried.text()).reloaded(DemoSite.SCRIPTS);
        assertThat(with.isSound()).isTrue();
        // by hand: (1 + 4 * 1.5 + 3) / 6 = 1.667 minutes a panel, the mean of the PERT distribution (Malcolm et al.
        // 1959)
        long panels = saloon().zones().stream()
                .filter(z -> z.surface().equals("paint"))
                .count();
        assertThat(tried.trial()
                        .orElseThrow()
                        .step()
                        .orElseThrow()
                        .attendedMinutes()
                        .mean()
                        .doubleValue())
                .isBetween(1.6 * panels * 0.5, 1.7 * panels);
    }

    @Test
    void theScriptGrowsWithTheAnswers() {
        FirstStage begun = new FirstStage(
                "a", "A", "wash", List.of(), Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(), "");
        assertThat(begun.text()).contains("title 'A'").doesNotContain("worksOn", "time", "uses", "hazards", "checks");
        assertThat(Stream.of(fine().text().split("\n")).toList())
                .containsAll(Stream.of(begun.text().split("\n"))
                        .filter(line -> line.contains("revision"))
                        .toList())
                .contains("        attended 1.min, 1.5.min, 3.min, per: 'panel'", "        from 'iron-remover'");
    }

    @Test
    void wrongAnswersAreNamed() {
        FirstStage wrong = stage("Not an id", "A", new FirstStage.Time("3", "2", "1", "m2"), "none");
        assertThat(wrong.faults(shop))
                .containsExactlyInAnyOrder(FirstStage.Fault.BAD_ID, FirstStage.Fault.TIME, FirstStage.Fault.AMOUNT);
        OpenShop taken = shop.withText(fine().file(), "// there\n");
        assertThat(fine().faults(taken)).containsExactly(FirstStage.Fault.TAKEN);
        assertThat(stage("a", " ", new FirstStage.Time("0", "1", "1", "m2"), "0")
                        .faults(shop))
                .containsExactlyInAnyOrder(FirstStage.Fault.NO_TITLE, FirstStage.Fault.TIME, FirstStage.Fault.AMOUNT);
    }

    @Test
    void errorsOfOtherScriptsAreToldAsNothingCanBeTried() {
        OpenShop broken = shop.withText("stages/other.groovy", "stage('other') {");
        FirstStage.Tried tried = fine().tryOn(broken, saloon(), DemoSite.SCRIPTS);
        assertThat(tried.accepted()).isFalse();
        assertThat(tried.problems()).anyMatch(p -> p.place().file().equals("stages/other.groovy"));
    }
}
