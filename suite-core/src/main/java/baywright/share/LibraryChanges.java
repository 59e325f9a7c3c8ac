package baywright.share;

import baywright.library.Library;
import baywright.library.Stage;
import baywright.library.StageChange;
import baywright.library.StageComparison;
import baywright.script.Problem;
import baywright.share.LibraryChange.Kind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Tells what differs between two libraries, by declarations and in meaning. */
public final class LibraryChanges {

    private static final String STAGE = "stage ";
    /** A change of these may change what any stage says. */
    private static final List<String> SHARED = List.of("constant ", "fact ");

    private final Map<String, String> oldTexts;
    private final Map<String, String> newTexts;
    private final Library before;
    private final Library after;

    /**
     * Two libraries.
     *
     * @param oldTexts the scripts of the one, by their names below the folder of the scripts
     * @param newTexts the scripts of the other
     */
    public LibraryChanges(Map<String, String> oldTexts, Library before, Map<String, String> newTexts, Library after) {
        this.oldTexts = oldTexts;
        this.newTexts = newTexts;
        this.before = before;
        this.after = after;
    }

    /** Errors that were not there before, wherever their lines are now. */
    public static List<Problem> fresh(List<Problem> old, List<Problem> now) {
        Set<List<String>> known = new HashSet<>();
        old.forEach(p -> known.add(List.of(p.place().file(), p.message())));
        return now.stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .filter(p -> !known.contains(List.of(p.place().file(), p.message())))
                .toList();
    }

    /** In order of names. Stages that change only with what they share with others are told too. */
    public List<LibraryChange> all() {
        Set<String> names = new TreeSet<>(DeclarationMerge.differences(oldTexts, newTexts));
        Set<String> old = DeclarationMerge.declared(oldTexts);
        Set<String> now = DeclarationMerge.declared(newTexts);
        List<LibraryChange> changes = new ArrayList<>();
        for (String name : names) {
            boolean was = old.contains(name) || oldTexts.containsKey(name);
            boolean is = now.contains(name) || newTexts.containsKey(name);
            Kind kind = was && is ? Kind.CHANGED : is ? Kind.ADDED : Kind.REMOVED;
            changes.add(new LibraryChange(name, kind, kind == Kind.CHANGED ? said(name) : List.of()));
        }
        for (Stage stage : after.stages()) {
            String name = STAGE + stage.id();
            if (!names.contains(name) && old.contains(name) && mayDiffer(stage, names)) {
                List<StageChange> said = said(name);
                if (!said.isEmpty()) {
                    changes.add(new LibraryChange(name, Kind.CHANGED, said));
                }
            }
        }
        return changes;
    }

    private boolean mayDiffer(Stage stage, Set<String> names) {
        if (names.stream().anyMatch(n -> SHARED.stream().anyMatch(n::startsWith))) {
            return true;
        }
        Set<String> seen = new HashSet<>();
        for (Stage at = stage;
                at != null && seen.add(at.id());
                at = after.stageById().get(at.like())) {
            String file = at.place().file();
            if (names.contains(STAGE + at.id()) || !Objects.equals(oldTexts.get(file), newTexts.get(file))) {
                return true;
            }
        }
        return false;
    }

    private List<StageChange> said(String name) {
        if (!name.startsWith(STAGE)) {
            return List.of();
        }
        String id = name.substring(STAGE.length());
        Optional<Stage> old = Optional.ofNullable(before.stageById().get(id));
        Optional<Stage> now = Optional.ofNullable(after.stageById().get(id));
        return old.isPresent() && now.isPresent() ? StageComparison.of(old.get(), now.get(), after.facts()) : List.of();
    }
}
