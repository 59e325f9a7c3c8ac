package baywright.safety;

/**
 * When a value counts as reached. Directive 2002/44/EC and 2003/10/EC act when a value is exceeded; the UK regulations of
 * 2005 at or above the action value (from memory). A rounding error of 1e-9 counts as equal.
 */
public enum Comparison {
    EXCEEDS,
    AT_OR_ABOVE;

    private static final double EQUAL = 1e-9;

    /** The most that has not reached a border. */
    public double most(double border) {
        double margin = Math.abs(border) * EQUAL;
        return this == EXCEEDS ? border + margin : Math.nextDown(border - margin);
    }

    /** Whether a value has reached a border. */
    public boolean reached(double value, double border) {
        double margin = Math.abs(border) * EQUAL;
        return this == EXCEEDS ? value > border + margin : value >= border - margin;
    }
}
