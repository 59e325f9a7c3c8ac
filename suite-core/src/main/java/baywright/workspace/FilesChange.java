package baywright.workspace;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A change of several files of a workspace that is made as a whole or not at all: of scripts, of the price list and of what is kept of
 * packs. Written down it is a text that tells everything needed to make it or to take it back.
 *
 * @param files what becomes of each file by its name below the workspace, with {@code /}; files that stay as they are are left out
 */
public record FilesChange(SortedMap<String, Replaced> files) {

    private static final String KIND = "change";
    private static final int VERSION = 1;

    /**
     * The text of a file before and after; empty: there is no such file.
     *
     * @param before what it must hold for the change to be made
     * @param after  what it holds then
     */
    public record Replaced(Optional<String> before, Optional<String> after) {}

    /** @throws IllegalArgumentException when a name leads elsewhere than to scripts, the price list or what is kept of packs */
    public FilesChange {
        SortedMap<String, Replaced> real = new TreeMap<>();
        files.forEach((name, file) -> {
            if (!mayChange(name)) {
                throw new IllegalArgumentException("no file of this name is changed with others: '" + name + "'");
            }
            if (!file.before().equals(file.after())) {
                real.put(name, file);
            }
        });
        files = Collections.unmodifiableSortedMap(real);
    }

    public boolean isEmpty() {
        return files.isEmpty();
    }

    /** The change that takes this one back. */
    public FilesChange reversed() {
        SortedMap<String, Replaced> back = new TreeMap<>();
        files.forEach((name, file) -> back.put(name, new Replaced(file.after(), file.before())));
        return new FilesChange(back);
    }

    private static boolean mayChange(String name) {
        boolean clean = !name.contains("\\")
                && !name.contains(":")
                && List.of(name.split("/", -1)).stream().noneMatch(part -> part.isBlank() || part.startsWith("."));
        return clean
                && (name.equals(Workspace.ITEMS)
                        || name.startsWith(Workspace.PACKS + "/")
                        || name.startsWith(Workspace.STAGES + "/"));
    }

    /** Everything about it as one text. */
    public String text() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("schema", "baywright/" + KIND + "/" + VERSION);
            json.writeObjectFieldStart("files");
            for (Map.Entry<String, Replaced> file : files.entrySet()) {
                json.writeObjectFieldStart(file.getKey());
                if (file.getValue().before().isPresent()) {
                    json.writeStringField("before", file.getValue().before().get());
                }
                if (file.getValue().after().isPresent()) {
                    json.writeStringField("after", file.getValue().after().get());
                }
                json.writeEndObject();
            }
            json.writeEndObject();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text.append('\n').toString();
    }

    /** What such a text tells; empty when it is none. */
    public static Optional<FilesChange> read(String text) {
        Optional<Json> json = JsonReader.read(new Report(new Source("change", text)));
        if (!(json.orElse(null) instanceof Json.Obj object)
                || !(object.members().get("schema") instanceof Json.Text schema)
                || !schema.value().equals("baywright/" + KIND + "/" + VERSION)
                || !(object.members().get("files") instanceof Json.Obj named)) {
            return Optional.empty();
        }
        SortedMap<String, Replaced> files = new TreeMap<>();
        for (Map.Entry<String, Json> file : named.members().entrySet()) {
            if (!mayChange(file.getKey()) || !(file.getValue() instanceof Json.Obj texts)) {
                return Optional.empty();
            }
            files.put(file.getKey(), new Replaced(member(texts, "before"), member(texts, "after")));
        }
        return Optional.of(new FilesChange(files));
    }

    private static Optional<String> member(Json.Obj object, String name) {
        return object.members().get(name) instanceof Json.Text text ? Optional.of(text.value()) : Optional.empty();
    }
}
