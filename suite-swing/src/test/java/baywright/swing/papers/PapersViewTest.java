package baywright.swing.papers;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.Severity;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Remark;
import baywright.swing.api.Task;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.Book;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
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
        shop = OpenShop.open(DemoShops.copy("millrace-works", folder.resolve("shop")), CLOCK, DemoShops.SCRIPTS);
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

    /** Draws what it is to print into pictures. */
    private static final class Drawer implements Printer {

        private final boolean there;
        private final boolean wanted;
        private final List<Integer> dark = new ArrayList<>();
        private boolean cancelled;

        Drawer(boolean there, boolean wanted) {
            this.there = there;
            this.wanted = wanted;
        }

        @Override
        public boolean isThere() {
            return there;
        }

        @Override
        public boolean ask(Pageable pages) {
            return wanted;
        }

        @Override
        public void print(Pageable pages) throws PrinterException {
            for (int i = 0; i < pages.getNumberOfPages() && !cancelled; i++) {
                PageFormat format = pages.getPageFormat(i);
                BufferedImage page = new BufferedImage(
                        (int) format.getWidth(), (int) format.getHeight(), BufferedImage.TYPE_INT_RGB);
                Graphics2D g = page.createGraphics();
                g.setColor(Color.WHITE);
                g.fillRect(0, 0, page.getWidth(), page.getHeight());
                if (pages.getPrintable(i).print(g, format, i) == Printable.PAGE_EXISTS) {
                    dark.add((int) Arrays.stream(
                                    page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth()))
                            .filter(rgb -> (rgb & 0xff) < 0x80)
                            .count());
                }
                g.dispose();
            }
        }

        @Override
        public void cancel() {
            cancelled = true;
        }
    }

    private void print(Drawer printer) throws Exception {
        run(() -> {
            desk = new TestDesk(shop, Optional.of("bramblegate-vans"));
            view = new PapersView(desk, () -> printer);
            view.show(desk.state());
            view.print();
        });
    }

    @Test
    void everyPageIsPrintedAfterAYes() throws Exception {
        Drawer printer = new Drawer(true, true);
        print(printer);
        assertThat(printer.dark)
                .hasSize(on(view::pageCount))
                .allSatisfy(inked -> assertThat(inked).isGreaterThan(1000));
        assertThat(desk.notices)
                .singleElement()
                .satisfies(notice ->
                        assertThat(notice.text()).startsWith("Quote: ").contains("handed to the printer"));
    }

    @Test
    void withoutAPrinterOrAfterANoNothingIsPrinted() throws Exception {
        Drawer unwanted = new Drawer(true, false);
        print(unwanted);
        assertThat(unwanted.dark).isEmpty();
        assertThat(desk.notices).isEmpty();
        Drawer none = new Drawer(false, true);
        print(none);
        assertThat(none.dark).isEmpty();
        assertThat(desk.notices).singleElement().satisfies(notice -> {
            assertThat(notice.weight()).isEqualTo(Notice.Weight.FAILED);
            assertThat(notice.text()).contains("knows no printer");
        });
    }

    @Test
    void aPrintThatIsCalledOffEndsAtThePageUnderWay() throws Exception {
        Drawer printer = new Drawer(true, true);
        List<Double> told = new ArrayList<>();
        Book book = new Book();
        for (int i = 0; i < 5; i++) {
            book.append((g, format, index) -> Printable.PAGE_EXISTS, new PageFormat());
        }
        printer.print(new WatchedPages(
                book,
                new Task.Progress() {
                    @Override
                    public void at(double share) {
                        told.add(share);
                    }

                    @Override
                    public void says(String text) {}

                    @Override
                    public boolean cancelled() {
                        return told.size() == 2;
                    }
                },
                printer::cancel));
        assertThat(told).containsExactly(0.2, 0.4);
        assertThat(printer.dark).hasSize(2);
        assertThat(printer.cancelled).isTrue();
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
