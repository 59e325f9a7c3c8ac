package baywright.script;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Checks a word's arguments against its declaration and works them out. */
final class Arguments {

    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");
    private static final List<String> COUNTS =
            List.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

    private final Evaluator run;

    Arguments(Evaluator run) {
        this.run = run;
    }

    /** The call with its arguments worked out and checked; empty when something about them is wrong and noted. */
    Optional<Call> check(Node.Call call, Word word, Scope scope) {
        Map<String, Value> args = new LinkedHashMap<>();
        List<Value> rest = new ArrayList<>();
        boolean good = positional(call, word, scope, args, rest);
        good &= named(call, word, scope, args);
        good &= braces(call, word);
        if (!good) {
            return Optional.empty();
        }
        Set<String> from = new TreeSet<>();
        from.addAll(run.conditions());
        Stream.concat(args.values().stream(), rest.stream()).forEach(v -> from.addAll(v.from()));
        return Optional.of(new Call(run, word, call.place(), args, rest, call.block(), scope, from));
    }

    /** {@code 2,5.min} is read as two arguments, a plain number with the next close behind its comma. */
    private static String decimalComma(List<Node> args) {
        for (int i = 0; i + 1 < args.size(); i++) {
            Place next = args.get(i + 1).place();
            Place at = args.get(i).place();
            Optional<String> whole = args.get(i) instanceof Node.Literal ? digits(args.get(i)) : Optional.empty();
            Optional<String> places = digits(args.get(i + 1));
            if (whole.isPresent()
                    && places.isPresent()
                    && at.line() == next.line()
                    && next.column() == at.column() + whole.get().length() + 1) {
                return "; a decimal has a point, not a comma: " + whole.get() + "." + places.get();
            }
        }
        return "";
    }

    /** Digits of the whole number that a node is or that stands before its unit. */
    private static Optional<String> digits(Node node) {
        Node number = node instanceof Node.Member member ? member.target() : node;
        return number instanceof Node.Literal literal
                        && literal.raw() instanceof BigDecimal value
                        && value.scale() <= 0
                        && value.signum() >= 0
                ? Optional.of(value.toPlainString())
                : Optional.empty();
    }

    private boolean positional(Node.Call call, Word word, Scope scope, Map<String, Value> args, List<Value> rest) {
        int given = call.args().size();
        long required = word.positional().stream().filter(Param::required).count()
                + (word.rest().isPresent() ? 1 : 0);
        boolean tooMany = word.rest().isEmpty() && given > word.positional().size();
        if (given < required || tooMany) {
            String are = given == 1 ? "there is " : "there are ";
            String count = given < COUNTS.size() ? COUNTS.get(given) : Integer.toString(given);
            Place where = tooMany ? call.args().get(word.positional().size()).place() : call.place();
            run.note(
                    Fault.of(
                            where,
                            "wrong-argument",
                            "'" + word.name() + "' wants " + word.wants() + "; " + are + count
                                    + decimalComma(call.args())),
                    word.name());
            call.args().forEach(a -> run.tryValue(a, scope));
            return false;
        }
        boolean good = true;
        for (int i = 0; i < given; i++) {
            Optional<Value> value = run.tryValue(call.args().get(i), scope);
            if (value.isEmpty()) {
                good = false;
                continue;
            }
            boolean further = i >= word.positional().size();
            Param param =
                    further ? word.rest().orElseThrow() : word.positional().get(i);
            List<Value> entries = further && value.get().raw() instanceof List<?>
                    ? Evaluator.entries(value.get(), value.get().place())
                    : List.of(value.get());
            for (Value entry : entries) {
                String wrong = param.type().complaint().apply(entry);
                if (!wrong.isEmpty()) {
                    good = false;
                    String which = given == 1 ? "it" : "the " + ordinal(i);
                    run.note(
                            Fault.of(
                                    call.args().get(i).place(),
                                    "wrong-argument",
                                    "'" + word.name() + "' wants " + word.wants() + "; " + which + " is " + wrong),
                            word.name());
                }
            }
            if (further) {
                entries.forEach(e -> rest.add(e.dependingOn(value.get().from())));
            } else {
                args.put(param.name(), value.get());
            }
        }
        return good;
    }

    private static String ordinal(int index) {
        return index < ORDINALS.size() ? ORDINALS.get(index) : "argument " + (index + 1);
    }

    private boolean named(Node.Call call, Word word, Scope scope, Map<String, Value> args) {
        boolean good = true;
        for (Node.Entry entry : call.named()) {
            String name = entry.key() instanceof Node.Literal l && l.raw() instanceof String s ? s : "";
            Optional<Param> param =
                    word.named().stream().filter(p -> p.name().equals(name)).findFirst();
            if (param.isEmpty()) {
                good = false;
                run.note(Fault.of(entry.key().place(), "unknown-argument", unknownArgument(word, name)), word.name());
                run.tryValue(entry.value(), scope);
                continue;
            }
            Optional<Value> value = run.tryValue(entry.value(), scope);
            String wrong = value.map(param.get().type().complaint()).orElse("");
            if (!wrong.isEmpty()) {
                run.note(
                        Fault.of(
                                entry.value().place(),
                                "wrong-argument",
                                "'" + name + ":' of '" + word.name() + "' wants " + wants(param.get()) + "; it is "
                                        + wrong),
                        word.name());
            }
            good &= value.isPresent() && wrong.isEmpty();
            value.ifPresent(v -> args.put(name, v));
        }
        for (Param param : word.named()) {
            boolean missing = param.required()
                    && call.named().stream()
                            .noneMatch(e -> e.key() instanceof Node.Literal l
                                    && param.name().equals(l.raw()));
            if (missing) {
                good = false;
                run.note(
                        Fault.of(
                                call.place(),
                                "wrong-argument",
                                "'" + word.name() + "' wants '" + param.name() + ":' with " + wants(param)
                                        + "; it is missing"),
                        word.name());
            }
        }
        return good;
    }

    private static String wants(Param param) {
        Type type = param.type();
        return type.one().startsWith("one of") || type.equals(Type.YES_NO)
                ? type.one()
                : type.one() + " such as " + type.examples().get(0);
    }

    private static String unknownArgument(Word word, String name) {
        if (word.named().isEmpty()) {
            return "'" + word.name() + "' takes no argument by name, so no '" + name + ":'";
        }
        Optional<String> near = Nearest.to(name, word.namedNames());
        return "'" + word.name() + "' has no argument '" + name + ":'"
                + near.map(n -> "; nearest is '" + n + ":'")
                        .orElse("; it takes " + String.join(":, ", word.namedNames()) + ":");
    }

    private boolean braces(Node.Call call, Word word) {
        if (word.opens().isPresent() && call.block().isEmpty()) {
            run.note(
                    Fault.of(
                            call.place(),
                            "wrong-argument",
                            "'" + word.name() + "' wants a block in braces: " + word.name()
                                    + (word.positional().isEmpty() ? "" : "(…)") + " { … }"),
                    word.name());
            return false;
        }
        if (word.opens().isEmpty() && call.block().isPresent()) {
            run.note(
                    Fault.of(
                            call.block().get().place(),
                            "wrong-argument",
                            "'" + word.name() + "' takes no block in braces"),
                    word.name());
            return false;
        }
        if (call.block().isPresent() && !call.block().get().bare()) {
            run.note(
                    Fault.of(
                            call.block().get().place(),
                            "wrong-argument",
                            "the block of '" + word.name() + "' takes no names before an arrow"),
                    word.name());
            return false;
        }
        return true;
    }
}
