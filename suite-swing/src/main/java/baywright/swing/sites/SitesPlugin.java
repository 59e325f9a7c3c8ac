package baywright.swing.sites;

import baywright.library.ScriptCache;
import baywright.pack.KeyFolder;
import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;
import baywright.workspace.UserFolders;
import java.time.Clock;

/** Brings the workbench of what sites share. */
public final class SitesPlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("sites", Words.of("title"), "1", ApiVersion.CURRENT);
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new SitesWorkbench(
                new Around(Clock.systemUTC(), ScriptCache.ofUser(), new KeyFolder(UserFolders.settings()))));
    }
}
