package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PiecesTest {

    @Test
    void everyShippedScriptIsItsPieces() {
        assertThat(Scripts.shipped()).allSatisfy((name, text) -> {
            Pieces pieces = Pieces.of(text);
            assertThat(pieces.text()).isEqualTo(text);
            assertThat(pieces.pieces())
                    .isNotEmpty()
                    .allSatisfy(p -> assertThat(p.word()).isNotEmpty());
        });
    }

    @Test
    void aStageIsTakenApartDownToItsLines() {
        Pieces pieces = Pieces.of("""
                // of the file

                // of the stage
                stage('rinse') {
                    // how long
                    time {
                        attended 1.min, 2.min, 3.min, per: 'm2'  // by feel
                    }
                    before { needs 'wet';  prefers 'cool' }
                }
                """);
        assertThat(pieces.header()).isEqualTo("// of the file\n\n");
        Piece stage = pieces.pieces().get(0);
        assertThat(stage.word() + " " + stage.label()).isEqualTo("stage rinse");
        assertThat(stage.lead()).isEqualTo("// of the stage\n");
        Piece time = stage.body().get(0);
        assertThat(time.lead()).isEqualTo("    // how long\n    ");
        Piece attended = time.body().get(0);
        assertThat(attended.named()).containsEntry("per", "m2");
        assertThat(attended.trail()).isEqualTo("  // by feel\n");
        assertThat(stage.body().get(1).body()).extracting(Piece::label).containsExactly("wet", "cool");
    }

    @Test
    void aConditionStaysWithItsOtherwise() {
        Pieces pieces = Pieces.of("""
                stage('rinse') {
                    time {
                        def more = 2
                        if (more > 1) {
                            attended 1.min, 2.min, 3.min
                        } else {
                            setUp 1.min
                        }
                    }
                }
                """);
        assertThat(pieces.pieces().get(0).body().get(0).body())
                .extracting(p -> p.word() + " " + p.label())
                .first()
                .isEqualTo("def more");
        assertThat(pieces.pieces().get(0).body().get(0).body())
                .extracting(Piece::word)
                .containsExactly("def", "if");
    }

    @Property(tries = 60)
    void anyTextIsItsPieces(
            @ForAll @IntRange(max = 1_000_000) int file,
            @ForAll @IntRange(max = 1_000_000) int from,
            @ForAll @IntRange(max = 60) int length,
            @ForAll String put) {
        String whole = Scripts.shipped().values().stream()
                .skip(file % Scripts.shipped().size())
                .findFirst()
                .orElseThrow();
        int at = from % whole.length();
        String text = whole.substring(0, at) + put + whole.substring(Math.min(whole.length(), at + length));
        assertThat(Pieces.of(text).text()).isEqualTo(text);
    }
}
