package baywright.document;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.document.QuoteDocument.Chapter;
import baywright.document.QuoteDocument.Choice;
import baywright.document.QuoteDocument.Priced;
import baywright.site.Site;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.xml.sax.InputSource;

class QuoteDocumentTest {

    private static final Path GOLDEN = Path.of("src/test/resources/baywright/document/green-estate-en.html");

    @TempDir
    private static Path folder;

    private static Site millrace;
    private static Site saltmarsh;

    @BeforeAll
    static void copyTheDemo() {
        millrace = Paperwork.site(folder, "millrace-works");
        saltmarsh = Paperwork.site(folder, "saltmarsh-quay");
    }

    private static Site siteOf(String job) {
        return job.equals("show-coupe") ? saltmarsh : millrace;
    }

    private static Money sum(Stream<Money> all) {
        return all.reduce(Money::plus).orElseThrow();
    }

    /** With hashes masked and without the style sheet; written anew by {@code -Dbaywright.golden=write}. */
    @Test
    void theEstatesQuoteReadsAsItDid() throws Exception {
        String page = QuoteHtml.of(Paperwork.quote(millrace, "green-estate", "en"), Paper.A4)
                .replaceAll("[0-9a-f]{64}", "HASH")
                .replaceAll("(?s)<style>.*</style>", "<style></style>");
        if ("write".equals(System.getProperty("baywright.golden"))) {
            Files.writeString(GOLDEN, page);
        }
        assertThat(page).isEqualTo(Files.readString(GOLDEN));
    }

    @ParameterizedTest
    @CsvSource({
        "green-estate, en",
        "green-estate, de",
        "bramblegate-vans, en",
        "bramblegate-vans, de",
        "show-coupe, en",
        "show-coupe, de"
    })
    void amountsAddUpAsTheyStand(String job, String language) {
        QuoteDocument quote = Paperwork.quote(siteOf(job), job, language);

        assertThat(sum(quote.work().stream().map(Chapter::net)))
                .isEqualTo(quote.sums().base().net());
        Money total = quote.sums().base().gross();
        for (Choice choice : quote.options()) {
            assertThat(sum(Stream.concat(choice.tasks().stream().map(Priced::net), Stream.of(choice.extra()))))
                    .isEqualTo(choice.adds().net());
            assertThat(choice.adds().net().plus(choice.adds().tax()))
                    .isEqualTo(choice.adds().gross());
            total = total.plus(choice.adds().gross());
            assertThat(choice.total().gross()).isEqualTo(total);
        }
        assertThat(quote.sums().all().gross()).isEqualTo(total);
    }

    /** A job of the demo with something changed in its file, in a folder of its own. */
    private static QuoteDocument changed(String folderName, String what, String by) throws Exception {
        Path root = Files.createDirectory(folder.resolve(folderName));
        Paperwork.site(root, "millrace-works");
        Path file = root.resolve("millrace-works/jobs/green-estate/job.json");
        String text = Files.readString(file);
        assertThat(text).containsPattern(what);
        Files.writeString(file, text.replaceFirst(what, by));
        return Paperwork.quote(Paperwork.opened(root.resolve("millrace-works")), "green-estate", "en");
    }

    @Test
    void whatIsLetOffStandsOnALineOfItsOwn() throws Exception {
        QuoteDocument full = Paperwork.quote(millrace, "green-estate", "en");
        QuoteDocument less = changed(
                "discount", "\"discountLabourPercent\": 0", "\"discountLabourPercent\": 0, \"discountPercent\": 10");

        assertThat(full.sums().all().discount()).isEmpty();
        // on lines without discount nothing changes: a tenth of the whole is let off, to the coin of each part
        assertThat(less.sums().all().undiscounted().getAmount())
                .isCloseTo(full.sums().all().net().getAmount(), Offset.offset(new BigDecimal("0.02")));
        assertThat(less.sums().all().net().getAmount())
                .isCloseTo(
                        full.sums().all().net().getAmount().multiply(new BigDecimal("0.9")),
                        Offset.offset(new BigDecimal("0.02")));
        assertThat(sum(less.work().stream().map(Chapter::net)))
                .isEqualTo(less.sums().base().undiscounted());
        for (Choice choice : less.options()) {
            assertThat(sum(Stream.concat(choice.tasks().stream().map(Priced::net), Stream.of(choice.extra()))))
                    .isEqualTo(choice.adds().undiscounted());
        }
        String page = QuoteHtml.of(less, Paper.A4);
        assertThat(page).contains("Before discount", "-£");
        assertThat(QuoteHtml.of(full, Paper.A4)).doesNotContain("discount");
    }

    /** Degreasing wanted less than the sealing that needs it: what must be cannot be had without it. */
    @Test
    void aPartThatCannotBeDoneAloneIsNotOfferedAlone() throws Exception {
        QuoteDocument quote =
                changed("leaning", "(\"stage\": \"panel-wipe\"[^}]*\"priority\": )\"must\"", "$1\"should\"");

        assertThat(quote.options()).extracting(c -> c.priority().name()).containsExactly("COULD");
        assertThat(quote.sums().base().gross()).hasToString("GBP 797.47");
        assertThat(quote.work().stream().flatMap(c -> c.tasks().stream()).map(QuoteDocument.Task::title))
                .contains("Panel wipe", "Tyre dressing");
        assertThat(QuoteHtml.of(quote, Paper.A4)).doesNotContain("what is recommended,");
    }

    /** The demo's figures: trade tables of the demo, to the penny. */
    @Test
    void theEstatesSumsAreThoseOfTheQuote() {
        QuoteDocument quote = Paperwork.quote(millrace, "green-estate", "en");

        assertThat(quote.sums().base().gross()).hasToString("GBP 710.70");
        assertThat(quote.options())
                .extracting(c -> c.adds().gross().toString())
                .containsExactly("GBP 86.77", "GBP 233.06");
    }

    @Test
    void whatIsThinAndWhatCannotBeReadIsToldBeforehand() {
        QuoteDocument quote = Paperwork.quote(millrace, "green-estate", "en");

        assertThat(quote.risks())
                .anySatisfy(risk -> assertThat(risk.zones()).isEqualTo("rear door left"))
                .anySatisfy(risk -> assertThat(risk.zones()).contains("front bumper", "mirror left"));
        assertThat(quote.exclusions().get(0)).isEqualTo("Not worked on: engine bay.");
        assertThat(Paperwork.quote(saltmarsh, "show-coupe", "en").exclusions().get(0))
                .startsWith("Not machine-polished:")
                .contains("rear quarter right");
    }

    @Test
    void germanPagesAreGermanInNumbersAndDates() {
        String page = QuoteHtml.of(Paperwork.quote(millrace, "green-estate", "de"), Paper.A4);

        assertThat(page)
                .contains("lang=\"de-GB\"", "710,70", "Sie zahlen", "25. Dezember 2026", "\"Seite \" counter(page)")
                .doesNotContain("710.70");
    }

    @Test
    void bothLanguagesHaveTheSameSentences() {
        assertThat(new TreeSet<>(bundle(Locale.GERMAN).keySet()))
                .isEqualTo(new TreeSet<>(bundle(Locale.ENGLISH).keySet()));
    }

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(
                "baywright.document.document",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** A name that is markup stays a name, and the page stays a page. */
    @Test
    void noTextBecomesMarkup() throws Exception {
        QuoteDocument quote = Paperwork.quote(millrace, "green-estate", "en");
        String evil = "</title></style><script>alert('1')</script> & \"quoted\" \\ } * { display: none }\u0001";
        QuoteDocument hostile = new QuoteDocument(
                quote.language(),
                new QuoteDocument.From(evil, List.of(evil), evil, evil, evil, evil),
                quote.reference(),
                evil,
                evil,
                quote.vehicle(),
                quote.arrives(),
                quote.wanted(),
                List.of(evil),
                quote.found(),
                quote.work(),
                quote.options(),
                List.of(evil),
                quote.risks(),
                quote.sums(),
                quote.proof());
        String page = QuoteHtml.of(hostile, Paper.A4);

        assertThat(page).doesNotContain("<script");
        var read = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page.replace("<!DOCTYPE html>", ""))));
        assertThat(read.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo("Quote");
        assertThat(read.getElementsByTagName("script").getLength()).isZero();
        assertThat(read.getDocumentElement().getTextContent()).contains("alert('1')");
        assertThat(PagePdf.of(page)).startsWith('%', 'P', 'D', 'F');
    }

    @Test
    void thePdfHasItsTypefacesTitleLanguageAndText() throws Exception {
        QuoteDocument quote = Paperwork.quote(saltmarsh, "show-coupe", "de").under("2026-001", 2);
        try (PDDocument pdf = Loader.loadPDF(PagePdf.of(QuoteHtml.of(quote, Paper.A4)))) {
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Angebot 2026-001, Fassung 2");
            assertThat(pdf.getDocumentInformation().getAuthor()).isEqualTo("Saltmarsh Quay");
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("de-150");
            assertThat(pdf.getNumberOfPages()).isBetween(4, 7);
            for (PDPage page : pdf.getPages()) {
                assertThat(page.getMediaBox().getWidth()).isCloseTo(PDRectangle.A4.getWidth(), within(1f));
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("Seite 1 von " + pdf.getNumberOfPages(), "Sie zahlen", "Was nicht enthalten ist");
            assertThat(text.replace('\u00a0', ' ')).containsPattern("4[. ]072,76");
        }
    }

    private static org.assertj.core.data.Offset<Float> within(float by) {
        return org.assertj.core.data.Offset.offset(by);
    }

    /** A clock to fill in, a time and a dilution are each one word. */
    @Test
    void noLineEndsWithinATime() throws Exception {
        String page = CardHtml.of(JobCard.of(saltmarsh, Paperwork.job(saltmarsh, "show-coupe"), "de"), Paper.A4);
        try (PDDocument pdf = Loader.loadPDF(PagePdf.of(page))) {
            assertThat(new PDFTextStripper().getText(pdf).lines())
                    .noneMatch(line -> line.strip().endsWith("___:"))
                    .anyMatch(line -> line.contains("___:___"));
        }
    }

    @Test
    void letterIsLetter() throws Exception {
        String page = QuoteHtml.of(Paperwork.quote(millrace, "bramblegate-vans", "en"), Paper.LETTER);
        try (PDDocument pdf = Loader.loadPDF(PagePdf.of(page))) {
            assertThat(pdf.getPage(0).getMediaBox().getHeight()).isCloseTo(PDRectangle.LETTER.getHeight(), within(1f));
        }
        assertThat(Paper.of(Locale.US)).isEqualTo(Paper.LETTER);
        assertThat(Paper.of(Locale.UK)).isEqualTo(Paper.A4);
    }

    @Test
    void theCardHasEveryStepAndNoPrice() {
        var worked = Paperwork.job(millrace, "green-estate");
        JobCard card = JobCard.of(millrace, worked, "en");
        String page = CardHtml.of(card, Paper.A4);

        assertThat(card.days().stream().flatMap(day -> day.steps().stream()).map(JobCard.StepCard::step))
                .containsExactlyElementsOf(worked.job().plan().steps().stream()
                        .map(step -> step.id())
                        .toList());
        assertThat(page)
                .contains("Rear door left: thin, 88 µm", "Bleeding stops", "class=\"box\"", "at most 10 min")
                .doesNotContain("£", "GBP", "710.70");
    }
}
