package baywright.swing.drawing;

import baywright.swing.api.Colours;
import baywright.swing.api.Readout;
import baywright.swing.api.Texts;
import baywright.vehicle.FilmBand;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.FilmSign;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What the colours, patterns and signs of {@link FilmPainter} mean, with the shop's own limits. */
public final class FilmLegend extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts = Texts.beside(FilmLegend.class, "texts");

    public FilmLegend() {
        super(new MigLayout("insets 0 4 4 4, gap 16 3, wrap 3", "[][][]"));
        setOpaque(false);
        getAccessibleContext().setAccessibleName(texts.of("legend"));
    }

    /** Fills it for a shop's limits. */
    public void show(FilmLimits limits, Readout readout) {
        removeAll();
        for (FilmBand band : FilmPainter.BANDS) {
            add(label(texts.of("legend." + FilmPainter.key(band), limit(band, limits, readout)), new Swatch(band)));
        }
        for (FilmSign sign : FilmPainter.MARKED) {
            add(label(texts.of(FilmPainter.key(sign)), new Sign(FilmPainter.mark(sign))));
        }
        add(label(texts.of("legend.photo"), new Sign(FilmPainter.PHOTO)));
        add(label(texts.of("legend.figures"), null), "newline, span, gapleft 4");
        revalidate();
        repaint();
    }

    private static String limit(FilmBand band, FilmLimits limits, Readout readout) {
        return switch (band) {
            case STOP -> readout.film(limits.stopBelow());
            case CARE, ORDINARY -> readout.film(limits.careBelow());
            case REPAINT -> readout.film(limits.repaintAbove());
            case FILLER -> readout.film(limits.fillerAbove());
            case UNKNOWN -> "";
        };
    }

    private static JLabel label(String text, Icon icon) {
        JLabel label = new JLabel(text, icon, JLabel.LEADING);
        label.putClientProperty("html.disable", true);
        label.putClientProperty("FlatLaf.styleClass", "small");
        return label;
    }

    private record Swatch(FilmBand band) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = smooth(graphics);
            RoundRectangle2D box = new RoundRectangle2D.Double(
                    x + .5, y + .5, getIconWidth() - 1, getIconHeight() - 1, UIScale.scale(4f), UIScale.scale(4f));
            FilmPainter.Colour colour = FilmPainter.of(band);
            g.setColor(colour.fill());
            g.fill(box);
            colour.pattern().paint(g, box, Ink.on(colour.fill()), UIScale.scale(1f));
            g.setColor(Colours.of("outline"));
            g.draw(box);
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(28);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(15);
        }
    }

    private record Sign(ZoneMark mark) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = smooth(graphics);
            double size = UIScale.scale(10f);
            mark.paint(
                    g,
                    x + (getIconWidth() - size) / 2,
                    y + (getIconHeight() - size) / 2,
                    size,
                    c.getForeground(),
                    c.getBackground());
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(28);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(15);
        }
    }

    private static Graphics2D smooth(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        return g;
    }
}
