package baywright.swing.library;

import baywright.editor.Outline;
import baywright.swing.api.Texts;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import net.miginfocom.swing.MigLayout;

/** The declarations and blocks of the script that is shown. */
final class OutlinePane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final DefaultTreeModel model = new DefaultTreeModel(new DefaultMutableTreeNode());
    private final JTree tree = new JTree(model);
    private transient List<Outline.Entry> shown = List.of();

    OutlinePane(Texts texts, Consumer<Outline.Entry> go) {
        super(new MigLayout("insets 0, fill", "[grow, fill]", "[grow, fill]"));
        tree.setRootVisible(false);
        tree.setShowsRootHandles(true);
        tree.getAccessibleContext().setAccessibleName(texts.of("outline.name"));
        tree.setCellRenderer(new DefaultTreeCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getTreeCellRendererComponent(
                    JTree of, Object value, boolean selected, boolean open, boolean leaf, int row, boolean focused) {
                super.getTreeCellRendererComponent(of, "", selected, open, leaf, row, focused);
                putClientProperty("html.disable", true);
                setIcon(null);
                if (((DefaultMutableTreeNode) value).getUserObject() instanceof Outline.Entry entry) {
                    setText(entry.label().isEmpty() ? entry.word() : entry.word() + "  " + entry.label());
                }
                return this;
            }
        });
        tree.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "go");
        tree.getActionMap().put("go", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                chosen(go);
            }
        });
        tree.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (tree.getPathForLocation(e.getX(), e.getY()) != null) {
                    chosen(go);
                }
            }
        });
        add(new JScrollPane(tree));
    }

    private void chosen(Consumer<Outline.Entry> go) {
        if (tree.getLastSelectedPathComponent() instanceof DefaultMutableTreeNode node
                && node.getUserObject() instanceof Outline.Entry entry) {
            go.accept(entry);
        }
    }

    void show(List<Outline.Entry> entries) {
        if (entries.equals(shown)) {
            return;
        }
        shown = entries;
        DefaultMutableTreeNode root = new DefaultMutableTreeNode();
        entries.forEach(e -> root.add(node(e)));
        model.setRoot(root);
        for (int row = 0; row < tree.getRowCount() && row < entries.size() * 2; row++) {
            tree.expandRow(row);
        }
    }

    private static DefaultMutableTreeNode node(Outline.Entry entry) {
        DefaultMutableTreeNode node = new DefaultMutableTreeNode(entry);
        entry.children().forEach(c -> node.add(node(c)));
        return node;
    }
}
