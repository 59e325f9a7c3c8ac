package baywright.editor;

import baywright.library.StageLanguage;
import baywright.quantity.Quantity;
import baywright.script.Functions;
import baywright.script.Nearest;
import baywright.script.Param;
import baywright.script.Vocabulary;
import baywright.script.Vocabulary.Section;
import baywright.script.Word;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The reference of one word in one place where it may stand.
 *
 * @param name       the word
 * @param where      where it may stand, in words: {@code stands in 'before { }'}
 * @param means      what it says
 * @param since      first version of the language that has it
 * @param parameters its arguments in order
 * @param example    a line or block that uses it
 */
public record WordEntry(
        String name, String where, String means, String since, List<Parameter> parameters, String example) {

    /**
     * One argument.
     *
     * @param name     its name; one that is given by name ends with a colon
     * @param type     what it may be, with an example
     * @param required whether a script must give it
     * @param usual    its value where a script does not give it, as written in a script; empty where there is none
     */
    public record Parameter(String name, String type, boolean required, String usual) {

        /** Type and usual value in one sentence. */
        public String described() {
            return type + (usual.isEmpty() ? required ? "" : "; optional" : "; usually " + usual);
        }
    }

    public WordEntry {
        parameters = List.copyOf(parameters);
    }

    /** The entries of a word, one for each section that has it and one more where it is a function; empty for no word. */
    public static List<WordEntry> of(String name) {
        Vocabulary words = StageLanguage.VOCABULARY;
        List<WordEntry> entries = new ArrayList<>();
        for (Section section : words.sectionsWith(name)) {
            entries.add(of(section.word(name).orElseThrow(), "stands " + section.where()));
        }
        words.function(name).ifPresent(w -> entries.add(of(w, "stands wherever a value may inside a stage")));
        Functions.all().stream()
                .filter(f -> f.name().equals(name))
                .forEach(f -> entries.add(new WordEntry(
                        name, "stands behind a " + f.of() + " and a dot", f.means(), "1.0", List.of(), f.example())));
        return entries;
    }

    /** The entries of the words that take an argument of this name, in the order of the language. */
    public static List<WordEntry> taking(String argument) {
        Vocabulary words = StageLanguage.VOCABULARY;
        List<WordEntry> entries = new ArrayList<>();
        for (Section section : words.sections()) {
            for (String name : section.names()) {
                Word word = section.word(name).orElseThrow();
                if (word.named().stream().anyMatch(p -> p.name().equals(argument))) {
                    entries.add(of(word, "stands " + section.where()));
                }
            }
        }
        return entries;
    }

    /** The entry of a word in one section. */
    static WordEntry of(Word word, String where) {
        List<Parameter> parameters = new ArrayList<>();
        word.positional().forEach(p -> parameters.add(parameter(p, p.name())));
        word.rest().ifPresent(p -> parameters.add(new Parameter(p.name() + " …", "one or more: " + type(p), true, "")));
        word.named().forEach(p -> parameters.add(parameter(p, p.name() + ":")));
        word.opens()
                .ifPresent(s -> parameters.add(new Parameter(
                        "{ }",
                        "the words " + StageLanguage.VOCABULARY.section(s).where(),
                        true,
                        "")));
        return new WordEntry(word.name(), where, word.means(), word.since(), parameters, word.example());
    }

    /** The word that a mistyped one most likely meant. */
    public static Optional<String> nearest(String name) {
        TreeSet<String> all = new TreeSet<>();
        StageLanguage.VOCABULARY.sections().forEach(s -> all.addAll(s.names()));
        StageLanguage.VOCABULARY.functions().forEach(w -> all.add(w.name()));
        Functions.all().forEach(f -> all.add(f.name()));
        return Nearest.to(name, all);
    }

    private static Parameter parameter(Param param, String name) {
        return new Parameter(
                name,
                type(param),
                param.required(),
                param.usual().map(WordEntry::written).orElse(""));
    }

    static Parameter parameter(Param param) {
        return parameter(param, param.name());
    }

    private static String type(Param param) {
        String one = param.type().one();
        boolean plain = one.startsWith("one of") || one.equals("true or false");
        return plain ? one : one + " such as " + param.type().examples().get(0);
    }

    /** A usual value as a script writes it. */
    static String written(Object usual) {
        if (usual instanceof String text) {
            return "'" + text + "'";
        }
        if (usual instanceof Quantity quantity) {
            return quantity.amount().toPlainString() + "." + quantity.unit().symbol();
        }
        return usual instanceof BigDecimal number ? number.toPlainString() : usual.toString();
    }
}
