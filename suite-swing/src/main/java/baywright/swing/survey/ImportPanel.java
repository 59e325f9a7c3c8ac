package baywright.swing.survey;

import baywright.quantity.Unit;
import baywright.swing.api.Readout;
import baywright.swing.api.Task;
import baywright.swing.api.Texts;
import baywright.swing.parts.SectionHeading;
import baywright.vehicle.FilmStatistics;
import baywright.vehicle.Reading;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneSurvey;
import baywright.workspace.FileProblem;
import baywright.workspace.ReadingsFile;
import baywright.workspace.ReadingsForm;
import java.awt.Component;
import java.awt.Dialog;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;

/** Shows what was understood of a file of readings and what was not, before any of it is taken. */
final class ImportPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Edits edits;
    private final transient Texts texts;
    private final transient Surveyed into;
    private final String name;
    private final transient Function<ReadingsForm, ReadingsFile> reader;
    private final JLabel heading = new JLabel();
    private final DefaultTableModel rows = new DefaultTableModel() {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    };
    private final JTextArea problems = new JTextArea(5, 40);
    private final SectionHeading problemsHeading;
    private final JComboBox<String> unit = new JComboBox<>();
    private final JComboBox<String> decimal = new JComboBox<>();
    private final JRadioButton replace;
    private final JRadioButton add;
    private final JButton take;
    private transient Optional<ReadingsFile> read = Optional.empty();

    /**
     * @param name   of the file, for people
     * @param reader reads it; called off the event thread
     */
    ImportPanel(Edits edits, Surveyed into, String name, Function<ReadingsForm, ReadingsFile> reader) {
        super(new MigLayout("insets 16, wrap 2, gap 8 8, hidemode 3", "[][grow,fill]", ""));
        this.edits = edits;
        texts = edits.texts();
        this.into = into;
        this.name = name;
        this.reader = reader;
        heading.putClientProperty("html.disable", true);
        heading.putClientProperty("FlatLaf.styleClass", "h3");
        rows.setColumnIdentifiers(new Object[] {
            texts.of("import.zone"),
            texts.of("import.number"),
            texts.of("import.lowest"),
            texts.of("import.median"),
            texts.of("import.before")
        });
        JTable table = new JTable(rows);
        table.getAccessibleContext().setAccessibleName(texts.of("import.understood"));
        table.setFillsViewportHeight(true);
        problems.setEditable(false);
        problems.setLineWrap(true);
        problems.setWrapStyleWord(true);
        problemsHeading = new SectionHeading(texts.of("import.problems"), problems);
        combo(unit, "import.unit", "import.unit.said", "µm", "mil");
        combo(decimal, "import.decimal", "import.decimal.said", texts.of("import.point"), texts.of("import.comma"));
        replace = new JRadioButton(texts.of("import.replace"), true);
        add = new JRadioButton(texts.of("import.add"));
        javax.swing.ButtonGroup group = new javax.swing.ButtonGroup();
        group.add(replace);
        group.add(add);
        take = new JButton(texts.of("import.take"));
        take.putClientProperty("JButton.buttonType", "default");
        take.setEnabled(false);
        take.addActionListener(e -> take());
        JButton leave = new JButton(texts.of("import.leave"));
        leave.addActionListener(e -> close());
        Entry.onKey(this, "ESCAPE", this::close);

        add(heading, "span, growx, wmin 0");
        add(label(unit, "import.unit"));
        add(unit, "growx 0");
        add(label(decimal, "import.decimal"));
        add(decimal, "growx 0");
        add(new JScrollPane(table), "span, grow, push, h 160::");
        add(problemsHeading, "span");
        add(new JScrollPane(problems), "span, growx, h 80::");
        add(replace, "span, split 2, growx 0");
        add(add, "growx 0");
        add(leave, "span, split 2, tag cancel, growx 0");
        add(take, "tag ok, growx 0");
        readAgain();
    }

    private void combo(JComboBox<String> combo, String key, String said, String... choices) {
        combo.addItem(texts.of(said));
        for (String choice : choices) {
            combo.addItem(choice);
        }
        combo.getAccessibleContext().setAccessibleName(texts.of(key));
        combo.addActionListener(e -> readAgain());
    }

    private JLabel label(Component of, String key) {
        JLabel label = new JLabel(texts.of(key));
        label.setLabelFor(of);
        return label;
    }

    JComboBox<String> unit() {
        return unit;
    }

    JButton takeButton() {
        return take;
    }

    String problems() {
        return problems.getText();
    }

    int understood() {
        return rows.getRowCount();
    }

    void addToThoseBefore() {
        add.setSelected(true);
    }

    private ReadingsForm form() {
        Optional<Unit> said = unit.getSelectedIndex() <= 0
                ? Optional.empty()
                : Optional.of(unit.getSelectedIndex() == 1 ? Unit.MICROMETRE : Unit.MIL);
        Optional<Character> mark = decimal.getSelectedIndex() <= 0
                ? Optional.empty()
                : Optional.of(decimal.getSelectedIndex() == 1 ? '.' : ',');
        return new ReadingsForm(Optional.empty(), mark, said);
    }

    private void readAgain() {
        if (reader == null) {
            return;
        }
        heading.setText(texts.of("import.reading", name));
        ReadingsForm form = form();
        edits.desk()
                .run(new Task<>(
                        texts.of("import.reading", name),
                        progress -> reader.apply(form),
                        this::show,
                        fault -> heading.setText(texts.of("import.failed", name, String.valueOf(fault.getMessage())))));
    }

    private void show(ReadingsFile file) {
        read = Optional.of(file);
        Readout readout = edits.desk().readout();
        rows.setRowCount(0);
        int count = 0;
        for (Map.Entry<String, List<Reading>> zone : file.byZone().entrySet()) {
            FilmStatistics figures = FilmStatistics.of(zone.getValue()).orElseThrow();
            count += zone.getValue().size();
            rows.addRow(new Object[] {
                Plain.text(into.vehicle().zone(zone.getKey()).map(Zone::title).orElse(zone.getKey())),
                zone.getValue().size(),
                readout.film(figures.lowest().micrometres()),
                readout.film(FilmStatistics.median(zone.getValue())),
                into.found(zone.getKey()).readings().size()
            });
        }
        StringBuilder said = new StringBuilder();
        for (FileProblem problem : file.problems()) {
            said.append(problem).append('\n');
        }
        problems.setText(said.toString());
        problems.setCaretPosition(0);
        problemsHeading.setVisible(!file.problems().isEmpty());
        problems.getParent().getParent().setVisible(!file.problems().isEmpty());
        take.setEnabled(!file.byZone().isEmpty());
        heading.setText(
                file.hasErrors()
                        ? texts.of("import.stopped", name)
                        : texts.of("import.found", name, count, file.byZone().size()));
        revalidate();
    }

    private void take() {
        read.ifPresent(file -> edits.survey(texts.of("import.change", name), survey -> with(survey, file)));
        close();
    }

    private Survey with(Survey survey, ReadingsFile file) {
        Survey all = survey;
        for (Map.Entry<String, List<Reading>> zone : file.byZone().entrySet()) {
            ZoneSurvey found = all.zone(zone.getKey());
            List<Reading> readings = new ArrayList<>(add.isSelected() ? found.readings() : List.of());
            readings.addAll(zone.getValue());
            all = all.withZone(zone.getKey(), found.withReadings(readings));
        }
        return all;
    }

    private void close() {
        if (SwingUtilities.getWindowAncestor(this) instanceof JDialog dialog) {
            dialog.dispose();
        }
    }

    /** Opens it over the window. */
    void open(Component over) {
        JDialog dialog = new JDialog(
                SwingUtilities.getWindowAncestor(over), texts.of("import.title"), Dialog.ModalityType.DOCUMENT_MODAL);
        dialog.setContentPane(this);
        dialog.getRootPane().setDefaultButton(take);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> close(), javax.swing.KeyStroke.getKeyStroke("ESCAPE"), WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setLocationRelativeTo(over);
        dialog.setVisible(true);
    }
}
