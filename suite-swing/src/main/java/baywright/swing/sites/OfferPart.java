package baywright.swing.sites;

import baywright.chance.Watch;
import baywright.document.ImpactOnQuotes;
import baywright.library.Item;
import baywright.library.StageChangeText;
import baywright.pack.Consent;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackFile;
import baywright.pack.PackRefused;
import baywright.pack.Refusal;
import baywright.pack.SignerKey;
import baywright.pack.Standing;
import baywright.plan.Severity;
import baywright.share.Choice;
import baywright.share.Impact;
import baywright.share.LibraryChange;
import baywright.share.TakenPack;
import baywright.share.Taking;
import baywright.site.OpenShop;
import baywright.site.Site;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import baywright.workspace.FileProblem;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * A pack that lies before the user: what it changes, where it clashes, what it makes of the jobs, and the button that takes it. Nothing
 * is written before that.
 */
final class OfferPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int LEFT = 440;
    private static final int TEXT = 120;

    private final transient Desk desk;
    private final transient Around around;
    private final transient Runnable ended;
    private final transient StageChangeText sentences;
    private final JLabel heading = new JLabel();
    private final Prose about = new Prose("");
    private final JLabel standing = new JLabel();
    private final JButton trust;
    private final JTextField answers = new JTextField();
    private final JTextField reason = new JTextField();
    private final JPanel consent =
            new JPanel(new MigLayout("insets 0, gap 8", "[][120, grow, fill][][240, grow 200, fill]"));
    private final ChangeRows changes = new ChangeRows(this::judge);
    private final JTable table = Plain.table(changes, Words.of("changes"));
    private final JTextArea said = Plain.reading(Words.of("said"));
    private final ClashPart clashes;
    private final ImpactPart impact;
    private final JTabbedPane tabs = new JTabbedPane();
    private final Prose verdict = new Prose("");
    private final JButton take;
    private final JButton save;
    private final JButton earlier;
    private transient Optional<Path> file = Optional.empty();
    private transient Optional<Judged> judged = Optional.empty();
    private transient Optional<OpenShop> against = Optional.empty();
    private transient Optional<TaskHandle> judging = Optional.empty();
    private transient Optional<TaskHandle> reckoning = Optional.empty();
    private transient Optional<SignerKey> signer = Optional.empty();
    private boolean downgrade;
    private boolean taking;
    private int serial;

    /** A pack with what taking it comes to. */
    private record Judged(Pack pack, Taking taking, Standing standing) {}

    /**
     * Without a pack yet.
     *
     * @param ended   told when the pack was taken or put away
     * @param trusted gets a key that the user wants to trust
     */
    OfferPart(Desk desk, Around around, Runnable ended, Consumer<SignerKey> trusted) {
        super(new MigLayout("insets 12 16 12 16, wrap 1, gap 0 6, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        this.around = around;
        this.ended = ended;
        sentences = new StageChangeText(desk.readout().locale());
        clashes = new ClashPart(sentences, this::judge);
        impact = new ImpactPart(desk);
        trust = Plain.button("offer.trust", () -> signer.ifPresent(trusted));
        take = Plain.button("offer.take", this::take);
        take.putClientProperty("FlatLaf.styleClass", "primary");
        save = Plain.button("save", desk::save);
        earlier = Plain.button("offer.earlier", () -> {
            downgrade = true;
            judge();
        });
        layOut();
    }

    private void layOut() {
        heading.putClientProperty("html.disable", true);
        heading.putClientProperty("FlatLaf.styleClass", "h2");
        standing.putClientProperty("html.disable", true);
        JPanel top = new JPanel(new MigLayout("insets 0, gap 8", "[grow, fill][][]"));
        top.add(heading, "wmin 0");
        top.add(Plain.button("offer.again", this::judge));
        top.add(Plain.button("offer.close", this::close));
        add(top);
        add(about, "wmin 0");
        JPanel from = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3", "[][]"));
        from.add(standing, "wmin 0");
        from.add(trust);
        add(from);
        Plain.field(consent, "consent.by", answers);
        Plain.field(consent, "consent.why", reason);
        add(consent, "wmin 0");
        JPanel left = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 4", "[grow, fill]"));
        left.add(new SectionHeading(Words.of("changes"), table));
        left.add(Plain.scroll(table, 0), "growy, pushy, hmin 60");
        JPanel boxes = new JPanel(new MigLayout("insets 0, gap 8"));
        boxes.add(Plain.button("changes.all", () -> changes.setAll(true)));
        boxes.add(Plain.button("changes.none", () -> changes.setAll(false)));
        left.add(boxes);
        left.add(new SectionHeading(Words.of("said"), said), "gaptop 6");
        left.add(Plain.scroll(said, TEXT), "hmin 40");
        table.getColumnModel().getColumn(ChangeRows.WANTED).setMaxWidth(UIScale.scale(56));
        table.getColumnModel().getColumn(ChangeRows.KIND).setPreferredWidth(UIScale.scale(110));
        table.getColumnModel().getColumn(ChangeRows.NAME).setPreferredWidth(UIScale.scale(260));
        table.getSelectionModel().addListSelectionListener(e -> showSaid());
        left.setPreferredSize(new Dimension(UIScale.scale(LEFT), 0));
        left.setMinimumSize(new Dimension(UIScale.scale(LEFT) / 2, 0));
        tabs.addTab(Words.of("impact"), impact);
        tabs.addTab(Words.of("clashes"), clashes);
        tabs.getAccessibleContext().setAccessibleName(Words.of("offer.tabs"));
        tabs.setMinimumSize(new Dimension(UIScale.scale(LEFT) / 2, 0));
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, left, tabs);
        split.setResizeWeight(0.4);
        split.setBorder(null);
        add(split, "growy, pushy, wmin 0, hmin 0");
        JPanel foot = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3", "[grow, fill][][][]"));
        foot.add(verdict, "wmin 0");
        foot.add(save);
        foot.add(earlier);
        foot.add(take);
        add(foot, "wmin 0");
    }

    // a pack comes and goes

    /** Lays a pack before the user. */
    void open(Path pack) {
        put(Optional.of(pack));
        heading.setText(String.valueOf(pack.getFileName()));
        judge();
    }

    boolean isOpen() {
        return file.isPresent();
    }

    private void put(Optional<Path> pack) {
        stop();
        file = pack;
        judged = Optional.empty();
        downgrade = false;
        taking = false;
        changes.clear();
        clashes.clear();
        said.setText("");
        about.setText("");
        answers.setText("");
        reason.setText("");
        signer = Optional.empty();
        standing.setText("");
        standing.setIcon(null);
        impact.say("");
    }

    void close() {
        put(Optional.empty());
        ended.run();
    }

    private void stop() {
        serial++;
        judging.ifPresent(TaskHandle::cancel);
        reckoning.ifPresent(TaskHandle::cancel);
        judging = Optional.empty();
        reckoning = Optional.empty();
    }

    /** Looks anew when the files that it was judged against are others by now. */
    void show(DeskState state) {
        if (!isOpen() || state.shop().isEmpty()) {
            return;
        }
        OpenShop shop = state.shop().get();
        boolean other = against.filter(old -> old.texts().equals(shop.texts())
                        && old.items().equals(shop.items())
                        && old.folder().equals(shop.folder())
                        && old.jobs().equals(shop.jobs()))
                .isEmpty();
        if (other && !state.unsaved() && !state.working() && !taking) {
            judge();
        }
        tell();
    }

    // judging

    /** Works out in the background what taking comes to, with what is wanted now; what is being worked out for before is left. */
    private void judge() {
        stop();
        if (file.isEmpty() || desk.state().shop().isEmpty()) {
            return;
        }
        OpenShop shop = desk.state().shop().get();
        against = Optional.of(shop);
        earlier.setVisible(false);
        judged = Optional.empty();
        if (changes.isAllRefused()) {
            impact.say("");
            tell();
            return;
        }
        int mine = serial;
        Choice choice = new Choice(changes.only(), clashes.sides(), downgrade);
        Path from = file.get();
        judging = Optional.of(desk.run(new Task<>(
                Words.of("offer.judging"),
                progress -> {
                    try {
                        return judged(shop.folder(), from, choice);
                    } finally {
                        if (progress.cancelled()) {
                            SwingUtilities.invokeLater(() -> stopped(mine));
                        }
                    }
                },
                now -> {
                    if (mine == serial) {
                        show(now, shop);
                    }
                },
                fault -> refused(mine, fault))));
        tell();
    }

    private Judged judged(Path workspace, Path from, Choice choice) {
        Pack pack = PackFile.readAny(from);
        Workspace read = Workspace.open(workspace);
        read.ownProblems().stream().filter(FileProblem::isError).findFirst().ifPresent(problem -> {
            throw new WorkspaceException(problem.toString());
        });
        Taking what = Taking.of(read, pack, choice, around.cache());
        return new Judged(pack, what, what.standing());
    }

    private void refused(int mine, Exception fault) {
        desk.say(Notice.failed(Working.sentence(fault)));
        if (mine != serial) {
            return;
        }
        stopped(mine);
        boolean isEarlier = fault instanceof PackRefused no && no.refusal() == Refusal.DOWNGRADE;
        if (isEarlier) {
            earlier.setVisible(true);
        } else if (changes.getRowCount() == 0) {
            close();
        }
    }

    private void stopped(int mine) {
        if (mine == serial) {
            judging = Optional.empty();
            reckoning = Optional.empty();
            tell();
        }
    }

    private void show(Judged now, OpenShop shop) {
        judging = Optional.empty();
        judged = Optional.of(now);
        heading.setText(now.pack().manifest().id() + " " + now.pack().manifest().version());
        about.setText(about(now.pack().manifest()));
        stand(now.standing());
        int row = table.getSelectedRow();
        List<LibraryChange> all = new ArrayList<>(now.taking().changes());
        all.addAll(now.taking().itemChanges());
        Set<String> offered = new HashSet<>(now.taking().offered());
        offered.addAll(now.taking().offeredItems());
        changes.show(all, offered);
        if (changes.getRowCount() > 0) {
            int at = Math.min(row < 0 ? 1 : row, changes.getRowCount() - 1);
            table.setRowSelectionInterval(at, at);
        }
        showSaid();
        clashes.show(now.taking());
        tabs.setTitleAt(1, Words.of("clashes.count", now.taking().clashes().size()));
        tell();
        reckon(now, shop.site());
    }

    private static String about(Manifest manifest) {
        String text = Words.of("offer.about", manifest.who(), manifest.why(), manifest.licence());
        String needs = manifest.needs().stream().map(Manifest.Need::toString).collect(Collectors.joining(", "));
        return needs.isEmpty() ? text : text + "\n" + Words.of("offer.needs", needs);
    }

    private void stand(Standing now) {
        signer = now instanceof Standing.Unknown unknown ? Optional.of(unknown.signer()) : Optional.empty();
        if (now instanceof Standing.Known known) {
            standing.setText(Words.of("standing.known", known.signer().name()));
            standing.setIcon(new FineSign());
        } else {
            standing.setText(signer.map(key -> Words.of("standing.unknown", key.fingerprint()))
                    .orElseGet(() -> Words.of("standing.unsigned")));
            standing.setIcon(new SeveritySign(Severity.WARN));
        }
    }

    /** What the pack makes of the jobs; it need not be waited for. */
    private void reckon(Judged now, Site site) {
        if (!now.taking().problems().isEmpty()) {
            impact.say(Words.of("impact.errors"));
            return;
        }
        impact.say(Words.of("impact.reckoning"));
        int mine = serial;
        reckoning = Optional.of(Working.run(
                desk,
                Words.of("impact.reckoning"),
                progress -> Impact.of(site, now.taking().library(), new ImpactOnQuotes(site), new Watched(progress)),
                found -> {
                    if (mine == serial) {
                        Site then = site.withLibrary(now.taking().library(), job -> false);
                        impact.show(found, new ImpactWords(site, then, desk.readout()));
                    }
                },
                () -> {
                    if (mine == serial) {
                        impact.say(Words.of("impact.stopped"));
                    }
                }));
    }

    /** Tells the window how many jobs are done, and stops with it. */
    private record Watched(Task.Progress progress) implements Watch {

        @Override
        public boolean cancelled() {
            return progress.cancelled();
        }

        @Override
        public void done(int runs, int all) {
            progress.at((double) runs / Math.max(1, all));
        }
    }

    private void showSaid() {
        int row = table.getSelectedRow();
        String text = "";
        if (row >= 0 && row < changes.getRowCount()) {
            text = changes.row(row).map(this::said).orElseGet(() -> String.join("\n", changes.under(row)));
        }
        said.setText(text);
        said.setCaretPosition(0);
    }

    private String said(LibraryChange change) {
        String text = change.said().stream().map(sentences::of).collect(Collectors.joining("\n"));
        if (!text.isEmpty()) {
            return text;
        }
        boolean same =
                change.kind() == LibraryChange.Kind.CHANGED && change.name().startsWith("stage ");
        return same ? Words.of("said.same") : Words.of("said", change.kind());
    }

    // taking

    private boolean isReady() {
        return judged.filter(j -> j.taking().isReady()).isPresent()
                && !desk.state().unsaved()
                && !taking
                && !changes.isAllRefused();
    }

    /** Says what stands in the way, and lets only what can be done be done. */
    private void tell() {
        boolean unsaved = desk.state().unsaved();
        save.setVisible(unsaved);
        boolean unknown = judged.filter(j -> !j.standing().isKnown()).isPresent();
        consent.setVisible(unknown);
        trust.setVisible(unknown && signer.isPresent());
        take.setEnabled(isReady());
        verdict.setText(verdict(unsaved));
        revalidate();
    }

    private String verdict(boolean unsaved) {
        if (unsaved) {
            return Words.of("offer.unsaved");
        }
        if (changes.isAllRefused()) {
            return Words.of("offer.nothing");
        }
        if (taking) {
            return Words.of("offer.taking");
        }
        if (judged.isEmpty()) {
            return Words.of(
                    judging.isPresent() ? "offer.judging" : earlier.isVisible() ? "offer.goes-back" : "offer.stopped");
        }
        Taking now = judged.get().taking();
        List<String> lines = new ArrayList<>();
        long open = now.clashes().stream().filter(c -> c.decided().isEmpty()).count();
        lines.add(Words.of(
                "offer.summary",
                now.changes().size() + now.itemChanges().size(),
                open,
                now.problems().size()));
        now.problems().stream().limit(3).forEach(p -> lines.add(Words.of("offer.problem", p)));
        now.failedExamples().stream().limit(3).forEach(p -> lines.add(Words.of("offer.example", p)));
        if (!now.unpriced().isEmpty()) {
            lines.add(Words.of("offer.unpriced", named(now.unpriced())));
        }
        if (!now.ownHazards().isEmpty()) {
            lines.add(Words.of("offer.own-hazards", named(now.ownHazards())));
        }
        return String.join("\n", lines);
    }

    private String named(List<String> items) {
        Map<String, String> titles = desk.state().shop().map(OpenShop::items).orElse(List.of()).stream()
                .collect(Collectors.toMap(Item::id, Item::title, (a, b) -> a));
        return items.stream().map(id -> titles.getOrDefault(id, id)).collect(Collectors.joining(", "));
    }

    /** Takes the pack in one step; without a known signer only with a name and a reason. */
    void take() {
        if (!isReady()) {
            return;
        }
        Judged now = judged.orElseThrow();
        Optional<Consent> word = Optional.empty();
        if (!now.standing().isKnown()) {
            word = Consent.of(answers.getText().replace(':', ' ') + ":" + reason.getText());
            if (word.isEmpty()) {
                desk.say(new Notice(Notice.Weight.WARN, Words.of("consent.wanted"), Optional.empty()));
                (answers.getText().isBlank() ? answers : reason).requestFocusInWindow();
                return;
            }
        }
        Optional<Consent> yes = word;
        taking = true;
        int mine = serial;
        Working.run(
                desk, Words.of("offer.taking"), progress -> now.taking().take(yes, around.clock()), this::taken, () -> {
                    taking = false;
                    stopped(mine);
                    // even a cancelled taking may have been written already
                    desk.reread();
                });
        tell();
    }

    private void taken(TakenPack pack) {
        desk.say(Notice.done(Words.of("taken", pack.id(), pack.version().toString())));
        close();
        desk.reread();
    }

    // for tests and for what puts the view together

    JTable changes() {
        return table;
    }

    String said() {
        return said.getText();
    }

    ClashPart clashes() {
        return clashes;
    }

    ImpactPart impact() {
        return impact;
    }

    String verdict() {
        return verdict.getText();
    }

    JButton takeButton() {
        return take;
    }

    void answer(String by, String why) {
        answers.setText(by);
        reason.setText(why);
    }
}
