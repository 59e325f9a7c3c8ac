package baywright.swing.papers;

import baywright.swing.api.Colours;
import baywright.swing.parts.WidePanel;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;

/** Pages below each other, each as wide as there is room, up to their true size and half as much again. */
final class PagesPane extends WidePanel {

    private static final long serialVersionUID = 1L;

    private static final int GAP = 16;

    /** 8.5 inches at 96 dots and half as much again: larger pages are no easier to read. */
    private static final int WIDEST = 1224;

    private transient List<BufferedImage> pages = List.of();

    PagesPane() {
        super(null);
        setFocusable(true);
        setOpaque(true);
    }

    void show(List<BufferedImage> now) {
        pages = List.copyOf(now);
        revalidate();
        repaint();
    }

    int count() {
        return pages.size();
    }

    private int pageWidth() {
        int room = (getParent() == null ? getWidth() : getParent().getWidth()) - 2 * UIScale.scale(GAP);
        return Math.max(1, Math.min(room, UIScale.scale(WIDEST)));
    }

    private static int heightOf(BufferedImage page, int width) {
        return Math.max(1, (int) Math.round((double) width * page.getHeight() / page.getWidth()));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = pageWidth();
        int gap = UIScale.scale(GAP);
        int height = gap;
        for (BufferedImage page : pages) {
            height += heightOf(page, width) + gap;
        }
        return new Dimension(width + 2 * gap, height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(getBackground());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        int width = pageWidth();
        int gap = UIScale.scale(GAP);
        int x = (getWidth() - width) / 2;
        int y = gap;
        Rectangle clip = g.getClipBounds();
        for (BufferedImage page : pages) {
            int height = heightOf(page, width);
            if (clip == null || clip.intersects(x, y, width, height)) {
                g.drawImage(page, x, y, width, height, null);
                g.setColor(Colours.of("line"));
                g.drawRect(x, y, width, height);
            }
            y += height + gap;
        }
        g.dispose();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(3 * GAP);
    }
}
