package baywright.workspace;

import baywright.library.Goal;
import baywright.library.Library;
import baywright.library.State;
import baywright.library.Surface;
import baywright.plan.JobGoal;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.util.Collection;
import java.util.List;

/** Whether a job's goals name goals, states, surfaces and zones that there are. */
final class GoalCheck {

    private static final String SURFACE = "surface:";
    private static final int MOST_LISTED = 20;

    private final Report report;
    private final Json.Obj document;
    private final Library library;
    private final Shape shape;

    GoalCheck(JobFile.Content content, Library library, Shape shape) {
        report = new Report(content.source());
        document = content.document();
        this.library = library;
        this.shape = shape;
    }

    /** Errors in order of place; none when all of it can be composed from. */
    List<FileProblem> problems(List<JobGoal> goals) {
        if (goals.isEmpty()) {
            report.error(
                    document.offset(),
                    "goals",
                    "the job says no goals, so there is nothing to compose from",
                    "add some, such as \"goals\": [{\"goal\": \"" + example() + "\", \"priority\": \"must\"}]");
        }
        for (int i = 0; i < goals.size(); i++) {
            check(i, goals.get(i));
        }
        return report.problems();
    }

    private String example() {
        return library.goals().stream().map(Goal::id).findFirst().orElse("…");
    }

    private void check(int i, JobGoal goal) {
        String at = "goals[" + i + "]";
        Json.Obj object = (Json.Obj)
                ((Json.Arr) document.members().get("goals")).elements().get(i);
        goal.goal().ifPresent(id -> {
            List<String> known = library.goals().stream().map(Goal::id).toList();
            known(id, known, "goal of the library", object.members().get("goal"), at + ".goal");
        });
        for (int s = 0; s < goal.states().size(); s++) {
            state(goal.states().get(s), element(object, "states", s), at + ".states[" + s + "]");
        }
        for (int z = 0; z < goal.zones().size(); z++) {
            zone(goal.zones().get(z), element(object, "zones", z), at + ".zones[" + z + "]");
        }
    }

    private static Json element(Json.Obj object, String list, int index) {
        return ((Json.Arr) object.members().get(list)).elements().get(index);
    }

    private void state(String id, Json at, String path) {
        known(id, library.stateById().keySet(), "state of the library", at, path);
        State state = library.stateById().get(id);
        if (state != null && state.scope() == State.Scope.CONDITION) {
            report.error(
                    at.offset(),
                    path,
                    Shown.quoted(id) + " is given by the bay, no work brings it about",
                    "want a state of zones or of the vehicle");
        }
    }

    private void zone(String choice, Json at, String path) {
        String name = choice.startsWith("-") ? choice.substring(1) : choice;
        if (name.startsWith(SURFACE)) {
            List<String> surfaces = library.surfaces().stream().map(Surface::id).toList();
            known(name.substring(SURFACE.length()), surfaces, "surface of the library", at, path);
        } else {
            List<String> zones = shape.zones().stream().map(Zone::id).toList();
            known(name, zones, "zone of the shape '" + shape.id() + "'", at, path);
        }
    }

    private void known(String met, Collection<String> known, String what, Json at, String path) {
        if (!known.contains(met)) {
            String nearest = Shown.nearest(met, known);
            report.error(
                    at.offset(),
                    path,
                    Shown.quoted(met) + " is no " + what,
                    nearest.isEmpty() ? "give one of " + list(known) : nearest);
        }
    }

    private static String list(Collection<String> words) {
        return words.isEmpty()
                ? "(there is none)"
                : Shown.oneOf(words.stream().sorted().limit(MOST_LISTED).toList());
    }
}
