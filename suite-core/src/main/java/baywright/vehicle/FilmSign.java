package baywright.vehicle;

/** Something odd about the readings of a zone. Common practice or from memory, no source. */
public enum FilmSign {
    /** Fewer readings than even a small zone should have, usually three: one alone means nothing. */
    FEW_READINGS,
    /** The highest reading is over 1.4 times the lowest, or more than 40 µm above it: a blend or filler inside. */
    RAGGED,
    /** All of it is thick enough for a repaint. */
    REPAINT_SUSPECTED,
    /** A reading so high that filler must be below. */
    FILLER,
    /** Recorded as unreadable, and yet there are readings: they are not relied upon. */
    READ_THOUGH_UNREADABLE
}
