package baywright.swing.start;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;

/** Brings the jobs at a glance. */
public final class StartPlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("suite-jobs", Words.of("plugin.title"), "1", new ApiVersion(1, 0));
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new JobsWorkbench());
    }
}
