package baywright.swing.shell;

import baywright.swing.api.Desk;
import baywright.swing.api.SuiteAction;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.ActionMap;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;

/** Everything that can be done just now, bound to its keys. What stands first has the keys that two want. */
final class ShellActions {

    private final JRootPane root;
    private final Desk desk;
    private final Supplier<List<SuiteAction>> all;
    private final Set<KeyStroke> bound = new HashSet<>();

    ShellActions(JRootPane root, Desk desk, Supplier<List<SuiteAction>> all) {
        this.root = root;
        this.desk = desk;
        this.all = all;
    }

    List<SuiteAction> all() {
        return all.get();
    }

    /** Binds the keys anew, after another workbench has come to the front. */
    void bind() {
        InputMap keys = root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW);
        ActionMap actions = root.getActionMap();
        bound.forEach(keys::remove);
        bound.clear();
        for (SuiteAction action : all.get()) {
            action.key().filter(bound::add).ifPresent(key -> {
                keys.put(key, "suite " + action.id());
                actions.put("suite " + action.id(), swing(action, desk));
            });
        }
    }

    static void run(SuiteAction action, Desk desk) {
        if (action.enabled().test(desk.state())) {
            commitTyped();
            action.does().accept(desk);
        }
    }

    /** A field takes over what was typed when the keyboard leaves it: what is typed last counts, too. */
    private static void commitTyped() {
        if (KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
                instanceof javax.swing.JFormattedTextField field) {
            try {
                field.commitEdit();
            } catch (java.text.ParseException e) {
                // What cannot be taken over stays in the field, which says so itself.
                return;
            }
        }
    }

    /** An action for buttons. */
    static Action swing(SuiteAction action, Desk desk) {
        AbstractAction swing = new AbstractAction(action.title()) {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                run(action, desk);
            }
        };
        action.icon().ifPresent(icon -> swing.putValue(Action.SMALL_ICON, icon));
        swing.putValue(
                Action.SHORT_DESCRIPTION,
                action.key()
                        .map(key -> action.title() + "  " + KeyNames.of(key))
                        .orElse(action.title()));
        return swing;
    }
}
