package baywright.share;

import baywright.script.Problem;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What became of two sides.
 *
 * @param texts    text of each file by its name below the folder of the scripts
 * @param clashes  what both changed, each in its own way, in order of files; ours is in the texts where nobody has decided
 * @param problems errors of texts that are neither side's: what cannot be read must not be used
 */
public record Merged(SortedMap<String, String> texts, List<Clash> clashes, List<Problem> problems) {

    public Merged {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
        clashes = List.copyOf(clashes);
        problems = List.copyOf(problems);
    }

    /** Clashes that nobody has decided. */
    public List<Clash> open() {
        return clashes.stream().filter(c -> c.decided().isEmpty()).toList();
    }

    /** Whether the texts can be read. */
    public boolean reads() {
        return problems.isEmpty();
    }
}
