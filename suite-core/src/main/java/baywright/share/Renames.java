package baywright.share;

import baywright.editor.Piece;
import baywright.editor.Pieces;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The files that a side gave another name: most of what the old one declared stands in the new one.
 *
 * @param to new name by old name
 */
record Renames(Map<String, String> to) {

    static Renames of(Map<String, String> base, Map<String, String> side) {
        Set<String> gone = new TreeSet<>(base.keySet());
        gone.removeAll(side.keySet());
        Set<String> come = new TreeSet<>(side.keySet());
        come.removeAll(base.keySet());
        Map<String, Set<String>> declared = new HashMap<>();
        come.forEach(name -> declared.put(name, declared(side.get(name))));
        Map<String, String> to = new TreeMap<>();
        for (String old : gone) {
            Set<String> was = declared(base.get(old));
            come.stream()
                    .filter(name -> !to.containsValue(name) && isMostly(was, declared.get(name)))
                    .findFirst()
                    .ifPresent(name -> to.put(old, name));
        }
        return new Renames(to);
    }

    private static boolean isMostly(Set<String> was, Set<String> is) {
        Set<String> both = new HashSet<>(was);
        both.retainAll(is);
        return both.size() * 2 > was.size();
    }

    private static Set<String> declared(String text) {
        return Pieces.of(text).pieces().stream()
                .filter(Keys::isDeclaration)
                .map((Piece p) -> Keys.of(p))
                .collect(Collectors.toSet());
    }

    /** Old name by new name. A name that the other side uses for something else is none: there the declarations have moved. */
    Map<String, String> oldNames(Set<String> otherFiles, Renames other) {
        Map<String, String> old = new HashMap<>();
        to.forEach((before, after) -> {
            if (!otherFiles.contains(after) || after.equals(other.to.get(before))) {
                old.put(after, before);
            }
        });
        return old;
    }
}
