package baywright.library;

import baywright.script.Place;
import baywright.script.Value;
import baywright.script.Wording;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One kind of work, defined by a script.
 *
 * @param id       stable kebab-case id
 * @param like     id of the stage that it has everything from that it does not say itself; empty: none
 * @param title    words for people
 * @param about    a sentence on what it is for; may be empty
 * @param family   id of its family
 * @param revision from 1, counted up by its author
 * @param inputs   what a step may set, in order of writing
 * @param surfaces ids of the surfaces it works on, in order of writing
 * @param examples its worked examples
 * @param terms    works out what it says for one use
 * @param place    where it was declared
 */
public record Stage(
        String id,
        String like,
        String title,
        String about,
        String family,
        int revision,
        List<Input> inputs,
        List<String> surfaces,
        List<Example> examples,
        TermsSource terms,
        Place place) {

    /** Works out the terms of one use. Pure: the same arguments give equal terms. */
    @FunctionalInterface
    public interface TermsSource {
        /**
         * Evaluates the script with these values.
         *
         * @param with  values of inputs by name; missing ones take their usual value
         * @param facts surveyed facts by id; missing ones take their usual value
         */
        StageTerms of(Map<String, Value> with, Map<String, Value> facts);

        /** What it is worked out from; empty when that is no script. */
        default Optional<Wording> wording() {
            return Optional.empty();
        }
    }

    /** A stage that is like no other. */
    public Stage(
            String id,
            String title,
            String about,
            String family,
            int revision,
            List<Input> inputs,
            List<String> surfaces,
            List<Example> examples,
            TermsSource terms,
            Place place) {
        this(id, "", title, about, family, revision, inputs, surfaces, examples, terms, place);
    }

    public Stage {
        inputs = List.copyOf(inputs);
        surfaces = List.copyOf(surfaces);
        examples = List.copyOf(examples);
    }

    /** The terms with every input and fact at its usual value. */
    public StageTerms usualTerms() {
        return terms.of(Map.of(), Map.of());
    }
}
