package baywright.swing.sites;

import baywright.share.Impact;
import baywright.share.ImpactOfJob;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import com.formdev.flatlaf.util.UIScale;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;

/** What a pack would make of the shop's jobs: as sentence, chart and table, and for the chosen job with its causes. */
final class ImpactPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int TABLE = 150;
    private static final int TEXT = 110;
    private static final int NUMBER = 48;
    private static final int WIDE = 150;

    private final transient Desk desk;
    private final Prose summary = new Prose("");
    private final ImpactChart chart = new ImpactChart();
    private final Rows rows = new Rows();
    private final JTable table = Plain.table(rows, Words.of("impact"));
    private final JTextArea details = Plain.reading(Words.of("impact.details"));
    private final JButton go;
    private transient List<ImpactOfJob> jobs = List.of();
    private transient Optional<ImpactWords> words = Optional.empty();

    ImpactPart(Desk desk) {
        super(new MigLayout("insets 12, wrap 1, gap 0 6, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        go = Plain.button("impact.go", this::goToJob);
        table.getSelectionModel().addListSelectionListener(e -> showChosen());
        table.getColumnModel().getColumn(0).setMaxWidth(UIScale.scale(NUMBER));
        table.getColumnModel().getColumn(1).setPreferredWidth(UIScale.scale(WIDE));
        table.getColumnModel().getColumn(6).setPreferredWidth(UIScale.scale(WIDE));
        Plain.key(table, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "go", this::goToJob);
        add(summary, "wmin 0");
        add(chart);
        add(Plain.scroll(table, TABLE), "growy, pushy, hmin 60");
        add(new SectionHeading(Words.of("impact.details"), details), "gaptop 6");
        add(Plain.scroll(details, TEXT), "hmin 40");
        add(go, "growx 0");
        say("");
    }

    /** Shows a sentence in the place of figures. */
    void say(String text) {
        summary.setText(text);
        jobs = List.of();
        words = Optional.empty();
        lay();
    }

    void show(Impact impact, ImpactWords by) {
        words = Optional.of(by);
        jobs = ImpactWords.bySize(impact);
        summary.setText(by.summary(impact));
        lay();
    }

    private void lay() {
        rows.fireTableDataChanged();
        chart.show(jobs.stream().map(ImpactWords::price).toList());
        if (!jobs.isEmpty()) {
            table.setRowSelectionInterval(0, 0);
        }
        showChosen();
        revalidate();
    }

    String summary() {
        return summary.getText();
    }

    JTable table() {
        return table;
    }

    String details() {
        return details.getText();
    }

    private Optional<ImpactOfJob> chosen() {
        int row = table.getSelectedRow();
        return row < 0 || row >= jobs.size() ? Optional.empty() : Optional.of(jobs.get(row));
    }

    private void showChosen() {
        details.setText(chosen().map(job -> words.orElseThrow().details(job)).orElse(""));
        details.setCaretPosition(0);
        go.setEnabled(chosen().isPresent());
    }

    private void goToJob() {
        chosen().ifPresent(job -> {
            desk.choose(job.job().id());
            desk.go(new Destination("plan", Map.of()));
        });
    }

    private final class Rows extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return jobs.size();
        }

        @Override
        public int getColumnCount() {
            return 7;
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("impact.column." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            ImpactOfJob job = jobs.get(row);
            ImpactWords by = words.orElseThrow();
            return switch (column) {
                case 0 -> Integer.toString(row + 1);
                case 1 -> job.job().title();
                case 2 -> by.proves(job);
                case 3 -> by.handsOn(job.effect().attended());
                case 4 -> by.price(job.effect().price());
                case 5 -> by.priceThen(job);
                default -> by.why(job);
            };
        }
    }
}
