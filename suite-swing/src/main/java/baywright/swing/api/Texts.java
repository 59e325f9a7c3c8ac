package baywright.swing.api;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Sentences of a workbench in the user's language, from a resource bundle beside its classes. */
public final class Texts {

    private final ResourceBundle bundle;

    private Texts(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The bundle with the given name in the package of a class. */
    public static Texts beside(Class<?> owner, String name) {
        return new Texts(ResourceBundle.getBundle(
                owner.getPackageName() + "." + name, Locale.getDefault(), owner.getClassLoader()));
    }

    /**
     * A sentence with its values filled in, by {@link MessageFormat}.
     *
     * @throws java.util.MissingResourceException when the bundle has no such key
     */
    public String of(String key, Object... values) {
        return new MessageFormat(bundle.getString(key), Locale.getDefault(Locale.Category.FORMAT)).format(values);
    }
}
