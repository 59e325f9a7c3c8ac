package baywright.quantity;

/** What a unit measures. Quantities of different dimensions never mix. */
public enum Dimension {
    DURATION("a duration such as 3.min"),
    VOLUME("a volume such as 70.ml"),
    MASS("a mass such as 30.g"),
    AREA("an area such as 1.5.m2"),
    LENGTH("a length such as 12.m"),
    THICKNESS("a film thickness such as 2.um"),
    TEMPERATURE("a temperature such as 20.C"),
    RATIO("a share such as 40.percent"),
    COUNT("a count of pieces such as 2.each"),
    ACCELERATION("a vibration value such as 5.ms2"),
    SOUND_LEVEL("a sound level such as 85.dB");

    private final String example;

    Dimension(String example) {
        this.example = example;
    }

    /** Words for a message: what a value of this dimension looks like in a script. */
    public String example() {
        return example;
    }
}
