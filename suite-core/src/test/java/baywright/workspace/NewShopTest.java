package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewShopTest {

    private static final Path LIBRARY = Path.of("..", "stage-scripts");

    @TempDir
    private Path folder;

    private static final NewShop USUAL = NewShop.usual(Locale.GERMANY, ZoneId.of("Europe/Berlin"));

    private static NewShop shop(String name, String percent, String wage, Map<DayOfWeek, String> hours) {
        return new NewShop(
                name,
                USUAL.currency(),
                USUAL.timeZone(),
                USUAL.language(),
                USUAL.taxName(),
                percent,
                USUAL.charge(),
                wage,
                hours,
                USUAL.bays(),
                List.of(new NewShop.NewPerson("Ilse Brandmoor", "coating; Correction")));
    }

    private static NewShop fine() {
        return shop("Glanz am Wehr", "19", "17,50", USUAL.hours());
    }

    @Test
    void aShopThatIsMadeOpensWithWhatWasTyped() {
        Workspace made = fine().create(folder.resolve("glanz"), LIBRARY);
        assertThat(made.problems()).isEmpty();
        Shop shop = made.shop().orElseThrow();
        assertThat(shop.id()).isEqualTo("glanz-am-wehr");
        assertThat(shop.currency().getCode()).isEqualTo("EUR");
        assertThat(shop.tax().percent()).isEqualByComparingTo("19");
        assertThat(shop.rates().wage()).isEqualByComparingTo("17.5");
        assertThat(shop.bays()).hasSize(3);
        assertThat(shop.people())
                .containsExactly(new Shop.Person("ilse-brandmoor", "Ilse Brandmoor", List.of("coating", "correction")));
        assertThat(made.items()).isNotEmpty();
        assertThat(made.shapes()).isNotEmpty();
        assertThat(folder.resolve("glanz/stages/items.json")).doesNotExist();
        assertThat(folder.resolve("glanz/stages/wash")).isDirectory();
    }

    @Test
    void theStandardPricesKeepTheirNumbersInTheShopsCurrency() throws Exception {
        fine().create(folder.resolve("glanz"), LIBRARY);
        String prices = Files.readString(folder.resolve("glanz/items.json"));
        assertThat(prices.replace("\"currency\": \"EUR\"", "\"currency\": \"GBP\""))
                .isEqualTo(Files.readString(LIBRARY.resolve("items.json")));
    }

    @Test
    void eachWrongFieldIsNamedWithHowToMendIt() {
        Map<DayOfWeek, String> hours = new HashMap<>(USUAL.hours());
        hours.put(DayOfWeek.TUESDAY, "12:00-08:00");
        NewShop wrong = new NewShop(
                " ",
                "XXX",
                "Europe/Nowhere",
                "klingon",
                "",
                "a fifth",
                Map.of("detailing", "", "coating", "0"),
                "-1",
                hours,
                List.of(new NewShop.NewBay("", "wash", "sh\u00e4dy")),
                List.of(new NewShop.NewPerson("", "")));
        assertThat(wrong.problems())
                .allSatisfy(problem -> assertThat(problem.mend()).isNotBlank())
                .extracting(FileProblem::field)
                .contains(
                        "name",
                        "currency",
                        "timeZone",
                        "language",
                        "tax.name",
                        "tax.percent",
                        "rates.charge.coating",
                        "rates.wage",
                        "hours.tuesday",
                        "bays[0].title",
                        "bays[0].conditions[0]",
                        "people[0].name");
        assertThatThrownBy(() -> wrong.create(folder.resolve("wrong"), LIBRARY))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("the shop is not made");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void hoursMayBeTypedLoosely() {
        NewShop shop = shop("Glanz", "19", "17", Map.of(DayOfWeek.MONDAY, "8:00 \u2013 12:00; 12:30-17:00"));
        assertThat(shop.problems()).isEmpty();
        assertThat(shop.text()).contains("\"monday\": [\"08:00-12:00\", \"12:30-17:00\"]");
    }

    @Test
    void aFolderWithSomethingInItIsLeftAlone() throws Exception {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        assertThatThrownBy(() -> fine().create(folder, LIBRARY))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("not empty");
        assertThat(folder.toFile().list()).containsExactly("mine.txt");
    }

    @Test
    void theUsualShopLacksNothingButNames() {
        for (Locale locale : List.of(Locale.UK, Locale.US, Locale.GERMANY, Locale.JAPAN, Locale.ROOT)) {
            assertThat(NewShop.usual(locale, ZoneId.of("Europe/London")).problems())
                    .extracting(FileProblem::field)
                    .containsExactlyInAnyOrder("name", "people[0].name");
        }
    }
}
