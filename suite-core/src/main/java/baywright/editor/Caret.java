package baywright.editor;

import baywright.editor.Phrase.Argument;
import baywright.editor.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What surrounds an offset of a text: the begun word or id, the phrases around it from the outermost inwards, and the
 * section whose words may stand there.
 *
 * @param text    the whole text
 * @param begun   the name or the content of the text before the caret that a proposal replaces
 * @param from    offset where that begins
 * @param to      offset where it ends; behind the caret when the caret is inside it
 * @param quoted  the text in quotes around the caret
 * @param path    the phrases around the caret that have open braces, outermost first
 * @param section the section of the innermost
 * @param phrase  the phrase that the caret goes on with; empty at the start of a statement
 * @param silent  whether nothing can be proposed here, as in a comment
 */
record Caret(
        String text,
        String begun,
        int from,
        int to,
        Optional<Token> quoted,
        List<Phrase> path,
        String section,
        Optional<Phrase> phrase,
        boolean silent) {

    static Caret at(String text, int offset) {
        int caret = Math.max(0, Math.min(offset, text.length()));
        int from = caret;
        int to = caret;
        Optional<Token> quoted = Optional.empty();
        boolean silent = false;
        for (Token token : Scan.of(text)) {
            if (token.from() >= caret) {
                break;
            }
            boolean inside = caret < token.to();
            if (token.kind() == Kind.COMMENT) {
                silent |= inside || (caret == token.to() && !token.text().endsWith("*/"));
            } else if (token.isText() && (inside || (caret == token.to() && !token.closed()))) {
                quoted = Optional.of(token);
                from = Math.min(token.contentFrom(), caret);
                to = token.closed() ? Math.max(token.contentTo(), caret) : caret;
                silent |= token.hasParts()
                        || token.text().startsWith("'''")
                        || token.text().startsWith("\"\"\"");
            } else if (token.isName() && caret <= token.to()) {
                from = token.from();
                to = token.to();
            } else if (token.kind() == Kind.NUMBER && caret <= token.to()) {
                silent = true;
            }
        }
        return around(text, text.substring(from, caret), from, to, quoted, silent);
    }

    private static Caret around(String text, String begun, int from, int to, Optional<Token> quoted, boolean silent) {
        List<Phrase> path = new ArrayList<>();
        List<Phrase> level = Sketch.of(text.substring(0, quoted.map(Token::from).orElse(from)));
        String section = "library";
        Optional<Phrase> phrase = Optional.empty();
        while (!level.isEmpty()) {
            Phrase last = level.get(level.size() - 1);
            if (!last.open()) {
                break;
            }
            if (!last.bracesOpen()) {
                phrase = Optional.of(last);
                break;
            }
            path.add(last);
            section = inside(last);
            level = last.body();
        }
        return new Caret(text, begun, from, to, quoted, path, section, phrase, silent);
    }

    private static String inside(Phrase phrase) {
        return phrase.word().isPresent()
                ? phrase.word().get().opens().orElse(phrase.section())
                : phrase.head().is("def") ? "" : phrase.section();
    }

    /** The last argument of the phrase, unless a comma stands behind it. */
    Optional<Argument> argument() {
        if (phrase.isEmpty() || phrase.get().arguments().isEmpty() || (endsWith(",") && !isNested(","))) {
            return Optional.empty();
        }
        List<Argument> all = phrase.get().arguments();
        return Optional.of(all.get(all.size() - 1));
    }

    private boolean isNested(String sign) {
        List<Argument> all = phrase.orElseThrow().arguments();
        List<Token> last = all.get(all.size() - 1).tokens();
        return !last.isEmpty()
                && last.get(last.size() - 1).is(sign)
                && last.get(last.size() - 1).to() == lastCode();
    }

    private boolean endsWith(String sign) {
        int end = lastCode();
        return end > 0 && text.startsWith(sign, end - sign.length());
    }

    /** Offset behind the last character of code before what was begun. */
    private int lastCode() {
        int start = quoted.map(Token::from).orElse(from);
        int end = 0;
        for (Token token : Scan.of(text.substring(0, start))) {
            end = token.kind() == Kind.COMMENT || token.kind() == Kind.LINE_END ? end : token.to();
        }
        return end;
    }

    /** The blanks before the line of the caret. */
    String indent() {
        int start = from;
        while (start > 0 && text.charAt(start - 1) != '\n' && text.charAt(start - 1) != '\r') {
            start--;
        }
        int end = start;
        while (end < from && text.charAt(end) == ' ') {
            end++;
        }
        return text.substring(start, end);
    }

    /** Whether something other than a brace or a comment follows on the line. */
    boolean isFollowed() {
        for (Token token : Scan.of(text)) {
            if (token.from() >= to) {
                return token.kind() != Kind.LINE_END && token.kind() != Kind.COMMENT && !token.is("}");
            }
        }
        return false;
    }

    /** The stage around the caret. */
    Optional<Phrase> stage() {
        return path.stream().filter(p -> p.isWord("stage")).findFirst();
    }
}
