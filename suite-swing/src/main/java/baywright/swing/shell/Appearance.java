package baywright.swing.shell;

import baywright.swing.api.Settings;
import java.util.Locale;

/** Look and size as the user has set them, kept between runs. On the event thread. */
final class Appearance {

    static final String LOOK = "suite.look";
    static final String SYSTEM = "system";

    private static final String ZOOM = "suite.zoom";
    private static final int[] STEPS = {75, 90, 100, 110, 125, 150, 175, 200, 225, 250};

    private final Settings settings;

    Appearance(Settings settings) {
        this.settings = settings;
    }

    /** Puts on what is set. */
    void apply() {
        look().apply();
        if (zoom() != 100) {
            Look.zoom(zoom());
        }
    }

    private Look look() {
        return switch (chosen()) {
            case "dark" -> Look.DARK;
            case "light" -> Look.LIGHT;
            default -> Look.ofSystem();
        };
    }

    /** {@code light}, {@code dark} or {@code system}. */
    String chosen() {
        return settings.get(LOOK).orElse(SYSTEM);
    }

    void choose(String look) {
        settings.put(LOOK, look);
        look().apply();
    }

    void other() {
        choose(Look.current().other().name().toLowerCase(Locale.ROOT));
    }

    /** In percent. */
    int zoom() {
        try {
            return Look.within(settings.get(ZOOM).map(Integer::parseInt).orElse(100));
        } catch (NumberFormatException e) {
            return 100;
        }
    }

    void zoom(int percent) {
        settings.put(ZOOM, Integer.toString(Look.within(percent)));
        Look.zoom(zoom());
    }

    void larger() {
        for (int step : STEPS) {
            if (step > zoom()) {
                zoom(step);
                return;
            }
        }
    }

    void smaller() {
        for (int i = STEPS.length - 1; i >= 0; i--) {
            if (STEPS[i] < zoom()) {
                zoom(STEPS[i]);
                return;
            }
        }
    }
}
