package baywright.pack;

import baywright.workspace.Fields;
import baywright.workspace.JsonText;
import baywright.workspace.Shown;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import baywright.workspace.WorkspaceWriter;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Whose packs a site takes: a plain list in the workspace, kept by people. */
public final class TrustList {

    /** The file, below the workspace. */
    public static final String FILE = "packs/trusted.json";

    static final String KIND = "trusted";
    static final int VERSION = 1;

    private static final int LARGEST = 1 << 20;

    /**
     * Somebody whose packs are taken.
     *
     * @param name  of the site or person, as this site calls them; no other on the list has it
     * @param key   theirs
     * @param since the day on which the key came on the list
     * @param by    who put it there
     */
    public record Trusted(String name, SignerKey key, LocalDate since, String by) {}

    private final List<Trusted> all;
    private final Optional<String> text;

    private TrustList(List<Trusted> all, Optional<String> text) {
        this.all = List.copyOf(all);
        this.text = text;
    }

    /** A list on which nobody stands. */
    public static TrustList nobody() {
        return new TrustList(List.of(), Optional.empty());
    }

    /**
     * Reads the list of a workspace; without the file nobody stands on it.
     *
     * @throws WorkspaceException when the file cannot be used
     */
    public static TrustList of(Path workspace) {
        Path file = workspace.resolve(FILE);
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            return nobody();
        }
        if (Files.isSymbolicLink(file) || Files.isSymbolicLink(file.getParent())) {
            throw new WorkspaceException(FILE + ": this is a link; put the file itself here");
        }
        try {
            if (Files.size(file) > LARGEST) {
                throw new WorkspaceException(FILE + ": the file is larger than 1 MiB; restore it from a copy");
            }
            byte[] bytes = Files.readAllBytes(file);
            JsonText<List<Trusted>> read = JsonText.read(FILE, bytes, KIND, VERSION, TrustList::read);
            List<Trusted> all = read.value()
                    .orElseThrow(() ->
                            new WorkspaceException(read.error().orElseThrow().toString()));
            return new TrustList(all, Optional.of(new String(bytes, StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new WorkspaceException(FILE + ": the file cannot be read (" + PackFile.reason(e) + ")", e);
        }
    }

    private static Optional<List<Trusted>> read(Fields in) {
        List<Trusted> all = new ArrayList<>();
        Set<String> names = new HashSet<>();
        Set<SignerKey> keys = new HashSet<>();
        for (Fields one : in.objects("trusted")) {
            String name = one.title("name");
            String written = one.text("publicKey");
            String since = one.text("since");
            String by = one.title("by");
            Optional<SignerKey> key = SignerKey.of(written);
            Optional<LocalDate> day = day(since);
            if (key.isEmpty()) {
                one.refuse("publicKey", "met the text " + Shown.quoted(written), "give 32 bytes in Base64");
            }
            if (day.isEmpty()) {
                one.refuse("since", "met the text " + Shown.quoted(since), "give a day such as \"2026-12-07\"");
            }
            if (!names.add(name)) {
                one.refuse("name", "the name " + Shown.quoted(name) + " is on the list already", "give each its own");
            }
            if (key.isPresent() && !keys.add(key.get())) {
                one.refuse("publicKey", "the key is on the list already", "keep one of the two");
            }
            one.done();
            key.ifPresent(k -> day.ifPresent(d -> all.add(new Trusted(name, k, d, by))));
        }
        in.done();
        return in.whenSound(() -> all);
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Everybody on the list, in its order. */
    public List<Trusted> all() {
        return all;
    }

    /**
     * The list with one more.
     *
     * @throws WorkspaceException when the name or the key is on it already
     */
    public TrustList with(Trusted other) {
        for (Trusted one : all) {
            if (one.name().equals(other.name())) {
                throw new WorkspaceException(FILE + ": the name " + Shown.quoted(one.name())
                        + " is on the list already; remove it first or give another name");
            }
            if (one.key().equals(other.key())) {
                throw new WorkspaceException(
                        FILE + ": the key is on the list already, as that of " + Shown.quoted(one.name()));
            }
        }
        return new TrustList(Stream.concat(all.stream(), Stream.of(other)).toList(), text);
    }

    /**
     * The list without somebody.
     *
     * @throws WorkspaceException when nobody on it has the name
     */
    public TrustList without(String name) {
        List<Trusted> left =
                all.stream().filter(one -> !one.name().equals(name)).toList();
        if (left.size() == all.size()) {
            String nearest = Shown.nearest(name, all.stream().map(Trusted::name).toList());
            throw new WorkspaceException(FILE + ": nobody on the list is called " + Shown.quoted(name)
                    + (nearest.isEmpty() ? "" : "; " + nearest));
        }
        return new TrustList(left, text);
    }

    /** Where a pack comes from, as far as this list knows. */
    public Standing standing(Pack pack) {
        return pack.signature().map(PackSignature::signer).map(this::standing).orElseGet(Standing.Unsigned::new);
    }

    private Standing standing(SignerKey signer) {
        return all.stream()
                .filter(one -> one.key().equals(signer))
                .findFirst()
                .<Standing>map(Standing.Known::new)
                .orElseGet(() -> new Standing.Unknown(signer));
    }

    /**
     * Saves the list; the file is replaced as a whole.
     *
     * @throws WorkspaceException when another program writes the workspace, someone else changed the file, or the disk refuses
     */
    public void save(Workspace workspace) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("schema", "baywright/" + KIND + "/" + VERSION);
        ArrayNode list = json.putArray("trusted");
        all.forEach(one -> list.addObject()
                .put("name", one.name())
                .put("publicKey", one.key().toString())
                .put("since", one.since().toString())
                .put("by", one.by()));
        try (WorkspaceWriter writer = WorkspaceWriter.open(workspace)) {
            writer.saveText(FILE, text, Optional.of(PackJson.text(json)));
        }
    }
}
