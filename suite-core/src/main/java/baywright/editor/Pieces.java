package baywright.editor;

import baywright.editor.Phrase.Argument;
import baywright.editor.Token.Kind;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A script taken apart into statements without the loss of a character. Comments and blank lines go with the statement that follows
 * them, a comment at the end of a line with the statement on it. What cannot be taken apart safely, such as an {@code if} with its
 * {@code else} or two statements that nothing parts, is one piece.
 *
 * @param header what stands above the first statement up to a blank line: it belongs to the file
 * @param pieces the statements outside all braces, in order
 * @param rest   what stands behind the last one
 */
public record Pieces(String header, List<Piece> pieces, String rest) {

    /** Conditions of rules are expressions, whose lines say nothing one by one. */
    private static final Set<String> WHOLE = Set.of("forbids", "warns", "notes");

    public Pieces {
        pieces = List.copyOf(pieces);
    }

    /** Takes any text apart; one that ends without a line end may not be put together with other pieces behind it. */
    public static Pieces of(String text) {
        Cut cut = new Cut(text).run(0, text.length(), Sketch.of(text));
        if (cut.pieces.isEmpty()) {
            return new Pieces("", List.of(), cut.rest);
        }
        Piece first = cut.pieces.get(0);
        int header = endOfHeader(first.lead());
        Piece rest = first.with(first.lead().substring(header), first.head(), first.body(), first.end(), first.trail());
        List<Piece> pieces = new ArrayList<>(cut.pieces);
        pieces.set(0, rest);
        return new Pieces(first.lead().substring(0, header), pieces, cut.rest);
    }

    private static int endOfHeader(String lead) {
        int blank = Math.max(lead.lastIndexOf("\n\n"), lead.lastIndexOf("\r\n\r\n"));
        return blank < 0 ? 0 : lead.indexOf('\n', lead.indexOf('\n', blank) + 1) + 1;
    }

    /** The text that it was made of. */
    public String text() {
        return header + pieces.stream().map(Piece::text).collect(Collectors.joining()) + rest;
    }

    /** Whether two texts have the same words and signs, comments included, however they are laid out. */
    public static boolean alike(String one, String other) {
        return one.equals(other) || words(one).equals(words(other));
    }

    private static List<String> words(String text) {
        return Scan.of(text).stream()
                .filter(t -> t.kind() != Kind.LINE_END)
                .map(t -> t.text().strip())
                .toList();
    }

    /** A range of a text on its way into pieces. */
    private static final class Cut {
        private final String text;
        private final List<Piece> pieces = new ArrayList<>();
        private String rest = "";

        Cut(String text) {
            this.text = text;
        }

        Cut run(int from, int to, List<Phrase> phrases) {
            int at = from;
            int i = 0;
            while (i < phrases.size()) {
                int first = i;
                int end = phrases.get(i).to();
                int behind = trailEnd(
                        end, i + 1 < phrases.size() ? phrases.get(i + 1).from() : to);
                while (i + 1 < phrases.size() && !(parts(end, behind) && !goesOn(phrases.get(i + 1)))) {
                    i++;
                    end = phrases.get(i).to();
                    behind = trailEnd(
                            end, i + 1 < phrases.size() ? phrases.get(i + 1).from() : to);
                }
                pieces.add(piece(phrases.get(first), i > first, at, end, behind));
                at = behind;
                i++;
            }
            rest = text.substring(at, to);
            return this;
        }

        private boolean parts(int end, int behind) {
            String trail = text.substring(end, behind);
            return trail.endsWith("\n")
                    || trail.endsWith("\r")
                    || trail.stripTrailing().endsWith(";");
        }

        private static boolean goesOn(Phrase phrase) {
            return phrase.head().is("else")
                    || phrase.head().is("case")
                    || phrase.head().is("default");
        }

        /** Behind blanks and semicolons, and behind the line end where nothing but a comment comes first. */
        private int trailEnd(int from, int most) {
            int at = from;
            while (at < most && (text.charAt(at) == ' ' || text.charAt(at) == '\t' || text.charAt(at) == ';')) {
                at++;
            }
            int line = at;
            if (text.startsWith("//", line)) {
                while (line < most && text.charAt(line) != '\n' && text.charAt(line) != '\r') {
                    line++;
                }
            } else if (text.startsWith("/*", line)) {
                int close = text.indexOf("*/", line + 2);
                line = close < 0 ? most : close + 2;
                while (line < most && (text.charAt(line) == ' ' || text.charAt(line) == '\t')) {
                    line++;
                }
            }
            if (line >= most) {
                return Math.min(most, text.startsWith("//", at) ? line : at);
            }
            if (text.startsWith("\r\n", line)) {
                return line + 2;
            }
            return text.charAt(line) == '\n' || text.charAt(line) == '\r' ? line + 1 : at;
        }

        private Piece piece(Phrase phrase, boolean joined, int at, int end, int behind) {
            String word = phrase.word()
                    .map(Word::name)
                    .orElse(
                            Sketch.CONTROL.contains(phrase.head().text())
                                    ? phrase.head().text()
                                    : "");
            String lead = text.substring(at, phrase.from());
            String trail = text.substring(end, behind);
            int open = joined ? -1 : openingBrace(phrase, end);
            if (open < 0) {
                String head = text.substring(phrase.from(), end);
                return new Piece(word, label(phrase), named(phrase), lead, head, List.of(), "", trail);
            }
            int inside = Math.min(end - 1, trailEnd(open + 1, bodyFrom(phrase, end)));
            Cut body = new Cut(text).run(inside, end - 1, phrase.body());
            return new Piece(
                    word,
                    label(phrase),
                    named(phrase),
                    lead,
                    text.substring(phrase.from(), inside),
                    body.pieces,
                    body.rest + "}",
                    trail);
        }

        private static int bodyFrom(Phrase phrase, int end) {
            return phrase.body().isEmpty() ? end - 1 : phrase.body().get(0).from();
        }

        /** Where the braces that end a statement open; -1 when they are not to be taken apart. */
        private int openingBrace(Phrase phrase, int end) {
            boolean apart = phrase.word().flatMap(Word::opens).isPresent()
                    && !WHOLE.contains(phrase.word().get().name())
                    && phrase.braces()
                    && !phrase.open()
                    && !phrase.bracesOpen()
                    && phrase.parameters().isEmpty()
                    && text.charAt(end - 1) == '}';
            if (!apart) {
                return -1;
            }
            List<Token> tokens = Scan.of(text.substring(phrase.from(), end));
            int depth = 0;
            int opened = -1;
            for (Token token : tokens) {
                if (token.is("{")) {
                    opened = depth == 0 ? token.from() : opened;
                    depth++;
                } else if (token.is("}")) {
                    depth--;
                    if (depth == 0 && token.to() < end - phrase.from()) {
                        return -1;
                    }
                }
            }
            return opened < 0 ? -1 : phrase.from() + opened;
        }

        private static String label(Phrase phrase) {
            return phrase.arguments().stream()
                    .filter(a -> a.position() == 0
                            || (phrase.head().is("def") && a.name().isPresent()))
                    .findFirst()
                    .map(a -> a.name().map(Phrase::plain).orElseGet(() -> written(a)))
                    .orElse("");
        }

        private static Map<String, String> named(Phrase phrase) {
            Map<String, String> named = new HashMap<>();
            for (Argument argument : phrase.arguments()) {
                argument.name().ifPresent(n -> named.put(Phrase.plain(n), written(argument)));
            }
            return named;
        }

        private static String written(Argument argument) {
            return argument.tokens().stream()
                    .map(t -> t.isText() ? t.content() : t.text())
                    .collect(Collectors.joining());
        }
    }
}
