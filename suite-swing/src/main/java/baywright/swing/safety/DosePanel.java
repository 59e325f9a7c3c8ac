package baywright.swing.safety;

import baywright.safety.DayDose;
import baywright.safety.PersonDay;
import baywright.site.WorkedJob;
import baywright.swing.api.Colours;
import baywright.swing.api.Desk;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TrailLine;
import baywright.swing.parts.TrailPopup;
import java.awt.Cursor;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** What each person takes in on each day. Each figure shows what it comes from on a click, Enter or Space. */
final class DosePanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient List<Row> rows = new ArrayList<>();
    private transient List<PersonDay> shown;

    DosePanel(Desk desk) {
        super(new MigLayout("insets 0, wrap 1, gap 0 4", "[grow, fill]"));
        this.desk = desk;
        setOpaque(false);
    }

    /** Shows the exposures of a job; the same ones again do nothing, so that a row keeps the keyboard. */
    void show(WorkedJob worked) {
        List<PersonDay> days =
                worked.safety().days().stream().filter(PersonDay::isExposed).toList();
        if (days.equals(shown)) {
            return;
        }
        shown = days;
        removeAll();
        rows.clear();
        SafetyWords words = new SafetyWords(worked, desk.readout());
        if (days.isEmpty()) {
            add(new Prose(Words.of("doses.none")), "wmin 0");
        }
        for (PersonDay day : days) {
            add(new SectionHeading(words.who(day)), "wmin 0, gaptop 6");
            for (DayDose dose : DayDose.of(day, worked.safe().settings())) {
                Row row = new Row(dose, day, words);
                rows.add(row);
                add(row, "wmin 0");
            }
        }
        revalidate();
        repaint();
    }

    List<Row> rows() {
        return rows;
    }

    /** One dose: name, bar, figure, and what it means in a word beside its sign. */
    final class Row extends JPanel {

        private static final long serialVersionUID = 1L;

        private final transient DayDose dose;
        private final transient PersonDay day;
        private final transient SafetyWords words;

        Row(DayDose dose, PersonDay day, SafetyWords words) {
            super(new MigLayout("insets 3 8 3 8, gap 10", "[164!][grow, fill][84!, right][196!]", "[center]"));
            this.dose = dose;
            this.day = day;
            this.words = words;
            setOpaque(false);
            add(new JLabel(Words.of("dose." + dose.kind().name())), "wmin 0");
            add(new DoseBar(dose, value -> words.number(value, 1)), "wmin 80");
            JLabel figure = new JLabel(words.figure(dose));
            figure.putClientProperty("FlatLaf.styleClass", "h4");
            add(figure);
            add(new JLabel(words.verdict(dose), sign(), JLabel.LEADING));
            getAccessibleContext().setAccessibleName(name());
            setToolTipText(Words.of("dose.tip"));
            setFocusable(true);
            setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
            addMouseListener(new MouseAdapter() {
                @Override
                public void mouseClicked(MouseEvent e) {
                    requestFocusInWindow();
                    trace();
                }
            });
            getActionMap().put("trace", new AbstractAction() {
                private static final long serialVersionUID = 1L;

                @Override
                public void actionPerformed(ActionEvent e) {
                    trace();
                }
            });
            getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "trace");
            getInputMap().put(KeyStroke.getKeyStroke("SPACE"), "trace");
            addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent e) {
                    border();
                }

                @Override
                public void focusLost(FocusEvent e) {
                    border();
                }
            });
            border();
        }

        private Icon sign() {
            return dose.reached().<Icon>map(b -> new SeveritySign(b.severity())).orElseGet(FineSign::new);
        }

        private String name() {
            return Words.of(
                    "dose.name",
                    words.who(day),
                    Words.of("dose." + dose.kind().name()),
                    words.figure(dose),
                    words.verdict(dose));
        }

        /** What it comes from. */
        List<TrailLine> trail() {
            return words.trail(dose, day);
        }

        private void trace() {
            TrailPopup.show(this, name(), trail(), desk::go);
        }

        private void border() {
            setBorder(
                    isFocusOwner()
                            ? BorderFactory.createLineBorder(Colours.of("accent"), 1)
                            : BorderFactory.createEmptyBorder(1, 1, 1, 1));
        }

        @Override
        public AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new AccessibleJPanel() {
                    private static final long serialVersionUID = 1L;

                    @Override
                    public AccessibleRole getAccessibleRole() {
                        return AccessibleRole.PUSH_BUTTON;
                    }
                };
            }
            return accessibleContext;
        }
    }
}
