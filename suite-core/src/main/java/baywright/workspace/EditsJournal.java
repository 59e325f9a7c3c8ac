package baywright.workspace;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/**
 * Edits of a workspace that are not yet saved, in one file of its folder {@code .baywright}. The file is replaced as a whole: after a crash
 * it holds what was noted last or what was noted before that, never a part. Each window that edits keeps a note of its own, which an
 * {@link EditsClaim} holds for it.
 */
public final class EditsJournal {

    static final String FOLDER = ".baywright";
    private static final String FIRST = "unsaved";
    private static final String KEPT = "kept";
    private static final int VERSION = 1;
    private static final long LARGEST = 64L << 20;

    /**
     * What was edited.
     *
     * @param files text of each changed or new file by its name below the workspace, with {@code /}
     * @param gone  names of files that are no more, and of folders of jobs
     */
    public record Edits(SortedMap<String, String> files, List<String> gone) {

        public Edits {
            files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
            gone = List.copyOf(gone);
        }

        public boolean isEmpty() {
            return files.isEmpty() && gone.isEmpty();
        }
    }

    private final Path root;
    private final String stem;

    /** @param root folder of the workspace */
    public EditsJournal(Path root) {
        this(root, 1);
    }

    /** @param number of the note, from 1, where several windows have one */
    EditsJournal(Path root, int number) {
        this.root = root;
        this.stem = number == 1 ? FIRST : FIRST + "-" + number;
    }

    private String fileName() {
        return stem + ".json";
    }

    private String name() {
        return FOLDER + "/" + fileName();
    }

    private Path file() {
        return root.resolve(FOLDER).resolve(fileName());
    }

    /** Whoever holds this file's lock writes the note. */
    Path lockFile() {
        return root.resolve(FOLDER).resolve(stem + ".lock");
    }

    /** Whether something is noted. */
    boolean isThere() {
        return Files.exists(file(), LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * Notes the edits in the place of those noted before; no edits at all remove the note.
     *
     * @throws WorkspaceException when the disk refuses; what was noted before is then still there
     */
    public void write(Edits edits) {
        try {
            if (edits.isEmpty()) {
                Files.deleteIfExists(file());
                return;
            }
            Files.createDirectories(root.resolve(FOLDER));
            refuseLinksOut();
            new AtomicFile(Disk.REAL).write(file(), text(edits).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw DiskFault.notWritten(name(), e);
        }
    }

    private void refuseLinksOut() throws IOException {
        if (!root.resolve(FOLDER).toRealPath().startsWith(root.toRealPath())) {
            throw new WorkspaceException(FOLDER + ": unsaved edits are not kept, a link leads out of the workspace");
        }
    }

    private static String text(Edits edits) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("kind", "unsaved");
            json.writeNumberField("version", VERSION);
            json.writeObjectFieldStart("files");
            for (Map.Entry<String, String> file : edits.files().entrySet()) {
                json.writeStringField(file.getKey(), file.getValue());
            }
            json.writeEndObject();
            json.writeArrayFieldStart("gone");
            for (String name : edits.gone()) {
                json.writeString(name);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text.append('\n').toString();
    }

    /**
     * What was noted last; empty when there is nothing.
     *
     * @throws WorkspaceException when the note cannot be read or is none; it is left as it is
     */
    public Optional<Edits> read() {
        if (!isThere()) {
            return Optional.empty();
        }
        String name = name();
        try {
            if (!file().toRealPath().startsWith(root.toRealPath()) || Files.size(file()) > LARGEST) {
                throw unreadable(name, "it is no note of this program");
            }
            Report report = new Report(new Source(name, Files.readString(file(), StandardCharsets.UTF_8)));
            return Optional.of(JsonReader.read(report)
                    .flatMap(EditsJournal::edits)
                    .orElseThrow(() -> unreadable(name, "it is not whole")));
        } catch (IOException e) {
            throw unreadable(name, DiskFault.reason(e));
        }
    }

    private static WorkspaceException unreadable(String name, String why) {
        return new WorkspaceException(name + ": the unsaved edits of an earlier run cannot be read, " + why
                + "; what was saved is not touched");
    }

    private static Optional<Edits> edits(Json json) {
        if (!(json instanceof Json.Obj object)
                || !(object.members().get("version") instanceof Json.Num version)
                || version.value().intValue() != VERSION
                || !(object.members().get("files") instanceof Json.Obj files)
                || !(object.members().get("gone") instanceof Json.Arr gone)) {
            return Optional.empty();
        }
        SortedMap<String, String> texts = new TreeMap<>();
        files.members().forEach((name, value) -> {
            if (value instanceof Json.Text text && isInside(name)) {
                texts.put(name, text.value());
            }
        });
        List<String> names = new ArrayList<>();
        gone.elements().forEach(value -> {
            if (value instanceof Json.Text text && isInside(text.value())) {
                names.add(text.value());
            }
        });
        return Optional.of(new Edits(texts, names));
    }

    /** Only files that the program itself edits; a note is a file like any other and may come from anywhere. */
    private static boolean isInside(String name) {
        boolean clean = !name.contains("\\")
                && List.of(name.split("/", -1)).stream().noneMatch(part -> part.isBlank() || part.startsWith("."));
        return clean
                && (name.equals(Workspace.SHOP)
                        || name.equals(Workspace.ITEMS)
                        || name.startsWith(Workspace.JOBS + "/")
                        || (name.startsWith(Workspace.STAGES + "/") && name.endsWith(".groovy")));
    }

    /**
     * Puts the note aside, so that it is not offered again and not lost either.
     *
     * @return where it is now; empty when there is none
     */
    public Optional<Path> putAside() {
        if (!isThere()) {
            return Optional.empty();
        }
        try {
            Path aside = fresh(fileName());
            Files.move(file(), aside, StandardCopyOption.ATOMIC_MOVE);
            return Optional.of(aside);
        } catch (IOException e) {
            throw DiskFault.notWritten(name(), e);
        }
    }

    /**
     * Keeps a text that something else takes the place of.
     *
     * @param name the file's name below the workspace
     * @return where it is now
     */
    public Path keep(String name, String text) {
        try {
            Path aside = fresh(name.replace('/', '-'));
            new AtomicFile(Disk.REAL).write(aside, text.getBytes(StandardCharsets.UTF_8));
            return aside;
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
    }

    private Path fresh(String name) throws IOException {
        Path folder = Files.createDirectories(root.resolve(FOLDER).resolve(KEPT));
        refuseLinksOut();
        return folder.resolve(UUID.randomUUID().toString().substring(0, 8) + "-" + name);
    }

    /**
     * A copy of the workspace's texts, without photos and quotes, in which the edits are made.
     *
     * @param copy an empty folder
     * @throws WorkspaceException when it cannot be made
     */
    public void layOut(Edits edits, Path copy) {
        try {
            Map<String, Path> sources = new LinkedHashMap<>();
            try (var all = Files.walk(root, 10)) {
                all.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
                        .forEach(p -> {
                            String name = root.relativize(p).toString().replace('\\', '/');
                            if (isText(name)) {
                                sources.put(name, p);
                            }
                        });
            }
            for (Map.Entry<String, Path> source : sources.entrySet()) {
                boolean isGone = edits.gone().stream()
                        .anyMatch(g ->
                                source.getKey().equals(g) || source.getKey().startsWith(g + "/"));
                if (!isGone && !edits.files().containsKey(source.getKey())) {
                    put(copy, source.getKey(), Files.readAllBytes(source.getValue()));
                }
            }
            for (Map.Entry<String, String> file : edits.files().entrySet()) {
                put(copy, file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw DiskFault.notWritten(copy.toString(), e);
        }
    }

    private static boolean isText(String name) {
        return name.equals(Workspace.SHOP)
                || name.equals(Workspace.ITEMS)
                || name.startsWith(Workspace.STAGES + "/")
                || (name.startsWith(Workspace.JOBS + "/")
                        && !name.startsWith(Workspace.JOBS + "/.")
                        && (name.endsWith("/" + Workspace.JOB) || name.endsWith("/" + Workspace.READINGS)));
    }

    private static void put(Path copy, String name, byte[] bytes) throws IOException {
        Path file = copy.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
