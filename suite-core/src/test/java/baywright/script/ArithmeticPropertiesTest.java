package baywright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import groovy.lang.GroovyShell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Arithmetic against {@link BigDecimal}'s own and, for how an expression is read, against Groovy itself. */
class ArithmeticPropertiesTest {

    /** An expression with its value worked out beside it, without parser or evaluator. */
    record Sum(String text, BigDecimal value) {}

    private static final Vocabulary WORDS = new Vocabulary(
            List.of(new Vocabulary.Section(
                    "all", "here", "all", List.of(Word.word("show").takes("value", Type.ANY)))),
            List.of());

    private static Value evaluate(String expression) {
        List<Value> shown = new ArrayList<>();
        Problems problems = new Problems();
        Script script = ScriptParser.parse("sum.groovy", "show((" + expression + "))");
        assertThat(script.problems()).isEmpty();
        new Evaluator(WORDS, problems, Names.NONE, true).start(script.body(), Scope.outermost(), new Handler() {
            @Override
            public String section() {
                return "all";
            }

            @Override
            public void accept(Call call) {
                shown.add(call.value("value"));
            }
        });
        assertThat(problems.sorted()).isEmpty();
        return shown.get(0);
    }

    @Provide
    Arbitrary<Sum> sums() {
        return sum(4);
    }

    private static Arbitrary<Sum> sum(int depth) {
        Arbitrary<Sum> number = Arbitraries.integers()
                .between(-9999, 9999)
                .flatMap(n -> Arbitraries.integers()
                        .between(0, 3)
                        .map(scale -> BigDecimal.valueOf(n, scale))
                        .map(v -> new Sum(v.signum() < 0 ? "(" + v.toPlainString() + ")" : v.toPlainString(), v)));
        if (depth == 0) {
            return number;
        }
        Arbitrary<Sum> pair = Combinators.combine(sum(depth - 1), sum(depth - 1), Arbitraries.of("+", "-", "*"))
                .as((a, b, sign) -> new Sum(
                        "(" + a.text() + " " + sign + " " + b.text() + ")",
                        switch (sign) {
                            case "+" -> a.value().add(b.value());
                            case "-" -> a.value().subtract(b.value());
                            default -> a.value().multiply(b.value());
                        }));
        return Arbitraries.oneOf(number, pair);
    }

    @Property(tries = 150)
    void sumsAreExactToTheDigitsPromised(@ForAll("sums") Sum sum) {
        BigDecimal met = (BigDecimal) evaluate(sum.text()).raw();
        if (sum.value().precision() <= 34) {
            assertThat(met).isEqualByComparingTo(sum.value());
        } else {
            assertThat(met.subtract(sum.value()).abs())
                    .isLessThan(sum.value().abs().movePointLeft(30));
        }
    }

    @Property(tries = 40)
    void signsBindAsInGroovy(@ForAll("flat") String expression) {
        BigDecimal groovy =
                new BigDecimal(new GroovyShell().evaluate(expression).toString());
        assertThat((BigDecimal) evaluate(expression).raw())
                .isCloseTo(groovy, within(groovy.abs().max(BigDecimal.ONE).movePointLeft(8)));
    }

    @Provide
    Arbitrary<String> flat() {
        Arbitrary<String> number = Arbitraries.integers().between(1, 20).map(n -> n + ".0");
        return Combinators.combine(
                        number.list().ofSize(5),
                        Arbitraries.of(" + ", " - ", " * ", " / ").list().ofSize(4))
                .as((n, s) -> n.get(0) + s.get(0) + n.get(1) + s.get(1) + n.get(2) + s.get(2) + n.get(3) + s.get(3)
                        + n.get(4));
    }

    @Test
    void comparisonsReadAsTheyAreWritten() {
        assertThat(Optional.of(
                        evaluate("1 + 2 * 3 == 7 && !(2 ** 3 < 8) || false").raw()))
                .contains(true);
        assertThat(evaluate("90.min == 1.5.h").raw()).isEqualTo(true);
        assertThat(evaluate("(30.min + 1.h) / 2 == 45.min").raw()).isEqualTo(true);
        assertThat(evaluate("3 in 1..3 ? 'in' : 'out'").raw()).isEqualTo("in");
        assertThat(evaluate("[1, 2, 3].findAll { it > 1 }.collect { x -> x * 2 }.sum()")
                        .raw())
                .isEqualTo(new BigDecimal("10"));
        assertThat(evaluate("\"${1 + 1} passes of ${[a: 'wax'].a}\"").raw()).isEqualTo("2 passes of wax");
    }
}
