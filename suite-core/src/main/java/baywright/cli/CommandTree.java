package baywright.cli;

import baywright.pack.PackRefused;
import baywright.site.SiteTrouble;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.ColorScheme;
import picocli.CommandLine.ParameterException;

/** All commands, and what happens when one of them fails. */
class CommandTree {

    /** Bundle of the help texts. */
    static final String HELP = "baywright.cli.help";

    private final Session session;

    CommandTree(Session session) {
        this.session = session;
    }

    /** Runs the command that the words name and gives its exit status. Never throws. */
    int run(String... words) {
        CommandLine line = commandLine();
        line.setParameterExceptionHandler((fault, rest) -> complain(fault));
        line.setExecutionExceptionHandler((fault, failed, parsed) -> fail(fault, Arrays.asList(words)));
        try {
            return line.execute(words);
        } catch (RuntimeException e) {
            return fail(e, Arrays.asList(words));
        } finally {
            session.console().flush();
        }
    }

    CommandLine commandLine() {
        Console console = session.console();
        CommandLine line = new CommandLine(new RootCommand(session))
                .addSubcommand(new CommandLine(new StagesCommand())
                        .addSubcommand(new StagesCheckCommand(session))
                        .addSubcommand(new StagesListCommand(session))
                        .addSubcommand(new StagesShowCommand(session))
                        .addSubcommand(new StagesExplainCommand(session)))
                .addSubcommand(new CommandLine(new PlanCommand())
                        .addSubcommand(new PlanProveCommand(session))
                        .addSubcommand(new PlanExplainCommand(session))
                        .addSubcommand(new PlanComposeCommand(session))
                        .addSubcommand(new PlanFilmCommand(session))
                        .addSubcommand(new PlanMendCommand(session))
                        .addSubcommand(new PlanQuoteCommand(session))
                        .addSubcommand(new PlanChanceCommand(session))
                        .addSubcommand(new PlanOptionsCommand(session))
                        .addSubcommand(new PlanFitCommand(session))
                        .addSubcommand(new PlanSafetyCommand(session))
                        .addSubcommand(new PlanCardCommand(session))
                        .addSubcommand(new PlanTimetableCommand(session)))
                .addSubcommand(new CommandLine(new ShopCommand())
                        .addSubcommand(new ShopNewCommand(session))
                        .addSubcommand(new ShopTimetableCommand(session))
                        .addSubcommand(new ShopImpactCommand(session)))
                .addSubcommand(new CommandLine(new PackCommand())
                        .addSubcommand(new PackMakeCommand(session))
                        .addSubcommand(new PackVerifyCommand(session))
                        .addSubcommand(new CommandLine(new PackKeyCommand())
                                .addSubcommand(new PackKeyNewCommand(session))
                                .addSubcommand(new PackKeyShowCommand(session)))
                        .addSubcommand(new CommandLine(new PackTrustCommand())
                                .addSubcommand(new PackTrustListCommand(session))
                                .addSubcommand(new PackTrustAddCommand(session))
                                .addSubcommand(new PackTrustRemoveCommand(session)))
                        .addSubcommand(new PackCompareCommand(session))
                        .addSubcommand(new PackTakeCommand(session))
                        .addSubcommand(new PackUndoCommand(session))
                        .addSubcommand(new PackListCommand(session))
                        .addSubcommand(new PackFollowCommand(session))
                        .addSubcommand(new PackPublishCommand(session))
                        .addSubcommand(new PackProposalsCommand(session))
                        .addSubcommand(new PackAcceptCommand(session))
                        .addSubcommand(new PackDeclineCommand(session)))
                .addSubcommand(new DemoCommand(session))
                .addSubcommand(new OpenCommand(session))
                .addSubcommand(new CompletionCommand(session))
                .addSubcommand(new WarmUpCommand(session));
        Ansi ansi = console.colour() ? Ansi.ON : Ansi.OFF;
        return line.setOut(console.out())
                .setErr(console.err())
                .setColorScheme(new ColorScheme.Builder(CommandLine.Help.defaultColorScheme(ansi)).build())
                .setUsageHelpWidth(Console.WIDTH)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setAbbreviatedOptionsAllowed(false);
    }

    private int complain(ParameterException fault) {
        String command = fault.getCommandLine().getCommandSpec().qualifiedName();
        complain(session.text("error.words", fault.getMessage(), command));
        return ExitStatus.BAD_INPUT;
    }

    private int fail(Exception fault, List<String> words) {
        if (fault instanceof SiteTrouble trouble) {
            new ProblemPrinter(session).print(session.console().err(), trouble.folder(), trouble.problems());
            return ExitStatus.BAD_INPUT;
        }
        if (fault instanceof BadInput || fault instanceof WorkspaceException) {
            complain(fault.getMessage());
            return ExitStatus.BAD_INPUT;
        }
        if (fault instanceof PackRefused refused) {
            complain(refused.getMessage());
            return PackPrinter.status(refused);
        }
        try {
            complain(session.text("error.own-fault", CrashReport.write(session.settings(), fault, words)));
        } catch (IOException e) {
            complain(session.text("error.own-fault-unwritten", fault.toString()));
        }
        return ExitStatus.OWN_FAULT;
    }

    private void complain(String message) {
        Console console = session.console();
        console.err().println(console.paint(Ink.STOP, session.text("error.mark")) + " " + message);
    }
}
