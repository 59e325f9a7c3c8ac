package baywright.editor;

import baywright.editor.Known.Thing;
import baywright.editor.Phrase.Argument;
import baywright.editor.Token.Kind;
import baywright.library.Library;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Param;
import baywright.script.Place;
import baywright.script.Type;
import baywright.script.Type.Naming;
import baywright.script.Type.Use;
import baywright.script.Value;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What may stand at the caret: words of the block around it, arguments by name that are not given yet, ids where an
 * argument wants one, values of a fact or an input, units behind a number. The text may be unfinished anywhere.
 */
public final class Completion {

    private static final Pattern QUOTED = Pattern.compile("'([^']*)'");
    private static final Place NOWHERE = Place.ofFile("");

    private final Caret caret;
    private final Known known;
    private final Map<String, Set<String>> own = new LinkedHashMap<>();
    private final Ranking ranking;

    private Completion(String text, int offset, Known known) {
        this.caret = Caret.at(text, offset);
        this.known = known;
        this.ranking = new Ranking(caret.begun());
    }

    /** The same as {@link #at(String, int, Known)} with what a library declares. */
    public static List<Proposal> at(String text, int offset, Library names) {
        return at(text, offset, Known.of(names));
    }

    /**
     * The proposals for an offset of a text, best first.
     *
     * @param text   any text
     * @param offset from 0 to its length; one outside counts as the nearer end
     * @param known  the ids that there are beside those that the text itself declares
     */
    public static List<Proposal> at(String text, int offset, Known known) {
        Completion completion = new Completion(text, offset, known);
        if (!completion.caret.silent()) {
            completion.propose();
        }
        return completion.ranking.best();
    }

    private void propose() {
        learn(Sketch.of(caret.text()), "");
        if (caret.phrase().isEmpty()) {
            if (caret.quoted().isEmpty()) {
                words();
            }
            return;
        }
        Phrase phrase = caret.phrase().get();
        List<Token> tokens = caret.argument().map(Argument::tokens).orElse(List.of());
        if (isUnit(tokens)) {
            units(phrase);
        } else if (!inside(phrase, tokens)) {
            argument(phrase);
        }
    }

    /** Ids that the text declares, inputs only of the stage around the caret. */
    private void learn(List<Phrase> phrases, String stage) {
        for (Phrase phrase : phrases) {
            String around = phrase.isWord("stage") ? phrase.label() : stage;
            phrase.word()
                    .filter(w -> !w.positional().isEmpty())
                    .flatMap(w -> w.positional().get(0).type().naming())
                    .filter(n -> n.use() == Use.DECLARES && !phrase.label().isEmpty())
                    .filter(n -> !n.kind().equals("input") || around.equals(stageLabel()))
                    .ifPresent(n ->
                            own.computeIfAbsent(n.kind(), k -> new HashSet<>()).add(phrase.label()));
            learn(phrase.body(), around);
        }
    }

    private String stageLabel() {
        return caret.stage().map(Phrase::label).orElse("");
    }

    private void words() {
        Sketch.section(caret.section()).ifPresent(section -> {
            for (Word word : section.words()) {
                Insertion insertion =
                        caret.isFollowed() ? Insertion.of(word.name()) : Insertion.of(word, caret.indent());
                add(insertion, word.name(), "word", word.means());
            }
        });
    }

    private void add(Insertion insertion, String label, String kind, String detail) {
        ranking.add(insertion.at(caret.from(), caret.to(), label, kind, detail));
    }

    private static boolean isUnit(List<Token> tokens) {
        int n = tokens.size();
        return n >= 2 && tokens.get(n - 1).is(".") && tokens.get(n - 2).kind() == Kind.NUMBER;
    }

    private void units(Phrase phrase) {
        Optional<Type> wanted = caret.argument().flatMap(phrase::param).map(Param::type);
        boolean single = caret.argument().map(a -> a.tokens().size() == 2).orElse(false);
        Arrays.stream(Unit.values())
                .filter(u -> !single
                        || wanted.isEmpty()
                        || fitsAnyUnit(wanted.get())
                        || wanted.get().fits(Value.of(Quantity.of(1, u), NOWHERE)))
                .forEach(u -> add(
                        Insertion.of(u.symbol()),
                        u.symbol(),
                        "unit",
                        u.dimension().example()));
        if (Unit.of(caret.begun()).isPresent() && phrase.word().isPresent()) {
            named(phrase, true);
        }
    }

    /** Whether the type is no single quantity, so that units of every kind may stand in it. */
    private static boolean fitsAnyUnit(Type type) {
        return Arrays.stream(Unit.values()).noneMatch(u -> type.fits(Value.of(Quantity.of(1, u), NOWHERE)));
    }

    /** Proposes for brackets, functions and comparisons inside an argument; false when the caret is in none of them. */
    private boolean inside(Phrase phrase, List<Token> tokens) {
        int n = tokens.size();
        if (n == 0) {
            return false;
        }
        Token last = tokens.get(n - 1);
        if (last.is("(") && n >= 2 && References.function(tokens.get(n - 2)).isPresent()) {
            ids(References.function(tokens.get(n - 2)).get().kind(), Set.of());
            return true;
        }
        if (last.is("==") || last.is("!=")) {
            choices(asked(tokens, n - 2));
            return true;
        }
        Optional<Naming> keys = caret.argument()
                .flatMap(phrase::param)
                .flatMap(p -> p.type().naming())
                .filter(k -> k.use() == Use.KEYS);
        if (keys.isPresent() && (last.is("[") || last.is(","))) {
            keys(keys.get().kind(), tokens);
            return true;
        }
        if (keys.isPresent() && last.is(":") && n >= 2) {
            choices(Optional.of(Map.entry(keys.get().kind(), Phrase.plain(tokens.get(n - 2)))));
            return true;
        }
        return false;
    }

    /** The fact or input that ends at an index: {@code surveyed('hardness')} or a plain name. */
    private static Optional<Map.Entry<String, String>> asked(List<Token> tokens, int end) {
        if (end >= 3 && tokens.get(end).is(")") && Expression.asks(tokens, end - 3)) {
            return References.function(tokens.get(end - 3))
                    .map(n -> Map.entry(n.kind(), tokens.get(end - 1).content()));
        }
        return end >= 0 && tokens.get(end).isName()
                ? Optional.of(Map.entry("input", tokens.get(end).text()))
                : Optional.empty();
    }

    private void choices(Optional<Map.Entry<String, String>> asked) {
        if (asked.isEmpty()) {
            return;
        }
        String id = asked.get().getValue();
        boolean fact = asked.get().getKey().equals("fact");
        List<String> choices = fact
                ? known.find("fact", id).map(Thing::choices).orElse(List.of())
                : caret.stage().map(s -> choicesOf(s, id)).orElse(List.of());
        choices.forEach(c -> text(c, "value", "a value of '" + id + "'"));
    }

    private static List<String> choicesOf(Phrase stage, String input) {
        return stage.body().stream()
                .filter(b -> b.isWord("inputs"))
                .flatMap(b -> b.body().stream())
                .filter(i -> i.label().equals(input))
                .flatMap(i -> i.arguments().stream())
                .filter(a ->
                        a.name().isPresent() && Phrase.plain(a.name().get()).equals("from"))
                .flatMap(a -> a.tokens().stream())
                .filter(Token::isText)
                .map(Token::content)
                .toList();
    }

    private void keys(String kind, List<Token> tokens) {
        Set<String> given = new HashSet<>();
        for (int i = 0; i + 1 < tokens.size(); i++) {
            if (tokens.get(i + 1).is(":")) {
                given.add(Phrase.plain(tokens.get(i)));
            }
        }
        for (Thing thing : things(kind)) {
            if (!given.contains(thing.id())) {
                String key =
                        caret.quoted().isPresent() || !thing.id().contains("-") ? thing.id() : "'" + thing.id() + "'";
                add(Insertion.of(key + closing() + (caret.isFollowed() ? "" : ": ")), thing.id(), kind, thing.title());
            }
        }
    }

    private void argument(Phrase phrase) {
        boolean fresh = caret.argument().isEmpty();
        Optional<Argument> argument = caret.argument();
        boolean begins = fresh
                || argument.get().tokens().isEmpty()
                || !isComplete(argument.get().tokens());
        if (begins) {
            values(phrase, argument);
        }
        if (caret.quoted().isEmpty() && phrase.word().isPresent() && (fresh || !begins)) {
            named(phrase, !begins);
        }
    }

    private static boolean isComplete(List<Token> tokens) {
        Token last = tokens.get(tokens.size() - 1);
        return (last.kind() != Kind.SIGN && !last.is("in")) || last.is(")") || last.is("]");
    }

    private void values(Phrase phrase, Optional<Argument> argument) {
        Optional<Param> param = argument.isPresent()
                ? phrase.param(argument.get())
                : phrase.word().flatMap(w -> Phrase.param(w, positions(phrase)));
        param.ifPresent(p -> {
            Type type = p.type();
            type.naming()
                    .filter(n -> n.use() != Use.KEYS && n.use() != Use.DECLARES)
                    .ifPresent(n -> {
                        if (n.kind().equals("value")) {
                            choices(read().map(f -> Map.entry("fact", f)));
                        } else {
                            ids(n.kind(), given(phrase));
                        }
                    });
            if (type.one().startsWith("one of")) {
                Matcher choice = QUOTED.matcher(type.one());
                while (choice.find()) {
                    text(choice.group(1), "value", "");
                }
            } else if (type.equals(Type.YES_NO) && caret.quoted().isEmpty()) {
                List.of("true", "false").forEach(v -> add(Insertion.of(v), v, "value", ""));
            }
        });
        boolean takesText = param.isPresent() && param.get().type().one().equals(Type.TEXT.one());
        if (caret.quoted().isEmpty() && caret.stage().isPresent() && !takesText) {
            expressions(phrase);
        }
    }

    /** How many arguments by position stand before the caret. */
    private static int positions(Phrase phrase) {
        return (int) phrase.arguments().stream().filter(a -> a.name().isEmpty()).count();
    }

    private static Set<String> given(Phrase phrase) {
        Set<String> given = new HashSet<>();
        phrase.arguments().stream()
                .flatMap(a -> a.tokens().stream())
                .filter(Token::isText)
                .forEach(t -> given.add(t.content()));
        return given;
    }

    /** The fact that the factor around the caret reads. */
    private Optional<String> read() {
        return caret.path().stream()
                .flatMap(p -> p.body().stream())
                .filter(p -> p.isWord("reads"))
                .map(Phrase::label)
                .findFirst();
    }

    private void expressions(Phrase phrase) {
        boolean inputs = phrase.section().equals("inputs") || phrase.isWord("example");
        if (inputs) {
            return;
        }
        for (String input : own.getOrDefault("input", Set.of())) {
            String code = input.contains("-") ? "input('" + input + "')" : input;
            add(Insertion.of(code), input, "input", "an input of this stage");
        }
        if (phrase.head().is("if")
                || phrase.head().is("switch")
                || phrase.head().is("else")) {
            things("fact")
                    .forEach(f -> add(
                            Insertion.of("surveyed('" + f.id() + "')"),
                            "surveyed '" + f.id() + "'",
                            "fact",
                            f.title()));
        }
    }

    /** Arguments by name; {@code behind} a whole argument they bring their comma. */
    private void named(Phrase phrase, boolean behind) {
        Set<String> given = new HashSet<>();
        whole(Sketch.of(caret.text()), phrase.from())
                .orElse(phrase)
                .arguments()
                .forEach(a -> a.name().ifPresent(n -> given.add(Phrase.plain(n))));
        boolean gap = behind && caret.begun().isEmpty() && caret.text().startsWith(" ", caret.from() - 1);
        for (Param param : phrase.word().orElseThrow().named()) {
            if (given.contains(param.name())) {
                continue;
            }
            String label = param.name() + ":";
            String detail = WordEntry.parameter(param).described();
            if (!behind) {
                add(Insertion.of(param, ""), label, "parameter", detail);
            } else {
                int from = caret.begun().isEmpty() ? caret.from() : caret.to();
                int start = gap ? from - 1 : from;
                ranking.addBehind(Insertion.of(param, ", ").at(start, from, label, "parameter", detail));
            }
        }
    }

    private static Optional<Phrase> whole(List<Phrase> phrases, int from) {
        for (Phrase phrase : phrases) {
            if (phrase.from() == from) {
                return Optional.of(phrase);
            }
            if (phrase.from() < from && from < phrase.to()) {
                return whole(phrase.body(), from);
            }
        }
        return Optional.empty();
    }

    private void ids(String kind, Set<String> given) {
        String begun = caret.quoted().map(Token::content).orElse("");
        for (Thing thing : things(kind)) {
            if (!given.contains(thing.id()) || thing.id().equals(begun)) {
                text(thing.id(), kind, thing.title());
            }
        }
    }

    private List<Thing> things(String kind) {
        Map<String, Thing> all = new LinkedHashMap<>();
        own.getOrDefault(kind, Set.of()).forEach(id -> all.put(id, new Thing(id, "", "", List.of())));
        known.all(kind).forEach(t -> all.put(t.id(), t));
        return new ArrayList<>(all.values());
    }

    private void text(String content, String kind, String detail) {
        String quoted = caret.quoted().isPresent() ? content + closing() : "'" + content + "'";
        add(Insertion.of(quoted), content, kind, detail);
    }

    /** The quote that the text around the caret still lacks. */
    private String closing() {
        return caret.quoted()
                .filter(t -> !t.closed())
                .map(t -> t.text().substring(0, 1))
                .orElse("");
    }
}
