package baywright.swing.plugins;

import java.io.IOException;
import java.net.URL;
import java.util.Collections;
import java.util.Enumeration;

/** Shows plug-ins the door and the core of the suite, and hides the window behind the door. */
final class DoorLoader extends ClassLoader {

    static {
        registerAsParallelCapable();
    }

    private static final String WINDOW = "baywright.swing.";
    private static final String DOOR = "baywright.swing.api.";

    DoorLoader(ClassLoader suite) {
        super("baywright door", suite);
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (name.startsWith(WINDOW) && !name.startsWith(DOOR)) {
            throw new ClassNotFoundException(name);
        }
        return super.loadClass(name, resolve);
    }

    /** Services that the suite itself provides are not a plug-in's. */
    @Override
    public Enumeration<URL> getResources(String name) throws IOException {
        return name.startsWith("META-INF/services/baywright.")
                ? Collections.emptyEnumeration()
                : super.getResources(name);
    }
}
