package baywright.editor;

import baywright.editor.Reference.Form;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.script.Nearest;
import baywright.script.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Gives a thing another id in all scripts of a library, wherever an argument means that thing and nowhere else. */
public final class Rename {

    /** What can be renamed. */
    public enum Kind {
        STATE("state"),
        SURFACE("surface"),
        FAMILY("family"),
        FACT("fact"),
        FACTOR("factor"),
        STAGE("stage"),
        ITEM("item"),
        INPUT("input");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As the vocabulary names it. */
        public String word() {
            return word;
        }
    }

    /**
     * A field of the workspace's other files that holds such ids too.
     *
     * @param file name relative to the workspace; a star for any folder
     * @param path names of fields joined by dots, {@code []} for each entry of a list, a star for each field
     */
    public record Field(String file, String path) {}

    /**
     * What a rename changes.
     *
     * @param edits  by script
     * @param fields where ids of this kind stand outside scripts; those who keep these files change them
     * @param doubts places of texts equal to the old id that no argument explains; they stay as they are
     */
    public record Change(Map<String, List<TextEdit>> edits, List<Field> fields, List<String> doubts) {
        public Change {
            edits = Map.copyOf(edits);
            fields = List.copyOf(fields);
            doubts = List.copyOf(doubts);
        }

        /** The scripts with the edits made. */
        public Map<String, String> applyTo(Map<String, String> files) {
            Map<String, String> made = new TreeMap<>(files);
            edits.forEach((file, list) -> made.put(file, TextEdit.apply(files.get(file), list)));
            return made;
        }
    }

    /** A rename that cannot be done; the message says why and what would do. */
    public static final class RefusedException extends Exception {
        private static final long serialVersionUID = 1L;

        RefusedException(String message) {
            super(message);
        }
    }

    /** Names that a script cannot read as an input. */
    private static final Set<String> RESERVED = Set.of(
            "if",
            "else",
            "for",
            "while",
            "switch",
            "case",
            "default",
            "break",
            "def",
            "in",
            "true",
            "false",
            "null",
            "it",
            "new",
            "return",
            "class",
            "this",
            "super",
            "as",
            "var",
            "final",
            "do",
            "try",
            "throw",
            "assert",
            "import",
            "package",
            "static",
            "void",
            "int",
            "long",
            "short",
            "byte",
            "char",
            "float",
            "double",
            "boolean",
            "enum",
            "interface",
            "trait",
            "extends",
            "implements",
            "continue",
            "finally",
            "catch",
            "instanceof",
            "native",
            "private",
            "protected",
            "public",
            "abstract",
            "synchronized",
            "transient",
            "volatile",
            "yield",
            "record",
            "sealed",
            "permits",
            "const",
            "goto",
            "strictfp",
            "threadsafe",
            "throws");

    /**
     * Something that stands at a place and can be renamed.
     *
     * @param kind  what it is
     * @param stage for an input the stage that has it; else empty
     * @param id    its id
     */
    public record Subject(Kind kind, String stage, String id) {}

    /** What can be renamed at an offset of a text; empty where nothing of the kind stands. */
    public static Optional<Subject> at(String text, int offset) {
        return References.of(Map.of("", text)).stream()
                .filter(r -> r.from() <= offset && offset <= r.to() && r.form() != Form.LOOSE_TEXT)
                .flatMap(r -> Arrays.stream(Kind.values())
                        .filter(k -> k.word.equals(r.kind()))
                        .map(k -> new Subject(k, k == Kind.INPUT ? r.stage() : "", r.id())))
                .findFirst();
    }

    private final Map<String, String> files;
    private final Kind kind;
    private final String stage;
    private final String oldId;
    private final String newId;
    private final List<Reference> all;

    private Rename(Map<String, String> files, Kind kind, String stage, String oldId, String newId) {
        this.files = new TreeMap<>(files);
        this.kind = kind;
        this.stage = stage;
        this.oldId = oldId;
        this.newId = newId;
        this.all = References.of(this.files);
    }

    /**
     * Renames a state, surface, family, fact, factor, stage or item.
     *
     * @param files   texts of all scripts of the library by name; they should load without syntax errors
     * @param library the library, for items and their ids
     * @throws RefusedException         when the new id is none or is taken, or the old one is unknown or built in
     * @throws IllegalArgumentException for an input, which needs its stage
     */
    public static Change of(Map<String, String> files, Kind kind, String oldId, String newId, Library library)
            throws RefusedException {
        if (kind == Kind.INPUT) {
            throw new IllegalArgumentException("an input needs its stage: use Rename.input");
        }
        Rename rename = new Rename(files, kind, "", oldId, newId);
        Set<String> declared = new TreeSet<>(References.declared(rename.all, kind.word));
        if (kind == Kind.ITEM) {
            declared.addAll(library.itemById().keySet());
        }
        rename.judge(declared, "no " + kind.word + " is called");
        return rename.change();
    }

    /**
     * Renames an input of a stage, there and in the stages that are like it.
     *
     * @throws RefusedException when the new name is none or is taken, or the stage has no such input
     */
    public static Change input(Map<String, String> files, String stage, String oldName, String newName)
            throws RefusedException {
        Rename rename = new Rename(files, Kind.INPUT, stage, oldName, newName);
        Set<String> declared = new TreeSet<>();
        rename.all.stream()
                .filter(r -> r.kind().equals("input") && r.form() == Form.DECLARATION)
                .filter(r -> rename.concerned().contains(r.stage()))
                .forEach(r -> declared.add(r.id()));
        rename.judge(declared, "stage '" + stage + "' has no input");
        rename.judgeLocals();
        return rename.change();
    }

    private void judge(Set<String> declared, String none) throws RefusedException {
        boolean builtIn = (kind == Kind.FACT && LibraryLoader.SIZE.id().equals(oldId))
                || (kind == Kind.SURFACE && oldId.equals("vehicle"));
        if (builtIn) {
            throw new RefusedException(kind.word + " '" + oldId + "' is built in and keeps its id");
        }
        if (!declared.contains(oldId)) {
            throw new RefusedException(none + " '" + oldId + "'" + Nearest.hint(oldId, declared));
        }
        if (!Type.isId(newId)) {
            throw new RefusedException("'" + newId
                    + "' is no id: an id has lower-case letters a to z, digits and single hyphens, a letter first,"
                    + " and up to 60 characters");
        }
        boolean sizeAgain = kind == Kind.FACT && LibraryLoader.SIZE.id().equals(newId);
        if (!newId.equals(oldId) && (declared.contains(newId) || sizeAgain)) {
            throw new RefusedException(kind.word + " '" + newId + "' is already there"
                    + all.stream()
                            .filter(r -> r.kind().equals(kind.word) && r.form() == Form.DECLARATION)
                            .filter(r -> r.id().equals(newId))
                            .findFirst()
                            .map(r -> ", at " + place(r.file(), r.from()))
                            .orElse(""));
        }
        boolean loose = all.stream()
                .anyMatch(r -> r.kind().equals(kind.word) && r.form() == Form.LOOSE_TEXT && r.id().equals(newId));
        if (loose && !newId.equals(oldId)) {
            throw new RefusedException(
                    "'" + newId + "' already stands for something else behind 'keepApart'; choose another id");
        }
    }

    /** An input must not take the name of a local, nor one that a script cannot read. */
    private void judgeLocals() throws RefusedException {
        if (RESERVED.contains(newId)) {
            throw new RefusedException("'" + newId + "' is a word of the grammar; no input can be called so");
        }
        Set<String> locals = new HashSet<>();
        files.values().forEach(text -> Sketch.of(text).forEach(p -> locals(p, locals)));
        if (locals.contains(newId)) {
            throw new RefusedException("'" + newId + "' is already the name of a local; choose another name");
        }
    }

    private static void locals(Phrase phrase, Set<String> names) {
        if (phrase.head().is("def")) {
            phrase.arguments().forEach(a -> a.name().ifPresent(n -> names.add(n.text())));
        }
        if (phrase.head().is("for")) {
            phrase.arguments().stream()
                    .filter(a -> a.tokens().size() > 1)
                    .forEach(a -> names.add(a.tokens().get(1).text()));
        }
        phrase.parameters().forEach(p -> names.add(p.text()));
        phrase.body().forEach(p -> locals(p, names));
    }

    /** The stage and those that are like it, or like those. */
    private Set<String> concerned() {
        Map<String, String> parents = new LinkedHashMap<>();
        files.values()
                .forEach(text -> Sketch.of(text).stream()
                        .filter(p -> p.isWord("stage"))
                        .forEach(p -> parents.put(p.label(), p.named("like"))));
        Set<String> stages = new TreeSet<>(Set.of(stage));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Map.Entry<String, String> one : parents.entrySet()) {
                grown |= stages.contains(one.getValue()) && stages.add(one.getKey());
            }
        }
        return stages;
    }

    private Change change() {
        Set<String> stages = kind == Kind.INPUT ? concerned() : Set.of();
        Map<String, List<TextEdit>> edits = new TreeMap<>();
        Set<String> changed = new HashSet<>();
        for (Reference reference : all) {
            boolean meant = reference.kind().equals(kind.word)
                    && reference.id().equals(oldId)
                    && (kind != Kind.INPUT || stages.contains(reference.stage()));
            if (meant) {
                if (!newId.equals(oldId)) {
                    edits.computeIfAbsent(reference.file(), f -> new ArrayList<>())
                            .add(edit(reference));
                }
                changed.add(reference.file() + ":" + reference.from());
            }
        }
        return new Change(edits, fields(kind), kind == Kind.INPUT ? List.of() : doubts(changed));
    }

    /** Where ids of a kind stand in a workspace outside its scripts. */
    private static List<Field> fields(Kind kind) {
        String job = "jobs/*/job.json";
        return switch (kind) {
            case STATE ->
                List.of(
                        new Field("shop.json", "bays[].conditions[]"),
                        new Field(job, "survey.states[]"),
                        new Field(job, "survey.zones.*.states[]"));
            case SURFACE ->
                List.of(
                        new Field("stages/shapes.json", "shapes[].zones[].surface"),
                        new Field(job, "vehicle.zones.*.surface"),
                        new Field(job, "plan.steps[].zones[] behind 'surface:'"));
            case FACT ->
                List.of(new Field(job, "survey.facts, its keys"), new Field(job, "survey.zones.*.facts, its keys"));
            case STAGE -> List.of(new Field(job, "plan.steps[].stage"));
            case ITEM -> List.of(new Field("items.json", "items[].id"));
            case INPUT -> List.of(new Field(job, "plan.steps[].with, its keys, where the step has this stage"));
            case FAMILY, FACTOR -> List.of();
        };
    }

    private TextEdit edit(Reference reference) {
        boolean hyphen = newId.contains("-");
        return switch (reference.form()) {
            case DECLARATION, TEXT, LOOSE_TEXT -> new TextEdit(reference.from() + 1, reference.to() - 1, newId);
            case BARE_KEY -> whole(reference, hyphen ? "'" + newId + "'" : newId);
            case NAME -> whole(reference, hyphen ? "input('" + newId + "')" : newId);
            case NAME_IN_TEXT -> whole(reference, hyphen ? "{input('" + newId + "')}" : newId);
        };
    }

    private static TextEdit whole(Reference reference, String with) {
        return new TextEdit(reference.from(), reference.to(), with);
    }

    /** Texts equal to the old id that are neither changed nor explained as something else. */
    private List<String> doubts(Set<String> changed) {
        Set<String> explained = new HashSet<>(changed);
        all.forEach(r -> explained.add(r.file() + ":" + r.from()));
        List<String> doubts = new ArrayList<>();
        files.forEach((file, text) -> {
            Set<Integer> plain = new HashSet<>();
            Sketch.of(text).forEach(p -> plainTexts(p, plain));
            Stream<Token> texts = Scan.of(text).stream().filter(Token::isText);
            texts.filter(t -> t.content().equals(oldId))
                    .filter(t -> !explained.contains(file + ":" + t.from()) && !plain.contains(t.from()))
                    .forEach(t -> doubts.add(place(file, t.from())));
        });
        return doubts;
    }

    /** Where a word wants a text or a choice that is no id of anything. */
    private static void plainTexts(Phrase phrase, Set<Integer> plain) {
        phrase.arguments().stream()
                .filter(a ->
                        phrase.param(a).map(p -> p.type().naming().isEmpty()).orElse(false))
                .forEach(a -> a.tokens().forEach(t -> plain.add(t.from())));
        phrase.body().forEach(p -> plainTexts(p, plain));
    }

    private String place(String file, int offset) {
        return new TextPlaces(file, files.get(file)).place(offset).toString();
    }
}
