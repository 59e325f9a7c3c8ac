package baywright.swing;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import javax.swing.UIManager;

/** Light and dark. Colours and shapes stand in the theme's files; code asks for them by name. */
enum Look {
    LIGHT,
    DARK;

    static {
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
    }

    /** Puts this look on everything that is open and on what opens later. */
    void apply() {
        if (this == DARK) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }

    static Look current() {
        return FlatLaf.isLafDark() ? DARK : LIGHT;
    }

    Look other() {
        return this == DARK ? LIGHT : DARK;
    }

    /** A colour of the theme, such as {@code stop} or {@code faint}. */
    static Color colour(String name) {
        return UIManager.getColor("Baywright." + name);
    }
}
