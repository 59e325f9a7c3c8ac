package baywright.swing.api;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.Icon;
import javax.swing.KeyStroke;

/**
 * Something the user can do: found by its title, by key, and where a workbench shows it as a button.
 *
 * @param id      stable kebab-case id, such as {@code save}
 * @param title   what it does, in words: “Save everything”
 * @param icon    for buttons, 16 units square
 * @param key     keys that do it
 * @param enabled whether it can be done as things stand
 * @param does    does it, on the event thread
 */
public record SuiteAction(
        String id,
        String title,
        Optional<Icon> icon,
        Optional<KeyStroke> key,
        Predicate<DeskState> enabled,
        Consumer<Desk> does) {

    /** Without icon and keys, possible at any time. */
    public static SuiteAction of(String id, String title, Consumer<Desk> does) {
        return new SuiteAction(id, title, Optional.empty(), Optional.empty(), state -> true, does);
    }

    /** The same with keys written as {@link KeyStroke#getKeyStroke(String)} reads them; {@code menu} stands for the platform's own modifier, as in {@code menu shift Z}. */
    public SuiteAction withKey(String keys) {
        return new SuiteAction(id, title, icon, Optional.of(Keys.of(keys)), enabled, does);
    }

    public SuiteAction withIcon(Icon picture) {
        return new SuiteAction(id, title, Optional.of(picture), key, enabled, does);
    }

    public SuiteAction when(Predicate<DeskState> possible) {
        return new SuiteAction(id, title, icon, key, possible, does);
    }
}
