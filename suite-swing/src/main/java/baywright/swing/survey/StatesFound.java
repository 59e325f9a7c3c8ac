package baywright.swing.survey;

import baywright.library.State;
import baywright.swing.api.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** States that were found, each with a button that takes it away, and a choice of further ones. */
final class StatesFound extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts;
    private final transient Consumer<List<String>> takes;
    private transient List<String> found = List.of();
    private transient List<State> known = List.of();
    private final JPanel rows = new JPanel(new MigLayout("insets 0, wrap 2, gap 4 2", "[grow,fill,80::][]"));
    private final JComboBox<String> more = new JComboBox<>();
    private boolean showing;

    StatesFound(Texts texts, Consumer<List<String>> takes) {
        super(new MigLayout("insets 0, wrap 1, gap 0 4", "[grow,fill]"));
        this.texts = texts;
        this.takes = takes;
        setOpaque(false);
        rows.setOpaque(false);
        more.getAccessibleContext().setAccessibleName(texts.of("states.more"));
        more.addActionListener(e -> {
            if (!showing && more.getSelectedIndex() > 0) {
                add(known.get(more.getSelectedIndex() - 1).id());
            }
        });
        add(rows, "hidemode 3");
        add(more, "wmin 60");
    }

    /** Shows what was found, and of the library's states those that may be found here. */
    void show(List<String> states, List<State> may, Map<String, State> all) {
        showing = true;
        found = List.copyOf(states);
        known = may.stream().filter(s -> !states.contains(s.id())).toList();
        rows.removeAll();
        for (String state : found) {
            String words = all.containsKey(state) ? words(all.get(state)) : state;
            JLabel label = new JLabel(words);
            label.putClientProperty("html.disable", true);
            JButton away = new JButton("\u00D7");
            away.putClientProperty("JButton.buttonType", "toolBarButton");
            away.getAccessibleContext().setAccessibleName(texts.of("states.away", words));
            away.addActionListener(e ->
                    takes.accept(found.stream().filter(s -> !s.equals(state)).toList()));
            rows.add(label, "wmin 0");
            rows.add(away);
        }
        rows.setVisible(!found.isEmpty());
        more.removeAllItems();
        more.addItem(texts.of("states.more"));
        known.forEach(s -> more.addItem(Plain.text(words(s))));
        showing = false;
        revalidate();
        repaint();
    }

    private static String words(State state) {
        return state.id().replace('-', ' ') + " – " + state.means();
    }

    /** Adds a state as a user does. */
    void add(String state) {
        List<String> all = new ArrayList<>(found);
        all.add(state);
        takes.accept(all);
    }
}
