package baywright.bench;

import baywright.library.Item;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A price list as plain lines, so that the time to read a library holds nothing of the time to read JSON. */
final class PlainItems {

    private PlainItems() {}

    /** Writes what the check of a library asks of an item: id, pack, hazards and groups. */
    static void write(Path file, List<Item> items) throws IOException {
        Files.write(
                file,
                items.stream()
                        .map(i -> String.join(
                                "\t",
                                i.id(),
                                i.pack().amount().toPlainString(),
                                i.pack().unit().name(),
                                String.join(" ", i.hazards()),
                                String.join(" ", i.groups())))
                        .toList());
    }

    static List<Item> read(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .map(line -> item(line.split("\t", -1)))
                .toList();
    }

    private static Item item(String... fields) {
        return new Item(
                fields[0],
                fields[0],
                Quantity.of(fields[1], Unit.valueOf(fields[2])),
                BigDecimal.ONE,
                false,
                Optional.empty(),
                words(fields[3]),
                List.of(),
                words(fields[4]),
                "");
    }

    private static List<String> words(String field) {
        return Stream.of(field.split(" ")).filter(word -> !word.isEmpty()).toList();
    }
}
