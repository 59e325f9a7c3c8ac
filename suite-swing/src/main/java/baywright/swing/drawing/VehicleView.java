package baywright.swing.drawing;

import baywright.swing.api.Colours;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.InputEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JToolTip;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/**
 * A vehicle whose zones can be chosen: by the mouse (with the menu key or Shift: one more), or by the keyboard, where arrow keys go from
 * zone to zone, Enter chooses one, Space adds one or takes it away and Ctrl+A (Cmd+A) chooses all.
 */
public final class VehicleView extends JComponent implements Accessible {

    private static final long serialVersionUID = 1L;
    private static final int MARGIN = 10;
    private static final float SMALLER = 0.86f;

    private transient Shape vehicle;
    private transient VehicleDrawing drawing;
    private transient ZonePainter painter;
    private final transient Set<String> chosen = new LinkedHashSet<>();
    private transient Optional<String> focused = Optional.empty();
    private transient Optional<String> hovered = Optional.empty();
    private transient Consumer<List<String>> listener = zones -> {};
    private transient AccessibleContext context;

    /** @param name what it is, for the reader of the screen */
    public VehicleView(String name, Shape vehicle, ZonePainter painter) {
        this.vehicle = vehicle;
        this.painter = painter;
        drawing = VehicleDrawing.of(vehicle);
        updateUI();
        getAccessibleContext().setAccessibleName(name);
        setFocusable(true);
        setToolTipText("");
        Pointer pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                focusOn(focused.or(() -> first(chosen))
                        .or(() -> Optional.of(drawing.areas().get(0).zone())));
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        for (VehicleDrawing.Direction direction : VehicleDrawing.Direction.values()) {
            key(direction.name(), () -> step(direction));
        }
        key("ENTER", () -> focused.ifPresent(zone -> pick(zone, false)));
        key("SPACE", () -> focused.ifPresent(zone -> pick(zone, true)));
        bind(KeyStroke.getKeyStroke(java.awt.event.KeyEvent.VK_A, menuMask()), "all", () -> tell(allZones()));
    }

    /** Takes font and ink from the look; called again when the look or its size changes. */
    @Override
    public void updateUI() {
        setFont(UIManager.getFont("Label.font"));
        setForeground(UIManager.getColor("Label.foreground"));
    }

    /** Shows another vehicle, or the same with other findings. What is chosen stays where it still exists. */
    public void show(Shape other, ZonePainter looks) {
        vehicle = other;
        painter = looks;
        drawing = VehicleDrawing.of(other);
        chosen.retainAll(allZones());
        focused = focused.filter(z -> other.zone(z).isPresent());
        hovered = hovered.filter(z -> other.zone(z).isPresent());
        repaint();
    }

    /** Ids of the chosen zones, in order of choosing. */
    public List<String> chosen() {
        return List.copyOf(chosen);
    }

    /** Chooses zones without telling the listener; unknown ones are ignored. */
    public void choose(Collection<String> zones) {
        chosen.clear();
        zones.stream().filter(z -> vehicle.zone(z).isPresent()).forEach(chosen::add);
        focused = first(chosen).or(() -> focused);
        told();
    }

    /** Hears of what the user chooses. */
    public void onChoice(Consumer<List<String>> hears) {
        listener = hears;
    }

    Shape vehicle() {
        return vehicle;
    }

    VehicleDrawing drawing() {
        return drawing;
    }

    /** How a zone of the vehicle looks, as it was last shown. */
    public ZoneLook look(String zone) {
        return painter.look(vehicle.zone(zone).orElseThrow());
    }

    boolean isChosen(String zone) {
        return chosen.contains(zone);
    }

    boolean isFocused(String zone) {
        return isFocusOwner() && focused.equals(Optional.of(zone));
    }

    /** Chooses a zone as the user does. */
    void pick(String zone, boolean add) {
        Set<String> now = new LinkedHashSet<>(add ? chosen : Set.of());
        if (!now.add(zone)) {
            now.remove(zone);
        }
        focusOn(Optional.of(zone));
        tell(now);
    }

    void focusOn(Optional<String> zone) {
        Optional<String> before = focused;
        focused = zone;
        repaint();
        if (context != null && !before.equals(zone)) {
            context.firePropertyChange(
                    AccessibleContext.ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY, child(before), child(zone));
        }
    }

    private Accessible child(Optional<String> zone) {
        return zone.map(z -> (Accessible) new AccessibleZone(this, z)).orElse(null);
    }

    private void step(VehicleDrawing.Direction direction) {
        focusOn(focused.flatMap(zone -> drawing.beside(zone, direction)).or(() -> focused));
    }

    private List<String> allZones() {
        return vehicle.zones().stream().map(Zone::id).toList();
    }

    private void tell(Collection<String> zones) {
        List<String> now = List.copyOf(zones);
        chosen.clear();
        chosen.addAll(now);
        told();
        listener.accept(now);
    }

    private void told() {
        repaint();
        if (context != null) {
            context.firePropertyChange(AccessibleContext.ACCESSIBLE_SELECTION_PROPERTY, null, null);
        }
    }

    private static Optional<String> first(Set<String> zones) {
        return zones.stream().findFirst();
    }

    private void key(String key, Runnable does) {
        bind(KeyStroke.getKeyStroke(key), key, does);
    }

    private void bind(KeyStroke key, String name, Runnable does) {
        getInputMap().put(key, name);
        getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                does.run();
            }
        });
    }

    // where things lie

    /** From centimetres of the vehicle to pixels of this component. */
    AffineTransform place() {
        Rectangle2D box = drawing.bounds();
        Insets insets = getInsets();
        double margin = UIScale.scale((float) MARGIN);
        double width = Math.max(1, getWidth() - insets.left - insets.right - 2 * margin);
        double height = Math.max(1, getHeight() - insets.top - insets.bottom - 2 * margin);
        double scale = Math.min(width / box.getWidth(), height / box.getHeight());
        AffineTransform place = AffineTransform.getTranslateInstance(
                insets.left + margin + (width - scale * box.getWidth()) / 2,
                insets.top + margin + (height - scale * box.getHeight()) / 2);
        place.scale(scale, scale);
        place.translate(-box.getX(), -box.getY());
        return place;
    }

    /** The zone at a point of this component. */
    Optional<String> at(Point point) {
        try {
            return drawing.at(place().inverseTransform(point, new Point2D.Double()));
        } catch (java.awt.geom.NoninvertibleTransformException e) {
            return Optional.empty();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet() ? super.getPreferredSize() : UIScale.scale(new Dimension(620, 560));
    }

    @Override
    public Dimension getMinimumSize() {
        return isMinimumSizeSet() ? super.getMinimumSize() : UIScale.scale(new Dimension(300, 270));
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event.getPoint()).map(zone -> look(zone).says()).orElse(null);
    }

    @Override
    public JToolTip createToolTip() {
        JToolTip tip = super.createToolTip();
        tip.putClientProperty("html.disable", true);
        return tip;
    }

    // painting

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        if (isOpaque()) {
            g.setColor(getBackground());
            g.fillRect(0, 0, getWidth(), getHeight());
        }
        AffineTransform place = place();
        double unit = UIScale.scale(1f);
        Color line = Colours.of("outline");
        g.setStroke(new BasicStroke((float) (1.1 * unit)));
        for (java.awt.Shape shape : drawing.bare()) {
            java.awt.Shape placed = place.createTransformedShape(shape);
            g.setColor(Colours.of("body"));
            g.fill(placed);
            g.setColor(line);
            g.draw(placed);
        }
        for (ZoneArea area : drawing.areas()) {
            paintZone(g, place.createTransformedShape(area.shape()), look(area.zone()), area.zone(), line, unit);
        }
        paintDetails(g, place, unit);
        drawing.areas().stream().filter(a -> chosen.contains(a.zone())).forEach(a -> edge(g, place, a, unit));
        for (ZoneArea area : drawing.areas()) {
            write(g, place.createTransformedShape(area.room()).getBounds2D(), area, look(area.zone()), unit);
        }
        if (isFocusOwner()) {
            focused.flatMap(drawing::area).ifPresent(area -> focusRing(g, place, area, unit));
        }
        g.dispose();
    }

    private void paintZone(Graphics2D g, java.awt.Shape shape, ZoneLook look, String zone, Color line, double unit) {
        g.setColor(look.fill());
        g.fill(shape);
        Color ink = Ink.on(look.fill());
        look.pattern().paint(g, shape, ink, unit);
        if (hovered.equals(Optional.of(zone))) {
            g.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), 36));
            g.fill(shape);
        }
        g.setColor(line);
        g.draw(shape);
    }

    private void paintDetails(Graphics2D g, AffineTransform place, double unit) {
        Color faint = Colours.of("outline");
        g.setColor(new Color(faint.getRed(), faint.getGreen(), faint.getBlue(), 150));
        g.setStroke(new BasicStroke((float) (0.9 * unit)));
        drawing.details().forEach(detail -> g.draw(place.createTransformedShape(detail)));
    }

    private static void edge(Graphics2D g, AffineTransform place, ZoneArea area, double unit) {
        java.awt.Shape shape = place.createTransformedShape(area.shape());
        g.setColor(Colours.of("body"));
        g.setStroke(new BasicStroke((float) (5.5 * unit), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(Colours.of("accent"));
        g.setStroke(new BasicStroke((float) (3.2 * unit), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    private static void focusRing(Graphics2D g, AffineTransform place, ZoneArea area, double unit) {
        java.awt.Shape shape = place.createTransformedShape(area.shape());
        float dash = (float) (4 * unit);
        g.setColor(Colours.of("ring"));
        g.setStroke(new BasicStroke(
                (float) (2 * unit), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash}, 0));
        g.draw(shape);
    }

    private void write(Graphics2D g, Rectangle2D room, ZoneArea area, ZoneLook look, double unit) {
        look.corner().ifPresent(sign -> corner(g, room, look, sign, unit));
        List<String> lines = new ArrayList<>();
        if (!area.caption().isEmpty()) {
            caption(g, area.caption(), room, unit);
            return;
        }
        if (!look.figure().isEmpty()) {
            lines.add(look.figure());
        }
        if (!look.lesser().isEmpty()) {
            lines.add(look.lesser());
        }
        double mark = look.mark().isPresent() ? 9 * unit : 0;
        Color ink = Ink.on(look.fill());
        while (!lines.isEmpty() && !fits(g, lines, room, mark)) {
            lines.remove(lines.size() - 1);
        }
        double height = lines.stream()
                .mapToDouble(l -> metrics(g, lines, l).getAscent() * 1.1)
                .sum();
        double width = lines.stream()
                .mapToDouble(l -> metrics(g, lines, l).stringWidth(l))
                .max()
                .orElse(0);
        double whole = width + (mark > 0 && !lines.isEmpty() ? mark + 3 * unit : mark);
        double x = room.getCenterX() - whole / 2;
        if (look.pattern() != ZonePattern.PLAIN && !lines.isEmpty()) {
            plate(g, look.fill(), x, room.getCenterY() - height / 2, whole, height, unit);
        }
        look.mark().ifPresent(m -> m.paint(g, x, room.getCenterY() - mark / 2, mark, ink, look.fill()));
        g.setColor(ink);
        double y = room.getCenterY() - height / 2;
        for (String line : lines) {
            FontMetrics metrics = metrics(g, lines, line);
            y += metrics.getAscent() * 1.1;
            double left = x + whole - width + (width - metrics.stringWidth(line)) / 2;
            g.setFont(metrics.getFont());
            g.drawString(line, (float) left, (float) (y - metrics.getAscent() * .16));
        }
    }

    /** At the upper right of the room, where figures in its middle leave it free. */
    private static void corner(Graphics2D g, Rectangle2D room, ZoneLook look, ZoneMark sign, double unit) {
        double size = 9 * unit;
        double x = room.getMaxX() - size - unit;
        sign.paint(g, x, room.getMinY() + unit, size, Ink.on(look.fill()), look.fill());
    }

    /** Words on a tile, in up to two lines. */
    private void caption(Graphics2D g, String text, Rectangle2D room, double unit) {
        Font font = getFont().deriveFont(getFont().getSize2D() * SMALLER);
        FontMetrics metrics = g.getFontMetrics(font);
        double width = room.getWidth() - 6 * unit;
        String first = text;
        String second = "";
        while (metrics.stringWidth(first) > width && first.contains(" ")) {
            second = first.substring(first.lastIndexOf(' ') + 1) + (second.isEmpty() ? "" : " " + second);
            first = first.substring(0, first.lastIndexOf(' '));
        }
        g.setFont(font);
        g.setColor(getForeground());
        double y = room.getCenterY() + metrics.getAscent() * (second.isEmpty() ? .38 : -.12);
        for (String line : second.isEmpty() ? List.of(first) : List.of(first, second)) {
            String shown = shortened(metrics, line, width);
            g.drawString(shown, (float) (room.getCenterX() - metrics.stringWidth(shown) / 2.0), (float) y);
            y += metrics.getAscent() * 1.1;
        }
    }

    private static void plate(Graphics2D g, Color fill, double x, double y, double width, double height, double unit) {
        g.setColor(new Color(fill.getRed(), fill.getGreen(), fill.getBlue(), 225));
        double pad = 2.5 * unit;
        g.fill(new RoundRectangle2D.Double(x - pad, y, width + 2 * pad, height + pad, 3 * pad, 3 * pad));
    }

    private boolean fits(Graphics2D g, List<String> lines, Rectangle2D room, double mark) {
        double height = lines.stream()
                .mapToDouble(l -> metrics(g, lines, l).getAscent() * 1.1)
                .sum();
        double widest = lines.stream()
                .mapToDouble(l -> metrics(g, lines, l).stringWidth(l))
                .max()
                .orElse(0);
        return height <= room.getHeight() * 1.15 && widest + mark <= room.getWidth() * 1.05;
    }

    private static String shortened(FontMetrics metrics, String text, double width) {
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        String cut = text;
        while (cut.length() > 3 && metrics.stringWidth(cut + "…") > width) {
            cut = cut.substring(0, cut.length() - 1);
        }
        return cut.stripTrailing() + "…";
    }

    /** The first line is the greater one. */
    private FontMetrics metrics(Graphics2D g, List<String> lines, String line) {
        Font font = getFont();
        boolean first = lines.get(0).equals(line);
        return g.getFontMetrics(first ? font.deriveFont(Font.BOLD) : font.deriveFont(font.getSize2D() * SMALLER));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (context == null) {
            context = new ZoneList();
            accessibleContext = context;
        }
        return context;
    }

    /** A list of zones. */
    private final class ZoneList extends AccessibleJComponent {

        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LIST;
        }

        @Override
        public int getAccessibleChildrenCount() {
            return vehicle.zones().size();
        }

        @Override
        public Accessible getAccessibleChild(int index) {
            return new AccessibleZone(
                    VehicleView.this, vehicle.zones().get(index).id());
        }

        @Override
        public Accessible getAccessibleAt(Point point) {
            return child(at(point));
        }
    }

    private final class Pointer extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            boolean add = e.isShiftDown() || (e.getModifiersEx() & menuMask()) != 0;
            at(e.getPoint()).ifPresent(zone -> pick(zone, add));
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            hover(at(e.getPoint()));
        }

        @Override
        public void mouseExited(MouseEvent e) {
            hover(Optional.empty());
        }

        private void hover(Optional<String> zone) {
            if (!hovered.equals(zone)) {
                hovered = zone;
                repaint();
            }
        }
    }

    private static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }
}
