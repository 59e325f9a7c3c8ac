package baywright.workspace;

import baywright.vehicle.Shape;
import java.util.List;
import java.util.function.Consumer;

/** The files that lie beside stage scripts, judged by themselves, before they are in any folder. */
public final class LibraryTexts {

    private LibraryTexts() {}

    /**
     * What is wrong with vehicle shapes or with words in another language.
     *
     * @param file  its path, which says which of the two it is: {@code …/shapes.json} or {@code …/words-LANGUAGE.json}
     * @param bytes what it holds
     */
    public static List<FileProblem> problems(String file, byte[] bytes) {
        Consumer<Report> read = file.endsWith("/" + Workspace.SHAPES) ? ShapesJson::read : WordsJson::read;
        try {
            Report report = TextFile.decode(file, bytes);
            read.accept(report);
            return report.problems();
        } catch (TextFile.Unreadable e) {
            return List.of(e.problem());
        }
    }

    /** The vehicle shapes of a file's text; none where it has an error. */
    public static List<Shape> shapes(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Report report = new Report(new Source(Workspace.SHAPES, plain));
        return ShapesJson.read(report).filter(shapes -> !report.hasErrors()).orElse(List.of());
    }
}
