package baywright.editor;

import baywright.script.Param;
import baywright.script.Word;
import java.util.List;
import java.util.Optional;

/**
 * A statement as far as it can be made out: a word with its arguments and what stands in its braces, or a condition, a
 * loop, a definition, an expression.
 *
 * @param head      its first token; a word of the language when {@code word} is there
 * @param section   the section of the vocabulary in which it stands; empty where that is unknown
 * @param word      the declaration of its word
 * @param arguments in order of writing; a condition, a loop and an expression have one
 * @param parameters names before the arrow in its braces
 * @param body      what stands in its braces
 * @param braces    whether it has braces
 * @param open      whether the text ends inside it
 * @param bracesOpen whether its braces are not closed
 * @param to        offset behind its last character
 */
record Phrase(
        Token head,
        String section,
        Optional<Word> word,
        List<Argument> arguments,
        List<Token> parameters,
        List<Phrase> body,
        boolean braces,
        boolean open,
        boolean bracesOpen,
        int to) {

    /**
     * One argument.
     *
     * @param name     its name, if it is given by name; the local's for a definition
     * @param position from 0 among those by position; -1 by name
     * @param tokens   its tokens without the name, comments and line ends
     */
    record Argument(Optional<Token> name, int position, List<Token> tokens) {
        Argument {
            tokens = List.copyOf(tokens);
        }

        int from() {
            return name.map(Token::from)
                    .orElseGet(() -> tokens.isEmpty() ? 0 : tokens.get(0).from());
        }

        int to() {
            return tokens.isEmpty()
                    ? name.map(Token::to).orElse(0)
                    : tokens.get(tokens.size() - 1).to();
        }
    }

    Phrase {
        arguments = List.copyOf(arguments);
        parameters = List.copyOf(parameters);
        body = List.copyOf(body);
    }

    int from() {
        return head.from();
    }

    /** The declaration of an argument's parameter, if its word has one. */
    Optional<Param> param(Argument argument) {
        return word.flatMap(w -> argument.name().isPresent()
                ? w.named().stream()
                        .filter(p -> p.name().equals(plain(argument.name().get())))
                        .findFirst()
                : param(w, argument.position()));
    }

    /** The parameter at a position, from 0. */
    static Optional<Param> param(Word word, int position) {
        return position < word.positional().size()
                ? Optional.of(word.positional().get(position))
                : word.rest();
    }

    static String plain(Token name) {
        return name.isText() ? name.content() : name.text();
    }

    /** The text given at the first position, or the empty text. */
    String label() {
        return arguments.stream()
                .filter(a -> a.position() == 0 && !a.tokens().isEmpty())
                .map(a -> a.tokens().get(0))
                .filter(Token::isText)
                .map(Token::content)
                .findFirst()
                .orElse("");
    }

    /** The text given to the argument with this name, or the empty text. */
    String named(String name) {
        return arguments.stream()
                .filter(a -> a.name().isPresent() && plain(a.name().get()).equals(name))
                .flatMap(a -> a.tokens().stream().limit(1))
                .filter(Token::isText)
                .map(Token::content)
                .findFirst()
                .orElse("");
    }

    boolean isWord(String name) {
        return word.isPresent() && word.get().name().equals(name);
    }
}
