package baywright.swing.timetable;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;

/** Brings the workbench of the timetable. */
public final class TimetablePlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("timetable", TimetableWorkbench.TEXTS.of("title"), "1", ApiVersion.CURRENT);
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new TimetableWorkbench());
    }
}
