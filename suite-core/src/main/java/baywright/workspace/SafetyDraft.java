package baywright.workspace;

import baywright.safety.ApartPair;
import baywright.safety.Comparison;
import baywright.safety.SafetySettings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** {@code safety} of {@code shop.json} as the program would write it: what is not as usual. */
final class SafetyDraft {

    private static final SafetySettings USUAL = SafetySettings.USUAL;

    private SafetyDraft() {}

    static Draft of(SafetySettings now) {
        return Draft.object()
                .with("vibration", vibration(now.vibration(), USUAL.vibration()))
                .with("noise", noise(now.noise(), USUAL.noise()))
                .with(
                        "day",
                        Draft.object()
                                .with(
                                        "reckonWith",
                                        Draft.unless(
                                                now.day().reckoning()
                                                        == USUAL.day().reckoning(),
                                                Draft.choice(
                                                        SafetyJson.RECKONINGS,
                                                        now.day().reckoning())))
                                .usually(
                                        "minutes",
                                        now.day().minutes(),
                                        USUAL.day().minutes()))
                .with("air", air(now.air(), USUAL.air()))
                .with("climate", climate(now.climate(), USUAL.climate()))
                .with("apart", apart(now.apart()))
                .with("light", light(now.light(), USUAL.light()));
    }

    private static Draft vibration(SafetySettings.VibrationRule now, SafetySettings.VibrationRule usual) {
        return Draft.object()
                .usually("action", now.action(), usual.action())
                .usually("limit", now.limit(), usual.limit())
                .with("comparison", comparison(now.comparison(), usual.comparison()))
                .usually("triggerShare", now.triggerShare(), usual.triggerShare());
    }

    private static Draft comparison(Comparison now, Comparison usual) {
        return Draft.unless(now == usual, Draft.choice(SafetyJson.COMPARISONS, now));
    }

    private static Draft noise(SafetySettings.NoiseRule now, SafetySettings.NoiseRule usual) {
        return Draft.object()
                .usually("lower", now.lower(), usual.lower())
                .usually("upper", now.upper(), usual.upper())
                .usually("limit", now.limit(), usual.limit())
                .with("comparison", comparison(now.comparison(), usual.comparison()))
                .usually("protector", now.protector(), usual.protector());
    }

    private static Draft air(SafetySettings.AirRule now, SafetySettings.AirRule usual) {
        return Draft.object()
                .with("limits", Draft.unless(now.limits().equals(usual.limits()), Draft.text(now.limits())))
                .usually("mixing", now.mixing(), usual.mixing())
                .with("ventilation", Draft.map(now.ventilation(), air -> Draft.number(Draft.decimal(air))))
                .with(
                        "items",
                        Draft.map(
                                now.items(),
                                solvent -> Draft.object()
                                        .with("substance", Draft.text(solvent.substance()))
                                        .usually("percent", solvent.percent(), 100)));
    }

    private static Draft climate(SafetySettings.ClimateRule now, SafetySettings.ClimateRule usual) {
        return Draft.object()
                .usually("dewPoint", now.dewPoint(), usual.dewPoint())
                .usually("temperature", now.temperature(), usual.temperature())
                .usually("humidity", now.humidity(), usual.humidity());
    }

    private static Draft light(SafetySettings.LightRule now, SafetySettings.LightRule usual) {
        return Draft.object()
                .usually("usual", now.usual(), usual.usual())
                .with("families", lux(now.families(), usual.families()))
                .with("stages", lux(now.stages(), usual.stages()))
                .with("bays", lux(now.bays(), Map.of()));
    }

    private static Draft lux(Map<String, Double> now, Map<String, Double> usual) {
        Map<String, Draft> members = new LinkedHashMap<>();
        new TreeMap<>(now)
                .forEach((id, lux) ->
                        members.put(id, Draft.unless(lux.equals(usual.get(id)), Draft.number(Draft.decimal(lux)))));
        return new Draft.Obj(members, false, true);
    }

    /** A usual pair that is missing was dropped; the reason stays with the file, and without one it is not read back. */
    private static Draft apart(List<ApartPair> pairs) {
        Map<String, ApartPair> usual = new LinkedHashMap<>();
        USUAL.apart().forEach(pair -> usual.put(pair.id(), pair));
        List<Draft> all = new ArrayList<>();
        for (ApartPair pair : pairs) {
            all.add(apart(pair, Optional.ofNullable(usual.remove(pair.id()))));
        }
        usual.keySet()
                .forEach(id ->
                        all.add(Draft.object().with("id", Draft.text(id)).with("severity", Draft.text(ApartJson.OFF))));
        return Draft.loose(all, "id", draft -> draft);
    }

    private static Draft apart(ApartPair pair, Optional<ApartPair> usual) {
        ApartPair otherwise = usual.orElse(new ApartPair(
                pair.id(), List.of(), List.of(), ApartJson.WITHIN_USUALLY, 0, ApartJson.SEVERITY_USUALLY, ""));
        return Draft.unless(
                usual.filter(pair::equals).isPresent(),
                Draft.object()
                        .with("id", Draft.text(pair.id()))
                        .with("first", Draft.unless(pair.first().equals(otherwise.first()), Draft.texts(pair.first())))
                        .with(
                                "second",
                                Draft.unless(pair.second().equals(otherwise.second()), Draft.texts(pair.second())))
                        .with(
                                "within",
                                Draft.unless(
                                        pair.within() == otherwise.within(),
                                        Draft.choice(ApartJson.WITHIN, pair.within())))
                        .with(
                                "minutes",
                                Draft.unless(
                                        pair.minutes() == otherwise.minutes(),
                                        Draft.number(BigDecimal.valueOf(pair.minutes()))))
                        .with(
                                "severity",
                                Draft.unless(
                                        pair.severity() == otherwise.severity(),
                                        Draft.text(pair.severity().name().toLowerCase(Locale.ROOT))))
                        .with("why", Draft.unless(pair.why().equals(otherwise.why()), Draft.text(pair.why()))));
    }
}
