package baywright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;

/**
 * What the launcher runs once after a build, so that the classes of the usual work lie ready in an archive at the next
 * start. It does that work on the demo, in a folder of its own, shows it on every workbench without a window, and says
 * nothing.
 */
@Command(name = "warm-up", hidden = true, resourceBundle = CommandTree.HELP)
final class WarmUpCommand implements Callable<Integer> {

    private final Session session;

    WarmUpCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() throws IOException {
        Path folder = Files.createTempDirectory("baywright-warm-up");
        try {
            new CommandTree(session).run("demo", "--no-window", folder.toString());
            System.setProperty("java.awt.headless", "true");
            try (Stream<Path> shops = Files.list(folder)) {
                Path shop = shops.sorted().findFirst().orElseThrow();
                Windows.opener().ifPresent(window -> window.rehearse(shop));
            }
        } finally {
            DemoFolder.delete(folder);
        }
        return ExitStatus.FINE;
    }
}
