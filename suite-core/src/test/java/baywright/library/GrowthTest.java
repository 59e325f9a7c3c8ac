package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.LibraryLoader.Loaded;
import baywright.library.StageTerms.Attended;
import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Use;
import baywright.quantity.ThreePoint;
import baywright.script.Place;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Helpers, constants and stages that are like another. */
class GrowthTest {

    private static final Place HERE = Place.ofFile("job.json");

    private static Stage stage(Loaded loaded, String id) {
        assertThat(loaded.problems()).isEmpty();
        return loaded.library().stageById().get(id);
    }

    private static Loaded iron(String more) {
        return Libraries.load(LibraryLoaderTest.IRON_REMOVAL + more);
    }

    @Test
    void aHelperWorksOutAnewWithEveryCallAndTellsWhatItsResultDependsOn() {
        Stage stage = stage(Libraries.loadStage("""
                        inputs { count 'passes', from: 1, to: 4, usual: 2 }
                        def base = 1.min
                        def each = { x, n -> base + x * n }
                        def twice = { each(it, passes) * 2 }
                        time { attended twice(1.min), twice(2.min), each(20.min, 2) }"""), "probe");

        Attended line = stage.usualTerms().attended().get(0);
        assertThat(line.minutes()).isEqualTo(ThreePoint.of("6", "10", "41"));
        assertThat(line.origin().from()).containsExactly("passes");
        assertThat(stage.terms()
                        .of(Map.of("passes", Value.of(BigDecimal.ONE, HERE)), Map.of())
                        .attended()
                        .get(0)
                        .minutes())
                .isEqualTo(ThreePoint.of("4", "6", "41"));
    }

    @Test
    void constantsAreReadByEveryFileOfTheLibrary() {
        Map<String, String> texts = new TreeMap<>();
        texts.put("base.groovy", Libraries.BASE);
        texts.put("stage.groovy", Libraries.stage("""
                inputs { count 'passes', from: 1, to: limit, usual: 2 }
                time { attended constant('bench-rate'), constant('bench-rate') * 2, constant('bench-rate') * passes * limit }"""));
        texts.put("words.groovy", "def half = 0.5\nconstant 'bench-rate', 3.min * half\nconstant 'limit', 4");
        Stage stage = stage(LibraryLoader.load(texts, List.of()), "probe");

        Attended line = stage.usualTerms().attended().get(0);
        assertThat(line.minutes()).isEqualTo(ThreePoint.of("1.5", "3.0", "12.0"));
        assertThat(line.origin().from()).containsExactly("passes");
        assertThat(stage.inputs().get(0).most().orElseThrow().raw()).isEqualTo(new BigDecimal("4"));
    }

    @Property(tries = 20)
    void aStageThatIsLikeAnotherAndSaysNothingItselfHasItsTerms(
            @ForAll @IntRange(min = 1, max = 3) int passes, @ForAll boolean heavy) {
        Loaded loaded = iron("stage('again', like: 'iron-removal') { }");
        Stage first = stage(loaded, "iron-removal");
        Stage again = stage(loaded, "again");
        Map<String, Value> with = Map.of(
                "passes", Value.of(BigDecimal.valueOf(passes), HERE),
                "load", Value.of(heavy ? "heavy" : "light", HERE));

        assertThat(again.terms().of(with, Map.of())).isEqualTo(first.terms().of(with, Map.of()));
        assertThat(again.inputs()).isEqualTo(first.inputs());
        assertThat(again.surfaces()).isEqualTo(first.surfaces());
        assertThat(List.of(again.title(), again.about(), again.family()))
                .isEqualTo(List.of(first.title(), first.about(), first.family()));
        assertThat(again.like()).isEqualTo("iron-removal");
        assertThat(again.revision()).isEqualTo(1);
        assertThat(again.examples()).isEmpty();
    }

    @Test
    void whatAStageGivesTakesThePlaceOfTheOthersAndWhatItAddsComesOnTop() {
        Loaded loaded = iron("""
                stage('strong', like: 'iron-removal') {
                    title 'Strong'
                    time { attended 1.min, 2.min, 3.min, per: 'wheel', times: passes }
                    adds { inputs { yesNo 'rinse', usual: false }
                           after { sets 'masked' } }
                    if (rinse) { uses { item 'clay', 5.g } }
                }
                stage('stronger', like: 'strong') {
                    adds { time { attended 1.min, 1.min, 1.min } }
                    uses { item 'clay', 1.g }
                }
                """);
        Stage strong = stage(loaded, "strong");
        StageTerms terms = strong.usualTerms();

        assertThat(strong.title()).isEqualTo("Strong");
        assertThat(strong.inputs())
                .extracting(Input::name)
                .containsExactly("load", "passes", "grit-depth", "two-sided", "rinse");
        assertThat(terms.attended()).extracting(Attended::per).containsExactly("wheel");
        assertThat(terms.setUps()).isEmpty();
        assertThat(terms.effects())
                .extracting(Effect::state)
                .containsExactly("iron-clear", "wet", "dry", "panel-wiped", "tar-clear", "masked");
        assertThat(terms.uses()).isEmpty();
        assertThat(terms.effects().get(0).origin().place().line())
                .isLessThan(strong.place().line());
        assertThat(terms.effects().get(5).origin().place().line())
                .isGreaterThan(strong.place().line());
        assertThat(strong.terms()
                        .of(Map.of("rinse", Value.of(true, HERE)), Map.of())
                        .uses())
                .extracting(Use::item)
                .containsExactly("clay");

        StageTerms more = stage(loaded, "stronger").usualTerms();
        assertThat(more.attended()).extracting(Attended::per).containsExactly("wheel", "vehicle");
        assertThat(more.uses()).extracting(Use::item).containsExactly("clay");
        assertThat(more.effects()).hasSize(6);
    }

    @Test
    void theOtherMayStandInAnyFileAndSeesItsOwnLocals() {
        Map<String, String> texts = new TreeMap<>();
        texts.put("a.groovy", "stage('a', like: 'b') { adds { time { attended 1.min, 1.min, 1.min } } }");
        texts.put(
                "b.groovy",
                "def base = 4.min\n"
                        + Libraries.stage("def base2 = base * 2\n" + "time { attended base, base, base2 }")
                                .replace("probe", "b"));
        texts.put("base.groovy", Libraries.BASE);

        assertThat(stage(LibraryLoader.load(texts, List.of()), "a").usualTerms().attended())
                .extracting(Attended::minutes)
                .containsExactly(ThreePoint.of("4", "4", "8"), ThreePoint.of("1", "1", "1"));
    }

    @Test
    void aProblemOfTheOtherIsToldOnceAndTheStageLeftOut() {
        assertThat(Libraries.problemsOf(Libraries.stage("after { sets 'wahsed' }") + "stage('b', like: 'probe') { }"))
                .containsExactly(
                        "script.groovy:3:14: no state is called 'wahsed'; nearest is 'washed'",
                        "script.groovy:5:18: stage 'b' is left out, since 'probe', which it is like, has an error");
    }

    @Test
    void whatOnlyShowsInTheTwoTogetherIsToldWhereTheyMeet() {
        assertThat(iron("stage('b', like: 'iron-removal') { inputs { count 'passes', from: 1, to: 2, usual: 1 } }")
                        .problems())
                .isNotEmpty()
                .allMatch(p -> p.place().equals(new Place("script.groovy", 40, 18)))
                .anyMatch(p -> p.message()
                        .equals("like 'iron-removal', of which script.groovy:22:19 does not fit here: "
                                + "no input or local is called 'load'; a text stands in quotes: 'load'"));
    }
}
