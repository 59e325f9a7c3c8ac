package baywright.swing.plan;

import baywright.library.Stage;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.plan.StepWork;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.StartField;
import baywright.swing.parts.TonedLabel;
import baywright.swing.parts.TrailLine;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import net.miginfocom.swing.MigLayout;

/** One step: what stands against it, its inputs, zones, priority and start, and what it takes. */
final class StepPanel extends Column {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final JLabel title = new JLabel();
    private final TonedLabel id = new TonedLabel("", "faint");
    private final Prose about = new Prose("");
    private final ToldList told;
    private final InputFields inputs;
    private final ZoneList zones;
    private final StartField start;
    private final FigureLinks figures;
    private final transient Map<Priority, JRadioButton> priorities = new EnumMap<>(Priority.class);
    private transient Optional<Step> shown = Optional.empty();

    StepPanel(Desk desk, PlanEdits edits, Consumer<String> goToStep) {
        this.desk = desk;
        told = new ToldList(Words.of("told.none.step"), goToStep);
        inputs = new InputFields((name, value) -> shown.ifPresent(s -> edits.input(s.id(), name, value)));
        zones = new ZoneList(written -> shown.ifPresent(s -> edits.zones(s.id(), written)));
        start = new StartField(
                desk.readout().locale(),
                Words.of("start.fix"),
                Words.of("start.at"),
                at -> shown.ifPresent(s -> edits.start(s.id(), at)));
        figures = new FigureLinks(desk::go);
        title.putClientProperty("html.disable", true);
        title.putClientProperty("FlatLaf.styleClass", "h2");
        JPanel head = new JPanel(new MigLayout("insets 0, gap 8", "[grow, fill][][]"));
        head.add(title, "wmin 0");
        head.add(id);
        JButton script = new JButton(Words.of("step.script"));
        script.addActionListener(e -> shown.ifPresent(s -> desk.go(Destination.stage(s.stage()))));
        head.add(script);
        add(head, "wmin 0");
        add(about, "wmin 0");
        add(new SectionHeading(Words.of("section.told"), told), "gaptop 4");
        add(told, "wmin 0");
        add(new SectionHeading(Words.of("section.inputs"), inputs));
        add(inputs, "wmin 0");
        add(new SectionHeading(Words.of("section.zones")));
        add(zones, "wmin 0");
        add(new SectionHeading(Words.of("section.wanted")));
        add(priorityButtons(edits));
        add(new SectionHeading(Words.of("section.start")));
        add(start, "wmin 0");
        add(new SectionHeading(Words.of("section.takes"), figures));
        add(figures, "wmin 0");
    }

    private JPanel priorityButtons(PlanEdits edits) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 12"));
        row.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (Priority priority : Priority.values()) {
            JRadioButton button = new JRadioButton(Words.capital(Words.of("priority", priority)));
            button.addActionListener(e -> shown.ifPresent(s -> edits.priority(s.id(), priority)));
            group.add(button);
            priorities.put(priority, button);
            row.add(button);
        }
        return row;
    }

    /** Shows a step; what has not changed keeps the keyboard. */
    void show(Step step, StepRows rows, Optional<ToldTexts> texts) {
        shown = Optional.of(step);
        Optional<WorkedJob> worked = rows.worked();
        Optional<Stage> stage = desk.state()
                .shop()
                .map(shop -> shop.site().library().stageById().get(step.stage()));
        title.setText(stage.map(Stage::title).orElse(step.stage()));
        id.setText(step.id());
        about.setText(stage.map(Stage::about).orElse(Words.of("step.stage-gone", step.stage())));
        about.setVisible(!about.getText().isEmpty());
        told.show(texts.map(t -> t.of(step.id())).orElse(List.of()), false);
        inputs.show(step, stage);
        worked.ifPresent(
                w -> zones.show(w.setting().shape(), stage.map(Stage::surfaces).orElse(List.of()), step.zones()));
        priorities.get(step.priority()).setSelected(true);
        LocalDateTime otherwise = rows.start(step.id())
                .or(() -> worked.map(w -> w.setting().start()))
                .orElse(LocalDateTime.of(2000, 1, 1, 8, 0));
        start.show(step.at(), otherwise);
        figures.show(worked.flatMap(w -> rows.work(step.id()).map(work -> takes(w, work)))
                .orElse(List.of()));
    }

    private List<TrailLine> takes(WorkedJob worked, StepWork work) {
        Trails trails = new Trails(worked, desk.readout());
        List<TrailLine> lines = new ArrayList<>(trails.time(work));
        lines.addAll(trails.uses(work));
        lines.addAll(trails.removals(work));
        return lines;
    }

    ToldList told() {
        return told;
    }

    InputFields inputs() {
        return inputs;
    }

    ZoneList zones() {
        return zones;
    }

    StartField start() {
        return start;
    }

    JRadioButton priority(Priority priority) {
        return priorities.get(priority);
    }

    FigureLinks figures() {
        return figures;
    }
}
