package baywright.share;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A JSON file apart from how it is written: a mark at its beginning, its line ends, and whether its last line has one.
 *
 * @param root what it says, with each value as it is written
 */
record DataFile(boolean mark, boolean crlf, boolean open, Value root) {

    private static final String MARK = "\uFEFF";
    private static final int DEEPEST = 40;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(
                    StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
            .build();
    /** What the elements of a list may be known by: their id, or the sentence that a translation is of. */
    private static final List<String> KEYS = List.of("id", "said");

    /**
     * A value.
     *
     * @param written its text in the file, with plain line ends
     * @param said    what it says whatever its layout is, and, where that says nothing, its order
     * @param parts   of an object its members, of a list of things with ids these by their ids, of a list of words these
     */
    record Value(Kind kind, String written, String said, Map<String, Value> parts) {}

    /** What can be merged part by part, and what cannot. */
    enum Kind {
        OBJECT,
        /** A list of objects that each have an id of their own. */
        THINGS,
        /** A list of texts, each once. */
        WORDS,
        /** Anything else: one value as a whole. */
        WHOLE
    }

    /** Reads; empty when the text is no JSON. */
    static Optional<DataFile> of(String text) {
        boolean mark = text.startsWith(MARK);
        String bare = mark ? text.substring(1) : text;
        String plain = bare.replace("\r\n", "\n");
        boolean crlf = bare.length() > plain.length() && bare.equals(plain.replace("\n", "\r\n"));
        try (JsonParser parser = FACTORY.createParser(plain)) {
            if (parser.nextToken() == null) {
                return Optional.empty();
            }
            Value root = new Reading(plain, parser).value();
            return parser.nextToken() == null
                    ? Optional.of(new DataFile(mark, crlf, !plain.endsWith("\n"), root))
                    : Optional.empty();
        } catch (IOException e) {
            // what is no JSON is one thing as a whole, and is told of where files are checked
            return Optional.empty();
        }
    }

    /** A text written like this file. */
    String written(String plain) {
        String text = plain + (open ? "" : "\n");
        return (mark ? MARK : "") + (crlf ? text.replace("\n", "\r\n") : text);
    }

    /** An object of members, or a list of things or words, made anew. */
    static Value made(Kind kind, String written, Map<String, Value> parts) {
        return new Value(kind, written, said(kind, parts), parts);
    }

    private static String said(Kind kind, Map<String, Value> parts) {
        String inner = new TreeMap<>(parts)
                .entrySet().stream()
                        .map(e -> kind == Kind.OBJECT
                                ? quoted(e.getKey()) + ":" + e.getValue().said()
                                : e.getValue().said())
                        .collect(Collectors.joining(","));
        return kind == Kind.OBJECT ? "{" + inner + "}" : "[" + inner + "]";
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** One pass over a text. */
    private record Reading(String text, JsonParser parser) {

        Value value() throws IOException {
            int from = here();
            return switch (parser.currentToken()) {
                case START_OBJECT -> {
                    Map<String, Value> members = new LinkedHashMap<>();
                    while (parser.nextToken() != JsonToken.END_OBJECT) {
                        String name = parser.currentName();
                        parser.nextToken();
                        members.put(name, value());
                    }
                    yield made(Kind.OBJECT, since(from), members);
                }
                case START_ARRAY -> {
                    List<Value> elements = new ArrayList<>();
                    while (parser.nextToken() != JsonToken.END_ARRAY) {
                        elements.add(value());
                    }
                    yield list(since(from), elements);
                }
                case VALUE_STRING -> {
                    String said = quoted(parser.getText());
                    yield leaf(since(from), said);
                }
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                    String number = parser.getText();
                    yield leaf(number, number(number));
                }
                default -> leaf(parser.getText(), parser.getText());
            };
        }

        /** Alike for {@code 1.50} and {@code 1.5}. */
        private static String number(String written) {
            try {
                BigDecimal value = new BigDecimal(written);
                return value.signum() == 0 ? "0" : value.stripTrailingZeros().toString();
            } catch (ArithmeticException | NumberFormatException e) {
                // an exponent beyond all measure: a number all the same, known by its text alone
                return written;
            }
        }

        private static Value leaf(String written, String said) {
            return new Value(Kind.WHOLE, written, said, Map.of());
        }

        private static Value list(String written, List<Value> elements) {
            Map<String, Value> parts = new LinkedHashMap<>();
            for (Value element : elements) {
                key(element).ifPresent(k -> parts.put(k, element));
            }
            if (parts.size() == elements.size()) {
                boolean things = elements.stream().anyMatch(e -> e.kind() == Kind.OBJECT);
                boolean words = elements.stream().anyMatch(e -> e.kind() != Kind.OBJECT);
                if (things != words || elements.isEmpty()) {
                    return made(things ? Kind.THINGS : Kind.WORDS, written, parts);
                }
            }
            return new Value(
                    Kind.WHOLE,
                    written,
                    elements.stream().map(Value::said).collect(Collectors.joining(",", "[", "]")),
                    Map.of());
        }

        private static Optional<String> key(Value element) {
            if (element.kind() == Kind.OBJECT) {
                return KEYS.stream()
                        .map(element.parts()::get)
                        .filter(Objects::nonNull)
                        .map(Value::said)
                        .filter(s -> s.startsWith("\""))
                        .map(s -> s.substring(1, s.length() - 1))
                        .findFirst();
            }
            return element.said().startsWith("\"") ? Optional.of(element.said()) : Optional.empty();
        }

        private int here() {
            return (int) parser.currentTokenLocation().getCharOffset();
        }

        private String since(int from) {
            return text.substring(from, (int) parser.currentLocation().getCharOffset());
        }
    }
}
