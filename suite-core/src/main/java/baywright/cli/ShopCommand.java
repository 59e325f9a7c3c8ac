package baywright.cli;

import picocli.CommandLine.Command;

/** {@code baywright shop}: all jobs of a shop together. */
@Command(name = "shop", resourceBundle = CommandTree.HELP, synopsisSubcommandLabel = "COMMAND")
final class ShopCommand {}
