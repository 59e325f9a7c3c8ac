package baywright.swing.sites;

import baywright.library.Family;
import baywright.pack.Pack;
import baywright.pack.PackFile;
import baywright.pack.PackMaker;
import baywright.pack.Version;
import baywright.site.OpenShop;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Notice;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.WidePanel;
import baywright.workspace.Fields;
import baywright.workspace.Workspace;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Makes a pack of what the shop has, signed with the shop's key, for other sites to take. */
final class MakePart extends WidePanel {

    private static final long serialVersionUID = 1L;
    private static final int TEXT = 100;

    private final transient Desk desk;
    private final transient Around around;
    private final transient Function<String, Optional<Path>> target;
    private final JTextField id = new JTextField();
    private final JTextField version = new JTextField("1.0.0");
    private final JTextField who = new JTextField();
    private final JTextField why = new JTextField();
    private final JTextField licence = new JTextField("CC-BY-4.0");
    private final JCheckBox prices = new JCheckBox(Words.of("make.prices"));
    private final JPanel families = new JPanel(new MigLayout("insets 0, wrap 3, gap 12 4"));
    private final transient Map<String, JCheckBox> boxes = new LinkedHashMap<>();
    private final JTextArea found = Plain.reading(Words.of("make.found"));
    private final JButton make;
    private transient List<Family> shown = List.of();
    private String shop = "";

    /** @param target asks for the file, given a name for it */
    MakePart(Desk desk, Around around, Function<String, Optional<Path>> target) {
        super(new MigLayout("insets 12 16 12 16, wrap 1, gap 0 6", "[grow, fill]"));
        this.desk = desk;
        this.around = around;
        this.target = target;
        make = Plain.button("make.do", this::make);
        make.putClientProperty("FlatLaf.styleClass", "primary");
        add(new SectionHeading(Words.of("make")));
        add(new Prose(Words.of("make.text")), "wmin 0");
        JPanel form = new JPanel(new MigLayout("insets 0, wrap 2, gap 8 6", "[][grow, fill, 200:480:560]"));
        Plain.field(form, "make.id", id);
        Plain.field(form, "make.version", version);
        Plain.field(form, "make.who", who);
        Plain.field(form, "make.why", why);
        Plain.field(form, "make.licence", licence);
        form.add(prices, "skip 1, growx 0");
        add(form, "wmin 0");
        add(new SectionHeading(Words.of("make.families"), families), "gaptop 8");
        add(new Prose(Words.of("make.families.text")), "wmin 0");
        add(families, "wmin 0");
        add(make, "growx 0, gaptop 8");
        add(new SectionHeading(Words.of("make.found"), found), "gaptop 8");
        add(Plain.scroll(found, TEXT), "hmin 40");
    }

    void show(DeskState state) {
        Optional<OpenShop> open = state.shop();
        make.setEnabled(open.isPresent() && !state.unsaved());
        make.setToolTipText(state.unsaved() ? Words.of("make.unsaved") : null);
        if (open.isEmpty()) {
            return;
        }
        if (!shop.equals(open.get().shop().id())) {
            shop = open.get().shop().id();
            id.setText(shop);
            who.setText(open.get().shop().name());
            why.setText("");
            found.setText("");
        }
        List<Family> now = open.get().site().library().families();
        if (!now.equals(shown)) {
            shown = now;
            families.removeAll();
            boxes.clear();
            for (Family family : now) {
                JCheckBox box = new JCheckBox();
                box.putClientProperty("html.disable", true);
                box.setText(family.title());
                boxes.put(family.id(), box);
                families.add(box);
            }
            families.revalidate();
        }
    }

    void fill(String packId, String packVersion, String reason) {
        id.setText(packId);
        version.setText(packVersion);
        why.setText(reason);
    }

    String found() {
        return found.getText();
    }

    private Optional<String> wrong() {
        if (!Fields.isId(id.getText().strip())) {
            id.requestFocusInWindow();
            return Optional.of(Words.of("make.no-id", Fields.AN_ID));
        }
        if (!Version.isVersion(version.getText().strip())) {
            version.requestFocusInWindow();
            return Optional.of(Words.of("make.no-version"));
        }
        boolean blank = who.getText().isBlank()
                || why.getText().isBlank()
                || licence.getText().isBlank();
        return blank ? Optional.of(Words.of("make.blank")) : Optional.empty();
    }

    /** Asks for a file and makes the pack in the background, or says what is missing. */
    void make() {
        Optional<OpenShop> open = desk.state().shop();
        if (open.isEmpty()) {
            return;
        }
        Optional<String> wrong = wrong();
        if (wrong.isPresent()) {
            desk.say(new Notice(Notice.Weight.WARN, wrong.get(), Optional.empty()));
            return;
        }
        PackMaker.About about = new PackMaker.About(
                id.getText().strip(),
                Version.of(version.getText().strip()),
                who.getText().strip(),
                why.getText().strip(),
                licence.getText().strip(),
                List.of(),
                prices.isSelected());
        Set<String> chosen = boxes.entrySet().stream()
                .filter(e -> e.getValue().isSelected())
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        Path folder = open.get().folder();
        String key = open.get().shop().id();
        target.apply(about.id() + "-" + about.version() + ".pack").ifPresent(file -> {
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                desk.say(new Notice(Notice.Weight.WARN, Words.of("make.there", file), Optional.empty()));
                return;
            }
            Working.run(
                    desk,
                    Words.of("make.making"),
                    progress -> {
                        PackMaker.Made made = PackMaker.make(
                                Workspace.open(folder), new PackMaker.Selection(chosen, Set.of()), about, List.of());
                        if (made.errors().isEmpty() && !progress.cancelled()) {
                            Pack signed = made.pack().signedBy(around.keys().read(key));
                            PackFile.write(signed, file);
                        }
                        return made;
                    },
                    made -> tell(made, file),
                    () -> {});
        });
    }

    private void tell(PackMaker.Made made, Path file) {
        List<String> lines = new ArrayList<>();
        made.errors().forEach(p -> lines.add(p.toString()));
        made.leftOut().forEach(script -> lines.add(Words.of("make.left-out", script)));
        if (made.errors().isEmpty()) {
            lines.add(0, Words.of("make.made", file, made.pack().hash()));
            desk.say(Notice.done(Words.of("make.done", file)));
        } else {
            lines.add(0, Words.of("make.errors", made.errors().size()));
            desk.say(Notice.failed(lines.get(0)));
        }
        found.setText(String.join("\n", lines));
        found.setCaretPosition(0);
    }
}
