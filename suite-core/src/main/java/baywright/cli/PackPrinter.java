package baywright.cli;

import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackRefused;
import baywright.pack.PackSignature;
import baywright.pack.Refusal;
import baywright.pack.SignerKey;
import baywright.pack.Standing;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Shows packs and keys. */
final class PackPrinter {

    private static final Set<Refusal> NO_PACK = EnumSet.of(Refusal.UNREADABLE, Refusal.NO_ARCHIVE, Refusal.LARGE);

    private final Session session;

    PackPrinter(Session session) {
        this.session = session;
    }

    /** A file that is no pack at all is bad input; a pack that is refused has failed its check. */
    static int status(PackRefused refused) {
        return NO_PACK.contains(refused.refusal()) ? ExitStatus.BAD_INPUT : ExitStatus.STOPPED;
    }

    void print(Pack pack) {
        Manifest manifest = pack.manifest();
        Table table = new Table("", "~");
        row(table, "pack.name", manifest.name());
        row(table, "pack.who", manifest.who());
        row(table, "pack.why", manifest.why());
        row(table, "pack.licence", manifest.licence());
        manifest.needs().forEach(need -> row(table, "pack.needs", need.toString()));
        row(
                table,
                "pack.files",
                session.text(
                        manifest.prices() ? "pack.content-priced" : "pack.content",
                        manifest.files().size(),
                        pack.scripts().size(),
                        pack.items().items().size()));
        row(table, "pack.vocabulary", manifest.vocabulary());
        row(table, "pack.hash", pack.hash());
        row(
                table,
                "pack.signed",
                pack.signature()
                        .map(PackSignature::signer)
                        .map(SignerKey::fingerprint)
                        .orElseGet(() -> session.text("pack.unsigned")));
        table.print(session.console(), "");
    }

    private void row(Table table, String key, String value) {
        table.add(session.console().paint(Ink.HEAD, session.text(key)), value);
    }

    /** Who signed a pack, as far as a list of trust knows; that nobody was asked, where there is no list. */
    void print(Pack pack, Optional<Standing> standing) {
        if (standing.isEmpty()) {
            session.say(pack.signature().isPresent() ? "pack.standing.not-asked" : "pack.standing.unsigned");
        } else if (standing.get() instanceof Standing.Known known) {
            session.say(
                    "pack.standing.known",
                    known.signer().name(),
                    known.signer().since().toString(),
                    known.signer().by());
        } else if (standing.get() instanceof Standing.Unsigned) {
            session.say("pack.standing.unsigned");
        } else {
            session.say("pack.standing.unknown");
        }
    }

    static String word(Standing standing) {
        return standing instanceof Standing.Known
                ? "known"
                : standing instanceof Standing.Unsigned ? "unsigned" : "unknown";
    }

    static ObjectNode json(Pack pack) {
        Manifest manifest = pack.manifest();
        ObjectNode one = Answers.object();
        one.put("id", manifest.id());
        one.put("version", manifest.version().toString());
        one.put("who", manifest.who());
        one.put("why", manifest.why());
        one.put("licence", manifest.licence());
        ArrayNode needs = one.putArray("needs");
        manifest.needs()
                .forEach(need -> needs.addObject()
                        .put("id", need.id())
                        .put("range", need.range().text()));
        one.put("vocabulary", manifest.vocabulary());
        one.put("prices", manifest.prices());
        one.put("files", manifest.files().size());
        one.put("hash", pack.hash());
        pack.signature().ifPresentOrElse(s -> one.put("signer", s.signer().toString()), () -> one.putNull("signer"));
        return one;
    }

    void print(String site, SignerKey signer) {
        Table table = new Table("", "");
        row(table, "pack.key.site", site);
        row(table, "pack.key.public", signer.toString());
        row(table, "pack.fingerprint", signer.fingerprint());
        table.print(session.console(), "");
    }

    static ObjectNode key(String site, SignerKey signer, Path file) {
        return Answers.object()
                .put("site", site)
                .put("publicKey", signer.toString())
                .put("fingerprint", signer.fingerprint())
                .put("file", file.toString());
    }
}
