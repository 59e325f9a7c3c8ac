package baywright.share;

import baywright.library.Goal;
import baywright.library.JobFactor;
import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Stage;
import baywright.library.State;
import baywright.plan.HouseRules;
import baywright.plan.JobGoal;
import baywright.plan.Step;
import baywright.script.Wording;
import baywright.share.ImpactChange.Kind;
import baywright.vehicle.Survey;
import baywright.workspace.Job;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which changes of a library a job may notice. It errs on one side alone: a change that it leaves out makes nothing of the
 * job's proof, times and price.
 *
 * <p>A job notices what is declared of its stages, of the rules that concern them and of whatever these name, and of what its
 * survey and its goals name. States lead on to those that they imply, end or are made of. A fact is read by every job. A job
 * that names what one of the libraries does not have notices everything, as its finding tells the nearest that there is.
 */
final class ImpactIndex {

    private static final String SURFACE = "surface:";

    /** Texts and names that something speaks of; {@code anything} when it may put texts together. */
    private record Spoken(Set<String> names, boolean anything) {

        static Spoken of(Optional<Wording> wording) {
            return wording.map(w -> new Spoken(w.names(), w.isComposed())).orElseGet(() -> new Spoken(Set.of(), true));
        }
    }

    private final List<ImpactChange> changes;
    private final List<Library> libraries;
    private final Map<String, BitSet> byStage = new HashMap<>();
    private final Map<Rule, Spoken> rules = new HashMap<>();
    private final Set<String> both;
    private final boolean knowsHouse;

    ImpactIndex(Library before, Library after, List<ImpactChange> changes, HouseRules house) {
        this.changes = changes;
        libraries = List.of(before, after);
        Stream.of(before, after)
                .flatMap(l -> l.rules().stream())
                .forEach(r ->
                        rules.computeIfAbsent(r, rule -> Spoken.of(rule.judge().wording())));
        both = new HashSet<>(known(before));
        both.retainAll(known(after));
        knowsHouse = Stream.of(house.softened(), house.off())
                .flatMap(m -> m.keySet().stream())
                .allMatch(id -> both.contains("rule " + id));
        Stream.of(before, after)
                .flatMap(l -> l.stages().stream())
                .map(Stage::id)
                .distinct()
                .forEach(id -> byStage.put(id, ofStage(id)));
    }

    private static Set<String> known(Library library) {
        Set<String> known = new HashSet<>();
        library.stages().forEach(s -> known.add("stage " + s.id()));
        library.states().forEach(s -> known.add("state " + s.id()));
        library.facts().forEach(f -> known.add("fact " + f.id()));
        library.surfaces().forEach(s -> known.add("surface " + s.id()));
        library.goals().forEach(g -> known.add("goal " + g.id()));
        library.rules().forEach(r -> known.add("rule " + r.id()));
        return known;
    }

    /** Numbers, in the list of the changes, of those that a job may notice by itself, whatever is done beside it. */
    BitSet of(Job job) {
        BitSet noticed = new BitSet();
        if (changes.isEmpty()) {
            return noticed;
        }
        if (!knowsHouse || !knowsAll(job)) {
            noticed.set(0, changes.size());
            return noticed;
        }
        job.plan().steps().stream()
                .map(Step::stage)
                .distinct()
                .map(byStage::get)
                .forEach(noticed::or);
        note(noticed, new Spoken(statesOf(job), false));
        Set<String> goals = goals(job);
        for (int i = 0; i < changes.size(); i++) {
            ImpactChange change = changes.get(i);
            boolean always = change.kind() == Kind.FACT || change.kind() == Kind.ORDER;
            boolean goal = change.kind() == Kind.GOAL && goals.contains(change.id());
            boolean surface = change.kind() == Kind.SURFACE && zones(job).contains(SURFACE + change.id());
            noticed.set(i, noticed.get(i) || always || goal || surface);
        }
        return noticed;
    }

    private boolean knowsAll(Job job) {
        Survey survey = job.survey();
        Stream<String> facts = Stream.concat(
                survey.facts().keySet().stream(),
                survey.zones().values().stream().flatMap(z -> z.facts().keySet().stream()));
        return Stream.of(
                        job.plan().steps().stream().map(s -> "stage " + s.stage()),
                        surveyed(survey).map(s -> "state " + s),
                        facts.map(f -> "fact " + f),
                        goals(job).stream().map(g -> "goal " + g),
                        zones(job).stream()
                                .filter(z -> z.startsWith(SURFACE))
                                .map(z -> "surface " + z.substring(SURFACE.length())))
                .flatMap(names -> names)
                .allMatch(both::contains);
    }

    private static Stream<String> surveyed(Survey survey) {
        return Stream.concat(
                survey.states().stream(), survey.zones().values().stream().flatMap(z -> z.states().stream()));
    }

    private static Set<String> goals(Job job) {
        return job.goals().stream().flatMap(g -> g.goal().stream()).collect(Collectors.toSet());
    }

    private static Set<String> zones(Job job) {
        return Stream.concat(
                        job.plan().steps().stream().flatMap(s -> s.zones().stream()),
                        job.goals().stream().flatMap(g -> g.zones().stream()))
                .collect(Collectors.toSet());
    }

    private Set<String> statesOf(Job job) {
        Set<String> states = surveyed(job.survey()).collect(Collectors.toSet());
        job.goals().stream().map(JobGoal::states).forEach(states::addAll);
        Set<String> goals = goals(job);
        for (Library library : libraries) {
            library.goals().stream()
                    .filter(g -> goals.contains(g.id()))
                    .flatMap((Goal g) -> g.wants().stream())
                    .forEach(w -> states.addAll(w.states()));
        }
        return states;
    }

    // by stage

    private BitSet ofStage(String id) {
        BitSet noticed = new BitSet();
        for (Library library : libraries) {
            Stage stage = library.stageById().get(id);
            if (stage != null) {
                note(noticed, stage);
            }
        }
        return noticed;
    }

    private void note(BitSet noticed, Stage stage) {
        note(noticed, Spoken.of(stage.terms().wording()));
        List<Rule> concerning = libraries.stream()
                .flatMap(l -> l.rules().stream())
                .filter(r -> r.at().concerns(stage))
                .toList();
        concerning.forEach(r -> note(noticed, rules.get(r)));
        Set<String> ruled = concerning.stream().map(Rule::id).collect(Collectors.toSet());
        Set<String> factored = libraries.stream()
                .flatMap(l -> l.factors().stream())
                .filter(f -> touches(f, stage))
                .map(JobFactor::id)
                .collect(Collectors.toSet());
        for (int i = 0; i < changes.size(); i++) {
            ImpactChange change = changes.get(i);
            boolean concerned =
                    switch (change.kind()) {
                        case STAGE -> change.id().equals(stage.id());
                        case RULE -> ruled.contains(change.id());
                        case FAMILY -> change.id().equals(stage.family());
                        case FACTOR -> factored.contains(change.id());
                        default -> false;
                    };
            noticed.set(i, noticed.get(i) || concerned);
        }
    }

    private static boolean touches(JobFactor factor, Stage stage) {
        return factor.touches(stage.id(), stage.family(), factor.onlyPer());
    }

    /** States, items and families that something speaks of. */
    private void note(BitSet noticed, Spoken spoken) {
        Set<String> reached = reached(spoken.names());
        for (int i = 0; i < changes.size(); i++) {
            ImpactChange change = changes.get(i);
            boolean named =
                    switch (change.kind()) {
                        case STATE -> spoken.anything() || reached.contains(change.id());
                        case ITEM, FAMILY -> spoken.anything() || spoken.names().contains(change.id());
                        default -> false;
                    };
            noticed.set(i, noticed.get(i) || named);
        }
    }

    /** The names with the states that they lead on to, in either library. */
    private Set<String> reached(Collection<String> names) {
        Set<String> reached = new HashSet<>(names);
        if (changes.stream().noneMatch(c -> c.kind() == Kind.STATE)) {
            return reached;
        }
        Deque<String> open = new ArrayDeque<>(names);
        while (!open.isEmpty()) {
            String name = open.removeFirst();
            for (Library library : libraries) {
                State state = library.stateById().get(name);
                if (state != null) {
                    related(state).filter(reached::add).forEach(open::add);
                }
            }
        }
        return reached;
    }

    private static Stream<String> related(State state) {
        return Stream.of(state.opposites(), state.implies(), state.madeOf()).flatMap(List::stream);
    }
}
