package baywright.swing.survey;

import baywright.library.Fact;
import baywright.swing.api.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A control for each fact that the library lets a survey find: a choice, yes or no, a number. */
final class FactRows extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts;
    private final transient BiConsumer<Fact, String> takes;
    private transient List<Fact> facts = List.of();
    private final transient Map<String, Choice> choices = new LinkedHashMap<>();
    private final transient Map<String, Entry> numbers = new LinkedHashMap<>();
    private boolean showing;

    /** @param takes makes the edit; an empty value takes the fact away, as far as this vehicle or zone says it */
    FactRows(Texts texts, BiConsumer<Fact, String> takes) {
        super(new MigLayout("insets 0, wrap 2, gap 12 8", "[grow,fill,sg,80::][grow,fill,sg,80::]", "[top]"));
        this.texts = texts;
        this.takes = takes;
        setOpaque(false);
    }

    /**
     * Shows facts.
     *
     * @param whose    zone or vehicle that is meant
     * @param shown    which facts
     * @param values   what is said here
     * @param otherwise what holds where nothing is said here
     * @param asWhat   key of the words for that
     */
    void show(
            String whose, List<Fact> shown, Map<String, String> values, Map<String, String> otherwise, String asWhat) {
        if (!shown.equals(facts)) {
            facts = List.copyOf(shown);
            build();
        }
        showing = true;
        for (Fact fact : facts) {
            String value = values.getOrDefault(fact.id(), "");
            String usual = otherwise.getOrDefault(fact.id(), fact.usual());
            String asUsual = usual.isEmpty() ? texts.of("fact.unknown") : texts.of(asWhat, words(fact, usual));
            if (fact.kind() == Fact.Kind.NUMBER) {
                Entry entry = numbers.get(fact.id());
                entry.show(whose, value);
                entry.field().putClientProperty("JTextField.placeholderText", asUsual);
            } else {
                choices.get(fact.id()).show(fact, value, asUsual);
            }
        }
        showing = false;
    }

    private void build() {
        removeAll();
        choices.clear();
        numbers.clear();
        for (Fact fact : facts) {
            if (fact.kind() == Fact.Kind.NUMBER) {
                Entry entry = new Entry(title(fact), 1, text -> takes.accept(fact, number(text)));
                entry.field().setToolTipText(Plain.text(fact.means()));
                numbers.put(fact.id(), entry);
                add(entry, "wmin 0");
            } else {
                Choice choice = new Choice();
                JLabel label = new JLabel(title(fact));
                label.putClientProperty("html.disable", true);
                label.setLabelFor(choice);
                label.setToolTipText(Plain.text(fact.means()));
                choice.getAccessibleContext().setAccessibleName(title(fact));
                choice.getAccessibleContext().setAccessibleDescription(fact.means());
                choice.addActionListener(e -> {
                    if (!showing) {
                        takes.accept(fact, choice.value());
                    }
                });
                choices.put(fact.id(), choice);
                JPanel cell = new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow,fill,60::]"));
                cell.setOpaque(false);
                cell.add(label, "wmin 0");
                cell.add(choice, "wmin 40");
                add(cell, "wmin 0");
            }
        }
        revalidate();
    }

    private String number(String text) {
        String bare = text.strip();
        if (!bare.isEmpty() && !bare.matches("-?[0-9]{1,9}(\\.[0-9]{1,9})?")) {
            throw new IllegalArgumentException(texts.of("fact.number", bare));
        }
        return bare;
    }

    /** A fact's name as words. */
    static String title(Fact fact) {
        String words = fact.id().replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private String words(Fact fact, String value) {
        return switch (fact.kind()) {
            case YES_NO -> texts.of(value.equals("true") ? "yes" : "no");
            case CHOICE -> value.replace('-', ' ');
            case NUMBER -> value;
        };
    }

    /** Chooses a value as a user does. */
    void choose(String fact, String value) {
        choices.get(fact).setSelectedItem(value);
    }

    Entry number(Fact fact) {
        return numbers.get(fact.id());
    }

    private final class Choice extends JComboBox<String> {

        private static final long serialVersionUID = 1L;

        private transient List<String> values = List.of();

        void show(Fact fact, String value, String asUsual) {
            List<String> all = new ArrayList<>(List.of(""));
            all.addAll(fact.kind() == Fact.Kind.YES_NO ? List.of("true", "false") : fact.choices());
            if (!all.contains(value)) {
                all.add(value);
            }
            values = all;
            removeAllItems();
            addItem(asUsual);
            all.stream().skip(1).forEach(v -> addItem(Plain.text(words(fact, v))));
            setSelectedIndex(all.indexOf(value));
        }

        String value() {
            return getSelectedIndex() < 0 ? "" : values.get(getSelectedIndex());
        }
    }
}
