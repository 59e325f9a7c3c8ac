package baywright.swing.plan;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;

/** Brings the plan workbench into the window. */
public final class PlanPlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("plan", Words.of("title"), "1.0", ApiVersion.CURRENT);
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new PlanWorkbench());
    }
}
