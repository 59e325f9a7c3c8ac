package baywright.swing.api;

import java.util.regex.Pattern;

/**
 * Who a plug-in is.
 *
 * @param id       stable kebab-case id, unique among all plug-ins
 * @param title    name for people, in the user's language
 * @param version  its own version, for people
 * @param needsApi version of this package that it was made for
 */
public record PluginInfo(String id, String title, String version, ApiVersion needsApi) {

    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

    public PluginInfo {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("an id is in kebab-case such as 'film-report', got '" + id + "'");
        }
        if (title.isBlank()) {
            throw new IllegalArgumentException("plug-in '" + id + "' needs a title");
        }
    }
}
