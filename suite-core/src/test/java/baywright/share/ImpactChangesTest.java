package baywright.share;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Library;
import baywright.library.LibraryLoader;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What counts as a change of a library: meaning does, layout and place do not. */
class ImpactChangesTest {

    private static final String GROUND = """
            state 'washed', means: 'free of loose soil'
            state 'dry', means: 'no water left'
            surface 'paint', means: 'painted metal'
            family 'wash', title: 'Washing'
            constant 'rinse-time', 3.min
            """;

    private static final String STAGE = """
            def slower = { minutes -> minutes * 2 }
            stage('rinse') {
                title 'Rinse'
                family 'wash'
                revision 1
                worksOn 'paint'
                after { sets 'washed' }
                time { attended 1.min, constant('rinse-time'), slower(4.min), per: 'vehicle' }
            }
            stage('again', like: 'rinse') {
                title 'Rinse again'
                revision 1
            }
            """;

    private static final String RULE = """
            rule('dry-first') {
                title 'Dry first'
                reason 'water hides marks'
                at stages: ['rinse']
                warns { holds('dry') }
            }
            """;

    private static Library library(String ground, String stage, String rule) {
        LibraryLoader.Loaded loaded = LibraryLoader.load(
                new TreeMap<>(Map.of("a.groovy", ground, "b.groovy", stage, "c.groovy", rule)), List.of());
        assertThat(loaded.errors()).isEmpty();
        return loaded.library();
    }

    private static List<String> changes(String ground, String stage, String rule) {
        return Impact.changes(library(GROUND, STAGE, RULE), library(ground, stage, rule)).stream()
                .map(c -> c.how() + " " + c.kind() + " " + c.id())
                .toList();
    }

    @Test
    void commentsLayoutAndAnotherPlaceChangeNothing() {
        assertThat(changes("// first\n" + GROUND, "\n\n" + STAGE.replace("    ", "\t"), "// moved\n\n" + RULE))
                .isEmpty();
    }

    @Test
    void aStageThatIsLikeAChangedOneChangesWithIt() {
        assertThat(changes(GROUND, STAGE.replace("sets 'washed'", "sets 'washed', 'dry'"), RULE))
                .containsExactly("CHANGED STAGE again", "CHANGED STAGE rinse");
    }

    @Test
    void aConstantChangesTheStagesThatReadIt() {
        assertThat(changes(GROUND.replace("3.min", "4.min"), STAGE, RULE))
                .containsExactly("CHANGED STAGE again", "CHANGED STAGE rinse");
    }

    @Test
    void aHelperChangesTheStagesThatCallIt() {
        assertThat(changes(GROUND, STAGE.replace("minutes * 2", "minutes * 3"), RULE))
                .containsExactly("CHANGED STAGE again", "CHANGED STAGE rinse");
    }

    @Test
    void aRuleChangesWithWhatItAsksAndWithHowGravelyItSpeaks() {
        assertThat(changes(GROUND, STAGE, RULE.replace("'dry')", "'washed')")))
                .containsExactly("CHANGED RULE dry-first");
        assertThat(changes(GROUND, STAGE, RULE.replace("warns", "forbids"))).containsExactly("CHANGED RULE dry-first");
    }

    @Test
    void whatIsNewAndWhatIsGoneIsTold() {
        assertThat(changes(GROUND + "state 'waxed', means: 'under wax'\n", STAGE, ""))
                .containsExactly("GONE RULE dry-first", "NEW STATE waxed");
    }

    @Test
    void statesInAnotherOrderAreAChangeOfTheirOrder() {
        String washed = GROUND.lines().findFirst().orElseThrow() + "\n";
        assertThat(changes(GROUND.replace(washed, "") + washed, STAGE, RULE)).containsExactly("CHANGED ORDER state");
    }
}
