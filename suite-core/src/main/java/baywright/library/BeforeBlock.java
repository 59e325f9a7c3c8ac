package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Need;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import java.util.ArrayList;
import java.util.List;

/** {@code before { }}: what a step must find, would like to find, and must not find. */
final class BeforeBlock extends Blocks {

    private static final Type STATES =
            Type.ID.called("a state", "states", "'washed'").naming("state");

    static final Section SECTION = new Section(
            "before",
            "in 'before { }'",
            "The states that a step of this stage finds on its zones.",
            List.of(
                    word("needs")
                            .takesSeveral("states", STATES)
                            .named("why", Type.TEXT)
                            .means("every one of these states must hold; else the plan stops")
                            .example("needs 'washed', 'cool', why: 'grit scratches'"),
                    word("needsAny")
                            .takesSeveral("states", STATES)
                            .named("why", Type.TEXT)
                            .means("at least one of these states must hold; else the plan stops")
                            .example("needsAny 'panel-wiped', 'coated'"),
                    word("refuses")
                            .takesSeveral("states", STATES)
                            .named("why", Type.TEXT)
                            .means("none of these states may hold; else the plan stops")
                            .example("refuses 'live', why: 'chemicals must be rinsed off first'"),
                    word("prefers")
                            .takesSeveral("states", STATES)
                            .named("why", Type.TEXT)
                            .means("every one of these states had better hold; else the plan is warned about")
                            .example("prefers 'tar-clear'")));

    private final List<Need> needs = new ArrayList<>();
    private final List<Need> prefers = new ArrayList<>();

    BeforeBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        String why = call.text("why");
        switch (call.word().name()) {
            case "needs" -> each(call, needs, false, why);
            case "refuses" -> each(call, needs, true, why);
            case "prefers" -> each(call, prefers, false, why);
            default -> {
                List<String> any =
                        call.several().stream().map(v -> (String) v.raw()).toList();
                needs.add(new Need(any, false, why, origin(call, call.several().get(0))));
            }
        }
    }

    private static void each(Call call, List<Need> into, boolean absent, String why) {
        for (Value state : call.several()) {
            into.add(new Need(List.of((String) state.raw()), absent, why, origin(call, state)));
        }
    }

    List<Need> needs() {
        return needs;
    }

    List<Need> prefers() {
        return prefers;
    }
}
