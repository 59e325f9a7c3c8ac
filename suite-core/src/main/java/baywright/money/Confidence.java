package baywright.money;

/** How well the paint is known when a price is named; it sets the contingency. */
public enum Confidence {
    /** A trial section was made, or is made before the price binds. */
    TRIAL_DONE,
    /** No trial section. */
    NO_TRIAL,
    /** Unknown, single-stage or repainted panels. */
    RISKY
}
