package baywright.cli;

import picocli.CommandLine.Command;

/** {@code baywright pack}: what sites hand to each other. */
@Command(name = "pack", resourceBundle = CommandTree.HELP, synopsisSubcommandLabel = "COMMAND")
final class PackCommand {}
