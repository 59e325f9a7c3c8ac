package baywright.library;

import baywright.script.DamagedData;
import baywright.script.PlainReader;
import baywright.script.PlainValues;
import baywright.script.PlainWriter;
import baywright.script.Problem;
import baywright.script.Script;
import baywright.script.ScriptParser;
import baywright.script.TreeCodec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A script as it is kept. */
final class KeptScript {

    private static final int MOST_PROBLEMS = 1_000;

    private final String file;
    private final String textHash;
    private final boolean onlyWork;
    private final List<Problem> problems;
    private final byte[] tree;

    private KeptScript(String file, String textHash, boolean onlyWork, List<Problem> problems, byte[] tree) {
        this.file = file;
        this.textHash = textHash;
        this.onlyWork = onlyWork;
        this.problems = List.copyOf(problems);
        this.tree = tree;
    }

    /** A script to keep; empty when its tree is not worth keeping. */
    static Optional<KeptScript> of(Script script, String textHash, boolean onlyWork) {
        return TreeCodec.encode(script.body())
                .map(tree -> new KeptScript(script.file(), textHash, onlyWork, script.problems(), tree));
    }

    /** Its name relative to the library's folder. */
    String file() {
        return file;
    }

    /** SHA-256 of the text that it was read from. */
    String textHash() {
        return textHash;
    }

    /** Whether it declares stages and nothing that other files refer to. */
    boolean isOnlyWork() {
        return onlyWork;
    }

    /** The script again. */
    Script script() throws DamagedData {
        return new Script(file, TreeCodec.decode(file, tree), problems);
    }

    /** The script, read from its text again where the tree turns out to be no tree. */
    Script script(String text) {
        try {
            return script();
        } catch (DamagedData e) {
            return ScriptParser.parse(file, text);
        }
    }

    void write(PlainWriter out) {
        out.text(file);
        out.text(textHash);
        out.yes(onlyWork);
        write(out, problems);
        out.block(tree);
    }

    static KeptScript read(PlainReader in) throws DamagedData {
        return new KeptScript(in.text(), in.text(), in.yes(), problems(in), in.block());
    }

    static void write(PlainWriter out, List<Problem> problems) {
        out.count(problems.size());
        problems.forEach(p -> PlainValues.write(out, p));
    }

    static List<Problem> problems(PlainReader in) throws DamagedData {
        int size = in.size(Integer.MAX_VALUE);
        List<Problem> problems = new ArrayList<>(Math.min(size, MOST_PROBLEMS));
        for (int i = 0; i < size; i++) {
            problems.add(PlainValues.problem(in));
        }
        return problems;
    }
}
