package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Note;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Vocabulary.Section;
import java.util.ArrayList;
import java.util.List;

/** {@code checks { }}: what must be confirmed and what commonly goes wrong. */
final class ChecksBlock extends Blocks {

    static final Section SECTION = new Section(
            "checks",
            "in 'checks { }'",
            "Sentences for the job card.",
            List.of(
                    word("confirm")
                            .takes("text", Type.TEXT)
                            .means("what the person confirms when the step is done")
                            .example("confirm 'No coloured run-off from seams after the last rinse'"),
                    word("avoid")
                            .takes("text", Type.TEXT)
                            .means("a common mistake")
                            .example("avoid 'Letting it dry on hot panels'")));

    private final List<Note> checks = new ArrayList<>();
    private final List<Note> mistakes = new ArrayList<>();

    ChecksBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        Note note = new Note(call.text("text"), origin(call));
        (call.word().name().equals("confirm") ? checks : mistakes).add(note);
    }

    List<Note> checks() {
        return checks;
    }

    List<Note> mistakes() {
        return mistakes;
    }
}
