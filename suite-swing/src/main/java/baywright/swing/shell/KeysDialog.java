package baywright.swing.shell;

import baywright.swing.api.SuiteAction;
import baywright.swing.api.Texts;
import java.awt.Dimension;
import java.awt.Window;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.DefaultTableModel;

/** All keys that do something just now. */
final class KeysDialog extends JDialog {

    private static final long serialVersionUID = 1L;

    KeysDialog(Window owner, List<SuiteAction> actions) {
        super(owner, ModalityType.APPLICATION_MODAL);
        Texts texts = Texts.beside(KeysDialog.class, "texts");
        setTitle(texts.of("keys.title"));
        DefaultTableModel model = new DefaultTableModel(new Object[] {texts.of("keys.key"), texts.of("keys.what")}, 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        };
        actions.forEach(action ->
                action.key().ifPresent(key -> model.addRow(new Object[] {KeyNames.of(key), action.title()})));
        JTable table = new JTable(model);
        table.setFillsViewportHeight(true);
        table.getAccessibleContext().setAccessibleName(texts.of("keys.title"));
        table.getColumnModel().getColumn(1).setPreferredWidth(300);
        add(new JScrollPane(table));
        getRootPane()
                .registerKeyboardAction(
                        e -> dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        pack();
        setSize(new Dimension(Math.max(getWidth(), 480), Math.max(getHeight(), 360)));
        setLocationRelativeTo(owner);
    }
}
