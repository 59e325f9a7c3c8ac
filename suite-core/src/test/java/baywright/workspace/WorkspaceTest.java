package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.library.Item;
import baywright.library.Library;
import baywright.money.TaxRule;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Reading;
import baywright.vehicle.ZoneSurvey;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkspaceTest {

    private static final Library EMPTY =
            Library.of(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), "");
    private static final LocalDateTime LATER = LocalDateTime.of(2027, 1, 1, 8, 0);

    @TempDir
    private Path folder;

    private static Workspace mill() {
        return Workspace.open(Mill.TEMPLATE);
    }

    private static Job estate() {
        return mill().job("green-estate").orElseThrow().job().orElseThrow();
    }

    @Test
    void theShopIsRead() {
        Shop shop = mill().shop().orElseThrow();

        assertThat(shop.name()).isEqualTo("The Mill");
        assertThat(shop.currency().getCode()).isEqualTo("GBP");
        assertThat(shop.timeZone()).isEqualTo(ZoneId.of("Europe/London"));
        assertThat(shop.tax())
                .isEqualTo(new TaxRule("VAT", BigDecimal.valueOf(20), RoundingMode.HALF_UP, TaxRule.On.TOTAL));
        assertThat(shop.rates().chargeFor("detailing")).isEqualByComparingTo("45.5");
        assertThat(shop.rates().contingency().riskyPercent()).isEqualByComparingTo("20");
        assertThat(shop.quote().validDays()).isEqualTo(30);
        assertThat(shop.bays().get(1).kind()).containsExactly("lit", "clean");
        assertThat(shop.people()).containsExactly(new Shop.Person("p1", "First person", List.of("correction")));
    }

    @Test
    void thePriceListIsRead() {
        Item item = mill().items().get(0);

        assertThat(item.pack()).isEqualTo(Quantity.of(5000, Unit.MILLILITRE));
        assertThat(item.price()).isEqualByComparingTo("47.5");
        assertThat(item.density()).isEmpty();
        assertThat(item.hazards()).containsExactly("H302", "H317", "EUH208");
        assertThat(mill().items().get(1).note()).isEmpty();
    }

    @Test
    void aJobIsRead() {
        Job job = estate();

        assertThat(job.customer()).isEqualTo("A. Customer");
        assertThat(job.arrives()).contains(LocalDateTime.of(2026, 12, 7, 8, 0));
        assertThat(job.cap()).contains(BigDecimal.valueOf(850));
        assertThat(job.survey().facts()).isEqualTo(Map.of("hardness", "soft", "high-voltage", "false", "age", "12"));
        assertThat(job.survey().zone("boot-lid").unreadable()).isTrue();
        assertThat(job.discountLabourPercent()).isEqualByComparingTo("5");
    }

    @Test
    void stepsKeepTheirZonesAsWrittenAndTheirInputsKnowTheirPlace() {
        Step step = estate().plan().steps().get(1);

        assertThat(step.zones()).containsExactly("surface:paint", "-roof");
        assertThat(step.priority()).isEqualTo(Step.Priority.SHOULD);
        assertThat(step.drivers()).isEqualTo(Map.of("m", BigDecimal.valueOf(16)));
        assertThat(step.with())
                .containsEntry(
                        "passes", Value.of(BigDecimal.valueOf(2), new Place("jobs/green-estate/job.json", 39, 29)))
                .containsEntry(
                        "grit",
                        Value.of(Quantity.of("2.5", Unit.MICROMETRE), new Place("jobs/green-estate/job.json", 39, 57)));
        assertThat(step.with().get("two-sided").raw()).isEqualTo(true);
        assertThat(estate().plan().steps().get(0).at()).contains(LocalDateTime.of(2026, 12, 7, 10, 0));
    }

    @Test
    void readingsJoinTheSurveyAndKnowTheirRow() {
        assertThat(estate().survey().zone("bonnet").readings())
                .containsExactly(
                        new Reading(new BigDecimal("108.5"), "jobs/green-estate/readings.csv:2"),
                        new Reading(new BigDecimal("112"), "jobs/green-estate/readings.csv:3"));
        assertThat(estate().survey().zone("roof").facts()).isEmpty();
        assertThat(estate().survey().zone("bonnet").counts()).containsEntry("chip", BigDecimal.valueOf(3));
    }

    @Test
    void theSettingHasTheVehiclesOwnZones() {
        Setting setting = mill().setting(estate(), EMPTY, LATER);

        assertThat(setting.shape().zone("boot-lid").orElseThrow().measure("m2")).isEqualByComparingTo("0.95");
        assertThat(setting.shape().zone("boot-lid").orElseThrow().substrate()).isEqualTo("aluminium");
        assertThat(setting.shape().zone("boot-lid").orElseThrow().surface()).isEqualTo("paint");
        assertThat(setting.shape().zone("roof").orElseThrow().measure("m2")).isEqualByComparingTo("2.3");
        assertThat(setting.start()).isEqualTo(LocalDateTime.of(2026, 12, 7, 8, 0));
        assertThat(setting.bays()).extracting(b -> b.id()).containsExactly("wash", "lit");
    }

    @Test
    void workThatIsNotYetAgreedStartsWhenTheCallerSays() {
        Job vans = mill().job("vans").orElseThrow().job().orElseThrow();

        assertThat(mill().setting(vans, EMPTY, LATER).start()).isEqualTo(LATER);
        assertThat(vans.vehicles()).isEqualTo(6);
        assertThat(vans.survey().zone("bonnet")).isEqualTo(ZoneSurvey.NOTHING);
        assertThat(vans.cap()).isEqualTo(Optional.empty());
    }

    @Test
    void withoutAShopTheMessageIsThatOfTheShop() {
        Mill mill = Mill.in(folder).replace("shop.json", "\"wage\": 16", "\"wage\": -16");
        Workspace workspace = mill.open();
        Job job = workspace.job("vans").orElseThrow().job().orElseThrow();

        assertThatThrownBy(() -> workspace.setting(job, EMPTY, LATER))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith("shop.json:11:13: rates.wage: the number -16 is out of range");
    }

    @Test
    void aNewWorkspaceIsACopyWithoutLocksAndLeftovers() throws IOException {
        Mill template = Mill.in(folder).write(WriteLock.FILE, "someone").write("jobs/vans/.saving-1.tmp", "{");
        Files.createSymbolicLink(template.path("link.json"), template.path("shop.json"));

        Workspace copy = Workspace.create(folder.resolve("new/place"), template.root());

        assertThat(copy.problems()).isEmpty();
        try (Stream<Path> all = Files.walk(copy.root())) {
            assertThat(all.filter(Files::isRegularFile)
                            .map(p -> copy.root().relativize(p).toString()))
                    .containsExactlyInAnyOrder(
                            "shop.json",
                            "items.json",
                            Path.of("stages/shapes.json").toString(),
                            Path.of(Mill.JOB).toString(),
                            Path.of(Mill.READINGS).toString(),
                            Path.of("jobs/vans/job.json").toString());
        }
    }

    @Test
    void anEmptyFolderMayBecomeAWorkspace() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));

        assertThat(Workspace.create(empty, Mill.TEMPLATE).jobs()).hasSize(2);
    }

    @Test
    void nothingIsOverwritten() throws IOException {
        Path full = Files.createDirectory(folder.resolve("full"));
        Files.writeString(full.resolve("mine.txt"), "mine");

        assertThatThrownBy(() -> Workspace.create(full, Mill.TEMPLATE))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage(full + ": the folder exists and is not empty; name a new one, nothing is overwritten");
        assertThat(Files.readString(full.resolve("mine.txt"))).isEqualTo("mine");
        assertThat(full).isDirectoryContaining(p -> p.endsWith("mine.txt"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mill/copy", "mill/jobs/copy"})
    void aCopyInsideItsTemplateIsRefused(String place) {
        Mill mill = Mill.in(folder);

        assertThatThrownBy(() -> Workspace.create(folder.resolve(place), mill.root()))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("cannot be made inside the folder it is copied from");
    }

    @Test
    void aFileInTheWayIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");

        assertThatThrownBy(() -> Workspace.create(file, Mill.TEMPLATE))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage(file + ": there is a file of this name; name a new folder");
    }
}
