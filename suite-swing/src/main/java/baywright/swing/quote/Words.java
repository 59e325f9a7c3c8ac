package baywright.swing.quote;

import baywright.swing.api.Texts;
import baywright.swing.parts.DoAction;
import java.util.Locale;
import javax.swing.Action;

/** The sentences of this workbench. */
final class Words {

    private static final Texts TEXTS = Texts.beside(Words.class, "texts");

    private Words() {}

    /** A sentence with its values filled in. */
    static String of(String key, Object... values) {
        return TEXTS.of(key, values);
    }

    /** The word for a constant, as in {@code kind.labour}. */
    static String of(String group, Enum<?> constant) {
        return TEXTS.of(group + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** A sentence as the core makes them, with a capital letter. */
    static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** Something to press, named by a sentence. */
    static Action action(String key, Runnable does) {
        return new DoAction(of(key), does);
    }
}
