package baywright.script.hostile;

import baywright.library.LibraryLoader;
import baywright.library.LibraryLoader.Loaded;
import baywright.script.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A library folder of a hostile script and a good one beside it, loaded as the program loads every library. */
final class Loading {

    static final String HOSTILE = "hostile.groovy";

    /** Declares the stage {@code good} with all that it refers to; it has no problem of its own. */
    static final String GOOD = """
            state 'good-before', means: 'ready for the good stage', opposite: 'good-not-yet'
            state 'good-not-yet', means: 'not ready for the good stage'
            surface 'good-surface', means: 'what the good stage works on'
            family 'good-family', title: 'Good work'
            stage('good') {
                title 'Good'
                about 'Stands beside a hostile script and is not spoilt by it'
                family 'good-family'
                revision 1
                inputs { count 'passes', from: 1, to: 3, usual: 1 }
                worksOn 'good-surface'
                after { sets 'good-before' }
                time { attended 1.min, 2.min, 3.min, per: 'm2', times: passes }
            }
            """;

    /**
     * What came of one load.
     *
     * @param problems of the hostile file, in order of place
     * @param stages   ids of all stages that can be used
     * @param texts    all that a window or a terminal would show of the load
     */
    record Result(List<Problem> problems, Set<String> stages, List<String> texts) {

        List<Problem> errors() {
            return problems.stream()
                    .filter(p -> p.severity() == Problem.Severity.ERROR)
                    .toList();
        }
    }

    private final Path folder;

    /** The folder is made if it is not there; the good script is written at once. */
    Loading(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
        Files.writeString(folder.resolve("good.groovy"), GOOD);
    }

    /** The file that holds the hostile script. */
    Path hostile() {
        return folder.resolve(HOSTILE);
    }

    Result load() throws IOException {
        Loaded loaded = LibraryLoader.load(folder, List.of());
        List<String> texts = loaded.problems().stream().map(Problem::message).collect(Collectors.toList());
        loaded.library().states().forEach(s -> texts.addAll(List.of(s.id(), s.means())));
        loaded.library().families().forEach(f -> texts.addAll(List.of(f.id(), f.title())));
        loaded.library().stages().forEach(s -> texts.addAll(List.of(s.id(), s.title(), s.about())));
        return new Result(
                loaded.problems().stream()
                        .filter(p -> p.place().file().equals(HOSTILE))
                        .toList(),
                loaded.library().stageById().keySet(),
                texts);
    }
}
