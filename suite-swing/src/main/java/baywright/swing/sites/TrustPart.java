package baywright.swing.sites;

import baywright.pack.SignerKey;
import baywright.pack.TrustList;
import baywright.site.OpenShop;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.WidePanel;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;

/** The user's own keys, and whose packs the shop takes without being asked. */
final class TrustPart extends WidePanel {

    private static final long serialVersionUID = 1L;
    private static final int TABLE = 160;
    private static final int TEXT = 84;

    private final transient Desk desk;
    private final transient Around around;
    private final transient Runnable changed;
    private final JTextArea keys = Plain.reading(Words.of("keys"));
    private final JButton newKey;
    private final Rows rows = new Rows();
    private final JTable table = Plain.table(rows, Words.of("trust"));
    private final JButton withdraw;
    private final JTextField name = new JTextField();
    private final JTextField key = new JTextField();
    private final JTextField by = new JTextField();
    private transient Shelf shelf = Shelf.EMPTY;

    /** @param changed told after keys or list have changed */
    TrustPart(Desk desk, Around around, Runnable changed) {
        super(new MigLayout("insets 12 16 12 16, wrap 1, gap 0 6", "[grow, fill]"));
        this.desk = desk;
        this.around = around;
        this.changed = changed;
        newKey = Plain.button("keys.new", this::makeKey);
        withdraw = Plain.button("trust.withdraw", this::withdraw);
        JButton add = Plain.button("trust.add", this::trust);
        add(new SectionHeading(Words.of("keys"), keys));
        add(new Prose(Words.of("keys.text")), "wmin 0");
        add(Plain.scroll(keys, TEXT));
        add(newKey, "growx 0");
        add(new SectionHeading(Words.of("trust"), table), "gaptop 12");
        add(new Prose(Words.of("trust.text")), "wmin 0");
        add(Plain.scroll(table, TABLE));
        add(withdraw, "growx 0");
        add(new SectionHeading(Words.of("trust.more")), "gaptop 12");
        JPanel form = new JPanel(new MigLayout("insets 0, wrap 2, gap 8 6", "[][grow, fill, 200:480:560]"));
        Plain.field(form, "trust.name", name);
        Plain.field(form, "trust.key", key);
        Plain.field(form, "trust.by", by);
        form.add(add, "skip 1, growx 0");
        add(form, "wmin 0");
        table.getSelectionModel().addListSelectionListener(e -> withdraw.setEnabled(table.getSelectedRow() >= 0));
        withdraw.setEnabled(false);
    }

    void show(Shelf now) {
        boolean other = !now.equals(shelf);
        shelf = now;
        if (other) {
            rows.fireTableDataChanged();
        }
        String text = now.keys().entrySet().stream()
                .map(e -> Words.of(
                        "keys.line",
                        e.getKey(),
                        e.getValue().toString(),
                        e.getValue().fingerprint()))
                .collect(Collectors.joining("\n"));
        keys.setText(text.isEmpty() ? Words.of("keys.none") : text);
        newKey.setEnabled(desk.state()
                .shop()
                .filter(s -> !now.keys().containsKey(s.shop().id()))
                .isPresent());
    }

    /** Fills a key in, for the user to name whose it is. */
    void offer(SignerKey signer) {
        key.setText(signer.toString());
        name.requestFocusInWindow();
    }

    void fill(String who, String publicKey, String whoSays) {
        name.setText(who);
        key.setText(publicKey);
        by.setText(whoSays);
    }

    JTable table() {
        return table;
    }

    String keys() {
        return keys.getText();
    }

    /** Makes a key that is called as the shop. */
    void makeKey() {
        desk.state()
                .shop()
                .map(s -> s.shop().id())
                .ifPresent(id -> Working.run(
                        desk,
                        Words.of("keys.making"),
                        progress -> around.keys().make(id),
                        made -> {
                            desk.say(Notice.done(
                                    Words.of("keys.made", around.keys().fileOf(id))));
                            changed.run();
                        },
                        changed));
    }

    /** Puts on the list whom the fields name. */
    void trust() {
        Optional<SignerKey> signer = SignerKey.of(key.getText().strip());
        String who = name.getText().strip();
        String says = by.getText().strip();
        if (signer.isEmpty() || who.isEmpty() || says.isEmpty()) {
            desk.say(new Notice(
                    Notice.Weight.WARN, Words.of(signer.isEmpty() ? "trust.no-key" : "trust.blank"), Optional.empty()));
            (who.isEmpty() ? name : signer.isEmpty() ? key : by).requestFocusInWindow();
            return;
        }
        LocalDate today = LocalDate.now(around.clock());
        write(
                list -> list.with(new TrustList.Trusted(who, signer.get(), today, says)),
                Words.of("trust.added", who, signer.get().fingerprint()));
    }

    /** Takes whom the chosen row names off the list. */
    void withdraw() {
        int row = table.getSelectedRow();
        if (row >= 0 && row < shelf.trusted().size()) {
            String who = shelf.trusted().get(row).name();
            write(list -> list.without(who), Words.of("trust.withdrawn", who));
        }
    }

    private void write(UnaryOperator<TrustList> change, String told) {
        desk.state()
                .shop()
                .map(OpenShop::folder)
                .ifPresent(folder -> Working.run(
                        desk,
                        Words.of("trust.writing"),
                        progress -> write(folder, change),
                        done -> {
                            fill("", "", by.getText());
                            desk.say(Notice.done(told));
                            changed.run();
                        },
                        changed));
    }

    private static Path write(Path folder, UnaryOperator<TrustList> change) {
        change.apply(TrustList.of(folder)).save(Workspace.open(folder));
        return folder;
    }

    private final class Rows extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return shelf.trusted().size();
        }

        @Override
        public int getColumnCount() {
            return 4;
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("trust.column." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            TrustList.Trusted one = shelf.trusted().get(row);
            return switch (column) {
                case 0 -> one.name();
                case 1 -> one.key().fingerprint();
                case 2 -> desk.readout().day(one.since());
                default -> one.by();
            };
        }
    }
}
