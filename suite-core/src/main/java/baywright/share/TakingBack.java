package baywright.share;

import baywright.library.Item;
import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.script.Problem;
import baywright.workspace.FilesChange;
import baywright.workspace.FilesChange.Replaced;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import baywright.workspace.WorkspaceWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Takes back the pack that was taken last, in one step. What the site has edited since stays where it can be told apart from what the pack
 * brought; where it cannot, nothing is taken back.
 */
public final class TakingBack {

    private static final String STAGES = "stages/";
    private static final String ITEMS = "items.json";

    private final Workspace workspace;
    private final Texts files;
    private final FilesChange made;
    private final ScriptCache cache;
    private final PackLock before;

    private TakingBack(Workspace workspace, ScriptCache cache) {
        this.workspace = workspace;
        this.cache = cache;
        this.files = new Texts(workspace.root());
        String text = files.text(Taking.UNDO)
                .orElseThrow(() -> new WorkspaceException(
                        Taking.UNDO + ": there is nothing to take back; only the pack that was taken last can be"));
        made = FilesChange.read(text)
                .orElseThrow(() -> new WorkspaceException(
                        Taking.UNDO + ": the file is not what the program wrote; restore it from a copy"));
        before = Taking.lock(files);
    }

    /** What was on record and is no longer, or otherwise. */
    public record Back(PackLock before, PackLock after) {}

    /** Whether there is a pack that can be taken back, as far as is known without trying. */
    public static boolean isPossible(Path workspace) {
        return Files.isRegularFile(workspace.resolve(Taking.UNDO), LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * Takes the last pack back.
     *
     * @param workspace as it was read
     * @throws WorkspaceException when there is none, when an edit made since cannot be told apart from it, when the library would have
     *                            an error that it has not now, or when the disk refuses; everything is then as it was
     */
    public static Back takeBack(Workspace workspace, ScriptCache cache) {
        return new TakingBack(workspace, cache).takeBack();
    }

    private Back takeBack() {
        SortedMap<String, Replaced> change = new TreeMap<>();
        SortedMap<String, String> ours = files.below("stages");
        SortedMap<String, String> stages = stages(ours);
        Optional<String> items = items();
        refuseErrors(ours, stages, items);
        stages.forEach((name, text) -> put(change, STAGES + name, Optional.of(text)));
        ours.keySet().stream()
                .filter(name -> !stages.containsKey(name))
                .forEach(name -> put(change, STAGES + name, Optional.empty()));
        items.ifPresent(text -> put(change, ITEMS, items));
        made.files().forEach((name, file) -> {
            if (!name.startsWith(STAGES) && !name.equals(ITEMS)) {
                if (!files.text(name).equals(file.after())) {
                    throw new WorkspaceException(name
                            + ": nothing was taken back, somebody has changed this file since; restore it from a copy");
                }
                put(change, name, file.before());
            }
        });
        put(change, Taking.UNDO, Optional.empty());
        try (WorkspaceWriter writer = WorkspaceWriter.open(workspace)) {
            writer.change(new FilesChange(change));
        }
        return new Back(before, Taking.lockOf(workspace.root()));
    }

    private void put(SortedMap<String, Replaced> change, String name, Optional<String> after) {
        change.put(name, new Replaced(files.text(name), after));
    }

    /** The scripts before the pack came, with what was edited since. */
    private SortedMap<String, String> stages(Map<String, String> now) {
        SortedMap<String, String> then = new TreeMap<>(now);
        SortedMap<String, String> came = new TreeMap<>(now);
        made.files().forEach((name, file) -> {
            if (name.startsWith(STAGES)) {
                String below = name.substring(STAGES.length());
                set(then, below, file.before());
                set(came, below, file.after());
            }
        });
        Merged merged = DeclarationMerge.of(came, now, then);
        if (!merged.clashes().isEmpty() || !merged.reads()) {
            String what = merged.clashes().isEmpty()
                    ? merged.problems().get(0).toString()
                    : merged.clashes().stream().map(Clash::name).collect(Collectors.joining(", "));
            throw new WorkspaceException(STAGES
                    + ": nothing was taken back, what was edited since stands in what the pack brought (" + what
                    + "); put these edits back first");
        }
        return new TreeMap<>(merged.texts());
    }

    private static void set(Map<String, String> texts, String name, Optional<String> text) {
        texts.remove(name);
        text.ifPresent(t -> texts.put(name, t));
    }

    /** The price list afterwards; empty: it stays. What was edited since of an item stays. */
    private Optional<String> items() {
        Replaced file = made.files().get(ITEMS);
        if (file == null) {
            return Optional.empty();
        }
        Optional<String> now = files.text(ITEMS);
        if (now.equals(file.after())) {
            return file.before();
        }
        Map<String, Item> then = byId(Workspace.priceList(file.before().orElse("")));
        Map<String, Item> came = byId(Workspace.priceList(file.after().orElse("")));
        List<Item> left = workspace.items().stream()
                .filter(i -> then.containsKey(i.id()) || !i.equals(came.get(i.id())))
                .map(i -> i.equals(came.get(i.id())) ? then.get(i.id()) : i)
                .toList();
        String mark = now.orElse("").startsWith("\uFEFF") ? "\uFEFF" : "";
        return Optional.of(mark + WorkspaceWriter.priceList(workspace, left));
    }

    private static Map<String, Item> byId(List<Item> items) {
        Map<String, Item> all = new HashMap<>();
        items.forEach(i -> all.put(i.id(), i));
        return all;
    }

    private void refuseErrors(Map<String, String> now, Map<String, String> then, Optional<String> items) {
        List<Item> after = items.map(Workspace::priceList).orElse(workspace.items());
        List<Problem> fresh = LibraryChanges.fresh(
                load(now, workspace.items()).problems(), load(then, after).problems());
        if (!fresh.isEmpty()) {
            throw new WorkspaceException(STAGES + fresh.get(0)
                    + "; nothing was taken back, the library would not hold together without the pack");
        }
    }

    private LibraryLoader.Loaded load(Map<String, String> texts, List<Item> items) {
        return Taking.load(workspace, texts, items, cache);
    }
}
