package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Apart;
import baywright.library.StageTerms.Hazards;
import baywright.library.StageTerms.Named;
import baywright.library.StageTerms.Risk;
import baywright.quantity.Quantity;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Type.Use;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import java.util.ArrayList;
import java.util.List;

/** {@code hazards { }}: dangers of doing it. */
final class HazardsBlock extends Blocks {

    static final Section SECTION = new Section(
            "hazards",
            "in 'hazards { }'",
            "Dangers of the work, protection, and what must not meet.",
            List.of(
                    word("from")
                            .takesSeveral(
                                    "items",
                                    Type.ID
                                            .called("an item", "items", "'iron-remover'")
                                            .naming("item"))
                            .means("the hazard statements of these items apply")
                            .example("from 'iron-remover'"),
                    word("risk")
                            .takes(
                                    "kind",
                                    Type.ID
                                            .called("a kind of danger", "kinds of danger", "'vibration'")
                                            .naming("danger"))
                            .mayTake("level", Type.QUANTITY.called("a level", "levels", "5.ms2"))
                            .means("a physical danger, with its level where it has one")
                            .example("risk 'vibration', 5.ms2"),
                    word("wear")
                            .takesSeveral("protection", Type.TEXT.called("a text", "texts", "'gloves'"))
                            .means("protection beyond what the items ask for")
                            .example("wear 'gloves', 'goggles'"),
                    word("keepApart")
                            .takesSeveral(
                                    "what",
                                    Type.TEXT
                                            .called("a text", "texts", "'acid'")
                                            .naming("item", Use.MAY_REFER))
                            .named("why", Type.TEXT)
                            .means("items, reactivity groups or things that must not meet this stage's items")
                            .example("keepApart 'acid', why: 'gives off a toxic gas'")));

    private final List<Named> from = new ArrayList<>();
    private final List<Risk> risks = new ArrayList<>();
    private final List<Named> wear = new ArrayList<>();
    private final List<Apart> apart = new ArrayList<>();

    HazardsBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        switch (call.word().name()) {
            case "from" -> call.several().forEach(v -> from.add(new Named(text(v), origin(call, v))));
            case "wear" -> call.several().forEach(v -> wear.add(new Named(text(v), origin(call, v))));
            case "keepApart" ->
                call.several().forEach(v -> apart.add(new Apart(text(v), call.text("why"), origin(call, v))));
            default ->
                risks.add(new Risk(call.text("kind"), call.given("level").map(v -> (Quantity) v.raw()), origin(call)));
        }
    }

    private static String text(Value value) {
        return (String) value.raw();
    }

    Hazards build() {
        return new Hazards(from, risks, wear, apart);
    }
}
