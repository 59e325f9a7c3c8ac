package baywright.cli;

import baywright.pack.Pack;
import baywright.pack.PackFile;
import baywright.share.Taking;
import baywright.workspace.FileProblem;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A workspace, a pack for it, and what of the pack is wanted: the same for comparing and for taking. */
final class PackChoice {

    @Parameters(index = "0", paramLabel = "WORKSPACE", descriptionKey = "workspace")
    private Path workspace;

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "pack-file")
    private Path file;

    @Mixin
    private ClashChoice clashes;

    @Option(names = "--downgrade", descriptionKey = "pack-downgrade")
    private boolean downgrade;

    Path workspace() {
        return workspace;
    }

    Pack pack() {
        return PackFile.readAny(file);
    }

    /**
     * What taking it comes to.
     *
     * @throws BadInput when shop, price list or shapes of the site have errors
     */
    Taking taking(Session session, Pack pack) {
        Workspace read = Workspace.open(workspace);
        read.ownProblems().stream().filter(FileProblem::isError).findFirst().ifPresent(problem -> {
            throw new BadInput(problem.toString());
        });
        return Taking.of(read, pack, clashes.choice(session, downgrade), session.cache());
    }
}
