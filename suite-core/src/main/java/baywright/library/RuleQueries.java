package baywright.library;

import static baywright.script.Word.word;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Type;
import baywright.script.Word;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What the condition of a rule may ask, with an answer of each kind to check a condition by. */
final class RuleQueries {

    private static final Type STATE =
            Type.ID.called("a state", "states", "'washed'").naming("state");
    private static final Type STAGE = Type.ID
            .called("a stage or family", "stages or families", "'sanding'")
            .naming("stage", Type.Use.MAY_REFER);
    private static final Type ITEM =
            Type.ID.called("an item or a group", "items or groups", "'acid'").naming("item", Type.Use.MAY_REFER);
    private static final Quantity SOME_TIME = Quantity.of(1, Unit.MINUTE);

    /** Names with a dot, each with an answer of its kind. */
    static final Map<String, Object> NAMES = names();

    /** The functions, for the vocabulary. */
    static final List<Word> WORDS = List.of(
            state("holds")
                    .named("near", Type.YES_NO, false)
                    .named("anywhere", Type.YES_NO, false)
                    .means(
                            "in a rule: whether the state holds as the step begins, on this zone; 'near: true' also on those"
                                    + " that touch it, 'anywhere: true' on any of the vehicle")
                    .example("holds('glazed')"),
            state("found")
                    .means("in a rule: whether the survey found the state on this zone")
                    .example("found('coated')"),
            state("sinceSet")
                    .means(
                            "in a rule: how long ago a step last set the state on this zone, if it still holds; null if not")
                    .example("sinceSet('coated') > 24.h"),
            steps("since")
                    .named("sameBay", Type.YES_NO, false)
                    .means(
                            "in a rule: how long ago the last step of these stages or families ended on this zone; null if"
                                    + " there was none. 'near:' and 'anywhere:' are those of 'holds'; 'sameBay: true' counts only"
                                    + " work in the bay of this step")
                    .example("since('sanding', anywhere: true) < 60.min"),
            steps("count")
                    .means("in a rule: how many steps of these stages or families came before on this zone")
                    .example("count('correction') == 0"),
            steps("last")
                    .means("in a rule: the stage of the last such step before on this zone; null if there was none")
                    .example("last('polish', 'compound') == 'compound'"),
            steps("next")
                    .means("in a rule: the stage of the next such step after this one on this zone; null if none comes")
                    .example("next('panel-wipe', 'wax') == 'wax'"),
            steps("later")
                    .means("in a rule: whether such a step comes after this one on this zone")
                    .example("later('correction')"),
            word("lastInput")
                    .since("1.2")
                    .takes(
                            "stage",
                            Type.ID
                                    .called("a stage", "stages", "'machine-sand'")
                                    .naming("stage"))
                    .takes(
                            "input",
                            Type.ID.called("an input", "inputs", "'grit'").naming("input"))
                    .means(
                            "in a rule: what the last step of the stage on this zone had its input set to; null if none came")
                    .example("lastInput('machine-sand', 'grit') == 'P1500'"),
            word("uses")
                    .since("1.2")
                    .takes("what", ITEM)
                    .means("in a rule: whether the step uses the item, or one of the reactivity group")
                    .example("uses('acid')"),
            word("usedSince")
                    .since("1.2")
                    .takes("what", ITEM)
                    .needsNamed("until", STATE)
                    .means("in a rule: whether such an item was used on this zone and no later step has set the state")
                    .example("usedSince('acid', until: 'rinsed')"),
            word("sinceUse")
                    .since("1.2")
                    .takes("what", ITEM)
                    .named("anywhere", Type.YES_NO, false)
                    .means("in a rule: how long ago a step that used such an item ended on this zone; null if none did")
                    .example("sinceUse('acid', anywhere: true) < 12.h"),
            word("setting")
                    .since("1.2")
                    .takes("name", Type.ID.called("a setting", "settings", "'film-stop'"))
                    .means("in a rule: a figure of the shop: 'film-stop' and 'film-care' in µm")
                    .example("film.least < setting('film-stop')"));

    /** Figures that a shop gives. */
    static final List<String> SETTINGS = List.of("film-stop", "film-care");

    private RuleQueries() {}

    private static Word state(String name) {
        return word(name).takes("state", STATE).since("1.2");
    }

    private static Word steps(String name) {
        return word(name)
                .since("1.2")
                .takesSeveral("steps", STAGE)
                .named("near", Type.YES_NO, false)
                .named("anywhere", Type.YES_NO, false);
    }

    private static Map<String, Object> names() {
        Map<String, Object> names = new LinkedHashMap<>();
        Stream.of("least", "sure", "mean", "most", "count", "wanted", "budget", "plannedLikely", "plannedMost")
                .forEach(n -> names.put("film." + n, BigDecimal.ONE));
        names.put("film.readable", true);
        Stream.of("zone.id", "zone.surface", "zone.substrate", "vehicle.shape", "step.stage", "step.family")
                .forEach(n -> names.put(n, "text"));
        Stream.of("start", "day", "coldest", "warmest", "driest", "dampest")
                .forEach(n -> names.put("step." + n, BigDecimal.ONE));
        return names;
    }

    /** An answer of the kind that a function gives, for arguments that it was asked with. */
    static Object sample(String function, List<String> arguments) {
        return switch (function) {
            case "sinceSet", "since", "sinceUse" -> SOME_TIME;
            case "count", "setting" -> BigDecimal.ONE;
            case "last", "next" -> arguments.get(0);
            default -> true;
        };
    }
}
