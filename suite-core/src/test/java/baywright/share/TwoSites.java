package baywright.share;

import baywright.DemoSite;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackMaker;
import baywright.pack.Version;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A site that hands over a small library, and one that takes it. */
public final class TwoSites {

    public static final String WASH = "stages/wash.groovy";
    public static final String WORDS = "stages/words.groovy";

    private static final Path MILL = Path.of("src", "test", "resources", "baywright", "workspace", "mill");
    private static final String DECLARED = """
            surface 'paint', means: 'painted panels'
            family 'wash', title: 'Washing'
            state 'wet', means: 'carries water'
            state 'clean', means: 'carries no dirt'
            """;

    private final Path giver;
    private final Path taker;

    private TwoSites(Path giver, Path taker) {
        this.giver = giver;
        this.taker = taker;
    }

    /** Two sites; the one that takes has no scripts and a price list of its own. */
    public static TwoSites in(Path folder) {
        TwoSites two = new TwoSites(folder.resolve("giver"), folder.resolve("taker"));
        for (Path root : List.of(two.giver, two.taker)) {
            write(root, "shop.json", read(MILL, "shop.json"));
            write(root, "items.json", read(MILL, "items.json"));
            write(root, "stages/shapes.json", read(MILL, "stages/shapes.json"));
        }
        write(two.giver, WORDS, DECLARED);
        write(two.giver, WASH, stage("rinse", 3, "") + stage("foam", 5, ""));
        return two;
    }

    static String stage(String id, int minutes, String more) {
        return """
                // how we do the %1$s
                stage('%1$s') {
                    title 'The %1$s'
                    family 'wash'
                    revision 1
                    worksOn 'paint'
                    after {
                        sets 'wet', 'clean'
                    }
                    time {
                        attended %2$d.min, %3$d.min, %4$d.min
                    }
                    uses {
                        item 'iron-remover', 10.ml
                %5$s    }
                    checks {
                        confirm 'The work is as agreed'
                    }
                }
                """.formatted(id, minutes, minutes + 1, minutes + 2, more);
    }

    public static String stage(String id, int minutes) {
        return stage(id, minutes, "");
    }

    public TwoSites give(String file, String text) {
        write(giver, file, text);
        return this;
    }

    public TwoSites have(String file, String text) {
        write(taker, file, text);
        return this;
    }

    public String given(String file) {
        return read(giver, file);
    }

    public String had(String file) {
        return read(taker, file);
    }

    public Path taker() {
        return taker;
    }

    /** The library of the giver as a pack. */
    public Pack pack(String version, Manifest.Need... needs) {
        return pack("gentle-wash", version, needs);
    }

    Pack pack(String id, String version, Manifest.Need... needs) {
        PackMaker.About about = new PackMaker.About(
                id, Version.of(version), "The Mill", "to wash gently", "CC-BY-4.0", List.of(needs), false);
        PackMaker.Made made = PackMaker.make(Workspace.open(giver), PackMaker.Selection.EVERYTHING, about, List.of());
        if (!made.errors().isEmpty()) {
            throw new AssertionError(made.errors());
        }
        return made.pack();
    }

    Taking taking(Pack pack, Choice choice) {
        return Taking.of(Workspace.open(taker), pack, choice, DemoSite.SCRIPTS);
    }

    /** Everything of the site that takes, letter by letter, without its lock. */
    SortedMap<String, String> everything() {
        SortedMap<String, String> all = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(taker)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                String name = taker.relativize(file).toString();
                if (!name.startsWith(".")) {
                    all.put(name, Files.readString(file));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    private static void write(Path root, String file, String text) {
        try {
            Files.createDirectories(root.resolve(file).getParent());
            Files.writeString(root.resolve(file), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path root, String file) {
        try {
            return Files.readString(root.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
