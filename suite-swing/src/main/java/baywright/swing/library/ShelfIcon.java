package baywright.swing.library;

import baywright.swing.parts.DrawnIcon;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;

/** Bottles on a shelf. */
final class ShelfIcon extends DrawnIcon {

    ShelfIcon() {
        super(20);
    }

    @Override
    protected void draw(Graphics2D g) {
        g.draw(new RoundRectangle2D.Double(3, 6.5, 4, 9, 2, 2));
        g.draw(new Line2D.Double(5, 3, 5, 6));
        g.draw(new RoundRectangle2D.Double(9.5, 4, 3.5, 11.5, 1, 1));
        g.draw(new RoundRectangle2D.Double(15, 8, 3, 7.5, 1, 1));
        g.draw(new Line2D.Double(1.5, 17.5, 18.5, 17.5));
    }
}
