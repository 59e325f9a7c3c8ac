package baywright.swing.library;

import baywright.editor.Rename;
import baywright.editor.StageText;
import baywright.library.Library;
import baywright.swing.api.Texts;
import baywright.swing.parts.TonedLabel;
import java.awt.Component;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Asks for what a new stage, a copy or a new name needs. */
final class LibraryDialogs {

    private static final int COLUMNS = 32;
    private static final int ROWS = 10;

    private final Texts texts;

    /**
     * What a new stage is to be.
     *
     * @param like id of the stage that it has everything from; empty: none
     */
    record Wish(String id, String title, String family, String like) {}

    private record Choice(String id, String title) {
        @Override
        public String toString() {
            return title;
        }
    }

    LibraryDialogs(Texts texts) {
        this.texts = texts;
    }

    /** An id out of a title: lower case, hyphens between the words. */
    static String idOf(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^[-0-9]+|-+$", "");
        return plain.length() > 60 ? plain.substring(0, 60).replaceAll("-+$", "") : plain;
    }

    Optional<Wish> newStage(Component over, Library library, Predicate<String> taken) {
        JComboBox<Choice> family = new JComboBox<>();
        library.families().forEach(f -> family.addItem(new Choice(f.id(), f.title())));
        JComboBox<Choice> like = new JComboBox<>();
        like.addItem(new Choice("", texts.of("new.like.none")));
        library.stages().forEach(s -> like.addItem(new Choice(s.id(), s.title())));
        return ask(
                over,
                texts.of("do.new"),
                taken,
                List.of(
                        new Field(texts.of("new.family"), family, () -> like.getSelectedIndex() <= 0),
                        new Field(texts.of("new.like"), like, () -> true)),
                (id, title) -> new Wish(id, title, chosen(family), chosen(like)));
    }

    Optional<Wish> copy(Component over, String stage, Predicate<String> taken) {
        return ask(over, texts.of("copy.heading", stage), taken, List.of(), (id, title) -> new Wish(id, title, "", ""));
    }

    private static String chosen(JComboBox<Choice> combo) {
        return combo.getSelectedItem() instanceof Choice choice ? choice.id() : "";
    }

    private record Field(String label, JComponent control, BooleanSupplier enabled) {}

    private interface Makes {
        Wish of(String id, String title);
    }

    private Optional<Wish> ask(
            Component over, String heading, Predicate<String> taken, List<Field> fields, Makes makes) {
        JTextField title = new JTextField(COLUMNS);
        JTextField id = new JTextField(COLUMNS);
        TonedLabel wrong = new TonedLabel(" ", "stop");
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 2, fillx", "[][grow, fill]", "[]8[]"));
        field(panel, texts.of("new.title"), title);
        field(panel, texts.of("new.id"), id);
        for (Field field : fields) {
            field(panel, field.label(), field.control());
            if (field.control() instanceof JComboBox<?> combo) {
                combo.addActionListener(e ->
                        fields.forEach(f -> f.control().setEnabled(f.enabled().getAsBoolean())));
            }
        }
        panel.add(wrong, "span 2, wmin 0");
        boolean[] own = new boolean[1];
        JDialog[] dialog = new JDialog[1];
        List<Wish> wish = new ArrayList<>();
        JButton ok = new JButton(texts.of("new.make"));
        Runnable judge = () -> {
            String why = why(title.getText(), id.getText(), taken);
            wrong.setText(why.isEmpty() ? " " : why);
            ok.setEnabled(why.isEmpty());
        };
        title.getDocument().addDocumentListener(new Typed(() -> {
            if (!own[0]) {
                id.setText(idOf(title.getText()));
                own[0] = false;
            }
            judge.run();
        }));
        id.getDocument().addDocumentListener(new Typed(() -> {
            own[0] = id.isFocusOwner();
            judge.run();
        }));
        ok.addActionListener(e -> {
            wish.add(makes.of(id.getText(), title.getText().strip()));
            dialog[0].dispose();
        });
        judge.run();
        dialog[0] = dialog(over, heading, panel, ok);
        dialog[0].setVisible(true);
        return wish.stream().findFirst();
    }

    /** What is wrong with a title and an id; empty when nothing is. */
    String why(String title, String id, Predicate<String> taken) {
        if (title.isBlank()) {
            return texts.of("new.no-title");
        }
        if (!StageText.isId(id)) {
            return texts.of("new.bad-id");
        }
        return taken.test(id) ? texts.of("new.taken", id) : "";
    }

    /** @param preview the places that change with a new id, or why it cannot be done */
    Optional<String> rename(Component over, Rename.Subject what, UnaryOperator<String> preview) {
        JTextField id = new JTextField(what.id(), COLUMNS);
        JTextArea places = new JTextArea(ROWS, COLUMNS * 2);
        places.setEditable(false);
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 2, fill", "[][grow, fill]", "[]8[grow, fill]"));
        field(panel, texts.of("rename.id", what.kind().word(), what.id()), id);
        JLabel label = new JLabel(texts.of("rename.places"));
        label.setLabelFor(places);
        panel.add(label, "top");
        panel.add(new JScrollPane(places), "wmin 0, hmin 0");
        JButton ok = new JButton(texts.of("rename.do"));
        Runnable judge = () -> {
            boolean other = !id.getText().equals(what.id());
            places.setText(other ? preview.apply(id.getText()) : "");
            places.setCaretPosition(0);
            ok.setEnabled(other && StageText.isId(id.getText()));
        };
        id.getDocument().addDocumentListener(new Typed(judge));
        judge.run();
        List<String> wish = new ArrayList<>();
        JDialog dialog = dialog(over, texts.of("do.rename"), panel, ok);
        ok.addActionListener(e -> {
            wish.add(id.getText());
            dialog.dispose();
        });
        dialog.setVisible(true);
        return wish.stream().findFirst();
    }

    private static void field(JPanel panel, String text, JComponent control) {
        JLabel label = new JLabel();
        label.putClientProperty("html.disable", true);
        label.setText(text);
        label.setLabelFor(control);
        panel.add(label);
        panel.add(control, "wmin 0");
    }

    private JDialog dialog(Component over, String heading, JPanel panel, JButton ok) {
        JDialog dialog =
                new JDialog(SwingUtilities.getWindowAncestor(over), heading, JDialog.ModalityType.DOCUMENT_MODAL);
        JButton cancel = new JButton(texts.of("new.leave"));
        cancel.addActionListener(e -> dialog.dispose());
        JPanel buttons = new JPanel(new MigLayout("insets 0 16 16 16, fillx", "push[][]"));
        buttons.add(cancel);
        buttons.add(ok);
        JPanel all = new JPanel(new MigLayout("insets 0, wrap 1, fill", "[grow, fill]", "[grow, fill][]"));
        all.add(panel);
        all.add(buttons);
        dialog.setContentPane(all);
        dialog.getRootPane().setDefaultButton(ok);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setLocationRelativeTo(over);
        return dialog;
    }
}
