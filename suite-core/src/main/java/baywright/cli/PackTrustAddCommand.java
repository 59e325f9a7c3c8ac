package baywright.cli;

import baywright.pack.SignerKey;
import baywright.pack.TrustList;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright pack trust add WORKSPACE NAME KEY --by WHO}: takes somebody's packs from now on. */
@Command(name = "add", resourceBundle = CommandTree.HELP)
final class PackTrustAddCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", index = "0", descriptionKey = "workspace")
    private Path workspace;

    @Parameters(paramLabel = "NAME", index = "1", descriptionKey = "trust-name")
    private String name;

    @Parameters(paramLabel = "KEY", index = "2", descriptionKey = "trust-key")
    private String key;

    @Option(names = "--by", paramLabel = "WHO", required = true, descriptionKey = "trust-by")
    private String by;

    PackTrustAddCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        SignerKey signer = SignerKey.of(key).orElseThrow(() -> session.badInput("pack.trust.no-key"));
        if (name.isBlank() || by.isBlank()) {
            throw session.badInput("pack.trust.blank");
        }
        Path root = WorkspacePath.root(session, workspace);
        TrustList.of(root)
                .with(new TrustList.Trusted(name.strip(), signer, LocalDate.now(session.clock()), by.strip()))
                .save(Workspace.open(root));
        if (session.json()) {
            Answers.print(session, Answers.object().put("name", name.strip()).put("fingerprint", signer.fingerprint()));
        } else {
            session.say("pack.trust.added", name.strip(), signer.fingerprint());
        }
        return ExitStatus.FINE;
    }
}
