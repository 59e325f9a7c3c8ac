package baywright.swing.quote;

import baywright.document.KeptQuote;
import baywright.document.KeptQuotes;
import baywright.document.QuoteChange;
import baywright.document.QuoteDocument;
import baywright.document.Texts;
import baywright.money.Quote;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.workspace.WorkspaceException;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;

/** The quotes of a job that were kept: keep one now, and what of an older one would be otherwise today. */
final class KeptPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int ENTRIES = 4;
    private static final int CHANGES = 6;
    private static final int FIGURE = 70;

    /** Columns. */
    private static final int WHAT = 0;

    private static final int WAS = 1;
    private static final int IS = 2;
    private static final int BY = 3;

    /** A kept quote, or why it cannot be read. */
    record Entry(KeptQuotes.Name name, Optional<KeptQuote> kept, String fault) {}

    private final transient Desk desk;
    private final transient Latest reading;
    private final transient Latest comparing;
    private final JButton keep;
    private final JList<Entry> list = new JList<>();
    private final JScrollPane listScroll = new JScrollPane(list);
    private final Prose about = new Prose("");
    private final Rows rows = new Rows();
    private final JTable table = new JTable(rows);
    private final JScrollPane tableScroll = new JScrollPane(table);
    private transient Site site;
    private transient WorkedJob worked;
    private transient Figures figures;
    private transient Optional<String> folder = Optional.empty();
    private transient List<QuoteChange> changes = List.of();

    KeptPart(Desk desk) {
        super(new MigLayout("insets 8, gap 4, wrap 1, hidemode 3", "[grow, fill]", ""));
        this.desk = desk;
        reading = new Latest(desk);
        comparing = new Latest(desk);
        keep = new JButton(Words.action("kept.keep", this::keep));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new EntryCell());
        list.addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                compare();
            }
        });
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setDefaultRenderer(Object.class, new Cell());
        table.getTableHeader().setReorderingAllowed(false);
        table.getAccessibleContext().setAccessibleName(Words.of("kept.changes"));
        Action go = Words.action("kept.changes", this::goToChange);
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "go");
        table.getActionMap().put("go", go);
        add(new SectionHeading(Words.of("kept.heading"), list));
        add(keep, "growx 0, left");
        add(listScroll, "wmin 0");
        add(about, "wmin 0");
        add(tableScroll, "wmin 0");
    }

    /**
     * Shows the kept quotes of a job.
     *
     * @param inFolder where the job lies; empty for one that is not saved yet
     */
    void show(Site at, WorkedJob now, Figures written, Optional<String> inFolder) {
        site = at;
        worked = now;
        figures = written;
        folder = inFolder;
        keep.setEnabled(canKeep());
        if (folder.isEmpty()) {
            show(List.of());
            return;
        }
        KeptQuotes quotes = new KeptQuotes(site, folder.get());
        reading.run(
                Words.of("kept.task"),
                progress -> entries(quotes),
                this::show,
                () -> about.setText(Words.of("stopped")));
    }

    void clear() {
        reading.cancel();
        comparing.cancel();
        worked = null;
        keep.setEnabled(false);
        show(List.of());
    }

    private boolean canKeep() {
        return worked != null && worked.offer() instanceof Quote && !QuoteView.isHeldBack(desk.state());
    }

    private static List<Entry> entries(KeptQuotes quotes) {
        List<Entry> entries = new ArrayList<>();
        for (KeptQuotes.Name name : quotes.names()) {
            try {
                entries.add(0, new Entry(name, Optional.of(quotes.read(name)), ""));
            } catch (WorkspaceException e) {
                entries.add(0, new Entry(name, Optional.empty(), String.valueOf(e.getMessage())));
            }
        }
        return entries;
    }

    private void show(List<Entry> entries) {
        int chosen = list.getSelectedIndex();
        list.setListData(entries.toArray(new Entry[0]));
        list.setVisibleRowCount(Math.max(1, Math.min(ENTRIES, entries.size())));
        listScroll.setVisible(!entries.isEmpty());
        if (!entries.isEmpty()) {
            list.setSelectedIndex(Math.max(0, Math.min(chosen, entries.size() - 1)));
        } else {
            changes(List.of());
            about.setText(Words.of("kept.none"));
        }
        revalidate();
    }

    /** Looks what would be otherwise today. */
    private void compare() {
        comparing.cancel();
        Entry entry = list.getSelectedValue();
        if (entry == null) {
            return;
        }
        changes(List.of());
        if (entry.kept().isEmpty()) {
            about.setText(entry.fault());
            return;
        }
        KeptQuote kept = entry.kept().get();
        WorkedJob now = worked;
        if (!(now.offer() instanceof Quote quote)) {
            about.setText(Words.of("two-sentences", stands(kept), Words.of("kept.today-stopped")));
            return;
        }
        comparing.run(
                Words.of("kept.comparing"),
                progress -> QuoteChange.since(kept, now, quote),
                found -> {
                    about.setText(Words.of("two-sentences", stands(kept), today(kept, quote, found)));
                    changes(found);
                },
                () -> about.setText(stands(kept)));
    }

    private String stands(KeptQuote kept) {
        LocalDate until = kept.document().reference().validUntil();
        boolean over = site.now().toLocalDate().isAfter(until);
        return Words.of(
                over ? "kept.over" : "kept.stands",
                figures.money(kept.document().sums().all().gross()),
                figures.readout().day(until));
    }

    private String today(KeptQuote kept, Quote quote, List<QuoteChange> found) {
        if (found.isEmpty()) {
            return Words.of("kept.same");
        }
        var more = quote.price().gross().minus(kept.document().sums().all().gross());
        return Words.of(
                "kept.today",
                figures.money(quote.price().gross()),
                figures.money(more.abs()),
                more.getAmount().signum());
    }

    private void changes(List<QuoteChange> found) {
        changes = List.copyOf(found);
        rows.fireTableStructureChanged();
        for (int column = WAS; column <= BY; column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(UIScale.scale(FIGURE));
        }
        table.getColumnModel().getColumn(WHAT).setPreferredWidth(UIScale.scale(2 * FIGURE));
        table.setPreferredScrollableViewportSize(new Dimension(
                0, table.getRowHeight() * Math.max(1, Math.min(CHANGES, found.size()))));
        tableScroll.setVisible(!found.isEmpty());
        revalidate();
    }

    /** Keeps the quote of today under a number. What is not saved yet could be lost, so that it is asked to be saved first. */
    private void keep() {
        if (!canKeep()) {
            return;
        }
        if (desk.state().unsaved() || folder.isEmpty()) {
            desk.say(new Notice(Notice.Weight.NOTE, Words.of("kept.save-first"), Optional.empty()));
            return;
        }
        Site at = site;
        WorkedJob now = worked;
        Quote quote = (Quote) now.offer();
        KeptQuotes quotes = new KeptQuotes(at, folder.get());
        String wanted = now.job().language().orElse(at.shop().language());
        desk.run(new Task<>(
                Words.of("kept.keeping"),
                progress -> {
                    QuoteDocument document = QuoteDocument.of(at, now, quote, Texts.nearest(wanted));
                    quotes.keep(now, quote, document, at.now());
                    return entries(quotes);
                },
                entries -> {
                    list.clearSelection();
                    show(entries);
                    desk.say(Notice.done(Words.of("kept.kept", entries.get(0).name())));
                },
                fault -> desk.say(Notice.failed(Words.of("kept.failed", String.valueOf(fault.getMessage()))))));
    }

    private void goToChange() {
        int row = table.getSelectedRow();
        if (row >= 0) {
            place(changes.get(row)).ifPresent(desk::go);
        }
    }

    private static Optional<Destination> place(QuoteChange change) {
        return switch (change.kind()) {
            case ITEM_PRICE, ITEM_PACK -> Optional.of(new Destination("library", Map.of("item", change.subject())));
            case STAGE_REVISION, STAGE_WORDS, STAGE_MINUTES -> Optional.of(Destination.stage(change.subject()));
            case STEP -> Optional.of(Destination.step(change.subject()));
            case SURVEY -> Optional.of(new Destination("survey", Map.of()));
            case TERM, TOGETHER -> Optional.empty();
        };
    }

    private String named(QuoteChange change) {
        String subject =
                switch (change.kind()) {
                    case ITEM_PRICE, ITEM_PACK -> figures.item(change.subject());
                    case STAGE_REVISION, STAGE_WORDS, STAGE_MINUTES -> figures.stage(change.subject());
                    case STEP -> figures.step(change.subject());
                    default -> change.subject();
                };
        return Words.of("changed." + change.kind(), subject);
    }

    private static String shown(QuoteChange change, String value) {
        return switch (change.kind()) {
            case TOGETHER -> "";
            case SURVEY -> value.equals(change.is()) ? Words.of("changed.word") : "";
            default -> value.isEmpty() ? Words.of("none") : value;
        };
    }

    private String signed(BigDecimal by) {
        String amount = figures.bare(by.abs());
        return by.signum() < 0 ? Words.of("minus", amount) : by.signum() == 0 ? amount : Words.of("plus", amount);
    }

    JList<Entry> entries() {
        return list;
    }

    JTable table() {
        return table;
    }

    JButton keeping() {
        return keep;
    }

    String about() {
        return about.getText();
    }

    List<QuoteChange> changes() {
        return changes;
    }

    private final class EntryCell extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> in, Object value, int index, boolean chosen, boolean focus) {
            putClientProperty("html.disable", true);
            Entry entry = (Entry) value;
            String text = entry.kept()
                    .map(kept -> Words.of(
                            "kept.entry",
                            kept.number(),
                            kept.version(),
                            figures.readout().day(kept.keptAt().toLocalDate())))
                    .orElse(Words.of("kept.broken", entry.name()));
            return super.getListCellRendererComponent(in, text, index, chosen, focus);
        }
    }

    private final class Rows extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return changes.size();
        }

        @Override
        public int getColumnCount() {
            return BY + 1;
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("kept.column." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            QuoteChange change = changes.get(row);
            return switch (column) {
                case WHAT -> named(change);
                case WAS -> shown(change, change.was());
                case IS -> shown(change, change.is());
                default -> change.by().map(by -> signed(by.gross())).orElse("");
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
            setHorizontalAlignment(column == WHAT ? SwingConstants.LEADING : SwingConstants.TRAILING);
            setToolTipText(changes.get(row)
                    .by()
                    .filter(by -> column == BY)
                    .map(by -> Words.of("kept.by", signed(by.net()), signed(by.gross()), signed(by.cost())))
                    .orElse(String.valueOf(value)));
            return this;
        }
    }
}
