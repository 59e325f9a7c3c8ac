package baywright.swing.safety;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;

/** Brings the workbench of what may hurt people. */
public final class SafetyPlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("safety", Words.of("title"), "1", ApiVersion.CURRENT);
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new SafetyWorkbench());
    }
}
