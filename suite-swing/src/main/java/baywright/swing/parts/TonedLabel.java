package baywright.swing.parts;

import baywright.swing.api.Colours;
import java.awt.Color;
import javax.swing.JLabel;

/** A label in a colour of the look, which follows a switch of the look. Its text is shown as it is, never as HTML. */
public final class TonedLabel extends JLabel {

    private static final long serialVersionUID = 1L;

    private String tone;

    /** @param tone name of a colour, see {@link Colours#of} */
    public TonedLabel(String text, String tone) {
        this.tone = tone;
        putClientProperty("html.disable", true);
        setText(text);
    }

    /** The same with a style class of the look, such as {@code small}. */
    public TonedLabel(String text, String tone, String style) {
        this(text, tone);
        putClientProperty("FlatLaf.styleClass", style);
    }

    /**
     * Changes its tone, as a row of a list does when it is chosen.
     *
     * @param other a colour's name, or null for {@code plain}
     */
    public void tone(String other, Color plain) {
        tone = other;
        setForeground(plain);
    }

    @Override
    public Color getForeground() {
        return tone == null ? super.getForeground() : Colours.of(tone);
    }
}
