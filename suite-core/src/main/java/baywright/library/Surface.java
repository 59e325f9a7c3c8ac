package baywright.library;

import baywright.script.Place;

/**
 * A kind of surface that a zone has and a stage works on: {@code paint}, {@code glass}, {@code vehicle}.
 *
 * @param id    stable kebab-case id
 * @param means plain words
 * @param place where it was declared
 */
public record Surface(String id, String means, Place place) {}
