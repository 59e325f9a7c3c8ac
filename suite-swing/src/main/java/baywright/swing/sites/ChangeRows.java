package baywright.swing.sites;

import baywright.share.LibraryChange;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.swing.table.AbstractTableModel;

/** What a pack changes, each with a box: it is wanted or left out. What changes only with something else has no box. */
final class ChangeRows extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    static final int WANTED = 0;
    static final int KIND = 1;
    static final int NAME = 2;

    private final transient Runnable chosen;
    private transient SortedMap<String, LibraryChange> known = new TreeMap<>();
    private transient List<LibraryChange> rows = List.of();
    private transient Set<String> offered = Set.of();
    private final transient Set<String> refused = new HashSet<>();

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
        rows = new ArrayList<>(known.values());
        fireTableDataChanged();
    }

    LibraryChange row(int row) {
        return rows.get(row);
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
        return column == WANTED && offered.contains(rows.get(row).name());
    }

    @Override
    public Object getValueAt(int row, int column) {
        LibraryChange change = rows.get(row);
        return switch (column) {
            case WANTED -> !refused.contains(change.name());
            case KIND ->
                offered.contains(change.name())
                        ? Words.of("kind", change.kind())
                        : Words.of("kind.along", Words.of("kind", change.kind()));
            default -> change.name();
        };
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        String name = rows.get(row).name();
        boolean moved = Boolean.TRUE.equals(value) ? refused.remove(name) : refused.add(name);
        if (moved) {
            fireTableRowsUpdated(row, row);
            chosen.run();
        }
    }
}
