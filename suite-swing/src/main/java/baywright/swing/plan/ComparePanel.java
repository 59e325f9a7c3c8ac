package baywright.swing.plan;

import baywright.money.Quote;
import baywright.plan.FilmBudget;
import baywright.plan.FilmBudget.ZoneBudget;
import baywright.plan.FilmSheet;
import baywright.plan.PlanComparison;
import baywright.plan.PlanComparison.Kind;
import baywright.plan.PlanComparison.Row;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.ZoneChoice;
import baywright.plan.ZoneNames;
import baywright.site.WorkedJob;
import baywright.swing.api.Colours;
import baywright.swing.api.Readout;
import baywright.swing.parts.Prose;
import baywright.swing.parts.TonedLabel;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;

/** Two plans of one job side by side: what they come to, and where their steps differ. */
final class ComparePanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int SIGN = 56;
    private static final int NAMED_ZONES = 3;
    private static final int ROW = 26;

    /**
     * What is compared.
     *
     * @param title      what the right plan is
     * @param notes      what is to be said of it, may be empty
     * @param leftTitle  name of the left plan
     * @param rightTitle name of the right plan
     * @param take       what taking the right plan is called
     * @param doTake     takes it
     */
    record Pair(
            String title,
            List<String> notes,
            String leftTitle,
            WorkedJob left,
            String rightTitle,
            WorkedJob right,
            String take,
            Runnable doTake) {}

    private final transient Pair pair;
    private final transient PlanComparison comparison;
    private final transient Readout readout;
    private final JButton take;
    private final JTable table = new JTable();

    ComparePanel(Pair pair, Readout readout, Runnable close) {
        super(new MigLayout("insets 16, gap 8, wrap 1", "[grow, fill]", ""));
        this.pair = pair;
        this.readout = readout;
        comparison = PlanComparison.of(
                pair.left().job().plan(),
                pair.right().job().plan(),
                pair.left().setting().shape());
        JLabel title = new JLabel();
        title.putClientProperty("html.disable", true);
        title.putClientProperty("FlatLaf.styleClass", "h2");
        title.setText(pair.title());
        JPanel head = new JPanel(new MigLayout("insets 0, gap 8", "[grow, fill][][]"));
        take = new JButton(pair.take());
        take.putClientProperty("JButton.buttonType", "default");
        take.addActionListener(e -> {
            close.run();
            pair.doTake().run();
        });
        JButton back = new JButton(Words.of("compare.back"));
        back.addActionListener(e -> close.run());
        head.add(title, "wmin 0");
        head.add(back);
        head.add(take);
        add(head);
        pair.notes().forEach(note -> add(new Prose(note), "wmin 0"));
        add(figures(), "gaptop 8");
        add(new TonedLabel(Words.of("compare.differences", comparison.differences()), "faint"), "gaptop 8");
        table.setModel(new Rows());
        table.setRowHeight(UIScale.scale(ROW));
        table.getAccessibleContext().setAccessibleName(Words.of("compare.steps"));
        table.setDefaultRenderer(Object.class, new Cell());
        table.getTableHeader().setReorderingAllowed(false);
        table.getColumnModel().getColumn(1).setMaxWidth(UIScale.scale(SIGN));
        table.getColumnModel().getColumn(1).setMinWidth(UIScale.scale(SIGN));
        add(new JScrollPane(table), "hmin 0, wmin 0, push, grow");
        registerKeyboardAction(
                e -> close.run(), javax.swing.KeyStroke.getKeyStroke("ESCAPE"), WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    }

    /** The figures of both below each other. */
    private JPanel figures() {
        JPanel grid = new JPanel(new MigLayout("insets 0, gap 24 4, wrap 6", "[][right][right][right][right][right]"));
        grid.setOpaque(false);
        grid.add(new JLabel(""));
        for (String name : List.of("hands-on", "price", "film", "stops", "warns")) {
            grid.add(new TonedLabel(Words.of("compare." + name), "faint"));
        }
        row(grid, pair.leftTitle(), pair.left());
        row(grid, pair.rightTitle(), pair.right());
        return grid;
    }

    private void row(JPanel grid, String name, WorkedJob worked) {
        JLabel label = new JLabel();
        label.putClientProperty("html.disable", true);
        label.setText(name);
        grid.add(label);
        String none = Words.of("foot.none");
        grid.add(figure(readout.minutes(worked.minutes())));
        grid.add(figure(
                worked.offer() instanceof Quote quote
                        ? readout.money(quote.price().gross())
                        : none));
        Optional<ZoneBudget> film = FilmBudget.of(
                        FilmSheet.of(worked.setting()), worked.work().steps())
                .tightest();
        grid.add(figure(film.map(z -> readout.film(
                        BigDecimal.valueOf(z.thinnest().orElseThrow().mean())))
                .orElse(none)));
        grid.add(figure(Long.toString(count(worked, Severity.STOP))));
        grid.add(figure(Long.toString(count(worked, Severity.WARN))));
    }

    private static JLabel figure(String text) {
        JLabel label = new JLabel(text);
        label.putClientProperty("FlatLaf.styleClass", "figure");
        return label;
    }

    private static long count(WorkedJob worked, Severity severity) {
        return worked.findings().stream().filter(f -> f.severity() == severity).count();
    }

    List<String> notes() {
        return pair.notes();
    }

    PlanComparison comparison() {
        return comparison;
    }

    JButton take() {
        return take;
    }

    JTable table() {
        return table;
    }

    private String step(Optional<Step> step, WorkedJob worked) {
        return step.map(s -> {
                    var shape = worked.setting().shape();
                    var stage = worked.setting().library().stageById().get(s.stage());
                    Function<List<String>, String> zones =
                            z -> new ZoneNames(shape, readout.locale()).of(ZoneChoice.resolve(z, shape), NAMED_ZONES);
                    return Words.of("compare.step", stage == null ? s.stage() : stage.title(), zones.apply(s.zones()));
                })
                .orElse("");
    }

    private final class Rows extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return comparison.rows().size();
        }

        @Override
        public int getColumnCount() {
            return 3;
        }

        @Override
        public String getColumnName(int column) {
            return column == 0 ? pair.leftTitle() : column == 1 ? " " : pair.rightTitle();
        }

        @Override
        public Object getValueAt(int row, int column) {
            Row at = comparison.rows().get(row);
            return switch (column) {
                case 0 -> step(at.left(), pair.left());
                case 1 -> Words.of("sign", at.kind());
                default -> step(at.right(), pair.right());
            };
        }
    }

    private final class Cell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable in, Object value, boolean chosen, boolean focus, int row, int column) {
            putClientProperty("html.disable", true);
            super.getTableCellRendererComponent(in, value, chosen, focus, row, column);
            Kind kind = comparison.rows().get(row).kind();
            setHorizontalAlignment(column == 1 ? SwingConstants.CENTER : SwingConstants.LEADING);
            if (!chosen) {
                setForeground(kind == Kind.SAME ? Colours.of("faint") : in.getForeground());
            }
            setToolTipText(Words.of("sign.word", kind));
            if (column == 1) {
                getAccessibleContext().setAccessibleName(Words.of("sign.word", kind));
            }
            return this;
        }
    }
}
