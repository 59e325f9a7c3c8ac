package baywright.swing.quote;

import baywright.chance.Sample;
import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.site.FinishChance;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.TonedLabel;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** What hours, cost and finish of a quoted job may come to: a distribution at a time, the shares as a table, the chances in words. */
final class OutlookPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final List<Double> SHARES = List.of(0.5, 0.8, 0.95);

    /** What a distribution is of. */
    enum Of {
        COST,
        HOURS,
        READY
    }

    /** An outlook with the chance of the finish that belongs to it. */
    record Seen(Quote quote, Outlook outlook, Optional<FinishChance> finish) {}

    private final transient Desk desk;
    private final transient Latest latest;
    private final transient Consumer<Optional<Seen>> seenBy;
    private final SpreadChart chart = new SpreadChart();
    private final JPanel shares = new JPanel(new MigLayout("insets 0, gap 8 2, wrap 4", "[]push[right][right][right]"));
    private final Prose words = new Prose("");
    private final transient Map<Of, JToggleButton> buttons = new EnumMap<>(Of.class);
    private transient Figures figures;
    private transient WorkedJob worked;
    private transient Optional<Seen> seen = Optional.empty();
    private Of of = Of.COST;

    /** @param seenBy is told what was worked out, empty while nothing is */
    OutlookPart(Desk desk, Consumer<Optional<Seen>> seenBy) {
        super(new MigLayout("insets 8, gap 4, wrap 1, hidemode 3", "[grow, fill]", ""));
        this.desk = desk;
        this.seenBy = seenBy;
        latest = new Latest(desk);
        shares.setOpaque(false);
        JPanel choice = new JPanel(new MigLayout("insets 0, gap 0"));
        choice.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (Of each : Of.values()) {
            JToggleButton button = new JToggleButton(Words.of("outlook.of", each));
            button.addActionListener(e -> choose(each));
            group.add(button);
            choice.add(button);
            buttons.put(each, button);
        }
        buttons.get(Of.COST).setSelected(true);
        add(new SectionHeading(Words.of("outlook.heading"), shares));
        add(choice, "growx 0");
        add(chart, "wmin 0");
        add(shares, "wmin 0");
        add(words, "wmin 0");
    }

    /** Simulates a quoted job in the background. */
    void show(Site site, WorkedJob now, Quote quote, Figures written) {
        worked = now;
        figures = written;
        words.setText(Words.of("outlook.looking"));
        latest.run(
                Words.of("outlook.task"),
                progress -> {
                    Outlook outlook = site.outlook(now, quote, Outlook.usual());
                    progress.at(0.5);
                    Optional<FinishChance> finish = progress.cancelled()
                            ? Optional.empty()
                            : FinishChance.of(now, outlook, site.chance(now.job(), Outlook.usual()));
                    return new Seen(quote, outlook, finish);
                },
                done -> show(Optional.of(done)),
                () -> words.setText(Words.of("stopped")));
    }

    void clear() {
        latest.cancel();
        show(Optional.empty());
    }

    private void show(Optional<Seen> now) {
        seen = now;
        boolean ready = now.flatMap(Seen::finish).isPresent();
        buttons.get(Of.READY).setEnabled(ready);
        if (of == Of.READY && !ready) {
            of = Of.COST;
            buttons.get(Of.COST).setSelected(true);
        }
        shares.removeAll();
        words.setText("");
        now.ifPresent(this::tell);
        chart.show(now.map(this::spread));
        shares.revalidate();
        shares.repaint();
        seenBy.accept(now);
    }

    /** Shows another distribution. */
    void choose(Of other) {
        of = other;
        buttons.get(other).setSelected(true);
        chart.show(seen.map(this::spread));
    }

    private void tell(Seen now) {
        shares.add(new TonedLabel(Words.of("outlook.share"), "faint"));
        shares.add(new TonedLabel(Words.of("outlook.hours"), "faint"));
        shares.add(new TonedLabel(Words.of("outlook.cost"), "faint"));
        shares.add(new TonedLabel(
                Words.of(worked.job().vehicles() == 1 || byTimetable(now) ? "outlook.ready" : "outlook.ready-one"),
                "faint"));
        for (double share : SHARES) {
            shares.add(new JLabel(Words.of("outlook.share." + Math.round(100 * share))));
            shares.add(new JLabel(figures.minutes(now.outlook().minutes().quantile(share))));
            shares.add(new JLabel(
                    figures.bare(BigDecimal.valueOf(now.outlook().cost().quantile(share)))));
            shares.add(
                    new JLabel(now.finish().map(f -> moment(f.readyBy(share))).orElse(Words.of("none"))));
        }
        words.setText(String.join("\n\n", sentences(now)));
    }

    private static boolean byTimetable(Seen now) {
        return now.finish().filter(FinishChance::byTimetable).isPresent();
    }

    private List<String> sentences(Seen now) {
        String loss = Words.of(
                "outlook.loss",
                figures.percent(now.outlook().lossAt(now.quote().price().net())),
                figures.money(now.quote().price().net()));
        String undiscounted = now.outlook().lossUndiscounted(now.quote()).isPresent()
                ? " "
                        + Words.of(
                                "outlook.undiscounted",
                                figures.percent(now.outlook()
                                        .lossUndiscounted(now.quote())
                                        .getAsDouble()))
                : "";
        String how = Words.of(
                "outlook.how",
                figures.readout().number(BigDecimal.valueOf(now.outlook().work().runs()), 0),
                Long.toString(now.outlook().work().seed()));
        return List.of(loss + undiscounted, finish(now), how);
    }

    private String finish(Seen now) {
        if (now.finish().isEmpty()) {
            return Words.of("outlook.no-finish");
        }
        FinishChance finish = now.finish().get();
        String by = Words.of(finish.byTimetable() ? "outlook.by-timetable" : "outlook.by-clock");
        if (finish.inTime().isEmpty()) {
            return Words.of(worked.job().wanted().isEmpty() ? "outlook.no-date" : "outlook.one-only") + " " + by;
        }
        Sample.Band band = finish.band().orElseThrow();
        return Words.of(
                        "outlook.in-time",
                        figures.readout().moment(finish.wanted().orElseThrow()),
                        figures.percent(finish.inTime().getAsDouble()),
                        figures.percent(band.low()),
                        figures.percent(band.high()))
                + " "
                + by;
    }

    private SpreadChart.Spread spread(Seen now) {
        List<String> names = SHARES.stream()
                .map(share -> Words.of("outlook.line", Math.round(100 * share)))
                .toList();
        return switch (of) {
            case COST ->
                new SpreadChart.Spread(
                        now.outlook().cost(),
                        SHARES,
                        names,
                        Optional.of(now.quote().price().net().getAmount().doubleValue()),
                        Words.of("outlook.limit.net"),
                        value -> figures.readout().number(BigDecimal.valueOf(value), 0));
            case HOURS ->
                new SpreadChart.Spread(
                        now.outlook().minutes(),
                        SHARES,
                        names,
                        Optional.empty(),
                        "",
                        value -> Words.of("hours", figures.readout().number(BigDecimal.valueOf(value / 60), 1)));
            case READY -> ready(now.finish().orElseThrow(), names);
        };
    }

    private SpreadChart.Spread ready(FinishChance finish, List<String> names) {
        LocalDateTime start = finish.moment().apply(0);
        DateTimeFormatter axis =
                DateTimeFormatter.ofPattern("EEE HH:mm", figures.readout().locale());
        return new SpreadChart.Spread(
                finish.minutes(),
                SHARES,
                names,
                finish.wanted().map(wanted -> Duration.between(start, wanted).toSeconds() / 60.0),
                Words.of("outlook.limit.wanted"),
                value -> axis.format(finish.moment().apply(value)));
    }

    private String moment(LocalDateTime at) {
        return DateTimeFormatter.ofPattern("EEE d MMM HH:mm", locale()).format(at);
    }

    private Locale locale() {
        return desk.readout().locale();
    }

    Optional<Seen> seen() {
        return seen;
    }

    String words() {
        return words.getText();
    }

    Of chosen() {
        return of;
    }
}
