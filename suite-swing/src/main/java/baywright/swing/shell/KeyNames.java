package baywright.swing.shell;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Keys as people call them. */
final class KeyNames {

    private KeyNames() {}

    static String of(KeyStroke key) {
        String modifiers = InputEvent.getModifiersExText(key.getModifiers());
        String name = key.getKeyCode() == KeyEvent.VK_UNDEFINED
                ? String.valueOf(key.getKeyChar())
                : KeyEvent.getKeyText(key.getKeyCode());
        return modifiers.isEmpty() ? name : modifiers + "+" + name;
    }
}
