package baywright.swing.shell;

import baywright.plan.Severity;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Texts;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** What was told lately, below the workbench. What is grave stays until it is closed; the rest goes after a while. */
final class NoticeLine extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int MOST = 3;
    private static final int STAYS_MILLIS = 8_000;

    private final transient Texts texts = Texts.beside(NoticeLine.class, "texts");
    private final transient List<Notice> notices = new ArrayList<>();
    private final transient Desk desk;

    NoticeLine(Desk desk) {
        super(new MigLayout("insets 0, wrap 1, gap 0, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        getAccessibleContext().setAccessibleName(texts.of("notices.name"));
        setVisible(false);
    }

    void say(Notice notice) {
        notices.removeIf(old -> old.text().equals(notice.text()));
        notices.add(0, notice);
        if (notice.weight() == Notice.Weight.DONE || notice.weight() == Notice.Weight.NOTE) {
            Timer timer = new Timer(STAYS_MILLIS, e -> close(notice));
            timer.setRepeats(false);
            timer.start();
        }
        rebuild();
    }

    List<Notice> notices() {
        return List.copyOf(notices);
    }

    void close(Notice notice) {
        if (notices.removeIf(n -> n.equals(notice))) {
            rebuild();
        }
    }

    private void rebuild() {
        removeAll();
        notices.stream().limit(MOST).forEach(notice -> add(row(notice)));
        if (notices.size() > MOST) {
            JButton rest = new JButton(texts.of("notices.more", notices.size() - MOST));
            rest.putClientProperty("JButton.buttonType", "borderless");
            rest.addActionListener(e -> {
                notices.subList(MOST, notices.size()).clear();
                rebuild();
            });
            add(rest, "gapleft 16, growx 0");
        }
        setVisible(!notices.isEmpty());
        revalidate();
        repaint();
    }

    private JComponent row(Notice notice) {
        JPanel row = Panels.toned(new MigLayout("insets 6 16 6 8", "[]unrel[grow, fill]rel[]rel[]", "[top]"), "tile");
        String word = texts.of("notice." + notice.weight().name().toLowerCase(Locale.ROOT));
        JLabel sign = new JLabel(word, sign(notice.weight()), JLabel.LEADING);
        sign.putClientProperty("FlatLaf.styleClass", "h4");
        Prose text = new Prose(notice.text());
        text.setFocusable(true);
        text.getAccessibleContext().setAccessibleName(word + ": " + notice.text());
        row.add(sign);
        row.add(text, "wmin 0");
        notice.more().ifPresent(more -> row.add(button(more)));
        JButton close = new JButton(new AbstractAction(texts.of("notice.close")) {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                close(notice);
            }
        });
        row.registerKeyboardAction(
                e -> close(notice), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        row.add(close);
        return row;
    }

    private JButton button(SuiteAction more) {
        JButton button = new JButton(more.title());
        button.addActionListener(e -> more.does().accept(desk));
        return button;
    }

    private static Icon sign(Notice.Weight weight) {
        return switch (weight) {
            case DONE -> new FineSign();
            case NOTE -> new SeveritySign(Severity.NOTE);
            case WARN -> new SeveritySign(Severity.WARN);
            case FAILED -> new SeveritySign(Severity.STOP);
        };
    }
}
