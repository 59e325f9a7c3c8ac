package baywright.cli;

import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackFile;
import baywright.pack.PackFolder;
import baywright.pack.PackMaker;
import baywright.pack.Version;
import baywright.pack.VersionRange;
import baywright.workspace.Fields;
import baywright.workspace.Workspace;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright pack make WORKSPACE --out FILE}: makes a pack of a workspace's stages, items and texts. */
@Command(name = "make", resourceBundle = CommandTree.HELP)
final class PackMakeCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    @Option(names = "--out", paramLabel = "FILE", required = true, descriptionKey = "pack-out")
    private Path out;

    @Option(names = "--as-folder", descriptionKey = "pack-as-folder")
    private boolean asFolder;

    @Option(names = "--force", descriptionKey = "pack-force")
    private boolean force;

    @Option(names = "--id", paramLabel = "ID", required = true, descriptionKey = "pack-id")
    private String id;

    @Option(names = "--version", paramLabel = "VERSION", required = true, descriptionKey = "pack-version")
    private String version;

    @Option(names = "--why", paramLabel = "WHY", required = true, descriptionKey = "pack-why")
    private String why;

    @Option(names = "--licence", paramLabel = "LICENCE", required = true, descriptionKey = "pack-licence")
    private String licence;

    @Option(names = "--needs", paramLabel = "\"ID RANGE\"", descriptionKey = "pack-needs")
    private List<String> needs = new ArrayList<>();

    @Option(names = "--with", paramLabel = "PACK", descriptionKey = "pack-with")
    private List<Path> beside = new ArrayList<>();

    @Option(names = "--family", paramLabel = "FAMILY", descriptionKey = "pack-family")
    private List<String> families = new ArrayList<>();

    @Option(names = "--stage", paramLabel = "STAGE", descriptionKey = "pack-stage")
    private List<String> stages = new ArrayList<>();

    @Option(names = "--prices", descriptionKey = "pack-prices")
    private boolean prices;

    @Mixin
    private SignerChoice signer;

    PackMakeCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() throws IOException {
        Workspace read = Workspace.open(WorkspacePath.root(session, workspace));
        PackMaker.About about = about(read);
        if (!asFolder && !force && Files.exists(out, LinkOption.NOFOLLOW_LINKS)) {
            throw session.badInput("pack.make.there", session.shown(out));
        }
        List<Pack> others = beside.stream().map(PackFile::readAny).toList();
        PackMaker.Selection selection = new PackMaker.Selection(new HashSet<>(families), new HashSet<>(stages));
        PackMaker.Made made =
                Progress.during(session, "pack.make.progress", () -> PackMaker.make(read, selection, about, others));
        if (!made.errors().isEmpty()) {
            tellErrors(read, made);
            return ExitStatus.STOPPED;
        }
        Pack pack = signer.key(session, read).map(made.pack()::signedBy).orElse(made.pack());
        write(pack);
        tell(made, pack);
        return ExitStatus.FINE;
    }

    private PackMaker.About about(Workspace read) {
        if (!Fields.isId(id)) {
            throw session.badInput("pack.make.no-id", id, Fields.AN_ID);
        }
        if (!Version.isVersion(version)) {
            throw session.badInput("pack.make.no-version", version);
        }
        String maker = signer.who(session, read);
        if (why.isBlank() || licence.isBlank() || maker.isBlank()) {
            throw session.badInput("pack.make.blank");
        }
        return new PackMaker.About(
                id,
                Version.of(version),
                maker,
                why,
                licence,
                needs.stream().map(this::need).toList(),
                prices);
    }

    private Manifest.Need need(String text) {
        String[] parts = text.strip().split(" ", 2);
        if (parts.length < 2 || !Fields.isId(parts[0]) || !VersionRange.isRange(parts[1])) {
            throw session.badInput("pack.make.no-need", text);
        }
        return new Manifest.Need(parts[0], new VersionRange(parts[1]));
    }

    private void write(Pack pack) throws IOException {
        if (asFolder) {
            PackFolder.write(pack, out);
        } else {
            PackFile.write(pack, out);
        }
    }

    private void tellErrors(Workspace read, PackMaker.Made made) {
        if (session.json()) {
            ObjectNode answer = Answers.object().put("ok", false);
            answer.set("problems", ProblemPrinter.json(made.problems()));
            Answers.print(session, answer);
            return;
        }
        new ProblemPrinter(session).print(session.console().err(), read.root(), made.errors());
        session.console()
                .err()
                .println(session.text("pack.make.errors", made.errors().size()));
    }

    private void tell(PackMaker.Made made, Pack pack) {
        PackPrinter printer = new PackPrinter(session);
        if (session.json()) {
            ObjectNode answer = PackPrinter.json(pack).put("ok", true).put("file", out.toString());
            made.leftOut().forEach(answer.putArray("leftOut")::add);
            answer.set("problems", ProblemPrinter.json(made.problems()));
            Answers.print(session, answer);
            return;
        }
        session.say("pack.make.made", session.shown(out));
        printer.print(pack);
        made.leftOut().forEach(script -> session.say("pack.make.left-out", script));
    }
}
