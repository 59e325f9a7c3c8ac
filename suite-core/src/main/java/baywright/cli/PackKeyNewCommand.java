package baywright.cli;

import baywright.pack.KeyFolder;
import baywright.pack.SigningKey;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright pack key new SITE}: makes a key to sign packs with, in the user's own folder. */
@Command(name = "new", resourceBundle = CommandTree.HELP)
final class PackKeyNewCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "SITE", arity = "1", descriptionKey = "key-site")
    private String site;

    PackKeyNewCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        KeyFolder keys = new KeyFolder(session.settings().folder());
        SigningKey key = keys.make(site);
        if (session.json()) {
            Answers.print(session, PackPrinter.key(site, key.signer(), keys.fileOf(site)));
            return ExitStatus.FINE;
        }
        session.say("pack.key.made", session.shown(keys.fileOf(site)));
        new PackPrinter(session).print(site, key.signer());
        return ExitStatus.FINE;
    }
}
