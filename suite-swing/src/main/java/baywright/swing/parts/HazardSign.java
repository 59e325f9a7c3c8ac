package baywright.swing.parts;

import baywright.safety.Glyphs;
import baywright.safety.Pictogram;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.Icon;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A hazard pictogram, drawn from {@link Glyphs}. It keeps its red and white in every look, as the labels on the products do.
 *
 * @param pictogram which
 * @param size      of its sides, in units that scale
 */
public record HazardSign(Pictogram pictogram, int size) implements Icon {

    private static final double SIDE = 100;
    private static final Pattern COMMAND = Pattern.compile("([MLCHVZ])([^MLCHVZ]*)");
    private static final Pattern TURN = Pattern.compile("(translate|scale|rotate)\\(([^)]*)\\)");
    private static final Map<Pictogram, List<Stroke>> KNOWN = new EnumMap<>(Pictogram.class);

    /** One part of the drawing: filled where {@code width} is 0, else a line. */
    private record Stroke(Shape shape, Color colour, float width, boolean round) {}

    /** What an element inherits. */
    private record Pen(Color fill, Color stroke, float width, boolean round, AffineTransform at) {}

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        g.scale(getIconWidth() / SIDE, getIconHeight() / SIDE);
        for (Stroke stroke : strokes(pictogram)) {
            g.setColor(stroke.colour());
            if (stroke.width() == 0) {
                g.fill(stroke.shape());
            } else {
                int cap = stroke.round() ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
                g.setStroke(new BasicStroke(stroke.width(), cap, BasicStroke.JOIN_MITER));
                g.draw(stroke.shape());
            }
        }
        g.dispose();
    }

    private static synchronized List<Stroke> strokes(Pictogram pictogram) {
        return KNOWN.computeIfAbsent(pictogram, HazardSign::read);
    }

    private static List<Stroke> read(Pictogram pictogram) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Element svg = factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(Glyphs.svg(pictogram, (int) SIDE))))
                    .getDocumentElement();
            List<Stroke> strokes = new ArrayList<>();
            inside(svg, new Pen(Color.BLACK, null, 1, false, new AffineTransform()), strokes);
            return List.copyOf(strokes);
        } catch (IOException | SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("the drawing of " + pictogram + " cannot be read", e);
        }
    }

    private static void inside(Element parent, Pen pen, List<Stroke> strokes) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                Pen own = pen(element, pen);
                switch (element.getTagName()) {
                    case "g" -> inside(element, own, strokes);
                    case "path" -> add(path(element.getAttribute("d")), own, strokes);
                    case "circle" -> add(circle(element), own, strokes);
                    default -> {
                        // a title is not drawn
                    }
                }
            }
        }
    }

    private static Pen pen(Element element, Pen pen) {
        AffineTransform at = new AffineTransform(pen.at());
        Matcher turns = TURN.matcher(element.getAttribute("transform"));
        while (turns.find()) {
            double[] by = numbers(turns.group(2));
            switch (turns.group(1)) {
                case "translate" -> at.translate(by[0], by[1]);
                case "scale" -> at.scale(by[0], by[0]);
                default -> at.rotate(Math.toRadians(by[0]), by[1], by[2]);
            }
        }
        String width = element.getAttribute("stroke-width");
        return new Pen(
                colour(element.getAttribute("fill"), pen.fill()),
                colour(element.getAttribute("stroke"), pen.stroke()),
                width.isEmpty() ? pen.width() : Float.parseFloat(width),
                pen.round() || element.getAttribute("stroke-linecap").equals("round"),
                at);
    }

    private static Color colour(String name, Color inherited) {
        if (name.isEmpty()) {
            return inherited;
        }
        return name.equals("none") ? null : Color.decode(name);
    }

    private static void add(Shape shape, Pen pen, List<Stroke> strokes) {
        Shape placed = pen.at().createTransformedShape(shape);
        if (pen.fill() != null) {
            strokes.add(new Stroke(placed, pen.fill(), 0, false));
        }
        if (pen.stroke() != null) {
            strokes.add(new Stroke(placed, pen.stroke(), pen.width(), pen.round()));
        }
    }

    private static Shape circle(Element circle) {
        double r = Double.parseDouble(circle.getAttribute("r"));
        double x = Double.parseDouble(circle.getAttribute("cx"));
        double y = Double.parseDouble(circle.getAttribute("cy"));
        return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }

    private static Shape path(String drawn) {
        Path2D path = new Path2D.Double();
        Matcher commands = COMMAND.matcher(drawn);
        while (commands.find()) {
            double[] n = numbers(commands.group(2));
            switch (commands.group(1)) {
                case "M" -> path.moveTo(n[0], n[1]);
                case "L" -> path.lineTo(n[0], n[1]);
                case "C" -> path.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
                case "H" -> path.lineTo(n[0], path.getCurrentPoint().getY());
                case "V" -> path.lineTo(path.getCurrentPoint().getX(), n[0]);
                default -> path.closePath();
            }
        }
        return path;
    }

    private static double[] numbers(String text) {
        String plain = text.strip();
        if (plain.isEmpty()) {
            return new double[0];
        }
        String[] parts = plain.split("[\\s,]+", -1);
        double[] numbers = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = Double.parseDouble(parts[i]);
        }
        return numbers;
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(size);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(size);
    }
}
