package baywright.script;

import java.util.List;
import java.util.Optional;

/** Messages about words that are not known, stand in the wrong braces or stand alone. */
record WordMessages(Vocabulary vocabulary) {

    String usage(String name, String section) {
        Word word = vocabulary.section(section).word(name).orElseThrow();
        boolean bare = word.positional().stream().noneMatch(Param::required)
                && word.rest().isEmpty()
                && word.opens().isEmpty();
        return bare
                ? "write " + name + "()"
                : word.opens().isPresent() ? "it wants a block: " + name + " { … }" : "it wants " + word.wants();
    }

    boolean isWord(String name, String section) {
        return vocabulary.section(section).word(name).isPresent();
    }

    Fault unknown(String name, Place place, String section) {
        Vocabulary.Section here = vocabulary.section(section);
        List<Vocabulary.Section> elsewhere = vocabulary.sectionsWith(name);
        if (vocabulary.function(name).isPresent()) {
            return Fault.of(place, "stray-value", "'" + name + "' has a value and does nothing by itself");
        }
        if (!elsewhere.isEmpty()) {
            String where = String.join(
                    " or ", elsewhere.stream().map(Vocabulary.Section::where).toList());
            return Fault.of(place, "wrong-block", "'" + name + "' stands " + where + ", not " + here.where());
        }
        Optional<String> near = Nearest.to(name, here.names());
        if (near.isPresent()) {
            return Fault.of(place, "unknown-word", "there is no word '" + name + "'; nearest is '" + near.get() + "'");
        }
        List<String> all = vocabulary.sections().stream()
                .flatMap(s -> s.names().stream())
                .distinct()
                .toList();
        Optional<String> far = Nearest.to(name, all);
        String hint = far.map(f -> "; nearest is '" + f + "', which stands "
                        + vocabulary.sectionsWith(f).get(0).where())
                .orElse("; the words " + here.where() + " are " + String.join(", ", here.names()));
        return Fault.of(place, "unknown-word", "there is no word '" + name + "'" + hint);
    }
}
