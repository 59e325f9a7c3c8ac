package baywright.swing.api;

/**
 * A plug-in. It is found by {@link java.util.ServiceLoader} under this name and made by its constructor without parameters, which
 * should do nothing.
 */
public interface SuitePlugin {

    /** Who it is and which version of this package it was made for. */
    PluginInfo info();

    /**
     * Adds what it brings. Called once, off the event thread; whatever it throws disables this plug-in alone. A plug-in that does not
     * return within ten seconds is left out.
     */
    void start(PluginContext suite) throws Exception;

    /** Lets go of what it holds; called when the window closes. */
    default void stop() {}
}
