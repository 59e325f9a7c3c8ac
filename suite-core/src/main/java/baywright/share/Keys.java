package baywright.share;

import baywright.editor.Piece;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the same statement in three versions of a script. */
final class Keys {

    /** Declarations that a whole library has once, whatever file they are in. */
    private static final Set<String> DECLARATIONS =
            Set.of("stage", "rule", "state", "surface", "family", "fact", "factor", "constant", "goal");

    /** Words of which what is given first is the subject: another one is another statement, not a change of it. */
    private static final Set<String> OF_SUBJECTS = Set.of(
            "needs",
            "needsAny",
            "refuses",
            "prefers",
            "sets",
            "clears",
            "arrives",
            "item",
            "from",
            "risk",
            "wear",
            "keepApart",
            "choice",
            "count",
            "measure",
            "yesNo",
            "confirm",
            "avoid",
            "equipment",
            "helpers",
            "value",
            "example",
            "wants",
            "def");

    private Keys() {}

    /** Whether a statement is one of those that may move to another file and stay the same. */
    static boolean isDeclaration(Piece piece) {
        return DECLARATIONS.contains(piece.word()) && !piece.label().isEmpty();
    }

    /** What a statement is about, alike in every version of it. */
    static String of(Piece piece) {
        if (isDeclaration(piece)) {
            boolean replaces = "true".equals(piece.named().get("replaces"));
            return piece.word() + " " + piece.label() + (replaces ? " replaces" : "");
        }
        if (OF_SUBJECTS.contains(piece.word())) {
            return piece.word() + " " + piece.label();
        }
        if (piece.word().equals("attended")) {
            return piece.word() + " per " + piece.named().getOrDefault("per", "vehicle");
        }
        return piece.word();
    }

    /** The statements of three versions by ids; the same id is the same statement. */
    record Found(Map<String, Piece> base, Map<String, Piece> ours, Map<String, Piece> theirs) {}

    /**
     * Gives ids. Statements with the same key, such as two lines of hands-on time per vehicle, are paired by their words first and then
     * in order.
     */
    static Found find(List<Piece> base, List<Piece> ours, List<Piece> theirs, Function<Piece, String> key) {
        Map<String, List<Piece>> b = byKey(base, key);
        Map<String, List<Piece>> o = byKey(ours, key);
        Map<String, List<Piece>> t = byKey(theirs, key);
        Found found = new Found(new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
        Set<String> keys = new LinkedHashSet<>();
        Stream.of(b, o, t).forEach(m -> keys.addAll(m.keySet()));
        for (String k : keys) {
            group(
                    k,
                    b.getOrDefault(k, List.of()),
                    new ArrayList<>(o.getOrDefault(k, List.of())),
                    new ArrayList<>(t.getOrDefault(k, List.of())),
                    found);
        }
        return found;
    }

    private static Map<String, List<Piece>> byKey(List<Piece> pieces, Function<Piece, String> key) {
        return pieces.stream().collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
    }

    private static void group(String key, List<Piece> base, List<Piece> ours, List<Piece> theirs, Found found) {
        Map<String, Piece> of = new LinkedHashMap<>();
        for (int i = 0; i < base.size(); i++) {
            of.put(id(key, i + 1), base.get(i));
        }
        found.base().putAll(of);
        pair(of, ours, found.ours());
        pair(of, theirs, found.theirs());
        boolean single = base.isEmpty() && ours.size() == 1 && theirs.size() == 1;
        int next = base.size() + 1;
        for (Piece our : ours) {
            String id = id(key, next++);
            found.ours().put(id, our);
            theirs.stream()
                    .filter(t -> single || t.core().equals(our.core()))
                    .findFirst()
                    .ifPresent(their -> {
                        found.theirs().put(id, their);
                        removeThat(theirs, their);
                    });
        }
        for (Piece their : theirs) {
            found.theirs().put(id(key, next++), their);
        }
    }

    private static String id(String key, int number) {
        return number == 1 ? key : key + " #" + number;
    }

    /** Takes what is found out of the list. */
    private static void pair(Map<String, Piece> base, List<Piece> side, Map<String, Piece> found) {
        Map<String, Piece> left = new LinkedHashMap<>(base);
        base.forEach((id, piece) -> side.stream()
                .filter(p -> p.core().equals(piece.core()))
                .findFirst()
                .ifPresent(p -> {
                    found.put(id, p);
                    removeThat(side, p);
                    left.remove(id);
                }));
        left.keySet().forEach(id -> {
            if (!side.isEmpty()) {
                found.put(id, side.remove(0));
            }
        });
    }

    @SuppressWarnings("ReferenceEquality") // two lines of the same words are two
    private static void removeThat(List<Piece> pieces, Piece that) {
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i) == that) {
                pieces.remove(i);
                return;
            }
        }
    }

    /** The ids of statements; two that say the same are still two. */
    static Map<Piece, String> idOf(Map<String, Piece> found) {
        Map<Piece, String> ids = new IdentityHashMap<>();
        found.forEach((id, piece) -> ids.put(piece, id));
        return ids;
    }
}
