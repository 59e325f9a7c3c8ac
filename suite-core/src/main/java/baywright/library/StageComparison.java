package baywright.library;

import baywright.library.StageChange.Aspect;
import baywright.library.StageChange.Part;
import baywright.library.StageChange.Said;
import baywright.library.StageChange.Words;
import baywright.library.StageStatements.Statement;
import baywright.script.Place;
import baywright.script.Value;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Holds two stages against each other by what they say, not by how it is written: comments, layout, order and helpers make no
 * difference. What hangs on inputs and facts is compared at their usual values, then at each other value of those that either stage
 * reads, then at several together, up to a number of trials; a number is tried at its bounds.
 */
public final class StageComparison {

    private static final int MOST_TRIALS = 64;

    private record Trial(Map<String, Value> with, Map<String, Value> facts) {

        int depth() {
            return with.size() + facts.size();
        }

        Object key() {
            Map<String, Object> raws = new HashMap<>();
            with.forEach((name, value) -> raws.put("input " + name, value.raw()));
            facts.forEach((name, value) -> raws.put("fact " + name, value.raw()));
            return raws;
        }

        Map<String, String> shown() {
            Map<String, String> shown = new TreeMap<>();
            with.forEach((name, value) -> shown.put(name, InputValues.shown(value)));
            facts.forEach((name, value) -> shown.put(name, InputValues.shown(value)));
            return shown;
        }
    }

    private final Stage before;
    private final Stage after;
    private final Map<String, Fact> facts = new HashMap<>();
    private final Set<StageChange> found = new LinkedHashSet<>();
    private final Set<StageChange> known = new HashSet<>();
    private final Set<List<Object>> lines = new HashSet<>();

    private StageComparison(Stage before, Stage after, List<Fact> facts) {
        this.before = before;
        this.after = after;
        facts.forEach(f -> this.facts.put(f.id(), f));
    }

    /**
     * What the second says otherwise than the first, in order of the kinds of declarations; empty when they mean the same. Neither
     * their ids nor their files are compared.
     *
     * @param facts the facts that there are, for what hangs on them
     */
    public static List<StageChange> of(Stage before, Stage after, List<Fact> facts) {
        StageComparison comparison = new StageComparison(before, after, facts);
        comparison.compare();
        return comparison.found.stream()
                .sorted(Comparator.comparing(StageChange::aspect)
                        .thenComparing(c -> c.when().size()))
                .toList();
    }

    private void compare() {
        differ(StageStatements.ofHead(before), StageStatements.ofHead(after), new Trial(Map.of(), Map.of()));
        Deque<Trial> open = new ArrayDeque<>();
        Set<Object> seen = new HashSet<>();
        open.add(new Trial(Map.of(), Map.of()));
        for (int trials = 0; trials < MOST_TRIALS && !open.isEmpty(); trials++) {
            Trial trial = open.removeFirst();
            Optional<StageTerms> old = terms(before, trial);
            Optional<StageTerms> now = terms(after, trial);
            compare(old, now, trial);
            Set<String> read = new TreeSet<>();
            Stream.of(old, now).flatMap(Optional::stream).forEach(t -> read.addAll(t.dependsOn()));
            read.forEach(name ->
                    vary(trial, name).stream().filter(t -> seen.add(t.key())).forEach(open::add));
        }
    }

    private void compare(Optional<StageTerms> old, Optional<StageTerms> now, Trial trial) {
        if (old.isPresent() && now.isPresent()) {
            differ(
                    StageStatements.ofTerms(old.get(), before.place()),
                    StageStatements.ofTerms(now.get(), after.place()),
                    trial);
        } else if (old.isPresent() || now.isPresent()) {
            note(
                    new StageChange(
                            Aspect.WORKS,
                            "",
                            Part.ITSELF,
                            old.map(t -> new Words("")),
                            now.map(t -> new Words("")),
                            Optional.of(before.place()),
                            Optional.of(after.place()),
                            trial.shown()),
                    trial);
        }
    }

    /** Values that a script cannot be worked out for give no terms. */
    private static Optional<StageTerms> terms(Stage stage, Trial trial) {
        Map<String, Value> with = new HashMap<>(trial.with());
        with.keySet().retainAll(stage.inputs().stream().map(Input::name).toList());
        try {
            return Optional.of(stage.terms().of(with, trial.facts()));
        } catch (RuntimeException failure) {
            return Optional.empty();
        }
    }

    private List<Trial> vary(Trial trial, String name) {
        List<Trial> trials = new ArrayList<>();
        for (Value value : inputValues(name)) {
            Map<String, Value> with = new LinkedHashMap<>(trial.with());
            with.put(name, value);
            trials.add(new Trial(with, trial.facts()));
        }
        Fact fact = facts.get(name);
        if (fact != null && trials.isEmpty()) {
            for (Value value : fact.samples()) {
                Map<String, Value> given = new LinkedHashMap<>(trial.facts());
                given.put(name, value);
                trials.add(new Trial(trial.with(), given));
            }
        }
        return trials;
    }

    /** Values of an input that every stage that has it takes. */
    private List<Value> inputValues(String name) {
        List<Input> inputs = Stream.of(before, after)
                .flatMap(s -> s.inputs().stream())
                .filter(i -> i.name().equals(name))
                .toList();
        Map<Object, Value> values = new LinkedHashMap<>();
        inputs.stream().flatMap(i -> i.samples().stream()).forEach(v -> values.putIfAbsent(v.raw(), v));
        return values.values().stream()
                .filter(v -> inputs.stream().allMatch(i -> InputValues.fit(i, v).isPresent()))
                .toList();
    }

    private void differ(List<Statement> old, List<Statement> now, Trial trial) {
        Map<List<Object>, List<Statement>> was = bySubject(old);
        Map<List<Object>, List<Statement>> is = bySubject(now);
        Set<List<Object>> subjects = new LinkedHashSet<>(was.keySet());
        subjects.addAll(is.keySet());
        for (List<Object> subject : subjects) {
            List<Statement> gone = new ArrayList<>(was.getOrDefault(subject, List.of()));
            List<Statement> come = new ArrayList<>(is.getOrDefault(subject, List.of()));
            dropAlike(gone, come);
            int pairs = Math.min(gone.size(), come.size());
            for (int i = 0; i < pairs; i++) {
                pair(gone.get(i), come.get(i), trial);
            }
            gone.subList(pairs, gone.size()).forEach(s -> whole(s, Optional.of(s), Optional.empty(), trial));
            come.subList(pairs, come.size()).forEach(s -> whole(s, Optional.empty(), Optional.of(s), trial));
        }
    }

    private static Map<List<Object>, List<Statement>> bySubject(List<Statement> statements) {
        Map<List<Object>, List<Statement>> by = new LinkedHashMap<>();
        statements.forEach(s -> by.computeIfAbsent(List.of(s.aspect(), s.subject()), k -> new ArrayList<>())
                .add(s));
        return by;
    }

    private static void dropAlike(List<Statement> gone, List<Statement> come) {
        for (Statement one : List.copyOf(gone)) {
            Optional<Statement> alike = come.stream()
                    .filter(s -> s.said().equals(one.said()) && s.parts().equals(one.parts()))
                    .findFirst();
            if (alike.isPresent()) {
                gone.remove(one);
                come.remove(alike.get());
            }
        }
    }

    private void pair(Statement old, Statement now, Trial trial) {
        note(old, now, Part.ITSELF, Optional.of(old.said()), Optional.of(now.said()), trial);
        Set<Part> parts = EnumSet.noneOf(Part.class);
        parts.addAll(old.parts().keySet());
        parts.addAll(now.parts().keySet());
        parts.forEach(part -> note(
                old,
                now,
                part,
                Optional.ofNullable(old.parts().get(part)),
                Optional.ofNullable(now.parts().get(part)),
                trial));
    }

    private void note(
            Statement old, Statement now, Part part, Optional<Said> before, Optional<Said> after, Trial trial) {
        if (!Objects.equals(before, after)) {
            note(
                    new StageChange(
                            now.aspect(),
                            now.subject(),
                            part,
                            before,
                            after,
                            Optional.of(old.place()),
                            Optional.of(now.place()),
                            trial.shown()),
                    trial);
        }
    }

    private void whole(Statement of, Optional<Statement> old, Optional<Statement> now, Trial trial) {
        note(
                new StageChange(
                        of.aspect(),
                        of.subject(),
                        Part.ITSELF,
                        old.map(Statement::said),
                        now.map(Statement::said),
                        old.map(Statement::place),
                        now.map(Statement::place),
                        trial.shown()),
                trial);
    }

    /** The same difference is told once; values that only several inputs and facts together bring, only of lines not told of. */
    private void note(StageChange change, Trial trial) {
        List<Object> line =
                List.of(change.aspect(), change.subject(), change.part(), place(change.old()), place(change.now()));
        if (known.add(change.anyhow()) && (lines.add(line) || trial.depth() < 2)) {
            found.add(change);
        }
    }

    private static Place place(Optional<Place> place) {
        return place.orElse(Place.ofFile(""));
    }
}
