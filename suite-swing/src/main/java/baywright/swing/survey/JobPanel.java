package baywright.swing.survey;

import baywright.library.Goal;
import baywright.plan.JobGoal;
import baywright.plan.Step;
import baywright.swing.api.Texts;
import baywright.swing.parts.SectionHeading;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Who the job is for, when, for how much, and what is wished for: in the customer's words and as goals of the library. */
final class JobPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final List<Step.Priority> PRIORITIES = List.of(Step.Priority.values());

    private final transient Edits edits;
    private final transient Texts texts;
    private final Entry title;
    private final Entry customer;
    private final Entry arrives;
    private final Entry wanted;
    private final Entry cap;
    private final JLabel rateLabel;
    private final JComboBox<String> rate = new JComboBox<>();
    private final Entry wishes;
    private final JPanel goals = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 8", "[grow,fill]"));
    private final PlainChoice more;
    private final transient Supplier<List<String>> chosenZones;
    private transient List<JobGoal> shownGoals = List.of();
    private transient List<String> rates = List.of();
    private boolean showing;

    /** @param chosenZones zones chosen on the drawing, for goals on some zones only */
    JobPanel(Edits edits, Supplier<List<String>> chosenZones) {
        super(new MigLayout("insets 12, wrap 1, gap 0 6, hidemode 3", "[grow,fill,220::]"));
        this.edits = edits;
        this.chosenZones = chosenZones;
        texts = edits.texts();
        title = new Entry(
                texts.of("job.title"),
                1,
                text -> edits.values(texts.of("job.title.change"), j -> j.title(text.strip())));
        customer = new Entry(
                texts.of("customer"),
                1,
                text -> edits.values(texts.of("customer.change"), j -> j.customer(text.strip())));
        arrives = new Entry(
                texts.of("arrives"), 1, text -> edits.values(texts.of("arrives.change"), j -> j.arrives(time(text))));
        wanted = new Entry(
                texts.of("wanted"), 1, text -> edits.values(texts.of("wanted.change"), j -> j.wanted(time(text))));
        cap = new Entry(texts.of("cap"), 1, text -> edits.values(texts.of("cap.change"), j -> j.cap(amount(text))));
        rateLabel = new JLabel(texts.of("rate"));
        rateLabel.setLabelFor(rate);
        rate.addActionListener(e -> {
            if (!showing && rate.getSelectedIndex() >= 0) {
                String chosen = rates.get(rate.getSelectedIndex());
                edits.values(texts.of("rate.change"), j -> j.rate(Optional.of(chosen)));
            }
        });
        wishes = new Entry(
                texts.of("wishes"),
                4,
                text -> edits.values(texts.of("wishes.change"), j -> j.wishes(ZonePanel.lines(text))));
        more = new PlainChoice(texts.of("goal.more"), goal -> {
            List<JobGoal> all = new ArrayList<>(shownGoals);
            all.add(JobGoal.of(goal));
            takeGoals(all);
        });
        goals.setOpaque(false);
        add(title);
        add(customer);
        add(arrives);
        add(wanted);
        add(cap);
        add(rateLabel);
        add(rate, "wmin 60");
        add(wishes, "gaptop 12");
        add(new SectionHeading(texts.of("goals"), goals), "gaptop 12");
        add(goals);
        add(more, "wmin 60");
    }

    Entry wanted() {
        return wanted;
    }

    Entry cap() {
        return cap;
    }

    Entry title() {
        return title;
    }

    Entry wishes() {
        return wishes;
    }

    PlainChoice moreGoals() {
        return more;
    }

    void show(Surveyed now) {
        Job job = now.job();
        title.show(job.id(), job.title());
        customer.show(job.id(), job.customer());
        arrives.show(job.id(), written(job.arrives()));
        wanted.show(job.id(), written(job.wanted()));
        cap.show(job.id(), job.cap().map(BigDecimal::toPlainString).orElse(""));
        showRates(now);
        wishes.show(job.id(), String.join("\n", job.wishes()));
        shownGoals = job.goals();
        goals.removeAll();
        for (int i = 0; i < shownGoals.size(); i++) {
            goals.add(row(now, i), "wmin 0");
        }
        goals.setVisible(!shownGoals.isEmpty());
        more.offer(now.library().goals().stream()
                .map(g -> new PlainChoice.Item(g.id(), g.title() + (g.about().isEmpty() ? "" : " – " + g.about())))
                .toList());
        revalidate();
        repaint();
    }

    private void showRates(Surveyed now) {
        showing = true;
        List<String> all = now.shop().site().shop().rates().charge().keySet().stream()
                .sorted()
                .toList();
        rateLabel.setVisible(all.size() > 1);
        rate.setVisible(all.size() > 1);
        if (!all.equals(rates)) {
            rates = all;
            rate.removeAllItems();
            all.forEach(r -> rate.addItem(Plain.text(r.replace('-', ' '))));
        }
        rate.setSelectedIndex(now.job().rate().map(all::indexOf).orElse(-1));
        showing = false;
    }

    /** One goal: what, how much it matters, where, and away with it. */
    private JPanel row(Surveyed now, int index) {
        JobGoal goal = shownGoals.get(index);
        JPanel row = new JPanel(new MigLayout("insets 0, wrap 3, gap 6 2", "[grow,fill,60::][][]"));
        row.setOpaque(false);
        String words = words(now, goal);
        JLabel name = new JLabel(words);
        name.putClientProperty("html.disable", true);
        JComboBox<String> priority = new JComboBox<>();
        for (Step.Priority p : PRIORITIES) {
            priority.addItem(texts.of("priority." + p.name().toLowerCase(Locale.ROOT)));
        }
        priority.setSelectedIndex(PRIORITIES.indexOf(goal.priority()));
        priority.getAccessibleContext().setAccessibleName(texts.of("goal.priority", words));
        priority.addActionListener(
                e -> replace(index, with(goal, goal.zones(), PRIORITIES.get(priority.getSelectedIndex()))));
        JButton away = new JButton("\u00D7");
        away.putClientProperty("JButton.buttonType", "toolBarButton");
        away.getAccessibleContext().setAccessibleName(texts.of("goal.away", words));
        away.addActionListener(e -> {
            List<JobGoal> all = new ArrayList<>(shownGoals);
            all.remove(index);
            takeGoals(all);
        });
        JLabel where =
                new JLabel(goal.zones().isEmpty() ? texts.of("goal.everywhere") : String.join(", ", goal.zones()));
        where.putClientProperty("html.disable", true);
        where.putClientProperty("FlatLaf.styleClass", "small");
        JButton place = new JButton(texts.of(goal.zones().isEmpty() ? "goal.chosen" : "goal.all"));
        place.putClientProperty("FlatLaf.styleClass", "small");
        place.getAccessibleContext().setAccessibleName(words + ": " + place.getText());
        place.setEnabled(goal.goal().isPresent()
                && (!goal.zones().isEmpty() || !chosenZones.get().isEmpty()));
        place.addActionListener(e ->
                replace(index, with(goal, goal.zones().isEmpty() ? chosenZones.get() : List.of(), goal.priority())));
        row.add(name, "wmin 0");
        row.add(priority);
        row.add(away);
        row.add(where, "wmin 0");
        row.add(place, "span 2");
        return row;
    }

    private static String words(Surveyed now, JobGoal goal) {
        if (!goal.title().isEmpty()) {
            return goal.title();
        }
        return goal.goal()
                .map(id -> now.library().goals().stream()
                        .filter(g -> g.id().equals(id))
                        .map(Goal::title)
                        .findFirst()
                        .orElse(id))
                .orElseGet(() -> String.join(", ", goal.states()));
    }

    private static JobGoal with(JobGoal goal, List<String> zones, Step.Priority priority) {
        return new JobGoal(goal.id(), goal.title(), goal.goal(), goal.states(), zones, priority, goal.worth());
    }

    private void replace(int index, JobGoal goal) {
        List<JobGoal> all = new ArrayList<>(shownGoals);
        all.set(index, goal);
        takeGoals(all);
    }

    private void takeGoals(List<JobGoal> all) {
        edits.values(texts.of("goals.change"), job -> job.goals(all));
    }

    private static String written(Optional<LocalDateTime> time) {
        return time.map(t -> t.toString().replace('T', ' ')).orElse("");
    }

    private Optional<LocalDateTime> time(String text) {
        String bare = text.strip().replaceAll("\\s+", "T");
        if (bare.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDateTime.parse(bare));
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(texts.of("time.wrong", text.strip()), e);
        }
    }

    private Optional<BigDecimal> amount(String text) {
        String bare = text.strip();
        if (bare.isEmpty()) {
            return Optional.empty();
        }
        if (!bare.matches("[0-9]{1,9}(\\.[0-9]{1,2})?")) {
            throw new IllegalArgumentException(texts.of("cap.wrong", bare));
        }
        return Optional.of(new BigDecimal(bare));
    }
}
