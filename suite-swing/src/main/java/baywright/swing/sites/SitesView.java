package baywright.swing.sites;

import baywright.pack.SignerKey;
import baywright.share.TakingBack;
import baywright.site.OpenShop;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.EmptyState;
import baywright.workspace.Workspace;
import java.awt.CardLayout;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;

/** The sites workbench put together: packs that come, keys and trust, and packs that go. */
final class SitesView implements WorkbenchView {

    private static final String ENDING = "pack";

    private final Desk desk;
    private final Around around;
    private final PacksPart packs;
    private final OfferPart offer;
    private final TrustPart trust;
    private final MakePart make;
    private final CardLayout cards = new CardLayout();
    private final JPanel coming = new JPanel(cards);
    private final JTabbedPane tabs = new JTabbedPane();
    private Supplier<Optional<Path>> chooser = this::chooseFile;
    private Optional<Path> target = Optional.empty();
    private Shelf shelf = Shelf.EMPTY;
    private Optional<OpenShop> read = Optional.empty();
    private String card = "";
    private int serial;

    SitesView(Desk desk, Around around) {
        this.desk = desk;
        this.around = around;
        packs = new PacksPart(desk, this::choose, this::takeBack);
        offer = new OfferPart(desk, around, this::turn, this::trustKey);
        trust = new TrustPart(desk, around, this::readShelf);
        make = new MakePart(desk, around, this::chooseTarget);
        coming.add(packs, "packs");
        coming.add(offer, "offer");
        coming.add(
                new EmptyState(
                        Words.of("empty.heading"),
                        Words.of("empty.text"),
                        List.of(action("packs.choose", this::choose))),
                "empty");
        coming.add(new JPanel(), "wait");
        tabs.addTab(Words.of("tab.packs"), coming);
        tabs.addTab(Words.of("tab.trust"), Plain.page(trust));
        tabs.addTab(Words.of("tab.make"), Plain.page(make));
        tabs.getAccessibleContext().setAccessibleName(Words.of("title"));
        Plain.key(coming, KeyStroke.getKeyStroke("ESCAPE"), "close-offer", () -> {
            if (offer.isOpen()) {
                offer.close();
            }
        });
        turnTo("wait");
    }

    private static Action action(String key, Runnable does) {
        return new DoAction(Words.of(key), does);
    }

    @Override
    public JComponent component() {
        return tabs;
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                SuiteAction.of("sites-take", Words.of("packs.choose"), d -> choose())
                        .when(state -> state.shop().isPresent()),
                SuiteAction.of("sites-take-back", Words.of("packs.back"), d -> takeBack())
                        .when(state -> shelf.undo() && !state.unsaved()),
                SuiteAction.of("sites-trust", Words.of("show", Words.of("tab.trust")), d -> tabs.setSelectedIndex(1)),
                SuiteAction.of("sites-make", Words.of("show", Words.of("tab.make")), d -> tabs.setSelectedIndex(2)));
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // each reading is another one, and comparing whole ones would take long
    public void show(DeskState state) {
        boolean same = read.isPresent()
                && state.shop().isPresent()
                && read.get() == state.shop().get();
        if (state.shop().isPresent() && !same) {
            if (read.filter(old -> old.folder().equals(state.shop().get().folder()))
                    .isEmpty()) {
                shelf = Shelf.EMPTY;
                card = "";
                if (offer.isOpen()) {
                    offer.close();
                }
            }
            read = state.shop();
            readShelf();
        }
        packs.show(shelf, state.unsaved());
        make.show(state);
        offer.show(state);
    }

    /** Reads what the shop has of packs and keys, in the background. */
    private void readShelf() {
        Optional<Path> folder = desk.state().shop().map(OpenShop::folder);
        if (folder.isEmpty()) {
            return;
        }
        serial++;
        int mine = serial;
        Working.run(
                desk,
                Words.of("reading"),
                progress -> Shelf.read(folder.get(), around),
                now -> {
                    if (mine == serial) {
                        shelf = now;
                        packs.show(now, desk.state().unsaved());
                        trust.show(now);
                        turn();
                    }
                },
                this::turn);
    }

    private void turn() {
        if (offer.isOpen()) {
            turnTo("offer");
        } else {
            turnTo(shelf.lock().packs().isEmpty() ? "empty" : "packs");
        }
    }

    private void turnTo(String which) {
        card = which;
        cards.show(coming, which);
    }

    // what can be done

    /** Asks for a pack's file and lays it before the user; unsaved edits are to be saved first. */
    void choose() {
        if (desk.state().shop().isEmpty()) {
            return;
        }
        tabs.setSelectedIndex(0);
        if (desk.state().unsaved()) {
            sayUnsaved();
            return;
        }
        chooser.get().ifPresent(file -> {
            turnTo("offer");
            offer.open(file);
        });
    }

    /** Takes the pack back that was taken last. */
    void takeBack() {
        if (desk.state().unsaved()) {
            sayUnsaved();
            return;
        }
        desk.state()
                .shop()
                .map(OpenShop::folder)
                .ifPresent(folder -> Working.run(
                        desk,
                        Words.of("back.doing"),
                        progress -> TakingBack.takeBack(Workspace.open(folder), around.cache()),
                        back -> {
                            desk.say(Notice.done(Words.of("back.done")));
                            desk.reread();
                        },
                        desk::reread));
    }

    private void sayUnsaved() {
        SuiteAction save = SuiteAction.of("save-first", Words.of("save"), Desk::save);
        desk.say(new Notice(Notice.Weight.WARN, Words.of("offer.unsaved"), Optional.of(save)));
    }

    private void trustKey(SignerKey signer) {
        tabs.setSelectedIndex(1);
        trust.offer(signer);
    }

    private Optional<Path> chooseFile() {
        JFileChooser files = files();
        files.setDialogTitle(Words.of("packs.choose"));
        return files.showOpenDialog(SwingUtilities.getWindowAncestor(tabs)) == JFileChooser.APPROVE_OPTION
                ? Optional.of(files.getSelectedFile().toPath())
                : Optional.empty();
    }

    private static JFileChooser files() {
        JFileChooser files = new JFileChooser();
        files.setFileFilter(new FileNameExtensionFilter(Words.of("file.kind"), ENDING));
        return files;
    }

    private Optional<Path> chooseTarget(String name) {
        if (target.isPresent()) {
            return target;
        }
        JFileChooser files = files();
        files.setDialogTitle(Words.of("make.do"));
        files.setSelectedFile(files.getCurrentDirectory().toPath().resolve(name).toFile());
        return files.showSaveDialog(SwingUtilities.getWindowAncestor(tabs)) == JFileChooser.APPROVE_OPTION
                ? Optional.of(files.getSelectedFile().toPath())
                : Optional.empty();
    }

    // for tests

    /** Answers for whoever would be asked for a file. */
    void chooseBy(Supplier<Optional<Path>> other, Path made) {
        chooser = other;
        target = Optional.of(made);
    }

    /** Which of {@code packs}, {@code offer}, {@code empty} and {@code wait} is in sight. */
    String shown() {
        return card;
    }

    PacksPart packs() {
        return packs;
    }

    OfferPart offer() {
        return offer;
    }

    TrustPart trust() {
        return trust;
    }

    MakePart making() {
        return make;
    }
}
