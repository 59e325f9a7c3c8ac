package baywright.pack;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** A pack, or a set of them, cannot be used; the message is one line that says where, what and how to mend it. Nothing was written. */
public final class PackRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final Refusal refusal;

    PackRefused(String where, Refusal refusal, Object... values) {
        super(where + ": " + sentence(refusal, values));
        this.refusal = refusal;
    }

    /** Why. */
    public Refusal refusal() {
        return refusal;
    }

    private static String sentence(Refusal refusal, Object... values) {
        String pattern =
                ResourceBundle.getBundle("baywright.pack.refusals", Locale.ROOT).getString(refusal.key());
        return new MessageFormat(pattern, Locale.ROOT).format(values);
    }
}
