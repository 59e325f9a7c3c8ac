package example.roofwork;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.SuitePlugin;
import java.util.Optional;

/** Watches work on the roofs of tall vehicles. */
public final class RoofWork implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("roof-work", "Work on tall roofs", "1.0.0", new ApiVersion(1, 0));
    }

    @Override
    public void start(PluginContext suite) {
        suite.add(new RoofRule());
        suite.add(new ZoneTable());
        suite.add(SuiteAction.of("roof-work-count", "Count the steps on the roof", RoofWork::count)
                .when(state -> state.worked().isPresent()));
    }

    private static void count(Desk desk) {
        desk.state().worked().ifPresent(worked -> {
            long steps = RoofRule.steps(worked.judged()).count();
            desk.say(new Notice(Notice.Weight.NOTE, steps + " steps of this plan work on the roof.", Optional.empty()));
        });
    }
}
