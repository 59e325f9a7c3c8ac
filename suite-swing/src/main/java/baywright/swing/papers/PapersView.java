package baywright.swing.papers;

import baywright.document.PagePdf;
import baywright.document.Texts;
import baywright.site.OpenShop;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Remark;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.EmptyState;
import baywright.workspace.SafeFile;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** The pages of one paper at a time, with the choice of paper and language, and ways to save it. */
final class PapersView implements WorkbenchView {

    private static final float DOTS = 144;

    private final Desk desk;
    private final Supplier<Printer> printers;
    private final JPanel whole = new JPanel(new MigLayout("insets 8, fill, wrap 1", "[grow, fill]", "[]8[grow, fill]"));
    private final CardLayout cards = new CardLayout();
    private final JPanel content = new JPanel(cards);
    private final PagesPane pages = new PagesPane();
    private final JComboBox<Paperwork> paper = new JComboBox<>(Paperwork.values());
    private final JComboBox<String> language;
    private final JButton savePdf = new JButton();
    private final JButton savePage = new JButton();
    private final JButton print = new JButton();
    private Optional<WorkedJob> worked = Optional.empty();
    private List<Remark> remarks = List.of();
    private Optional<TaskHandle> setting = Optional.empty();
    private String shown = "";
    private boolean choosing;

    PapersView(Desk desk) {
        this(desk, Printer.OfSystem::new);
    }

    /** @param printers makes what is printed on, anew for each print */
    PapersView(Desk desk, Supplier<Printer> printers) {
        this.desk = desk;
        this.printers = printers;
        this.language = new JComboBox<>(Texts.LANGUAGES.toArray(String[]::new));
        paper.setRenderer(new Titled(value -> PapersWorkbench.TEXTS.of("paper." + ((Paperwork) value).key())));
        language.setRenderer(new Titled(value -> {
            Locale locale = Locale.forLanguageTag((String) value);
            return locale.getDisplayLanguage(Locale.getDefault(Locale.Category.DISPLAY));
        }));
        paper.addActionListener(e -> chosen());
        language.addActionListener(e -> chosen());
        savePdf.setAction(action("save.pdf", () -> save("pdf")));
        savePage.setAction(action("save.html", () -> save("html")));
        print.setAction(action("print", this::print));
        pages.getAccessibleContext().setAccessibleName(PapersWorkbench.TEXTS.of("pages"));
        JScrollPane scroll = new JScrollPane(pages);
        scroll.setBorder(null);
        content.add(scroll, "pages");
        content.add(
                new EmptyState(
                        PapersWorkbench.TEXTS.of("stopped.heading"),
                        PapersWorkbench.TEXTS.of("stopped.text"),
                        List.of(action("stopped.go", () -> desk.go(new Destination("plan", Map.of()))))),
                "stopped");
        content.add(new JPanel(), "nothing");
        whole.add(bar());
        whole.add(content, "wmin 0, hmin 0");
        set();
    }

    private JComponent bar() {
        JPanel bar = new JPanel(new MigLayout("insets 0", "[]8[]24[]8[]push[]8[]8[]"));
        JLabel what = new JLabel(PapersWorkbench.TEXTS.of("paper"));
        what.setLabelFor(paper);
        JLabel in = new JLabel(PapersWorkbench.TEXTS.of("language"));
        in.setLabelFor(language);
        bar.add(what);
        bar.add(paper);
        bar.add(in);
        bar.add(language);
        bar.add(savePage);
        bar.add(savePdf);
        bar.add(print);
        return bar;
    }

    @Override
    public JComponent component() {
        return whole;
    }

    @Override
    public JComponent focus() {
        return paper;
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                SuiteAction.of("papers-print", PapersWorkbench.TEXTS.of("print"), d -> print())
                        .withKey("menu P")
                        .when(state -> print.isEnabled()),
                SuiteAction.of("papers-pdf", PapersWorkbench.TEXTS.of("save.pdf"), d -> save("pdf"))
                        .withKey("menu shift P")
                        .when(state -> savePdf.isEnabled()),
                SuiteAction.of("papers-html", PapersWorkbench.TEXTS.of("save.html"), d -> save("html"))
                        .when(state -> savePage.isEnabled()));
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // each working out is another one, and comparing whole ones would take long
    public void show(DeskState state) {
        boolean same = worked.isPresent() == state.worked().isPresent()
                && (worked.isEmpty() || worked.get() == state.worked().get());
        if (same && remarks.equals(state.remarks())) {
            return;
        }
        Optional<String> before = worked.map(w -> w.job().id());
        worked = state.worked();
        remarks = state.remarks();
        if (!worked.map(w -> w.job().id()).equals(before)) {
            worked.ifPresent(now -> {
                choosing = true;
                String wanted = now.job().language().orElse(site().shop().language());
                language.setSelectedItem(
                        Locale.forLanguageTag(Texts.nearest(wanted)).getLanguage());
                choosing = false;
            });
        }
        set();
    }

    /** A paper by its key, as in {@code hazards}, and a language of papers; what is neither is passed over. */
    @Override
    public void show(Destination place) {
        choosing = true;
        for (Paperwork one : Paperwork.values()) {
            if (one.key().equals(place.where().get("paper"))) {
                paper.setSelectedItem(one);
            }
        }
        String tongue = place.where().getOrDefault("language", "");
        if (Texts.LANGUAGES.contains(tongue)) {
            language.setSelectedItem(tongue);
        }
        choosing = false;
        set();
    }

    private void chosen() {
        if (!choosing) {
            set();
        }
    }

    private Site site() {
        return desk.state().shop().map(OpenShop::site).orElseThrow();
    }

    private Paperwork paper() {
        return (Paperwork) paper.getSelectedItem();
    }

    private String language() {
        return (String) language.getSelectedItem();
    }

    /** Sets the chosen paper in the background; one that is being set for an older state is left. */
    private void set() {
        setting.ifPresent(TaskHandle::cancel);
        setting = Optional.empty();
        boolean can = worked.filter(job -> paper().canBeMade(job, remarks)).isPresent();
        savePdf.setEnabled(can);
        savePage.setEnabled(can);
        print.setEnabled(can);
        if (!can) {
            pages.show(List.of());
            turnTo(worked.isPresent() ? "stopped" : "nothing");
            return;
        }
        Paperwork chosen = paper();
        WorkedJob job = worked.orElseThrow();
        Site site = site();
        String tongue = language();
        float dots = (float) (DOTS * largeness());
        setting = Optional.of(desk.run(new Task<>(
                PapersWorkbench.TEXTS.of("setting", PapersWorkbench.TEXTS.of("paper." + chosen.key())),
                progress -> PageImages.of(PagePdf.of(chosen.html(site, job, tongue)), dots, progress),
                this::turnTo,
                fault -> desk.say(
                        Notice.failed(PapersWorkbench.TEXTS.of("failed", String.valueOf(fault.getMessage())))))));
    }

    /** Of the display, against the usual 96 dots an inch; 1 without one. */
    private static double largeness() {
        return GraphicsEnvironment.isHeadless()
                ? 1
                : Math.max(1, Toolkit.getDefaultToolkit().getScreenResolution() / 96.0);
    }

    private void turnTo(List<BufferedImage> images) {
        pages.show(images);
        turnTo("pages");
    }

    private void turnTo(String card) {
        shown = card;
        cards.show(content, card);
    }

    private void save(String ending) {
        JFileChooser chooser = new JFileChooser();
        chooser.setSelectedFile(new File(worked.orElseThrow().job().id() + "-"
                + PapersWorkbench.TEXTS.of("file." + paper().key()) + "." + ending));
        if (chooser.showSaveDialog(whole) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path file = chooser.getSelectedFile().toPath();
        boolean sure = !Files.exists(file)
                || JOptionPane.showConfirmDialog(
                                whole,
                                PapersWorkbench.TEXTS.of("replace", file),
                                PapersWorkbench.TEXTS.of("replace.title"),
                                JOptionPane.OK_CANCEL_OPTION)
                        == JOptionPane.OK_OPTION;
        if (sure) {
            save(file, ending);
        }
    }

    /** Writes the chosen paper, whole or not at all, in the background. */
    void save(Path file, String ending) {
        Paperwork chosen = paper();
        WorkedJob job = worked.orElseThrow();
        Site site = site();
        String tongue = language();
        desk.run(new Task<>(
                PapersWorkbench.TEXTS.of("saving", file),
                progress -> {
                    String html = chosen.html(site, job, tongue);
                    SafeFile.replace(
                            file, ending.equals("pdf") ? PagePdf.of(html) : html.getBytes(StandardCharsets.UTF_8));
                    return file;
                },
                saved -> desk.say(Notice.done(PapersWorkbench.TEXTS.of("saved", saved))),
                fault -> desk.say(Notice.failed(
                        PapersWorkbench.TEXTS.of("not-saved", file, String.valueOf(fault.getMessage()))))));
    }

    /** A PDF that is about to be printed; closed when that is over, or not wanted. */
    private record Printed(PDDocument document, Printer printer) {}

    /** Sets the pages and looks for printers in the background, asks by the system's dialog, and prints in the background. */
    void print() {
        Paperwork chosen = paper();
        WorkedJob job = worked.orElseThrow();
        Site site = site();
        String tongue = language();
        Printer printer = printers.get();
        String title = PapersWorkbench.TEXTS.of("paper." + chosen.key());
        desk.run(new Task<>(
                PapersWorkbench.TEXTS.of("setting", title),
                progress -> {
                    boolean can = printer.isThere();
                    return can
                            ? Optional.of(
                                    new Printed(Loader.loadPDF(PagePdf.of(chosen.html(site, job, tongue))), printer))
                            : Optional.<Printed>empty();
                },
                ready -> ready.ifPresentOrElse(
                        pages -> ask(title, pages),
                        () -> desk.say(Notice.failed(PapersWorkbench.TEXTS.of("print.none")))),
                fault -> desk.say(notPrinted(title, fault))));
    }

    private void ask(String title, Printed printed) {
        PDFPageable pages = new PDFPageable(printed.document());
        if (!printed.printer().ask(pages)) {
            IOUtils.closeQuietly(printed.document());
            return;
        }
        desk.run(new Task<>(
                PapersWorkbench.TEXTS.of("printing", title),
                progress -> {
                    try (PDDocument document = printed.document()) {
                        Printer printer = printed.printer();
                        printer.print(new WatchedPages(pages, progress, printer::cancel));
                        return document.getNumberOfPages();
                    }
                },
                count -> desk.say(Notice.done(PapersWorkbench.TEXTS.of("printed", title, count))),
                fault -> desk.say(notPrinted(title, fault))));
    }

    private static Notice notPrinted(String title, Exception fault) {
        return Notice.failed(PapersWorkbench.TEXTS.of("not-printed", title, String.valueOf(fault.getMessage())));
    }

    private static Action action(String key, Runnable does) {
        return new DoAction(PapersWorkbench.TEXTS.of(key), does);
    }

    JComboBox<Paperwork> papers() {
        return paper;
    }

    JComboBox<String> languages() {
        return language;
    }

    int pageCount() {
        return pages.count();
    }

    /** Which of {@code pages}, {@code stopped} and {@code nothing} is in sight. */
    String shown() {
        return shown;
    }

    boolean canSave() {
        return savePdf.isEnabled() && savePage.isEnabled() && print.isEnabled();
    }

    /** Shows a value by its title. */
    private static final class Titled extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        private final transient Function<Object, String> title;

        Titled(Function<Object, String> title) {
            this.title = title;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            return super.getListCellRendererComponent(
                    list, value == null ? "" : title.apply(value), index, chosen, focus);
        }
    }
}
