package baywright.cli;

import picocli.CommandLine.Command;

/** {@code baywright stages}: the library of stage scripts. */
@Command(name = "stages", resourceBundle = CommandTree.HELP, synopsisSubcommandLabel = "COMMAND")
final class StagesCommand {}
