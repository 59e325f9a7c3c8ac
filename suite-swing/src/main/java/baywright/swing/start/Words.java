package baywright.swing.start;

import baywright.swing.api.Texts;

/** The sentences of this workbench. */
final class Words {

    private static final Texts TEXTS = Texts.beside(Words.class, "texts");

    private Words() {}

    static String of(String key, Object... values) {
        return TEXTS.of(key, values);
    }
}
