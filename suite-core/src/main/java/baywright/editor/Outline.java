package baywright.editor;

import baywright.script.Place;
import java.util.ArrayList;
import java.util.List;

/** The declarations and blocks of a script with where they stand, as far as they can be made out. */
public final class Outline {

    private Outline() {}

    /**
     * One entry.
     *
     * @param word     the word of the language: {@code stage}, {@code before}, {@code count}
     * @param label    the id or text behind it; empty where there is none
     * @param place    where it begins
     * @param from     offset of its first character
     * @param to       offset behind its last one
     * @param children what stands in its braces
     */
    public record Entry(String word, String label, Place place, int from, int to, List<Entry> children) {
        public Entry {
            children = List.copyOf(children);
        }
    }

    /** The outline of any text; {@code file} is the name for its places. */
    public static List<Entry> of(String file, String text) {
        return entries(Sketch.of(text), new TextPlaces(file, text));
    }

    private static List<Entry> entries(List<Phrase> phrases, TextPlaces places) {
        List<Entry> entries = new ArrayList<>();
        for (Phrase phrase : phrases) {
            List<Entry> inside = entries(phrase.body(), places);
            if (phrase.word().isEmpty()) {
                // What a condition or a loop holds is shown as if it stood there always.
                entries.addAll(inside);
                continue;
            }
            entries.add(new Entry(
                    phrase.word().get().name(),
                    phrase.label(),
                    places.place(phrase.from()),
                    phrase.from(),
                    phrase.to(),
                    inside));
        }
        return entries;
    }
}
