package baywright.cli;

import baywright.pack.KeyFolder;
import baywright.pack.SignerKey;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright pack key show}: the public halves of the keys that this user signs with. */
@Command(name = "show", resourceBundle = CommandTree.HELP)
final class PackKeyShowCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "SITE", arity = "0..1", descriptionKey = "key-site")
    private Optional<String> site = Optional.empty();

    PackKeyShowCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        KeyFolder keys = new KeyFolder(session.settings().folder());
        List<String> sites = site.map(List::of).orElseGet(keys::sites);
        ArrayNode all = Answers.array();
        for (String one : sites) {
            SignerKey signer = keys.read(one).signer();
            if (session.json()) {
                all.add(PackPrinter.key(one, signer, keys.fileOf(one)));
            } else {
                new PackPrinter(session).print(one, signer);
            }
        }
        if (session.json()) {
            Answers.print(session, all);
        } else if (sites.isEmpty()) {
            session.say("pack.key.none", session.command());
        }
        return ExitStatus.FINE;
    }
}
