package baywright.swing.api;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import javax.swing.KeyStroke;

/** Keys by name. */
final class Keys {

    private static final String MENU = "menu ";

    private Keys() {}

    /** @throws IllegalArgumentException when the name says no key */
    static KeyStroke of(String name) {
        boolean menu = name.startsWith(MENU);
        KeyStroke plain = KeyStroke.getKeyStroke(menu ? name.substring(MENU.length()) : name);
        if (plain == null) {
            throw new IllegalArgumentException("'" + name + "' says no key; write it as in \"menu shift Z\"");
        }
        return menu ? KeyStroke.getKeyStroke(plain.getKeyCode(), plain.getModifiers() | menuMask()) : plain;
    }

    private static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }
}
