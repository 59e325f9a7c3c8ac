package baywright.editor;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.trade.Shipped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Texts for the tests of this room: the shipped scripts, and small ones with a caret written as {@code |}. */
final class Scripts {

    /** A stage that says a little of everything. */
    static final String PROBE = """
            state 'washed', means: 'no loose grit', opposite: 'loose-soil'
            state 'loose-soil', means: 'grit on it'
            state 'cool', means: 'not hot', scope: 'condition'
            surface 'paint', means: 'painted panels'
            family 'wash', title: 'Washing', setUp: 10.min
            fact 'hardness', from: ['soft', 'hard'], usual: 'hard', means: 'how hard the paint is'
            stage('probe') {
                title 'Probe'
                family 'wash'
                inputs {
                    choice 'load', from: ['light', 'heavy'], usual: 'light'
                    count 'passes', from: 1, to: 3, usual: 1
                }
                worksOn 'paint'
                before {
                    needs 'cool', why: 'washed off a hot panel it dries'
                }
                after {
                    sets 'washed'
                }
                time {
                    attended 1.min, 2.min, 3.min, per: 'm2', times: passes
                    if (load == 'heavy' && surveyed('hardness') == 'soft') {
                        attended 2.min, 3.min, 4.min
                    }
                }
            }
            """;

    private static Map<String, String> shipped;
    private static Known known;

    private Scripts() {}

    /** All shipped scripts by name. */
    static synchronized Map<String, String> shipped() {
        if (shipped == null) {
            shipped = new TreeMap<>();
            try (Stream<Path> files = Files.walk(Shipped.STAGES)) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".groovy")).toList()) {
                    String name = Shipped.STAGES.relativize(file).toString().replace('\\', '/');
                    shipped.put(name, Files.readString(file));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return shipped;
    }

    static Library library() {
        return Shipped.library().library();
    }

    static synchronized Known known() {
        if (known == null) {
            known = Known.of(library());
        }
        return known;
    }

    static LibraryLoader.Loaded load(Map<String, String> texts) {
        return LibraryLoader.load(texts, items());
    }

    private static List<Item> items() {
        try {
            return Shipped.items();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Proposals at the caret of a text. */
    static List<Proposal> proposals(String withCaret) {
        return Completion.at(withCaret.replace("|", ""), withCaret.indexOf('|'), known());
    }

    static List<String> labels(String withCaret) {
        return proposals(withCaret).stream().map(Proposal::label).toList();
    }

    /** The text after the proposal with this label was taken. */
    static String taken(String withCaret, String label) {
        Proposal proposal = proposals(withCaret).stream()
                .filter(p -> p.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError("'" + label + "' is not among " + labels(withCaret)));
        return TextEdit.apply(withCaret.replace("|", ""), List.of(proposal.edit()));
    }
}
