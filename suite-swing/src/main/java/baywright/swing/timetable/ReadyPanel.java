package baywright.swing.timetable;

import baywright.plan.Severity;
import baywright.safety.PersonDay;
import baywright.safety.SafetySettings;
import baywright.schedule.ShopChance.JobChance;
import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Entry;
import baywright.schedule.ShopTimetable.JobEnd;
import baywright.site.Numbers;
import baywright.swing.api.Desk;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import baywright.swing.parts.WidePanel;
import baywright.swing.timetable.Timed.Phase;
import java.awt.Component;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import net.miginfocom.swing.MigLayout;

/** When each job is ready and why then, what would help, what may become of it, and what people take in. */
final class ReadyPanel extends WidePanel {

    private static final long serialVersionUID = 1L;

    private static final double P80 = 0.8;

    private final transient Desk desk;
    private final transient Runnable enough;
    private final transient Runnable longer;
    private final transient Consumer<Entry> choose;
    private final transient List<String> said = new ArrayList<>();

    /**
     * A panel that says nothing yet.
     *
     * @param enough ends the search
     * @param longer searches longer
     * @param choose gets a bar that is asked for
     */
    ReadyPanel(Desk desk, Runnable enough, Runnable longer, Consumer<Entry> choose) {
        super(new MigLayout("insets 12, gap 6 4, wrap 2, hidemode 3", "[][grow, fill]"));
        this.desk = desk;
        this.enough = enough;
        this.longer = longer;
        this.choose = choose;
    }

    /** Shows what is known of a timetable. */
    void show(Timed timed, EntryWords words) {
        removeAll();
        said.clear();
        ShopTimetable timetable = timed.timetable().orElseThrow();
        heading("ready");
        search(timed.phase(), timetable);
        for (JobEnd end : timetable.ends()) {
            end(timed, end, words);
        }
        timed.helps().ifPresent(helps -> {
            heading("helps");
            words.texts().onADay(helps.onADay(), timetable.lateMinutes()).forEach(text -> line(none(), text));
            words.texts().helps(helps.everyDay()).forEach(text -> line(none(), text));
        });
        exposure(timed);
        revalidate();
        repaint();
    }

    private void heading(String key) {
        add(new SectionHeading(TimetableWorkbench.TEXTS.of("heading." + key)), "span, gaptop 8");
    }

    private static JLabel none() {
        return new JLabel();
    }

    private void line(Component sign, String text) {
        add(sign, "top");
        add(new Prose(text), "wmin 0");
        said.add(text);
    }

    private void button(String key, Runnable does) {
        JButton button = new JButton(TimetableWorkbench.TEXTS.of(key));
        button.addActionListener(e -> does.run());
        add(button, "skip, growx 0, wmin 0");
    }

    private void search(Phase phase, ShopTimetable timetable) {
        if (phase == Phase.IMPROVING) {
            line(none(), TimetableWorkbench.TEXTS.of("improving"));
            button("enough", enough);
        } else if (timetable.proved()) {
            line(new JLabel(new FineSign()), TimetableWorkbench.TEXTS.of("proved"));
        } else {
            Numbers numbers = new Numbers(desk.readout().locale());
            line(
                    none(),
                    TimetableWorkbench.TEXTS.of(
                            phase == Phase.STOPPED ? "stopped" : "gap",
                            numbers.fixed(BigDecimal.valueOf(100 * timetable.gap()), 1)));
            button("longer", longer);
        }
    }

    private void end(Timed timed, JobEnd end, EntryWords words) {
        ShopTimetable timetable = timed.timetable().orElseThrow();
        JLabel mark = new JLabel(new JobMark(words.places().get(end.job())));
        add(mark, "top, gaptop 8");
        Prose ready = new Prose(words.texts().end(end, late -> late));
        add(ready, "wmin 0, gaptop 8");
        said.add(ready.getText());
        if (end.wanted().isPresent()) {
            boolean late = end.lateMinutes() > 0;
            add(new JLabel(late ? new SeveritySign(Severity.STOP) : new FineSign()), "right");
            add(new TonedLabel(TimetableWorkbench.TEXTS.of(late ? "late" : "in-time"), late ? "stop" : "fine"));
        }
        List<Entry> critical = timetable.entries().stream()
                .filter(e -> e.critical() && e.job().equals(end.job()))
                .toList();
        words.texts().chain(critical).forEach(text -> line(none(), text));
        timed.chance().flatMap(c -> c.job(end.job())).ifPresent(chance -> line(none(), chance(chance)));
        if (!critical.isEmpty()) {
            button("last", () -> choose.accept(critical.get(critical.size() - 1)));
            critical.stream()
                    .filter(e -> !e.waitsFor().isEmpty())
                    .findFirst()
                    .ifPresent(first -> button("waiting", () -> choose.accept(first)));
        }
    }

    private String chance(JobChance chance) {
        Numbers numbers = new Numbers(desk.readout().locale());
        String by = desk.readout().moment(chance.readyBy(P80));
        OptionalDouble inTime = chance.inTime();
        if (inTime.isEmpty()) {
            return TimetableWorkbench.TEXTS.of("chance.open", by);
        }
        return TimetableWorkbench.TEXTS.of(
                "chance", by, numbers.fixed(BigDecimal.valueOf(100 * inTime.getAsDouble()), 0));
    }

    private void exposure(Timed timed) {
        if (timed.exposure().isEmpty()) {
            return;
        }
        heading("exposure");
        SafetySettings settings = timed.site().shop().safety();
        Numbers numbers = new Numbers(desk.readout().locale());
        for (PersonDay day : timed.exposure()) {
            List<String> parts = new ArrayList<>();
            if (!day.vibration().isEmpty()) {
                parts.add(TimetableWorkbench.TEXTS.of(
                        "exposure.vibration", numbers.fixed(BigDecimal.valueOf(day.dailyVibration()), 1)));
            }
            if (!day.noise().isEmpty()) {
                parts.add(TimetableWorkbench.TEXTS.of(
                        "exposure.noise", numbers.fixed(BigDecimal.valueOf(day.protectedNoise()), 1)));
            }
            if (day.vapour() > 0) {
                parts.add(TimetableWorkbench.TEXTS.of(
                        "exposure.vapour", numbers.fixed(BigDecimal.valueOf(day.vapour()), 1)));
            }
            line(
                    none(),
                    TimetableWorkbench.TEXTS.of(
                            "exposure.day", desk.readout().day(day.day()), day.name(), String.join(", ", parts)));
        }
        line(
                none(),
                TimetableWorkbench.TEXTS.of(
                        "exposure.limits",
                        numbers.fixed(BigDecimal.valueOf(settings.vibration().limit()), 1),
                        numbers.fixed(BigDecimal.valueOf(settings.noise().limit()), 1)));
    }

    /** Everything that it says, in order. */
    List<String> said() {
        return List.copyOf(said);
    }
}
