package baywright.swing;

import baywright.library.ScriptCache;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The shipped demo's shops laid out as workspaces with the shipped library. */
public final class DemoShops {

    /** Kept for the tests of one process, so that the same library is not read by each of them anew. */
    public static final ScriptCache SCRIPTS = ScriptCache.in(folderOfThisProcess());

    private static final Path ROOT = Path.of("..");

    private DemoShops() {}

    private static Path folderOfThisProcess() {
        try {
            return Files.createTempDirectory(Files.createDirectories(Path.of("target")), "kept-scripts");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Copies a shop, such as {@code millrace-works}, into a folder that is not there yet. */
    public static Path copy(String shop, Path folder) throws IOException {
        copy(ROOT.resolve("demo").resolve(shop), folder);
        copy(ROOT.resolve("stage-scripts"), folder.resolve("stages"));
        Path prices = folder.resolve("stages/items.json");
        if (Files.exists(folder.resolve("items.json"))) {
            Files.delete(prices);
        } else {
            Files.move(prices, folder.resolve("items.json"));
        }
        return folder;
    }

    /** The same with a few scripts only, for tests that do not depend on what the library says: it opens fast, with problems. */
    public static Path copyWithFewScripts(String shop, Path folder) throws IOException {
        copy(shop, folder);
        try (Stream<Path> all = Files.walk(folder.resolve("stages"))) {
            for (Path script : all.filter(p -> p.toString().endsWith(".groovy"))
                    .sorted()
                    .skip(3)
                    .toList()) {
                Files.delete(script);
            }
        }
        return folder;
    }

    /** A shop that has its library and prices, and no job yet. */
    public static Path copyWithoutJobs(String shop, Path folder) throws IOException {
        copy(shop, folder);
        Path jobs = folder.resolve("jobs");
        try (Stream<Path> all = Files.walk(jobs)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
        return folder;
    }

    /** A shop with sixty jobs on as many days; the steps of the first ones are done over and over until there are two hundred. */
    static Path copyMadeLarge(String shop, Path folder) throws IOException {
        copy(shop, folder);
        ObjectMapper json = new ObjectMapper();
        Path jobs = folder.resolve("jobs");
        List<Path> own;
        try (Stream<Path> all = Files.list(jobs)) {
            own = all.filter(Files::isDirectory).sorted().toList();
        }
        for (int i = 59; i >= 0; i--) {
            Path from = own.get(i % own.size());
            ObjectNode job = (ObjectNode) json.readTree(from.resolve("job.json").toFile());
            Path to = i < own.size() ? from : jobs.resolve(from.getFileName() + "-" + (i + 1));
            if (i >= own.size()) {
                copy(from, to);
                job.put("id", to.getFileName().toString());
                job.put("title", job.path("title").asText() + " " + (i + 1));
            }
            for (String moment : List.of("arrives", "wanted")) {
                if (job.has(moment)) {
                    LocalDateTime day = LocalDateTime.parse(job.get(moment).asText());
                    job.put(moment, day.plusDays(i).toString());
                }
            }
            ArrayNode steps = (ArrayNode) job.path("plan").path("steps");
            for (int s = 0, few = steps.size(); few > 0 && i < own.size() && steps.size() < 200; s++) {
                ObjectNode step = steps.get(s % few).deepCopy();
                steps.add(step.put("id", "more-" + s));
            }
            json.writeValue(to.resolve("job.json").toFile(), job);
        }
        return folder;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                Files.createDirectories(target.getParent());
                Files.copy(path, target);
            }
        }
    }
}
