package baywright.chance;

/**
 * A wait that must not be too long: coat within so long after the panel wipe. A network does not force it; a simulation
 * tells how often it is missed when every activity begins as early as it can.
 *
 * @param from what ends
 * @param to   what must then begin
 * @param most minutes from that end to that beginning, not negative
 */
public record Window(String from, String to, double most) {
    public Window {
        if (!(most >= 0)) {
            throw new IllegalArgumentException(
                    "the longest wait from " + from + " to " + to + " must not be negative, got " + most);
        }
    }
}
