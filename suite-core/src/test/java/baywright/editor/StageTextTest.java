package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.editor.Rename.Kind;
import baywright.library.LibraryLoader;
import baywright.library.Stage;
import baywright.script.Problem;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StageTextTest {

    private static LibraryLoader.Loaded loaded(Map<String, String> texts) {
        Map<String, String> all = new TreeMap<>(texts);
        all.put("probe.groovy", Scripts.PROBE);
        LibraryLoader.Loaded loaded = Scripts.load(all);
        assertThat(loaded.problems())
                .filteredOn(p -> p.severity() == Problem.Severity.ERROR)
                .isEmpty();
        return loaded;
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rinse twice", "The owner's \\ wish", "100 % 'clean'"})
    void aBlankStageLoadsWhateverItsTitle(String title) {
        String text = StageText.blank("new-one", title, "wash", "paint");
        Stage stage = loaded(Map.of("new.groovy", text)).library().stageById().get("new-one");
        assertThat(stage.title()).isEqualTo(title);
        assertThat(stage.family()).isEqualTo("wash");
        assertThat(Format.of(text)).isEqualTo(text);
    }

    @Test
    void aStageLikeAnotherHasWhatThatOneHas() {
        Map<String, String> texts = Map.of(
                "a.groovy", StageText.blank("one", "One", "wash", "paint"),
                "b.groovy", StageText.like("two", "Two", "one"));
        Stage stage = loaded(texts).library().stageById().get("two");
        assertThat(stage.usualTerms().attended()).hasSize(1);
        assertThat(stage.title()).isEqualTo("Two");
    }

    @Test
    void aCopyStandsAloneWithItsHelpers() {
        String text = "// figures: own\ndef often = { x -> x * 2 }\nstate 'shiny', means: 'it shines'\n"
                + StageText.blank("one", "One", "wash", "paint")
                        .replace("revision 1", "revision 7")
                        .replace("per: 'vehicle'", "times: often(1)")
                + StageText.blank("other", "Other", "wash", "paint");
        String copy = StageText.copy(text, "one", "two", "Two").orElseThrow();
        assertThat(copy).startsWith("// figures: own\ndef often = { x -> x * 2 }\nstage('two') {\n    title 'Two'\n");
        assertThat(copy).doesNotContain("'other'").doesNotContain("'shiny'").contains("revision 1\n");
        var library = loaded(Map.of("a.groovy", text, "b.groovy", copy)).library();
        assertThat(library.stages()).extracting(Stage::id).contains("one", "two", "other");
        assertThat(StageText.copy(text, "none", "two", "Two")).isEmpty();
    }

    @Test
    void aStageIsTakenOutAndTheRestStays() {
        String one = StageText.blank("one", "One", "wash", "paint");
        String two = StageText.blank("two", "Two", "wash", "paint");
        assertThat(StageText.without(one + two, "one")).hasValue(two);
        assertThat(StageText.without(one + two, "two")).hasValue(one);
        assertThat(StageText.without(one, "one")).isEmpty();
        assertThat(StageText.without("// kept by hand\n" + one, "one")).isEmpty();
        assertThat(StageText.without(one, "none")).hasValue(one);
    }

    @Test
    void whatStandsAtTheCaretCanBeRenamed() {
        String text = """
                stage('one') {
                    inputs {
                        count 'passes', from: 1, to: 3, usual: 1
                    }
                    before {
                        needs 'washed'
                    }
                }
                """;
        assertThat(Rename.at(text, text.indexOf("'washed'") + 3))
                .hasValue(new Rename.Subject(Kind.STATE, "", "washed"));
        assertThat(Rename.at(text, text.indexOf("'passes'") + 1))
                .hasValue(new Rename.Subject(Kind.INPUT, "one", "passes"));
        assertThat(Rename.at(text, text.indexOf("'one'"))).hasValue(new Rename.Subject(Kind.STAGE, "", "one"));
        assertThat(Rename.at(text, text.indexOf("before"))).isEmpty();
    }
}
