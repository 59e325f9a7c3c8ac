package baywright.script;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Gives a script's tree its meaning: works out values, checks words against the vocabulary and hands them to handlers.
 *
 * <p>In a <em>checking</em> walk both branches of every condition that depends on an input or a fact are visited, so that
 * a bad word is found wherever it stands; values still come from the branch that the usual values take. Otherwise only
 * that branch is visited. For one script at a time, not for several threads.
 */
public final class Evaluator {

    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");
    private static final List<String> COUNTS =
            List.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

    private final Vocabulary vocabulary;
    private final Problems problems;
    private final Names names;
    private final boolean checking;
    private final Deque<Set<String>> conditions = new ArrayDeque<>();
    private final Set<String> read = new TreeSet<>();
    private int speculative;
    private int loops;
    private int steps;

    /**
     * Makes one for a run.
     *
     * @param names    what the script may read beyond its own locals
     * @param checking whether both branches of conditions are visited
     */
    public Evaluator(Vocabulary vocabulary, Problems problems, Names names, boolean checking) {
        this.vocabulary = vocabulary;
        this.problems = problems;
        this.names = names;
        this.checking = checking;
    }

    /** Runs statements; when they take too many steps that is noted and the rest is left out. */
    public void start(List<Node> body, Scope scope, Handler handler) {
        try {
            run(body, scope, handler);
        } catch (Exhausted e) {
            problems.error(e.place(), "limit", e.getMessage());
        }
    }

    /** Names of all inputs and facts that were read so far. */
    public Set<String> read() {
        return Set.copyOf(read);
    }

    boolean isConditional() {
        return !conditions.isEmpty() || loops > 0;
    }

    boolean isSpeculative() {
        return speculative > 0;
    }

    void note(Fault fault, String word) {
        boolean moot = fault.isSilent() || (speculative > 0 && fault.dependsOnValue());
        if (!moot) {
            problems.error(fault.place(), fault.code(), fault.getMessage(), word);
        }
    }

    void warn(Place place, String code, String message, String word) {
        problems.warning(place, code, message, word);
    }

    void run(List<Node> body, Scope scope, Handler handler) {
        for (Node statement : body) {
            try {
                statement(statement, scope, handler);
            } catch (Fault fault) {
                note(fault, "");
            }
        }
    }

    private void step(Place place) {
        if (++steps > Limits.STEPS) {
            throw new Exhausted(place);
        }
    }

    private void statement(Node node, Scope scope, Handler handler) {
        step(node.place());
        if (node instanceof Node.Define define) {
            define(define, scope);
        } else if (node instanceof Node.When when) {
            when(when, scope, handler);
        } else if (node instanceof Node.Choice choice) {
            choice(choice, scope, handler);
        } else if (node instanceof Node.Each each) {
            each(each, scope, handler);
        } else if (node instanceof Node.Call call && call.receiver().isEmpty()) {
            word(call, scope, handler);
        } else if (node instanceof Node.Call call) {
            onValue(call, scope, Optional.of(handler));
        } else {
            stray(node, scope, handler);
        }
    }

    private void define(Node.Define define, Scope scope) {
        if (scope.find(define.name()).isPresent()) {
            throw Fault.of(
                    define.place(),
                    "duplicate",
                    "'" + define.name() + "' already has a value at " + scope.placeOf(define.name()));
        }
        if (names.value(define.name()).isPresent()) {
            throw Fault.of(define.place(), "duplicate", "'" + define.name() + "' is already the name of an input");
        }
        try {
            scope.define(define.name(), value(define.value(), scope), define.place());
        } catch (Fault fault) {
            scope.defineBroken(define.name(), define.place());
            throw fault;
        }
    }

    private void when(Node.When when, Scope scope, Handler handler) {
        Value condition;
        boolean holds;
        try {
            condition = value(when.condition(), scope);
            holds = Functions.truth(condition, when.condition().place());
        } catch (Fault fault) {
            note(fault, "");
            if (checking) {
                speculate(() -> run(when.then(), scope.inner(), handler), Set.of());
                speculate(() -> run(when.otherwise(), scope.inner(), handler), Set.of());
            }
            return;
        }
        branch(when.then(), holds, condition.from(), scope, handler);
        branch(when.otherwise(), !holds, condition.from(), scope, handler);
    }

    /** Visits a branch: truly when it is taken, else, in a checking walk, only to look for bad words. */
    private void branch(List<Node> body, boolean taken, Set<String> from, Scope scope, Handler handler) {
        if (taken) {
            conditions.push(from);
            try {
                run(body, scope.inner(), handler);
            } finally {
                conditions.pop();
            }
        } else if (checking) {
            speculate(() -> run(body, scope.inner(), handler), from);
        }
    }

    private void speculate(Runnable walk, Set<String> from) {
        speculative++;
        conditions.push(from);
        try {
            walk.run();
        } finally {
            conditions.pop();
            speculative--;
        }
    }

    private void choice(Node.Choice choice, Scope scope, Handler handler) {
        Value subject = value(choice.subject(), scope);
        Set<String> from = new TreeSet<>(subject.from());
        boolean done = false;
        for (Node.Case one : choice.cases()) {
            boolean matches = false;
            for (Node match : one.matches()) {
                checkChoice(choice.subject(), match);
                Value wanted = value(match, scope);
                from.addAll(wanted.from());
                boolean in = wanted.raw() instanceof List<?> || wanted.raw() instanceof Value.Range;
                Value same = Arithmetic.apply(in ? Operator.IN : Operator.EQUAL, subject, wanted, match.place());
                matches |= (Boolean) same.raw();
            }
            branch(one.body(), matches && !done, from, scope, handler);
            done |= matches;
        }
        branch(choice.otherwise(), !done, from, scope, handler);
    }

    private void each(Node.Each each, Scope scope, Handler handler) {
        Value all = value(each.in(), scope);
        loops++;
        conditions.push(all.from());
        try {
            for (Value entry : entries(all, each.in().place())) {
                step(each.place());
                Scope inner = scope.inner();
                inner.define(each.variable(), entry.dependingOn(all.from()), each.place());
                run(each.body(), inner, handler);
            }
        } finally {
            conditions.pop();
            loops--;
        }
    }

    private static List<Value> entries(Value value, Place place) {
        if (value.raw() instanceof List<?> list) {
            List<Value> copy = new ArrayList<>();
            list.forEach(e -> copy.add((Value) e));
            return copy;
        }
        if (value.raw() instanceof Value.Range range
                && range.from().raw() instanceof BigDecimal least
                && range.to().raw() instanceof BigDecimal most) {
            List<Value> numbers = new ArrayList<>();
            for (BigDecimal n = least; n.compareTo(most) <= 0; n = n.add(BigDecimal.ONE)) {
                numbers.add(new Value(n, place, value.from()));
                Arithmetic.list(numbers, place);
            }
            return numbers;
        }
        throw Fault.of(place, "wrong-operand", "a loop walks a list or a range of numbers, not " + value.described());
    }

    /** A statement that is only a value: most often a word whose arguments Groovy reads as something else. */
    private void stray(Node node, Scope scope, Handler handler) {
        Node left = node;
        String reading = "";
        while (true) {
            if (left instanceof Node.Binary binary) {
                reading = "'" + binary.operator().sign() + "' as arithmetic";
                left = binary.left();
            } else if (left instanceof Node.At at) {
                reading = "its bracket as a place in a list";
                left = at.target();
            } else if (left instanceof Node.Member member) {
                reading = "its dot as part of a value";
                left = member.target();
            } else {
                break;
            }
        }
        if (left instanceof Node.Name name && isWord(name.name(), handler)) {
            throw Fault.of(
                    name.place(),
                    "wrong-argument",
                    reading.isEmpty()
                            ? "'" + name.name() + "' stands without arguments; " + usage(name.name(), handler)
                            : "'" + name.name() + "' is not read as a word here but " + reading + "; write "
                                    + name.name() + "(…) with its arguments in round brackets");
        }
        if (left instanceof Node.Name name
                && scope.find(name.name()).isEmpty()
                && names.value(name.name()).isEmpty()) {
            throw unknownWord(name.name(), name.place(), handler);
        }
        value(node, scope);
        throw Fault.of(node.place(), "stray-value", "a value on its own says nothing; a word is missing before it");
    }

    private String usage(String name, Handler handler) {
        Word word = vocabulary.section(handler.section()).word(name).orElseThrow();
        boolean bare = word.positional().stream().noneMatch(Param::required)
                && word.rest().isEmpty()
                && word.opens().isEmpty();
        return bare
                ? "write " + name + "()"
                : word.opens().isPresent() ? "it wants a block: " + name + " { … }" : "it wants " + word.wants();
    }

    private boolean isWord(String name, Handler handler) {
        return vocabulary.section(handler.section()).word(name).isPresent();
    }

    private void word(Node.Call call, Scope scope, Handler handler) {
        Optional<Word> word = vocabulary.section(handler.section()).word(call.name());
        if (word.isEmpty()) {
            throw unknownWord(call.name(), call.place(), handler);
        }
        if (!handler.skips(word.get())) {
            handler.met(word.get());
            checked(call, word.get(), scope).ifPresent(handler::accept);
        }
    }

    private Fault unknownWord(String name, Place place, Handler handler) {
        Vocabulary.Section here = vocabulary.section(handler.section());
        List<Vocabulary.Section> elsewhere = vocabulary.sectionsWith(name);
        if (vocabulary.function(name).isPresent()) {
            return Fault.of(place, "stray-value", "'" + name + "' has a value and does nothing by itself");
        }
        if (!elsewhere.isEmpty()) {
            String where = String.join(
                    " or ", elsewhere.stream().map(Vocabulary.Section::where).toList());
            return Fault.of(place, "wrong-block", "'" + name + "' stands " + where + ", not " + here.where());
        }
        Optional<String> near = Nearest.to(name, here.names());
        if (near.isPresent()) {
            return Fault.of(place, "unknown-word", "there is no word '" + name + "'; nearest is '" + near.get() + "'");
        }
        List<String> all = vocabulary.sections().stream()
                .flatMap(s -> s.names().stream())
                .distinct()
                .toList();
        Optional<String> far = Nearest.to(name, all);
        String hint = far.map(f -> "; nearest is '" + f + "', which stands "
                        + vocabulary.sectionsWith(f).get(0).where())
                .orElse("; the words " + here.where() + " are " + String.join(", ", here.names()));
        return Fault.of(place, "unknown-word", "there is no word '" + name + "'" + hint);
    }

    /** The call with its arguments worked out and checked; empty when something about them is wrong and noted. */
    private Optional<Call> checked(Node.Call call, Word word, Scope scope) {
        Map<String, Value> args = new LinkedHashMap<>();
        List<Value> rest = new ArrayList<>();
        boolean good = positional(call, word, scope, args, rest);
        good &= named(call, word, scope, args);
        good &= braces(call, word);
        if (!good) {
            return Optional.empty();
        }
        Set<String> from = new TreeSet<>();
        conditions.forEach(from::addAll);
        Stream.concat(args.values().stream(), rest.stream()).forEach(v -> from.addAll(v.from()));
        return Optional.of(new Call(this, word, call.place(), args, rest, call.block(), scope, from));
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
            note(
                    Fault.of(
                            where,
                            "wrong-argument",
                            "'" + word.name() + "' wants " + word.wants() + "; " + are + count),
                    word.name());
            call.args().forEach(a -> tryValue(a, scope));
            return false;
        }
        boolean good = true;
        for (int i = 0; i < given; i++) {
            Optional<Value> value = tryValue(call.args().get(i), scope);
            if (value.isEmpty()) {
                good = false;
                continue;
            }
            boolean further = i >= word.positional().size();
            Param param =
                    further ? word.rest().orElseThrow() : word.positional().get(i);
            List<Value> entries = further && value.get().raw() instanceof List<?>
                    ? entries(value.get(), value.get().place())
                    : List.of(value.get());
            for (Value entry : entries) {
                String wrong = param.type().complaint().apply(entry);
                if (!wrong.isEmpty()) {
                    good = false;
                    String which = given == 1 ? "it" : "the " + ordinal(i);
                    note(
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
                note(Fault.of(entry.key().place(), "unknown-argument", unknownArgument(word, name)), word.name());
                tryValue(entry.value(), scope);
                continue;
            }
            Optional<Value> value = tryValue(entry.value(), scope);
            String wrong = value.map(param.get().type().complaint()).orElse("");
            if (!wrong.isEmpty()) {
                note(
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
                note(
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
            note(
                    Fault.of(
                            call.place(),
                            "wrong-argument",
                            "'" + word.name() + "' wants a block in braces: " + word.name()
                                    + (word.positional().isEmpty() ? "" : "(…)") + " { … }"),
                    word.name());
            return false;
        }
        if (word.opens().isEmpty() && call.block().isPresent()) {
            note(
                    Fault.of(
                            call.block().get().place(),
                            "wrong-argument",
                            "'" + word.name() + "' takes no block in braces"),
                    word.name());
            return false;
        }
        if (call.block().isPresent() && !call.block().get().bare()) {
            note(
                    Fault.of(
                            call.block().get().place(),
                            "wrong-argument",
                            "the block of '" + word.name() + "' takes no names before an arrow"),
                    word.name());
            return false;
        }
        return true;
    }

    private Optional<Value> tryValue(Node node, Scope scope) {
        try {
            return Optional.of(value(node, scope));
        } catch (Fault fault) {
            note(fault, "");
            return Optional.empty();
        }
    }

    /** The value of an expression. */
    private Value value(Node node, Scope scope) {
        step(node.place());
        if (node instanceof Node.Literal literal) {
            return Value.of(literal.raw(), literal.place());
        }
        if (node instanceof Node.Name name) {
            return name(name, scope);
        }
        if (node instanceof Node.Member member) {
            return member(member, scope);
        }
        if (node instanceof Node.Binary binary) {
            return binary(binary, scope);
        }
        if (node instanceof Node.Unary unary) {
            Value operand = value(unary.operand(), scope);
            return unary.operator() == Operator.NOT
                    ? new Value(!Functions.truth(operand, unary.operand().place()), unary.place(), operand.from())
                    : Arithmetic.negate(operand, unary.place());
        }
        if (node instanceof Node.Items items) {
            return items(items, scope);
        }
        if (node instanceof Node.Entries entries) {
            return map(entries, scope);
        }
        if (node instanceof Node.Template template) {
            return template(template, scope);
        }
        if (node instanceof Node.Choose choose) {
            return choose(choose, scope);
        }
        if (node instanceof Node.Fallback fallback) {
            return fallback(fallback, scope);
        }
        if (node instanceof Node.Span span) {
            return span(span, scope);
        }
        if (node instanceof Node.At at) {
            return at(at, scope);
        }
        if (node instanceof Node.Call call) {
            return call.receiver().isPresent() ? onValue(call, scope, Optional.empty()) : function(call, scope);
        }
        throw Fault.of(node.place(), "stray-value", "this is no value");
    }

    private Value name(Node.Name name, Scope scope) {
        Optional<Value> local = scope.find(name.name());
        if (local.isPresent()) {
            if (Scope.isBroken(local.get())) {
                throw Fault.silent();
            }
            return local.get().at(name.place());
        }
        Optional<Value> outside = names.value(name.name());
        if (outside.isPresent()) {
            read.addAll(outside.get().from());
            return outside.get().at(name.place());
        }
        Set<String> known = new TreeSet<>(scope.names());
        known.addAll(names.known());
        String hint = Nearest.hint(name.name(), known);
        throw Fault.of(
                name.place(),
                "unknown-name",
                "no input or local is called '" + name.name() + "'"
                        + (hint.isEmpty() && Type.isId(name.name())
                                ? "; a text stands in quotes: '" + name.name() + "'"
                                : hint));
    }

    /** What stands before a dot. A name that is not known there was meant for something outside the script. */
    private Value target(Node node, Scope scope) {
        if (node instanceof Node.Name name
                && scope.find(name.name()).isEmpty()
                && names.value(name.name()).isEmpty()) {
            Set<String> known = new TreeSet<>(scope.names());
            known.addAll(names.known());
            String hint = Nearest.hint(name.name(), known);
            throw Fault.of(
                    name.place(),
                    "unknown-name",
                    "no input or local is called '" + name.name() + "'"
                            + (hint.isEmpty() ? "; a script reaches nothing outside itself" : hint));
        }
        return value(node, scope);
    }

    private Value member(Node.Member member, Scope scope) {
        Value target = target(member.target(), scope);
        if (target.raw() instanceof BigDecimal number) {
            Unit unit = Unit.of(member.name())
                    .orElseThrow(() -> Fault.of(
                            member.place(),
                            "unknown-unit",
                            "no unit is called '" + member.name() + "'" + unitHint(member.name())));
            return new Value(new Quantity(number, unit), member.place(), target.from());
        }
        if (target.raw() instanceof Map<?, ?> map && map.get(member.name()) instanceof Value found) {
            return found.dependingOn(target.from()).at(member.place());
        }
        throw Fault.of(member.place(), "unknown-function", target.described() + " has no part '" + member.name() + "'");
    }

    private static String unitHint(String met) {
        List<String> symbols = Stream.of(Unit.values()).map(Unit::symbol).toList();
        String hint = Nearest.hint(met, symbols);
        return hint.isEmpty() ? "; there are " + String.join(", ", symbols) : hint;
    }

    private Value binary(Node.Binary binary, Scope scope) {
        Operator operator = binary.operator();
        if (operator == Operator.AND || operator == Operator.OR) {
            return logic(binary, scope);
        }
        Value left = value(binary.left(), scope);
        Value right = value(binary.right(), scope);
        if (operator == Operator.EQUAL || operator == Operator.NOT_EQUAL) {
            checkChoice(binary.left(), binary.right());
            checkChoice(binary.right(), binary.left());
        }
        if (operator == Operator.IN && binary.right() instanceof Node.Items list) {
            list.items().forEach(i -> checkChoice(binary.left(), i));
        }
        return Arithmetic.apply(operator, left, right, binary.place());
    }

    /** A choice compared with a text that it can never be is a mistyped text. */
    private void checkChoice(Node choice, Node text) {
        if (!checking || !(text instanceof Node.Literal literal) || !(literal.raw() instanceof String met)) {
            return;
        }
        String name = "";
        if (choice instanceof Node.Name plain) {
            name = plain.name();
        } else if (choice instanceof Node.Call call
                && call.receiver().isEmpty()
                && call.args().size() == 1
                && call.args().get(0) instanceof Node.Literal l
                && l.raw() instanceof String s) {
            name = s;
        }
        List<String> allowed = names.choices(name);
        if (!allowed.isEmpty() && !allowed.contains(met)) {
            String hint = Nearest.hint(met, allowed);
            note(
                    Fault.of(
                            text.place(),
                            "never-true",
                            "'" + name + "' is never '" + met + "'"
                                    + (hint.isEmpty()
                                            ? "; it is one of '" + String.join("', '", allowed) + "'"
                                            : hint)),
                    "");
        }
    }

    private Value logic(Node.Binary binary, Scope scope) {
        Value left = value(binary.left(), scope);
        boolean decided = Functions.truth(left, binary.left().place()) == (binary.operator() == Operator.OR);
        if (decided) {
            if (checking) {
                speculate(() -> tryValue(binary.right(), scope), left.from());
            }
            return left.at(binary.place());
        }
        Value right = value(binary.right(), scope);
        boolean answer = Functions.truth(right, binary.right().place());
        return new Value(answer, binary.place(), Arithmetic.from(left, right));
    }

    private Value choose(Node.Choose choose, Scope scope) {
        Value condition = value(choose.condition(), scope);
        boolean holds = Functions.truth(condition, choose.condition().place());
        Node other = holds ? choose.otherwise() : choose.then();
        if (checking) {
            speculate(() -> tryValue(other, scope), condition.from());
        }
        return value(holds ? choose.then() : choose.otherwise(), scope).dependingOn(condition.from());
    }

    private Value fallback(Node.Fallback fallback, Scope scope) {
        Value first = value(fallback.value(), scope);
        Object raw = first.raw();
        boolean empty = raw == Value.NOTHING
                || Boolean.FALSE.equals(raw)
                || "".equals(raw)
                || (raw instanceof List<?> list && list.isEmpty());
        if (!empty) {
            if (checking) {
                speculate(() -> tryValue(fallback.otherwise(), scope), first.from());
            }
            return first;
        }
        return value(fallback.otherwise(), scope).dependingOn(first.from());
    }

    private Value items(Node.Items items, Scope scope) {
        List<Value> list = new ArrayList<>();
        Set<String> from = new TreeSet<>();
        for (Node item : items.items()) {
            Value one = value(item, scope);
            from.addAll(one.from());
            list.add(one);
        }
        return new Value(Arithmetic.list(list, items.place()), items.place(), from);
    }

    private Value map(Node.Entries entries, Scope scope) {
        Map<String, Value> map = new LinkedHashMap<>();
        Set<String> from = new TreeSet<>();
        for (Node.Entry entry : entries.entries()) {
            Value key = value(entry.key(), scope);
            if (!(key.raw() instanceof String name)) {
                throw Fault.of(entry.key().place(), "wrong-operand", "a map's key is a text, not " + key.described());
            }
            Value value = value(entry.value(), scope);
            if (map.put(name, value) != null) {
                throw Fault.of(entry.key().place(), "duplicate", "the map has '" + name + "' twice");
            }
            from.addAll(key.from());
            from.addAll(value.from());
        }
        return new Value(map, entries.place(), from);
    }

    private Value template(Node.Template template, Scope scope) {
        StringBuilder text = new StringBuilder();
        Set<String> from = new TreeSet<>();
        for (Node part : template.parts()) {
            Value value = value(part, scope);
            from.addAll(value.from());
            text.append(Functions.plain(value));
            Arithmetic.text(text.toString(), template.place());
        }
        return new Value(text.toString(), template.place(), from);
    }

    private Value span(Node.Span span, Scope scope) {
        Value from = value(span.from(), scope);
        Value to = value(span.to(), scope);
        Value ordered = Arithmetic.apply(Operator.AT_MOST, from, to, span.place());
        if (!(Boolean) ordered.raw()) {
            throw Fault.ofValue(
                    span.place(),
                    "a range goes from the smaller to the larger end, not from " + from.described() + " to "
                            + to.described(),
                    List.of(from, to));
        }
        return new Value(new Value.Range(from, to), span.place(), ordered.from());
    }

    private Value at(Node.At at, Scope scope) {
        Value target = value(at.target(), scope);
        Value key = value(at.key(), scope);
        if (target.raw() instanceof Map<?, ?> map) {
            if (map.get(key.raw()) instanceof Value found) {
                return found.dependingOn(Arithmetic.from(target, key)).at(at.place());
            }
            List<String> keys = map.keySet().stream().map(String.class::cast).toList();
            String met = key.raw() instanceof String text ? text : "";
            throw Fault.ofValue(
                    at.key().place(),
                    "the map has nothing under " + key.described() + Nearest.hint(met, keys),
                    List.of(target, key));
        }
        if (target.raw() instanceof List<?> list && Type.COUNT.fits(key)) {
            BigDecimal index = (BigDecimal) key.raw();
            if (index.compareTo(BigDecimal.valueOf(list.size())) < 0) {
                return ((Value) list.get(index.intValueExact()))
                        .dependingOn(Arithmetic.from(target, key))
                        .at(at.place());
            }
            throw Fault.ofValue(
                    at.key().place(),
                    "the list has " + list.size() + " entries, counted from 0; there is none at "
                            + index.toPlainString(),
                    List.of(target, key));
        }
        throw Fault.of(
                at.place(),
                "wrong-operand",
                "[…] takes something out of a list or a map, not out of " + target.described());
    }

    private Value function(Node.Call call, Scope scope) {
        Optional<Word> word = vocabulary.function(call.name());
        if (word.isEmpty()) {
            List<String> known = vocabulary.functions().stream().map(Word::name).toList();
            List<Vocabulary.Section> sections = vocabulary.sectionsWith(call.name());
            throw Fault.of(
                    call.place(),
                    "unknown-function",
                    sections.isEmpty()
                            ? "there is no function '" + call.name() + "'" + Nearest.hint(call.name(), known)
                            : "'" + call.name() + "' is a word and has no value");
        }
        Call checked = checked(call, word.get(), scope).orElseThrow(Fault::silent);
        Value value = names.call(checked).at(call.place());
        read.addAll(value.from());
        return value;
    }

    /** A function behind a dot; its block may hold words where the whole is a statement. */
    private Value onValue(Node.Call call, Scope scope, Optional<Handler> handler) {
        Value target = target(call.receiver().orElseThrow(), scope);
        if (!call.named().isEmpty()) {
            throw Fault.of(
                    call.named().get(0).key().place(),
                    "wrong-argument",
                    "'" + call.name() + "' takes no argument by name");
        }
        List<Value> args = new ArrayList<>();
        call.args().forEach(a -> args.add(value(a, scope)));
        Functions.Use use = new Functions.Use(
                target,
                args,
                call.block().map(b -> (with, place) -> apply(b, with, place, scope, target, handler)),
                call.place());
        return Functions.apply(call.name(), use);
    }

    private Value apply(
            Node.Block block, List<Value> with, Place place, Scope scope, Value target, Optional<Handler> handler) {
        step(place);
        Scope inner = scope.inner();
        List<String> parameters = block.bare() ? List.of("it") : block.parameters();
        if (parameters.size() != with.size()) {
            throw Fault.of(block.place(), "wrong-argument", "the block takes one name before its arrow: { x -> … }");
        }
        for (int i = 0; i < with.size(); i++) {
            inner.define(parameters.get(i), with.get(i).dependingOn(target.from()), block.place());
        }
        List<Node> body = block.body();
        if (handler.isPresent()) {
            loops++;
            conditions.push(target.from());
            try {
                run(body, inner, handler.get());
            } finally {
                conditions.pop();
                loops--;
            }
            return Value.of(true, place);
        }
        Value last = Value.of(Value.NOTHING, block.place());
        for (Node statement : body) {
            if (statement instanceof Node.Define define) {
                define(define, inner);
            } else {
                last = value(statement, inner);
            }
        }
        return last;
    }
}
