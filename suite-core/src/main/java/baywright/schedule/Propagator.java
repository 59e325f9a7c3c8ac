package baywright.schedule;

/** Draws conclusions from the bounds of some variables. */
interface Propagator {

    /** Tightens bounds in {@link Bounds}; false when they contradict each other, which is then noted there. */
    boolean propagate();
}
