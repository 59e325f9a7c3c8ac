package baywright.cli;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The sentences of the command line in the reader's language. */
final class Texts {

    private final ResourceBundle bundle;
    private final Locale locale;

    Texts(Locale locale) {
        this.locale = locale;
        this.bundle = ResourceBundle.getBundle("baywright.cli.messages", locale);
    }

    /**
     * A sentence with its values filled in.
     *
     * @throws java.util.MissingResourceException when the bundle has no such key
     */
    String of(String key, Object... values) {
        return new MessageFormat(bundle.getString(key), locale).format(values);
    }
}
