package baywright.swing.shell;

import baywright.library.Stage;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Texts;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.TonedLabel;
import baywright.workspace.Job;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** Type what you want, choose with the arrows, Enter does it: actions, jobs and stages by name. */
final class WishField extends JTextField {

    private static final long serialVersionUID = 1L;
    private static final int MOST = 60;
    private static final int ROWS = 10;

    private final transient Texts texts = Texts.beside(WishField.class, "texts");
    private final transient Desk desk;
    private final transient Supplier<List<SuiteAction>> actions;
    private final DefaultListModel<Wish> model = new DefaultListModel<>();
    private final JList<Wish> list = new JList<>(model);
    private final JPopupMenu popup = new JPopupMenu();

    /**
     * Something that can be wished.
     *
     * @param title what it is
     * @param beside its keys, or which kind of thing it is
     * @param does  does it
     */
    record Wish(String title, String beside, Runnable does) {}

    WishField(Desk desk, Supplier<List<SuiteAction>> actions) {
        this.desk = desk;
        this.actions = actions;
        putClientProperty("JTextField.placeholderText", texts.of("wish.placeholder"));
        putClientProperty("JTextField.showClearButton", true);
        getAccessibleContext().setAccessibleName(texts.of("wish.placeholder"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFocusable(false);
        list.setCellRenderer(new Row());
        list.getAccessibleContext().setAccessibleName(texts.of("wish.name"));
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        popup.setFocusable(false);
        popup.add(scroll);
        getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                offer();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                offer();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                offer();
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                popup.setVisible(false);
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                grant();
            }
        });
        key("DOWN", () -> move(1));
        key("UP", () -> move(-1));
        key("ENTER", this::grant);
        key("ESCAPE", this::leave);
    }

    private void key(String key, Runnable does) {
        getInputMap().put(KeyStroke.getKeyStroke(key), "wish " + key);
        getActionMap().put("wish " + key, new DoAction(does));
    }

    private void move(int by) {
        if (!popup.isVisible()) {
            offer();
        } else if (!model.isEmpty()) {
            int at = Math.floorMod(list.getSelectedIndex() + by, model.size());
            list.setSelectedIndex(at);
            list.ensureIndexIsVisible(at);
        }
    }

    /** What fits what is typed, the best first. */
    List<Wish> wishes() {
        List<Wish> all = new ArrayList<>();
        // an action with two keys is two actions, and one wish
        Set<String> titles = new HashSet<>();
        for (SuiteAction action : actions.get()) {
            if (action.enabled().test(desk.state()) && titles.add(action.title())) {
                all.add(new Wish(
                        action.title(),
                        action.key().map(KeyNames::of).orElse(""),
                        () -> ShellActions.run(action, desk)));
            }
        }
        desk.state().shop().ifPresent(shop -> {
            for (Job job : shop.jobs()) {
                all.add(new Wish(job.title(), texts.of("wish.job"), () -> desk.choose(job.id())));
            }
            for (Stage stage : shop.site().library().stages()) {
                all.add(new Wish(stage.title(), texts.of("wish.stage"), () -> desk.go(Destination.stage(stage.id()))));
            }
        });
        return Ranking.best(getText(), all, Wish::title).stream().limit(MOST).toList();
    }

    private void offer() {
        model.clear();
        model.addAll(wishes());
        if (model.isEmpty() || !isShowing()) {
            popup.setVisible(false);
            return;
        }
        list.setSelectedIndex(0);
        list.setVisibleRowCount(Math.min(ROWS, model.size()));
        popup.setPopupSize(new Dimension(
                Math.max(getWidth(), UIScale.scale(360)),
                list.getPreferredScrollableViewportSize().height + UIScale.scale(8)));
        if (!popup.isVisible()) {
            popup.show(this, 0, getHeight());
        }
        list.ensureIndexIsVisible(0);
    }

    /** Does what is chosen. */
    void grant() {
        Wish wish = list.getSelectedValue();
        leave();
        if (wish != null) {
            wish.does().run();
        }
    }

    private void leave() {
        popup.setVisible(false);
        setText("");
        popup.setVisible(false);
        transferFocus();
    }

    private static final class Row extends JPanel implements ListCellRenderer<Wish> {

        private static final long serialVersionUID = 1L;

        private final JLabel title = new JLabel();
        private final TonedLabel beside = new TonedLabel("", "faint");

        Row() {
            super(new MigLayout("insets 3 10 3 10", "[grow, fill]unrel[]"));
            title.putClientProperty("html.disable", true);
            add(title, "wmin 0");
            add(beside);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Wish> list, Wish wish, int index, boolean chosen, boolean focus) {
            setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
            title.setForeground(chosen ? list.getSelectionForeground() : list.getForeground());
            title.setText(wish.title());
            beside.tone(chosen ? null : "faint", list.getSelectionForeground());
            beside.setText(wish.beside());
            getAccessibleContext().setAccessibleName(wish.title() + ", " + wish.beside());
            return this;
        }

        /** A renderer lives outside the window and hears of a new look only here. */
        @Override
        public void updateUI() {
            super.updateUI();
            if (title != null) {
                title.updateUI();
                beside.updateUI();
            }
        }
    }
}
