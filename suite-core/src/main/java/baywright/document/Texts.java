package baywright.document;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;

/** The sentences of the documents in one language. A language without a bundle gets the English ones. */
public final class Texts {

    /** Languages that the documents have texts in. */
    public static final List<String> LANGUAGES = List.of("en", "de");

    private final ResourceBundle bundle;
    private final Locale locale;

    /** The language of a document that is to be in another: itself where there are texts, else English. */
    public static String nearest(String language) {
        return LANGUAGES.contains(Locale.forLanguageTag(language).getLanguage()) ? language : LANGUAGES.get(0);
    }

    Texts(Locale locale) {
        this.locale = locale;
        bundle = ResourceBundle.getBundle(
                "baywright.document.document",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /**
     * A sentence with its values filled in.
     *
     * @throws java.util.MissingResourceException when there is no such key
     */
    String of(String key, Object... values) {
        return new MessageFormat(bundle.getString(key), locale).format(values);
    }

    /** The same, where there is such a sentence. */
    Optional<String> find(String key, Object... values) {
        return bundle.containsKey(key) ? Optional.of(of(key, values)) : Optional.empty();
    }
}
