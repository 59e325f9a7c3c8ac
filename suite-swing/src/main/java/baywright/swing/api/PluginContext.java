package baywright.swing.api;

/** What a plug-in may bring. Ids are unique over all plug-ins; a second one with the same id is refused by an exception. */
public interface PluginContext {

    /** A place to work at, reached from the strip at the side. */
    void add(Workbench workbench);

    /** Something the user can do from anywhere. */
    void add(SuiteAction action);

    /** A look at each proved job, whose remarks stand among the findings. */
    void add(FindingRule rule);

    /** A way to bring in a file. */
    void add(Importer importer);

    /** A document to hand out. */
    void add(DocumentMaker maker);

    /** A page among the settings. */
    void add(SettingsPage page);

    /** The desk on which the open shop lies; to be used on the event thread, from {@link Workbench#open} on. */
    Desk desk();
}
