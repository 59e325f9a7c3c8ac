package baywright.safety;

import baywright.plan.Severity;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a site keeps apart and how much light it wants unless it says otherwise, from {@code usual.json}. */
final class Usual {

    private static final JsonNode ALL = read();

    private Usual() {}

    private static JsonNode read() {
        try {
            return new ObjectMapper().readTree(Resources.bytes("usual.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<ApartPair> apart() {
        List<ApartPair> pairs = new ArrayList<>();
        for (JsonNode one : ALL.get("apart")) {
            pairs.add(new ApartPair(
                    one.get("id").textValue(),
                    texts(one.get("first")),
                    texts(one.get("second")),
                    ApartPair.Within.valueOf(one.get("within").textValue().toUpperCase(Locale.ROOT)),
                    one.path("minutes").intValue(),
                    Severity.valueOf(one.get("severity").textValue().toUpperCase(Locale.ROOT)),
                    one.get("why").textValue()));
        }
        return pairs;
    }

    static SafetySettings.LightRule light() {
        JsonNode light = ALL.get("light");
        return new SafetySettings.LightRule(
                light.get("usual").doubleValue(),
                figures(light.get("families")),
                figures(light.get("stages")),
                Map.of());
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.textValue()));
        return texts;
    }

    private static Map<String, Double> figures(JsonNode object) {
        Map<String, Double> figures = new LinkedHashMap<>();
        object.properties().forEach(f -> figures.put(f.getKey(), f.getValue().doubleValue()));
        return figures;
    }
}
