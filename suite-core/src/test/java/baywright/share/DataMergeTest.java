package baywright.share;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.share.Clash.Kind;
import baywright.share.Clash.Side;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Files that are no scripts are merged by what they list. */
class DataMergeTest {

    private static final String SHAPES = "shapes.json";
    private static final String WORDS = "words-de.json";
    private static final String CARS = """
            {
              "schema": "baywright/shapes/1",
              "shapes": [
                {
                  "id": "small",
                  "title": "Small",
                  "size": 0.85,
                  "zones": [
                    {"id": "bonnet", "title": "Bonnet", "surface": "paint", "measures": {"m2": 1.1, "panel": 1}, "neighbours": ["roof"]},
                    {"id": "roof", "title": "Roof", "surface": "paint", "measures": {"m2": 1.50}, "neighbours": ["bonnet"]}
                  ]
                },
                {
                  "id": "large",
                  "title": "Large",
                  "size": 1.2,
                  "zones": []
                }
              ]
            }
            """;
    private static final String GERMAN = """
            {
              "schema": "baywright/words/1",
              "language": "de",
              "stages": {
                "rinse": {"title": "Spülen", "about": "Spült."},
                "foam": {"title": "Schaum", "about": "Schäumt."}
              },
              "sentences": [
                {"said": "Thin film", "words": "Dünner Lack"}
              ]
            }
            """;

    private static Merged merge(String file, String base, String ours, String theirs) {
        return DeclarationMerge.of(Map.of(file, base), Map.of(file, ours), Map.of(file, theirs));
    }

    @Test
    void twoZonesOfOneShapeAreTwoChanges() {
        String ours = CARS.replace("\"m2\": 1.1", "\"m2\": 1.3");
        String theirs = CARS.replace("\"m2\": 1.50", "\"m2\": 1.7").replace("\"size\": 1.2", "\"size\": 1.25");
        Merged merged = merge(SHAPES, CARS, ours, theirs);
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts().get(SHAPES)).isEqualTo(theirs.replace("\"m2\": 1.1", "\"m2\": 1.3"));
    }

    @Test
    void aClashNamesTheShapeTheZoneAndTheValue() {
        String ours = CARS.replace("\"m2\": 1.1", "\"m2\": 1.3");
        String theirs = CARS.replace("\"m2\": 1.1", "\"m2\": 1.4").replace("\"Large\"", "\"Van\"");
        Merged merged = merge(SHAPES, CARS, ours, theirs);
        assertThat(merged.open()).singleElement().satisfies(clash -> {
            assertThat(clash.name()).isEqualTo("shape small/zone bonnet/measures/m2");
            assertThat(clash.declaration()).isEqualTo("shape small");
            assertThat(clash.kind()).isEqualTo(Kind.CHANGED);
            assertThat(clash.before().orElseThrow().text()).isEqualTo("1.1");
            assertThat(clash.ours().orElseThrow().text()).isEqualTo("1.3");
            assertThat(clash.theirs().orElseThrow().text()).isEqualTo("1.4");
        });
        assertThat(merged.texts().get(SHAPES)).isEqualTo(ours.replace("\"Large\"", "\"Van\""));
        Merged decided = DeclarationMerge.of(
                Map.of(SHAPES, CARS), Map.of(SHAPES, ours), Map.of(SHAPES, theirs), c -> Optional.of(Side.THEIRS));
        assertThat(decided.texts().get(SHAPES)).isEqualTo(theirs);
    }

    /** Common to two added zones: each names the other side's neighbours as well. */
    @Test
    void wordsOfAListAreMergedOneByOne() {
        String ours = CARS.replace("\"neighbours\": [\"roof\"]", "\"neighbours\": [\"roof\", \"left-wing\"]");
        String theirs = CARS.replace("\"neighbours\": [\"roof\"]", "\"neighbours\": [\"right-wing\", \"roof\"]");
        Merged merged = merge(SHAPES, CARS, ours, theirs);
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts().get(SHAPES)).contains("[\"right-wing\", \"roof\", \"left-wing\"]");
    }

    @Test
    void aShapeTakenOutHereAndChangedThereIsAClash() {
        String without = CARS.replaceFirst("(?s),\n    \\{\n      \"id\": \"large\".*?\n    \\}", "");
        String changed = CARS.replace("\"size\": 1.2", "\"size\": 1.3");
        assertThat(merge(SHAPES, CARS, without, changed.replace("\"Small\"", "\"Tiny\""))
                        .open())
                .singleElement()
                .satisfies(clash -> {
                    assertThat(clash.name()).isEqualTo("shape large");
                    assertThat(clash.kind()).isEqualTo(Kind.TAKEN_OUT_HERE);
                });
        assertThat(merge(SHAPES, CARS, without, CARS.replace("\"Small\"", "\"Tiny\""))
                        .texts()
                        .get(SHAPES))
                .isEqualTo(without.replace("\"Small\"", "\"Tiny\""));
    }

    @Test
    void wordsOfAnotherLanguageAreMergedByWhatTheyStandFor() {
        String ours = GERMAN.replace("Spülen", "Abspülen")
                .replace("\"Dünner Lack\"}", "\"Dünner Lack\"},\n    {\"said\": \"Too wet\", \"words\": \"Zu nass\"}");
        String theirs = GERMAN.replace("Spült.", "Spült alles ab.")
                .replace("\"foam\": {", "\"clay\": {\"title\": \"Knete\"},\n    \"foam\": {");
        Merged merged = merge(WORDS, GERMAN, ours, theirs);
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts().get(WORDS))
                .isEqualTo(ours.replace("Spült.", "Spült alles ab.")
                        .replace("\"foam\": {", "\"clay\": {\"title\": \"Knete\"},\n    \"foam\": {"));
        assertThat(merge(WORDS, GERMAN, ours, GERMAN.replace("Spülen", "Spülung"))
                        .open())
                .extracting(Clash::name)
                .containsExactly("words-de.json/stages/rinse/title");
    }

    /** A first pack brings its own words; the site has words already. */
    @Test
    void bothAddingAFileOfWordsIsMergedToo() {
        String theirs = GERMAN.replace("rinse", "clay").replace("Spül", "Knet");
        Merged merged = DeclarationMerge.of(Map.of(), Map.of(WORDS, GERMAN), Map.of(WORDS, theirs));
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts().get(WORDS))
                .contains("\"rinse\": {\"title\": \"Spülen\"", "\"clay\": {\"title\": \"Kneten\"");
        Merged other = DeclarationMerge.of(
                Map.of(), Map.of(WORDS, GERMAN), Map.of(WORDS, GERMAN.replace("Spülen", "Spülung")));
        assertThat(other.open()).extracting(Clash::name).containsExactly("words-de.json/stages/rinse");
    }

    /** As with stages: to put halves of two shapes together would make a vehicle that nobody has measured. */
    @Test
    void bothAddingAShapeOfOneNameIsOneClash() {
        Merged merged = DeclarationMerge.of(
                Map.of(), Map.of(SHAPES, CARS), Map.of(SHAPES, CARS.replace("\"m2\": 1.1", "\"m2\": 1.4")));
        assertThat(merged.open()).singleElement().satisfies(clash -> {
            assertThat(clash.name()).isEqualTo("shape small");
            assertThat(clash.kind()).isEqualTo(Kind.ADDED);
        });
        assertThat(merged.texts()).containsEntry(SHAPES, CARS);
    }

    @Test
    void layoutLineEndsAndWaysToWriteANumberAreNoChange() {
        String ours = CARS.replace("1.50", "1.5").replace("  ", "\t");
        String theirs = CARS.replace("\"Small\"", "\"Tiny\"");
        assertThat(merge(SHAPES, CARS, ours, theirs).clashes()).isEmpty();
        assertThat(DeclarationMerge.differences(Map.of(SHAPES, CARS), Map.of(SHAPES, ours)))
                .isEmpty();
        String windows = CARS.replace("\n", "\r\n");
        Merged merged = merge(SHAPES, CARS, windows.replace("\"size\": 1.2", "\"size\": 1.3"), theirs);
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts().get(SHAPES))
                .isEqualTo(windows.replace("\"size\": 1.2", "\"size\": 1.3").replace("\"Small\"", "\"Tiny\""));
    }

    @Test
    void whatIsNoJsonIsOneThingAsAWhole() {
        Merged merged = merge(SHAPES, CARS, CARS + "}", CARS.replace("\"Small\"", "\"Tiny\""));
        assertThat(merged.open()).extracting(Clash::name).containsExactly(SHAPES);
        assertThat(merged.texts()).containsEntry(SHAPES, CARS + "}");
    }

    @Test
    void shapesAreDeclarationsThatCanBeTakenOneByOne() {
        String theirs = CARS.replace("\"m2\": 1.1", "\"m2\": 1.4").replace("\"size\": 1.2", "\"size\": 1.3");
        assertThat(DeclarationMerge.differences(Map.of(SHAPES, CARS), Map.of(SHAPES, theirs)))
                .containsExactly("shape large", "shape small");
        assertThat(DeclarationMerge.declared(Map.of(SHAPES, CARS))).containsExactly("shape large", "shape small");
        assertThat(DeclarationMerge.part(Map.of(SHAPES, CARS), Map.of(SHAPES, theirs), Set.of("shape large")::contains))
                .containsExactly(Map.entry(SHAPES, CARS.replace("\"size\": 1.2", "\"size\": 1.3")));
        assertThat(DeclarationMerge.part(Map.of(), Map.of(SHAPES, theirs), Set.of("shape large")::contains)
                        .get(SHAPES))
                .contains("\"large\"")
                .doesNotContain("\"small\"");
    }
}
