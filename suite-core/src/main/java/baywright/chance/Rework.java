package baywright.chance;

/**
 * An activity that may have to be done again in part.
 *
 * @param chance how often, 0 to 1
 * @param share  of its time that is then spent again, not negative
 */
public record Rework(double chance, double share) {

    /** Nothing is ever done again. */
    public static final Rework NEVER = new Rework(0, 0);

    public Rework {
        if (!(chance >= 0 && chance <= 1) || !(share >= 0) || Double.isInfinite(share)) {
            throw new IllegalArgumentException(
                    "rework needs a chance from 0 to 1 and a share from 0, got " + chance + " and " + share);
        }
    }
}
