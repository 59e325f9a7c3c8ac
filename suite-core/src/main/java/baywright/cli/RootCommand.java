package baywright.cli;

import baywright.library.ScriptCache;
import java.nio.file.Files;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/**
 * {@code baywright} alone opens the window on the last workspace. The library of the command line reads the two
 * fields that nothing here reads.
 */
@Command(
        name = "baywright",
        resourceBundle = CommandTree.HELP,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND")
@SuppressWarnings("UnusedVariable")
final class RootCommand implements Callable<Integer> {

    private final Session session;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            descriptionKey = "version")
    private boolean versionAsked;

    RootCommand(Session session) {
        this.session = session;
    }

    @Option(names = "--json", scope = ScopeType.INHERIT, descriptionKey = "json")
    void answerInJson(boolean wanted) {
        session.answerInJson(wanted);
    }

    @Option(names = "--no-cache", scope = ScopeType.INHERIT, descriptionKey = "no-cache")
    void readScriptsAgain(boolean wanted) {
        if (wanted) {
            session.keepScripts(ScriptCache.none());
        }
    }

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            descriptionKey = "help")
    private boolean helpAsked;

    @Override
    public Integer call() {
        Windows.open(
                session,
                session.settings().lastWorkspace().filter(last -> Files.isRegularFile(last.resolve("shop.json"))));
        return ExitStatus.FINE;
    }
}
