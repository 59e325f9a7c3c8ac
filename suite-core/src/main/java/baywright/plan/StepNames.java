package baywright.plan;

import baywright.library.Stage;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** Names of a plan's steps for sentences, as {@code polish (s4)}; a stage that is gone stands as its id in quotes. */
final class StepNames {

    private StepNames() {}

    /** Each step's name by its id; of two steps with one id the first. */
    static Map<String, String> of(Setting setting, Plan plan, Locale locale) {
        return of(setting, plan, locale, Stage::title);
    }

    /** The same with other titles of stages. */
    static Map<String, String> of(Setting setting, Plan plan, Locale locale, Function<Stage, String> titles) {
        Map<String, String> names = new HashMap<>();
        for (Step step : plan.steps()) {
            names.putIfAbsent(step.id(), stage(setting, step.stage(), locale, titles) + " (" + step.id() + ")");
        }
        return names;
    }

    /** A stage's title as it stands within a sentence. */
    static String stage(Setting setting, String id, Locale locale) {
        return stage(setting, id, locale, Stage::title);
    }

    private static String stage(Setting setting, String id, Locale locale, Function<Stage, String> titles) {
        Stage stage = setting.library().stageById().get(id);
        return stage == null ? "'" + id + "'" : ZoneNames.inSentence(titles.apply(stage), locale);
    }
}
