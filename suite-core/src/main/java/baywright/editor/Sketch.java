package baywright.editor;

import baywright.editor.Phrase.Argument;
import baywright.editor.Token.Kind;
import baywright.library.StageLanguage;
import baywright.script.Vocabulary;
import baywright.script.Vocabulary.Section;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The shape of a text by its brackets and words. Any text has one; where it is unfinished or wrong the next line that
 * begins with a word of the language is taken as a new start.
 */
final class Sketch {

    static final Set<String> CONTROL =
            Set.of("if", "else", "for", "while", "switch", "case", "default", "break", "def");

    private static final Vocabulary WORDS = StageLanguage.VOCABULARY;
    private static final Set<String> GO_ON = Set.of(
            ",", "==", "!=", "<", "<=", ">", ">=", "&&", "||", "?", "?:", ":", "+", "-", "*", "/", "%", "**", "=", "..",
            ".", "in");
    private static final Set<String> GO_ON_BEFORE = Set.of(".", "?", ":", "&&", "||", "?:", ")", "]");
    private static final int DEEPEST = 60;
    private static final Set<String> ALL_WORDS = new HashSet<>();

    static {
        WORDS.sections().forEach(s -> ALL_WORDS.addAll(s.names()));
    }

    private final List<Token> tokens;
    private int at;

    private Sketch(List<Token> tokens) {
        this.tokens = tokens;
    }

    /** The statements outside all braces. */
    static List<Phrase> of(String text) {
        List<Token> kept =
                Scan.of(text).stream().filter(t -> t.kind() != Kind.COMMENT).toList();
        Sketch sketch = new Sketch(kept);
        List<Phrase> all = new ArrayList<>();
        while (sketch.at < kept.size()) {
            all.addAll(sketch.body("library", 0));
            // A brace that closes nothing.
            sketch.at++;
        }
        return all;
    }

    private Token peek() {
        return at < tokens.size() ? tokens.get(at) : null;
    }

    private boolean peekIs(String sign) {
        return at < tokens.size() && tokens.get(at).is(sign);
    }

    private List<Phrase> body(String section, int depth) {
        List<Phrase> phrases = new ArrayList<>();
        while (at < tokens.size() && !peekIs("}")) {
            Token next = peek();
            if (next.kind() == Kind.LINE_END || next.is(";")) {
                at++;
            } else {
                phrases.add(phrase(section, depth));
            }
        }
        return phrases;
    }

    private Phrase phrase(String section, int depth) {
        Token head = peek();
        boolean control = head.isName() && CONTROL.contains(head.text());
        Optional<Word> word = control || !head.isName() ? Optional.empty() : word(section, head.text());
        boolean call = word.isPresent() && !expressionFollows();
        return new Reading(head, section, call ? word : Optional.empty(), depth).read();
    }

    private boolean expressionFollows() {
        Token next = at + 1 < tokens.size() ? tokens.get(at + 1) : null;
        return next != null && (next.is(".") || next.is("="));
    }

    private static Optional<Word> word(String section, String name) {
        if (section.isEmpty()) {
            return WORDS.sectionsWith(name).stream().findFirst().flatMap(s -> s.word(name));
        }
        return WORDS.section(section).word(name);
    }

    /** Whether the line that begins at an index begins with a word that has an argument, braces or the end behind it. */
    private boolean startsAnew(int index) {
        if (!tokens.get(index).isName() || !ALL_WORDS.contains(tokens.get(index).text())) {
            return false;
        }
        if (index + 1 == tokens.size()) {
            return true;
        }
        Token behind = tokens.get(index + 1);
        return behind.isText() || behind.kind() == Kind.NUMBER || behind.is("{") || behind.is("(");
    }

    /** One statement on its way through the tokens. */
    private final class Reading {
        private final Token head;
        private final String section;
        private final Optional<Word> word;
        private final int depth;
        private final List<Argument> arguments = new ArrayList<>();
        private final List<Token> parameters = new ArrayList<>();
        private final List<Phrase> body = new ArrayList<>();
        private List<Token> current = new ArrayList<>();
        private Optional<Token> name = Optional.empty();
        private int position;
        private int brackets;
        private int ternaries;
        private boolean wrapped;
        private boolean braces;
        private boolean bracesOpen;
        private int to;

        Reading(Token head, String section, Optional<Word> word, int depth) {
            this.head = head;
            this.section = section;
            this.word = word;
            this.depth = depth;
            this.to = head.to();
        }

        Phrase read() {
            boolean control = head.isName() && CONTROL.contains(head.text());
            boolean call = word.isPresent() || (head.isName() && !control && !expressionFollows());
            if (call || control) {
                at++;
            }
            if (call && peekIs("(") && peek().from() - head.to() <= 1) {
                wrapped = true;
                brackets = 1;
                at++;
            }
            boolean open = !walk(call, control);
            flush();
            return new Phrase(head, section, word, arguments, parameters, body, braces, open, bracesOpen, to);
        }

        /** Takes tokens up to the end of the statement; false when the text ends first. */
        private boolean walk(boolean call, boolean control) {
            while (at < tokens.size()) {
                Token next = peek();
                if (next.is("}") || (next.is(";") && brackets == 0)) {
                    return true;
                }
                if (next.kind() == Kind.LINE_END) {
                    if (endsHere()) {
                        return true;
                    }
                    at++;
                    continue;
                }
                if (next.is("{")) {
                    if (block(control)) {
                        return true;
                    }
                    continue;
                }
                at++;
                to = next.to();
                boolean label = next.is(":") && brackets == 0 && (head.is("case") || head.is("default"));
                if (label) {
                    return true;
                }
                take(next, call);
            }
            return false;
        }

        private void take(Token next, boolean call) {
            int own = wrapped ? 1 : 0;
            if (next.is("(") || next.is("[")) {
                brackets++;
            } else if (next.is(")") || next.is("]")) {
                brackets--;
                if (wrapped && brackets == 0) {
                    wrapped = false;
                    flush();
                    return;
                }
                brackets = Math.max(brackets, 0);
            } else if (brackets == own && call && next.is(",")) {
                boolean named = name.isPresent();
                flush();
                position += named ? 0 : 1;
                return;
            } else if (brackets == own && next.is("?")) {
                ternaries++;
            } else if (brackets == own && next.is(":") && ternaries > 0) {
                ternaries--;
            } else if (brackets == own && call && next.is(":") && current.size() == 1) {
                name = Optional.of(current.get(0));
                current = new ArrayList<>();
                return;
            } else if (next.is("=") && head.is("def") && current.size() == 1) {
                name = Optional.of(current.get(0));
                current = new ArrayList<>();
                return;
            }
            current.add(next);
        }

        /** Takes braces; true when the statement ends with them. */
        private boolean block(boolean control) {
            at++;
            braces = true;
            String inside = word.isPresent() ? word.get().opens().orElse(section) : head.is("def") ? "" : section;
            int arrow = closureArrow();
            if (arrow > 0) {
                tokens.subList(at, arrow).stream().filter(Token::isName).forEach(parameters::add);
                at = arrow + 1;
            }
            if (depth < DEEPEST) {
                body.addAll(Sketch.this.body(inside, depth + 1));
            } else {
                skipBraces();
            }
            Token close = peek();
            bracesOpen |= close == null;
            if (close != null) {
                to = close.to();
                at++;
            }
            boolean ends = brackets == 0 && (control || word.isPresent()) && !head.is("def");
            return ends && close != null;
        }

        private void skipBraces() {
            for (int open = 1; at < tokens.size(); at++) {
                open += peekIs("{") ? 1 : peekIs("}") ? -1 : 0;
                if (open == 0) {
                    return;
                }
            }
        }

        /** Index of the arrow behind a closure's parameters, or 0. */
        private int closureArrow() {
            for (int i = at; i < Math.min(at + 12, tokens.size()); i++) {
                Token t = tokens.get(i);
                if (t.is("->")) {
                    return i;
                }
                if (!t.isName() && !t.is(",")) {
                    return 0;
                }
            }
            return 0;
        }

        private boolean endsHere() {
            int next = at;
            while (next < tokens.size() && tokens.get(next).kind() == Kind.LINE_END) {
                next++;
            }
            Token before = tokens.get(at - 1);
            Token behind = next < tokens.size() ? tokens.get(next) : null;
            if (behind != null && startsAnew(next)) {
                return true;
            }
            if (brackets > 0) {
                return false;
            }
            boolean goesOn = GO_ON.contains(before.text()) && before.kind() != Kind.TEXT;
            return !goesOn && (behind == null || !GO_ON_BEFORE.contains(behind.text()) || behind.isText());
        }

        private void flush() {
            if (!current.isEmpty() || name.isPresent()) {
                arguments.add(new Argument(name, name.isPresent() ? -1 : position, current));
                current = new ArrayList<>();
                name = Optional.empty();
            }
        }
    }

    /** The section of this name, if it is one. */
    static Optional<Section> section(String name) {
        return name.isEmpty() ? Optional.empty() : Optional.of(WORDS.section(name));
    }
}
