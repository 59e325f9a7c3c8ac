package baywright.script;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Gives a script's tree its meaning: works out values, checks words against the vocabulary and hands them to handlers.
 *
 * <p>In a <em>checking</em> walk both branches of every condition that depends on an input or a fact are visited, so that
 * a bad word is found wherever it stands; values still come from the branch that the usual values take. Otherwise only
 * that branch is visited. For one script at a time, not for several threads.
 */
public final class Evaluator {

    private final Vocabulary vocabulary;
    private final Problems problems;
    private final Names names;
    private final boolean checking;
    private final Deque<Set<String>> conditions = new ArrayDeque<>();
    private final Set<String> read = new TreeSet<>();
    private final Arguments arguments = new Arguments(this);
    private final Expressions expressions = new Expressions(this);
    private final Helpers helpers = new Helpers(this);
    private final WordMessages messages;
    private int speculative;
    private int loops;
    private long steps;
    private final Steps ofFile;

    /**
     * Makes one for a run.
     *
     * @param names    what the script may read beyond its own locals
     * @param checking whether both branches of conditions are visited
     */
    public Evaluator(Vocabulary vocabulary, Problems problems, Names names, boolean checking) {
        this(vocabulary, problems, names, checking, new Steps());
    }

    /**
     * Makes one for a run that is one of several.
     *
     * @param names    what the script may read beyond its own locals
     * @param checking whether both branches of conditions are visited
     * @param ofFile   steps that the runs share
     */
    public Evaluator(Vocabulary vocabulary, Problems problems, Names names, boolean checking, Steps ofFile) {
        this.ofFile = ofFile;
        this.vocabulary = vocabulary;
        this.messages = new WordMessages(vocabulary);
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

    /** The value of a block: that of its last expression; empty when it has none, which is noted. */
    public Optional<Value> answer(Node.Block block, Scope scope) {
        try {
            return Optional.of(lastOf(block, scope.inner()));
        } catch (Fault fault) {
            note(fault, "");
        } catch (Exhausted e) {
            problems.error(e.place(), "limit", e.getMessage());
        }
        return Optional.empty();
    }

    /** Names of all inputs and facts that were read so far. */
    public Set<String> read() {
        return Set.copyOf(read);
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    Names names() {
        return names;
    }

    Arguments arguments() {
        return arguments;
    }

    boolean isChecking() {
        return checking;
    }

    void noteRead(Set<String> more) {
        read.addAll(more);
    }

    /** Inputs and facts that the conditions around the statement at hand depend on. */
    Set<String> conditions() {
        Set<String> all = new TreeSet<>();
        conditions.forEach(all::addAll);
        return all;
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
        if (checking) {
            helpers.lookInto(body, scope);
        }
    }

    void step(Place place) {
        charge(1, place);
    }

    /** Takes so many steps at once, for work whose cost grows with its values. */
    void charge(long cost, Place place) {
        steps += cost;
        if (steps > Limits.STEPS) {
            throw new Exhausted(
                    place,
                    "the script takes more than " + Limits.STEPS + " steps to work out; shorten its loops and lists");
        }
        ofFile.take(cost, place);
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
            expressions.onValue(call, scope, Optional.of(handler));
        } else {
            stray(node, scope, handler);
        }
    }

    void define(Node.Define define, Scope scope) {
        if (scope.find(define.name()).isPresent()) {
            throw Fault.of(
                    define.place(),
                    "duplicate",
                    "'" + define.name() + "' already has a value at " + scope.placeOf(define.name()));
        }
        Optional<Value> outside = names.value(define.name());
        if (outside.isPresent()) {
            String what = outside.get().from().isEmpty() ? "a constant" : "an input";
            throw Fault.of(define.place(), "duplicate", "'" + define.name() + "' is already the name of " + what);
        }
        try {
            Value value = define.value() instanceof Node.Block block
                    ? helpers.made(define, block, scope)
                    : expressions.value(define.value(), scope);
            scope.define(define.name(), value, define.place());
        } catch (Fault fault) {
            scope.defineBroken(define.name(), define.place());
            throw fault;
        }
    }

    private void when(Node.When when, Scope scope, Handler handler) {
        Value condition;
        boolean holds;
        try {
            condition = expressions.value(when.condition(), scope);
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

    void speculate(Runnable walk, Set<String> from) {
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
        Value subject = expressions.value(choice.subject(), scope);
        Set<String> from = new TreeSet<>(subject.from());
        boolean done = false;
        for (Node.Case one : choice.cases()) {
            boolean matches = false;
            for (Node match : one.matches()) {
                expressions.checkChoice(choice.subject(), match);
                Value wanted = expressions.value(match, scope);
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
        Value all = expressions.value(each.in(), scope);
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

    static List<Value> entries(Value value, Place place) {
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
        if (left instanceof Node.Name name && messages.isWord(name.name(), handler.section())) {
            // It was meant, so that nobody is told that it is missing besides.
            vocabulary.section(handler.section()).word(name.name()).ifPresent(handler::met);
            throw Fault.of(
                    name.place(),
                    "wrong-argument",
                    reading.isEmpty()
                            ? "'" + name.name() + "' stands without arguments; "
                                    + messages.usage(name.name(), handler.section())
                            : "'" + name.name() + "' is not read as a word here but " + reading + "; write "
                                    + name.name() + "(…) with its arguments in round brackets");
        }
        if (left instanceof Node.Name name
                && scope.find(name.name()).isEmpty()
                && names.value(name.name()).isEmpty()) {
            throw messages.unknown(name.name(), name.place(), handler.section());
        }
        expressions.value(node, scope);
        throw Fault.of(node.place(), "stray-value", "a value on its own says nothing; a word is missing before it");
    }

    private void word(Node.Call call, Scope scope, Handler handler) {
        Optional<Word> word = vocabulary.section(handler.section()).word(call.name());
        if (word.isEmpty() && Helpers.called(call, scope).isPresent()) {
            expressions.value(call, scope);
            throw Fault.of(
                    call.place(),
                    "stray-value",
                    "the value of '" + call.name() + "' goes nowhere; a word is missing before it");
        }
        if (word.isEmpty()) {
            throw messages.unknown(call.name(), call.place(), handler.section());
        }
        if (!handler.skips(word.get())) {
            handler.met(word.get());
            warnRetired(word.get(), call.place());
            Optional<Call> checked = arguments.check(call, word.get(), scope);
            if (checked.isPresent()) {
                handler.accept(checked.get());
            } else if (checking
                    && word.get().opens().isPresent()
                    && call.block().isPresent()) {
                inside(call.block().get(), word.get(), scope, handler);
            }
        }
    }

    /** Looks at the words in braces whose own word has wrong arguments; nothing of them is kept. */
    private void inside(Node.Block block, Word word, Scope scope, Handler handler) {
        if (!handler.seesTo(word, block.place(), block, scope)) {
            speculate(
                    () -> run(block.body(), scope.inner(), new Deaf(word.opens().orElseThrow())), Set.of());
        }
    }

    /** Takes words without doing anything. */
    private record Deaf(String section) implements Handler {
        @Override
        public void accept(Call call) {
            call.word().opens().ifPresent(opened -> call.inside(new Deaf(opened)));
        }
    }

    void warnRetired(Word word, Place place) {
        word.retired()
                .ifPresent(r -> warn(
                        place,
                        "retired",
                        "'" + word.name() + "' is on its way out since version " + r.since()
                                + " of the language; write '" + r.instead() + "' instead",
                        r.instead()));
    }

    Helpers helpers() {
        return helpers;
    }

    Value value(Node node, Scope scope) {
        return expressions.value(node, scope);
    }

    Optional<Value> tryValue(Node node, Scope scope) {
        try {
            return Optional.of(expressions.value(node, scope));
        } catch (Fault fault) {
            note(fault, "");
            return Optional.empty();
        }
    }

    Value apply(Node.Block block, List<Value> with, Place place, Scope scope, Value target, Optional<Handler> handler) {
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
        return lastOf(block, inner);
    }

    Value lastOf(Node.Block block, Scope inner) {
        Value last = Value.of(Value.NOTHING, block.place());
        for (Node statement : block.body()) {
            if (statement instanceof Node.Define define) {
                define(define, inner);
            } else {
                last = expressions.value(statement, inner);
            }
        }
        if (checking) {
            helpers.lookInto(block.body(), inner);
        }
        return last;
    }
}
