package baywright.cli;

import picocli.CommandLine.Command;

/** {@code baywright pack key}: the keys that this user signs with. */
@Command(name = "key", resourceBundle = CommandTree.HELP, synopsisSubcommandLabel = "COMMAND")
final class PackKeyCommand {}
