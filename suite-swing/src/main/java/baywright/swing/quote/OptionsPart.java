package baywright.swing.quote;

import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.money.Refusal;
import baywright.plan.Severity;
import baywright.site.PlanOption;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;

/** Parts of the plan by how much they are wanted, priced beside each other; each can be made the plan. */
final class OptionsPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int[] WIDTHS = {112, 74, 74, 56, 48};
    private static final int EDGE = 3;
    private static final int ROWS = 3;

    /** Columns. */
    private static final int PRICE = 1;

    private static final int MOST = 2;
    private static final int LEFT = 3;
    private static final int LOSS = 4;

    /**
     * A part of the plan worked out.
     *
     * @param loss chance of a loss, empty without a price
     */
    record Choice(PlanOption option, WorkedJob worked, OptionalDouble loss) {}

    private final transient Desk desk;
    private final transient Latest latest;
    private final Rows rows = new Rows();
    private final JTable table = new JTable(rows);
    private final Prose about = new Prose("");
    private final JButton take;
    private transient WorkedJob whole;
    private transient Figures figures;
    private transient List<Choice> choices = List.of();

    OptionsPart(Desk desk) {
        super(new MigLayout("insets 8, gap 4, wrap 1", "[grow, fill]", ""));
        this.desk = desk;
        latest = new Latest(desk);
        Action taking = Words.action("options.take", this::take);
        take = new JButton(taking);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setDefaultRenderer(Object.class, new Cell());
        table.getTableHeader().setReorderingAllowed(false);
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "take");
        table.getActionMap().put("take", taking);
        table.getSelectionModel().addListSelectionListener(e -> tell());
        table.setPreferredScrollableViewportSize(new Dimension(0, table.getRowHeight() * ROWS));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setVerticalScrollBarPolicy(JScrollPane.VERTICAL_SCROLLBAR_NEVER);
        add(new SectionHeading(Words.of("options.heading"), table));
        add(scroll, "wmin 0");
        add(about, "wmin 0");
        add(take, "growx 0, left");
        tell();
    }

    /** Works out the parts of a job's plan; what was worked out for an older one is left. */
    void show(Site site, WorkedJob worked, Figures written) {
        whole = worked;
        figures = written;
        rows.fireTableDataChanged();
        about.setText(Words.of("options.looking"));
        latest.run(
                Words.of("options.task"),
                progress -> {
                    List<Choice> done = new ArrayList<>();
                    List<PlanOption> options = PlanOption.of(worked.job().plan());
                    for (PlanOption option : options) {
                        if (progress.cancelled()) {
                            return done;
                        }
                        done.add(choice(site, worked, option));
                        progress.at((double) done.size() / options.size());
                    }
                    return done;
                },
                this::show,
                () -> about.setText(Words.of("stopped")));
    }

    private static Choice choice(Site site, WorkedJob worked, PlanOption option) {
        WorkedJob part = option.plan().equals(worked.job().plan())
                ? worked
                : site.work(worked.job().withPlan(option.plan()));
        OptionalDouble loss = part.offer() instanceof Quote quote
                ? OptionalDouble.of(site.outlook(part, quote, Outlook.usual())
                        .lossAt(quote.price().net()))
                : OptionalDouble.empty();
        return new Choice(option, part, loss);
    }

    private void show(List<Choice> done) {
        int chosen = table.getSelectedRow();
        choices = List.copyOf(done);
        rows.fireTableStructureChanged();
        for (int column = 0; column < WIDTHS.length; column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(UIScale.scale(WIDTHS[column]));
        }
        if (chosen >= 0 && chosen < choices.size()) {
            table.setRowSelectionInterval(chosen, chosen);
        }
        table.setPreferredScrollableViewportSize(new Dimension(
                0, table.getRowHeight() * Math.max(1, Math.min(ROWS, choices.size()))));
        revalidate();
        tell();
    }

    void clear() {
        latest.cancel();
        show(List.of());
    }

    /** Tells of the chosen part what the table has no room for. */
    private void tell() {
        int row = table.getSelectedRow();
        if (row < 0 || row >= choices.size()) {
            about.setText(Words.of(choices.size() == 1 ? "options.only" : "options.note"));
            take.setEnabled(false);
            return;
        }
        Choice choice = choices.get(row);
        boolean isWhole = choice.option().plan().equals(whole.job().plan());
        take.setEnabled(!isWhole);
        int steps = choice.option().plan().steps().size();
        about.setText(Words.of(
                isWhole ? "options.whole" : "options.part",
                steps,
                whole.job().plan().steps().size(),
                told(choice)));
    }

    private String told(Choice choice) {
        if (choice.worked().offer() instanceof Quote quote) {
            String hours = figures.readout().minutes(choice.worked().minutes());
            return quote.cap()
                    .map(cap -> Words.of(
                            cap.fits() ? "options.fits" : "options.over",
                            hours,
                            figures.money(cap.fits() ? cap.spare() : cap.over())))
                    .orElse(Words.of("options.no-cap", hours));
        }
        return Words.of(
                "options.stopped", ((Refusal) choice.worked().offer()).stops().size());
    }

    private void take() {
        int row = table.getSelectedRow();
        if (row >= 0 && take.isEnabled()) {
            PlanOption option = choices.get(row).option();
            PlanTaking.take(
                    desk, Words.of("change.option", Words.of("option", option.upTo())), whole.job(), option.plan());
        }
    }

    JTable table() {
        return table;
    }

    JButton taking() {
        return take;
    }

    /** What is told of a part. */
    String told(int row) {
        return told(choices.get(row));
    }

    List<Choice> choices() {
        return choices;
    }

    private final class Rows extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return choices.size();
        }

        @Override
        public int getColumnCount() {
            return LOSS + 1;
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("options.column." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            Choice choice = choices.get(row);
            if (column == 0) {
                return Words.of("option", choice.option().upTo());
            }
            if (!(choice.worked().offer() instanceof Quote quote)) {
                return Words.of("none");
            }
            return switch (column) {
                case PRICE -> figures.bare(quote.price().gross());
                case MOST -> figures.bare(quote.range().high().gross());
                case LEFT -> quote.margin().afterAll().map(figures::percent).orElse(Words.of("none"));
                default -> figures.percent(choice.loss().orElse(0));
            };
        }
    }

    /** The price that is held to the cap bears a sign, with its word for those who do not see it. */
    private final class Cell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable in, Object value, boolean chosen, boolean focus, int row, int column) {
            putClientProperty("html.disable", true);
            super.getTableCellRendererComponent(in, value, chosen, focus, row, column);
            setHorizontalAlignment(column == 0 ? SwingConstants.LEADING : SwingConstants.TRAILING);
            setBorder(BorderFactory.createEmptyBorder(0, UIScale.scale(EDGE), 0, UIScale.scale(EDGE)));
            Choice choice = choices.get(row);
            setIcon(null);
            setToolTipText(told(choice));
            if (column == 0 && choice.worked().offer() instanceof Refusal) {
                setIcon(new SeveritySign(Severity.STOP));
            } else if (column == 0 && choice.worked().offer() instanceof Quote quote) {
                quote.cap().ifPresent(cap -> setIcon(cap.fits() ? new FineSign() : new SeveritySign(Severity.WARN)));
            }
            getAccessibleContext().setAccessibleDescription(told(choice));
            return this;
        }
    }
}
