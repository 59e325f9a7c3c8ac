package baywright.swing.safety;

import baywright.swing.api.Texts;

/** The sentences of this workbench. */
final class Words {

    private static final Texts TEXTS = Texts.beside(Words.class, "texts");

    private Words() {}

    /** A sentence with its values filled in. */
    static String of(String key, Object... values) {
        return TEXTS.of(key, values);
    }

    /** A sentence as the core makes them, with a capital letter. */
    static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
