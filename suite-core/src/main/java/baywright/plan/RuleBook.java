package baywright.plan;

import baywright.library.Family;
import baywright.library.Item;
import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Rule.Ask;
import baywright.library.Rule.Reach;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.script.Value;
import baywright.vehicle.Zone;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * The rules of a setting's library by the stages that they concern, with everything that they ask worked out as far as it
 * does not depend on a plan.
 */
final class RuleBook {

    /** A question ready to be answered; {@code index} is the set of steps or goods, the state, or the name that it is about. */
    record Question(Kind kind, int index, String name, String input, Reach reach, boolean sameBay) {

        /** What the answer depends on. */
        Scope scope() {
            return switch (kind) {
                case FOUND, SURVEYED, SETTING -> Scope.SETTING;
                case NAMED ->
                    name.startsWith("step.") ? Scope.STEP : name.startsWith("film.planned") ? Scope.ROW : Scope.SETTING;
                case INPUT, USES -> Scope.STEP;
                case HOLDS, SINCE_SET, USED_SINCE -> Scope.ROW;
                case SINCE, COUNT, LAST, NEXT, LATER, LAST_INPUT, SINCE_USE ->
                    sameBay || reach == Reach.ANYWHERE ? Scope.STEP : Scope.ROW;
            };
        }
    }

    /** What an answer depends on: the setting and the row; the part of a step at hand; these and the row. */
    enum Scope {
        SETTING,
        STEP,
        ROW
    }

    /** A question that rules ask, each once; it keeps the answers that hold for every plan. */
    static final class Asked {
        private static final long UNASKED = Long.MIN_VALUE;

        private final int number;
        private final Question question;
        private final Scope scope;
        private long[] kept = {};

        Asked(int number, Question question) {
            this.number = number;
            this.question = question;
            scope = question.scope();
        }

        /** Its number among the questions of the book. */
        int number() {
            return number;
        }

        Question question() {
            return question;
        }

        Scope scope() {
            return scope;
        }

        /** The answer on one of so many rows, asked for once; only for what depends on nothing else. */
        long kept(int row, int rows, RuleAnswers answers) {
            if (kept.length == 0) {
                kept = new long[rows];
                Arrays.fill(kept, UNASKED);
            }
            if (kept[row] == UNASKED) {
                kept[row] = answers.of(question, row);
            }
            return kept[row];
        }
    }

    /** What is asked. */
    enum Kind {
        HOLDS,
        FOUND,
        SINCE_SET,
        SINCE,
        COUNT,
        LAST,
        NEXT,
        LATER,
        LAST_INPUT,
        INPUT,
        SURVEYED,
        USES,
        USED_SINCE,
        SINCE_USE,
        SETTING,
        NAMED
    }

    /**
     * A rule with its questions and what it has already made of their answers. It asks for one answer at a time; which one
     * comes next depends only on those before, so what it has made of them is kept as a tree of answers.
     */
    static final class Entry {
        private static final int REMEMBERED = 4_096;

        private final Rule rule;
        private final List<Asked> questions;
        private final Optional<BitSet> rows;
        private Branch root = new Branch();
        private int branches;

        Entry(Rule rule, List<Asked> questions, VehicleIndex vehicle) {
            this.rule = rule;
            this.questions = questions;
            List<String> surfaces = rule.at().surfaces();
            rows = surfaces.isEmpty() ? Optional.empty() : Optional.of(rowsWith(surfaces, vehicle));
        }

        private static BitSet rowsWith(List<String> surfaces, VehicleIndex vehicle) {
            BitSet rows = new BitSet();
            for (int row = 0; row < vehicle.rows(); row++) {
                rows.set(
                        row,
                        vehicle.zone(row)
                                .map(Zone::surface)
                                .filter(surfaces::contains)
                                .isPresent());
            }
            return rows;
        }

        Rule rule() {
            return rule;
        }

        /** Its question with a number among its own. */
        Asked question(int q) {
            return questions.get(q);
        }

        /** The numbers of all its questions. */
        List<Integer> all() {
            return IntStream.range(0, questions.size()).boxed().toList();
        }

        /** Looks at surfaces of its own choice. */
        boolean choosesSurfaces() {
            return rows.isPresent();
        }

        /** Whether it looks at a row if a step works there. */
        boolean looksAt(int row) {
            return rows.isEmpty() || rows.get().get(row);
        }

        /**
         * What the rule says.
         *
         * @param answer gives the answer to the question with a number, as {@link RuleAnswers} codes it
         */
        Verdict of(IntToLongFunction answer, List<Object> values) {
            Branch at = root;
            while (at != null && at.verdict == null && at.question >= 0) {
                at = at.next.get(answer.applyAsLong(at.question));
            }
            return at != null && at.verdict != null ? at.verdict : learn(answer, values);
        }

        private Verdict learn(IntToLongFunction answer, List<Object> values) {
            Reading reading = new Reading(answer, values);
            Verdict verdict = Verdict.of(rule, reading);
            if (branches >= REMEMBERED) {
                root = new Branch();
                branches = 0;
            }
            Branch at = root;
            for (Map.Entry<Integer, Long> read : reading.read.entrySet()) {
                at.question = read.getKey();
                at = at.next.computeIfAbsent(read.getValue(), a -> new Branch());
                branches++;
            }
            at.verdict = verdict;
            return verdict;
        }

        /** The answers of one judgement as values, asked for when they are read. */
        private final class Reading extends AbstractList<Object> {
            private final IntToLongFunction answer;
            private final List<Object> values;
            private final Map<Integer, Long> read = new LinkedHashMap<>();

            Reading(IntToLongFunction answer, List<Object> values) {
                this.answer = answer;
                this.values = values;
            }

            @Override
            public Object get(int q) {
                long code = read.computeIfAbsent(q, answer::applyAsLong);
                return RuleAnswers.decode(questions.get(q).question().kind(), code, values);
            }

            @Override
            public int size() {
                return questions.size();
            }
        }
    }

    /** A place in the tree of answers: the verdict, or the question that is read next and where its answers lead. */
    private static final class Branch {
        private final Map<Long, Branch> next = new HashMap<>();
        private int question = -1;
        private Verdict verdict;
    }

    private final Library library;
    private final StateIndex states;
    private final List<Entry> entries = new ArrayList<>();
    private final Map<Question, Asked> questions = new HashMap<>();
    private final Map<String, List<Entry>> byStage = new HashMap<>();
    private final Map<Set<String>, Integer> stepSets = new HashMap<>();
    private final Map<List<String>, Integer> setOfNames = new HashMap<>();
    private final Map<String, int[]> setsOfStage = new HashMap<>();
    private final Map<String, Integer> goods = new HashMap<>();
    private final IdentityHashMap<CompiledTerms, int[]> goodsOfTerms = new IdentityHashMap<>();
    private final Map<Object, Integer> numberOfValue = new HashMap<>();
    private final List<Object> values = new ArrayList<>();
    private boolean looksAhead;
    private boolean plansFilm;

    RuleBook(Library library, StateIndex states, VehicleIndex vehicle) {
        this.library = library;
        this.states = states;
        code(Value.NOTHING);
        for (Rule rule : library.rules()) {
            entries.add(new Entry(rule, rule.asks().stream().map(this::asked).toList(), vehicle));
        }
    }

    private Asked asked(Ask ask) {
        return questions.computeIfAbsent(question(ask), q -> new Asked(questions.size(), q));
    }

    private Question question(Ask ask) {
        String first = ask.names().isEmpty() ? "" : ask.names().get(0);
        return switch (ask.word()) {
            case "holds" -> about(Kind.HOLDS, states.of(first), ask);
            case "found" -> about(Kind.FOUND, states.of(first), ask);
            case "sinceSet" -> about(Kind.SINCE_SET, states.of(first), ask);
            case "since" -> about(Kind.SINCE, steps(ask.names()), ask);
            case "count" -> about(Kind.COUNT, steps(ask.names()), ask);
            case "last" -> about(Kind.LAST, steps(ask.names()), ask);
            case "next", "later" -> {
                looksAhead = true;
                yield about(ask.word().equals("next") ? Kind.NEXT : Kind.LATER, steps(ask.names()), ask);
            }
            case "lastInput" ->
                new Question(
                        Kind.LAST_INPUT, steps(List.of(first)), "", ask.names().get(1), ask.reach(), false);
            case "input" -> new Question(Kind.INPUT, -1, "", first, ask.reach(), false);
            case "surveyed" -> new Question(Kind.SURVEYED, -1, first, "", ask.reach(), false);
            case "uses" -> about(Kind.USES, goods(first), ask);
            case "usedSince" -> new Question(Kind.USED_SINCE, goods(first), ask.until(), "", ask.reach(), false);
            case "sinceUse" -> about(Kind.SINCE_USE, goods(first), ask);
            case "setting" -> new Question(Kind.SETTING, -1, first, "", ask.reach(), false);
            default -> {
                plansFilm |= ask.word().startsWith("film.planned");
                yield new Question(Kind.NAMED, -1, ask.word(), "", ask.reach(), false);
            }
        };
    }

    private static Question about(Kind kind, int index, Ask ask) {
        return new Question(kind, index, "", "", ask.reach(), ask.sameBay());
    }

    /** The number of a set of stages, given by their ids and those of families. */
    private int steps(List<String> names) {
        Integer known = setOfNames.get(names);
        if (known == null) {
            known = stepSets.computeIfAbsent(stages(names), s -> stepSets.size());
            setOfNames.put(names, known);
        }
        return known;
    }

    private Set<String> stages(List<String> names) {
        Set<String> ids = new LinkedHashSet<>();
        Set<String> families = new LinkedHashSet<>();
        library.families().stream().map(Family::id).filter(names::contains).forEach(families::add);
        for (Stage stage : library.stages()) {
            if (names.contains(stage.id()) || families.contains(stage.family())) {
                ids.add(stage.id());
            }
        }
        return ids;
    }

    private int goods(String what) {
        return goods.computeIfAbsent(what, w -> goods.size());
    }

    boolean isEmpty() {
        return library.rules().isEmpty();
    }

    /** How many different questions the rules ask. */
    int questions() {
        return questions.size();
    }

    /** The rules that concern a stage, in the library's order. */
    List<Entry> of(Stage stage) {
        return byStage.computeIfAbsent(
                stage.id(),
                s -> entries.stream().filter(e -> e.rule().at().concerns(stage)).toList());
    }

    int stepSets() {
        return stepSets.size();
    }

    /** Numbers of the sets of steps that a stage belongs to. */
    int[] setsOf(Stage stage) {
        return setsOfStage.computeIfAbsent(
                stage.id(),
                s -> stepSets.entrySet().stream()
                        .filter(e -> e.getKey().contains(s))
                        .mapToInt(Map.Entry::getValue)
                        .sorted()
                        .toArray());
    }

    /** Ids of the stages of a set of steps. */
    Set<String> stagesOf(int set) {
        return stepSets.entrySet().stream()
                .filter(e -> e.getValue() == set)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    /** Whether a step uses an item or a group. */
    boolean uses(CompiledStep step, int what) {
        return step.parts().stream()
                .anyMatch(p -> Arrays.stream(goodsOf(p.terms())).anyMatch(g -> g == what));
    }

    int goods() {
        return goods.size();
    }

    /** Numbers of the items and groups that rules ask for and these terms use. */
    int[] goodsOf(CompiledTerms terms) {
        return goodsOfTerms.computeIfAbsent(terms, t -> {
            Set<String> used = new LinkedHashSet<>();
            t.terms.uses().stream().map(StageTerms.Use::item).forEach(used::add);
            t.terms.hazards().from().stream().map(StageTerms.Named::id).forEach(used::add);
            for (String id : List.copyOf(used)) {
                Item item = library.itemById().get(id);
                used.addAll(item == null ? List.of() : item.groups());
            }
            return goods.entrySet().stream()
                    .filter(e -> used.contains(e.getKey()))
                    .mapToInt(Map.Entry::getValue)
                    .toArray();
        });
    }

    /** Whether a rule asks for what comes later in a plan. */
    boolean looksAhead() {
        return looksAhead;
    }

    /** Whether a rule asks for what a whole plan takes off the film. */
    boolean plansFilm() {
        return plansFilm;
    }

    /** The number that stands for a value among answers; 0 stands for nothing. */
    int code(Object raw) {
        Integer known = numberOfValue.putIfAbsent(raw, values.size());
        if (known == null) {
            values.add(raw);
            return values.size() - 1;
        }
        return known;
    }

    List<Object> values() {
        return values;
    }
}
