package baywright.share;

import baywright.share.Clash.Kind;
import baywright.share.Clash.Side;
import baywright.share.Clash.Written;
import baywright.share.DataFile.Value;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Merges two sides of a file that is no script, such as vehicle shapes or the words of another language, by what it lists: a shape by its
 * id, in it a zone by its id, in that each value; of words each one by what it stands for. A list of words is merged word by word. Order
 * is no change, and neither are layout and {@code 1.5} for {@code 1.50}.
 */
final class DataMerge {

    /** The file whose list has declarations: a vehicle shape is one, as a stage is. */
    private static final String SHAPES = "shapes.json";

    private static final String LIST = "shapes";
    private static final String SHAPE = "shape ";

    private final String file;
    private final Function<Clash, Side> decide;

    private DataMerge(String file, Function<Clash, Side> decide) {
        this.file = file;
        this.decide = decide;
    }

    /**
     * Merges a file that both sides have and both have changed.
     *
     * @param was    empty: both sides added it
     * @param decide whose is taken of what clashes
     * @return empty when one of the texts cannot be taken apart: the file is one thing as a whole
     */
    static Optional<String> merge(
            String file, Optional<String> was, String ours, String theirs, Function<Clash, Side> decide) {
        Optional<DataFile> base = was.flatMap(DataFile::of);
        Optional<DataFile> our = DataFile.of(ours);
        Optional<DataFile> their = DataFile.of(theirs);
        if (our.isEmpty() || their.isEmpty() || base.isPresent() != was.isPresent()) {
            return Optional.empty();
        }
        DataFile o = our.get();
        DataFile t = their.get();
        boolean parts = o.root().kind() == DataFile.Kind.OBJECT && t.root().kind() == DataFile.Kind.OBJECT;
        if (!parts || base.filter(b -> b.root().kind() != DataFile.Kind.OBJECT).isPresent()) {
            return Optional.empty();
        }
        return new DataMerge(file, decide)
                .merge(List.of(), base.map(DataFile::root), Optional.of(o.root()), Optional.of(t.root()))
                .map(root -> new DataFile(
                                one(base.map(DataFile::mark), o.mark(), t.mark()),
                                one(base.map(DataFile::crlf), o.crlf(), t.crlf()),
                                one(base.map(DataFile::open), o.open(), t.open()),
                                root)
                        .written(root.written()));
    }

    private static boolean one(Optional<Boolean> base, boolean ours, boolean theirs) {
        return base.map(b -> ours == b ? theirs : ours).orElse(ours && theirs);
    }

    /** Names of the vehicle shapes that a file declares, such as {@code shape saloon}; of another file none. */
    static Set<String> declared(String file, String text) {
        return shapes(file, text).keySet().stream().map(id -> SHAPE + id).collect(Collectors.toSet());
    }

    private static Map<String, Value> shapes(String file, String text) {
        Optional<Value> list = file.equals(SHAPES)
                ? DataFile.of(text).map(f -> f.root().parts().get(LIST)).filter(l -> l.kind() == DataFile.Kind.THINGS)
                : Optional.empty();
        return list.map(Value::parts).orElse(Map.of());
    }

    /** Names of what differs: of shapes each, of anything else the file. */
    static Set<String> differences(String file, Optional<String> before, Optional<String> after) {
        if (before.flatMap(DataMerge::said).equals(after.flatMap(DataMerge::said))) {
            return Set.of();
        }
        Map<String, Value> old = before.map(text -> shapes(file, text)).orElse(Map.of());
        Map<String, Value> now = after.map(text -> shapes(file, text)).orElse(Map.of());
        Set<String> names = Stream.concat(old.keySet().stream(), now.keySet().stream())
                .filter(id -> !said(old, id).equals(said(now, id)))
                .map(id -> SHAPE + id)
                .collect(Collectors.toSet());
        return names.isEmpty() ? Set.of(file) : names;
    }

    private static Optional<String> said(String text) {
        return Optional.of(DataFile.of(text).map(f -> f.root().said()).orElse(text));
    }

    private static Optional<String> said(Map<String, Value> shapes, String id) {
        return Optional.ofNullable(shapes.get(id)).map(Value::said);
    }

    /** What a file would be if only some of it had been changed since the base; empty: it is not there. */
    static Optional<String> part(
            String file, Optional<String> base, Optional<String> theirs, Predicate<String> wanted) {
        Set<String> all = differences(file, base, theirs);
        Set<String> taken = all.stream().filter(wanted).collect(Collectors.toSet());
        if (taken.equals(all)) {
            return theirs;
        }
        if (taken.isEmpty()) {
            return base;
        }
        // each shape that is not taken stands as it was: the other side of a merge in which nothing else has changed
        Optional<DataFile> now = theirs.flatMap(DataFile::of);
        Map<String, Value> old = base.map(text -> shapes(file, text)).orElse(Map.of());
        Map<String, Value> members = new LinkedHashMap<>(
                now.or(() -> base.flatMap(DataFile::of)).orElseThrow().root().parts());
        Map<String, Value> shapes =
                new LinkedHashMap<>(theirs.map(text -> shapes(file, text)).orElse(Map.of()));
        Set<String> ids = new LinkedHashSet<>(old.keySet());
        ids.addAll(shapes.keySet());
        for (String id : ids) {
            if (!taken.contains(SHAPE + id)) {
                Optional.ofNullable(old.get(id)).ifPresentOrElse(o -> shapes.put(id, o), () -> shapes.remove(id));
            }
        }
        members.put(LIST, made(DataFile.Kind.THINGS, shapes, 1, false, false));
        DataFile like = now.or(() -> base.flatMap(DataFile::of)).orElseThrow();
        return Optional.of(like.written(
                made(DataFile.Kind.OBJECT, members, 0, false, false).written()));
    }

    // values

    private Optional<Value> merge(
            List<String> path, Optional<Value> base, Optional<Value> ours, Optional<Value> theirs) {
        if (alike(ours, theirs)) {
            return ours.map(o -> written(base, o, theirs.orElseThrow()));
        }
        if (alike(base, theirs)) {
            return ours;
        }
        if (alike(base, ours)) {
            return theirs;
        }
        if (ours.isPresent() && theirs.isPresent()) {
            Optional<DataFile.Kind> kind = parted(path, base, ours.get(), theirs.get());
            if (kind.isPresent()) {
                return Optional.of(parts(kind.get(), path, base, ours.get(), theirs.get()));
            }
        }
        return side(path, base, ours, theirs) == Side.OURS ? ours : theirs;
    }

    private static boolean alike(Optional<Value> one, Optional<Value> other) {
        return one.map(Value::said).equals(other.map(Value::said));
    }

    /** Of two layouts of the same the one that somebody has changed; of two changed ones either. */
    private static Value written(Optional<Value> base, Value ours, Value theirs) {
        String was = base.map(Value::written).orElse("");
        if (ours.written().equals(was) || theirs.written().equals(was)) {
            return ours.written().equals(was) ? theirs : ours;
        }
        return ours.written().compareTo(theirs.written()) <= 0 ? ours : theirs;
    }

    /** As what two values are merged part by part; empty: they are not. */
    private static Optional<DataFile.Kind> parted(List<String> path, Optional<Value> base, Value ours, Value theirs) {
        DataFile.Kind kind = ours.parts().isEmpty() ? theirs.kind() : ours.kind();
        boolean same = Stream.of(Optional.of(ours), Optional.of(theirs), base)
                .flatMap(Optional::stream)
                .allMatch(v -> v.kind() == kind || isEmptyList(v, kind));
        boolean known = base.isPresent() || isOuter(path);
        return same && known && kind != DataFile.Kind.WHOLE ? Optional.of(kind) : Optional.empty();
    }

    /** The file and the lists in it; these are merged even where both sides have added them. A thing that both have added is one. */
    private static boolean isOuter(List<String> path) {
        return path.isEmpty() || (path.size() == 1 && path.get(0).indexOf(' ') < 0);
    }

    /** An empty list is one of things as well as one of words. */
    private static boolean isEmptyList(Value value, DataFile.Kind kind) {
        return kind != DataFile.Kind.OBJECT
                && value.kind() == DataFile.Kind.WORDS
                && value.parts().isEmpty();
    }

    private Value parts(DataFile.Kind kind, List<String> path, Optional<Value> base, Value ours, Value theirs) {
        Map<String, Value> b = base.map(Value::parts).orElse(Map.of());
        Map<String, Value> o = ours.parts();
        Map<String, Value> t = theirs.parts();
        List<String> order = Sequence.of(
                List.copyOf(b.keySet()),
                List.copyOf(o.keySet()),
                List.copyOf(t.keySet()),
                key -> Stream.of(o.get(key), t.get(key), b.get(key))
                        .filter(Objects::nonNull)
                        .map(Value::written)
                        .sorted()
                        .findFirst()
                        .orElse(""));
        Map<String, Value> merged = new LinkedHashMap<>();
        for (String key : order) {
            merge(
                            inwards(kind, path, key),
                            Optional.ofNullable(b.get(key)),
                            Optional.ofNullable(o.get(key)),
                            Optional.ofNullable(t.get(key)))
                    .ifPresent(value -> merged.put(key, value));
        }
        boolean flat = !ours.written().contains("\n") && !theirs.written().contains("\n");
        boolean wide = ours.written().startsWith("{ ") && theirs.written().startsWith("{ ");
        return made(kind, merged, Math.max(level(ours), level(theirs)), flat, wide);
    }

    /** How far in a value stands, by the line that closes it. */
    private static int level(Value value) {
        String last = value.written().substring(value.written().lastIndexOf('\n') + 1);
        return (last.length() - last.stripLeading().length()) / 2;
    }

    private static List<String> inwards(DataFile.Kind kind, List<String> path, String key) {
        List<String> in = new ArrayList<>(path);
        if (kind == DataFile.Kind.THINGS && !path.isEmpty()) {
            String list = in.remove(in.size() - 1);
            in.add((list.endsWith("s") ? list.substring(0, list.length() - 1) : list) + " " + key);
        } else {
            in.add(key);
        }
        return in;
    }

    private static Value made(DataFile.Kind kind, Map<String, Value> parts, int level, boolean flat, boolean wide) {
        String open = kind == DataFile.Kind.OBJECT ? "{" : "[";
        String close = kind == DataFile.Kind.OBJECT ? "}" : "]";
        List<String> all = new ArrayList<>();
        parts.forEach((key, value) -> all.add(
                kind == DataFile.Kind.OBJECT ? "\"" + escaped(key) + "\": " + value.written() : value.written()));
        String text;
        if (all.isEmpty()) {
            text = open + close;
        } else if (flat) {
            String room = wide ? " " : "";
            text = open + room + String.join(", ", all) + room + close;
        } else {
            String line = "\n" + "  ".repeat(level);
            text = open + line + "  " + String.join("," + line + "  ", all) + line + close;
        }
        return DataFile.made(kind, text, parts);
    }

    private static String escaped(String key) {
        return new String(JsonStringEncoder.getInstance().quoteAsString(key));
    }

    private Side side(List<String> path, Optional<Value> base, Optional<Value> ours, Optional<Value> theirs) {
        Kind kind = base.isEmpty()
                ? Kind.ADDED
                : ours.isEmpty() ? Kind.TAKEN_OUT_HERE : theirs.isEmpty() ? Kind.TAKEN_OUT_THERE : Kind.CHANGED;
        boolean shape = file.equals(SHAPES) && !path.isEmpty() && path.get(0).startsWith(SHAPE);
        return decide.apply(new Clash(
                shape ? path.get(0) : file,
                shape ? path.subList(1, path.size()) : path,
                kind,
                base.map(this::text),
                ours.map(this::text),
                theirs.map(this::text),
                Optional.empty()));
    }

    private Written text(Value value) {
        return new Written(file, value.written());
    }
}
