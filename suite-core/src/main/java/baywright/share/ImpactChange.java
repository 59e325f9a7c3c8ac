package baywright.share;

/**
 * A declaration that two libraries do not share.
 *
 * @param kind what is declared
 * @param id   its id; for {@link Kind#ORDER} the kind of declarations that stand in another order
 * @param how  in which way
 */
public record ImpactChange(Kind kind, String id, How how) implements Comparable<ImpactChange> {

    /** What a library declares, in the order in which changes are told. */
    public enum Kind {
        STAGE,
        RULE,
        STATE,
        ITEM,
        FAMILY,
        FACT,
        FACTOR,
        SURFACE,
        GOAL,
        /** Declarations of one kind follow each other otherwise than before. */
        ORDER
    }

    /** In which way a declaration differs. */
    public enum How {
        CHANGED,
        NEW,
        GONE
    }

    @Override
    public int compareTo(ImpactChange other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : id.compareTo(other.id);
    }

    /** Whether it is something new that matters only to what speaks of it. */
    boolean isNewGround() {
        return how == How.NEW && kind != Kind.STAGE && kind != Kind.RULE && kind != Kind.FACTOR && kind != Kind.GOAL;
    }

    /** Whether it is ground that others stand on and that went away: without them it makes no sense by itself. */
    boolean isLostGround() {
        return how == How.GONE && kind != Kind.STAGE && kind != Kind.RULE && kind != Kind.FACTOR && kind != Kind.GOAL;
    }
}
