package baywright.cli;

import baywright.pack.Pack;
import baywright.pack.PackFile;
import baywright.share.Choice;
import baywright.share.Clash.Side;
import baywright.share.Taking;
import baywright.workspace.FileProblem;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A workspace, a pack for it, and what of the pack is wanted: the same for comparing and for taking. */
final class PackChoice {

    @Parameters(index = "0", paramLabel = "WORKSPACE", descriptionKey = "workspace")
    private Path workspace;

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "pack-file")
    private Path file;

    @Option(names = "--only", paramLabel = "NAME", split = ",", descriptionKey = "pack-only")
    private List<String> only = List.of();

    @Option(names = "--ours", paramLabel = "CLASH", descriptionKey = "pack-ours")
    private List<String> ours = List.of();

    @Option(names = "--theirs", paramLabel = "CLASH", descriptionKey = "pack-theirs")
    private List<String> theirs = List.of();

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
        Map<String, Side> sides = new HashMap<>();
        ours.forEach(name -> sides.put(name, Side.OURS));
        for (String name : theirs) {
            if (sides.put(name, Side.THEIRS) != null) {
                throw session.badInput("take.both-sides", name);
            }
        }
        return Taking.of(read, pack, new Choice(Set.copyOf(only), sides, downgrade), session.cache());
    }
}
