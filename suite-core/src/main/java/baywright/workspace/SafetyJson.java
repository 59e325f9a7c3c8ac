package baywright.workspace;

import baywright.safety.Comparison;
import baywright.safety.SafetySettings;
import baywright.safety.SafetySettings.AirRule;
import baywright.safety.SafetySettings.ClimateRule;
import baywright.safety.SafetySettings.DayRule;
import baywright.safety.SafetySettings.LightRule;
import baywright.safety.SafetySettings.NoiseRule;
import baywright.safety.SafetySettings.Reckoning;
import baywright.safety.SafetySettings.Solvent;
import baywright.safety.SafetySettings.VibrationRule;
import baywright.safety.Substance;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** {@code safety} of {@code shop.json} to {@link SafetySettings}; what is left out has its usual value. */
final class SafetyJson {

    static final Map<String, Comparison> COMPARISONS = ShopJson.inOrder(
            Map.entry("exceeds", Comparison.EXCEEDS), Map.entry("at-or-above", Comparison.AT_OR_ABOVE));
    static final Map<String, Reckoning> RECKONINGS = ShopJson.inOrder(
            Map.entry("likely", Reckoning.LIKELY),
            Map.entry("mean", Reckoning.MEAN),
            Map.entry("most", Reckoning.MOST));
    private static final Map<String, String> LIMITS = ShopJson.inOrder(Map.entry("uk", "uk"), Map.entry("us", "us"));
    private static final Span LUX = Span.from(0, 200_000);
    private static final SafetySettings USUAL = SafetySettings.USUAL;

    private SafetyJson() {}

    static SafetySettings read(Fields in) {
        SafetySettings settings = new SafetySettings(
                in.objectIfGiven("vibration").map(SafetyJson::vibration).orElse(USUAL.vibration()),
                in.objectIfGiven("noise").map(SafetyJson::noise).orElse(USUAL.noise()),
                in.objectIfGiven("day").map(SafetyJson::day).orElse(USUAL.day()),
                in.objectIfGiven("air").map(SafetyJson::air).orElse(USUAL.air()),
                in.objectIfGiven("climate").map(SafetyJson::climate).orElse(USUAL.climate()),
                ApartJson.read(in),
                in.objectIfGiven("light").map(SafetyJson::light).orElse(USUAL.light()));
        in.done();
        return settings;
    }

    private static VibrationRule vibration(Fields in) {
        VibrationRule usual = USUAL.vibration();
        double action = number(in, "action", Span.above(0, 5), usual.action());
        double limit = number(in, "limit", Span.above(0, 5), usual.limit());
        Comparison comparison = in.choice("comparison", COMPARISONS, usual.comparison());
        double share = number(in, "triggerShare", Span.above(0, 1), usual.triggerShare());
        in.done();
        if (action > limit) {
            in.refuse("action", "the value is above limit, " + limit, "give a number that is not above it");
            return usual;
        }
        return new VibrationRule(action, limit, comparison, share);
    }

    private static NoiseRule noise(Fields in) {
        NoiseRule usual = USUAL.noise();
        Span level = Span.from(40, 100);
        double lower = number(in, "lower", level, usual.lower());
        double upper = number(in, "upper", level, usual.upper());
        double limit = number(in, "limit", level, usual.limit());
        Comparison comparison = in.choice("comparison", COMPARISONS, usual.comparison());
        double protector = number(in, "protector", Span.from(0, 40), usual.protector());
        in.done();
        if (lower > upper || upper > limit) {
            in.refuse("upper", "the values are out of order", "give lower, upper and limit in rising order");
            return usual;
        }
        return new NoiseRule(lower, upper, limit, comparison, protector);
    }

    private static DayRule day(Fields in) {
        DayRule day = new DayRule(
                in.choice("reckonWith", RECKONINGS, USUAL.day().reckoning()),
                in.whole("minutes", Span.from(1, 1440), USUAL.day().minutes()));
        in.done();
        return day;
    }

    private static AirRule air(Fields in) {
        Map<String, Double> ventilation = new LinkedHashMap<>();
        in.numbers("ventilation", Span.above(0, 1_000_000))
                .forEach((bay, air) -> ventilation.put(bay, air.doubleValue()));
        Map<String, Solvent> items = new LinkedHashMap<>();
        in.objectsById("items").forEach((item, fields) -> items.put(item, solvent(fields)));
        AirRule air = new AirRule(
                in.choice("limits", LIMITS, USUAL.air().limits()),
                number(in, "mixing", Span.from(1, 10), USUAL.air().mixing()),
                ventilation,
                items);
        in.done();
        return air;
    }

    private static Solvent solvent(Fields in) {
        Map<String, String> known = new LinkedHashMap<>();
        Substance.ALL.forEach(s -> known.put(s.id(), s.id()));
        Solvent solvent = new Solvent(in.choice("substance", known), number(in, "percent", Span.above(0, 100), 100));
        in.done();
        return solvent;
    }

    private static ClimateRule climate(Fields in) {
        ClimateRule climate = new ClimateRule(
                number(in, "dewPoint", Span.from(0, 20), USUAL.climate().dewPoint()),
                number(in, "temperature", Span.from(0, 20), USUAL.climate().temperature()),
                number(in, "humidity", Span.from(0, 50), USUAL.climate().humidity()));
        in.done();
        return climate;
    }

    private static LightRule light(Fields in) {
        LightRule usual = USUAL.light();
        LightRule light = new LightRule(
                number(in, "usual", LUX, usual.usual()),
                lux(in, "families", usual.families()),
                lux(in, "stages", usual.stages()),
                lux(in, "bays", Map.of()));
        in.done();
        return light;
    }

    private static Map<String, Double> lux(Fields in, String name, Map<String, Double> usual) {
        Map<String, Double> all = new LinkedHashMap<>(usual);
        in.numbers(name, LUX).forEach((id, value) -> all.put(id, value.doubleValue()));
        return all;
    }

    private static double number(Fields in, String name, Span span, double usual) {
        return in.number(name, span, BigDecimal.valueOf(usual)).doubleValue();
    }
}
