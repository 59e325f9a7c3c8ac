package baywright.swing.survey;

import baywright.site.OpenShop;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Texts;
import baywright.vehicle.Shape;
import baywright.workspace.Job;
import baywright.workspace.JobEdit;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Adds jobs: an empty one, or a copy of the chosen one. */
final class NewJob {

    private NewJob() {}

    /** Asks for a title and a shape, then adds an empty job. */
    static void ask(Desk desk, Texts texts) {
        List<Shape> shapes =
                desk.state().shop().map(s -> s.site().workspace().shapes()).orElse(List.of());
        JTextField title = new JTextField(28);
        JComboBox<String> shape = new JComboBox<>();
        shapes.forEach(s -> shape.addItem(Plain.text(s.title())));
        JPanel form = new JPanel(new MigLayout("insets 0, wrap 2, gap 8 8", "[][grow,fill]"));
        JLabel titleLabel = new JLabel(texts.of("job.title"));
        titleLabel.setLabelFor(title);
        JLabel shapeLabel = new JLabel(texts.of("shape"));
        shapeLabel.setLabelFor(shape);
        form.add(titleLabel);
        form.add(title);
        form.add(shapeLabel);
        form.add(shape);
        title.addAncestorListener(new FocusWhenShown());
        int answer = JOptionPane.showConfirmDialog(
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow(),
                form,
                texts.of("new.action"),
                JOptionPane.OK_CANCEL_OPTION,
                JOptionPane.PLAIN_MESSAGE);
        if (answer == JOptionPane.OK_OPTION && shape.getSelectedIndex() >= 0) {
            String words = title.getText().isBlank()
                    ? texts.of("new.untitled")
                    : title.getText().strip();
            add(desk, texts, words, shapes.get(shape.getSelectedIndex()).id());
        }
    }

    /** Adds an empty job, chooses it and shows its survey. */
    static void add(Desk desk, Texts texts, String title, String shape) {
        desk.state().shop().ifPresent(shop -> {
            Set<String> charge = shop.site().shop().rates().charge().keySet();
            JobEdit blank = JobEdit.blank(JobEdit.idFor(title, ids(shop)), title, shape);
            charge.stream()
                    .sorted()
                    .findFirst()
                    .filter(r -> charge.size() > 1)
                    .ifPresent(r -> blank.rate(Optional.of(r)));
            put(desk, texts.of("new.change", title), texts, blank);
        });
    }

    /** Adds a copy of the chosen job, chooses it and shows its survey. Photos show how that vehicle came and are not copied. */
    static void copy(Desk desk, Texts texts) {
        desk.state()
                .shop()
                .ifPresent(shop -> desk.state().job().ifPresent(job -> {
                    String title = texts.of("copy.title", job.title());
                    JobEdit copy = JobEdit.of(job)
                            .id(JobEdit.idFor(job.title(), ids(shop)))
                            .title(title)
                            .photos(List.of());
                    put(desk, texts.of("copy.change", job.title()), texts, copy);
                }));
    }

    private static void put(Desk desk, String change, Texts texts, JobEdit edit) {
        try {
            Job job = edit.job();
            desk.change(change, shop -> shop.withJob(job));
            desk.choose(job.id());
            desk.go(new Destination("survey", Map.of()));
        } catch (IllegalArgumentException e) {
            desk.say(Notice.failed(texts.of("new.failed", String.valueOf(e.getMessage()))));
        }
    }

    private static Set<String> ids(OpenShop shop) {
        return shop.jobs().stream().map(Job::id).collect(Collectors.toSet());
    }
}
