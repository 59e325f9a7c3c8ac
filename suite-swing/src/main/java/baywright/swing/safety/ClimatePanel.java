package baywright.swing.safety;

import baywright.library.StageTerms;
import baywright.plan.Finding;
import baywright.quantity.Quantity;
import baywright.safety.DayBounds;
import baywright.safety.DewPoint;
import baywright.safety.JobSafety;
import baywright.safety.JobSafety.DayClimate;
import baywright.safety.SafetyReason;
import baywright.swing.api.Desk;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.TonedLabel;
import baywright.swing.parts.TrailLine;
import baywright.swing.parts.TrailPopup;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Air and surface of each day of work, typed from the shop's own instruments, beside what the day's steps ask for. */
final class ClimatePanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient SafetyEdits edits;
    private final transient Map<LocalDate, Day> days = new TreeMap<>();
    private String of = "";

    ClimatePanel(Desk desk, SafetyEdits edits) {
        super(new MigLayout("insets 0, wrap 1, gap 0 4", "[grow, fill]"));
        this.desk = desk;
        this.edits = edits;
        setOpaque(false);
    }

    /** Shows the days of work, and those that something is typed for; fields stay, and what was typed in them. */
    void show(SafetyFigures figures, JobSafety now) {
        String job = figures.worked().job().id();
        Map<LocalDate, DayBounds> wanted = new TreeMap<>();
        figures.days().forEach(d -> wanted.put(d.day(), d));
        now.climate().forEach(c -> wanted.putIfAbsent(c.day(), new DayBounds(c.day(), List.of())));
        if (!job.equals(of) || !wanted.keySet().equals(days.keySet())) {
            if (!job.equals(of)) {
                days.clear();
            }
            of = job;
            days.keySet().retainAll(wanted.keySet());
            removeAll();
            wanted.keySet().forEach(day -> add(days.computeIfAbsent(day, Day::new), "wmin 0"));
            if (wanted.isEmpty()) {
                add(new Prose(Words.of("climate.none")), "wmin 0");
            }
        }
        SafetyWords words = new SafetyWords(figures.worked(), desk.readout());
        wanted.forEach((day, bounds) -> days.get(day).show(bounds, now.climateOf(day), figures, words));
        revalidate();
        repaint();
    }

    Day day(LocalDate day) {
        return days.get(day);
    }

    List<LocalDate> days() {
        return List.copyOf(days.keySet());
    }

    private static boolean isOf(Finding finding, LocalDate day) {
        if (finding.reason() instanceof SafetyReason.OutOfBounds bounds) {
            return bounds.day().equals(day);
        }
        return finding.reason() instanceof SafetyReason.Damp damp && damp.day().equals(day);
    }

    /** One day: its bounds, three fields, what they mean. */
    final class Day extends JPanel {

        private static final long serialVersionUID = 1L;

        private final LocalDate day;
        private final JLabel airLabel = new JLabel();
        private final JLabel surfaceLabel = new JLabel();
        private final JTextField air = new JTextField();
        private final JTextField humidity = new JTextField();
        private final JTextField surface = new JTextField();
        private final TonedLabel trouble = new TonedLabel("", "stop", "small");
        private final Prose asked = new Prose("");
        private final JButton sources = new JButton(Words.of("climate.sources"));
        private final Prose dew = new Prose("");
        private final FoundList found;
        private transient List<TrailLine> trail = List.of();
        private transient List<String> base = List.of("", "", "");

        Day(LocalDate day) {
            super(new MigLayout("insets 0 0 12 0, gap 8 3, hidemode 3", "[grow, fill][grow, fill][grow, fill]"));
            this.day = day;
            setOpaque(false);
            String title = desk.readout().day(day);
            found = new FoundList(desk, Words.of("climate.fits"));
            add(new SectionHeading(title), "span, wmin 0");
            JPanel wish = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3", "[grow, fill][]", "[top]"));
            wish.setOpaque(false);
            wish.add(asked, "wmin 0");
            sources.putClientProperty("JButton.buttonType", "borderless");
            sources.getAccessibleContext().setAccessibleName(Words.of("climate.sources.of", title));
            sources.addActionListener(
                    e -> TrailPopup.show(sources, Words.of("climate.sources.of", title), trail, desk::go));
            wish.add(sources);
            add(wish, "span, growx, wmin 0, wrap");
            JLabel humidityLabel = new JLabel(Words.of("climate.humidity"));
            airLabel.setLabelFor(air);
            humidityLabel.setLabelFor(humidity);
            surfaceLabel.setLabelFor(surface);
            add(airLabel, "wmin 0");
            add(humidityLabel, "wmin 0");
            add(surfaceLabel, "wmin 0, wrap");
            for (JTextField field : fields()) {
                field.addFocusListener(new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent e) {
                        take(false);
                    }
                });
                field.addActionListener(e -> take(true));
                add(field, field == surface ? "wmin 40, wrap" : "wmin 40");
            }
            air.getAccessibleContext().setAccessibleName(Words.of("climate.of", Words.of("climate.air"), title));
            humidity.getAccessibleContext()
                    .setAccessibleName(Words.of("climate.of", Words.of("climate.humidity"), title));
            surface.getAccessibleContext()
                    .setAccessibleName(Words.of("climate.of", Words.of("climate.surface"), title));
            surface.putClientProperty("JTextField.placeholderText", Words.of("climate.surface.usual"));
            trouble.setVisible(false);
            add(trouble, "span, wmin 0, wrap");
            add(dew, "span, wmin 0, growx, wrap");
            add(found, "span, wmin 0, growx");
        }

        private List<JTextField> fields() {
            return List.of(air, humidity, surface);
        }

        void show(DayBounds bounds, Optional<DayClimate> typed, SafetyFigures figures, SafetyWords words) {
            var readout = desk.readout();
            airLabel.setText(Words.of("climate.air.unit", readout.temperatureUnit()));
            surfaceLabel.setText(Words.of("climate.surface.unit", readout.temperatureUnit()));
            List<String> now = List.of(
                    typed.map(c -> readout.temperatureNumber(c.temperature())).orElse(""),
                    typed.map(c -> readout.number(c.humidity(), 1)).orElse(""),
                    typed.flatMap(DayClimate::surface)
                            .map(readout::temperatureNumber)
                            .orElse(""));
            if (!now.equals(base)) {
                base = now;
                for (int i = 0; i < now.size(); i++) {
                    fields().get(i).setText(now.get(i));
                }
                say("", null);
            }
            showAsked(bounds, words);
            dew.setVisible(typed.isPresent());
            typed.ifPresent(c -> dew.setText(dewPoint(c, figures)));
            List<Finding> findings = figures.worked().safety().findings().stream()
                    .filter(f -> isOf(f, day))
                    .toList();
            found.setVisible(typed.isPresent());
            found.show(findings, words, List.of());
        }

        private String dewPoint(DayClimate typed, SafetyFigures figures) {
            double point = DewPoint.of(
                    typed.temperature().doubleValue(), typed.humidity().doubleValue());
            double margin = figures.worked().safe().settings().climate().dewPoint();
            return Words.of(
                    "climate.dew",
                    desk.readout().temperature(BigDecimal.valueOf(point)),
                    desk.readout().temperature(BigDecimal.valueOf(point + margin)));
        }

        private void showAsked(DayBounds bounds, SafetyWords words) {
            List<TrailLine> lines = new ArrayList<>();
            for (DayBounds.OfStep one : bounds.steps()) {
                String text = Words.of("climate.step", words.step(one.step()), written(one.bounds()));
                lines.add(one.bounds()
                        .origin()
                        .map(o -> TrailLine.of(text, o.place()))
                        .orElseGet(() -> TrailLine.of(text)));
            }
            trail = lines;
            sources.setVisible(!lines.isEmpty());
            asked.setText(
                    lines.isEmpty()
                            ? Words.of("climate.any")
                            : Words.capital(written(
                                    tightest(bounds, StageTerms.Climate::coldest, true),
                                    tightest(bounds, StageTerms.Climate::warmest, false),
                                    tightest(bounds, StageTerms.Climate::driest, true),
                                    tightest(bounds, StageTerms.Climate::dampest, false))));
        }

        private Optional<BigDecimal> tightest(
                DayBounds bounds, Function<StageTerms.Climate, Optional<Quantity>> which, boolean least) {
            Stream<BigDecimal> all = bounds.steps().stream()
                    .flatMap(s -> which.apply(s.bounds()).stream())
                    .map(Quantity::inBase);
            return least ? all.max(BigDecimal::compareTo) : all.min(BigDecimal::compareTo);
        }

        private String written(StageTerms.Climate c) {
            return written(
                    c.coldest().map(Quantity::inBase),
                    c.warmest().map(Quantity::inBase),
                    c.driest().map(Quantity::inBase),
                    c.dampest().map(Quantity::inBase));
        }

        /** Bounds in words, those that there are. */
        private String written(
                Optional<BigDecimal> coldest,
                Optional<BigDecimal> warmest,
                Optional<BigDecimal> driest,
                Optional<BigDecimal> dampest) {
            List<String> said = new ArrayList<>();
            range(coldest, warmest, desk.readout()::temperature)
                    .ifPresent(r -> said.add(Words.of("climate.warmth", r)));
            range(driest, dampest, b -> Words.of("percent", desk.readout().number(b, 0)))
                    .ifPresent(r -> said.add(Words.of("climate.damp", r)));
            return String.join(", ", said);
        }

        private Optional<String> range(
                Optional<BigDecimal> least, Optional<BigDecimal> most, Function<BigDecimal, String> figure) {
            if (least.isPresent() && most.isPresent()) {
                return Optional.of(Words.of("climate.range", figure.apply(least.get()), figure.apply(most.get())));
            }
            return least.map(b -> Words.of("climate.least", figure.apply(b)))
                    .or(() -> most.map(b -> Words.of("climate.most", figure.apply(b))));
        }

        JTextField air() {
            return air;
        }

        JTextField humidity() {
            return humidity;
        }

        JTextField surface() {
            return surface;
        }

        String trouble() {
            return trouble.isVisible() ? trouble.getText() : "";
        }

        FoundList found() {
            return found;
        }

        /**
         * Makes the edit of what was typed.
         *
         * @param whole whether the user is done with the day: then what is missing is said as well
         */
        void take(boolean whole) {
            List<String> typed = fields().stream().map(f -> f.getText().strip()).toList();
            if (typed.equals(base)) {
                say("", null);
                return;
            }
            if (typed.stream().allMatch(String::isEmpty)) {
                base = typed;
                say("", null);
                edits.clearClimate(day);
                return;
            }
            try {
                Optional<BigDecimal> warm = read(air, true);
                Optional<BigDecimal> damp = read(humidity, false);
                Optional<BigDecimal> touch = read(surface, true);
                if (warm.isEmpty() || damp.isEmpty()) {
                    JTextField missing = warm.isEmpty() ? air : humidity;
                    say(whole ? Words.of("climate.both") : "", whole ? missing : null);
                    return;
                }
                List<String> before = base;
                base = typed;
                try {
                    edits.climate(new DayClimate(day, warm.get(), damp.get(), touch));
                    say("", null);
                } catch (IllegalArgumentException e) {
                    base = before;
                    say(String.valueOf(e.getMessage()), null);
                }
            } catch (Mistyped e) {
                say(Words.of("climate.no-number", e.field.getText().strip()), e.field);
            }
        }

        private Optional<BigDecimal> read(JTextField field, boolean warm) throws Mistyped {
            String text = field.getText().strip();
            if (text.isEmpty()) {
                return Optional.empty();
            }
            try {
                return Optional.of(
                        warm
                                ? desk.readout().temperatureTyped(text)
                                : desk.readout().numberTyped(text));
            } catch (NumberFormatException e) {
                throw new Mistyped(field);
            }
        }

        private void say(String text, JTextField field) {
            trouble.setText(text);
            trouble.setVisible(!text.isEmpty());
            for (JTextField one : fields()) {
                one.putClientProperty("JComponent.outline", one == field ? "error" : null);
                one.getAccessibleContext().setAccessibleDescription(one == field ? text : null);
            }
            revalidate();
            repaint();
        }
    }

    /** A field holds no number. */
    private static final class Mistyped extends Exception {

        private static final long serialVersionUID = 1L;

        private final transient JTextField field;

        Mistyped(JTextField field) {
            this.field = field;
        }
    }
}
