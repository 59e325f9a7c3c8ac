package baywright.swing.papers;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.ScriptCache;
import baywright.plan.Severity;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Remark;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PapersViewTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    private TestDesk desk;
    private PapersView view;

    @BeforeAll
    static void openTheDemo() throws Exception {
        Screen.needed();
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
        FlatLightLaf.setup();
        shop = OpenShop.open(DemoShops.copy("millrace-works", folder.resolve("shop")), CLOCK, ScriptCache.none());
    }

    private void open(Optional<String> job) throws Exception {
        run(() -> {
            desk = job.isPresent() ? new TestDesk(shop, job) : new TestDesk();
            view = new PapersView(desk);
            view.show(desk.state());
        });
    }

    @Test
    void eachPaperOfAPlanThatHoldsIsShownAsPages() throws Exception {
        open(Optional.of("bramblegate-vans"));
        for (Paperwork paper : Paperwork.values()) {
            run(() -> view.papers().setSelectedItem(paper));
            until(() -> view.pageCount() > 0 && view.shown().equals("pages"));
            assertThat(on(view::canSave)).as(paper.key()).isTrue();
        }
        assertThat(desk.notices).isEmpty();
    }

    @Test
    void whatIsSavedSpeaksTheChosenLanguage() throws Exception {
        open(Optional.of("bramblegate-vans"));
        Path english = folder.resolve("en.pdf");
        Path german = folder.resolve("de.pdf");
        run(() -> view.save(english, "pdf"));
        until(() -> Files.exists(english));
        run(() -> {
            view.languages().setSelectedItem("de");
            view.save(german, "pdf");
        });
        until(() -> Files.exists(german));
        assertThat(text(english)).contains("Quote").contains("497.83");
        assertThat(text(german)).contains("Angebot").contains("497,83");
    }

    @Test
    void aPaperIsGoneToInALanguage() throws Exception {
        open(Optional.of("hurried-hatch"));
        run(() -> view.show(new Destination("papers", Map.of("paper", "hazards", "language", "de"))));
        until(() -> view.shown().equals("pages"));
        assertThat(on(() -> view.papers().getSelectedItem())).isEqualTo(Paperwork.HAZARDS);
        assertThat(on(() -> view.languages().getSelectedItem())).isEqualTo("de");
        run(() -> view.show(new Destination("papers", Map.of("paper", "menu", "language", "xx"))));
        assertThat(on(() -> view.papers().getSelectedItem())).isEqualTo(Paperwork.HAZARDS);
        assertThat(on(() -> view.languages().getSelectedItem())).isEqualTo("de");
    }

    @Test
    void aPlanThatIsStoppedHasOnlyItsHazardSheet() throws Exception {
        open(Optional.of("hurried-hatch"));
        assertThat(on(view::shown)).isEqualTo("stopped");
        assertThat(on(view::canSave)).isFalse();
        run(() -> view.papers().setSelectedItem(Paperwork.HAZARDS));
        until(() -> view.shown().equals("pages"));
        assertThat(on(view::canSave)).isTrue();
    }

    @Test
    void aRemarkThatStopsHoldsBackTheQuoteAndOneThatWarnsDoesNot() throws Exception {
        open(Optional.of("bramblegate-vans"));
        run(() -> view.show(remarked(Severity.STOP)));
        assertThat(on(view::shown)).isEqualTo("stopped");
        assertThat(on(view::canSave)).isFalse();
        run(() -> view.show(remarked(Severity.WARN)));
        until(() -> view.shown().equals("pages"));
        assertThat(on(view::canSave)).isTrue();
    }

    private DeskState remarked(Severity severity) {
        DeskState state = desk.state();
        Remark remark = new Remark("rule", severity, Optional.empty(), Optional.empty(), "Set up a platform.");
        return new DeskState(
                state.shop(), state.jobId(), state.worked(), List.of(remark), state.working(), state.unsaved());
    }

    @Test
    void anotherWorkbenchCanSendToAPaper() throws Exception {
        open(Optional.empty());
        run(() -> view.show(new Destination("papers", Map.of("paper", "card"))));
        assertThat(on(() -> view.papers().getSelectedItem())).isEqualTo(Paperwork.CARD);
        run(() -> view.show(new Destination("papers", Map.of("paper", "receipt"))));
        assertThat(on(() -> view.papers().getSelectedItem()))
                .as("an unknown one")
                .isEqualTo(Paperwork.CARD);
    }

    @Test
    void withoutAJobThereIsNothing() throws Exception {
        open(Optional.empty());
        assertThat(on(view::shown)).isEqualTo("nothing");
        assertThat(on(view::canSave)).isFalse();
    }

    @Test
    void aPlaceThatIsNoFolderIsTold() throws Exception {
        open(Optional.of("bramblegate-vans"));
        Path nowhere = folder.resolve("shop/shop.json/quote.html");
        run(() -> view.save(nowhere, "html"));
        until(() -> !desk.notices.isEmpty());
        assertThat(desk.notices).singleElement().extracting(Notice::weight).isEqualTo(Notice.Weight.FAILED);
        assertThat(desk.notices.get(0).text()).contains("quote.html could not be saved");
    }

    private static String text(Path pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
