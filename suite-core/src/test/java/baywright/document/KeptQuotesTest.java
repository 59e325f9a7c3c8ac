package baywright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.DemoSite;
import baywright.money.Quote;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.RemovedJob;
import baywright.workspace.WorkspaceException;
import baywright.workspace.WorkspaceWriter;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeptQuotesTest {

    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 25, 9, 0);
    private static final String ESTATE = "green-estate";

    /** What the tests edit. */
    private static final List<String> EDITED = List.of(
            "shop.json", "items.json", "stages/decontamination/claying.groovy", "stages/outgoing/handover.groovy");

    @TempDir
    private static Path folder;

    private static Path root;
    private static final Map<String, String> SHIPPED = new HashMap<>();

    @BeforeAll
    static void copyTheDemo() throws Exception {
        Paperwork.site(folder, "millrace-works");
        root = folder.resolve("millrace-works");
        for (String file : EDITED) {
            SHIPPED.put(file, Files.readString(root.resolve(file)));
        }
    }

    /** One copy serves all tests: reading a hundred scripts anew for each would take the longest of all. */
    @BeforeEach
    void asShipped() throws Exception {
        for (String file : EDITED) {
            Files.writeString(root.resolve(file), SHIPPED.get(file));
        }
        for (String job : List.of(ESTATE, "bramblegate-vans")) {
            Path quotes = root.resolve("jobs").resolve(job).resolve("quotes");
            if (Files.isDirectory(quotes)) {
                try (Stream<Path> all = Files.list(quotes)) {
                    for (Path quote : all.toList()) {
                        Files.delete(quote);
                    }
                }
            }
        }
    }

    private static Site site() {
        return Site.open(root, Paperwork.CLOCK, DemoSite.SCRIPTS);
    }

    private KeptQuote keep(String job) {
        Site site = site();
        WorkedJob worked = Paperwork.job(site, job);
        Quote quote = (Quote) worked.offer();
        return new KeptQuotes(site, job).keep(worked, quote, QuoteDocument.of(site, worked, quote, "en"), NOW);
    }

    private KeptQuote read(String said) {
        KeptQuotes quotes = new KeptQuotes(site(), ESTATE);
        return quotes.read(quotes.find(said).orElseThrow());
    }

    private List<QuoteChange> changes(KeptQuote kept) {
        WorkedJob now = Paperwork.job(site(), ESTATE);
        return QuoteChange.since(kept, now, (Quote) now.offer());
    }

    private Path file(String name) {
        return root.resolve("jobs").resolve(ESTATE).resolve("quotes").resolve(name + ".json");
    }

    private void edit(Path file, String from, String to) throws Exception {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void theNumberOfARemovedJobIsNotGivenAgain() {
        assertThat(keep(ESTATE).number()).isEqualTo("2026-001");
        try (WorkspaceWriter writer = WorkspaceWriter.open(site().workspace())) {
            RemovedJob removed = writer.remove(site().workspace().job(ESTATE).orElseThrow());
            try {
                assertThat(new KeptQuotes(site(), "bramblegate-vans").next(2026).toString())
                        .isEqualTo("2026-002-v1");
            } finally {
                writer.restore(removed);
            }
        }
    }

    @Test
    void aKeptQuoteIsReadAsItWasWritten() throws Exception {
        KeptQuote kept = keep(ESTATE);

        assertThat(file("2026-001-v1")).exists();
        assertThat(read("2026-001")).isEqualTo(kept);
        assertThat(changes(kept)).isEmpty();
        String form = Files.readString(Path.of("..", "docs", "schema", "quote-1.json"));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(form)
                        .validate(Files.readString(file("2026-001-v1")), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void numbersRunThroughTheWorkspaceAndVersionsThroughAJob() throws Exception {
        assertThat(keep(ESTATE).number()).isEqualTo("2026-001");
        assertThat(keep("bramblegate-vans").number()).isEqualTo("2026-002");
        assertThat(keep(ESTATE).version()).as("nothing has changed").isEqualTo(1);

        edit(root.resolve("shop.json"), "\"detailing\": 45", "\"detailing\": 48");
        KeptQuote second = keep(ESTATE);

        assertThat(second.number()).isEqualTo("2026-001");
        assertThat(second.version()).isEqualTo(2);
        assertThat(read("2026-001")).isEqualTo(second);
        assertThat(read("v1").document().sums().all().gross()).hasToString("GBP 1030.53");
        assertThat(new KeptQuotes(site(), ESTATE).find("v3")).isEqualTo(Optional.empty());
    }

    /**
     * By hand: iron remover costs 5 more a pack of 5000 ml; 14.6 m² at 75 ml are 1095 ml, 0.219 packs; with 25 % on top
     * 0.219 × 5 × 1.25 = 1.36875.
     */
    @Test
    void whatIsOtherwiseTodayIsNamedAndTheFiguresStay() throws Exception {
        KeptQuote kept = keep(ESTATE);
        String items = Files.readString(root.resolve("items.json"));
        var iron = java.util.regex.Pattern.compile(
                        "(\"id\": \"iron-remover\".*?\"price\": )([0-9.]+)", java.util.regex.Pattern.DOTALL)
                .matcher(items);
        assertThat(iron.find()).isTrue();
        String dearer = new java.math.BigDecimal(iron.group(2))
                .add(new java.math.BigDecimal(5))
                .toPlainString();
        Files.writeString(
                root.resolve("items.json"), items.substring(0, iron.start(2)) + dearer + items.substring(iron.end(2)));
        edit(root.resolve("shop.json"), "\"detailing\": 45", "\"detailing\": 48");
        edit(root.resolve("stages/decontamination/claying.groovy"), "revision 1", "revision 2");

        List<QuoteChange> changes = changes(read("v1"));

        assertThat(changes)
                .extracting(QuoteChange::kind, QuoteChange::subject)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(QuoteChange.Kind.ITEM_PRICE, "iron-remover"),
                        org.assertj.core.groups.Tuple.tuple(QuoteChange.Kind.STAGE_REVISION, "claying"),
                        org.assertj.core.groups.Tuple.tuple(QuoteChange.Kind.TERM, "rates.charge.detailing"));
        assertThat(changes.get(0).by().orElseThrow().net()).isEqualByComparingTo("1.36875");
        assertThat(changes.get(2).was()).isEqualTo("45");
        assertThat(changes.get(2).is()).isEqualTo("48");
        assertThat(read("v1")).isEqualTo(kept);
    }

    /** One thing alone makes the whole difference: nothing is left over to be told of all of it together. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shop.json | \"detailing\": 45 | \"detailing\": 48 | TERM",
                "shop.json | \"utilisationPercent\": 75 | \"utilisationPercent\": 60 | TERM",
                "shop.json | \"overhead\": 9 | \"overhead\": 12.5 | TERM",
                "shop.json | \"materialMarkupPercent\": 25 | \"materialMarkupPercent\": 30 | TERM",
                "shop.json | \"percent\": 20 | \"percent\": 19 | TERM",
                "stages/decontamination/claying.groovy | attended CLAY | attended 9.min, 10.min, 11.min | STAGE_WORDS",
                "jobs/green-estate/job.json | \"discountLabourPercent\": 0 | \"discountLabourPercent\": 7 | TERM",
                "jobs/green-estate/job.json | \"discountLabourPercent\": 0 | \"discountPercent\": 7 | TERM"
            })
    void aSingleChangeMakesTheWholeDifference(String file, String from, String to, QuoteChange.Kind kind)
            throws Exception {
        KeptQuote kept = keep(ESTATE);
        String before = Files.readString(root.resolve(file));
        try {
            String changed = from.endsWith("CLAY")
                    ? before.replaceFirst("attended [^\\n]*?(?=, per| *\\n)", to)
                    : before.replace(from, to);
            assertThat(changed).isNotEqualTo(before);
            Files.writeString(root.resolve(file), changed);
            WorkedJob now = Paperwork.job(site(), ESTATE);
            Quote quote = (Quote) now.offer();

            List<QuoteChange> changes = QuoteChange.since(kept, now, quote);

            assertThat(changes).extracting(QuoteChange::kind).containsExactly(kind);
            QuoteEffect by = changes.get(0).by().orElseThrow();
            Money was = kept.document().sums().all().gross();
            assertThat(by.gross())
                    .isEqualByComparingTo(quote.price().gross().minus(was).getAmount());
            assertThat(by.isNothing()).isFalse();
        } finally {
            Files.writeString(root.resolve(file), before);
        }
    }

    @Test
    void severalChangesAddUpToTheWholeDifference() throws Exception {
        KeptQuote kept = keep(ESTATE);
        edit(root.resolve("shop.json"), "\"detailing\": 45", "\"detailing\": 48");
        edit(root.resolve("shop.json"), "\"percent\": 20", "\"percent\": 19");
        edit(root.resolve("stages/outgoing/handover.groovy"), "revision 1", "revision 2");
        WorkedJob now = Paperwork.job(site(), ESTATE);
        Quote quote = (Quote) now.offer();

        List<QuoteChange> changes = QuoteChange.since(kept, now, quote);

        BigDecimal gross = changes.stream()
                .flatMap(change -> change.by().stream())
                .map(QuoteEffect::gross)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(gross)
                .isEqualByComparingTo(quote.price()
                        .gross()
                        .minus(kept.document().sums().all().gross())
                        .getAmount());
        assertThat(changes).extracting(QuoteChange::kind).endsWith(QuoteChange.Kind.TOGETHER);
    }

    @Test
    void aScriptThatChangedUnderOneRevisionIsFound() throws Exception {
        KeptQuote kept = keep(ESTATE);
        edit(root.resolve("stages/outgoing/handover.groovy"), "checks {", "checks {\n        confirm 'One thing more'");

        assertThat(changes(kept))
                .extracting(QuoteChange::kind, QuoteChange::subject)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(QuoteChange.Kind.STAGE_WORDS, "handover"));
    }

    @Test
    void anEditedFileIsRefusedInOneSentence() throws Exception {
        keep(ESTATE);
        edit(file("2026-001-v1"), "GBP 1030.53", "GBP 1000.00");

        assertThatThrownBy(() -> read("v1"))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage(
                        "jobs/green-estate/quotes/2026-001-v1.json: this kept quote is not as it was written, its seal does"
                                + " not fit; restore it from a copy, or keep a new version");
    }

    @Test
    void aBrokenFileSaysWhere() throws Exception {
        keep(ESTATE);
        Files.writeString(file("2026-001-v1"), "{\n  \"schema\": \"baywright/quote/1\",\n  \"number\": }");

        assertThatThrownBy(() -> read("v1"))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith("jobs/green-estate/quotes/2026-001-v1.json:3:");
    }

    @Test
    void anotherLayoutIsTheSameQuote() throws Exception {
        KeptQuote kept = keep(ESTATE);
        String text = Files.readString(file("2026-001-v1"));
        Files.writeString(file("2026-001-v1"), text.replace("\n", "\r\n").replace("  ", "\t"));

        assertThat(read("v1")).isEqualTo(kept);
    }

    @Test
    void aLaterFormAsksForANewerProgram() throws Exception {
        keep(ESTATE);
        edit(file("2026-001-v1"), "baywright/quote/1", "baywright/quote/2");

        assertThatThrownBy(() -> read("v1")).hasMessageContaining("newer version");
    }
}
