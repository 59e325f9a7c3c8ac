package baywright.editor;

import java.util.List;
import java.util.Set;

/** What a token means by what stands beside it. */
final class Expression {

    private static final Set<String> COMPARES = Set.of("==", "!=", "<", ">", "<=", ">=");

    private Expression() {}

    /** Whether the value of a token can become the value of the whole: not one side of a comparison, not a key. */
    static boolean isValue(List<Token> tokens, int i) {
        if (is(tokens, i - 1, COMPARES) || is(tokens, i + 1, COMPARES) || is(tokens, i - 1, Set.of("."))) {
            return false;
        }
        if (is(tokens, i - 1, Set.of("in")) || is(tokens, i + 1, Set.of("in"))) {
            return is(tokens, i - 1, Set.of("in")) && i == 1;
        }
        if (is(tokens, i - 1, Set.of("(")) && i > 1 && tokens.get(i - 2).isName()) {
            // What a function is asked for is not what it answers.
            return false;
        }
        return !inListOfComparison(tokens, i);
    }

    private static boolean inListOfComparison(List<Token> tokens, int i) {
        int depth = 0;
        for (int k = i - 1; k > 0; k--) {
            if (tokens.get(k).is("]")) {
                depth++;
            } else if (tokens.get(k).is("[")) {
                depth--;
                if (depth < 0) {
                    return tokens.get(k - 1).is("in") && k > 1;
                }
            }
        }
        return false;
    }

    /** Whether a function of the vocabulary is asked here for a text: {@code surveyed('hardness')}. */
    static boolean asks(List<Token> tokens, int i) {
        return i + 2 < tokens.size()
                && tokens.get(i).isName()
                && tokens.get(i + 1).is("(")
                && tokens.get(i + 2).isText();
    }

    /** Whether a name is read here: it is no key, no part of something and no function. */
    static boolean isRead(List<Token> tokens, int i) {
        if (!tokens.get(i).isName() || is(tokens, i - 1, Set.of("."))) {
            return false;
        }
        boolean key = is(tokens, i + 1, Set.of(":")) && is(tokens, i - 1, Set.of("[", ","));
        return !key && !is(tokens, i + 1, Set.of("(", "="));
    }

    private static boolean is(List<Token> tokens, int i, Set<String> signs) {
        return i >= 0
                && i < tokens.size()
                && !tokens.get(i).isText()
                && signs.contains(tokens.get(i).text());
    }
}
