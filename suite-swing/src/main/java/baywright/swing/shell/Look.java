package baywright.swing.shell;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;

/** Light and dark. Colours and shapes stand in the theme's files; code asks for them by name. */
public enum Look {
    LIGHT,
    DARK;

    static {
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
    }

    /** Puts this look on everything that is open and on what opens later. */
    public void apply() {
        if (this == DARK) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }

    public static Look current() {
        return FlatLaf.isLafDark() ? DARK : LIGHT;
    }

    public Look other() {
        return this == DARK ? LIGHT : DARK;
    }
}
