package baywright.script;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What pieces of script say, whatever their layout and wherever they stand: two with equal texts mean the same. What a piece
 * reads from the locals and helpers around it is part of it.
 */
public final class Wording {

    private static final Set<Operator> OF_NUMBERS =
            Set.of(Operator.MINUS, Operator.TIMES, Operator.DIVIDE, Operator.REMAINDER, Operator.POWER);

    private final StringBuilder text = new StringBuilder();
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<Value> read = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> skipped;
    private boolean composed;

    /** @param skipped words that do not count, with all that belongs to them */
    public Wording(Set<String> skipped) {
        this.skipped = Set.copyOf(skipped);
    }

    /** Adds statements that stand in a scope. */
    public void add(Collection<? extends Node> body, Scope around) {
        write(body, around);
    }

    /** Adds a value. */
    public void add(String name, Value value) {
        text.append(name).append('=');
        write(value.raw(), Scope.outermost());
    }

    /** What they say, for comparing. */
    public String text() {
        return text.toString();
    }

    /** Every text and every name in them: whatever they speak of is among these, unless {@link #isComposed}. */
    public Set<String> names() {
        return Set.copyOf(names);
    }

    /** Whether they may put texts together, so that they can speak of more than {@link #names}. */
    public boolean isComposed() {
        return composed;
    }

    private void write(Object part, Scope around) {
        if (part instanceof Place) {
            return;
        }
        if (part instanceof Collection<?> all) {
            text.append('[');
            all.stream().filter(this::counts).forEach(one -> write(one, around));
            text.append(']');
        } else if (part instanceof Map<?, ?> map) {
            text.append('{');
            map.forEach((key, value) -> {
                write(key, around);
                write(value, around);
            });
            text.append('}');
        } else if (part instanceof Optional<?> maybe) {
            write(maybe.stream().toList(), around);
        } else if (part instanceof Value value) {
            write(value.raw(), around);
        } else if (part instanceof Helper helper) {
            write(helper.block(), helper.scope());
        } else if (isWritten(part)) {
            note(part);
            reads(part, around);
            text.append(part.getClass().getSimpleName()).append('(');
            parts(part).forEach(one -> write(one, around));
            text.append(')');
        } else {
            if (part instanceof String word) {
                names.add(word);
            }
            String plain = String.valueOf(part);
            text.append(part instanceof String ? 't' : 'v')
                    .append(plain.length())
                    .append(':')
                    .append(plain);
        }
    }

    private boolean counts(Object part) {
        return !(part instanceof Node.Call call && call.receiver().isEmpty() && skipped.contains(call.name()));
    }

    private static boolean isWritten(Object part) {
        return part instanceof Node
                || part instanceof Node.Entry
                || part instanceof Node.Case
                || part instanceof Value.Range;
    }

    /** All that a piece of script is made of but its place, in an order of its own. */
    private static List<?> parts(Object part) {
        if (part instanceof Node.Literal literal) {
            return List.of(literal.raw());
        } else if (part instanceof Node.Template template) {
            return template.parts();
        } else if (part instanceof Node.Items items) {
            return items.items();
        } else if (part instanceof Node.Entries entries) {
            return entries.entries();
        } else if (part instanceof Node.Name name) {
            return List.of(name.name());
        } else if (part instanceof Node.Unary unary) {
            return List.of(unary.operator(), unary.operand());
        } else if (part instanceof Node.Binary binary) {
            return List.of(binary.operator(), binary.left(), binary.right());
        } else if (part instanceof Node.Choose choose) {
            return List.of(choose.condition(), choose.then(), choose.otherwise());
        } else if (part instanceof Node.Fallback fallback) {
            return List.of(fallback.value(), fallback.otherwise());
        } else if (part instanceof Node.Span span) {
            return List.of(span.from(), span.to());
        } else if (part instanceof Node.At at) {
            return List.of(at.target(), at.key());
        } else if (part instanceof Node.Member member) {
            return List.of(member.target(), member.name());
        } else if (part instanceof Node.Call call) {
            return List.of(call.receiver(), call.name(), call.args(), call.named(), call.block());
        } else if (part instanceof Node.Block block) {
            return List.of(block.parameters(), block.bare(), block.body());
        }
        return partsOfStatement(part);
    }

    private static List<?> partsOfStatement(Object part) {
        if (part instanceof Node.Define define) {
            return List.of(define.name(), define.value());
        } else if (part instanceof Node.When when) {
            return List.of(when.condition(), when.then(), when.otherwise());
        } else if (part instanceof Node.Choice choice) {
            return List.of(choice.subject(), choice.cases(), choice.otherwise());
        } else if (part instanceof Node.Each each) {
            return List.of(each.variable(), each.in(), each.body());
        } else if (part instanceof Node.Entry entry) {
            return List.of(entry.key(), entry.value());
        } else if (part instanceof Node.Case one) {
            return List.of(one.matches(), one.body());
        } else if (part instanceof Value.Range range) {
            return List.of(range.from(), range.to());
        }
        throw new IllegalArgumentException("not a piece of script: " + part);
    }

    private void reads(Object written, Scope around) {
        if (written instanceof Node.Name name) {
            reads(name.name(), around);
        } else if (written instanceof Node.Call call) {
            reads(call.name(), around);
        }
    }

    private void note(Object written) {
        if (written instanceof Node.Call call) {
            composed |= call.name().equals("join");
        } else if (written instanceof Node.Template template) {
            composed |= template.parts().stream().anyMatch(p -> !(p instanceof Node.Literal));
        } else if (written instanceof Node.Binary sum && sum.operator() == Operator.PLUS) {
            composed |= !isNumber(sum.left()) && !isNumber(sum.right());
        }
    }

    /** Whether a part of a sum can be no text, so that the other cannot be one either. */
    private static boolean isNumber(Node node) {
        return (node instanceof Node.Literal literal && !(literal.raw() instanceof String))
                || (node instanceof Node.Member unit && isNumber(unit.target()))
                || node instanceof Node.Unary
                || (node instanceof Node.Binary sum && OF_NUMBERS.contains(sum.operator()));
    }

    /** A local counts with its value, once. */
    private void reads(String name, Scope around) {
        Optional<Value> local = around.find(name);
        if (local.isPresent() && read.add(local.get())) {
            text.append(name).append('=');
            write(local.get().raw(), around);
        }
    }
}
