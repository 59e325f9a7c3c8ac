package baywright.pack;

import baywright.library.StageLanguage;
import baywright.workspace.Fields;
import baywright.workspace.JsonText;
import baywright.workspace.Shown;
import baywright.workspace.Span;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code pack.json}. */
final class ManifestJson {

    static final String KIND = "pack";
    static final int VERSION = 1;

    private static final Pattern VOCABULARY = Pattern.compile("(\\d{1,4})\\.(\\d{1,4})");
    private static final Span BYTES = Span.from(0, PackZip.LARGEST_FILE);
    private static final int MOST_NEEDS = 50;

    private ManifestJson() {}

    /** The file; the same manifest gives the same bytes. */
    static byte[] bytes(Manifest manifest) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("schema", "baywright/" + KIND + "/" + VERSION);
        json.put("id", manifest.id());
        json.put("version", manifest.version().toString());
        json.put("who", manifest.who());
        json.put("why", manifest.why());
        json.put("licence", manifest.licence());
        ArrayNode needs = json.putArray("needs");
        manifest.needs()
                .forEach(need -> needs.addObject()
                        .put("id", need.id())
                        .put("range", need.range().text()));
        json.put("vocabulary", manifest.vocabulary());
        json.put("prices", manifest.prices());
        ArrayNode files = json.putArray("files");
        manifest.files()
                .forEach(file -> files.addObject()
                        .put("path", file.path())
                        .put("sha256", file.sha256())
                        .put("bytes", file.bytes()));
        return PackJson.text(json).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Reads it.
     *
     * @throws PackRefused with the first thing that is wrong
     */
    static Manifest read(String pack, byte[] bytes) {
        JsonText<Manifest> read = JsonText.read(Pack.MANIFEST, bytes, KIND, VERSION, ManifestJson::read);
        Manifest manifest = read.value()
                .orElseThrow(() -> new PackRefused(
                        pack,
                        Refusal.FILE_UNREADABLE,
                        read.error().orElseThrow().toString()));
        if (isNewer(manifest.vocabulary())) {
            throw new PackRefused(pack, Refusal.VOCABULARY, manifest.vocabulary(), StageLanguage.VERSION);
        }
        return manifest;
    }

    private static Optional<Manifest> read(Fields in) {
        String id = in.id("id");
        String version = in.text("version");
        if (!Version.isVersion(version)) {
            in.refuse(
                    "version",
                    "met the text " + Shown.quoted(version),
                    "give a version by Semantic Versioning such as \"1.2.0\", at most " + Version.LONGEST
                            + " characters and nine digits a number");
        }
        String who = in.title("who");
        String why = in.title("why");
        String licence = in.title("licence");
        List<Manifest.Need> needs = needs(in, id);
        String vocabulary = in.text("vocabulary");
        if (!VOCABULARY.matcher(vocabulary).matches()) {
            in.refuse("vocabulary", "met the text " + Shown.quoted(vocabulary), "give a version such as \"1.3\"");
        }
        boolean prices = in.yesNo("prices", false);
        List<Manifest.Entry> files = files(in);
        in.done();
        return in.whenSound(
                () -> new Manifest(id, Version.of(version), who, why, licence, needs, vocabulary, prices, files));
    }

    private static List<Manifest.Need> needs(Fields in, String own) {
        List<Manifest.Need> needs = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Fields need : in.objects("needs")) {
            String id = need.id("id");
            String range = need.text("range");
            if (!VersionRange.isRange(range)) {
                need.refuse("range", "met the text " + Shown.quoted(range), "give " + VersionRange.A_RANGE);
            } else {
                needs.add(new Manifest.Need(id, new VersionRange(range)));
            }
            if (!ids.add(id)) {
                need.refuse("id", "the pack " + Shown.quoted(id) + " is needed twice", "keep one of the two");
            }
            if (id.equals(own)) {
                need.refuse("id", "the pack needs itself", "take it out");
            }
            need.done();
        }
        if (needs.size() > MOST_NEEDS) {
            in.refuse("needs", "more than " + MOST_NEEDS + " packs are needed", "take some out");
        }
        return needs;
    }

    private static List<Manifest.Entry> files(Fields in) {
        List<Manifest.Entry> files = new ArrayList<>();
        Set<String> paths = new HashSet<>();
        for (Fields file : in.objects("files")) {
            String path = file.text("path");
            String sha256 = file.text("sha256");
            if (!Sha256.isHash(sha256)) {
                file.refuse("sha256", "met the text " + Shown.quoted(sha256), "give 64 digits of 0 to 9 and a to f");
            }
            if (!paths.add(path)) {
                file.refuse("path", "the file " + Shown.quoted(path) + " is listed twice", "keep one of the two");
            }
            files.add(new Manifest.Entry(path, sha256, file.whole("bytes", BYTES)));
            file.done();
        }
        return files;
    }

    private static boolean isNewer(String vocabulary) {
        Matcher theirs = VOCABULARY.matcher(vocabulary);
        Matcher ours = VOCABULARY.matcher(StageLanguage.VERSION);
        if (!theirs.matches() || !ours.matches()) {
            throw new IllegalStateException("vocabulary '" + vocabulary + "' was judged before");
        }
        int major = Integer.compare(Integer.parseInt(theirs.group(1)), Integer.parseInt(ours.group(1)));
        int minor = Integer.compare(Integer.parseInt(theirs.group(2)), Integer.parseInt(ours.group(2)));
        return major > 0 || major == 0 && minor > 0;
    }
}
