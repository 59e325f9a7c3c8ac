package baywright.bench;

import baywright.workspace.Workspace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * What is measured, written anew into a folder.
 *
 * @param workspace the demo's first site with the shipped stages
 * @param coupe     the demo's second site with them
 * @param library   a large library
 * @param items     the site's price list as plain lines
 * @param script    one shipped script
 */
record Sample(Path workspace, Path coupe, Path library, Path items, Path script) {

    static Sample in(Path folder, int scripts) throws IOException {
        Path workspace = emptied(folder.resolve("site"));
        Workspace site = Workspace.create(workspace, Path.of("..", "demo", "millrace-works"), SampleLibrary.SHIPPED);
        Path coupe = emptied(folder.resolve("second-site"));
        Workspace.create(coupe, Path.of("..", "demo", "saltmarsh-quay"), SampleLibrary.SHIPPED);
        Path library = emptied(folder.resolve("library"));
        SampleLibrary.write(library, scripts);
        Path items = folder.resolve("items.txt");
        PlainItems.write(items, site.items());
        return new Sample(
                workspace, coupe, library, items, workspace.resolve("stages/decontamination/iron-removal.groovy"));
    }

    private static Path emptied(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
        return folder;
    }
}
