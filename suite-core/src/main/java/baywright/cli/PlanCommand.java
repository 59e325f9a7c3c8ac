package baywright.cli;

import picocli.CommandLine.Command;

/** {@code baywright plan}: a job's plan, proved, mended and priced. */
@Command(name = "plan", resourceBundle = CommandTree.HELP, synopsisSubcommandLabel = "COMMAND")
final class PlanCommand {}
