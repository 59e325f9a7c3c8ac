package baywright.workspace;

import baywright.vehicle.Reading;
import baywright.vehicle.Shape;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A file of film readings anywhere, such as those taken after the work.
 *
 * @param byZone   readings in order of writing; empty when there is an error
 * @param problems errors and warnings in order of place; files are named without their folder
 */
public record ReadingsFile(Map<String, List<Reading>> byZone, List<FileProblem> problems) {

    public ReadingsFile {
        byZone = new LinkedHashMap<>(byZone);
        problems = List.copyOf(problems);
    }

    /** Reads a file; what is wrong with it becomes a problem, never an exception. */
    public static ReadingsFile read(Path file, ReadingsForm form, Shape shape) {
        Path whole = file.toAbsolutePath().normalize();
        try {
            Report report = new TextFile(whole.getParent()).read(whole);
            ReadingsCsv.Readings readings = ReadingsCsv.read(report, form);
            readings.check(report, shape);
            return new ReadingsFile(report.hasErrors() ? Map.of() : readings.byZone(), report.problems());
        } catch (TextFile.Unreadable e) {
            return new ReadingsFile(Map.of(), List.of(e.problem()));
        }
    }

    /**
     * Reads what a person pasted, as if it were a file.
     *
     * @param name how problems and the source of each reading name it
     */
    public static ReadingsFile ofText(String name, String text, ReadingsForm form, Shape shape) {
        Report report = new Report(new Source(name, text));
        ReadingsCsv.Readings readings = ReadingsCsv.read(report, form);
        readings.check(report, shape);
        return new ReadingsFile(report.hasErrors() ? Map.of() : readings.byZone(), report.problems());
    }

    public boolean hasErrors() {
        return problems.stream().anyMatch(FileProblem::isError);
    }
}
