package baywright.swing.api;

import java.util.Optional;

/** What the user has set, kept between runs. Keys begin with the id of the plug-in: {@code film-report.columns}. */
public interface Settings {

    Optional<String> get(String key);

    void put(String key, String value);

    void remove(String key);
}
