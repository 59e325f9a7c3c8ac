package baywright.library;

import baywright.script.Place;
import java.util.List;

/**
 * An end that customers ask for by name, as the states that it comes down to. Goals are data: which stages lead there is
 * found from what stages need and set.
 *
 * @param id    stable kebab-case id; a job names it
 * @param title words for people
 * @param about what the customer gets, in plain words; may be empty
 * @param wants what must hold when all is done, at least one
 * @param place where it was declared
 */
public record Goal(String id, String title, String about, List<Want> wants, Place place) {

    /**
     * States that must hold when all is done.
     *
     * @param states   ids of states, each by itself
     * @param surfaces ids of the surfaces on whose zones they must hold; a state of the vehicle as a whole is brought by
     *                 work on zones of these surfaces
     */
    public record Want(List<String> states, List<String> surfaces) {
        public Want {
            states = List.copyOf(states);
            surfaces = List.copyOf(surfaces);
        }
    }

    public Goal {
        wants = List.copyOf(wants);
    }
}
