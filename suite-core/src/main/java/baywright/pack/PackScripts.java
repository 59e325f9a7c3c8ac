package baywright.pack;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.script.Problem;
import baywright.workspace.FileProblem;
import baywright.workspace.LibraryTexts;
import baywright.workspace.SharedItem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The scripts of a pack inside the fence of the stage language: read, never run, and held against each other. */
public final class PackScripts {

    /**
     * What the scripts of a pack say.
     *
     * @param library  all that could be used of the pack and of those beside it
     * @param problems of the pack's own files, named as the pack names them, in order of place
     */
    public record Checked(Library library, List<Problem> problems) {

        public Checked {
            problems = List.copyOf(problems);
        }

        /** What makes the pack useless. */
        public List<Problem> errors() {
            return problems.stream()
                    .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                    .toList();
        }
    }

    private PackScripts() {}

    /**
     * Checks a pack.
     *
     * @param pack   the pack
     * @param beside packs that it needs; without them their names are not known
     */
    public static Checked check(Pack pack, List<Pack> beside) {
        Map<String, String> texts = new TreeMap<>();
        Map<String, Item> items = new LinkedHashMap<>();
        pack.scripts().forEach((name, text) -> texts.put(Pack.STAGES + name, text));
        addItems(pack, items);
        for (Pack other : beside) {
            other.scripts().forEach((name, text) -> texts.put(other.manifest().id() + "/" + Pack.STAGES + name, text));
            addItems(other, items);
        }
        LibraryLoader.Loaded loaded = LibraryLoader.load(texts, List.copyOf(items.values()));
        Stream<Problem> own = loaded.problems().stream()
                .filter(problem -> problem.place().file().startsWith(Pack.STAGES));
        List<Problem> problems =
                Stream.concat(own, others(pack).stream()).sorted().toList();
        return new Checked(loaded.library(), problems);
    }

    /** What the scripts ask of an item is not its price. */
    private static void addItems(Pack pack, Map<String, Item> items) {
        for (SharedItem item : pack.items().items()) {
            items.putIfAbsent(item.likeness().id(), item.at(item.price().orElse(BigDecimal.ZERO)));
        }
    }

    private static List<Problem> others(Pack pack) {
        List<Problem> problems = new ArrayList<>();
        for (String path : pack.paths()) {
            if (path.startsWith(Pack.STAGES) && path.endsWith(".json")) {
                LibraryTexts.problems(path, pack.file(path).orElseThrow()).stream()
                        .map(FileProblem::asProblem)
                        .forEach(problems::add);
            }
        }
        return problems;
    }
}
