package baywright.safety;

/** What a body takes a dose of over a day. */
public enum Agent {
    VIBRATION("vibration"),
    NOISE("noise");

    private final String risk;

    Agent(String risk) {
        this.risk = risk;
    }

    /** The kind of danger that a stage declares with its level. */
    String risk() {
        return risk;
    }
}
