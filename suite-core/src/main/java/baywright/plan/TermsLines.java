package baywright.plan;

import baywright.library.Fact;
import baywright.library.Input;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.library.StageTerms.Origin;
import baywright.script.Place;
import baywright.script.Value;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The lines of a stage's terms that inputs and facts can bring about. It tries the usual values, then every other value
 * of each input and fact that was read on the way, and so on, up to a number of trials; a number without choices is
 * tried at its least and its most.
 */
final class TermsLines {

    private static final int MOST_TRIALS = 64;

    private record Trial(Map<String, Value> with, Map<String, Value> facts) {}

    private final Set<Place> declared = new TreeSet<>();
    private final Set<Place> reached = new TreeSet<>();
    private final Map<String, Input> inputs = new HashMap<>();
    private final Map<String, Fact> facts = new HashMap<>();

    TermsLines(Stage stage, List<Fact> known) {
        stage.inputs().forEach(i -> inputs.put(i.name(), i));
        known.forEach(f -> facts.put(f.id(), f));
        Deque<Trial> open = new ArrayDeque<>();
        Set<Object> seen = new HashSet<>();
        open.add(new Trial(Map.of(), Map.of()));
        for (int trials = 0; trials < MOST_TRIALS && !open.isEmpty(); trials++) {
            Trial trial = open.removeFirst();
            terms(stage, trial).ifPresent(terms -> {
                declared.addAll(places(terms));
                for (String name : new TreeSet<>(terms.dependsOn())) {
                    vary(trial, name).stream().filter(t -> seen.add(key(t))).forEach(open::add);
                }
            });
        }
    }

    /** A combination that the script cannot be worked out for declares nothing. */
    private static Optional<StageTerms> terms(Stage stage, Trial trial) {
        try {
            return Optional.of(stage.terms().of(trial.with(), trial.facts()));
        } catch (RuntimeException failure) {
            return Optional.empty();
        }
    }

    private static Object key(Trial trial) {
        Map<String, Object> raws = new HashMap<>();
        trial.with().forEach((name, value) -> raws.put("input " + name, value.raw()));
        trial.facts().forEach((name, value) -> raws.put("fact " + name, value.raw()));
        return raws;
    }

    private List<Trial> vary(Trial trial, String name) {
        List<Trial> trials = new ArrayList<>();
        Input input = inputs.get(name);
        if (input != null) {
            input.samples().forEach(v -> trials.add(new Trial(with(trial.with(), name, v), trial.facts())));
        }
        Fact fact = facts.get(name);
        if (fact != null) {
            fact.samples().forEach(v -> trials.add(new Trial(trial.with(), with(trial.facts(), name, v))));
        }
        return trials;
    }

    private static Map<String, Value> with(Map<String, Value> all, String name, Value value) {
        Map<String, Value> more = new HashMap<>(all);
        more.put(name, value);
        return more;
    }

    /** Notes what an example brought about. */
    void reach(StageTerms terms) {
        reached.addAll(places(terms));
    }

    /** Every line that was brought about by a trial or an example, in order of place. */
    Set<Place> declared() {
        Set<Place> all = new TreeSet<>(declared);
        all.addAll(reached);
        return all;
    }

    /** Lines that no example brought about, in order of place. */
    List<Place> unreached() {
        Set<Place> rest = new TreeSet<>(declared);
        rest.removeAll(reached);
        return List.copyOf(rest);
    }

    private static Collection<Place> places(StageTerms terms) {
        Stream<Origin> lists = Stream.of(
                        terms.needs().stream().map(StageTerms.Need::origin),
                        terms.prefers().stream().map(StageTerms.Need::origin),
                        terms.effects().stream().map(StageTerms.Effect::origin),
                        terms.attended().stream().map(StageTerms.Attended::origin),
                        terms.standing().stream().map(StageTerms.Standing::origin),
                        terms.setUps().stream().map(StageTerms.SetUp::origin),
                        terms.uses().stream().map(StageTerms.Use::origin),
                        terms.hazards().from().stream().map(StageTerms.Named::origin),
                        terms.hazards().risks().stream().map(StageTerms.Risk::origin),
                        terms.hazards().wear().stream().map(StageTerms.Named::origin),
                        terms.hazards().keepApart().stream().map(StageTerms.Apart::origin),
                        terms.where().equipment().stream().map(StageTerms.Named::origin),
                        terms.removals().stream().map(StageTerms.Removal::origin),
                        terms.checks().stream().map(StageTerms.Note::origin),
                        terms.mistakes().stream().map(StageTerms.Note::origin),
                        Stream.of(
                                        terms.crew().origin(),
                                        terms.where().origin(),
                                        terms.climate().origin())
                                .flatMap(Optional::stream))
                .flatMap(origins -> origins);
        return lists.map(Origin::place).toList();
    }
}
