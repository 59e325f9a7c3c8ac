package baywright.share;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.share.Clash.Side;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What must hold whatever two sides make of the same shapes. What a text says is asked of Jackson's tree, not of the merge. */
class DataMergeLawsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String FILE = "shapes.json";

    /** One edit of a side: of a shape, of one of its zones, of a value in it. */
    private record Edit(String shape, String zone, String what, String value) {

        boolean touches(Edit other) {
            return shape.equals(other.shape)
                    && ((zone.equals(other.zone) && what.equals(other.what)) || isWide() || other.isWide())
                    && (zone.equals(other.zone) || zone.isEmpty() || other.zone.isEmpty());
        }

        private boolean isWide() {
            return what.equals("out") || what.equals("new");
        }
    }

    private static ObjectNode zone(String id, Random random) {
        ObjectNode zone = JSON.createObjectNode();
        zone.put("id", id);
        zone.put("title", "Zone " + id);
        zone.putObject("measures").put("m2", random.nextInt(100));
        zone.putArray("neighbours").add("roof").add("wing");
        return zone;
    }

    private static ObjectNode base(Random random) {
        ObjectNode file = JSON.createObjectNode();
        file.put("schema", "baywright/shapes/1");
        ArrayNode shapes = file.putArray("shapes");
        for (int s = 0; s < 3; s++) {
            ObjectNode shape = shapes.addObject();
            shape.put("id", "s" + s);
            shape.put("title", "Shape " + s);
            ArrayNode zones = shape.putArray("zones");
            for (int z = 0; z < 3; z++) {
                zones.add(zone("z" + z, random));
            }
        }
        return file;
    }

    private static Edit edit(Random random, String side) {
        String shape = "s" + random.nextInt(3);
        String zone = random.nextInt(5) == 0 ? "" : "z" + random.nextInt(3);
        String value = side + random.nextInt(4);
        return switch (random.nextInt(6)) {
            case 0 -> new Edit(shape, zone, "out", "");
            case 1 ->
                zone.isEmpty() ? new Edit("n" + value, "", "new", value) : new Edit(shape, "n" + value, "new", value);
            case 2 -> new Edit(shape, zone.isEmpty() ? "z0" : zone, "m2", value);
            case 3 -> new Edit(shape, zone.isEmpty() ? "z0" : zone, "neighbour " + value, value);
            default -> new Edit(shape, zone, "title", value);
        };
    }

    private static Optional<ObjectNode> find(JsonNode list, String id) {
        for (JsonNode one : list) {
            if (one.get("id").asText().equals(id)) {
                return Optional.of((ObjectNode) one);
            }
        }
        return Optional.empty();
    }

    private static void remove(JsonNode list, String id) {
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).get("id").asText().equals(id)) {
                ((ArrayNode) list).remove(i);
                return;
            }
        }
    }

    private static void make(ObjectNode file, Edit edit) {
        JsonNode shapes = file.get("shapes");
        Optional<ObjectNode> shape = find(shapes, edit.shape());
        if (edit.zone().isEmpty()) {
            switch (edit.what()) {
                case "out" -> remove(shapes, edit.shape());
                case "new" -> {
                    if (shape.isEmpty()) {
                        ((ArrayNode) shapes)
                                .addObject()
                                .put("id", edit.shape())
                                .put("title", edit.value())
                                .putArray("zones");
                    }
                }
                default -> shape.ifPresent(s -> s.put("title", edit.value()));
            }
            return;
        }
        if (shape.isEmpty()) {
            return;
        }
        JsonNode zones = shape.get().get("zones");
        Optional<ObjectNode> zone = find(zones, edit.zone());
        switch (edit.what()) {
            case "out" -> remove(zones, edit.zone());
            case "new" -> {
                if (zone.isEmpty()) {
                    ((ArrayNode) zones)
                            .add(zone(edit.zone(), new Random(edit.value().hashCode())));
                }
            }
            case "m2" -> zone.ifPresent(z -> ((ObjectNode) z.get("measures")).put("m2", edit.value()));
            case "title" -> zone.ifPresent(z -> z.put("title", edit.value()));
            default -> zone.ifPresent(z -> ((ArrayNode) z.get("neighbours")).insert(0, edit.value()));
        }
    }

    /** A base and what two sides have made of it. */
    private static final class Case {
        private final ObjectNode base;
        private final ObjectNode ours;
        private final ObjectNode theirs;
        private final ObjectNode both;

        Case(long seed, boolean apart) {
            Random random = new Random(seed);
            base = base(random);
            ours = base.deepCopy();
            theirs = base.deepCopy();
            both = base.deepCopy();
            List<Edit> edits = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                Edit edit = edit(random, i % 2 == 0 ? "x" : "y");
                if (!apart || edits.stream().noneMatch(e -> e.touches(edit) || edit.touches(e))) {
                    edits.add(edit);
                    make(i % 2 == 0 ? ours : theirs, edit);
                    make(both, edit);
                }
            }
        }
    }

    private static String text(JsonNode tree) {
        return tree.toPrettyString() + "\n";
    }

    private static Map<String, String> file(JsonNode tree) {
        return Map.of(FILE, text(tree));
    }

    private static JsonNode read(String text) {
        try {
            return JSON.readTree(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a tree says, without order. */
    private static Object said(JsonNode tree) {
        if (tree.isObject()) {
            Map<String, Object> members = new TreeMap<>();
            tree.properties().forEach(e -> members.put(e.getKey(), said(e.getValue())));
            return members;
        }
        if (tree.isArray()) {
            Set<Object> elements = new HashSet<>();
            tree.forEach(e -> elements.add(said(e)));
            return elements;
        }
        return tree.asText();
    }

    @Property(tries = 100)
    void whatOneSideAloneChangedIsTakenLetterByLetter(@ForAll long seed) {
        Case made = new Case(seed, false);
        Random random = new Random(seed);
        String odd = text(made.ours);
        odd = random.nextBoolean() ? odd.replace("\n", "\r\n") : odd;
        odd = random.nextBoolean() ? "\uFEFF" + odd : odd;
        odd = random.nextBoolean() ? odd.stripTrailing() : odd.replace(" : ", "  :\t");
        Map<String, String> ours = Map.of(FILE, odd);
        for (Merged merged : List.of(
                DeclarationMerge.of(file(made.base), ours, file(made.base)),
                DeclarationMerge.of(file(made.base), file(made.base), ours),
                DeclarationMerge.of(file(made.base), ours, ours))) {
            assertThat(merged.texts()).isEqualTo(ours);
            assertThat(merged.clashes()).isEmpty();
        }
    }

    @Property(tries = 200)
    void editsOfDifferentThingsAreAllThere(@ForAll long seed) {
        Case made = new Case(seed, true);
        Merged merged = DeclarationMerge.of(file(made.base), file(made.ours), file(made.theirs));
        assertThat(merged.clashes()).isEmpty();
        assertThat(said(read(merged.texts().get(FILE)))).isEqualTo(said(made.both));
    }

    @Property(tries = 200)
    void swappingTheSidesSwapsTheClashesAndNothingElse(@ForAll long seed) {
        Case made = new Case(seed, false);
        Merged one =
                DeclarationMerge.of(file(made.base), file(made.ours), file(made.theirs), c -> Optional.of(Side.OURS));
        Merged other =
                DeclarationMerge.of(file(made.base), file(made.theirs), file(made.ours), c -> Optional.of(Side.THEIRS));
        assertThat(one.texts()).isEqualTo(other.texts());
        assertThat(one.clashes())
                .extracting(Clash::name)
                .containsExactlyInAnyOrderElementsOf(
                        other.clashes().stream().map(Clash::name).toList());
    }

    /** Merging what came out with theirs once more changes nothing. */
    @Property(tries = 100)
    void mergingAgainChangesNothing(@ForAll long seed) {
        Case made = new Case(seed, false);
        Map<String, String> once = DeclarationMerge.of(file(made.base), file(made.ours), file(made.theirs))
                .texts();
        Merged again = DeclarationMerge.of(file(made.theirs), once, file(made.theirs));
        assertThat(again.texts()).isEqualTo(once);
        assertThat(again.clashes()).isEmpty();
    }

    /** Each value that a side has and the base has not is in the result or in a clash. */
    @Property(tries = 200)
    void nothingThatASideSaysIsLost(@ForAll long seed) {
        Case made = new Case(seed, false);
        Merged merged = DeclarationMerge.of(file(made.base), file(made.ours), file(made.theirs));
        Set<String> told = leaves(read(merged.texts().get(FILE)));
        merged.clashes().stream()
                .flatMap(c -> Stream.of(c.ours(), c.theirs()))
                .flatMap(Optional::stream)
                .forEach(w -> told.addAll(leaves(read(w.text()))));
        Set<String> before = leaves(made.base);
        Stream.of(made.ours, made.theirs)
                .flatMap(side -> leaves(side).stream())
                .filter(leaf -> !before.contains(leaf))
                .forEach(leaf -> assertThat(told).contains(leaf));
    }

    private static Set<String> leaves(JsonNode tree) {
        Set<String> leaves = new TreeSet<>();
        if (tree.isValueNode()) {
            leaves.add(tree.asText());
        }
        tree.forEach(inner -> leaves.addAll(leaves(inner)));
        return leaves;
    }
}
