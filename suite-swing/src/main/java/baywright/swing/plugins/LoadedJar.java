package baywright.swing.plugins;

import baywright.swing.api.SuitePlugin;
import java.io.Closeable;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;

/**
 * A jar with its own class loader: what it brings along meets neither other plug-ins nor the suite's own libraries of another
 * version that the suite does not show.
 */
public final class LoadedJar implements Closeable {

    /** A jar whose list of services never ends in order is left after so many. */
    private static final int MOST_FAULTS = 20;

    private final PluginJar jar;
    private final URLClassLoader classes;
    private final List<SuitePlugin> plugins;
    private final List<String> faults;

    private LoadedJar(PluginJar jar, URLClassLoader classes, List<SuitePlugin> plugins, List<String> faults) {
        this.jar = jar;
        this.classes = classes;
        this.plugins = List.copyOf(plugins);
        this.faults = List.copyOf(faults);
    }

    /** Makes the plug-ins of a jar, without starting them; runs their constructors. Never throws for what is in the jar. */
    public static LoadedJar of(PluginJar jar, ClassLoader suite) {
        URLClassLoader classes =
                new URLClassLoader("plug-in " + jar.name(), new URL[] {url(jar)}, new DoorLoader(suite));
        List<SuitePlugin> plugins = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        Iterator<SuitePlugin> found =
                ServiceLoader.load(SuitePlugin.class, classes).iterator();
        while (true) {
            try {
                if (!found.hasNext()) {
                    break;
                }
                plugins.add(found.next());
            } catch (ServiceConfigurationError | LinkageError | RuntimeException e) {
                faults.add(PluginTexts.of("jar.faulty", jar.name(), reason(e)));
                if (faults.size() > MOST_FAULTS) {
                    break;
                }
            }
        }
        if (plugins.isEmpty() && faults.isEmpty()) {
            faults.add(PluginTexts.of("jar.empty", jar.name(), SuitePlugin.class.getName()));
        }
        return new LoadedJar(jar, classes, plugins, faults);
    }

    private static URL url(PluginJar jar) {
        try {
            return jar.file().toUri().toURL();
        } catch (MalformedURLException e) {
            throw new IllegalStateException(jar.file() + " is no file", e);
        }
    }

    /** The innermost sentence of a fault, else its kind. */
    public static String reason(Throwable fault) {
        Throwable inner = fault;
        while (inner.getCause() != null && inner.getCause() != inner) {
            inner = inner.getCause();
        }
        String kind = inner.getClass().getSimpleName();
        return inner.getMessage() == null || inner.getMessage().isBlank() ? kind : kind + ": " + inner.getMessage();
    }

    public PluginJar jar() {
        return jar;
    }

    public List<SuitePlugin> plugins() {
        return plugins;
    }

    /** A sentence for each plug-in of the jar that cannot be made. */
    public List<String> faults() {
        return faults;
    }

    /** Lets go of the file; classes not yet loaded can no longer be. */
    @Override
    public void close() throws IOException {
        classes.close();
    }
}
