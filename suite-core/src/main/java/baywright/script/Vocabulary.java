package baywright.script;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All words of a language by the section in which they may stand.
 *
 * @param sections  in the order of the reference
 * @param functions words with a value, which may stand wherever a value may
 */
public record Vocabulary(List<Section> sections, List<Word> functions) {

    /**
     * The words of one pair of braces.
     *
     * @param name  by which {@link Word#opens} refers to it
     * @param where in words for a message: {@code in 'before { }'}
     * @param means what it is for
     * @param words in the order of the reference
     */
    public record Section(String name, String where, String means, List<Word> words) {
        public Section {
            words = List.copyOf(words);
        }

        public Optional<Word> word(String wanted) {
            return words.stream().filter(w -> w.name().equals(wanted)).findFirst();
        }

        public List<String> names() {
            return words.stream().map(Word::name).toList();
        }
    }

    public Vocabulary {
        sections = List.copyOf(sections);
        functions = List.copyOf(functions);
        Map<String, Section> seen = new LinkedHashMap<>();
        for (Section section : sections) {
            if (seen.put(section.name(), section) != null) {
                throw new IllegalArgumentException("section '" + section.name() + "' is declared twice");
            }
            if (section.names().stream().distinct().count() != section.words().size()) {
                throw new IllegalArgumentException("section '" + section.name() + "' declares a word twice");
            }
        }
        for (Section section : sections) {
            for (Word word : section.words()) {
                if (word.opens().isPresent() && !seen.containsKey(word.opens().get())) {
                    throw new IllegalArgumentException("word '" + word.name() + "' opens an unknown section");
                }
            }
        }
    }

    /** The section of this name; there must be one. */
    public Section section(String name) {
        return sections.stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no section '" + name + "'"));
    }

    public Optional<Word> function(String name) {
        for (Word function : functions) {
            if (function.name().equals(name)) {
                return Optional.of(function);
            }
        }
        return Optional.empty();
    }

    /** Sections that have a word of this name. */
    public List<Section> sectionsWith(String word) {
        List<Section> found = new ArrayList<>();
        for (Section section : sections) {
            if (section.word(word).isPresent()) {
                found.add(section);
            }
        }
        return found;
    }
}
