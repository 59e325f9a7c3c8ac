package baywright.cli;

import baywright.pack.KeyFolder;
import baywright.pack.SigningKey;
import baywright.workspace.Workspace;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** In whose name something is made, and with which key it is signed. */
final class SignerChoice {

    @Option(names = "--who", paramLabel = "WHO", descriptionKey = "pack-who")
    private Optional<String> who = Optional.empty();

    @Option(names = "--key", paramLabel = "SITE", descriptionKey = "pack-key")
    private Optional<String> key = Optional.empty();

    @Option(names = "--unsigned", descriptionKey = "pack-unsigned")
    private boolean unsigned;

    /** @throws BadInput when nobody is named and the workspace names no shop */
    String who(Session session, Workspace read) {
        return who.or(() -> read.shop().map(shop -> shop.name()))
                .orElseThrow(() -> session.badInput("pack.make.no-who"));
    }

    /**
     * The key that was named; else the one that is called as the shop; none where it is not to be signed.
     *
     * @throws BadInput when there is none
     */
    Optional<SigningKey> key(Session session, Workspace read) {
        if (unsigned) {
            return Optional.empty();
        }
        KeyFolder keys = new KeyFolder(session.settings().folder());
        List<String> sites = keys.sites();
        String name = key.or(() -> read.shop().map(shop -> shop.id()).filter(sites::contains))
                .orElseThrow(() -> session.badInput("pack.make.no-key", session.command()));
        return Optional.of(keys.read(name));
    }
}
