package baywright.trade;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.library.LibraryLoader.Loaded;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** All cases of the bench, and the libraries that they are proved with. */
final class Benches {

    private static final Path FOLDER = Path.of("src", "test", "resources", "baywright", "trade", "bench");
    private static Library withExtras;

    private Benches() {}

    static List<Bench> all() {
        List<Bench> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.sorted().toList()) {
                for (JsonNode one : Shipped.json(file).path("cases")) {
                    all.add(Bench.read(one));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    /** The standard library; with what the shops of all cases have written themselves where the case has such a script. */
    static Library library(Bench bench) {
        return bench.extra().isEmpty() ? Shipped.library().library() : withExtras();
    }

    private static synchronized Library withExtras() {
        if (withExtras == null) {
            Set<String> extras = new TreeSet<>();
            all().forEach(b -> extras.add(b.extra()));
            withExtras = with(String.join("\n", extras));
        }
        return withExtras;
    }

    private static Library with(String extra) {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Shipped.STAGES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".groovy")).toList()) {
                texts.put(
                        Shipped.STAGES.relativize(file).toString().replace('\\', '/'),
                        Files.readString(file, StandardCharsets.UTF_8));
            }
            texts.put("zz-shop.groovy", extra);
            Loaded loaded = LibraryLoader.load(texts, items());
            if (!loaded.errors().isEmpty()) {
                throw new AssertionError(loaded.errors());
            }
            return loaded.library();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The standard price list and two items that no shop of ours keeps, for cases about what must not meet. */
    private static List<Item> items() throws IOException {
        List<Item> items = new ArrayList<>(Shipped.items());
        items.add(item("bleach", "hypochlorite"));
        items.add(item("ammonia-glass-cleaner", "ammonia"));
        return items;
    }

    private static Item item(String id, String group) {
        Quantity pack = Quantity.of(1000, Unit.MILLILITRE);
        return new Item(
                id, id, pack, BigDecimal.TEN, false, Optional.empty(), List.of(), List.of(), List.of(group), "");
    }
}
