package baywright.library;

import baywright.script.Place;
import baywright.script.Value;

/**
 * A value that a library names once for all its stages.
 *
 * @param id    stable kebab-case id
 * @param value any value but nothing
 * @param place where it was declared
 */
record Constant(String id, Value value, Place place) {}
