package baywright.editor;

import baywright.editor.Known.Thing;
import baywright.editor.Phrase.Argument;
import baywright.editor.Token.Kind;
import baywright.library.Library;
import baywright.script.Param;
import baywright.script.Type;
import baywright.script.Word;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a part of a script means, for whoever points at it.
 *
 * @param from  offset of its first character
 * @param to    offset behind its last one
 * @param title what it is: {@code state 'washed'}
 * @param text  what it means, in one or more lines; may be empty
 */
public record Hover(int from, int to, String title, String text) {

    /** The same as {@link #at(String, int, Known)} with what a library declares. */
    public static Optional<Hover> at(String text, int offset, Library names) {
        return at(text, offset, Known.of(names));
    }

    /**
     * What stands at an offset: a word, an argument's name, an id, a number; empty where nothing has a meaning of its own.
     *
     * @param text  any text
     * @param known the ids that there are
     */
    public static Optional<Hover> at(String text, int offset, Known known) {
        return Scan.of(text).stream()
                .filter(t -> t.from() <= offset && (offset < t.to() || (t.isName() && offset == t.to())))
                .filter(t -> t.kind() != Kind.COMMENT && t.kind() != Kind.LINE_END)
                .reduce((a, b) -> b)
                .flatMap(t -> new Reader(text, known, t).read());
    }

    /** Reads one token in its surroundings. */
    private record Reader(String text, Known known, Token token) {

        Optional<Hover> read() {
            List<Phrase> all = Sketch.of(text);
            return id().or(() -> phrase(all).flatMap(this::inPhrase));
        }

        private Hover hover(String title, String meaning) {
            return new Hover(token.from(), token.to(), title, meaning);
        }

        private Optional<Hover> id() {
            return References.of(Map.of("", text)).stream()
                    .filter(r -> r.from() == token.from() && r.to() == token.to())
                    .findFirst()
                    .flatMap(this::thing);
        }

        private Optional<Hover> thing(Reference reference) {
            String title = reference.kind() + " '" + reference.id() + "'";
            if (reference.kind().equals("input")) {
                return Optional.of(hover(title, input(reference)));
            }
            Optional<Thing> thing = known.find(reference.kind(), reference.id());
            if (thing.isEmpty() && reference.form() == Reference.Form.LOOSE_TEXT) {
                return Optional.empty();
            }
            return Optional.of(hover(
                    title,
                    thing.map(t -> t.detail().isEmpty() ? t.title() : t.title() + "\n" + t.detail())
                            .orElse("")));
        }

        /** The declaration of an input as it is written. */
        private String input(Reference reference) {
            return Sketch.of(text).stream()
                    .filter(s -> s.isWord("stage") && s.label().equals(reference.stage()))
                    .flatMap(s -> s.body().stream())
                    .filter(b -> b.isWord("inputs"))
                    .flatMap(b -> b.body().stream())
                    .filter(i -> i.label().equals(reference.id()))
                    .map(i -> text.substring(i.from(), i.to()))
                    .findFirst()
                    .orElse("");
        }

        private Optional<Phrase> phrase(List<Phrase> phrases) {
            for (Phrase phrase : phrases) {
                if (phrase.from() <= token.from() && token.from() < phrase.to()) {
                    return phrase(phrase.body()).or(() -> Optional.of(phrase));
                }
            }
            return Optional.empty();
        }

        private Optional<Hover> inPhrase(Phrase phrase) {
            if (phrase.head().equals(token) && phrase.word().isPresent()) {
                Word word = phrase.word().get();
                String where = Sketch.section(phrase.section())
                        .map(s -> "stands " + s.where())
                        .orElse("");
                return Optional.of(hover(word.name(), told(WordEntry.of(word, where))));
            }
            for (Argument argument : phrase.arguments()) {
                Optional<Param> param = phrase.param(argument);
                if (argument.name().isPresent() && argument.name().get().equals(token)) {
                    return param.map(p -> hover(
                            p.name() + ": of " + phrase.head().text(),
                            WordEntry.parameter(p).described()));
                }
                int i = argument.tokens().indexOf(token);
                if (i >= 0 && isNumber(argument.tokens(), i)) {
                    return param.flatMap(p -> number(phrase, argument, p));
                }
            }
            return function();
        }

        private Optional<Hover> function() {
            List<WordEntry> entries =
                    token.isName() && References.function(token).isPresent() ? WordEntry.of(token.text()) : List.of();
            return entries.stream().findFirst().map(e -> hover(e.name(), told(e)));
        }

        private static boolean isNumber(List<Token> tokens, int i) {
            boolean unit = tokens.get(i).isName()
                    && i >= 2
                    && tokens.get(i - 1).is(".")
                    && tokens.get(i - 2).kind() == Kind.NUMBER;
            return tokens.get(i).kind() == Kind.NUMBER || unit;
        }

        /** A number by what its argument is for: {@code least hands-on time of one person, per m²}. */
        private Optional<Hover> number(Phrase phrase, Argument argument, Param param) {
            if (param.type().naming().isPresent()) {
                return Optional.empty();
            }
            Word word = phrase.word().orElseThrow();
            String named = argument.name().isPresent() ? "" : clause(word.means());
            String per =
                    word.param("per").map(p -> ", per " + driver(phrase, p)).orElse("");
            String times = phrase.arguments().stream()
                    .filter(a -> a.name().isPresent() && a.name().get().is("times"))
                    .filter(a -> !a.tokens().isEmpty())
                    .map(a -> ", times " + text.substring(a.tokens().get(0).from(), a.to()))
                    .findFirst()
                    .orElse("");
            String meaning = named.isEmpty()
                    ? WordEntry.parameter(param).described()
                    : param.name() + ": " + named + (param.type().equals(Type.TEXT) ? "" : per + times);
            String written = text.substring(argument.tokens().get(0).from(), argument.to());
            return Optional.of(hover(written + " of " + word.name(), meaning));
        }

        private static String driver(Phrase phrase, Param per) {
            String given = phrase.named("per");
            String driver = given.isEmpty() ? per.usual().map(Object::toString).orElse("") : given;
            return driver.equals("m2") ? "m²" : driver;
        }

        /** The first part of what a word says, up to its details. */
        private static String clause(String means) {
            int end = means.length();
            for (String stop : List.of(":", ";", ", for each", " for each unit")) {
                int at = means.indexOf(stop);
                end = at >= 0 ? Math.min(end, at) : end;
            }
            return means.substring(0, end);
        }

        private static String told(WordEntry entry) {
            StringBuilder lines = new StringBuilder(entry.means());
            entry.parameters()
                    .forEach(
                            p -> lines.append('\n').append(p.name()).append(" ").append(p.described()));
            return lines.append('\n')
                    .append(entry.where())
                    .append("; since ")
                    .append(entry.since())
                    .toString();
        }
    }
}
