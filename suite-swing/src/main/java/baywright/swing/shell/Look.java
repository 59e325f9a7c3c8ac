package baywright.swing.shell;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Font;
import java.awt.Toolkit;
import java.util.Locale;
import javax.swing.UIManager;

/** Light and dark, small and large. Colours and shapes stand in the theme's files; code asks for them by name. */
public enum Look {
    LIGHT,
    DARK;

    static final int LEAST_ZOOM = 75;
    static final int MOST_ZOOM = 250;

    /** The system's own font at 100 %. */
    private static Font base;

    static {
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
    }

    /** Puts this look on everything that is open and on what opens later, in the size it has. On the event thread. */
    public void apply() {
        if (this == DARK) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        if (base == null) {
            base = UIManager.getFont("defaultFont");
        }
        FlatLaf.updateUI();
    }

    /**
     * Scales the whole look, as everything is measured by its font.
     *
     * @param percent 75 to 250; what is beyond is brought within
     */
    public static void zoom(int percent) {
        float size = base.getSize2D() * within(percent) / 100f;
        UIManager.put("defaultFont", base.deriveFont(size));
        FlatLaf.updateUI();
    }

    static int within(int percent) {
        return Math.min(MOST_ZOOM, Math.max(LEAST_ZOOM, percent));
    }

    public static Look current() {
        return FlatLaf.isLafDark() ? DARK : LIGHT;
    }

    public Look other() {
        return this == DARK ? LIGHT : DARK;
    }

    /** The look that the system has, where it says so; light where it does not. */
    static Look ofSystem() {
        Object theme = Toolkit.getDefaultToolkit().getDesktopProperty("gnome.Net/ThemeName");
        boolean dark =
                theme instanceof String name && name.toLowerCase(Locale.ROOT).contains("dark");
        return dark ? DARK : LIGHT;
    }
}
