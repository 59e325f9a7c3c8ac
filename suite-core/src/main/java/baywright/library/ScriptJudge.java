package baywright.library;

import baywright.library.Rule.Ask;
import baywright.library.Rule.Spoken;
import baywright.script.Call;
import baywright.script.Evaluator;
import baywright.script.Names;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.ScriptFault;
import baywright.script.Value;
import baywright.script.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Works out a rule's conditions for given answers; the first that is true speaks. */
final class ScriptJudge implements Rule.Judge {

    private static final Place ANSWER = Place.ofFile("answer");

    private final List<RuleBlock.Line> lines;
    private final Surroundings around;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final AnswerTree known = new AnswerTree();

    ScriptJudge(List<RuleBlock.Line> lines, List<Ask> asks, Surroundings around) {
        this.lines = List.copyOf(lines);
        this.around = around;
        asks.forEach(a -> numbers.put(a.text(), numbers.size()));
    }

    @Override
    public Optional<Spoken> of(List<Object> answers) {
        return known.of(answers, this::judge);
    }

    private Optional<Spoken> judge(List<Object> answers) {
        Names given = new Given(answers);
        for (RuleBlock.Line line : lines) {
            Problems problems = new Problems();
            Evaluator evaluator = new Evaluator(StageLanguage.VOCABULARY, problems, given, false);
            Optional<Value> answer = evaluator.answer(line.block(), line.scope());
            if (answer.isEmpty() || !(answer.get().raw() instanceof Boolean speaks)) {
                answer.ifPresent(v -> problems.error(
                        line.block().place(), "wrong-operand", "the condition is " + v.described() + " here"));
                throw new ScriptFault(problems.sorted());
            }
            if (speaks) {
                List<Integer> read = new ArrayList<>();
                answer.get().from().forEach(t -> read.add(numbers.get(t)));
                read.sort(null);
                return Optional.of(new Spoken(line.severity(), read));
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Wording> wording() {
        Wording wording = new Wording(Set.of());
        for (RuleBlock.Line line : lines) {
            wording.add(
                    line.severity().name(),
                    Value.of(line.severity().name(), line.block().place()));
            wording.add(List.of(line.block()), line.scope());
        }
        around.addTo(wording);
        return Optional.of(wording);
    }

    private final class Given implements Names {

        private final List<Object> answers;

        Given(List<Object> answers) {
            this.answers = answers;
        }

        @Override
        public Optional<Value> value(String name) {
            Integer number = numbers.get(name);
            return number == null ? around.value(name) : Optional.of(answer(name, number));
        }

        private Value answer(String text, int number) {
            return new Value(answers.get(number), ANSWER, Set.of(text));
        }

        @Override
        public Set<String> known() {
            return numbers.keySet();
        }

        @Override
        public Value call(Call function) {
            if (function.word().name().equals("constant")) {
                return around.call(function);
            }
            String text = RuleAsks.of(function).text();
            Integer number = numbers.get(text);
            if (number == null) {
                throw function.refusal(
                        function.place(),
                        "unknown-function",
                        "'" + text + "' was not asked when the rule was checked; ask it outside of a loop");
            }
            return answer(text, number);
        }

        @Override
        public List<String> choices(String name) {
            return List.of();
        }
    }
}
