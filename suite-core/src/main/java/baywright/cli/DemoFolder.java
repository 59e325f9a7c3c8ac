package baywright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Puts the demo's workspaces, with the standard stage scripts, into a folder of the user's. Never overwrites anything. */
final class DemoFolder {

    private final Session session;

    DemoFolder(Session session) {
        this.session = session;
    }

    /** What became of a workspace. */
    enum Fate {
        COPIED,
        /** It was there, just as the demo ships. */
        FOUND,
        /** It was there and differs from what the demo ships; it stays as it is. */
        KEPT
    }

    /**
     * One workspace of the demo.
     *
     * @param workspace its folder
     * @param fate      whether it was copied or found
     * @param changed   how many files differ from what the demo ships
     */
    record Copy(Path workspace, Fate fate, int changed) {
        String site() {
            return workspace.getFileName().toString();
        }
    }

    /**
     * Copies what is not there yet.
     *
     * @throws BadInput when the target is no folder or cannot be written, or the program's own folder is incomplete
     */
    List<Copy> copyTo(Path given) {
        if (!session.home().isWhole()) {
            throw session.badInput("demo.not-shipped", session.home().folder());
        }
        Path target = given.toAbsolutePath().normalize();
        List<Copy> copies = new ArrayList<>();
        try {
            Files.createDirectories(target);
            for (Path site : sites()) {
                copies.add(copy(site, target.resolve(site.getFileName().toString())));
            }
        } catch (IOException | UncheckedIOException e) {
            throw session.badInput("demo.not-written", given, e.getMessage());
        }
        return copies;
    }

    private List<Path> sites() throws IOException {
        try (Stream<Path> all = Files.list(session.home().demo())) {
            return all.filter(p -> Files.isRegularFile(p.resolve("shop.json")))
                    .sorted()
                    .toList();
        }
    }

    private Copy copy(Path site, Path workspace) throws IOException {
        SortedMap<String, Path> sources = sources(site);
        if (Files.exists(workspace)) {
            int changed = changed(sources, workspace);
            return new Copy(workspace, changed == 0 ? Fate.FOUND : Fate.KEPT, changed);
        }
        // A copy that breaks off must not look like a workspace, so it grows under another name.
        Path growing = Files.createTempDirectory(workspace.getParent(), ".copying-");
        try {
            for (var source : sources.entrySet()) {
                Path file = growing.resolve(source.getKey());
                Files.createDirectories(file.getParent());
                Files.copy(source.getValue(), file);
            }
            Files.move(growing, workspace, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            delete(growing);
            throw e;
        }
        return new Copy(workspace, Fate.COPIED, 0);
    }

    /** Files of a workspace by their name in it: the site's own, and the standard ones that it does not have itself. */
    private SortedMap<String, Path> sources(Path site) throws IOException {
        SortedMap<String, Path> files = new TreeMap<>();
        Path scripts = session.home().stageScripts();
        walk(scripts).forEach((name, file) -> files.put(name.equals("items.json") ? name : "stages/" + name, file));
        files.putAll(walk(site));
        return files;
    }

    private static SortedMap<String, Path> walk(Path folder) throws IOException {
        SortedMap<String, Path> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(Files::isRegularFile)
                    .forEach(
                            file -> files.put(folder.relativize(file).toString().replace('\\', '/'), file));
        }
        return files;
    }

    private static int changed(SortedMap<String, Path> sources, Path workspace) throws IOException {
        int changed = 0;
        for (var source : sources.entrySet()) {
            Path file = workspace.resolve(source.getKey());
            if (!Files.isRegularFile(file) || Files.mismatch(file, source.getValue()) >= 0) {
                changed++;
            }
        }
        return changed;
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
