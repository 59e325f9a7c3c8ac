package baywright.swing.plugins;

import baywright.swing.api.Settings;
import baywright.swing.plugins.PluginJar.Origin;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which jars may run. A plug-in can do whatever its user can, so that a jar that came with a workspace runs only after the user has
 * said yes to just this content; and whatever the user has switched off stays off.
 */
public final class PluginConsent {

    private static final String ALLOWED = "plugins.allowed";
    private static final String OFF = "plugins.off";

    private final Settings settings;

    public PluginConsent(Settings settings) {
        this.settings = settings;
    }

    /** Whether a jar may be loaded. */
    public boolean allows(PluginJar jar) {
        return jar.origin() == Origin.USER || read(ALLOWED).contains(jar.sha256());
    }

    /** The user's yes or no to this content of a jar. */
    public void allow(PluginJar jar, boolean yes) {
        write(ALLOWED, jar.sha256(), yes);
    }

    /** Whether the user has switched off the plug-in with this id. */
    public boolean isOff(String plugin) {
        return read(OFF).contains(plugin);
    }

    public void switchOff(String plugin, boolean off) {
        write(OFF, plugin, off);
    }

    private Set<String> read(String key) {
        return Arrays.stream(settings.get(key).orElse("").split(" "))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void write(String key, String word, boolean in) {
        Set<String> words = read(key);
        if (in) {
            words.add(word);
        } else {
            words.remove(word);
        }
        if (words.isEmpty()) {
            settings.remove(key);
        } else {
            settings.put(key, String.join(" ", words));
        }
    }
}
