package baywright.swing.survey;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.SuitePlugin;
import baywright.swing.api.Texts;

/** Brings the survey. */
public final class SurveyPlugin implements SuitePlugin {

    @Override
    public PluginInfo info() {
        return new PluginInfo("survey", texts().of("title"), "1.0", new ApiVersion(1, 0));
    }

    @Override
    public void start(PluginContext suite) {
        Texts texts = texts();
        suite.add(new SurveyWorkbench(texts));
        suite.add(SuiteAction.of("new-job", texts.of("new.action"), desk -> NewJob.ask(desk, texts))
                .when(state -> state.shop().isPresent()));
        suite.add(SuiteAction.of("copy-job", texts.of("copy.action"), desk -> NewJob.copy(desk, texts))
                .when(state -> state.job().isPresent()));
    }

    private static Texts texts() {
        return Texts.beside(SurveyPlugin.class, "texts");
    }
}
