package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.library.StageTerms.Attended;
import baywright.script.Place;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What depends on inputs and facts: the branch taken, what is remembered of it, and what the check sees of the rest. */
class ConditionsTest {

    private static final Place JOB = Place.ofFile("job.json");

    private static final String INPUTS = """
            inputs {
                choice 'load', from: ['light', 'moderate', 'heavy'], usual: 'moderate'
                count 'passes', from: 0, to: 3, usual: 1
                measure 'grit-depth', from: 1.um, to: 5.um, usual: 2.um
            }
            """;

    private static Stage stage(String body) {
        LibraryLoader.Loaded loaded = Libraries.loadStage(INPUTS + body);
        assertThat(loaded.problems()).isEmpty();
        return loaded.library().stageById().get("probe");
    }

    private static Attended line(String body) {
        return stage("time { " + body + " }").usualTerms().attended().get(0);
    }

    @Test
    void aLineKnowsEveryInputThatItCameThrough() {
        assertThat(line("def n = passes + 1; def m = n * 2; attended 1.min, 2.min, 3.min, times: m")
                        .origin()
                        .from())
                .containsExactly("passes");
        assertThat(line("attended 1.min, 2.min, 3.min, times: load == 'heavy' ? 2 : 1")
                        .origin()
                        .from())
                .containsExactly("load");
        assertThat(line("attended 1.min, 2.min, 3.min, times: [light: 1, moderate: 2, heavy: 3][load]")
                        .origin()
                        .from())
                .containsExactly("load");
        assertThat(line("attended 1.min, 2.min, 3.min, times: [1, 2].findAll { it <= passes }.size()")
                        .origin()
                        .from())
                .containsExactly("passes");
        assertThat(line("attended 1.min, 2.min, 3.min, times: [1, passes].max()")
                        .origin()
                        .from())
                .containsExactly("passes");
        assertThat(line("for (i in 1..2) { if (i == passes) { attended 1.min, 2.min, 3.min } }")
                        .origin()
                        .from())
                .containsExactly("passes");
        assertThat(line("attended 1.min, 2.min, 3.min").origin().from()).isEmpty();
    }

    @Test
    void aSwitchTakesItsCase() {
        Stage stage = stage("""
                time {
                    switch (load) {
                        case 'light': attended 1.min, 1.min, 1.min; break
                        case 'moderate':
                        case 'heavy': attended 2.min, 2.min, 2.min; break
                    }
                }
                """);
        assertThat(stage.usualTerms().attended().get(0).minutes().likely()).isEqualByComparingTo("2");
        StageTerms light = stage.terms().of(Map.of("load", Value.of("light", JOB)), Map.of());
        assertThat(light.attended().get(0).minutes().likely()).isEqualByComparingTo("1");
    }

    @Test
    void aHyphenedInputIsAskedFor() {
        Stage stage = stage("film { removes input('grit-depth') / 2, input('grit-depth'), 2 * input('grit-depth') }");
        Map<String, Value> with = Map.of("grit-depth", Value.of("4 um", JOB));
        assertThat(stage.terms()
                        .of(with, Map.of())
                        .removals()
                        .get(0)
                        .micrometres()
                        .most())
                .isEqualByComparingTo("8");
    }

    @Test
    void aNumberThatTheSurveyDoesNotHaveIsNothing() {
        Stage stage = stage("time { if ((surveyed('film-least') ?: 120) < 90) { setUp 5.min } }");
        Map<String, Value> thin = Map.of("film-least", Value.of(new BigDecimal("70"), JOB));
        assertThat(stage.usualTerms().setUps()).isEmpty();
        assertThat(stage.terms().of(Map.of(), thin).setUps()).hasSize(1);
        assertThat(stage.usualTerms().dependsOn()).containsExactly("film-least");
    }

    @Test
    void factsMayComeAsTheTextsOfASurvey() {
        Stage stage = stage("time { if (surveyed('high-voltage')) { setUp 5.min } }");
        assertThat(stage.terms()
                        .of(Map.of(), Map.of("high-voltage", Value.of("yes", JOB)))
                        .setUps())
                .hasSize(1);
    }

    @Test
    void aValueThatDoesNotFitIsRefusedInWords() {
        Stage stage = stage("");
        Map<String, Value> with = Map.of("passes", Value.of(new BigDecimal("4"), JOB));
        assertThatThrownBy(() -> stage.terms().of(with, Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("input 'passes' takes a whole number from 0 to 3, got the number 4");
    }

    @Test
    void aBranchThatIsNotTakenIsCheckedButNotForValuesItWouldNeverSee() {
        stage("time { if (passes > 1) { attended 1.min, 2.min, 3.min, times: 1 / (passes - 1) } }");
        assertThat(Libraries.problemsOf(Libraries.stage(
                        INPUTS + "time { if (passes > 1) { attended 1.min, 2.min, 3.min, times: 1 / 0 } }")))
                .containsExactly("script.groovy:8:63: divides by zero");
    }

    @Test
    void theSameQuestionGivesEqualTerms() {
        Stage stage = stage("time { attended 1.min, 2.min, 3.min, times: passes }");
        Map<String, Value> with = Map.of("passes", Value.of("3", JOB));
        assertThat(stage.terms().of(with, Map.of())).isEqualTo(stage.terms().of(with, Map.of()));
        assertThat(stage.terms().of(with, Map.of()).attended().get(0).times()).isEqualByComparingTo("3");
        assertThat(stage.usualTerms().attended().get(0).times()).isEqualByComparingTo("1");
    }

    @Test
    void workWithoutEndStops() {
        String loop =
                "def big = 1..1000\n" + Libraries.stage("time { for (a in big) { for (b in big) { setUp 1.min } } }");
        assertThat(Libraries.problemsOf(loop)).anySatisfy(p -> assertThat(p).contains("takes more than 200000 steps"));
    }

    @Test
    void aMessageIsOneLineWhateverATextHolds() {
        assertThat(Libraries.problemsOf("stage('a\\nb') { }"))
                .containsExactly(
                        "script.groovy:1:7: 'stage' wants an id such as 'iron-removal'; it is the text 'a b', and"
                                + " an id has only lower-case letters a to z, digits and single hyphens");
        assertThat(Libraries.problemsOf("stage('" + "x".repeat(3_000) + "') { }")
                        .get(0))
                .hasSizeLessThan(300);
    }

    @Test
    void dilutionsAreWorkedOut() {
        // one part and nine of water: 70 ml of mix hold 7 ml; one in ten: the same
        Stage parts = stage("uses { item 'clay', 70.g, diluted: '1:9' }");
        Stage in = stage("uses { item 'clay', 70.g, diluted: '1 in 10' }");
        assertThat(parts.usualTerms().uses().get(0).amount().amount()).isEqualByComparingTo("7");
        assertThat(in.usualTerms().uses().get(0).amount().amount()).isEqualByComparingTo("7");
    }
}
