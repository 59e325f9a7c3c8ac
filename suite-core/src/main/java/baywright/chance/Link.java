package baywright.chance;

/**
 * One activity waits for another. An order of people, bays and machines is kept by further links of the kind
 * {@link Kind#FINISH_TO_START}.
 *
 * @param from what is waited for
 * @param to   what waits
 * @param kind which of their ends are bound
 * @param lag  minutes that must pass between them at least; negative lets them overlap by so much
 */
public record Link(String from, String to, Kind kind, double lag) {

    /** Which ends a link binds; what is waited for is named first. */
    public enum Kind {
        FINISH_TO_START(true, false),
        START_TO_START(false, false),
        FINISH_TO_FINISH(true, true),
        START_TO_FINISH(false, true);

        private final boolean fromFinish;
        private final boolean toFinish;

        Kind(boolean fromFinish, boolean toFinish) {
            this.fromFinish = fromFinish;
            this.toFinish = toFinish;
        }

        boolean fromFinish() {
            return fromFinish;
        }

        boolean toFinish() {
            return toFinish;
        }
    }

    public Link {
        if (!Double.isFinite(lag)) {
            throw new IllegalArgumentException("the lag from " + from + " to " + to + " must be a number, got " + lag);
        }
    }

    /** One after the other, at once. */
    public static Link after(String from, String to) {
        return new Link(from, to, Kind.FINISH_TO_START, 0);
    }

    /** One after the other, with a wait between them. */
    public static Link after(String from, String to, double lag) {
        return new Link(from, to, Kind.FINISH_TO_START, lag);
    }
}
