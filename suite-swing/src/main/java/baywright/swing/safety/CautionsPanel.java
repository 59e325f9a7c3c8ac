package baywright.swing.safety;

import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.safety.Caution;
import baywright.safety.Cautioned;
import baywright.safety.JobSafety;
import baywright.safety.SafetyCodes;
import baywright.safety.SafetyReason;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Dangers that stop the plan until a named person answers for them. Name and day are typed by that person; nothing is filled in before. */
final class CautionsPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient SafetyEdits edits;
    private final transient Map<Caution, Form> forms = new EnumMap<>(Caution.class);
    private transient List<Cautioned> shown;
    private transient String of = "";

    CautionsPanel(Desk desk, SafetyEdits edits) {
        super(new MigLayout("insets 0, gap 8 4", "[][grow, fill]", "[top]"));
        this.desk = desk;
        this.edits = edits;
        setOpaque(false);
    }

    /** Shows the cautions of a plan with the answers of the job as it is now; what was typed and not yet given stays. */
    void show(SafetyFigures figures, JobSafety now) {
        List<Cautioned> all = figures.cautions().stream()
                .map(c -> new Cautioned(
                        c.caution(), c.step(), now.acknowledged(c.caution().id())))
                .toList();
        String job = figures.worked().job().id();
        if (all.equals(shown) && job.equals(of)) {
            return;
        }
        if (!job.equals(of)) {
            forms.clear();
        }
        of = job;
        shown = all;
        removeAll();
        SafetyWords words = new SafetyWords(figures.worked(), desk.readout());
        if (all.isEmpty()) {
            add(new JLabel(new FineSign()), "gaptop 3");
            add(new Prose(Words.of("cautions.none")), "wmin 0, wrap");
        }
        for (Cautioned one : all) {
            Icon sign = one.by().isPresent() ? new SeveritySign(Severity.NOTE) : new SeveritySign(Severity.STOP);
            add(new JLabel(sign), "gaptop 3");
            add(told(one, words), "wmin 0, gapbottom 10, wrap");
        }
        revalidate();
        repaint();
    }

    private JPanel told(Cautioned one, SafetyWords words) {
        JPanel told = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 3", "[grow, fill]"));
        told.setOpaque(false);
        JLabel title = new JLabel(Words.capital(one.caution().title()));
        title.putClientProperty("FlatLaf.styleClass", "h4");
        told.add(title, "wmin 0");
        told.add(new Prose(words.of(open(one))), "wmin 0");
        if (one.by().isPresent()) {
            forms.remove(one.caution());
            told.add(
                    new Prose(Words.of(
                            "caution.answered",
                            one.by().get().by(),
                            desk.readout().moment(one.by().get().at()))),
                    "wmin 0");
            told.add(takeBack(one.caution()), "growx 0, split 2");
            told.add(step(one, words), "growx 0");
        } else {
            Form form = forms.computeIfAbsent(one.caution(), Form::new);
            told.add(form, "wmin 0");
            told.add(step(one, words), "growx 0");
        }
        return told;
    }

    /** The finding of a caution that nobody has answered for, also where a rule of the library speaks in its place. */
    private static Finding open(Cautioned one) {
        return new Finding(
                SafetyCodes.ACKNOWLEDGE,
                Severity.STOP,
                Optional.of(one.step()),
                List.of(),
                new SafetyReason.NotAcknowledged(one.caution()));
    }

    private JButton takeBack(Caution caution) {
        JButton button = new JButton(Words.of("caution.take-back"));
        button.getAccessibleContext().setAccessibleName(Words.of("caution.take-back.name", caution.title()));
        button.addActionListener(e -> edits.takeBack(caution));
        return button;
    }

    private JButton step(Cautioned one, SafetyWords words) {
        JButton go = new JButton(Words.of("found.step"));
        go.putClientProperty("JButton.buttonType", "borderless");
        go.getAccessibleContext().setAccessibleName(Words.of("found.step.name", words.step(one.step())));
        go.addActionListener(e -> desk.go(Destination.step(one.step())));
        return go;
    }

    /** The form of a caution that is open. */
    Form form(Caution caution) {
        return forms.get(caution);
    }

    /** How many nobody answers for. */
    int open() {
        return shown == null
                ? 0
                : (int) shown.stream().filter(c -> c.by().isEmpty()).count();
    }

    List<Cautioned> shown() {
        return shown == null ? List.of() : new ArrayList<>(shown);
    }

    /** Name, day, and the button that answers with them. */
    final class Form extends JPanel {

        private static final long serialVersionUID = 1L;

        private final Caution caution;
        private final JTextField name = new JTextField();
        private final JTextField day = new JTextField();
        private final TonedLabel trouble = new TonedLabel("", "stop", "small");

        Form(Caution caution) {
            super(new MigLayout("insets 0, gap 8 2, hidemode 3", "[grow 60, fill][grow 30, fill][]", "[][][]"));
            this.caution = caution;
            setOpaque(false);
            JLabel who = new JLabel(Words.of("caution.name"));
            who.setLabelFor(name);
            JLabel when = new JLabel(Words.of("caution.day"));
            when.setLabelFor(day);
            name.getAccessibleContext().setAccessibleName(Words.of("caution.name.of", caution.title()));
            day.getAccessibleContext().setAccessibleName(Words.of("caution.day.of", caution.title()));
            day.putClientProperty("JTextField.placeholderText", Words.of("caution.day.form"));
            JButton answer = new JButton(Words.of("caution.answer"));
            answer.getAccessibleContext().setAccessibleName(Words.of("caution.answer.name", caution.title()));
            answer.addActionListener(e -> answer());
            name.addActionListener(e -> answer());
            day.addActionListener(e -> answer());
            trouble.setVisible(false);
            add(who, "wmin 0");
            add(when, "wmin 0, wrap");
            add(name, "wmin 60");
            add(day, "wmin 136");
            add(answer, "wrap");
            add(trouble, "span, wmin 0");
        }

        JTextField name() {
            return name;
        }

        JTextField day() {
            return day;
        }

        String trouble() {
            return trouble.isVisible() ? trouble.getText() : "";
        }

        /** Answers with what was typed, or says what is missing. */
        void answer() {
            say("", null);
            if (name.getText().isBlank()) {
                say(Words.of("caution.no-name"), name);
                return;
            }
            Optional<LocalDateTime> at = time(day.getText());
            if (at.isEmpty()) {
                say(Words.of("caution.no-day"), day);
                return;
            }
            try {
                edits.answer(caution, name.getText(), at.get());
            } catch (IllegalArgumentException e) {
                say(String.valueOf(e.getMessage()), day);
            }
        }

        private void say(String text, JTextField field) {
            trouble.setText(text);
            trouble.setVisible(!text.isEmpty());
            for (JTextField one : List.of(name, day)) {
                one.putClientProperty("JComponent.outline", one == field ? "error" : null);
                one.getAccessibleContext().setAccessibleDescription(one == field ? text : null);
            }
            if (field != null) {
                field.requestFocusInWindow();
            }
            revalidate();
            repaint();
        }
    }

    /** A day with or without a time of day; without one it counts from the day's beginning. */
    static Optional<LocalDateTime> time(String text) {
        String bare = text.strip().replaceAll("\\s+", "T");
        try {
            return Optional.of(
                    bare.contains("T")
                            ? LocalDateTime.parse(bare)
                            : LocalDate.parse(bare).atStartOfDay());
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
