package baywright.library;

import static baywright.script.Word.word;

import baywright.script.Call;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Type;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code factor('…') { }}: how a surveyed fact stretches times. */
final class FactorBlock extends Blocks {

    static final Section SECTION = new Section(
            "factor",
            "in 'factor(…) { }'",
            "Makes hands-on times larger or smaller by a surveyed fact.",
            List.of(
                    word("reads")
                            .takes(
                                    "fact",
                                    Type.ID
                                            .called("a fact", "facts", "'hardness'")
                                            .naming("fact"))
                            .means("the fact; 'size' is the vehicle's own size and multiplies as it is")
                            .example("reads 'hardness'"),
                    word("value")
                            .takes(
                                    "is",
                                    Type.TEXT
                                            .called("a value of the fact", "values of the fact", "'hard'")
                                            .naming("value"))
                            .takes("factor", Type.NUMBER.called("a factor", "factors", "1.3"))
                            .means("the factor for this value; a value that is not listed counts 1")
                            .example("value 'hard', 1.3"),
                    word("families")
                            .takesSeveral(
                                    "families",
                                    Type.ID
                                            .called("a family", "families", "'sanding'")
                                            .naming("family"))
                            .means("only stages of these families")
                            .example("families 'sanding', 'correction'"),
                    word("stages")
                            .takesSeveral(
                                    "stages",
                                    Type.ID
                                            .called("a stage", "stages", "'claying'")
                                            .naming("stage"))
                            .means("these stages, whatever their family")
                            .example("stages 'claying'"),
                    word("except")
                            .takesSeveral(
                                    "stages",
                                    Type.ID
                                            .called("a stage", "stages", "'finishing-polish'")
                                            .naming("stage"))
                            .means("not these stages")
                            .example("except 'finishing-polish'"),
                    word("onlyPer")
                            .takes("driver", TimeBlock.DRIVER)
                            .means("only lines with this driver")
                            .example("onlyPer 'vehicle'"),
                    word("items")
                            .means("quantities of items are multiplied too")
                            .example("items()")));

    private final String id;
    private final Place place;
    private String fact = "";
    private Place factPlace;
    private String onlyPer = "";
    private boolean items;
    private final Map<String, BigDecimal> values = new LinkedHashMap<>();
    private final Map<String, Place> valuePlaces = new LinkedHashMap<>();
    private final List<Value> families = new ArrayList<>();
    private final List<Value> stages = new ArrayList<>();
    private final List<Value> except = new ArrayList<>();

    FactorBlock(String id, Place place) {
        super(SECTION.name());
        this.id = id;
        this.place = place;
        this.factPlace = place;
    }

    @Override
    public void accept(Call call) {
        switch (call.word().name()) {
            case "reads" -> {
                onlyOnce(call);
                fact = call.text("fact");
                factPlace = call.value("fact").place();
            }
            case "value" -> value(call);
            case "families" -> families.addAll(call.several());
            case "stages" -> stages.addAll(call.several());
            case "except" -> except.addAll(call.several());
            case "onlyPer" -> {
                onlyOnce(call);
                onlyPer = call.text("driver");
            }
            default -> items = true;
        }
    }

    private void value(Call call) {
        onlyOnce(call, "value '" + call.text("is") + "'");
        BigDecimal factor = call.number("factor");
        if (factor.signum() <= 0 || factor.compareTo(BigDecimal.valueOf(100)) > 0) {
            call.badValue(
                    call.value("factor").place(),
                    "'value' wants a factor above 0 and up to 100; it is "
                            + call.value("factor").described());
            return;
        }
        values.put(call.text("is"), factor);
        valuePlaces.put(call.text("is"), call.value("is").place());
    }

    void judge(Problems problems) {
        if (fact.isEmpty()) {
            problems.error(place, "incomplete", "factor '" + id + "' does not say which fact it reads", "reads");
        }
    }

    /** A factor with the places of what it refers to, for the check across the library. */
    record Draft(
            JobFactor factor,
            Place factPlace,
            Map<String, Place> valuePlaces,
            List<Value> families,
            List<Value> stages) {}

    Draft build() {
        List<Value> allStages = new ArrayList<>(stages);
        allStages.addAll(except);
        return new Draft(
                new JobFactor(id, fact, values, texts(families), texts(stages), texts(except), onlyPer, items, place),
                factPlace,
                valuePlaces,
                List.copyOf(families),
                allStages);
    }

    private static List<String> texts(List<Value> values) {
        return values.stream().map(v -> (String) v.raw()).toList();
    }

    Optional<String> fact() {
        return fact.isEmpty() ? Optional.empty() : Optional.of(fact);
    }
}
