package baywright.swing.plan;

import baywright.library.Family;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.swing.parts.DoAction;
import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.datatransfer.Transferable;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.TransferHandler;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The library's stages by family, with a search. Enter, or a double click, adds the chosen one; it can be dragged too. */
final class StageList extends JPanel {

    private static final long serialVersionUID = 1L;

    private final JTextField search = new JTextField();
    private final DefaultTreeModel model = new DefaultTreeModel(new DefaultMutableTreeNode());
    private final JTree tree = new JTree(model);
    private final transient Consumer<String> add;
    private transient Optional<Library> library = Optional.empty();

    /** {@code add} gets the id of a stage. */
    StageList(Consumer<String> add) {
        super(new MigLayout("insets 8, gap 8, wrap 1", "[grow, fill]", "[][grow, fill]"));
        this.add = add;
        search.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, Words.of("stages.search"));
        search.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        search.getAccessibleContext().setAccessibleName(Words.of("stages.search"));
        search.getDocument().addDocumentListener(new Filtering());
        tree.setRootVisible(false);
        tree.setShowsRootHandles(true);
        tree.getSelectionModel().setSelectionMode(TreeSelectionModel.SINGLE_TREE_SELECTION);
        tree.getAccessibleContext().setAccessibleName(Words.of("stages.name"));
        tree.setCellRenderer(new Cell());
        tree.setToggleClickCount(1);
        tree.setDragEnabled(!GraphicsEnvironment.isHeadless());
        tree.setTransferHandler(new Dragging());
        tree.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    addChosen();
                }
            }
        });
        key(tree, "ENTER", this::addChosen);
        key(search, "ENTER", this::addFirst);
        key(search, "DOWN", tree::requestFocusInWindow);
        JScrollPane scroll = new JScrollPane(tree);
        add(search);
        add(scroll, "hmin 0, wmin 0");
    }

    private static void key(JComponent on, String keys, Runnable does) {
        on.getInputMap().put(KeyStroke.getKeyStroke(keys), keys);
        on.getActionMap().put(keys, new DoAction(does));
    }

    JTextField search() {
        return search;
    }

    JTree tree() {
        return tree;
    }

    /** Shows a library; the same one again does nothing. */
    void show(Optional<Library> now) {
        boolean same = now.isPresent() && now.equals(library);
        if (!same) {
            library = now;
            fill();
        }
    }

    private void fill() {
        String wanted = search.getText().strip().toLowerCase(Locale.ROOT);
        DefaultMutableTreeNode root = new DefaultMutableTreeNode();
        library.ifPresent(lib -> {
            for (Family family : lib.families()) {
                List<Stage> stages = lib.stages().stream()
                        .filter(s -> s.family().equals(family.id()))
                        .filter(s -> matches(s, family, wanted))
                        .toList();
                if (!stages.isEmpty()) {
                    DefaultMutableTreeNode node = new DefaultMutableTreeNode(family.title());
                    stages.forEach(s -> node.add(new DefaultMutableTreeNode(s, false)));
                    root.add(node);
                }
            }
        });
        model.setRoot(root);
        if (!wanted.isEmpty()) {
            for (int row = 0; row < tree.getRowCount(); row++) {
                tree.expandRow(row);
            }
        }
    }

    private static boolean matches(Stage stage, Family family, String wanted) {
        String text = stage.title() + " " + stage.id() + " " + stage.about() + " " + family.title();
        return wanted.isEmpty() || text.toLowerCase(Locale.ROOT).contains(wanted);
    }

    /** Id of the chosen stage. */
    Optional<String> chosen() {
        TreePath path = tree.getSelectionPath();
        return path != null
                        && ((DefaultMutableTreeNode) path.getLastPathComponent()).getUserObject() instanceof Stage stage
                ? Optional.of(stage.id())
                : Optional.empty();
    }

    private void addChosen() {
        Optional<String> stage = chosen();
        if (stage.isPresent()) {
            add.accept(stage.get());
        } else if (tree.getSelectionPath() != null) {
            tree.expandPath(tree.getSelectionPath());
        }
    }

    /** Enter in the search adds the only stage that it leaves. */
    private void addFirst() {
        DefaultMutableTreeNode root = (DefaultMutableTreeNode) model.getRoot();
        if (root.getLeafCount() == 1 && root.getFirstLeaf().getUserObject() instanceof Stage stage) {
            add.accept(stage.id());
        } else {
            tree.requestFocusInWindow();
            tree.setSelectionRow(Math.min(1, tree.getRowCount() - 1));
        }
    }

    private final class Filtering implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            fill();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            fill();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            fill();
        }
    }

    private final class Dragging extends TransferHandler {
        private static final long serialVersionUID = 1L;

        @Override
        public int getSourceActions(JComponent from) {
            return COPY_OR_MOVE;
        }

        @Override
        protected Transferable createTransferable(JComponent from) {
            return chosen().map(StepDrop::stage).orElse(null);
        }
    }

    private static final class Cell extends DefaultTreeCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getTreeCellRendererComponent(
                JTree in, Object value, boolean chosen, boolean open, boolean leaf, int row, boolean focus) {
            Object of = ((DefaultMutableTreeNode) value).getUserObject();
            putClientProperty("html.disable", true);
            String text = of instanceof Stage stage ? stage.title() : String.valueOf(of);
            super.getTreeCellRendererComponent(in, text, chosen, open, leaf, row, focus);
            setIcon(null);
            setToolTipText(of instanceof Stage stage && !stage.about().isEmpty() ? stage.about() : null);
            return this;
        }
    }
}
