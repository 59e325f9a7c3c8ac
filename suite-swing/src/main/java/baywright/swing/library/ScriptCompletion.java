package baywright.swing.library;

import baywright.editor.Completion;
import baywright.editor.Known;
import baywright.editor.Proposal;
import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Point;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.fife.ui.autocomplete.AbstractCompletion;
import org.fife.ui.autocomplete.AutoCompletion;
import org.fife.ui.autocomplete.CompletionProvider;
import org.fife.ui.autocomplete.CompletionProviderBase;
import org.fife.ui.autocomplete.ParameterizedCompletion;

/** Shows what the core proposes at the caret; choosing one hands it to whoever owns the text. */
final class ScriptCompletion extends AutoCompletion {

    private static final int WIDTH = 560;
    private static final int HEIGHT = 240;

    private final transient Consumer<Proposal> chosen;

    /** @param known asked anew each time */
    ScriptCompletion(Supplier<Known> known, Consumer<Proposal> chosen) {
        super(new Provider(known));
        this.chosen = chosen;
        setAutoCompleteSingleChoices(false);
        setShowDescWindow(false);
        setParameterAssistanceEnabled(false);
        setChoicesWindowSize(UIScale.scale(WIDTH), UIScale.scale(HEIGHT));
        setListCellRenderer(new Row());
    }

    @Override
    protected void insertCompletion(org.fife.ui.autocomplete.Completion completion, boolean typed) {
        hidePopupWindow();
        chosen.accept(((Offered) completion).proposal);
    }

    /** What the list shows. */
    static final class Offered extends AbstractCompletion {
        private final transient Proposal proposal;

        Offered(CompletionProvider provider, Proposal proposal) {
            super(provider);
            this.proposal = proposal;
        }

        Proposal proposal() {
            return proposal;
        }

        @Override
        public String getAlreadyEntered(JTextComponent text) {
            return begun(text, proposal);
        }

        @Override
        public String getInputText() {
            return proposal.label();
        }

        @Override
        public String getReplacementText() {
            return proposal.edit().with();
        }

        @Override
        public String getSummary() {
            return null;
        }
    }

    private static String begun(JTextComponent text, Proposal proposal) {
        try {
            int from = Math.min(proposal.edit().from(), text.getCaretPosition());
            return text.getDocument().getText(from, text.getCaretPosition() - from);
        } catch (BadLocationException e) {
            return "";
        }
    }

    private static final class Provider extends CompletionProviderBase {
        private final transient Supplier<Known> known;

        Provider(Supplier<Known> known) {
            this.known = known;
        }

        @Override
        protected List<org.fife.ui.autocomplete.Completion> getCompletionsImpl(JTextComponent text) {
            return Completion.at(text.getText(), text.getCaretPosition(), known.get()).stream()
                    .<org.fife.ui.autocomplete.Completion>map(p -> new Offered(this, p))
                    .toList();
        }

        @Override
        public String getAlreadyEnteredText(JTextComponent text) {
            List<org.fife.ui.autocomplete.Completion> all = getCompletionsImpl(text);
            return all.isEmpty() ? "" : all.get(0).getAlreadyEntered(text);
        }

        @Override
        public List<org.fife.ui.autocomplete.Completion> getCompletionsAt(JTextComponent text, Point at) {
            return List.of();
        }

        @Override
        public List<ParameterizedCompletion> getParameterizedCompletions(JTextComponent text) {
            return List.of();
        }
    }

    /** The word, what it is, and what it means. */
    private static final class Row extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        private final JPanel panel = new JPanel(new MigLayout("insets 2 8 2 8", "[]unrel[]unrel[grow, fill]"));
        private final JLabel word = new JLabel();
        private final JLabel kind = new JLabel();
        private final JLabel detail = new JLabel();

        Row() {
            for (JLabel label : List.of(word, kind, detail)) {
                label.putClientProperty("html.disable", true);
                panel.add(label, "wmin 0");
            }
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            Proposal proposal = ((Offered) value).proposal();
            word.setText(proposal.label());
            kind.setText(proposal.kind());
            int line = proposal.detail().indexOf('\n');
            detail.setText(line < 0 ? proposal.detail() : proposal.detail().substring(0, line));
            panel.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
            word.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
            kind.setForeground(selected ? list.getSelectionForeground() : Colours.of("faint"));
            detail.setForeground(selected ? list.getSelectionForeground() : Colours.of("faint"));
            panel.getAccessibleContext()
                    .setAccessibleName(proposal.label() + ", " + proposal.kind() + ", " + proposal.detail());
            return panel;
        }
    }
}
