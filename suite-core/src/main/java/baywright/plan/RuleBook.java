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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The rules of a setting's library by the stages that they concern, with everything that they ask worked out as far as it
 * does not depend on a plan.
 */
final class RuleBook {

    /** A question ready to be answered; {@code index} is the set of steps or goods, the state, or the name that it is about. */
    record Question(Kind kind, int index, String name, String input, Reach reach, boolean sameBay) {

        /** Whether the answer is the same for every plan and every step. */
        boolean isOfSetting() {
            return switch (kind) {
                case FOUND, SURVEYED, SETTING -> true;
                case NAMED -> !name.startsWith("step.") && !name.startsWith("film.planned");
                default -> false;
            };
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

    /** A rule with its questions and what it has already made of their answers. */
    static final class Entry {
        /** Stands for an answer that was not asked for yet. */
        static final long UNASKED = Long.MIN_VALUE;

        private static final int REMEMBERED = 4_096;

        private final Rule rule;
        private final List<Question> questions;
        private final Map<Answers, Verdict> known = new HashMap<>();
        private final long[][] kept;

        Entry(Rule rule, List<Question> questions) {
            this.rule = rule;
            this.questions = questions;
            kept = new long[questions.size()][];
        }

        Rule rule() {
            return rule;
        }

        List<Question> questions() {
            return questions;
        }

        /** Answers to a question by row that hold for every plan. */
        long[] kept(int question, int rows) {
            if (kept[question] == null) {
                kept[question] = new long[rows];
                Arrays.fill(kept[question], UNASKED);
            }
            return kept[question];
        }

        /** Looks at surfaces of its own choice. */
        boolean choosesSurfaces() {
            return !rule.at().surfaces().isEmpty();
        }

        Verdict of(long[] codes, List<Object> values) {
            Answers key = new Answers(codes);
            Verdict verdict = known.get(key);
            if (verdict == null) {
                if (known.size() >= REMEMBERED) {
                    known.clear();
                }
                verdict = Verdict.of(rule, decode(codes, values));
                known.put(new Answers(codes.clone()), verdict);
            }
            return verdict;
        }

        private List<Object> decode(long[] codes, List<Object> values) {
            List<Object> answers = new ArrayList<>(codes.length);
            for (int q = 0; q < codes.length; q++) {
                answers.add(RuleAnswers.decode(questions.get(q).kind(), codes[q], values));
            }
            return answers;
        }
    }

    /** Answers as a key; whoever makes one does not change them any more. */
    private static final class Answers {
        private final long[] codes;

        Answers(long[] codes) {
            this.codes = codes;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Answers a && Arrays.equals(codes, a.codes);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(codes);
        }
    }

    private final Library library;
    private final StateIndex states;
    private final Map<String, List<Entry>> byStage = new HashMap<>();
    private final Map<Set<String>, Integer> stepSets = new HashMap<>();
    private final Map<String, int[]> setsOfStage = new HashMap<>();
    private final Map<String, Integer> goods = new HashMap<>();
    private final IdentityHashMap<CompiledTerms, int[]> goodsOfTerms = new IdentityHashMap<>();
    private final Map<Object, Integer> numberOfValue = new HashMap<>();
    private final List<Object> values = new ArrayList<>();
    private boolean looksAhead;
    private boolean plansFilm;

    RuleBook(Library library, StateIndex states) {
        this.library = library;
        this.states = states;
        code(Value.NOTHING);
        List<Entry> entries = new ArrayList<>();
        for (Rule rule : library.rules()) {
            entries.add(new Entry(rule, rule.asks().stream().map(this::question).toList()));
        }
        for (Stage stage : library.stages()) {
            List<Entry> concerning =
                    entries.stream().filter(e -> e.rule().at().concerns(stage)).toList();
            byStage.put(stage.id(), concerning);
            setsOfStage.put(
                    stage.id(),
                    stepSets.entrySet().stream()
                            .filter(e -> e.getKey().contains(stage.id()))
                            .mapToInt(Map.Entry::getValue)
                            .sorted()
                            .toArray());
        }
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
        Set<String> ids = new LinkedHashSet<>();
        Set<String> families = new LinkedHashSet<>();
        library.families().stream().map(Family::id).filter(names::contains).forEach(families::add);
        for (Stage stage : library.stages()) {
            if (names.contains(stage.id()) || families.contains(stage.family())) {
                ids.add(stage.id());
            }
        }
        return stepSets.computeIfAbsent(ids, s -> stepSets.size());
    }

    private int goods(String what) {
        return goods.computeIfAbsent(what, w -> goods.size());
    }

    boolean isEmpty() {
        return library.rules().isEmpty();
    }

    /** The rules that concern a stage, in the library's order. */
    List<Entry> of(String stage) {
        return byStage.getOrDefault(stage, List.of());
    }

    int stepSets() {
        return stepSets.size();
    }

    /** Numbers of the sets of steps that a stage belongs to. */
    int[] setsOf(String stage) {
        return setsOfStage.getOrDefault(stage, new int[0]);
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
