package baywright.library;

import baywright.script.Place;
import baywright.script.Wording;
import java.util.List;
import java.util.Optional;

/**
 * What the library forbids or warns about beyond what stages need and refuse: checked for each step that it concerns, on
 * each of the step's zones.
 *
 * @param id     stable kebab-case id
 * @param title  words for people
 * @param reason why it is so; a finding shows it
 * @param at     the steps that it concerns
 * @param asks   what its conditions ask, each once; the answers come in this order
 * @param judge  tells from the answers whether it speaks
 * @param place  where it was declared
 */
public record Rule(String id, String title, String reason, At at, List<Ask> asks, Judge judge, Place place) {

    /** How gravely a rule speaks. */
    public enum Severity {
        FORBIDS,
        WARNS,
        NOTES
    }

    /**
     * The steps that a rule concerns: those of the families and of the stages, without the exceptions.
     *
     * @param families ids of families
     * @param stages   ids of stages
     * @param except   ids of stages left out
     * @param surfaces ids of the surfaces looked at; empty: all that the step works on. A step on the vehicle as a whole
     *                 is looked at on every zone of these surfaces.
     */
    public record At(List<String> families, List<String> stages, List<String> except, List<String> surfaces) {
        public At {
            families = List.copyOf(families);
            stages = List.copyOf(stages);
            except = List.copyOf(except);
            surfaces = List.copyOf(surfaces);
        }

        /** Whether a step of a stage is concerned, whatever its zones. */
        public boolean concerns(Stage stage) {
            boolean named = stages.contains(stage.id()) || families.contains(stage.family());
            return named && !except.contains(stage.id());
        }
    }

    /** How far a question looks from the zone at hand. */
    public enum Reach {
        ZONE,
        NEAR,
        ANYWHERE
    }

    /**
     * One question about a step and one of its zones.
     *
     * @param word    the function, or the name such as {@code film.least}
     * @param names   its arguments
     * @param until   for {@code usedSince} the state that ends it; else empty
     * @param reach   how far it looks
     * @param sameBay whether only steps in the same bay count
     */
    public record Ask(String word, List<String> names, String until, Reach reach, boolean sameBay) {
        private static final int NAMES_SHOWN = 2;

        public Ask {
            names = List.copyOf(names);
        }

        /** All of it as one text; two questions are one when their texts agree. */
        public String text() {
            return text(names.size());
        }

        /** As people read it beside its answer: {@code since compound}, {@code film.least}; long lists are cut short. */
        public String shown() {
            return text(names.size() > NAMES_SHOWN + 1 ? NAMES_SHOWN : names.size());
        }

        private String text(int named) {
            StringBuilder text = new StringBuilder(word);
            names.subList(0, named)
                    .forEach(n -> text.append(text.length() == word.length() ? " " : ", ")
                            .append(n));
            if (named < names.size()) {
                text.append(" and ").append(names.size() - named).append(" more");
            }
            if (!until.isEmpty()) {
                text.append(" until ").append(until);
            }
            if (reach != Reach.ZONE) {
                text.append(reach == Reach.NEAR ? " near" : " anywhere");
            }
            return text.append(sameBay ? " in the same bay" : "").toString();
        }
    }

    /**
     * A rule that speaks.
     *
     * @param severity how gravely
     * @param read     numbers of the asks whose answers decided it, in their order
     */
    public record Spoken(Severity severity, List<Integer> read) {
        public Spoken {
            read = List.copyOf(read);
        }
    }

    /** Works out whether a rule speaks. Pure: equal answers give equal results. */
    @FunctionalInterface
    public interface Judge {
        /**
         * Judges.
         *
         * @param answers raw values as of {@link baywright.script.Value}, in the order of the asks
         * @throws baywright.script.ScriptFault when its conditions cannot be worked out for them
         */
        Optional<Spoken> of(List<Object> answers);

        /** What it judges by; empty when that is no script. */
        default Optional<Wording> wording() {
            return Optional.empty();
        }
    }

    public Rule {
        asks = List.copyOf(asks);
    }
}
