package baywright.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The declaration of a word of the language. The evaluator's checks, the messages, completion and the reference page
 * all read it and nothing else.
 *
 * @param name       as written
 * @param positional arguments by position, the optional ones last
 * @param rest       arguments of one type, at least one, behind those
 * @param named      arguments by name
 * @param opens      name of the section whose words may stand in its braces; empty: it takes no braces
 * @param means      in words, for its author
 * @param since      first version of the language that has it
 * @param example    a line or block that uses it
 * @param retired    when the word is on its way out; else empty
 */
public record Word(
        String name,
        List<Param> positional,
        Optional<Param> rest,
        List<Param> named,
        Optional<String> opens,
        String means,
        String since,
        String example,
        Optional<Retired> retired) {

    /**
     * A word on its way out: it still works, with a warning.
     *
     * @param since   first version of the language that warns
     * @param instead the word to write in its place
     */
    public record Retired(String since, String instead) {}

    private static final List<String> COUNTS = List.of("no", "one", "two", "three", "four", "five", "six");

    public Word {
        positional = List.copyOf(positional);
        named = List.copyOf(named);
    }

    /** A word without arguments; the methods below add to it. */
    public static Word word(String name) {
        return new Word(
                name, List.of(), Optional.empty(), List.of(), Optional.empty(), "", "1.0", "", Optional.empty());
    }

    /** One more argument by position, which a script must give. */
    public Word takes(String param, Type type) {
        return withPositional(new Param(param, type, true, Optional.empty()));
    }

    /** One more argument by position, which a script may leave out. */
    public Word mayTake(String param, Type type) {
        return withPositional(new Param(param, type, false, Optional.empty()));
    }

    /** Any number of further arguments, at least one. Lists among them count as their entries. */
    public Word takesSeveral(String param, Type type) {
        Param several = new Param(param, type, true, Optional.empty());
        return new Word(name, positional, Optional.of(several), named, opens, means, since, example, retired);
    }

    /** An argument by name that a script may leave out. */
    public Word named(String param, Type type) {
        return withNamed(new Param(param, type, false, Optional.empty()));
    }

    /** An argument by name with the value that it has when a script leaves it out. */
    public Word named(String param, Type type, Object usual) {
        return withNamed(new Param(param, type, false, Optional.of(usual)));
    }

    /** An argument by name that a script must give. */
    public Word needsNamed(String param, Type type) {
        return withNamed(new Param(param, type, true, Optional.empty()));
    }

    /** It takes braces, in which the words of this section stand. */
    public Word opens(String section) {
        return new Word(name, positional, rest, named, Optional.of(section), means, since, example, retired);
    }

    public Word means(String words) {
        return new Word(name, positional, rest, named, opens, words, since, example, retired);
    }

    public Word since(String version) {
        return new Word(name, positional, rest, named, opens, means, version, example, retired);
    }

    public Word example(String lines) {
        return new Word(name, positional, rest, named, opens, means, since, lines, retired);
    }

    /** The word is on its way out from this version on; the other one takes its place. */
    public Word retired(String version, String instead) {
        Optional<Retired> out = Optional.of(new Retired(version, instead));
        return new Word(name, positional, rest, named, opens, means, since, example, out);
    }

    private Word withPositional(Param param) {
        return new Word(name, plus(positional, param), rest, named, opens, means, since, example, retired);
    }

    private Word withNamed(Param param) {
        return new Word(name, positional, rest, plus(named, param), opens, means, since, example, retired);
    }

    private static List<Param> plus(List<Param> params, Param one) {
        return Stream.concat(params.stream(), Stream.of(one)).toList();
    }

    /** The argument with this name, by position or by name. */
    public Optional<Param> param(String param) {
        return Stream.concat(positional.stream(), named.stream())
                .filter(p -> p.name().equals(param))
                .findFirst();
    }

    /** Names of the arguments by name. */
    public List<String> namedNames() {
        return named.stream().map(Param::name).toList();
    }

    /** What it wants by position, in words: {@code three durations such as 3.min, 4.min, 8.min}. */
    public String wants() {
        List<String> parts = new ArrayList<>();
        int i = 0;
        while (i < positional.size()) {
            int start = i;
            Type type = positional.get(i).type();
            while (i < positional.size() && positional.get(i).type().equals(type)) {
                i++;
            }
            parts.add(group(positional.subList(start, i)));
        }
        rest.ifPresent(r -> parts.add("one or more " + r.type().many() + " such as "
                + r.type().examples().get(0)));
        if (parts.isEmpty()) {
            return "nothing by position";
        }
        return String.join(" and ", parts);
    }

    private static String group(List<Param> same) {
        Type type = same.get(0).type();
        long required = same.stream().filter(Param::required).count();
        String examples = type.examples().stream().limit(same.size()).collect(Collectors.joining(", "));
        String such = type.one().startsWith("one of") || type.equals(Type.YES_NO) ? "" : " such as " + examples;
        if (same.size() == 1) {
            return (required == 1 ? "" : "perhaps ") + type.one() + such;
        }
        String count = required == same.size()
                ? COUNTS.get(same.size())
                : COUNTS.get((int) required) + " to " + COUNTS.get(same.size());
        return count + " " + type.many() + such;
    }
}
