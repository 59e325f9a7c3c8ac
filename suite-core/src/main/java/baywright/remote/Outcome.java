package baywright.remote;

import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.script.Problem;
import baywright.share.Clash;
import baywright.share.LibraryChange;
import baywright.share.LibraryChanges;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * What putting two sides together would come to, for whoever decides.
 *
 * @param changes  what is said otherwise afterwards, in meaning
 * @param clashes  what both have changed differently
 * @param problems errors afterwards that are not there now, named below {@code stages/}
 * @param reads    whether what was put together can be read at all
 */
record Outcome(List<LibraryChange> changes, List<Clash> clashes, List<Problem> problems, boolean reads) {

    Outcome {
        changes = List.copyOf(changes);
        clashes = List.copyOf(clashes);
        problems = List.copyOf(problems);
    }

    /** From one content to what has been made of it, beside the scripts of other packs; the cache knows them by a folder. */
    static Outcome of(
            Content before, Content.Joined joined, Map<String, String> beside, Path folder, ScriptCache cache) {
        LibraryLoader.Loaded old = before.load(beside, folder, cache);
        LibraryLoader.Loaded now = joined.content().load(beside, folder, cache);
        return new Outcome(
                new LibraryChanges(
                                before.texts(), old.library(), joined.content().texts(), now.library())
                        .all(),
                joined.clashes(),
                LibraryChanges.fresh(old.problems(), now.problems()).stream()
                        .filter(p -> !beside.containsKey(p.place().file()))
                        .toList(),
                joined.reads());
    }

    boolean isReady() {
        return reads
                && problems.isEmpty()
                && clashes.stream().allMatch(c -> c.decided().isPresent());
    }
}
