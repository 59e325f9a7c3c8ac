package baywright.swing.parts;

import baywright.safety.Pictogram;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.Icon;

/**
 * Hazard pictograms side by side.
 *
 * @param pictograms in the order shown
 * @param size       of the sides of each, in units that scale
 */
public record HazardSigns(List<Pictogram> pictograms, int size) implements Icon {

    private static final int GAP = 3;

    public HazardSigns {
        pictograms = List.copyOf(pictograms);
    }

    /** Their names, for those who do not see them. */
    public String words() {
        return pictograms.stream().map(Pictogram::title).collect(Collectors.joining(", "));
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        int at = x;
        for (Pictogram pictogram : pictograms) {
            new HazardSign(pictogram, size).paintIcon(on, graphics, at, y);
            at += UIScale.scale(size) + UIScale.scale(GAP);
        }
    }

    @Override
    public int getIconWidth() {
        int count = pictograms.size();
        return count * UIScale.scale(size) + Math.max(0, count - 1) * UIScale.scale(GAP);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(size);
    }
}
