package baywright.cli;

import baywright.share.Choice;
import baywright.share.Clash.Side;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Option;

/** What of something is wanted, and whose is taken where two sides clash. */
final class ClashChoice {

    @Option(names = "--only", paramLabel = "NAME", split = ",", descriptionKey = "pack-only")
    private List<String> only = List.of();

    @Option(names = "--ours", paramLabel = "CLASH", descriptionKey = "pack-ours")
    private List<String> ours = List.of();

    @Option(names = "--theirs", paramLabel = "CLASH", descriptionKey = "pack-theirs")
    private List<String> theirs = List.of();

    /** @throws BadInput when a clash is decided twice */
    Choice choice(Session session, boolean downgrade) {
        Map<String, Side> sides = new HashMap<>();
        ours.forEach(name -> sides.put(name, Side.OURS));
        for (String name : theirs) {
            if (sides.put(name, Side.THEIRS) != null) {
                throw session.badInput("take.both-sides", name);
            }
        }
        return new Choice(Set.copyOf(only), sides, downgrade);
    }
}
