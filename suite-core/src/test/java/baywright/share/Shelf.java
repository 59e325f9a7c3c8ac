package baywright.share;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A small library as a plain model, with edits of which everyone can say what they come to. */
final class Shelf {

    /** A stage: the file it is in and its lines by what they are about. */
    record Entry(String file, SortedMap<String, String> lines) {}

    /** One edit: of one line of one stage, or of a stage as a whole (then the line is empty). */
    record Edit(String stage, String line, String what) {}

    private static final List<String> FILES = List.of("a.groovy", "b.groovy", "wash/c.groovy");

    private final SortedMap<String, Entry> stages = new TreeMap<>();

    static Shelf random(Random random) {
        Shelf shelf = new Shelf();
        // Each file keeps one stage: the last one to move would take the file's name with it.
        FILES.forEach(f -> shelf.stages.put("kept" + FILES.indexOf(f), new Entry(f, lines(random))));
        int count = 3 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            shelf.stages.put("s" + i, new Entry(FILES.get(random.nextInt(3)), lines(random)));
        }
        return shelf;
    }

    private static SortedMap<String, String> lines(Random random) {
        SortedMap<String, String> lines = new TreeMap<>();
        lines.put("title", "    title 'Rinse " + random.nextInt(9) + "'\n");
        for (String state : List.of("wet", "cool", "clean")) {
            if (random.nextBoolean()) {
                lines.put(
                        "before " + state, "        needs '" + state + "', why: 'because " + random.nextInt(9) + "'\n");
            }
        }
        for (String driver : List.of("m2", "wheel")) {
            if (random.nextBoolean()) {
                lines.put("time " + driver, minutes(random, driver));
            }
        }
        return lines;
    }

    private static String minutes(Random random, String driver) {
        int least = 1 + random.nextInt(20);
        return "        attended " + least + ".min, " + (least + 1) + ".min, " + (least + 2) + ".min, per: '" + driver
                + "'" + (random.nextInt(3) == 0 ? "  // by feel\n" : "\n");
    }

    Shelf copy() {
        Shelf copy = new Shelf();
        stages.forEach((id, e) -> copy.stages.put(id, new Entry(e.file(), new TreeMap<>(e.lines()))));
        return copy;
    }

    /** A random edit that is not yet made; {@code side} keeps apart what both sides add. */
    Edit edit(Random random, String side) {
        List<String> ids =
                stages.keySet().stream().filter(s -> !s.startsWith("kept")).toList();
        String id = ids.get(random.nextInt(ids.size()));
        return switch (random.nextInt(7)) {
            case 0 -> new Edit("new-" + side + random.nextInt(50), "", "add");
            case 1 -> new Edit(id, "", "delete");
            case 2 -> new Edit(id, "", "move " + FILES.get(random.nextInt(3)));
            case 3 -> new Edit(id, "before " + side, "        needs '" + side + "'\n");
            case 4 -> new Edit(id, "time m2", random.nextBoolean() ? minutes(random, "m2") : "");
            case 5 ->
                new Edit(
                        id,
                        "before wet",
                        random.nextBoolean() ? "        needs 'wet', why: '" + side + random.nextInt(3) + "'\n" : "");
            default -> new Edit(id, "title", "    title '" + side + random.nextInt(3) + "'\n");
        };
    }

    void make(Edit edit) {
        Entry entry = stages.get(edit.stage());
        if (edit.what().equals("add")) {
            stages.put(
                    edit.stage(),
                    new Entry("a.groovy", lines(new Random(edit.stage().hashCode()))));
        } else if (entry == null) {
            return;
        } else if (edit.what().equals("delete")) {
            stages.remove(edit.stage());
        } else if (edit.what().startsWith("move ")) {
            stages.put(edit.stage(), new Entry(edit.what().substring(5), entry.lines()));
        } else if (edit.what().isEmpty()) {
            entry.lines().remove(edit.line());
        } else {
            entry.lines().put(edit.line(), edit.what());
        }
    }

    Map<String, String> texts() {
        Map<String, StringBuilder> texts = new LinkedHashMap<>();
        stages.forEach((id, entry) -> {
            StringBuilder text = texts.computeIfAbsent(entry.file(), f -> new StringBuilder("// how we do it\n\n"));
            text.append("// about ").append(id).append("\nstage('").append(id).append("') {\n");
            text.append(entry.lines().getOrDefault("title", ""));
            block(text, "before", entry);
            block(text, "time", entry);
            text.append("}\n");
        });
        return texts.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().toString()));
    }

    private static void block(StringBuilder text, String block, Entry entry) {
        text.append("    ").append(block).append(" {\n");
        entry.lines().tailMap(block).forEach((key, line) -> text.append(key.startsWith(block + " ") ? line : ""));
        text.append("    }\n");
    }

    /** Each stage of texts with its file and its lines in no order. */
    static List<String> said(Map<String, String> texts) {
        List<String> said = new ArrayList<>();
        texts.forEach((file, text) -> {
            for (String stage : text.split("(?m)^(?=// about )", -1)) {
                if (stage.startsWith("// about")) {
                    said.add(file + "\n" + stage.lines().sorted().collect(Collectors.joining("\n")));
                }
            }
        });
        return said.stream().sorted().toList();
    }
}
