package baywright;

import baywright.library.ScriptCache;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A site of the shipped demo laid out in a folder with the shipped library, without the demo's jobs being worked. */
public final class DemoSite {

    /** Kept for the tests of one process, so that the same library is not read by each of them anew. */
    public static final ScriptCache SCRIPTS = ScriptCache.in(folderOfThisProcess());

    private static final Path ROOT = Path.of("..");

    private DemoSite() {}

    private static Path folderOfThisProcess() {
        try {
            return Files.createTempDirectory(Files.createDirectories(Path.of("target")), "kept-scripts");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Copies the site; one without a price list of its own gets the library's. */
    public static void copy(String site, Path folder) throws IOException {
        copy(ROOT.resolve("demo").resolve(site), folder);
        copy(ROOT.resolve("stage-scripts"), folder.resolve("stages"));
        Path prices = folder.resolve("stages/items.json");
        if (Files.exists(folder.resolve("items.json"))) {
            Files.delete(prices);
        } else {
            Files.move(prices, folder.resolve("items.json"));
        }
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
