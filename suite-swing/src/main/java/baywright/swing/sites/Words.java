package baywright.swing.sites;

import baywright.swing.api.Texts;
import java.util.Locale;

/** The sentences of this workbench. */
final class Words {

    private static final Texts TEXTS = Texts.beside(Words.class, "texts");

    private Words() {}

    /** A sentence with its values filled in. */
    static String of(String key, Object... values) {
        return TEXTS.of(key, values);
    }

    /** A sentence of a family of keys. */
    static String of(String family, Enum<?> constant) {
        return of(family + "." + constant.name().toLowerCase(Locale.ROOT));
    }
}
