package baywright.swing.library;

import baywright.library.Stage;
import baywright.plan.ExampleCheck;
import baywright.plan.Severity;
import baywright.script.Place;
import baywright.site.OpenShop;
import baywright.swing.api.Desk;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The worked examples of a stage: which pass, what each expects and gets, and the lines that none of them reaches. */
final class ExamplesPane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Texts texts;
    private final transient Consumer<Place> go;
    private final ColumnPanel rows =
            new ColumnPanel(new MigLayout("insets 8 12 12 12, wrap 2, fillx", "[][grow, fill]", "[]2[]"));
    private transient Optional<TaskHandle> running = Optional.empty();
    private transient Optional<ExampleCheck.StageOutcome> outcome = Optional.empty();
    private transient List<String> shown = List.of();

    ExamplesPane(Desk desk, Texts texts, Consumer<Place> go) {
        super(new MigLayout("insets 0, fill", "[grow, fill]", "[grow, fill]"));
        this.desk = desk;
        this.texts = texts;
        this.go = go;
        add(rows.scrolled());
    }

    /** What came of the examples of the stage that is shown. */
    Optional<ExampleCheck.StageOutcome> outcome() {
        return outcome;
    }

    void show(OpenShop shop, Optional<String> id) {
        Optional<Stage> stage = id.map(i -> shop.site().library().stageById().get(i));
        List<String> now = List.of(shop.site().library().hash(), id.orElse(""));
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        running.ifPresent(TaskHandle::cancel);
        if (stage.isEmpty()) {
            outcome = Optional.empty();
            rows.removeAll();
            say(texts.of(id.isEmpty() ? "trial.no-stage" : "examples.not-yet"));
            return;
        }
        running = Optional.of(desk.run(new Task<>(
                texts.of("examples.task"),
                progress -> new ExampleCheck(
                                shop.site().library(), shop.site().workspace().shapes())
                        .of(stage.get()),
                this::fill,
                fault -> {
                    rows.removeAll();
                    say(texts.of("trial.failed", String.valueOf(fault.getMessage())));
                })));
    }

    private void say(String text) {
        rows.add(new Prose(text), "span 2, wmin 0");
        rows.revalidate();
        rows.repaint();
    }

    private void fill(ExampleCheck.StageOutcome result) {
        outcome = Optional.of(result);
        rows.removeAll();
        if (result.outcomes().isEmpty()) {
            say(texts.of("examples.none"));
        }
        for (ExampleCheck.Outcome one : result.outcomes()) {
            JLabel sign = new JLabel(one.passes() ? new FineSign() : new SeveritySign(Severity.STOP));
            sign.getAccessibleContext()
                    .setAccessibleName(texts.of(one.passes() ? "examples.passes" : "examples.fails"));
            rows.add(sign, "top, gaptop 8");
            LineButton name = new LineButton(
                    texts.of(one.passes() ? "examples.name.passes" : "examples.name.fails", one.example()),
                    () -> go.accept(one.place()));
            rows.add(name, "gaptop 4, wmin 0");
            for (ExampleCheck.Line line : one.lines()) {
                String key = !line.met()
                        ? "examples.missed"
                        : line.expected().equals(line.got()) ? "examples.same" : "examples.met";
                String text = texts.of(key, line.what(), line.expected(), line.got());
                rows.add(new TonedLabel(text, line.met() ? "faint" : "stop"), "skip 1, wmin 0");
            }
        }
        rows.add(
                new Prose(texts.of(
                        "examples.coverage",
                        result.coveragePercent(),
                        result.declared() - result.unreached().size(),
                        result.declared())),
                "span 2, gaptop 12, wmin 0");
        for (Place place : result.unreached()) {
            rows.add(
                    new LineButton(texts.of("examples.unreached", place.line()), () -> go.accept(place)),
                    "skip 1, wmin 0");
        }
        rows.revalidate();
        rows.repaint();
    }
}
