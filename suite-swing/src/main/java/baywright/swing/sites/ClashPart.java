package baywright.swing.sites;

import baywright.library.StageChangeText;
import baywright.share.Clash;
import baywright.share.Clash.Side;
import baywright.share.Taking;
import baywright.swing.parts.SectionHeading;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;

/** What both sides have changed, each in its own way, and whose is taken. */
final class ClashPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int TABLE = 110;
    private static final int TEXT = 62;

    private final transient Runnable decided;
    private final transient StageChangeText sentences;
    private final transient Map<String, Side> sides = new HashMap<>();
    private final Rows rows = new Rows();
    private final JTable table = Plain.table(rows, Words.of("clashes"));
    private final JTextArea before = Plain.reading(Words.of("clash.before"));
    private final JTextArea ours = Plain.reading(Words.of("clash.ours"));
    private final JTextArea theirs = Plain.reading(Words.of("clash.theirs"));
    private final JTextArea stake = Plain.reading(Words.of("clash.stake"));
    private final JButton keep;
    private final JButton take;
    private final JButton open;
    private final JButton back;
    private final transient Deque<Map<String, Side>> earlier = new ArrayDeque<>();
    private transient Optional<Taking> taking = Optional.empty();

    /** @param decided told after somebody has decided */
    ClashPart(StageChangeText sentences, Runnable decided) {
        super(new MigLayout("insets 12, wrap 1, gap 0 4", "[grow, fill]"));
        this.sentences = sentences;
        this.decided = decided;
        keep = Plain.button("clash.keep", () -> decide(Side.OURS));
        take = Plain.button("clash.take", () -> decide(Side.THEIRS));
        open = Plain.button("clash.open", this::leaveOpen);
        back = Plain.button("clash.back", this::takeBack);
        Plain.key(table, KeyStroke.getKeyStroke('o'), "ours", () -> decide(Side.OURS));
        Plain.key(table, KeyStroke.getKeyStroke('t'), "theirs", () -> decide(Side.THEIRS));
        Plain.key(table, KeyStroke.getKeyStroke("DELETE"), "open", this::leaveOpen);
        Plain.key(table, KeyStroke.getKeyStroke("BACK_SPACE"), "back", this::takeBack);
        keep.setToolTipText(Words.of("clash.keep.key"));
        take.setToolTipText(Words.of("clash.take.key"));
        open.setToolTipText(Words.of("clash.open.key"));
        back.setToolTipText(Words.of("clash.back.key"));
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        table.getSelectionModel().addListSelectionListener(e -> showChosen());
        add(Plain.scroll(table, TABLE), "growy, pushy, hmin 60");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8"));
        buttons.add(keep);
        buttons.add(take);
        buttons.add(open);
        buttons.add(back);
        add(buttons);
        text("clash.before", before);
        text("clash.ours", ours);
        text("clash.theirs", theirs);
        text("clash.stake", stake);
        showChosen();
    }

    private void text(String key, JTextArea area) {
        add(new SectionHeading(Words.of(key), area), "gaptop 6");
        add(Plain.scroll(area, TEXT), "hmin 40");
    }

    void clear() {
        sides.clear();
        earlier.clear();
        taking = Optional.empty();
        rows.fireTableDataChanged();
    }

    void show(Taking now) {
        List<String> chosen = chosen().stream().map(Clash::name).toList();
        taking = Optional.of(now);
        rows.fireTableDataChanged();
        for (int i = 0; i < rows.getRowCount(); i++) {
            if (chosen.contains(rows.clash(i).name())) {
                table.addRowSelectionInterval(i, i);
            }
        }
        if (table.getSelectedRow() < 0 && rows.getRowCount() > 0) {
            table.setRowSelectionInterval(0, 0);
        }
        showChosen();
    }

    /** Whose is taken, by the names of the clashes. */
    Map<String, Side> sides() {
        return Map.copyOf(sides);
    }

    JTable table() {
        return table;
    }

    /** Decides the clashes that are chosen in the table. */
    void decide(Side side) {
        change(() -> chosen().forEach(clash -> sides.put(clash.name(), side)));
    }

    /** Leaves the clashes that are chosen in the table undecided again. */
    void leaveOpen() {
        change(() -> chosen().forEach(clash -> sides.remove(clash.name())));
    }

    /** Takes the last decision back. */
    void takeBack() {
        if (!earlier.isEmpty()) {
            sides.clear();
            sides.putAll(earlier.pop());
            decided.run();
        }
        showChosen();
    }

    private void change(Runnable does) {
        Map<String, Side> before = Map.copyOf(sides);
        does.run();
        if (!sides.equals(before)) {
            earlier.push(before);
            decided.run();
        }
        showChosen();
    }

    private List<Clash> chosen() {
        List<Clash> chosen = new ArrayList<>();
        for (int row : table.getSelectedRows()) {
            if (row < rows.getRowCount()) {
                chosen.add(rows.clash(row));
            }
        }
        return chosen;
    }

    private void showChosen() {
        List<Clash> chosen = chosen();
        keep.setEnabled(!chosen.isEmpty());
        take.setEnabled(!chosen.isEmpty());
        open.setEnabled(chosen.stream().anyMatch(clash -> sides.containsKey(clash.name())));
        back.setEnabled(!earlier.isEmpty());
        Optional<Clash> one = chosen.stream().findFirst();
        write(before, one.flatMap(Clash::before), one);
        write(ours, one.flatMap(Clash::ours), one);
        write(theirs, one.flatMap(Clash::theirs), one);
        stake.setText(one.map(c -> taking.orElseThrow().atStake(c.declaration()).stream()
                        .map(sentences::of)
                        .collect(Collectors.joining("\n")))
                .orElse(""));
        stake.setCaretPosition(0);
    }

    private static void write(JTextArea area, Optional<Clash.Written> text, Optional<Clash> of) {
        area.setText(text.map(w -> w.text().strip()).orElse(of.isPresent() ? Words.of("clash.nothing") : ""));
        area.setCaretPosition(0);
    }

    private final class Rows extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        Clash clash(int row) {
            return taking.orElseThrow().clashes().get(row);
        }

        @Override
        public int getRowCount() {
            return taking.map(t -> t.clashes().size()).orElse(0);
        }

        @Override
        public int getColumnCount() {
            return 3;
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("clashes.column." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            Clash clash = clash(row);
            return switch (column) {
                case 0 -> clash.decided().map(s -> Words.of("side", s)).orElseGet(() -> Words.of("side.open"));
                case 1 -> clash.name();
                default -> Words.of("clash.kind", clash.kind());
            };
        }
    }
}
