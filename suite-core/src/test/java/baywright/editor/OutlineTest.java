package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class OutlineTest {

    @Test
    void declarationsAndBlocksHaveTheirPlaces() {
        List<Outline.Entry> all = Outline.of("probe.groovy", Scripts.PROBE);
        assertThat(all)
                .extracting(e -> e.word() + " " + e.label())
                .contains("state washed", "family wash", "stage probe");
        Outline.Entry stage = all.get(all.size() - 1);
        assertThat(stage.place()).hasToString("probe.groovy:7:1");
        assertThat(stage.children())
                .extracting(Outline.Entry::word)
                .containsExactly("title", "family", "inputs", "worksOn", "before", "after", "time");
        assertThat(stage.children().get(2).children())
                .extracting(Outline.Entry::label)
                .containsExactly("load", "passes");
        assertThat(Scripts.PROBE.substring(stage.from(), stage.to()))
                .startsWith("stage(")
                .endsWith("}");
    }

    @Test
    void wordsInConditionsAreShown() {
        Outline.Entry stage = Outline.of("x", Scripts.PROBE).get(6);
        assertThat(stage.children().get(6).children())
                .extracting(Outline.Entry::word)
                .containsExactly("attended", "attended");
    }

    @Test
    void aBrokenTextKeepsWhatCanBeMadeOut() {
        String broken = """
                stage('a') {
                    title 'open
                    before {
                        needs 'x', [
                        prefers 'y'
                    }
                    time { attended (1.min
                    }
                }
                stage('b') {
                    title 'B'
                }
                """;
        List<Outline.Entry> all = Outline.of("x", broken);
        assertThat(all).extracting(Outline.Entry::label).containsExactly("a", "b");
        assertThat(all.get(0).children()).extracting(Outline.Entry::word).containsExactly("title", "before", "time");
    }

    @Test
    void everyShippedStageIsOutlinedWithItsBlocks() {
        Scripts.library().stages().forEach(stage -> {
            String text = Scripts.shipped().get(stage.place().file());
            Outline.Entry entry = Outline.of(stage.place().file(), text).stream()
                    .filter(e -> e.word().equals("stage"))
                    .findFirst()
                    .orElseThrow();
            assertThat(entry.label()).isEqualTo(stage.id());
            assertThat(entry.place().line()).isEqualTo(stage.place().line());
            assertThat(entry.children().stream()
                            .filter(e -> e.word().equals("example"))
                            .count())
                    .as(stage.id())
                    .isEqualTo(stage.examples().size());
        });
    }
}
