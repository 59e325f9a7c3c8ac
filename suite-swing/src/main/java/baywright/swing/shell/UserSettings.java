package baywright.swing.shell;

import baywright.swing.api.Settings;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What the user has set. Safe to use from any thread. */
public final class UserSettings implements Settings {

    private final Map<String, String> values = new ConcurrentHashMap<>();

    private UserSettings() {}

    /** Settings that are forgotten with the program. */
    public static UserSettings inMemory() {
        return new UserSettings();
    }

    @Override
    public Optional<String> get(String key) {
        return Optional.ofNullable(values.get(key));
    }

    @Override
    public void put(String key, String value) {
        values.put(key, value);
    }

    @Override
    public void remove(String key) {
        values.remove(key);
    }
}
