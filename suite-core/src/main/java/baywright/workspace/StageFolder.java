package baywright.workspace;

import baywright.library.Item;
import baywright.vehicle.Shape;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A folder of stage scripts that is no workspace, such as the standard library: it has its price list in itself.
 *
 * @param folder   absolute path
 * @param items    the price list; empty when {@code items.json} is missing or has an error
 * @param shapes   vehicle shapes; empty when {@code shapes.json} is missing or has an error
 * @param problems what is wrong with the two, in order of file and place
 */
public record StageFolder(Path folder, List<Item> items, List<Shape> shapes, List<FileProblem> problems) {

    public StageFolder {
        items = List.copyOf(items);
        shapes = List.copyOf(shapes);
        problems = List.copyOf(problems);
    }

    /** Reads price list and shapes. Files that are missing are no problem: a folder may hold scripts alone. */
    public static StageFolder read(Path given) {
        Path folder = given.toAbsolutePath().normalize();
        List<FileProblem> problems = new ArrayList<>();
        List<Item> items = read(folder, Workspace.ITEMS, problems, ItemsJson::read)
                .map(ItemsJson.PriceList::items)
                .orElse(List.of());
        List<Shape> shapes =
                read(folder, Workspace.SHAPES, problems, ShapesJson::read).orElse(List.of());
        return new StageFolder(folder, items, shapes, problems.stream().sorted().toList());
    }

    private static <T> Optional<T> read(
            Path folder, String name, List<FileProblem> problems, Function<Report, Optional<T>> read) {
        if (!Files.exists(folder.resolve(name))) {
            return Optional.empty();
        }
        try {
            Report report = new TextFile(folder).read(folder.resolve(name));
            Optional<T> value = read.apply(report);
            problems.addAll(report.problems());
            return report.hasErrors() ? Optional.empty() : value;
        } catch (TextFile.Unreadable e) {
            problems.add(e.problem());
            return Optional.empty();
        }
    }
}
