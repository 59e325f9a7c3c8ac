package baywright.share;

import baywright.editor.Piece;
import baywright.editor.Pieces;
import baywright.script.Problem;
import baywright.script.ScriptParser;
import baywright.share.Clash.Kind;
import baywright.share.Clash.Side;
import baywright.share.Clash.Written;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Merges two sides that began from the same scripts, by what is declared and not by lines.
 *
 * <p>What one side alone changed is taken from it, the same change of both is one. A declaration is merged down to the lines of its
 * blocks; a stage in another file is the same stage. Where both changed the same line differently, that is a {@link Clash}, and ours
 * stays until somebody decides. Neither layout nor order is a change to clash over. Swapping the sides swaps the clashes and
 * changes nothing else.
 */
public final class DeclarationMerge {

    private static final String SCRIPT = ".groovy";

    private final Version base;
    private final Version ours;
    private final Version theirs;
    private final Function<Clash, Optional<Side>> decide;
    private final boolean former;
    private final List<Clash> clashes = new ArrayList<>();
    private final Map<String, Optional<Piece>> merged = new HashMap<>();

    /** One version: its scripts by the names under which all versions know them, and what is in them by id. */
    private static final class Version {
        private final Map<String, Layout> files = new TreeMap<>();
        private final Map<String, String> names = new HashMap<>();
        private final Map<String, Piece> pieces = new HashMap<>();
        private final Map<String, String> fileOf = new HashMap<>();
        private final Map<String, List<String>> ids = new HashMap<>();

        Version(Map<String, String> texts, Map<String, String> knownAs) {
            texts.forEach((name, text) -> {
                String known = knownAs.getOrDefault(name, name);
                files.put(known, Layout.of(text));
                names.put(known, name);
            });
        }

        Layout file(String known) {
            return files.getOrDefault(known, Layout.NONE);
        }

        Pieces pieces(String known) {
            return file(known).pieces();
        }

        String name(String id) {
            return names.getOrDefault(fileOf.getOrDefault(id, ""), "");
        }

        List<Piece> declarations() {
            return files.values().stream()
                    .flatMap(f -> f.pieces().pieces().stream())
                    .filter(Keys::isDeclaration)
                    .toList();
        }

        void know(Map<String, Piece> found) {
            pieces.putAll(found);
        }

        /** After all pieces are known. */
        void settle() {
            Map<Piece, String> idOf = Keys.idOf(pieces);
            files.forEach((known, layout) -> {
                List<String> here =
                        layout.pieces().pieces().stream().map(idOf::get).toList();
                ids.put(known, here);
                here.forEach(id -> fileOf.put(id, known));
            });
        }

        /** Takes a declaration as it is in another version. */
        void takeFrom(Version other, String id) {
            pieces.remove(id);
            fileOf.remove(id);
            if (other.pieces.containsKey(id)) {
                pieces.put(id, other.pieces.get(id));
                fileOf.put(id, other.fileOf.get(id));
            }
        }
    }

    private DeclarationMerge(
            Version base, Version ours, Version theirs, Function<Clash, Optional<Side>> decide, boolean former) {
        this.base = base;
        this.ours = ours;
        this.theirs = theirs;
        this.decide = decide;
        this.former = former;
        Keys.Found declared = Keys.find(base.declarations(), ours.declarations(), theirs.declarations(), Keys::of);
        know(declared);
        for (String known : knownFiles()) {
            know(Keys.find(
                    others(base, known), others(ours, known), others(theirs, known), p -> known + "/" + Keys.of(p)));
        }
        Stream.of(base, ours, theirs).forEach(Version::settle);
    }

    private static List<Piece> others(Version version, String known) {
        return version.pieces(known).pieces().stream()
                .filter(p -> !Keys.isDeclaration(p))
                .toList();
    }

    private void know(Keys.Found found) {
        base.know(found.base());
        ours.know(found.ours());
        theirs.know(found.theirs());
    }

    private Set<String> knownFiles() {
        Set<String> known = new TreeSet<>();
        Stream.of(base, ours, theirs).forEach(v -> known.addAll(v.files.keySet()));
        return known;
    }

    /** Merges with nothing decided. */
    public static Merged of(Map<String, String> base, Map<String, String> ours, Map<String, String> theirs) {
        return of(base, ours, theirs, clash -> Optional.empty());
    }

    /**
     * Merges.
     *
     * @param base   text of each file that both sides began from, by its name below the folder of the scripts
     * @param ours   the same of this site
     * @param theirs the same of the other side
     * @param decide whose is taken of what clashes; empty: nobody's decision, ours
     */
    public static Merged of(
            Map<String, String> base,
            Map<String, String> ours,
            Map<String, String> theirs,
            Function<Clash, Optional<Side>> decide) {
        return of(base, ours, theirs, decide, false);
    }

    /**
     * What both sides have brought where they agree: what one alone changed is taken, and where both changed it differently it is as it was
     * before, so that whoever merges with this as a base meets the clash again.
     */
    public static Merged agreed(Map<String, String> base, Map<String, String> ours, Map<String, String> theirs) {
        return of(base, ours, theirs, clash -> Optional.empty(), true);
    }

    private static Merged of(
            Map<String, String> base,
            Map<String, String> ours,
            Map<String, String> theirs,
            Function<Clash, Optional<Side>> decide,
            boolean former) {
        DeclarationMerge merge = between(base, ours, theirs, decide, former);
        SortedMap<String, String> texts = merge.scripts();
        texts.putAll(merge.wholeFiles(base, ours, theirs));
        return new Merged(texts, merge.clashes, problems(texts, List.of(ours.values(), theirs.values())));
    }

    /**
     * What would be theirs if only some of it had been changed since the base.
     *
     * @param wanted tells by name, such as {@code stage iron-removal}, which declarations are taken; what a file holds beside
     *               declarations, such as a helper, is taken with any of them
     */
    public static SortedMap<String, String> part(
            Map<String, String> base, Map<String, String> theirs, Predicate<String> wanted) {
        DeclarationMerge merge = between(base, base, theirs, clash -> Optional.empty(), false);
        merge.restrict(wanted);
        SortedMap<String, String> texts = merge.scripts();
        Stream.concat(base.keySet().stream(), theirs.keySet().stream())
                .filter(name -> !isScript(name))
                .distinct()
                .forEach(name -> DataMerge.part(
                                name,
                                Optional.ofNullable(base.get(name)),
                                Optional.ofNullable(theirs.get(name)),
                                wanted)
                        .ifPresent(text -> texts.put(name, text)));
        return texts;
    }

    /**
     * The names of what differs between two versions, such as {@code stage iron-removal} and {@code shape saloon}; of what is no
     * declaration that of its file.
     */
    public static Set<String> differences(Map<String, String> before, Map<String, String> after) {
        DeclarationMerge merge = between(before, before, after, clash -> Optional.empty(), false);
        Set<String> names = new TreeSet<>();
        merge.allIds().forEach(id -> {
            Piece old = merge.base.pieces.get(id);
            Piece now = merge.theirs.pieces.get(id);
            if (old == null || now == null || !Pieces.alike(old.core(), now.core())) {
                names.add(Keys.isDeclaration(old == null ? now : old) ? id : id.substring(0, id.lastIndexOf('/')));
            }
        });
        Stream.concat(before.keySet().stream(), after.keySet().stream())
                .filter(name -> !isScript(name))
                .forEach(name -> names.addAll(DataMerge.differences(
                        name, Optional.ofNullable(before.get(name)), Optional.ofNullable(after.get(name)))));
        return names;
    }

    /** The names of everything that files declare, such as {@code stage iron-removal} and {@code shape saloon}. */
    public static Set<String> declared(Map<String, String> texts) {
        Set<String> names = new TreeSet<>();
        scriptsOf(texts)
                .values()
                .forEach(text -> Pieces.of(text).pieces().stream()
                        .filter(Keys::isDeclaration)
                        .forEach(p -> names.add(Keys.of(p))));
        texts.forEach((name, text) -> names.addAll(DataMerge.declared(name, text)));
        return names;
    }

    private static DeclarationMerge between(
            Map<String, String> base,
            Map<String, String> ours,
            Map<String, String> theirs,
            Function<Clash, Optional<Side>> decide,
            boolean former) {
        Map<String, String> b = scriptsOf(base);
        Map<String, String> o = scriptsOf(ours);
        Map<String, String> t = scriptsOf(theirs);
        Renames ourRenames = Renames.of(b, o);
        Renames theirRenames = Renames.of(b, t);
        return new DeclarationMerge(
                new Version(b, Map.of()),
                new Version(o, ourRenames.oldNames(t.keySet(), theirRenames)),
                new Version(t, theirRenames.oldNames(o.keySet(), ourRenames)),
                decide,
                former);
    }

    private static boolean isScript(String name) {
        return name.endsWith(SCRIPT);
    }

    private static Map<String, String> scriptsOf(Map<String, String> texts) {
        Map<String, String> scripts = new TreeMap<>(texts);
        scripts.keySet().removeIf(name -> !isScript(name));
        return scripts;
    }

    private Set<String> allIds() {
        Set<String> ids = new LinkedHashSet<>();
        Stream.of(base, ours, theirs).forEach(v -> v.ids.values().forEach(ids::addAll));
        return ids;
    }

    private void restrict(Predicate<String> wanted) {
        Set<String> whole = new TreeSet<>();
        Stream.of(base, theirs)
                .forEach(v -> v.ids.forEach((known, ids) -> {
                    if (ids.stream().anyMatch(wanted)) {
                        whole.add(known);
                    }
                }));
        for (String known : base.files.keySet()) {
            if (!whole.contains(known)) {
                theirs.files.put(known, base.file(known));
                theirs.names.put(known, base.names.get(known));
            }
        }
        for (String id : allIds()) {
            Piece piece = Stream.of(base, theirs)
                    .map(v -> v.pieces.get(id))
                    .filter(Objects::nonNull)
                    .findFirst()
                    .orElseThrow();
            boolean taken = Keys.isDeclaration(piece)
                    ? wanted.test(id)
                    : Stream.of(base, theirs).anyMatch(v -> whole.contains(v.fileOf.getOrDefault(id, "")));
            if (!taken) {
                theirs.takeFrom(base, id);
            }
        }
    }

    // files

    private SortedMap<String, String> scripts() {
        SortedMap<String, String> texts = new TreeMap<>();
        for (String known : knownFiles()) {
            List<String> order = Sequence.of(
                    base.ids.getOrDefault(known, List.of()),
                    ours.ids.getOrDefault(known, List.of()),
                    theirs.ids.getOrDefault(known, List.of()),
                    id -> Stream.of(ours, theirs, base)
                            .map(v -> v.pieces.get(id))
                            .filter(Objects::nonNull)
                            .map(Piece::text)
                            .findFirst()
                            .orElse(""));
            List<Piece> pieces = new ArrayList<>();
            for (String id : order) {
                if (known.equals(home(id))) {
                    merged(id).ifPresent(pieces::add);
                }
            }
            text(known, pieces).ifPresent(t -> texts.merge(name(known), t, String::concat));
        }
        return texts;
    }

    private Optional<Piece> merged(String id) {
        if (!merged.containsKey(id)) {
            merged.put(id, merge(id));
        }
        return merged.get(id);
    }

    private Optional<Piece> merge(String id) {
        Piece any = Stream.of(base, ours, theirs)
                .map(v -> v.pieces.get(id))
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow();
        boolean declared = Keys.isDeclaration(any);
        int slash = id.lastIndexOf('/');
        PieceMerge.Files files = new PieceMerge.Files(base.name(id), ours.name(id), theirs.name(id));
        return new PieceMerge(declared ? id : id.substring(0, slash), files, decide, former, clashes)
                .merge(
                        declared ? List.of() : List.of(id.substring(slash + 1)),
                        Optional.ofNullable(base.pieces.get(id)),
                        Optional.ofNullable(ours.pieces.get(id)),
                        Optional.ofNullable(theirs.pieces.get(id)));
    }

    /** The file in which a statement is to be; of two moves to different files one is taken. */
    private String home(String id) {
        Piece our = ours.pieces.get(id);
        Piece their = theirs.pieces.get(id);
        if (!base.pieces.containsKey(id) && our != null && their != null && !Pieces.alike(our.core(), their.core())) {
            boolean isOurs = merged(id).filter(p -> p.core().equals(our.core())).isPresent();
            return isOurs ? ours.fileOf.get(id) : theirs.fileOf.get(id);
        }
        return one(base.fileOf.get(id), ours.fileOf.get(id), theirs.fileOf.get(id));
    }

    /** How a file is to be named. */
    private String name(String known) {
        return one(base.names.get(known), ours.names.get(known), theirs.names.get(known));
    }

    private static String one(String base, String ours, String theirs) {
        if (ours == null || theirs == null) {
            return ours != null ? ours : theirs != null ? theirs : base == null ? "" : base;
        }
        if (ours.equals(theirs) || theirs.equals(base)) {
            return ours;
        }
        return ours.equals(base) || theirs.compareTo(ours) < 0 ? theirs : ours;
    }

    private Optional<String> text(String known, List<Piece> pieces) {
        Pieces b = base.pieces(known);
        Pieces o = ours.pieces(known);
        Pieces t = theirs.pieces(known);
        String header = between(known, b.header(), o.header(), t.header());
        StringBuilder text = new StringBuilder(header);
        PieceMerge.parted(pieces).forEach(p -> text.append(p.text()));
        text.append(between(known, b.rest(), o.rest(), t.rest()));
        boolean there = ours.files.containsKey(known) == base.files.containsKey(known)
                ? theirs.files.containsKey(known)
                : ours.files.containsKey(known);
        if (!there && text.toString().isBlank()) {
            return Optional.empty();
        }
        return Optional.of(layout(known).written(text.toString()));
    }

    private String between(String known, String b, String o, String t) {
        return Trivia.merge(b, o, t).orElseGet(() -> {
            Clash open = clash(known, List.of("comment"), Kind.COMMENT, b, o, t);
            return decided(open, b, o, t);
        });
    }

    private Layout layout(String known) {
        Layout b = base.file(known);
        Layout o = ours.files.getOrDefault(known, theirs.file(known));
        Layout t = theirs.files.getOrDefault(known, o);
        boolean added = !base.files.containsKey(known);
        return new Layout(
                added ? o.mark() && t.mark() : o.mark() == b.mark() ? t.mark() : o.mark(),
                added ? o.crlf() && t.crlf() : o.crlf() == b.crlf() ? t.crlf() : o.crlf(),
                added ? o.open() && t.open() : o.open() == b.open() ? t.open() : o.open(),
                o.pieces());
    }

    private Clash clash(String declaration, List<String> path, Kind kind, String b, String o, String t) {
        return new Clash(
                declaration,
                path,
                kind,
                Optional.ofNullable(b).map(x -> new Written(declaration, x)),
                Optional.ofNullable(o).map(x -> new Written(declaration, x)),
                Optional.ofNullable(t).map(x -> new Written(declaration, x)),
                Optional.empty());
    }

    /** Whose text is taken of what clashes. */
    private String decided(Clash open, String b, String o, String t) {
        Side side = side(open);
        if (former && clashes.get(clashes.size() - 1).decided().isEmpty()) {
            return b;
        }
        return side == Side.OURS ? o : t;
    }

    /** Notes a clash with what is decided of it; until it is decided ours stands. */
    private Side side(Clash open) {
        Optional<Side> side = decide.apply(open);
        clashes.add(new Clash(
                open.declaration(), open.path(), open.kind(), open.before(), open.ours(), open.theirs(), side));
        return side.orElse(Side.OURS);
    }

    private Map<String, String> wholeFiles(Map<String, String> b, Map<String, String> o, Map<String, String> t) {
        Set<String> names = new TreeSet<>();
        Stream.of(b, o, t).forEach(m -> names.addAll(m.keySet()));
        Map<String, String> merged = new TreeMap<>();
        for (String name : names) {
            if (!isScript(name)) {
                String was = b.get(name);
                String our = o.get(name);
                String their = t.get(name);
                boolean isOurs = Objects.equals(our, their) || Objects.equals(was, their);
                boolean isTheirs = !isOurs && Objects.equals(was, our);
                Optional<String> text =
                        isOurs || isTheirs ? Optional.ofNullable(isOurs ? our : their) : both(name, was, our, their);
                text.ifPresent(found -> merged.put(name, found));
            }
        }
        return merged;
    }

    /** A file that each side has changed in its own way; of what stands as it was the whole file does. */
    private Optional<String> both(String name, String was, String our, String their) {
        Optional<String> parts = former || our == null || their == null
                ? Optional.empty()
                : DataMerge.merge(name, Optional.ofNullable(was), our, their, this::side);
        return parts.or(() -> Optional.ofNullable(
                decided(clash(name, List.of(), kind(was, our, their), was, our, their), was, our, their)));
    }

    private static Kind kind(String was, String our, String their) {
        return was == null
                ? Kind.ADDED
                : our == null ? Kind.TAKEN_OUT_HERE : their == null ? Kind.TAKEN_OUT_THERE : Kind.CHANGED;
    }

    /** What is wrong with texts that neither side has. */
    private static List<Problem> problems(Map<String, String> texts, List<Collection<String>> sides) {
        Set<String> known = new LinkedHashSet<>();
        sides.forEach(known::addAll);
        return texts.entrySet().stream()
                .filter(e -> isScript(e.getKey()) && !known.contains(e.getValue()))
                .flatMap(e -> ScriptParser.parse(e.getKey(), e.getValue()).problems().stream())
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .toList();
    }
}
