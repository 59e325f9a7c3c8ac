package baywright.swing.sites;

import baywright.pack.SignerKey;
import baywright.pack.TrustList;
import baywright.share.TakenPack;
import baywright.swing.api.Desk;
import baywright.swing.parts.SectionHeading;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;

/** The packs that a shop has taken, what it has made of them, and the way back. */
final class PacksPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int TEXT = 140;

    private final transient Desk desk;
    private final Rows rows = new Rows();
    private final JTable table = Plain.table(rows, Words.of("packs"));
    private final JTextArea own = Plain.reading(Words.of("packs.own"));
    private final JButton back;
    private transient Shelf shelf = Shelf.EMPTY;

    PacksPart(Desk desk, Runnable choose, Runnable takeBack) {
        super(new MigLayout("insets 12 16 12 16, wrap 1, gap 0 6", "[grow, fill]"));
        this.desk = desk;
        back = Plain.button("packs.back", takeBack);
        JButton more = Plain.button("packs.choose", choose);
        more.putClientProperty("FlatLaf.styleClass", "primary");
        add(new SectionHeading(Words.of("packs"), table));
        add(Plain.scroll(table, 0), "growy, pushy, hmin 60");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8"));
        buttons.add(more);
        buttons.add(back);
        add(buttons);
        add(new SectionHeading(Words.of("packs.own"), own), "gaptop 6");
        add(Plain.scroll(own, TEXT), "hmin 40");
        table.getSelectionModel().addListSelectionListener(e -> showOwn());
    }

    void show(Shelf now, boolean unsaved) {
        boolean other = !now.equals(shelf);
        shelf = now;
        if (other) {
            rows.fireTableDataChanged();
            if (rows.getRowCount() > 0) {
                table.setRowSelectionInterval(0, 0);
            }
            showOwn();
        }
        back.setEnabled(now.undo() && !unsaved);
    }

    JTable table() {
        return table;
    }

    String own() {
        return own.getText();
    }

    private void showOwn() {
        int row = table.getSelectedRow();
        if (row < 0 || row >= rows.getRowCount()) {
            own.setText("");
            return;
        }
        TakenPack pack = shelf.lock().packs().get(row);
        List<String> names = shelf.own().getOrDefault(pack.id(), List.of());
        String text = names.isEmpty() ? Words.of("packs.own.none") : String.join("\n", names);
        own.setText(
                pack.leftOut().isEmpty()
                        ? text
                        : text + "\n" + Words.of("packs.left-out", String.join(", ", pack.leftOut())));
        own.setCaretPosition(0);
    }

    private String signer(TakenPack pack) {
        return pack.consent()
                .map(c -> Words.of("packs.consent", c.by(), c.why()))
                .orElseGet(() -> pack.signer().map(this::name).orElse(""));
    }

    private String name(SignerKey key) {
        Optional<TrustList.Trusted> known =
                shelf.trusted().stream().filter(t -> t.key().equals(key)).findFirst();
        return known.map(TrustList.Trusted::name).orElseGet(key::fingerprint);
    }

    private final class Rows extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return shelf.lock().packs().size();
        }

        @Override
        public int getColumnCount() {
            return 5;
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("packs.column." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            TakenPack pack = shelf.lock().packs().get(row);
            return switch (column) {
                case 0 -> pack.id();
                case 1 -> pack.version().toString();
                case 2 -> signer(pack);
                case 3 -> desk.readout().moment(LocalDateTime.ofInstant(pack.at(), ZoneId.systemDefault()));
                default ->
                    Words.of(
                            "packs.changed",
                            shelf.own().getOrDefault(pack.id(), List.of()).size(),
                            pack.leftOut().size());
            };
        }
    }
}
