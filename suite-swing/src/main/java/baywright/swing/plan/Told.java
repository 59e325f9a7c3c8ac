package baywright.swing.plan;

import baywright.plan.Severity;
import java.util.List;

/**
 * Something that stands against a step or the plan, in words, with what can be done about it.
 *
 * @param severity how grave it is
 * @param title    a few words
 * @param sentence the reason with its causes
 * @param step     id of the step concerned; empty: the plan as a whole
 * @param fixes    ways to mend it
 */
record Told(Severity severity, String title, String sentence, String step, List<Fix> fixes) {

    /**
     * A way to mend it.
     *
     * @param verb     for its button
     * @param sentence what it does
     * @param does     does it; two fixes that say the same are the same
     */
    record Fix(String verb, String sentence, Runnable does) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Fix fix && fix.verb.equals(verb) && fix.sentence.equals(sentence);
        }

        @Override
        public int hashCode() {
            return sentence.hashCode();
        }
    }

    Told {
        fixes = List.copyOf(fixes);
    }
}
