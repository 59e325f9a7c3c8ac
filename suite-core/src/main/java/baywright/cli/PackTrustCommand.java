package baywright.cli;

import picocli.CommandLine.Command;

/** {@code baywright pack trust}: whose packs a workspace takes. */
@Command(name = "trust", resourceBundle = CommandTree.HELP, synopsisSubcommandLabel = "COMMAND")
final class PackTrustCommand {}
