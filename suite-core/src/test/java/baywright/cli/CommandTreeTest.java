package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CommandTreeTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder.resolve("settings"), folder);
    }

    @Test
    void everyCommandExplainsItself() {
        everyCommand(new CommandTree(session()).commandLine()).forEach(command -> {
            String help = command.getUsageMessage();
            assertThat(command.getCommandSpec().usageMessage().description())
                    .as(command.getCommandSpec().qualifiedName())
                    .isNotEmpty();
            assertThat(help.lines()).allMatch(line -> line.length() <= Console.WIDTH);
        });
    }

    @Test
    void everyCommandThatDoesSomethingShowsAnExample() {
        everyCommand(new CommandTree(session()).commandLine())
                .filter(command -> command.getSubcommands().isEmpty())
                .filter(command -> !command.getCommandSpec().usageMessage().hidden())
                .forEach(command -> assertThat(String.join(
                                "\n", command.getCommandSpec().usageMessage().footer()))
                        .contains(command.getCommandSpec().qualifiedName()));
    }

    @Test
    void anUnknownWordIsBadInputInOneLine() {
        Desk.Answer answer = desk.answerTo("plann");
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).hasSize(1).allMatch(line -> line.startsWith("baywright: "));
    }

    @Test
    void aFolderThatIsNoWorkspaceIsBadInput() {
        Desk.Answer answer = desk.answerTo("open", folder.toString());
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).startsWith("baywright: " + folder + ": no workspace here");
    }

    @Test
    void withoutColourNoEscapeReachesTheReader() {
        assertThat(desk.answerTo("plann").err()).doesNotContain("\033");
        assertThat(desk.inColour().answerTo("plann").err()).contains("\033[1;31m");
    }

    @Test
    void theCompletionScriptKnowsEveryCommand() {
        Desk.Answer answer = desk.answerTo("completion");
        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        everyCommand(new CommandTree(session()).commandLine())
                .filter(command -> !command.getCommandSpec().usageMessage().hidden())
                .forEach(command -> assertThat(answer.out()).contains(command.getCommandName()));
    }

    @Test
    void aFaultOfOurOwnIsOneLineAndAReport() throws Exception {
        CommandTree tree = new CommandTree(session()) {
            @Override
            CommandLine commandLine() {
                return new CommandLine(new FaultyCommand());
            }
        };
        assertThat(tree.run("secret-word")).isEqualTo(ExitStatus.OWN_FAULT);
        try (var reports = Files.list(folder.resolve("settings/reports"))) {
            List<Path> files = reports.toList();
            assertThat(files).hasSize(1);
            assertThat(Files.readString(files.get(0)))
                    .contains("something impossible", "FaultyCommand.run", "words [secret-word]");
        }
    }

    @Test
    void theLastWorkspaceIsRemembered() {
        Settings settings = new Settings(folder.resolve("settings"));
        assertThat(settings.lastWorkspace()).isEmpty();
        settings.rememberWorkspace(folder.resolve("mill"));
        assertThat(settings.lastWorkspace()).contains(folder.resolve("mill"));
    }

    private Session session() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return new Session(
                new Console(nowhere, nowhere, false, Locale.UK),
                new Settings(folder.resolve("settings")),
                new Home(folder),
                Desk.CLOCK);
    }

    private static Stream<CommandLine> everyCommand(CommandLine line) {
        return Stream.concat(
                Stream.of(line), line.getSubcommands().values().stream().flatMap(CommandTreeTest::everyCommand));
    }

    @CommandLine.Command(name = "faulty")
    private static final class FaultyCommand implements Runnable {

        @CommandLine.Parameters
        private List<String> words;

        @Override
        public void run() {
            throw new IllegalStateException("something impossible with " + words);
        }
    }
}
