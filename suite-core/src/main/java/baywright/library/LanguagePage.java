package baywright.library;

import baywright.quantity.Unit;
import baywright.script.Functions;
import baywright.script.Param;
import baywright.script.Vocabulary;
import baywright.script.Vocabulary.Section;
import baywright.script.Word;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The reference page of the stage language, made from the declarations of its words. */
public final class LanguagePage {

    private final StringBuilder page = new StringBuilder();

    private LanguagePage() {}

    /** The page as Markdown. */
    public static String text() {
        LanguagePage made = new LanguagePage();
        made.opening();
        made.values();
        StageLanguage.VOCABULARY.sections().forEach(made::section);
        made.functions();
        made.retired(StageLanguage.VOCABULARY);
        made.absent();
        return made.page.toString();
    }

    /** The stage that opens the page. */
    public static String example() {
        try (InputStream in = LanguagePage.class.getResourceAsStream("language-example.groovy")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The entry of one word in the terms of the page, for a terminal; one entry for each section that has it. */
    public static List<String> entries(String word) {
        return StageLanguage.VOCABULARY.sections().stream()
                .flatMap(s -> s.word(word).stream().map(w -> {
                    LanguagePage one = new LanguagePage();
                    one.line("Stands " + s.where() + ".");
                    one.word(w);
                    return one.page.toString();
                }))
                .toList();
    }

    private void line(String text) {
        page.append(text).append('\n');
    }

    private void code(String text) {
        line("```groovy");
        line(text.stripTrailing());
        line("```");
        line("");
    }

    private void opening() {
        line("# The stage language, version " + StageLanguage.VERSION);
        line("");
        line(
                "<!-- Made from the declarations of the words; a test fails when it is stale and says how to renew it. -->");
        line("");
        line("A stage script says what one kind of work is: what a step of it may set, what it finds and leaves on the"
                + " vehicle, how long it takes, what it uses and what is dangerous about it. It is Groovy by grammar and"
                + " declares only; nothing in it can reach a file, a network, a class or the clock.");
        line("");
        code(example());
    }

    private void values() {
        line("## Values");
        line("");
        line("- Numbers `12`, `0.5`; amounts are a number, a dot and a unit: `3.min`, `70.ml`. Units: "
                + Arrays.stream(Unit.values()).map(u -> "`" + u.symbol() + "`").collect(Collectors.joining(", "))
                + ": `um` is a micrometre, `mil` 25.4 of them, `m2` a square metre, `C` a degree Celsius, `each` a piece,"
                + " `ms2` a metre per second squared (vibration), `dB` a level of noise.");
        line(
                "- Texts `'wet'`, or `\"${passes} passes\"` with parts worked out; `true`, `false`; lists `['wet', 'dry']`;"
                        + " maps `[passes: 1]`; ranges with both ends `12.min..14.min`.");
        line(
                "- Arithmetic `+ - * / % **` on numbers, and where it makes sense on amounts; it is decimal and exact to 34"
                        + " digits. `==` `!=` `<` `<=` `>` `>=` `in`, `&&` `||` `!`, `a ? b : c`, `a ?: b`.");
        line(
                "- `def half = { x -> x / 2 }` names a helper; `half(3.min)` works it out. It sees the locals around it, has"
                        + " a value only when it is called, and never calls itself, not even by way of another helper. Without an"
                        + " arrow its one value is called `it`.");
        line(
                "- `def name = value` names a value once. `if (…) { } else { }`, `switch` with a `break` after every case, and"
                        + " `for (x in list) { }` may stand around words.");
        line(
                "- A word's arguments follow it on its line, those by name last: `attended 3.min, 4.min, 8.min, per: 'm2'`."
                        + " Round brackets are needed where a first argument begins with `-` or `[`: `worksOn(['paint'])`.");
        line(
                "- A driver, behind `per:`, says what a figure is taken times: `vehicle` once, `zone` for each zone, `m2` and `m` as"
                        + " measured on the zones, `wheel`, `seat`, `pane`, `panel` and the like as the shape of vehicle has them, `chip`,"
                        + " `spot` and `piece` as the survey or the step counts them.");
        line("");
        for (Word word : StageLanguage.VOCABULARY.functions()) {
            word(word);
        }
    }

    private void section(Section section) {
        line("## Words " + section.where().replaceAll("'([^']*)'", "`$1`"));
        line("");
        line(section.means());
        line("");
        section.words().forEach(this::word);
    }

    private void word(Word word) {
        line("### " + word.name());
        line("");
        line(sentence(word.means()) + (word.since().equals("1.0") ? "" : " Since " + word.since() + "."));
        line("");
        Map<String, String> arguments = new LinkedHashMap<>();
        word.positional().forEach(p -> arguments.put(p.name(), described(p)));
        word.rest().ifPresent(p -> arguments.put(p.name() + " …", "one or more: " + described(p)));
        word.named().forEach(p -> arguments.put("`" + p.name() + ":`", described(p)));
        if (word.opens().isPresent()) {
            arguments.put(
                    "`{ }`",
                    "the words "
                            + StageLanguage.VOCABULARY
                                    .section(word.opens().get())
                                    .where()
                                    .replaceAll("'([^']*)'", "`$1`"));
        }
        if (!arguments.isEmpty()) {
            line("| argument | what it is |");
            line("| --- | --- |");
            arguments.forEach((name, what) -> line("| " + name + " | " + what + " |"));
            line("");
        }
        code(word.example());
    }

    private static String described(Param param) {
        String examples = param.type().one().startsWith("one of")
                ? ""
                : " such as `" + param.type().examples().get(0) + "`";
        String usual = param.usual().map(u -> "; usually `" + shown(u) + "`").orElse("");
        return param.type().one()
                + examples
                + usual
                + (param.required() || param.usual().isPresent() ? "" : "; optional");
    }

    private static String shown(Object usual) {
        if (usual instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return usual instanceof String text
                ? "'" + text + "'"
                : usual.toString().replace(' ', '.');
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    private void functions() {
        line("## Functions of values");
        line("");
        line("| of a | function | what comes out |");
        line("| --- | --- | --- |");
        for (Functions.Info info : Functions.all()) {
            line("| " + info.of() + " | `" + info.example() + "` | " + info.means() + " |");
        }
        line("");
    }

    /** The part of the page on words that are on their way out. */
    static String retiredWords(Vocabulary vocabulary) {
        LanguagePage made = new LanguagePage();
        made.retired(vocabulary);
        return made.page.toString();
    }

    private void retired(Vocabulary vocabulary) {
        line("## Words on their way out");
        line("");
        List<Word> out = Stream.concat(
                        vocabulary.sections().stream().flatMap(s -> s.words().stream()),
                        vocabulary.functions().stream())
                .filter(w -> w.retired().isPresent())
                .toList();
        line(
                "A word retires in steps: a version of the language warns where it stands and names the word to write instead,"
                        + " the word is listed here, and a later version no longer knows it."
                        + (out.isEmpty() ? " At present no word is on its way out." : ""));
        line("");
        if (!out.isEmpty()) {
            line("| instead of | write | warned of since |");
            line("| --- | --- | --- |");
            for (Word word : out) {
                Word.Retired retired = word.retired().orElseThrow();
                line("| `" + word.name() + "` | `" + retired.instead() + "` | " + retired.since() + " |");
            }
            line("");
        }
    }

    private void absent() {
        line("## What there is not");
        line("");
        line(
                "No `import`, annotations, classes, methods, `new`, casts, assignment, `while`, `return`, `?.`, `*.`, regular"
                        + " expressions or letters behind numbers. A file holds at most 64 KiB, 4,000 words and signs, 400 of them in"
                        + " one statement outside its braces; brackets stand at most 24 deep. Texts hold no control, direction or"
                        + " zero-width characters.");
    }
}
