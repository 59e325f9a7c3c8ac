package baywright.swing.library;

import baywright.editor.Hover;
import baywright.editor.Known;
import baywright.editor.Proposal;
import baywright.editor.TextEdit;
import baywright.editor.TextPlaces;
import baywright.plan.Severity;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.swing.api.Colours;
import baywright.swing.api.Texts;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import java.awt.Color;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.awt.event.MouseEvent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.BadLocationException;
import javax.swing.text.Highlighter;
import javax.swing.text.Position;
import net.miginfocom.swing.MigLayout;
import org.fife.ui.rsyntaxtextarea.SquiggleUnderlineHighlightPainter;
import org.fife.ui.rtextarea.Gutter;
import org.fife.ui.rtextarea.RTextScrollPane;

/** A script being written: its text with marks where something is wrong, and below it what stands at the caret. */
final class ScriptPane extends JPanel {

    private static final long serialVersionUID = 1L;

    /** Keys after a longer rest begin a new step of undo. */
    private static final long BURST_MILLIS = 1200;

    private static final int REST_MILLIS = 150;

    /** Hears of what is typed. */
    interface Listener {
        /** @param burst the same for what undo takes back together */
        void edited(String file, String text, String burst);

        /** The caret rests elsewhere. */
        void rested(String file, int offset);
    }

    private record Mark(Object highlight, Problem problem) {}

    private final ScriptArea area = new ScriptArea();
    private final RTextScrollPane scroll = new RTextScrollPane(area);
    private final TonedLabel heading = new TonedLabel("", null, "h3");
    private final TonedLabel meaning = new TonedLabel(" ", "faint");
    private final transient Listener listener;
    private final transient ScriptCompletion completion;
    private final transient List<Mark> marks = new ArrayList<>();
    private final transient Deque<Position[]> slots = new ArrayDeque<>();
    private final Timer rest;
    private transient Known known = Known.nothing();
    private String file = "";
    private boolean quiet;
    private long lastEdit;
    private int lastOffset = -1;
    private int burst;

    ScriptPane(Texts texts, Listener listener) {
        super(new MigLayout("insets 0, wrap 1, fill", "[grow, fill]", "[][grow, fill][]"));
        this.listener = listener;
        scroll.setLineNumbersEnabled(true);
        scroll.setFoldIndicatorEnabled(true);
        scroll.setIconRowHeaderEnabled(true);
        add(heading, "wmin 0, gapleft 8, gaptop 4");
        add(scroll, "wmin 0, hmin 0");
        add(meaning, "wmin 0, gapleft 8, gapbottom 4");
        area.getAccessibleContext().setAccessibleName(texts.of("script.name"));
        area.setToolTipSupplier((text, event) -> tip(event));
        completion = new ScriptCompletion(() -> known, this::take);
        completion.install(area);
        area.getDocument().addDocumentListener(new Typing());
        rest = new Timer(REST_MILLIS, onRest());
        rest.setRepeats(false);
        area.addCaretListener(e -> rest.restart());
        Action tab = area.getActionMap().get(area.getInputMap().get(KeyStroke.getKeyStroke("TAB")));
        area.getInputMap().put(KeyStroke.getKeyStroke("TAB"), "next-slot");
        area.getActionMap().put("next-slot", new NextSlot(tab));
        dress();
    }

    private ActionListener onRest() {
        return e -> {
            meaning.setText(atCaret());
            listener.rested(file, area.getCaretPosition());
        };
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (scroll != null) {
            dress();
        }
    }

    private void dress() {
        Gutter gutter = scroll.getGutter();
        gutter.setBackground(Colours.of("tile"));
        gutter.setLineNumberColor(Colours.of("faint"));
        gutter.setCurrentLineNumberColor(area.getForeground());
        gutter.setBorderColor(Colours.of("line"));
        gutter.setLineNumberFont(area.getFont());
        gutter.setFoldIndicatorForeground(Colours.of("faint"));
        gutter.setFoldBackground(Colours.of("tile"));
        gutter.setArmedFoldBackground(Colours.of("script.line"));
    }

    ScriptArea area() {
        return area;
    }

    String file() {
        return file;
    }

    String text() {
        return area.getText();
    }

    /** What ids there are, for completion and meanings. */
    void know(Known ids) {
        known = ids;
    }

    /** Shows a script from its beginning. */
    void open(String name, String text) {
        file = name;
        heading.setText(name);
        slots.clear();
        unmark();
        quietly(() -> {
            area.setText(text);
            area.discardAllEdits();
        });
        area.setCaretPosition(0);
        lastOffset = -1;
    }

    /** Takes over a text that was changed elsewhere, such as by undo; the caret goes to the change. */
    void sync(String text) {
        String now = area.getText();
        if (now.equals(text)) {
            return;
        }
        int from = 0;
        int most = Math.min(now.length(), text.length());
        while (from < most && now.charAt(from) == text.charAt(from)) {
            from++;
        }
        int tail = 0;
        while (tail < most - from && now.charAt(now.length() - 1 - tail) == text.charAt(text.length() - 1 - tail)) {
            tail++;
        }
        int start = from;
        String middle = text.substring(from, text.length() - tail);
        int end = now.length() - tail;
        quietly(() -> area.replaceRange(middle, start, end));
        area.setCaretPosition(start + middle.length());
        area.discardAllEdits();
        lastOffset = -1;
    }

    private void quietly(Runnable change) {
        quiet = true;
        try {
            change.run();
        } finally {
            quiet = false;
        }
    }

    /** Puts the caret at a place, from 1, in the middle of what is seen. */
    void goTo(int line, int column) {
        int offset = new TextPlaces(file, text()).offset(new Place(file, Math.max(line, 1), Math.max(column, 1)));
        area.setCaretPosition(Math.min(offset, area.getDocument().getLength()));
        area.requestFocusInWindow();
    }

    /**
     * Marks what is wrong.
     *
     * @param problems of this script
     * @param of       the text in which they were found; while another one is typed the marks stay as they are
     */
    void mark(List<Problem> problems, String of) {
        if (!of.equals(text())) {
            return;
        }
        unmark();
        TextPlaces places = new TextPlaces(file, of);
        for (Problem problem : problems) {
            boolean error = problem.severity() == Problem.Severity.ERROR;
            Color colour = Colours.of(error ? "stop" : "warn");
            int from = Math.min(places.offset(problem.place()), of.length());
            try {
                if (problem.place().line() > 0) {
                    Object mark = area.getHighlighter()
                            .addHighlight(from, end(of, from), new SquiggleUnderlineHighlightPainter(colour));
                    marks.add(new Mark(mark, problem));
                }
                scroll.getGutter()
                        .addLineTrackingIcon(
                                Math.max(0, problem.place().line() - 1),
                                new SeveritySign(error ? Severity.STOP : Severity.WARN),
                                escaped(problem.message()));
            } catch (BadLocationException e) {
                throw new IllegalStateException("no place for " + problem, e);
            }
        }
        meaning.setText(atCaret());
    }

    private void unmark() {
        marks.forEach(m -> area.getHighlighter().removeHighlight(m.highlight()));
        marks.clear();
        scroll.getGutter().removeAllTrackingIcons();
    }

    /** The end of the word, number or quoted text that begins at an offset. */
    private static int end(String text, int from) {
        if (from >= text.length()) {
            return from;
        }
        char first = text.charAt(from);
        int to = from + 1;
        if (first == '\'' || first == '"') {
            while (to < text.length() && text.charAt(to) != first && text.charAt(to) != '\n') {
                to++;
            }
            return Math.min(to + 1, text.length());
        }
        while (to < text.length() && (Character.isLetterOrDigit(text.charAt(to)) || text.charAt(to) == '.')) {
            to++;
        }
        return to;
    }

    /** Marks that are shown, for tests. */
    List<Problem> marked() {
        return marks.stream().map(Mark::problem).toList();
    }

    private Optional<Problem> problemAt(int offset) {
        return marks.stream()
                .filter(m -> ((Highlighter.Highlight) m.highlight()).getStartOffset() <= offset
                        && offset <= ((Highlighter.Highlight) m.highlight()).getEndOffset())
                .map(Mark::problem)
                .findFirst();
    }

    /** What is wrong or what stands at the caret, in one line. */
    String atCaret() {
        int offset = area.getCaretPosition();
        Optional<Problem> problem = problemAt(offset);
        if (problem.isPresent()) {
            return problem.get().message();
        }
        return Hover.at(text(), offset, known)
                .map(h -> h.text().isBlank()
                        ? h.title()
                        : h.title() + ": " + h.text().replace("\n", "; "))
                .orElse(" ");
    }

    private String tip(MouseEvent event) {
        int offset = area.viewToModel2D(event.getPoint());
        Optional<Problem> problem = problemAt(offset);
        if (problem.isPresent()) {
            return escaped(problem.get().message());
        }
        return Hover.at(text(), offset, known)
                .map(h -> escaped(h.title() + (h.text().isBlank() ? "" : "\n" + h.text())))
                .orElse(null);
    }

    /** A text of a script for a tip, which is HTML to have several lines. */
    private static String escaped(String text) {
        return "<html><body width=\"420\">"
                + text.replace("&", "&amp;")
                        .replace("<", "&lt;")
                        .replace(">", "&gt;")
                        .replace("\n", "<br>")
                + "</body></html>";
    }

    /** Puts a proposal into the text and selects what waits to be filled in. */
    void take(Proposal proposal) {
        TextEdit edit = proposal.edit();
        slots.clear();
        area.replaceRange(edit.with(), edit.from(), edit.to());
        try {
            for (Proposal.Slot slot : proposal.slots()) {
                slots.add(new Position[] {
                    area.getDocument().createPosition(edit.from() + slot.from()),
                    area.getDocument().createPosition(edit.from() + slot.to())
                });
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException("slots outside of " + edit, e);
        }
        nextSlot();
    }

    private boolean nextSlot() {
        Position[] slot = slots.poll();
        if (slot == null) {
            return false;
        }
        area.select(slot[0].getOffset(), slot[1].getOffset());
        return true;
    }

    void complete() {
        area.requestFocusInWindow();
        completion.doCompletion();
    }

    private final class NextSlot extends AbstractAction {
        private static final long serialVersionUID = 1L;

        private final transient Action otherwise;

        NextSlot(Action otherwise) {
            this.otherwise = otherwise;
        }

        @Override
        public void actionPerformed(ActionEvent e) {
            if (!nextSlot() && otherwise != null) {
                otherwise.actionPerformed(e);
            }
        }
    }

    private final class Typing implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            typed(e.getOffset(), e.getOffset() + e.getLength());
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            typed(e.getOffset() + e.getLength(), e.getOffset());
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            // styles are no text
        }

        private void typed(int before, int after) {
            if (quiet) {
                return;
            }
            long now = System.nanoTime() / 1_000_000;
            if (now - lastEdit > BURST_MILLIS || before != lastOffset) {
                burst++;
            }
            lastOffset = after;
            listener.edited(file, area.getText(), file + "#" + burst);
            lastEdit = System.nanoTime() / 1_000_000;
        }
    }
}
