package baywright.cli;

import baywright.pack.Consent;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackFile;
import baywright.pack.PackNeeds;
import baywright.pack.PackRefused;
import baywright.pack.PackScripts;
import baywright.pack.Standing;
import baywright.pack.TrustList;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright pack verify FILE}: whether a pack is sound, who made it and whether its scripts fit together. Writes nothing. */
@Command(name = "verify", resourceBundle = CommandTree.HELP)
final class PackVerifyCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "FILE", arity = "1", descriptionKey = "pack-file")
    private Path file;

    @Option(names = "--in", paramLabel = "WORKSPACE", descriptionKey = "pack-in")
    private Optional<Path> in = Optional.empty();

    @Option(names = "--with", paramLabel = "PACK", descriptionKey = "pack-with")
    private List<Path> beside = new ArrayList<>();

    @Option(names = "--accept-unknown", paramLabel = "\"NAME: WHY\"", descriptionKey = "pack-accept")
    private Optional<String> accept = Optional.empty();

    PackVerifyCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Optional<Consent> consent = accept.map(
                text -> Consent.of(text).orElseThrow(() -> session.badInput("pack.verify.no-consent", text)));
        Optional<TrustList> trust = in.map(path -> TrustList.of(WorkspacePath.root(session, path)));
        List<String> against = new ArrayList<>();
        try {
            Pack pack = PackFile.readAny(file);
            List<Pack> others = beside.stream().map(PackFile::readAny).toList();
            Optional<Standing> standing = trust.map(list -> list.standing(pack));
            if (consent.isEmpty()) {
                standing.ifPresent(s -> noteUnknown(s, against));
            }
            new PackNeeds(manifests(pack, others), List.of(), false)
                    .refusals()
                    .forEach(refusal -> against.add(refusal.getMessage()));
            PackScripts.Checked scripts =
                    Progress.during(session, "pack.verify.progress", () -> PackScripts.check(pack, others));
            boolean ok = against.isEmpty() && scripts.errors().isEmpty();
            if (session.json()) {
                ObjectNode answer = PackPrinter.json(pack).put("ok", ok);
                standing.ifPresent(s -> answer.put("standing", PackPrinter.word(s)));
                consent.ifPresent(
                        c -> answer.putObject("accepted").put("by", c.by()).put("why", c.why()));
                answer.set("against", list(against));
                answer.set("problems", ProblemPrinter.json(scripts.problems()));
                Answers.print(session, answer);
            } else {
                tell(pack, standing, consent, scripts);
                against.forEach(line -> session.console()
                        .err()
                        .println(session.console().paint(Ink.STOP, session.text("error.mark")) + " " + line));
                session.say(ok ? "pack.verify.ok" : "pack.verify.not");
            }
            return ok ? ExitStatus.FINE : ExitStatus.STOPPED;
        } catch (PackRefused e) {
            if (!session.json()) {
                throw e;
            }
            ObjectNode answer = Answers.object().put("ok", false).put("refusal", Answers.word(e.refusal()));
            answer.set("against", list(List.of(e.getMessage())));
            Answers.print(session, answer);
            return PackPrinter.status(e);
        }
    }

    private static ArrayNode list(List<String> texts) {
        ArrayNode list = Answers.array();
        texts.forEach(list::add);
        return list;
    }

    private static List<Manifest> manifests(Pack pack, List<Pack> others) {
        return Stream.concat(Stream.of(pack), others.stream())
                .map(Pack::manifest)
                .toList();
    }

    private void noteUnknown(Standing standing, List<String> against) {
        try {
            standing.refuseUnknown(String.valueOf(file.getFileName()));
        } catch (PackRefused e) {
            against.add(e.getMessage());
        }
    }

    private void tell(Pack pack, Optional<Standing> standing, Optional<Consent> consent, PackScripts.Checked scripts) {
        PackPrinter printer = new PackPrinter(session);
        printer.print(pack);
        printer.print(pack, standing);
        consent.filter(c -> standing.map(s -> !s.isKnown()).orElse(false))
                .ifPresent(c -> session.say("pack.verify.accepted", c.by(), c.why()));
        new ProblemPrinter(session).print(session.console().out(), file, scripts.problems());
    }
}
