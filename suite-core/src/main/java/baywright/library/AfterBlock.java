package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Reach;
import baywright.quantity.Quantity;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code after { }}: what a step leaves behind. */
final class AfterBlock extends Blocks {

    private static final Type STATES =
            Type.ID.called("a state", "states", "'iron-clear'").naming("state");
    private static final Type REACH = Type.oneOf("zone", "neighbours", "vehicle");

    static final Section SECTION = new Section(
            "after",
            "in 'after { }'",
            "The states that hold, or hold no longer, once a step is done. What is cleared goes first, then what is set;"
                    + " the opposites of a state that is set are cleared with it.",
            List.of(
                    word("sets")
                            .takesSeveral("states", STATES)
                            .named("reach", REACH, "zone")
                            .named("unless", STATES)
                            .means("these states hold from the end of the hands-on time; 'reach:' says how far from the"
                                    + " step's zones, 'unless:' which state spares a zone beyond them")
                            .example("sets 'iron-clear', 'wet'"),
                    word("clears")
                            .takesSeveral("states", STATES)
                            .named("reach", REACH, "zone")
                            .named("unless", STATES)
                            .means(
                                    "these states end; 'reach:' says how far from the step's zones, 'unless:' which state"
                                            + " spares a zone beyond them")
                            .example("clears 'panel-wiped', reach: 'vehicle', unless: 'masked'"),
                    word("arrives")
                            .takesSeveral("states", STATES)
                            .needsNamed("after", Type.DURATION)
                            .means("these states come by themselves so long after the hands-on time; other work goes on"
                                    + " meanwhile")
                            .example("arrives 'water-safe', after: 12.h")));

    private final List<Effect> effects = new ArrayList<>();

    AfterBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        boolean arrives = call.word().name().equals("arrives");
        Optional<Quantity> after = arrives ? Optional.of(call.quantity("after")) : Optional.empty();
        if (after.isPresent() && after.get().amount().signum() < 0) {
            call.badValue(call.value("after").place(), "'after:' of 'arrives' is a time from 0");
            return;
        }
        Reach reach = arrives ? Reach.ZONE : Reach.valueOf(call.text("reach").toUpperCase(Locale.ROOT));
        String unless = arrives ? "" : call.text("unless");
        for (Value state : call.several()) {
            effects.add(new Effect(
                    (String) state.raw(),
                    !call.word().name().equals("clears"),
                    after,
                    reach,
                    unless,
                    call.given("unless").orElse(state).place(),
                    origin(call, state)));
        }
    }

    List<Effect> build() {
        return effects;
    }
}
