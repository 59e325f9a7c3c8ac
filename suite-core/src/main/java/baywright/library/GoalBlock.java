package baywright.library;

import static baywright.script.Word.word;

import baywright.library.Goal.Want;
import baywright.library.State.Scope;
import baywright.script.Call;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Type;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import java.util.ArrayList;
import java.util.List;

/** {@code goal('…') { }}: an end that customers ask for by name. */
final class GoalBlock extends Blocks {

    static final Section SECTION = new Section(
            "goal",
            "in 'goal(…) { }'",
            "An end that customers ask for by name, as the states that must hold when all is done. It says nothing about"
                    + " how to get there: `plan compose` finds the stages.",
            List.of(
                    word("title")
                            .since("1.3")
                            .takes("words", Type.TEXT)
                            .means("the goal in a few words for people")
                            .example("title 'One-step finish'"),
                    word("about")
                            .since("1.3")
                            .takes("words", Type.TEXT)
                            .means("what the customer gets, in plain words")
                            .example("about 'Light swirls gone in one pass'"),
                    word("wants")
                            .since("1.3")
                            .takesSeveral(
                                    "states",
                                    Type.ID
                                            .called("a state", "states", "'washed'")
                                            .naming("state"))
                            .needsNamed("on", Type.IDS.naming("surface"))
                            .means(
                                    "every one of these states must hold when all is done, on every zone of these surfaces."
                                            + " A job may narrow a goal down to some zones. For a state of the vehicle as a whole"
                                            + " 'on:' says which surfaces are worked on for it")
                            .example("wants 'washed', on: ['paint']")));

    /** A goal with the places of what it names. */
    record Draft(Goal goal, List<Value> states, List<Value> surfaces) {}

    private final String id;
    private final Place place;
    private String title = "";
    private String about = "";
    private final List<Want> wants = new ArrayList<>();
    private final List<Value> states = new ArrayList<>();
    private final List<Value> surfaces = new ArrayList<>();

    GoalBlock(String id, Place place) {
        super(SECTION.name());
        this.id = id;
        this.place = place;
    }

    @Override
    public void accept(Call call) {
        if (refusedInCondition(call)) {
            return;
        }
        switch (call.word().name()) {
            case "title" -> {
                onlyOnce(call);
                title = call.text("words");
            }
            case "about" -> {
                onlyOnce(call);
                about = call.text("words");
            }
            default -> {
                states.addAll(call.several());
                surfaces.addAll(call.list("on"));
                wants.add(new Want(
                        call.several().stream().map(v -> (String) v.raw()).toList(), call.texts("on")));
                if (call.list("on").isEmpty()) {
                    call.badValue(call.value("on").place(), "'on:' of 'wants' names at least one surface");
                }
            }
        }
    }

    /** Notes what a goal must say and this one does not. */
    void judge(Problems problems) {
        if (title.isEmpty()) {
            problems.error(place, "incomplete", "goal '" + id + "' has no title", "title");
        }
        if (wants.isEmpty()) {
            problems.error(place, "incomplete", "goal '" + id + "' wants nothing", "wants");
        }
    }

    Draft build() {
        return new Draft(new Goal(id, title, about, wants, place), states, surfaces);
    }

    /** Notes what the goals name and the library does not have; gives those without an error. */
    static List<Goal> sound(List<FileDraft> files, Declared<State> states, Declared<Surface> surfaces) {
        Declared<Goal> goals = new Declared<>("goal");
        for (FileDraft file : files) {
            Problems problems = file.problems();
            for (Draft draft : file.block().goals()) {
                long before = problems.errors();
                draft.states().forEach(s -> state(s, states, problems));
                draft.surfaces().forEach(s -> surfaces.require((String) s.raw(), s.place(), problems, "wants"));
                if (problems.errors() == before) {
                    goals.add(draft.goal(), Goal::id, Goal::place, problems);
                }
            }
        }
        return goals.all();
    }

    private static void state(Value named, Declared<State> states, Problems problems) {
        String id = (String) named.raw();
        states.require(id, named.place(), problems, "wants");
        if (states.has(id) && states.get(id).scope() == Scope.CONDITION) {
            problems.error(
                    named.place(),
                    "unreachable",
                    "'" + id + "' is given by the bay, no work brings it about; a goal wants states of zones or of the"
                            + " vehicle",
                    "wants");
        }
    }
}
