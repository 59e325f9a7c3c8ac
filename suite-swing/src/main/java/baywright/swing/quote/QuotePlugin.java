package baywright.swing.quote;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;

/** Brings the workbench for the price, and the lines of a quote as a file for spreadsheets. */
public final class QuotePlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("quote", Words.of("title"), "1.0", ApiVersion.CURRENT);
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new QuoteWorkbench());
        suite.add(new LedgerSheet());
    }
}
