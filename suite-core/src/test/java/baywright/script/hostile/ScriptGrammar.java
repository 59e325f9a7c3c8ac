package baywright.script.hostile;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random scripts of the language: mostly right, with words in wrong places and values of wrong kinds among them. */
final class ScriptGrammar {

    private static final Arbitrary<String> ID = Arbitraries.of(
            "wet", "dry", "washed", "paint", "wash", "iron-remover", "m2", "vehicle", "saloon", "Wet", "a b");
    private static final Arbitrary<String> NAME =
            Arbitraries.of("passes", "load", "x", "it", "e", "File", "this", "delegate", "stage", "class");
    private static final Arbitrary<String> UNIT =
            Arbitraries.of("min", "h", "ml", "l", "um", "C", "percent", "ms2", "km");
    private static final Arbitrary<String> OPERATOR = Arbitraries.of(
            "+", "-", "*", "/", "%", "**", "==", "!=", "<", "<=", ">", "&&", "||", "..", "in", "?:", "<=>", "=~", "<<");
    private static final Arbitrary<String> FUNCTION = Arbitraries.of(
            "size", "first", "sum", "max", "collect", "findAll", "any", "join", "round", "contains", "execute", "each");
    private static final Arbitrary<String> WORD = Arbitraries.of(
            "title",
            "about",
            "family",
            "revision",
            "worksOn",
            "needs",
            "prefers",
            "refuses",
            "sets",
            "clears",
            "arrives",
            "attended",
            "standing",
            "setUp",
            "item",
            "from",
            "wear",
            "people",
            "bay",
            "between",
            "removes",
            "confirm",
            "choice",
            "count",
            "measure",
            "yesNo",
            "example",
            "println",
            "evaluate",
            "shade");
    private static final Arbitrary<String> BLOCK = Arbitraries.of(
            "inputs", "before", "after", "time", "uses", "hazards", "crew", "place", "climate", "film", "checks");
    private static final Arbitrary<String> ARGUMENT_NAME = Arbitraries.of(
            "per",
            "times",
            "why",
            "from",
            "to",
            "usual",
            "means",
            "opposite",
            "implies",
            "lasts",
            "on",
            "with",
            "uses");

    private ScriptGrammar() {}

    /** Files of one to four declarations. */
    static Arbitrary<String> script() {
        return declaration().list().ofMinSize(1).ofMaxSize(4).map(all -> String.join("\n", all) + "\n");
    }

    private static Arbitrary<String> declaration() {
        Arbitrary<String> stage =
                Combinators.combine(ID, statements(2)).as((id, body) -> "stage('" + id + "') {\n" + body + "\n}");
        Arbitrary<String> flat = Combinators.combine(
                        Arbitraries.of("state", "surface", "family", "fact", "factor", "stage"), ID, arguments())
                .as((word, id, rest) -> word + " '" + id + "'" + rest);
        return Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(4, stage),
                net.jqwik.api.Tuple.of(3, flat),
                net.jqwik.api.Tuple.of(1, statement(2)));
    }

    private static Arbitrary<String> statements(int depth) {
        return statement(depth).list().ofMaxSize(4).map(all -> String.join("\n", all));
    }

    private static Arbitrary<String> statement(int depth) {
        Arbitrary<String> call =
                Combinators.combine(WORD, value(2), arguments()).as((word, first, rest) -> word + " " + first + rest);
        Arbitrary<String> local =
                Combinators.combine(NAME, value(2)).as((name, value) -> "def " + name + " = " + value);
        if (depth == 0) {
            return Arbitraries.oneOf(call, local);
        }
        Arbitrary<String> inner = Arbitraries.lazy(() -> statements(depth - 1));
        return Arbitraries.oneOf(List.of(
                call,
                call,
                local,
                Combinators.combine(BLOCK, inner).as((word, body) -> word + " {\n" + body + "\n}"),
                Combinators.combine(value(2), inner, inner)
                        .as((test, then, other) -> "if (" + test + ") {\n" + then + "\n} else {\n" + other + "\n}"),
                Combinators.combine(NAME, value(1), inner)
                        .as((name, list, body) -> "for (" + name + " in " + list + ") {\n" + body + "\n}"),
                Combinators.combine(value(1), value(0), inner)
                        .as((on, match, body) ->
                                "switch (" + on + ") {\ncase " + match + ":\n" + body + "\nbreak\n}")));
    }

    private static Arbitrary<String> arguments() {
        Arbitrary<String> named =
                Combinators.combine(ARGUMENT_NAME, value(1)).as((name, value) -> ", " + name + ": " + value);
        Arbitrary<String> plain = value(1).map(value -> ", " + value);
        return Arbitraries.oneOf(named, plain).list().ofMaxSize(3).map(all -> String.join("", all));
    }

    private static Arbitrary<String> value(int depth) {
        Arbitrary<String> leaf = Arbitraries.oneOf(List.of(
                ID.map(id -> "'" + id + "'"),
                NAME,
                Arbitraries.of("0", "1", "3", "0.5", "-2", "1e9", "900", "true", "null", "1..3", "1.0d"),
                Combinators.combine(Arbitraries.integers().between(0, 99), UNIT).as((n, unit) -> n + "." + unit)));
        if (depth == 0) {
            return leaf;
        }
        Arbitrary<String> inner = Arbitraries.lazy(() -> value(depth - 1));
        return Arbitraries.oneOf(List.of(
                leaf,
                leaf,
                leaf,
                Combinators.combine(inner, OPERATOR, inner).as((a, sign, b) -> a + " " + sign + " " + b),
                Combinators.combine(inner, inner, inner).as((a, b, c) -> "(" + a + " ? " + b + " : " + c + ")"),
                inner.list().ofMaxSize(4).map(all -> "[" + String.join(", ", all) + "]"),
                Combinators.combine(NAME, inner).as((key, value) -> "[" + key + ": " + value + "]"),
                Combinators.combine(inner, FUNCTION, inner)
                        .as((on, function, block) -> on + "." + function + " { " + block + " }"),
                Combinators.combine(inner, FUNCTION, inner)
                        .as((on, function, argument) -> on + "." + function + "(" + argument + ")"),
                inner.map(value -> "\"a ${" + value + "}\"")));
    }
}
