package baywright.library;

import baywright.script.Evaluator;
import baywright.script.Names;
import baywright.script.Problems;
import baywright.script.Scope;
import baywright.script.Script;
import baywright.script.Steps;
import java.util.List;

/**
 * What one file declares.
 *
 * @param script   the file as it was read
 * @param block    its declarations
 * @param problems what is wrong with them, and with its text
 * @param broken   whether a part of its text could not be read
 * @param steps    those that its checking has taken so far
 */
record FileDraft(Script script, FileBlock block, Problems problems, boolean broken, Steps steps) {

    static FileDraft of(Script script) {
        Problems problems = new Problems();
        problems.addAll(script.problems());
        boolean broken = problems.errors() > 0;
        FileBlock block = new FileBlock(problems);
        Steps steps = new Steps();
        new Evaluator(StageLanguage.VOCABULARY, problems, Names.NONE, true, steps)
                .start(script.body(), Scope.outermost(), block);
        return new FileDraft(script, block, problems, broken, steps);
    }

    /** A file that declares nothing. */
    static FileDraft nothing(String file) {
        return of(new Script(file, List.of(), List.of()));
    }

    String file() {
        return script.file();
    }
}
