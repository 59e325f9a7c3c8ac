package baywright.swing.plugins;

import baywright.swing.api.Texts;

/** Sentences about plug-ins. */
final class PluginTexts {

    private static final Texts TEXTS = Texts.beside(PluginTexts.class, "plugins");

    private PluginTexts() {}

    static String of(String key, Object... values) {
        return TEXTS.of(key, values);
    }
}
