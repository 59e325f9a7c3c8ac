package baywright.share;

import baywright.share.Clash.Side;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What somebody wants of a pack.
 *
 * @param only      names of what is taken: a stage's id, {@code rule dry}, {@code item clay}, a file; empty: everything
 * @param sides     whose is taken of clashes, by the name of the clash or of what it lies in; {@code all} means every clash
 * @param downgrade whether the pack may take the place of a later version of itself
 */
public record Choice(Set<String> only, Map<String, Side> sides, boolean downgrade) {

    /** All of it, with nothing decided. */
    public static final Choice ALL = new Choice(Set.of(), Map.of(), false);

    private static final String EVERY = "all";

    public Choice {
        only = Set.copyOf(only);
        sides = Map.copyOf(sides);
    }

    /** Whether a declaration, by its name such as {@code stage iron-removal}, is wanted. */
    public boolean wants(String name) {
        return only.isEmpty()
                || only.contains(name)
                || (name.startsWith("stage ") && only.contains(name.substring("stage ".length())))
                || (name.startsWith("shape ") && only.contains("shapes.json"));
    }

    /** Whose is taken of a clash; empty: nobody has said. */
    public Optional<Side> side(Clash clash) {
        return sides.entrySet().stream()
                .filter(e -> clash.isIn(e.getKey()) || clash.isIn("stage " + e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .or(() -> Optional.ofNullable(sides.get(EVERY)));
    }
}
