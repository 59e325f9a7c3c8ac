package baywright.swing.sites;

import baywright.share.LibraryChange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.swing.table.AbstractTableModel;

/**
 * What a pack changes, kind by kind: stages first, what they speak of after them. Each has a box: it is wanted or left out; the box of a
 * kind is for all of it. What changes only with something else has no box of its own.
 */
final class ChangeRows extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    static final int WANTED = 0;
    static final int KIND = 1;
    static final int NAME = 2;

    /** In the order in which they are shown; anything else stands behind them. */
    private static final List<String> GROUPS = List.of("stage", "rule", "goal", "shape", "item");

    private static final String OTHER = "other";
    private static final String FILE = "file";

    private final transient Runnable chosen;
    private transient SortedMap<String, LibraryChange> known = new TreeMap<>();
    private transient List<Row> rows = List.of();
    private transient Set<String> offered = Set.of();
    private final transient Set<String> refused = new HashSet<>();

    /** A change, or the heading of those of one kind. */
    private record Row(String group, Optional<LibraryChange> change) {}

    /** @param chosen told after a box was ticked or cleared */
    ChangeRows(Runnable chosen) {
        this.chosen = chosen;
    }

    void clear() {
        known = new TreeMap<>();
        refused.clear();
        offered = Set.of();
        lay();
    }

    /** Shows what would change now; what is left out stays in sight as it was told before. */
    void show(List<LibraryChange> changes, Set<String> all) {
        Set<String> now = new HashSet<>();
        changes.forEach(c -> now.add(c.name()));
        known.keySet().removeIf(name -> !now.contains(name) && !refused.contains(name));
        changes.forEach(c -> known.put(c.name(), c));
        offered = all;
        lay();
    }

    private void lay() {
        List<Row> all = new ArrayList<>();
        known.values().stream()
                .map(c -> new Row(group(c.name()), Optional.of(c)))
                .sorted(Comparator.comparingInt(r -> rank(r.group())))
                .forEach(row -> {
                    if (all.isEmpty() || !all.get(all.size() - 1).group().equals(row.group())) {
                        all.add(new Row(row.group(), Optional.empty()));
                    }
                    all.add(row);
                });
        rows = List.copyOf(all);
        fireTableDataChanged();
    }

    private static String group(String name) {
        if (name.endsWith(".json") || name.endsWith(".groovy")) {
            return FILE;
        }
        String kind = name.substring(0, Math.max(0, name.indexOf(' ')));
        return GROUPS.contains(kind) ? kind : OTHER;
    }

    private static int rank(String group) {
        int at = GROUPS.indexOf(group);
        return at >= 0 ? at : group.equals(OTHER) ? GROUPS.size() : GROUPS.size() + 1;
    }

    /** The change of a row; empty for a heading. */
    Optional<LibraryChange> row(int row) {
        return rows.get(row).change();
    }

    /** Names of the changes under a heading. */
    List<String> under(int row) {
        return rows.stream()
                .filter(r -> r.group().equals(rows.get(row).group()))
                .flatMap(r -> r.change().stream())
                .map(LibraryChange::name)
                .toList();
    }

    boolean isAllRefused() {
        return !refused.isEmpty() && refused.containsAll(offered);
    }

    /** Names of what is wanted, empty when nothing is left out. */
    Set<String> only() {
        if (refused.isEmpty()) {
            return Set.of();
        }
        Set<String> only = new TreeSet<>(offered);
        only.removeAll(refused);
        return only;
    }

    /** Ticks or clears every box. */
    void setAll(boolean wanted) {
        refused.clear();
        if (!wanted) {
            refused.addAll(offered);
        }
        told();
    }

    private void told() {
        fireTableRowsUpdated(0, Math.max(0, rows.size() - 1));
        chosen.run();
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return 3;
    }

    @Override
    public String getColumnName(int column) {
        return Words.of("changes.column." + column);
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return column == WANTED ? Boolean.class : String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == WANTED && !choosable(row).isEmpty();
    }

    /** What the box of a row chooses. */
    private List<String> choosable(int row) {
        List<String> names = row(row).map(c -> List.of(c.name())).orElseGet(() -> under(row));
        return names.stream().filter(offered::contains).toList();
    }

    @Override
    public Object getValueAt(int row, int column) {
        Optional<LibraryChange> change = row(row);
        if (column == WANTED) {
            List<String> names = choosable(row);
            return names.isEmpty() || !refused.containsAll(names);
        }
        if (change.isEmpty()) {
            return column == KIND
                    ? Words.of("changes.group." + rows.get(row).group())
                    : Words.of("changes.count", under(row).size());
        }
        if (column == NAME) {
            String name = change.get().name();
            int blank = name.indexOf(' ');
            return "  " + (GROUPS.contains(rows.get(row).group()) ? name.substring(blank + 1) : name);
        }
        return offered.contains(change.get().name())
                ? Words.of("kind", change.get().kind())
                : Words.of("kind.along", Words.of("kind", change.get().kind()));
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        List<String> names = choosable(row);
        boolean moved = Boolean.TRUE.equals(value) ? refused.removeAll(names) : refused.addAll(names);
        if (moved) {
            told();
        }
    }
}
