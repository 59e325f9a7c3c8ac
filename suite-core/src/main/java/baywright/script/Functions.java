package baywright.script;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Functions of values, written behind a dot: {@code [1, 2].sum()}, {@code list.collect { it * 2 }}. */
public final class Functions {

    /**
     * A function for the reference page.
     *
     * @param of      kind of value that it belongs to: list, map, number, text
     * @param name    as written
     * @param takes   its arguments in words, may be empty
     * @param means   what comes out
     * @param example an expression that uses it
     */
    public record Info(String of, String name, String takes, String means, String example) {}

    /** What a function works on. */
    record Use(Value target, List<Value> args, Optional<BiFunction<List<Value>, Place, Value>> block, Place place) {

        Value ask(Value... with) {
            return block.orElseThrow(() -> Fault.of(place, "wrong-argument", "wants a block such as { it }"))
                    .apply(List.of(with), place);
        }

        List<Value> items() {
            List<Value> items = new ArrayList<>();
            ((List<?>) target.raw()).forEach(e -> items.add((Value) e));
            return items;
        }

        Value first() {
            if (args.isEmpty()) {
                throw Fault.of(place, "wrong-argument", "wants a value in its brackets");
            }
            return args.get(0);
        }
    }

    private interface Body {
        Value apply(Use use);
    }

    private record Function(Info info, int args, boolean block, Body body) {}

    private static final Map<String, Map<String, Function>> BY_KIND = new TreeMap<>();

    static {
        list(
                "size",
                "how many entries there are",
                "[1, 2].size()",
                u -> number(u, u.items().size()));
        list(
                "isEmpty",
                "whether there is none",
                "[].isEmpty()",
                u -> yes(u, u.items().isEmpty()));
        list("first", "the first entry", "[1, 2].first()", u -> end(u, 0));
        list("last", "the last entry", "[1, 2].last()", u -> end(u, u.items().size() - 1));
        list("reverse", "the entries from last to first", "[1, 2].reverse()", u -> {
            List<Value> copy = u.items();
            Collections.reverse(copy);
            return made(u, copy);
        });
        list("sum", "all entries added", "[1, 2].sum()", Functions::sum);
        list("min", "the smallest entry", "[1, 2].min()", u -> extreme(u, Operator.LESS));
        list("max", "the largest entry", "[1, 2].max()", u -> extreme(u, Operator.MORE));
        listWith("contains", "a value", "whether it is among the entries", "[1, 2].contains(2)", u -> {
            boolean found = u.items().stream().anyMatch(e -> Arithmetic.equal(u.first(), e, u.place()));
            return yes(u, found).dependingOn(u.first().from());
        });
        listWith("join", "a text", "all entries as one text with that between them", "['a', 'b'].join(', ')", u -> {
            List<String> texts = u.items().stream().map(Functions::plain).toList();
            return result(u, Arithmetic.text(String.join(plain(u.first()), texts), u.place()));
        });
        listBlock("each", "runs the block for each entry", "[1, 2].each { it }", u -> {
            u.items().forEach(u::ask);
            return u.target();
        });
        listBlock("collect", "the list of what the block makes of each entry", "[1, 2].collect { it * 2 }", u -> {
            List<Value> made = new ArrayList<>();
            u.items().forEach(e -> made.add(u.ask(e)));
            return made(u, made);
        });
        listBlock("findAll", "the entries for which the block is true", "[1, 2].findAll { it > 1 }", u -> {
            List<Value> kept = new ArrayList<>();
            Value sure = u.target();
            for (Value e : u.items()) {
                Value answer = u.ask(e);
                sure = sure.dependingOn(answer.from());
                if (truth(answer, u.place())) {
                    kept.add(e);
                }
            }
            return made(u, kept).dependingOn(sure.from());
        });
        listBlock("any", "whether the block is true for at least one entry", "[1, 2].any { it > 1 }", u -> {
            return decided(u, true);
        });
        listBlock("every", "whether the block is true for all entries", "[1, 2].every { it > 0 }", u -> {
            return decided(u, false);
        });
        put("map", "size", "", "how many entries there are", "[a: 1].size()", 0, false, u -> {
            return number(u, ((Map<?, ?>) u.target().raw()).size());
        });
        put("map", "keys", "", "the list of its keys", "[a: 1].keys()", 0, false, u -> {
            List<Value> keys = new ArrayList<>();
            ((Map<?, ?>) u.target().raw()).keySet().forEach(k -> keys.add(result(u, k)));
            return made(u, keys);
        });
        put(
                "map",
                "get",
                "a key, a value",
                "what stands under the key, or else the value",
                "[a: 1].get('b', 0)",
                2,
                false,
                u -> {
                    Object found = ((Map<?, ?>) u.target().raw()).get(u.first().raw());
                    Value made = found == null ? u.args().get(1) : (Value) found;
                    return made.dependingOn(u.first().from())
                            .dependingOn(u.target().from());
                });
        put("number", "abs", "", "the number without its sign", "(-2).abs()", 0, false, u -> {
            return result(u, ((BigDecimal) u.target().raw()).abs());
        });
        put("number", "round", "decimals", "rounded half up to so many decimals", "2.345.round(2)", 1, false, u -> {
            if (!(u.first().raw() instanceof BigDecimal d) || !Type.COUNT.fits(u.first()) || d.intValue() > 30) {
                throw Fault.ofValue(
                        u.place(),
                        "'round' wants a whole number of decimals from 0 to 30, not "
                                + u.first().described(),
                        u.args());
            }
            BigDecimal rounded = ((BigDecimal) u.target().raw()).setScale(d.intValue(), RoundingMode.HALF_UP);
            return result(u, rounded).dependingOn(u.first().from());
        });
        put("text", "size", "", "how many characters it has", "'wet'.size()", 0, false, u -> {
            return number(u, ((String) u.target().raw()).length());
        });
        put("text", "contains", "a text", "whether that stands in it", "'wet'.contains('e')", 1, false, u -> {
            return yes(u, ((String) u.target().raw()).contains(plain(u.first())))
                    .dependingOn(u.first().from());
        });
    }

    private Functions() {}

    /** All functions, for the reference page and for completion. */
    public static List<Info> all() {
        return BY_KIND.values().stream()
                .flatMap(m -> m.values().stream())
                .map(Function::info)
                .toList();
    }

    /** Names of the functions of all kinds of value. */
    static Set<String> names() {
        return BY_KIND.values().stream().flatMap(m -> m.keySet().stream()).collect(Collectors.toSet());
    }

    static Value apply(String name, Use use) {
        String kind = kind(use.target());
        Map<String, Function> known = BY_KIND.getOrDefault(kind, Map.of());
        Function function = known.get(name);
        if (function == null) {
            String hint = Nearest.hint(name, known.keySet());
            throw Fault.of(
                    use.place(),
                    "unknown-function",
                    use.target().described() + " has no function '" + name + "'"
                            + (hint.isEmpty() && !known.isEmpty()
                                    ? "; there are " + String.join(", ", known.keySet())
                                    : hint));
        }
        if (use.args().size() != function.args() || use.block().isPresent() != function.block()) {
            throw Fault.of(
                    use.place(),
                    "wrong-argument",
                    "'" + name + "' is written like " + function.info().example());
        }
        return function.body().apply(use);
    }

    private static String kind(Value value) {
        Object raw = value.raw();
        if (raw instanceof List<?>) {
            return "list";
        }
        if (raw instanceof Map<?, ?>) {
            return "map";
        }
        return raw instanceof BigDecimal ? "number" : raw instanceof String ? "text" : "";
    }

    private static void list(String name, String means, String example, Body body) {
        put("list", name, "", means, example, 0, false, body);
    }

    private static void listWith(String name, String takes, String means, String example, Body body) {
        put("list", name, takes, means, example, 1, false, body);
    }

    private static void listBlock(String name, String means, String example, Body body) {
        put("list", name, "a block", means, example, 0, true, body);
    }

    private static void put(
            String of, String name, String takes, String means, String example, int args, boolean block, Body body) {
        BY_KIND.computeIfAbsent(of, k -> new TreeMap<>())
                .put(name, new Function(new Info(of, name, takes, means, example), args, block, body));
    }

    private static Value result(Use use, Object raw) {
        return new Value(raw, use.place(), use.target().from());
    }

    private static Value number(Use use, long n) {
        return result(use, BigDecimal.valueOf(n));
    }

    private static Value yes(Use use, boolean answer) {
        return result(use, answer);
    }

    private static Value made(Use use, List<Value> list) {
        Value all = result(use, Arithmetic.list(list, use.place()));
        for (Value entry : list) {
            all = all.dependingOn(entry.from());
        }
        return all;
    }

    private static Value end(Use use, int index) {
        List<Value> items = use.items();
        if (items.isEmpty()) {
            throw Fault.ofValue(use.place(), "the list is empty", List.of(use.target()));
        }
        return items.get(index).dependingOn(use.target().from());
    }

    private static Value sum(Use use) {
        Value total = end(use, 0);
        for (Value entry : use.items().subList(1, use.items().size())) {
            total = Arithmetic.apply(Operator.PLUS, total, entry, use.place());
        }
        return total.dependingOn(use.target().from());
    }

    private static Value extreme(Use use, Operator better) {
        Value best = end(use, 0);
        for (Value entry : use.items()) {
            Value wins = Arithmetic.apply(better, entry, best, use.place());
            best = ((Boolean) wins.raw() ? entry : best).dependingOn(wins.from());
        }
        return best.dependingOn(use.target().from());
    }

    private static Value decided(Use use, boolean by) {
        Value answer = yes(use, !by);
        for (Value entry : use.items()) {
            Value one = use.ask(entry);
            answer = answer.dependingOn(one.from());
            if (truth(one, use.place()) == by) {
                return new Value(by, use.place(), answer.from());
            }
        }
        return answer;
    }

    static boolean truth(Value value, Place place) {
        if (value.raw() instanceof Boolean yes) {
            return yes;
        }
        throw Fault.of(
                place,
                "wrong-operand",
                "a condition is true or false, such as passes > 1; this is " + value.described());
    }

    /** A value as part of a text. */
    static String plain(Value value) {
        Object raw = value.raw();
        if (raw instanceof String text) {
            return text;
        }
        if (raw instanceof BigDecimal number) {
            return number.stripTrailingZeros().toPlainString();
        }
        if (raw instanceof Boolean yes) {
            return yes.toString().toLowerCase(Locale.ROOT);
        }
        if (raw instanceof Quantity quantity) {
            return quantity.toString();
        }
        throw Fault.of(value.place(), "wrong-operand", value.described() + " cannot stand in a text");
    }
}
