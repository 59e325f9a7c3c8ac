package baywright.swing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The shipped demo's shops laid out as workspaces with the shipped library. */
public final class DemoShops {

    private static final Path ROOT = Path.of("..");

    private DemoShops() {}

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
