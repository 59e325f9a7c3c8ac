package baywright.swing.library;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;
import baywright.swing.api.Texts;

/** Brings the library workbench. */
public final class LibraryPlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        String title = Texts.beside(LibraryPlugin.class, "texts").of("title");
        return new PluginInfo("library", title, ApiVersion.CURRENT.toString(), new ApiVersion(1, 0));
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new LibraryWorkbench());
    }
}
