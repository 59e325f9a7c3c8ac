package baywright.swing.papers;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;

/** Brings the workbench of what is handed out. */
public final class PapersPlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("papers", PapersWorkbench.TEXTS.of("title"), "1", ApiVersion.CURRENT);
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new PapersWorkbench());
    }
}
