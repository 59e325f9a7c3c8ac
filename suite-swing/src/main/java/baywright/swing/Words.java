package baywright.swing;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The sentences of the window in the user's language. */
final class Words {

    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("baywright.swing.window");

    private Words() {}

    /**
     * A sentence with its values filled in.
     *
     * @throws java.util.MissingResourceException when the bundle has no such key
     */
    static String of(String key, Object... values) {
        return new MessageFormat(BUNDLE.getString(key), Locale.getDefault(Locale.Category.FORMAT)).format(values);
    }
}
