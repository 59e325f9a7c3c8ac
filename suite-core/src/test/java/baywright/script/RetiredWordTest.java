package baywright.script;

import static baywright.script.Word.word;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.script.Vocabulary.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A word on its way out works, with a warning that names its successor. */
class RetiredWordTest {

    private static final Vocabulary VOCABULARY = new Vocabulary(
            List.of(new Section(
                    "room",
                    "in the room",
                    "A room.",
                    List.of(
                            word("wants").takes("what", Type.TEXT).retired("1.4", "needs"),
                            word("needs").takes("what", Type.TEXT)))),
            List.of());

    @Test
    void itIsHeardAndItsSuccessorNamed() {
        Place place = new Place("a.groovy", 2, 3);
        Node call = new Node.Call(
                Optional.empty(),
                "wants",
                List.of(new Node.Literal("soap", place)),
                List.of(),
                Optional.empty(),
                place);
        List<String> heard = new ArrayList<>();
        Problems problems = new Problems();

        new Evaluator(VOCABULARY, problems, Names.NONE, true).start(List.of(call), Scope.outermost(), new Handler() {
            @Override
            public String section() {
                return "room";
            }

            @Override
            public void accept(Call met) {
                heard.add(met.text("what"));
            }
        });

        assertThat(heard).containsExactly("soap");
        assertThat(problems.errors()).isZero();
        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .containsExactly(
                        "a.groovy:2:3: 'wants' is on its way out since version 1.4 of the language; write 'needs'"
                                + " instead");
    }
}
