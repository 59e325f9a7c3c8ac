package baywright.cli;

import baywright.editor.WordEntry;
import baywright.script.Place;
import baywright.script.Problem;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Shows problems of files with their line and a caret. */
final class ProblemPrinter {

    private static final String INDENT = "    ";

    private final Session session;

    ProblemPrinter(Session session) {
        this.session = session;
    }

    /**
     * Prints each problem, and after the first one about a word of the stage language how to read about that word.
     *
     * @param folder the folder to which the problems' files are relative
     */
    void print(PrintWriter to, Path folder, List<Problem> problems) {
        Set<String> told = new HashSet<>();
        for (Problem problem : problems) {
            print(to, folder, problem);
            String word = problem.word();
            if (!word.isEmpty() && told.add(word) && !WordEntry.of(word).isEmpty()) {
                to.println(INDENT
                        + session.console().paint(Ink.FAINT, session.text("problem.word", word, session.command())));
            }
        }
    }

    private void print(PrintWriter to, Path folder, Problem problem) {
        Console console = session.console();
        boolean error = problem.severity() == Problem.Severity.ERROR;
        String grade =
                console.paint(error ? Ink.STOP : Ink.WARN, session.text(error ? "problem.error" : "problem.warning"));
        Place place = problem.place();
        to.println(console.paint(Ink.HEAD, shown(folder, place) + ":") + " " + grade + " " + problem.message());
        excerpt(to, folder, place, error ? Ink.STOP : Ink.WARN);
    }

    /** A place with what stands there. */
    void printPlace(PrintWriter to, Path folder, Place place) {
        to.println(
                INDENT + session.console().paint(Ink.HEAD, shown(folder, place).toString()));
        excerpt(to, folder, place, Ink.NOTE);
    }

    private Place shown(Path folder, Place place) {
        return new Place(session.shown(folder.resolve(place.file())), place.line(), place.column());
    }

    private void excerpt(PrintWriter to, Path folder, Place place, Ink ink) {
        Excerpt.of(folder.resolve(place.file()), place.line(), place.column()).ifPresent(excerpt -> {
            to.println(INDENT + excerpt.source());
            if (!excerpt.caret().isEmpty()) {
                to.println(INDENT + session.console().paint(ink, excerpt.caret()));
            }
        });
    }

    static ArrayNode json(List<Problem> problems) {
        ArrayNode all = Answers.array();
        for (Problem problem : problems) {
            ObjectNode one = all.addObject();
            one.put("file", problem.place().file());
            one.put("line", problem.place().line());
            one.put("column", problem.place().column());
            one.put("severity", Answers.word(problem.severity()));
            one.put("code", problem.code());
            one.put("message", problem.message());
            if (!problem.word().isEmpty()) {
                one.put("word", problem.word());
            }
        }
        return all;
    }
}
