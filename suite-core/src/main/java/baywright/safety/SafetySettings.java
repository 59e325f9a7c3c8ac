package baywright.safety;

import java.util.List;
import java.util.Map;

/**
 * What a site holds its plans to. The usual values are those of the European directives; local law and the site's own
 * measurements go first.
 *
 * @param vibration hand-arm vibration
 * @param noise     noise at the ear
 * @param day       how a day is reckoned until there is a timetable
 * @param air       solvent vapour
 * @param climate   margins of air and surface
 * @param apart     what must not meet in a bay
 * @param light     light at the work
 */
public record SafetySettings(
        VibrationRule vibration,
        NoiseRule noise,
        DayRule day,
        AirRule air,
        ClimateRule climate,
        List<ApartPair> apart,
        LightRule light) {

    /** Directives 2002/44/EC and 2003/10/EC; trigger share and protector from memory. */
    public static final SafetySettings USUAL = new SafetySettings(
            new VibrationRule(Vibration.ACTION, Vibration.LIMIT, Comparison.EXCEEDS, 0.65),
            new NoiseRule(Noise.LOWER_ACTION, Noise.UPPER_ACTION, Noise.LIMIT, Comparison.EXCEEDS, 15),
            new DayRule(Reckoning.LIKELY, 480),
            new AirRule("uk", 5, Map.of(), Map.of()),
            new ClimateRule(DewPoint.MARGIN, 2, 5));

    public SafetySettings {
        apart = List.copyOf(apart);
    }

    /** With the usual pairs to keep apart and the usual light. */
    public SafetySettings(VibrationRule vibration, NoiseRule noise, DayRule day, AirRule air, ClimateRule climate) {
        this(vibration, noise, day, air, climate, Usual.apart(), Usual.light());
    }

    /** Which of the three points of a hands-on time counts. */
    public enum Reckoning {
        LIKELY,
        MEAN,
        MOST
    }

    /**
     * Values of A(8) in m/s², how they are compared, and the share of hands-on time with the trigger pulled.
     *
     * @param action       at or above it people are told and the exposure is brought down
     * @param limit        never passed; not below {@code action}
     * @param triggerShare above 0 to 1
     */
    public record VibrationRule(double action, double limit, Comparison comparison, double triggerShare) {
        public VibrationRule {
            if (!(action > 0) || !(limit >= action) || !(triggerShare > 0 && triggerShare <= 1)) {
                throw new IllegalArgumentException(
                        "vibration needs 0 < action <= limit and a trigger share up to 1, got " + action + ", " + limit
                                + " and " + triggerShare);
            }
        }
    }

    /**
     * Values of LEX,8h in dB(A).
     *
     * @param protector what the shop's hearing protectors take off where a stage says that they are worn, dB
     */
    public record NoiseRule(double lower, double upper, double limit, Comparison comparison, double protector) {
        public NoiseRule {
            if (!(lower <= upper && upper <= limit) || !(protector >= 0)) {
                throw new IllegalArgumentException("noise needs lower <= upper <= limit and a protector from 0, got "
                        + lower + ", " + upper + ", " + limit + " and " + protector);
            }
        }
    }

    /**
     * Days of the step order: work begins each day at the hour of the job's start and goes on for so many minutes.
     *
     * @param minutes above 0 to 1440
     */
    public record DayRule(Reckoning reckoning, int minutes) {
        public DayRule {
            if (minutes <= 0 || minutes > 1440) {
                throw new IllegalArgumentException("a day's work has 1 to 1440 minutes, got " + minutes);
            }
        }
    }

    /**
     * Solvent vapour.
     *
     * @param limits      which list of limits: {@code uk} or {@code us}
     * @param mixing      factor for uneven mixing, 1 to 10
     * @param ventilation fresh air of a bay in m³/h, by bay id
     * @param items       what an item gives off, by item id
     */
    public record AirRule(String limits, double mixing, Map<String, Double> ventilation, Map<String, Solvent> items) {
        public AirRule {
            ventilation = Map.copyOf(ventilation);
            items = Map.copyOf(items);
        }
    }

    /** A solvent's share of an item, percent by volume. */
    public record Solvent(String substance, double percent) {}

    /**
     * Margins.
     *
     * @param dewPoint    K that a surface must be above the dew point
     * @param temperature K within which a bound is near
     * @param humidity    percent within which a bound is near
     */
    public record ClimateRule(double dewPoint, double temperature, double humidity) {}

    /**
     * Maintained illuminance at the work in lux (EN 12464-1).
     *
     * @param usual    wanted where nothing else is said
     * @param families wanted by family of stages
     * @param stages   wanted by stage, before the family
     * @param bays     measured, by bay id; a bay that is not measured is not judged
     */
    public record LightRule(
            double usual, Map<String, Double> families, Map<String, Double> stages, Map<String, Double> bays) {

        /** Lux of a foot-candle, 1/0.3048². */
        public static final double FOOT_CANDLE = 1 / (0.3048 * 0.3048);

        public LightRule {
            families = Map.copyOf(families);
            stages = Map.copyOf(stages);
            bays = Map.copyOf(bays);
        }

        /** Lux that a stage wants. */
        public double wanted(String stage, String family) {
            return stages.getOrDefault(stage, families.getOrDefault(family, usual));
        }

        LightRule measured(Map<String, Double> measured) {
            return new LightRule(usual, families, stages, measured);
        }
    }
}
