package baywright.share;

import baywright.pack.Consent;
import baywright.pack.PackJson;
import baywright.pack.SignerKey;
import baywright.pack.Version;
import baywright.workspace.Fields;
import baywright.workspace.JsonText;
import baywright.workspace.Shown;
import baywright.workspace.WorkspaceException;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Which packs a site has taken, in {@code packs/lock.json}.
 *
 * @param packs in order of id, each once
 */
public record PackLock(List<TakenPack> packs) {

    /** The file, below the workspace. */
    public static final String FILE = "packs/lock.json";

    private static final String KIND = "packs";
    private static final int VERSION = 1;
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /** No packs. */
    public static final PackLock NONE = new PackLock(List.of());

    /** @throws IllegalArgumentException when two packs have one id */
    public PackLock {
        packs = packs.stream().sorted(Comparator.comparing(TakenPack::id)).toList();
        if (packs.stream().map(TakenPack::id).distinct().count() != packs.size()) {
            throw new IllegalArgumentException("a pack is taken once, got " + packs);
        }
    }

    /** The record of a pack. */
    public Optional<TakenPack> pack(String id) {
        return packs.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /** The same with a pack in the place of that with its id. */
    PackLock with(TakenPack taken) {
        return new PackLock(Stream.concat(packs.stream().filter(p -> !p.id().equals(taken.id())), Stream.of(taken))
                .toList());
    }

    /**
     * Reads the record.
     *
     * @throws WorkspaceException with the first thing that is wrong: file, line, column and field, what was met, how to mend it
     */
    static PackLock read(String text) {
        JsonText<PackLock> read =
                JsonText.read(FILE, text.getBytes(StandardCharsets.UTF_8), KIND, VERSION, PackLock::read);
        return read.value()
                .orElseThrow(
                        () -> new WorkspaceException(read.error().orElseThrow().toString()));
    }

    private static Optional<PackLock> read(Fields in) {
        List<TakenPack> packs = new ArrayList<>();
        List<String> ids = new ArrayList<>();
        for (Fields one : in.objects("packs")) {
            String id = one.id("id");
            if (ids.contains(id)) {
                one.refuse("id", "the pack " + Shown.quoted(id) + " is on record already", "keep one of the two");
            }
            ids.add(id);
            String written = one.text("version");
            if (!Version.isVersion(written)) {
                one.refuse("version", "met the text " + Shown.quoted(written), "give a version such as \"1.4.0\"");
            }
            String hash = one.text("manifest");
            if (!HASH.matcher(hash).matches()) {
                one.refuse(
                        "manifest",
                        "met the text " + Shown.quoted(hash),
                        "give 64 digits of a SHA-256, or take the pack again");
            }
            String key = one.text("signer", "");
            Optional<SignerKey> signer = SignerKey.of(key);
            if (!key.isEmpty() && signer.isEmpty()) {
                one.refuse("signer", "met the text " + Shown.quoted(key), "give 32 bytes in Base64 or leave it out");
            }
            String yes = one.text("consent", "");
            Optional<Consent> consent = Consent.of(yes);
            if (!yes.isEmpty() && consent.isEmpty()) {
                one.refuse("consent", "met the text " + Shown.quoted(yes), "give a name, a colon and a reason");
            }
            Optional<Instant> at = instant(one);
            List<String> leftOut = one.texts("leftOut");
            one.done();
            one.whenSound(() -> packs.add(
                    new TakenPack(id, Version.of(written), hash, signer, consent, at.orElseThrow(), leftOut)));
        }
        in.done();
        return in.whenSound(() -> new PackLock(packs));
    }

    private static Optional<Instant> instant(Fields one) {
        String written = one.text("taken");
        try {
            return Optional.of(Instant.parse(written));
        } catch (DateTimeException e) {
            one.refuse(
                    "taken", "met the text " + Shown.quoted(written), "give a time such as \"2026-12-07T07:00:00Z\"");
            return Optional.empty();
        }
    }

    /** The file's text; the same record gives the same text. */
    String text() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("schema", "baywright/" + KIND + "/" + VERSION);
        var all = json.putArray("packs");
        for (TakenPack pack : packs) {
            ObjectNode one = all.addObject();
            one.put("id", pack.id());
            one.put("version", pack.version().toString());
            one.put("manifest", pack.hash());
            pack.signer().ifPresent(key -> one.put("signer", key.toString()));
            pack.consent().ifPresent(yes -> one.put("consent", yes.by() + ": " + yes.why()));
            one.put("taken", pack.at().toString());
            if (!pack.leftOut().isEmpty()) {
                var left = one.putArray("leftOut");
                pack.leftOut().forEach(left::add);
            }
        }
        return PackJson.text(json);
    }
}
