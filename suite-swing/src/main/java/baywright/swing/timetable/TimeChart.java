package baywright.swing.timetable;

import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.swing.parts.DoAction;
import baywright.swing.timetable.ChartRow.Bar;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/**
 * Rows of people or bays over days and hours, with a bar for each part of a step. Arrows go from bar to bar, Enter goes to the step,
 * Alt with an arrow moves it by a quarter of an hour, Delete takes a fixed start away; the mouse drags a step to another start.
 */
final class TimeChart extends JComponent implements Scrollable, Accessible {

    private static final long serialVersionUID = 1L;

    private static final float LANE = 30;
    private static final float WAIT_LANE = 9;
    private static final float PAD = 5;
    private static final int USUAL_HOUR = 84;
    private static final double LEAST_HOUR = 6;
    private static final double MOST_HOUR = 640;
    private static final double ZOOM = 1.25;
    private static final int DRAG_FROM = 4;
    private static final int UNIT = 24;

    /** Hears what the user does with bars. */
    interface Hands {
        /** A bar is chosen, or none. */
        void chosen(Optional<Entry> entry);

        /** The place of a step is asked for. */
        void go(Entry entry);

        /** A step hangs over another start; empty: it was let go without a change. */
        void hovers(Entry entry, Optional<LocalDateTime> start);

        /** A step is given another start. */
        void moved(Entry entry, LocalDateTime start);

        /** The chosen step is moved by a quarter of an hour. */
        void nudged(boolean later);

        /** A fixed start is taken away. */
        void released(Entry entry);
    }

    /** A step that is being dragged. */
    record Drag(Bar bar, double grip, LocalDateTime start) {}

    private final transient Hands hands;
    private final transient List<Runnable> laidOut = new ArrayList<>();
    private transient Optional<ChartPicture> picture = Optional.empty();
    private transient Optional<TimeScale> scale = Optional.empty();
    private transient Optional<Bar> chosen = Optional.empty();
    private transient Optional<Drag> drag = Optional.empty();
    private int chosenRow;
    private double perHour = USUAL_HOUR;
    private transient AccessibleContext context;

    TimeChart(String name, Hands hands) {
        this.hands = hands;
        updateUI();
        getAccessibleContext().setAccessibleName(name);
        setFocusable(true);
        setToolTipText("");
        Pointer pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                if (chosen.isEmpty()) {
                    beside(true);
                }
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        key("LEFT", () -> beside(false));
        key("RIGHT", () -> beside(true));
        key("UP", () -> row(false));
        key("DOWN", () -> row(true));
        key("HOME", () -> edge(false));
        key("END", () -> edge(true));
        key("PAGE_UP", () -> day(false));
        key("PAGE_DOWN", () -> day(true));
        key("ENTER", () -> chosen.ifPresent(bar -> hands.go(bar.entry())));
        key("alt LEFT", () -> move(false));
        key("alt RIGHT", () -> move(true));
        key("DELETE", () -> chosen.ifPresent(bar -> hands.released(bar.entry())));
        key("ESCAPE", this::letGo);
        for (String plus : List.of("PLUS", "ADD", "typed +")) {
            key(plus, () -> zoom(true));
        }
        for (String minus : List.of("MINUS", "SUBTRACT")) {
            key(minus, () -> zoom(false));
        }
    }

    private void key(String keys, Runnable does) {
        getInputMap().put(KeyStroke.getKeyStroke(keys), keys);
        getActionMap().put(keys, new DoAction(does));
    }

    /** Takes font and ink from the look; called again when the look or its size changes. */
    @Override
    public void updateUI() {
        setFont(UIManager.getFont("Label.font"));
        setForeground(UIManager.getColor("Label.foreground"));
        setBackground(UIManager.getColor("Panel.background"));
        rescale();
    }

    /** Calls when rows or scale have changed. */
    void onLayout(Runnable changed) {
        laidOut.add(changed);
    }

    /** Shows another timetable; what is chosen stays chosen where it still exists. */
    void show(ChartPicture other) {
        picture = Optional.of(other);
        drag = Optional.empty();
        rescale();
        Optional<Entry> before = chosen.map(Bar::entry);
        chosen = Optional.empty();
        before.ifPresent(entry -> pick(entry, false));
        if (before.isPresent() && chosen.isEmpty()) {
            hands.chosen(Optional.empty());
        }
    }

    private void rescale() {
        scale = picture.map(p -> p.scale(UIScale.scale((float) perHour)));
        revalidate();
        repaint();
        laidOut.forEach(Runnable::run);
    }

    Optional<ChartPicture> picture() {
        return picture;
    }

    Optional<TimeScale> scale() {
        return scale;
    }

    Optional<Drag> drag() {
        return drag;
    }

    Optional<Entry> chosen() {
        return chosen.map(Bar::entry);
    }

    boolean isChosen(Bar bar) {
        return chosen.filter(c -> c.isSame(bar.entry())).isPresent();
    }

    private List<ChartRow> rows() {
        return picture.map(ChartPicture::rows).orElse(List.of());
    }

    // ---- choosing

    /** Chooses the bar of an entry and brings it into sight; nothing where there is none. */
    void choose(Entry entry) {
        pick(entry, true);
        hands.chosen(chosen());
    }

    private void pick(Entry entry, boolean show) {
        List<ChartRow> rows = rows();
        for (int r = 0; r < rows.size(); r++) {
            for (Bar bar : rows.get(r).bars()) {
                if (bar.isSame(entry)) {
                    take(r, bar, show);
                    return;
                }
            }
        }
    }

    private void take(int row, Bar bar, boolean show) {
        Optional<Bar> before = chosen;
        chosen = Optional.of(bar);
        chosenRow = row;
        if (show) {
            Rectangle box = box(row, bar).getBounds();
            box.grow(UIScale.scale(UNIT), UIScale.scale((int) PAD));
            scrollRectToVisible(box);
        }
        repaint();
        if (context != null && !before.equals(chosen)) {
            context.firePropertyChange(
                    AccessibleContext.ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY, accessible(before), accessible(chosen));
        }
    }

    private Accessible accessible(Optional<Bar> bar) {
        return bar.map(b -> (Accessible) new AccessibleBar(this, b)).orElse(null);
    }

    private void choose(int row, Bar bar) {
        take(row, bar, true);
        hands.chosen(chosen());
    }

    /** The next bar of the row in time, or the one before. */
    private void beside(boolean later) {
        if (chosen.isEmpty()) {
            first().ifPresent(row -> choose(row, rows().get(row).bars().get(0)));
            return;
        }
        List<Bar> bars = rows().get(chosenRow).bars();
        int at = bars.indexOf(chosen.get()) + (later ? 1 : -1);
        if (at >= 0 && at < bars.size()) {
            choose(chosenRow, bars.get(at));
        }
    }

    private Optional<Integer> first() {
        for (int r = 0; r < rows().size(); r++) {
            if (!rows().get(r).bars().isEmpty()) {
                return Optional.of(r);
            }
        }
        return Optional.empty();
    }

    /** The bar nearest in time of the next row that has bars. */
    private void row(boolean down) {
        if (chosen.isEmpty()) {
            beside(true);
            return;
        }
        LocalDateTime at = chosen.get().entry().from();
        for (int r = chosenRow + (down ? 1 : -1); r >= 0 && r < rows().size(); r += down ? 1 : -1) {
            Optional<Bar> nearest = nearest(r, at);
            if (nearest.isPresent()) {
                choose(r, nearest.get());
                return;
            }
        }
    }

    private Optional<Bar> nearest(int row, LocalDateTime at) {
        double x = scale.orElseThrow().x(at);
        return rows().get(row).bars().stream()
                .min(Comparator.comparingDouble(
                        b -> Math.abs(scale.orElseThrow().x(b.entry().from()) - x)));
    }

    private void edge(boolean last) {
        List<Bar> bars = chosen.isPresent() ? rows().get(chosenRow).bars() : List.of();
        if (!bars.isEmpty()) {
            choose(chosenRow, bars.get(last ? bars.size() - 1 : 0));
        }
    }

    /** The first bar of the next day with work of the row, or of the one before. */
    private void day(boolean later) {
        if (chosen.isEmpty()) {
            beside(true);
            return;
        }
        LocalDate now = chosen.get().entry().from().toLocalDate();
        List<LocalDate> days = rows().get(chosenRow).bars().stream()
                .map(b -> b.entry().from().toLocalDate())
                .filter(d -> later ? d.isAfter(now) : d.isBefore(now))
                .toList();
        days.stream()
                .min(later ? Comparator.naturalOrder() : Comparator.reverseOrder())
                .ifPresent(day -> rows().get(chosenRow).bars().stream()
                        .filter(b -> b.entry().from().toLocalDate().equals(day))
                        .findFirst()
                        .ifPresent(bar -> choose(chosenRow, bar)));
    }

    // ---- moving

    private void move(boolean later) {
        if (chosen.filter(TimeChart::isWork).isPresent()) {
            hands.nudged(later);
        }
    }

    private static boolean isWork(Bar bar) {
        return bar.entry().doing() == Doing.WORK;
    }

    private void letGo() {
        if (drag.isPresent()) {
            Entry entry = drag.get().bar().entry();
            drag = Optional.empty();
            repaint();
            hands.hovers(entry, Optional.empty());
        }
    }

    // ---- zoom

    void zoom(boolean closer) {
        zoomTo(closer ? perHour * ZOOM : perHour / ZOOM);
    }

    /** So wide that everything fits into what is seen of it. */
    void zoomToWhole() {
        scale.ifPresent(s -> zoomTo(perHour * Math.max(1, getVisibleRect().getWidth()) / s.width()));
    }

    /** Zooms about what is chosen, or about the middle of what is seen. */
    private void zoomTo(double wide) {
        if (scale.isEmpty()) {
            return;
        }
        Rectangle seen = getVisibleRect();
        LocalDateTime about = chosen().map(Entry::from).orElse(scale.get().quarterAt(seen.getCenterX()));
        double from = scale.get().x(about) - seen.x;
        perHour = Math.min(MOST_HOUR, Math.max(LEAST_HOUR, wide));
        rescale();
        setSize(getPreferredSize());
        scrollRectToVisible(new Rectangle(
                (int) Math.max(0, scale.get().x(about) - from), seen.y, Math.max(1, seen.width), seen.height));
    }

    /** Brings a day into sight at the left. */
    void jumpTo(LocalDate day) {
        scale.ifPresent(s -> {
            Rectangle seen = getVisibleRect();
            scrollRectToVisible(new Rectangle((int) s.day(day).left(), seen.y, Math.max(1, seen.width), seen.height));
        });
    }

    // ---- where things lie

    double rowTop(int row) {
        double top = 0;
        for (int r = 0; r < row; r++) {
            top += rowHeight(rows().get(r));
        }
        return top;
    }

    static double rowHeight(ChartRow row) {
        double high = row.lanes() * LANE + row.waits() * WAIT_LANE + 2 * PAD;
        return UIScale.scale((float) Math.max(LANE + 2 * PAD, high));
    }

    /** Where a bar lies, from its start to its end. */
    Rectangle2D box(int row, Bar bar) {
        return box(row, bar, bar.entry().from(), bar.entry().to());
    }

    Rectangle2D box(int row, Bar bar, LocalDateTime from, LocalDateTime to) {
        TimeScale s = scale.orElseThrow();
        ChartRow in = rows().get(row);
        double left = s.x(from);
        double wide = Math.max(UIScale.scale(3f), s.x(to) - left);
        double lanes =
                UIScale.scale(PAD + (bar.isWait() ? in.lanes() * LANE + bar.lane() * WAIT_LANE : bar.lane() * LANE));
        boolean small = bar.entry().doing() == Doing.SETTING_UP;
        double high = UIScale.scale(bar.isWait() ? WAIT_LANE - 3 : small ? LANE - 10 : LANE - 3);
        return new Rectangle2D.Double(left, rowTop(row) + lanes + (small ? UIScale.scale(3.5f) : 0), wide, high);
    }

    Rectangle boxOf(Bar bar) {
        List<ChartRow> rows = rows();
        for (int r = 0; r < rows.size(); r++) {
            if (rows.get(r).bars().contains(bar)) {
                return box(r, bar).getBounds();
            }
        }
        return new Rectangle();
    }

    private Optional<Found> at(Point point) {
        List<ChartRow> rows = rows();
        for (int r = 0; r < rows.size(); r++) {
            for (Bar bar : rows.get(r).bars()) {
                Rectangle2D box = box(r, bar);
                if (box.contains(point) || box.intersects(point.x - 1.0, point.y - 1.0, 2, 2)) {
                    return Optional.of(new Found(r, bar));
                }
            }
        }
        return Optional.empty();
    }

    private record Found(int row, Bar bar) {}

    @Override
    public Dimension getPreferredSize() {
        double wide = scale.map(TimeScale::width).orElse(0.0);
        return new Dimension((int) Math.ceil(wide), (int) Math.ceil(rowTop(rows().size())));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(getBackground());
        g.fill(g.getClipBounds());
        picture.ifPresent(p -> new ChartPainter(this, p, scale.orElseThrow(), g).paint());
        g.dispose();
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event.getPoint())
                .map(found -> picture.orElseThrow().says().apply(found.bar().entry()))
                .orElse(null);
    }

    // ---- scrolling

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(UNIT);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.HORIZONTAL ? visible.width / 2 : visible.height / 2;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() > getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }

    // ---- the reader of the screen

    @Override
    public AccessibleContext getAccessibleContext() {
        if (context == null) {
            context = new Bars();
            accessibleContext = context;
        }
        return context;
    }

    private List<Bar> allBars() {
        return rows().stream().flatMap(r -> r.bars().stream()).toList();
    }

    /** A list of bars, row by row. */
    private final class Bars extends AccessibleJComponent {

        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LIST;
        }

        @Override
        public int getAccessibleChildrenCount() {
            return allBars().size();
        }

        @Override
        public Accessible getAccessibleChild(int index) {
            return accessible(Optional.of(allBars().get(index)));
        }

        @Override
        public Accessible getAccessibleAt(Point point) {
            return accessible(at(point).map(Found::bar));
        }
    }

    int indexOf(Bar bar) {
        return allBars().indexOf(bar);
    }

    // ---- mouse

    private final class Pointer extends MouseAdapter {

        private Optional<Found> pressed = Optional.empty();
        private Point from = new Point();

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            pressed = SwingUtilities.isLeftMouseButton(e) ? at(e.getPoint()) : Optional.empty();
            from = e.getPoint();
            pressed.ifPresent(found -> {
                take(found.row(), found.bar(), false);
                hands.chosen(chosen());
            });
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            pressed.filter(found -> isWork(found.bar())).ifPresent(found -> {
                boolean begun = drag.isPresent() || Math.abs(e.getX() - from.x) > UIScale.scale(DRAG_FROM);
                if (begun) {
                    double grip = from.x - box(found.row(), found.bar()).getX();
                    hang(found.bar(), grip, scale.orElseThrow().quarterAt(e.getX() - grip));
                    scrollRectToVisible(new Rectangle(e.getX(), e.getY(), 1, 1));
                }
            });
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            pressed = Optional.empty();
            drop();
        }

        @Override
        public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
                at(e.getPoint()).ifPresent(found -> hands.go(found.bar().entry()));
            }
        }
    }

    private void hang(Bar bar, double grip, LocalDateTime start) {
        boolean other = drag.filter(d -> d.start().equals(start)).isEmpty();
        drag = Optional.of(new Drag(bar, grip, start));
        repaint();
        if (other) {
            hands.hovers(bar.entry(), Optional.of(start));
        }
    }

    /** Hangs a step over another start, as the mouse does. */
    void hang(Entry entry, LocalDateTime start) {
        allBars().stream().filter(b -> b.isSame(entry)).findFirst().ifPresent(bar -> hang(bar, 0, start));
    }

    /** Lets the step go where it hangs. */
    void drop() {
        Optional<Drag> done = drag;
        letGo();
        done.filter(d -> !d.start().equals(d.bar().entry().from()))
                .ifPresent(d -> hands.moved(d.bar().entry(), d.start()));
    }

    /** Calls a consumer with each row and its place that a vertical stretch meets. */
    void eachRow(double top, double bottom, Consumer<Integer> does) {
        double at = 0;
        for (int r = 0; r < rows().size(); r++) {
            double next = at + rowHeight(rows().get(r));
            if (next >= top && at <= bottom) {
                does.accept(r);
            }
            at = next;
        }
    }
}
