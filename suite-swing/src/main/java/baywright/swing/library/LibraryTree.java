package baywright.swing.library;

import baywright.plan.Severity;
import baywright.swing.api.Texts;
import baywright.swing.library.LibraryContents.Entry;
import baywright.swing.library.LibraryContents.Grade;
import baywright.swing.library.LibraryContents.Group;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.event.TreeExpansionEvent;
import javax.swing.event.TreeWillExpandListener;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Everything that the scripts declare, with a field to search it. */
final class LibraryTree extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts;
    private final JTextField search = new JTextField();
    private final DefaultTreeModel model = new DefaultTreeModel(new DefaultMutableTreeNode());
    private final JTree tree = new JTree(model);
    private final TonedLabel count = new TonedLabel(" ", "faint");
    private final transient Consumer<Entry> open;
    private transient LibraryContents contents = new LibraryContents(List.of(), 0);
    private final Set<String> closed = new HashSet<>();
    private boolean filling;

    /** @param open gets the entry that the user chooses */
    LibraryTree(Texts texts, Consumer<Entry> open) {
        super(new MigLayout("insets 8 8 8 4, wrap 1, fill", "[grow, fill]", "[]4[grow, fill]4[]"));
        this.texts = texts;
        this.open = open;
        search.putClientProperty("JTextField.placeholderText", texts.of("tree.search"));
        search.putClientProperty("JTextField.showClearButton", true);
        search.getAccessibleContext().setAccessibleName(texts.of("tree.search"));
        search.getDocument().addDocumentListener(new DocumentListener() {
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
                // styles are no text
            }
        });
        search.getInputMap().put(KeyStroke.getKeyStroke("DOWN"), "to-tree");
        search.getActionMap().put("to-tree", new Doing(this::toTree));
        search.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "first");
        search.getActionMap().put("first", new Doing(this::openFirst));
        tree.setRootVisible(false);
        tree.setShowsRootHandles(true);
        tree.setToggleClickCount(1);
        tree.getSelectionModel().setSelectionMode(TreeSelectionModel.SINGLE_TREE_SELECTION);
        tree.setCellRenderer(new Row());
        tree.getAccessibleContext().setAccessibleName(texts.of("tree.name"));
        tree.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "open");
        tree.getActionMap().put("open", new Doing(() -> chosen().ifPresent(open)));
        tree.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 1) {
                    Optional.ofNullable(tree.getPathForLocation(e.getX(), e.getY()))
                            .flatMap(LibraryTree::entry)
                            .ifPresent(open);
                }
            }
        });
        tree.addTreeWillExpandListener(new TreeWillExpandListener() {
            @Override
            public void treeWillExpand(TreeExpansionEvent event) {
                note(event.getPath(), false);
            }

            @Override
            public void treeWillCollapse(TreeExpansionEvent event) {
                note(event.getPath(), true);
            }
        });
        add(search);
        add(new JScrollPane(tree), "wmin 0, hmin 0");
        add(count, "wmin 0");
    }

    private void note(TreePath path, boolean shut) {
        if (!filling && group(path) instanceof Group group) {
            if (shut) {
                closed.add(key(group));
            } else {
                closed.remove(key(group));
            }
        }
    }

    private static Object group(TreePath path) {
        return ((DefaultMutableTreeNode) path.getLastPathComponent()).getUserObject();
    }

    private static String key(Group group) {
        return group.kind() + " " + group.title();
    }

    JTextField search() {
        return search;
    }

    JTree tree() {
        return tree;
    }

    /** Shows other contents; what is open and chosen stays so. */
    void show(LibraryContents now) {
        boolean first = contents.groups().isEmpty();
        boolean same = search.getText().isBlank() && looks(contents).equals(looks(now));
        contents = now;
        if (same) {
            return;
        }
        if (first) {
            now.groups().stream().filter(g -> !g.kind().equals("stage")).forEach(g -> closed.add(key(g)));
        }
        fill();
    }

    /** What of the contents is to be seen; lines move with every key. */
    private static List<List<Object>> looks(LibraryContents of) {
        return of.groups().stream()
                .flatMap(g -> g.entries().stream()
                        .map(e -> List.<Object>of(g.kind(), g.title(), e.kind(), e.id(), e.title(), e.grade())))
                .toList();
    }

    private void fill() {
        filling = true;
        Optional<Entry> before = chosen();
        LibraryContents found = contents.found(search.getText());
        DefaultMutableTreeNode root = new DefaultMutableTreeNode();
        List<TreePath> opened = new ArrayList<>();
        for (Group group : found.groups()) {
            DefaultMutableTreeNode node = new DefaultMutableTreeNode(group);
            group.entries().forEach(e -> node.add(new DefaultMutableTreeNode(e, false)));
            root.add(node);
            if (!search.getText().isBlank() || !closed.contains(key(group))) {
                opened.add(new TreePath(new Object[] {root, node}));
            }
        }
        model.setRoot(root);
        opened.forEach(tree::expandPath);
        count.setText(
                search.getText().isBlank()
                        ? texts.of("tree.count", contents.count())
                        : texts.of("tree.found", found.count(), contents.count()));
        before.ifPresent(e -> select(e.kind(), e.id()));
        filling = false;
    }

    /** Selects an entry without opening it. */
    void select(String kind, String id) {
        Enumeration<?> all = ((DefaultMutableTreeNode) model.getRoot()).depthFirstEnumeration();
        while (all.hasMoreElements()) {
            DefaultMutableTreeNode node = (DefaultMutableTreeNode) all.nextElement();
            if (node.getUserObject() instanceof Entry entry
                    && entry.kind().equals(kind)
                    && entry.id().equals(id)) {
                TreePath path = new TreePath(node.getPath());
                tree.setSelectionPath(path);
                tree.scrollPathToVisible(path);
                return;
            }
        }
    }

    Optional<Entry> chosen() {
        return Optional.ofNullable(tree.getSelectionPath()).flatMap(LibraryTree::entry);
    }

    private static Optional<Entry> entry(TreePath path) {
        return ((DefaultMutableTreeNode) path.getLastPathComponent()).getUserObject() instanceof Entry entry
                ? Optional.of(entry)
                : Optional.empty();
    }

    private void toTree() {
        tree.requestFocusInWindow();
        if (tree.getSelectionCount() == 0 && tree.getRowCount() > 0) {
            tree.setSelectionRow(0);
        }
    }

    private void openFirst() {
        contents.found(search.getText()).groups().stream()
                .flatMap(g -> g.entries().stream())
                .findFirst()
                .ifPresent(entry -> {
                    select(entry.kind(), entry.id());
                    open.accept(entry);
                });
    }

    private static final class Doing extends AbstractAction {
        private static final long serialVersionUID = 1L;

        private final transient Runnable does;

        Doing(Runnable does) {
            this.does = does;
        }

        @Override
        public void actionPerformed(ActionEvent e) {
            does.run();
        }
    }

    private final class Row extends DefaultTreeCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTreeCellRendererComponent(
                JTree of, Object value, boolean selected, boolean expanded, boolean leaf, int row, boolean focused) {
            super.getTreeCellRendererComponent(of, "", selected, expanded, leaf, row, focused);
            putClientProperty("html.disable", true);
            setIcon(null);
            Object shown = ((DefaultMutableTreeNode) value).getUserObject();
            if (shown instanceof Group group) {
                String title = group.kind().equals("stage") && !group.title().isEmpty()
                        ? group.title()
                        : texts.of("tree.kind." + group.kind());
                setText(texts.of("tree.group", title, group.entries().size()));
                grade(group.errors() > 0 ? Grade.ERROR : Grade.FINE);
            } else if (shown instanceof Entry entry) {
                setText(entry.shown());
                grade(entry.grade());
                setToolTipText(entry.id());
            }
            return this;
        }

        private void grade(Grade grade) {
            if (grade != Grade.FINE) {
                setIcon(new SeveritySign(grade == Grade.ERROR ? Severity.STOP : Severity.WARN));
                getAccessibleContext()
                        .setAccessibleDescription(texts.of(grade == Grade.ERROR ? "tree.errors" : "tree.warnings"));
            }
        }
    }
}
