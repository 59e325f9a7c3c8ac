package baywright.library;

import baywright.quantity.Quantity;
import baywright.script.Place;

/**
 * A group of stages that share tools.
 *
 * @param id    stable kebab-case id
 * @param title words for people
 * @param setUp minutes to get out and put away once a visit, however many of its stages are used
 * @param place where it was declared
 */
public record Family(String id, String title, Quantity setUp, Place place) {}
