package baywright.script;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Works out expressions. */
final class Expressions {

    private final Evaluator run;

    Expressions(Evaluator run) {
        this.run = run;
    }

    /** The value of an expression. */
    Value value(Node node, Scope scope) {
        run.step(node.place());
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
            if (local.get().raw() instanceof Helper) {
                throw Fault.of(
                        name.place(),
                        "wrong-operand",
                        "'" + name.name() + "' is a helper and has a value only when it is called: " + name.name()
                                + "(…)");
            }
            return local.get().at(name.place());
        }
        Optional<Value> outside = run.names().value(name.name());
        if (outside.isPresent()) {
            run.noteRead(outside.get().from());
            return outside.get().at(name.place());
        }
        Set<String> known = new TreeSet<>(scope.names());
        known.addAll(run.names().known());
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
                && run.names().value(name.name()).isEmpty()) {
            Set<String> known = new TreeSet<>(scope.names());
            known.addAll(run.names().known());
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
        if (member.target() instanceof Node.Name name && scope.find(name.name()).isEmpty()) {
            Optional<Value> part = run.names().value(name.name() + "." + member.name());
            if (part.isPresent()) {
                return part.get().at(member.place());
            }
        }
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
        run.charge(Arithmetic.cost(operator, left, right), binary.place());
        return Arithmetic.apply(operator, left, right, binary.place());
    }

    /** A choice compared with a text that it can never be is a mistyped text. */
    void checkChoice(Node choice, Node text) {
        if (!run.isChecking() || !(text instanceof Node.Literal literal) || !(literal.raw() instanceof String met)) {
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
        List<String> allowed = run.names().choices(name);
        if (!allowed.isEmpty() && !allowed.contains(met)) {
            String hint = Nearest.hint(met, allowed);
            run.note(
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
            if (run.isChecking()) {
                run.speculate(() -> run.tryValue(binary.right(), scope), left.from());
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
        if (run.isChecking()) {
            run.speculate(() -> run.tryValue(other, scope), condition.from());
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
            if (run.isChecking()) {
                run.speculate(() -> run.tryValue(fallback.otherwise(), scope), first.from());
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
            Arithmetic.fits(text, template.place());
            run.charge(Arithmetic.cost(value), template.place());
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
        Optional<Helper> helper = Helpers.called(call, scope);
        if (helper.isPresent()) {
            return run.helpers().value(call, helper.get(), scope);
        }
        Optional<Word> word = run.vocabulary().function(call.name());
        if (word.isEmpty()) {
            Set<String> known = Helpers.names(scope);
            run.vocabulary().functions().forEach(w -> known.add(w.name()));
            List<Vocabulary.Section> sections = run.vocabulary().sectionsWith(call.name());
            throw Fault.of(
                    call.place(),
                    "unknown-function",
                    sections.isEmpty()
                            ? "there is no function '" + call.name() + "'" + Nearest.hint(call.name(), known)
                            : "'" + call.name() + "' is a word and has no value");
        }
        run.warnRetired(word.get(), call.place());
        Call checked = run.arguments().check(call, word.get(), scope).orElseThrow(Fault::silent);
        Value value = run.names().call(checked).at(call.place());
        run.noteRead(value.from());
        return value;
    }

    /** A function behind a dot; its block may hold words where the whole is a statement. */
    Value onValue(Node.Call call, Scope scope, Optional<Handler> handler) {
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
                call.block().map(b -> (with, place) -> run.apply(b, with, place, scope, target, handler)),
                call.place());
        boolean compares = call.name().equals("contains") && !args.isEmpty();
        long cost = compares ? Arithmetic.cost(Operator.IN, args.get(0), target) : Arithmetic.cost(target);
        run.charge(cost, call.place());
        return Functions.apply(call.name(), use);
    }
}
