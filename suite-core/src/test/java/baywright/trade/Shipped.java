package baywright.trade;

import baywright.library.Item;
import baywright.library.LibraryLoader;
import baywright.library.LibraryLoader.Loaded;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the files that the project ships lie, seen from the module that tests them. */
public final class Shipped {

    public static final Path STAGES = Path.of("..", "stage-scripts");
    static final Path DEMO = Path.of("..", "demo");

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private static Loaded loaded;

    private Shipped() {}

    /** The standard library, loaded once for all tests. */
    public static synchronized Loaded library() {
        if (loaded == null) {
            try {
                loaded = LibraryLoader.load(STAGES, items());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return loaded;
    }

    /** A shape of the standard library. */
    static Shape shape(String id) {
        try {
            for (JsonNode shape : json(STAGES.resolve("shapes.json")).path("shapes")) {
                if (shape.path("id").asText().equals(id)) {
                    List<Zone> zones = new ArrayList<>();
                    shape.path("zones").forEach(z -> zones.add(zone(z)));
                    return new Shape(
                            id, shape.path("title").asText(), shape.path("size").decimalValue(), zones);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        throw new AssertionError("no shape " + id);
    }

    private static Zone zone(JsonNode zone) {
        Map<String, BigDecimal> measures = new HashMap<>();
        zone.path("measures")
                .properties()
                .forEach(e -> measures.put(e.getKey(), e.getValue().decimalValue()));
        return new Zone(
                zone.path("id").asText(),
                zone.path("title").asText(),
                zone.path("surface").asText(),
                zone.path("substrate").asText(),
                measures,
                texts(zone.path("neighbours")));
    }

    /** The file as a plain tree, without any reader of our own in between. */
    static JsonNode json(Path file) throws IOException {
        return JSON.readTree(file.toFile());
    }

    /** The standard price list. */
    public static List<Item> items() throws IOException {
        List<Item> items = new ArrayList<>();
        for (JsonNode item : json(STAGES.resolve("items.json")).path("items")) {
            String pack = item.path("pack").asText();
            int space = pack.indexOf(' ');
            items.add(new Item(
                    item.path("id").asText(),
                    item.path("title").asText(),
                    Quantity.of(
                            pack.substring(0, space),
                            Unit.of(pack.substring(space + 1)).orElseThrow()),
                    item.path("price").decimalValue(),
                    item.path("spoils").asBoolean(),
                    Optional.empty(),
                    texts(item.path("hazards")),
                    texts(item.path("protection")),
                    texts(item.path("groups")),
                    item.path("note").asText()));
        }
        return items;
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(t -> texts.add(t.asText()));
        return texts;
    }
}
