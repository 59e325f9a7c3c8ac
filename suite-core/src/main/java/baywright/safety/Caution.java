package baywright.safety;

/** Dangers that stay on a plan until a named person answers for them. */
public enum Caution {
    AIRBAG("airbag", "airbags"),
    HIGH_VOLTAGE("high-voltage", "high voltage"),
    HYDROFLUORIC("hydrofluoric", "hydrofluoric acid"),
    JACKS("jacks", "jacks and stands"),
    OLD_LININGS("old-linings", "unknown dust of brake linings, possibly asbestos"),
    OLD_PAINT("old-paint", "dust of old paint, possibly with lead");

    private final String id;
    private final String title;

    Caution(String id, String title) {
        this.id = id;
        this.title = title;
    }

    /** What an acknowledgement in a job's file names. */
    public String id() {
        return id;
    }

    public String title() {
        return title;
    }
}
