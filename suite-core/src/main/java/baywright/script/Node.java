package baywright.script;

import java.util.List;
import java.util.Optional;

/**
 * A script as plain data: what the parser read, with the place of each part. Nothing here can name a class or run by
 * itself; only {@link Evaluator} gives it meaning.
 */
public sealed interface Node {

    /** Where it begins. */
    Place place();

    /**
     * A number, text, true, false or null as written.
     *
     * @param raw {@link java.math.BigDecimal}, {@link String}, {@link Boolean} or {@link Value#NOTHING}
     */
    record Literal(Object raw, Place place) implements Node {}

    /** A text with parts worked out. */
    record Template(List<Node> parts, Place place) implements Node {
        public Template {
            parts = List.copyOf(parts);
        }
    }

    /** {@code [a, b]}. */
    record Items(List<Node> items, Place place) implements Node {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** {@code [a: 1, 'b': 2]}; a key that is a plain name is a text. */
    record Entries(List<Entry> entries, Place place) implements Node {
        public Entries {
            entries = List.copyOf(entries);
        }
    }

    /** A key or an argument's name with its value. */
    record Entry(Node key, Node value) {}

    /** A local, an input, a parameter. */
    record Name(String name, Place place) implements Node {}

    /** {@code -a}, {@code !a}. */
    record Unary(Operator operator, Node operand, Place place) implements Node {}

    /** {@code a + b}. Its place is that of the left side. */
    record Binary(Operator operator, Node left, Node right, Place place) implements Node {}

    /** {@code a ? b : c}. */
    record Choose(Node condition, Node then, Node otherwise, Place place) implements Node {}

    /** {@code a ?: b}. */
    record Fallback(Node value, Node otherwise, Place place) implements Node {}

    /** {@code a..b}, both ends included. */
    record Span(Node from, Node to, Place place) implements Node {}

    /** {@code a[b]}. */
    record At(Node target, Node key, Place place) implements Node {}

    /** {@code a.name}: a number's unit, a list's or a map's part. */
    record Member(Node target, String name, Place place) implements Node {}

    /**
     * A word with its arguments, or a function of a value.
     *
     * @param receiver what stands before the dot; empty for a word
     * @param name     the word
     * @param args     arguments by position, in order of writing
     * @param named    arguments by name
     * @param block    what stands in braces behind it
     */
    record Call(
            Optional<Node> receiver,
            String name,
            List<Node> args,
            List<Entry> named,
            Optional<Block> block,
            Place place)
            implements Node {
        public Call {
            args = List.copyOf(args);
            named = List.copyOf(named);
        }
    }

    /**
     * Something in braces.
     *
     * @param parameters names before the arrow
     * @param bare       whether there was no arrow, so that {@code it} is the parameter
     * @param body       statements
     */
    record Block(List<String> parameters, boolean bare, List<Node> body, Place place) implements Node {
        public Block {
            parameters = List.copyOf(parameters);
            body = List.copyOf(body);
        }
    }

    /** {@code def name = value}; a {@link Block} as the value makes a helper. */
    record Define(String name, Node value, Place place) implements Node {}

    /** {@code if (a) { } else { }}. */
    record When(Node condition, List<Node> then, List<Node> otherwise, Place place) implements Node {
        public When {
            then = List.copyOf(then);
            otherwise = List.copyOf(otherwise);
        }
    }

    /** {@code switch (a) { case b: … break; default: … }}. */
    record Choice(Node subject, List<Case> cases, List<Node> otherwise, Place place) implements Node {
        public Choice {
            cases = List.copyOf(cases);
            otherwise = List.copyOf(otherwise);
        }
    }

    /** One or more {@code case} labels with what they do. */
    record Case(List<Node> matches, List<Node> body) {
        public Case {
            matches = List.copyOf(matches);
            body = List.copyOf(body);
        }
    }

    /** {@code for (x in list) { }}. */
    record Each(String variable, Node in, List<Node> body, Place place) implements Node {
        public Each {
            body = List.copyOf(body);
        }
    }
}
