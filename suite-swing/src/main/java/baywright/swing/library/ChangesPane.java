package baywright.swing.library;

import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.library.Stage;
import baywright.library.StageChange;
import baywright.library.StageChangeText;
import baywright.library.StageComparison;
import baywright.script.Place;
import baywright.site.OpenShop;
import baywright.swing.api.Desk;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.swing.parts.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What a stage says otherwise than it did when it was saved, or than another stage, in sentences. */
final class ChangesPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final String STAGES = "stages/";

    private final transient Desk desk;
    private final transient Texts texts;
    private final transient Consumer<Place> go;
    private final JComboBox<Other> others = new JComboBox<>();
    private final ColumnPanel rows = new ColumnPanel(new MigLayout("insets 0, wrap 1, fillx", "[grow, fill]", "[]4[]"));
    private transient Optional<OpenShop> shop = Optional.empty();
    private transient Optional<String> stage = Optional.empty();
    private transient Optional<TaskHandle> running = Optional.empty();
    private transient Map<String, String> savedTexts = Map.of();
    private transient Optional<Library> saved = Optional.empty();
    private transient List<StageChange> changes = List.of();
    private boolean filling;

    /** What a stage is held against; the empty id stands for itself as it was saved. */
    private record Other(String id, String title) {
        @Override
        public String toString() {
            return title;
        }
    }

    private record Compared(Optional<Library> saved, Optional<Stage> before, List<StageChange> changes) {}

    ChangesPane(Desk desk, Texts texts, Consumer<Place> go) {
        super(new MigLayout("insets 8 12 12 12, wrap 2, fill", "[][grow, fill]", "[]8[grow, fill]"));
        this.desk = desk;
        this.texts = texts;
        this.go = go;
        JLabel label = new JLabel(texts.of("changes.against"));
        label.setLabelFor(others);
        add(label);
        add(others, "wmin 0");
        add(rows.scrolled(), "span 2, grow, wmin 0, hmin 0");
        others.addActionListener(e -> {
            if (!filling) {
                compare();
            }
        });
    }

    /** What differs, as last worked out. */
    List<StageChange> changes() {
        return changes;
    }

    /** Holds the stage against another one, or against itself as saved for the empty id. */
    void against(String id) {
        for (int i = 0; i < others.getItemCount(); i++) {
            if (others.getItemAt(i).id().equals(id)) {
                others.setSelectedIndex(i);
            }
        }
    }

    void show(OpenShop now, Optional<String> id) {
        boolean same = shop.map(s -> s.site()
                                        .library()
                                        .hash()
                                        .equals(now.site().library().hash())
                                && s.unsaved().equals(now.unsaved()))
                        .orElse(false)
                && stage.equals(id);
        shop = Optional.of(now);
        stage = id;
        if (!same) {
            fillOthers(now);
            compare();
        }
    }

    private void fillOthers(OpenShop now) {
        filling = true;
        Object before = others.getSelectedItem();
        others.removeAllItems();
        others.addItem(new Other("", texts.of("changes.saved")));
        now.site().library().stages().stream()
                .filter(s -> !Optional.of(s.id()).equals(stage))
                .forEach(s -> others.addItem(new Other(s.id(), s.title())));
        others.setSelectedItem(before);
        if (others.getSelectedIndex() < 0) {
            others.setSelectedIndex(0);
        }
        filling = false;
    }

    private void compare() {
        running.ifPresent(TaskHandle::cancel);
        if (shop.isEmpty() || stage.isEmpty()) {
            say(texts.of("trial.no-stage"));
            return;
        }
        OpenShop now = shop.get();
        String id = stage.get();
        Optional<Stage> after =
                Optional.ofNullable(now.site().library().stageById().get(id));
        if (after.isEmpty()) {
            say(texts.of("examples.not-yet"));
            return;
        }
        String other = others.getSelectedItem() instanceof Other o ? o.id() : "";
        Map<String, String> before = savedTexts(now);
        Optional<Library> kept = before.equals(savedTexts) ? saved : Optional.empty();
        savedTexts = before;
        running = Optional.of(desk.run(new Task<>(
                texts.of("changes.task"),
                progress -> compared(now, after.get(), other, before, kept),
                this::fill,
                fault -> say(texts.of("trial.failed", String.valueOf(fault.getMessage()))))));
    }

    private static Map<String, String> savedTexts(OpenShop now) {
        List<String> names = new ArrayList<>(now.texts().keySet());
        now.unsaved().stream().filter(n -> n.startsWith(STAGES)).forEach(names::add);
        Map<String, String> before = new TreeMap<>();
        names.forEach(n -> now.readText(n).ifPresent(t -> before.put(n.substring(STAGES.length()), t)));
        return before;
    }

    private static Compared compared(
            OpenShop now, Stage after, String other, Map<String, String> before, Optional<Library> kept) {
        Library library = now.site().library();
        if (!other.isEmpty()) {
            Optional<Stage> one = Optional.ofNullable(library.stageById().get(other));
            return new Compared(
                    kept,
                    one,
                    one.map(s -> StageComparison.of(s, after, library.facts())).orElse(List.of()));
        }
        String file = after.place().file();
        if (now.texts().getOrDefault(STAGES + file, "").equals(before.get(file))) {
            return new Compared(kept, Optional.of(after), List.of());
        }
        Library old =
                kept.orElseGet(() -> LibraryLoader.load(before, now.items()).library());
        Optional<Stage> was = Optional.ofNullable(old.stageById().get(after.id()));
        return new Compared(
                Optional.of(old),
                was,
                was.map(s -> StageComparison.of(s, after, library.facts())).orElse(List.of()));
    }

    private void say(String text) {
        changes = List.of();
        rows.removeAll();
        rows.add(new Prose(text), "wmin 0");
        rows.revalidate();
        rows.repaint();
    }

    private void fill(Compared compared) {
        saved = compared.saved();
        if (compared.before().isEmpty()) {
            say(texts.of("changes.new"));
            return;
        }
        if (compared.changes().isEmpty()) {
            say(texts.of("changes.none"));
            return;
        }
        changes = compared.changes();
        rows.removeAll();
        StageChangeText words = new StageChangeText(desk.readout().locale());
        for (StageChange change : changes) {
            LineProse row = new LineProse(words.of(change), () -> change.now().ifPresent(go));
            row.setToolTipText(change.now().isPresent() ? texts.of("trial.trace") : null);
            rows.add(row, "wmin 0");
        }
        rows.revalidate();
        rows.repaint();
    }
}
