package baywright.share;

import static baywright.share.TwoSites.WASH;
import static baywright.share.TwoSites.WORDS;
import static baywright.share.TwoSites.stage;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.DemoSite;
import baywright.library.Item;
import baywright.library.StageChangeText;
import baywright.pack.Consent;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackRefused;
import baywright.pack.VersionRange;
import baywright.share.Clash.Side;
import baywright.vehicle.Shape;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakingTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-07T07:00:00Z"), ZoneOffset.UTC);
    private static final Optional<Consent> YES = Consent.of("Ines: looked through every script");

    private static final String SHAPES = "stages/shapes.json";

    @TempDir
    Path folder;

    private TwoSites two;

    @BeforeEach
    void open() {
        two = TwoSites.in(folder);
    }

    private void take(String version) {
        two.taking(two.pack(version), Choice.ALL).take(YES, CLOCK);
    }

    @Test
    void aFirstPackBringsItsScriptsAndIsOnRecord() {
        Taking taking = two.taking(two.pack("1.0.0"), Choice.ALL);
        assertThat(taking.changes())
                .extracting(LibraryChange::name)
                .contains("stage foam", "stage rinse", "state wet", "family wash");
        assertThat(taking.changes()).extracting(LibraryChange::kind).containsOnly(LibraryChange.Kind.ADDED);
        TakenPack taken = taking.take(YES, CLOCK);

        assertThat(TakingBack.isPossible(two.taker())).isTrue();
        assertThat(Taking.changedHere(two.taker(), "gentle-wash")).isEmpty();
        assertThat(two.had(WASH)).isEqualTo(two.given(WASH));
        assertThat(two.had("packs/gentle-wash/" + WASH)).isEqualTo(two.given(WASH));
        assertThat(Taking.lockOf(two.taker()).packs()).containsExactly(taken);
        assertThat(taken.consent()).isEqualTo(YES);
        assertThat(PackLock.read(Taking.lockOf(two.taker()).text()).packs()).containsExactly(taken);
    }

    @Test
    void nobodyTakesAnUnsignedPackWithoutSayingSo() {
        Taking taking = two.taking(two.pack("1.0.0"), Choice.ALL);
        SortedMap<String, String> before = two.everything();
        assertThatThrownBy(() -> taking.take(Optional.empty(), CLOCK)).isInstanceOf(PackRefused.class);
        assertThat(two.everything()).isEqualTo(before);
    }

    /** The site has its own minutes, the pack its own title: both stay, and what changes is told in meaning. */
    @Test
    void anUpdateKeepsWhatTheSiteHasMadeOfIt() {
        take("1.0.0");
        two.have(WASH, two.had(WASH).replace("3.min, 4.min, 5.min", "30.min, 40.min, 50.min"));
        two.give(WASH, stage("rinse", 3).replace("10.ml", "20.ml") + stage("foam", 5));
        assertThat(Taking.changedHere(two.taker(), "gentle-wash")).containsExactly("stage rinse");
        Taking taking = two.taking(two.pack("1.1.0"), Choice.ALL);
        assertThat(taking.offered()).containsExactly("stage rinse");
        assertThat(taking.library().stageById()).containsKey("rinse");
        assertThat(taking.clashes()).isEmpty();
        assertThat(taking.changes()).singleElement().satisfies(change -> {
            assertThat(change.name()).isEqualTo("stage rinse");
            assertThat(change.said())
                    .extracting(new StageChangeText(Locale.ENGLISH)::of)
                    .singleElement()
                    .asString()
                    .contains("10 ml → 20 ml");
        });
        taking.take(YES, CLOCK);
        assertThat(two.had(WASH)).contains("30.min, 40.min, 50.min", "20.ml");
        assertThat(Taking.lockOf(two.taker()).packs())
                .extracting(p -> p.version().toString())
                .containsExactly("1.1.0");
    }

    @Test
    void aClashIsTakenOnlyWhenItIsDecided() {
        take("1.0.0");
        two.have(WASH, two.had(WASH).replace("3.min, 4.min, 5.min", "30.min, 40.min, 50.min"));
        two.give(WASH, stage("rinse", 4) + stage("foam", 5));
        Taking open = two.taking(two.pack("1.1.0"), Choice.ALL);
        assertThat(open.clashes()).extracting(Clash::name).containsExactly("stage rinse/time/attended per vehicle");
        assertThat(open.isReady()).isFalse();
        assertThat(open.atStake("stage rinse"))
                .extracting(new StageChangeText(Locale.ENGLISH)::of)
                .singleElement()
                .asString()
                .contains("30 / 40 / 50 min → 4 / 5 / 6 min");
        SortedMap<String, String> before = two.everything();
        assertThatThrownBy(() -> open.take(YES, CLOCK)).isInstanceOf(IllegalStateException.class);
        assertThat(two.everything()).isEqualTo(before);

        Choice theirs = new Choice(Set.of(), Map.of("rinse", Side.THEIRS), false);
        two.taking(two.pack("1.1.0"), theirs).take(YES, CLOCK);
        assertThat(two.had(WASH)).isEqualTo(two.given(WASH));
    }

    /** What is left out is offered again by the next version. */
    @Test
    void aPartIsTakenAndTheRestStaysOnOffer() {
        take("1.0.0");
        two.give(WASH, stage("rinse", 4) + stage("foam", 6));
        Choice rinse = new Choice(Set.of("rinse"), Map.of(), false);
        Taking part = two.taking(two.pack("1.1.0"), rinse);
        assertThat(part.changes()).extracting(LibraryChange::name).containsExactly("stage rinse");
        TakenPack taken = part.take(YES, CLOCK);
        assertThat(taken.leftOut()).containsExactly("stage foam");
        assertThat(two.had(WASH)).isEqualTo(stage("rinse", 4) + stage("foam", 5));
        assertThat(two.taking(two.pack("1.1.1"), Choice.ALL).changes())
                .extracting(LibraryChange::name)
                .containsExactly("stage foam");
    }

    @Test
    void aNameThatThePackDoesNotChangeIsRefused() {
        take("1.0.0");
        two.give(WASH, stage("rinse", 4) + stage("foam", 5));
        Choice slip = new Choice(Set.of("stage rinze"), Map.of(), false);
        assertThatThrownBy(() -> two.taking(two.pack("1.1.0"), slip))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage("gentle-wash@1.1.0: the pack changes nothing that is called 'stage rinze'; nearest is"
                        + " 'stage rinse'");
    }

    /** An equivalent has a price, a pack size and hazard data of its own. */
    @Test
    void theSitesItemsStayItsOwn() {
        String items = two.given("items.json");
        two.have("items.json", items.replace("47.5", "61.2").replace("[\"H302\", \"H317\", \"EUH208\"]", "[\"H319\"]"));
        two.give(
                "items.json",
                items.replace(
                        "{ \"id\": \"tape\"",
                        "{ \"id\": \"foam-liquid\", \"title\": \"Foam\", \"pack\": \"1000 ml\", \"price\": 12, \"hazards\": [\"H318\"] },\n    { \"id\": \"tape\""));
        two.give(WASH, stage("foam", 5, "        item 'foam-liquid', 5.ml\n"));
        Taking taking = two.taking(two.pack("1.0.0"), Choice.ALL);
        assertThat(taking.unpriced()).containsExactly("foam-liquid");
        assertThat(taking.ownHazards()).containsExactly("iron-remover");
        taking.take(YES, CLOCK);
        List<Item> now = Workspace.open(two.taker()).items();
        assertThat(now).extracting(Item::id).containsExactly("iron-remover", "tape", "foam-liquid");
        assertThat(now.get(0).price()).isEqualByComparingTo("61.2");
        assertThat(now.get(0).hazards()).containsExactly("H319");
        assertThat(now.get(2).price()).isZero();
        assertThat(now.get(2).hazards()).containsExactly("H318");
    }

    @Test
    void hazardDataThatTheSiteNeverTouchedFollowThePack() {
        take("1.0.0");
        two.give("items.json", two.given("items.json").replace("\"EUH208\"", "\"H318\""));
        Taking taking = two.taking(two.pack("1.1.0"), Choice.ALL);
        assertThat(taking.ownHazards()).isEmpty();
        taking.take(YES, CLOCK);
        assertThat(Workspace.open(two.taker()).items().get(0).hazards()).containsExactly("H302", "H317", "H318");
    }

    @Test
    void aPackThatWouldSpoilTheLibraryIsNotReady() {
        take("1.0.0");
        two.have(
                "stages/own.groovy",
                stage("dry", 5).replace("sets 'wet', 'clean'", "sets 'wet'\n        clears 'clean'"));
        two.give(WORDS, two.given(WORDS).replace("state 'clean', means: 'carries no dirt'\n", ""));
        two.give(WASH, two.given(WASH).replace(", 'clean'", ""));
        Taking taking = two.taking(two.pack("1.1.0"), Choice.ALL);
        assertThat(taking.isReady()).isFalse();
        assertThat(taking.problems()).extracting(p -> p.message()).anyMatch(m -> m.contains("'clean'"));
    }

    /** The site has made the stage longer; an example of the pack says how long it is. */
    @Test
    void anExampleThatNoLongerHoldsIsToldBefore() {
        take("1.0.0");
        two.have(WASH, two.had(WASH).replace("3.min, 4.min, 5.min", "30.min, 40.min, 50.min"));
        two.give(
                WASH,
                (stage("rinse", 3) + stage("foam", 5))
                        .replaceFirst("\n}\n", "\n    example 'an estate', on: 'estate', attended: 4.min..4.min\n}\n"));
        Taking taking = two.taking(two.pack("1.1.0"), Choice.ALL);
        assertThat(taking.failedExamples())
                .extracting(p -> p.message())
                .containsExactly("example 'an estate': attended should be 4 min to 4 min, and comes out as 40 min");
        assertThat(taking.isReady()).isTrue();
        two.have(WASH, two.had(WASH).replace("30.min, 40.min, 50.min", "3.min, 4.min, 5.min"));
        assertThat(two.taking(two.pack("1.1.0"), Choice.ALL).failedExamples()).isEmpty();
    }

    /** Each side takes out one of two neighbours: what comes out is neither side's file, and must be read as well. */
    @Test
    void shapesThatDoNotGoTogetherAreNotTaken() {
        take("1.0.0");
        String shapes = two.had(SHAPES);
        two.have(
                SHAPES,
                shapes.replaceFirst("(?s),\n        \\{\n          \"id\": \"roof\".*?\n        \\}", "")
                        .replace("[\"roof\"]", "[]"));
        two.give(
                SHAPES,
                shapes.replace(
                                "\"title\": \"Tailgate\", \"surface\": \"paint\"",
                                "\"title\": \"Tailgate\", \"surface\": \"paint\", \"neighbours\": [\"roof\"]")
                        .replace("[\"bonnet\"]", "[\"bonnet\", \"boot-lid\"]"));
        Taking taking = two.taking(two.pack("1.1.0"), new Choice(Set.of(), Map.of("all", Side.OURS), false));
        assertThat(taking.clashes()).extracting(Clash::name).containsExactly("shape estate/zone roof");
        assertThat(taking.isReady()).isFalse();
        assertThat(taking.problems())
                .singleElement()
                .hasToString("shapes.json:17:84: shapes[0].zones[1].neighbours: there is no zone 'roof'");
    }

    @Test
    void theSitesOwnShapesAndThoseOfThePackStandSideBySide() {
        String shapes = two.had(SHAPES);
        two.give(SHAPES, shapes.replace("\"id\": \"estate\"", "\"id\": \"wagon\""));
        Taking taking = two.taking(two.pack("1.0.0"), Choice.ALL);
        assertThat(taking.clashes()).isEmpty();
        assertThat(taking.changes()).extracting(LibraryChange::name).contains("shape wagon");
        Choice some = new Choice(Set.of("family wash"), Map.of(), false);
        assertThat(two.taking(two.pack("1.0.0"), some).texts()).containsEntry("shapes.json", shapes);
        taking.take(YES, CLOCK);
        assertThat(Workspace.open(two.taker()).shapes())
                .extracting(Shape::id)
                .containsExactlyInAnyOrder("estate", "wagon");
        TakingBack.takeBack(Workspace.open(two.taker()), DemoSite.SCRIPTS);
        assertThat(two.had(SHAPES)).isEqualTo(shapes);
    }

    /** One pack that no longer declares a state does not take it from another one that does. */
    @Test
    void whatAnotherPackDeclaresStays() {
        take("1.0.0");
        two.taking(two.pack("other", "1.0.0"), Choice.ALL).take(YES, CLOCK);
        two.give(WORDS, two.given(WORDS).replace("state 'clean', means: 'carries no dirt'\n", ""));
        two.give(WASH, two.given(WASH).replace(", 'clean'", ""));
        Taking taking = two.taking(two.pack("1.1.0"), Choice.ALL);
        assertThat(taking.changes()).extracting(LibraryChange::name).containsExactly("stage foam", "stage rinse");
    }

    @Test
    void packsThatDoNotGoTogetherAreRefusedInOneLineAndNothingIsTouched() {
        take("1.2.0");
        Manifest.Need ours = new Manifest.Need("gentle-wash", new VersionRange("^1.0.0"));
        two.taking(two.pack("other", "1.0.0", ours), Choice.ALL).take(YES, CLOCK);
        SortedMap<String, String> before = two.everything();
        Manifest.Need missing = new Manifest.Need("base", new VersionRange(">=1.0.0"));
        Manifest.Need circle = new Manifest.Need("other", new VersionRange(">=1.0.0"));
        Manifest.Need clashing = new Manifest.Need("gentle-wash", new VersionRange(">=2.0.0"));
        List<Pack> bad = List.of(
                two.pack("1.1.0"),
                two.pack("1.3.0", missing),
                two.pack("1.3.0", circle),
                two.pack("2.0.0"),
                two.pack("third", "1.0.0", clashing));
        for (Pack pack : bad) {
            assertThatThrownBy(() -> two.taking(pack, Choice.ALL))
                    .isInstanceOf(PackRefused.class)
                    .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
        }
        assertThat(two.everything()).isEqualTo(before);
        two.taking(two.pack("1.1.0"), new Choice(Set.of(), Map.of(), true)).take(YES, CLOCK);
        assertThat(Taking.lockOf(two.taker()).pack("gentle-wash").orElseThrow().version())
                .hasToString("1.1.0");
    }

    // taking back

    @Test
    void oneStepBackIsLetterByLetter() {
        take("1.0.0");
        SortedMap<String, String> before = two.everything();
        two.give(WASH, stage("rinse", 4) + stage("new", 6));
        take("1.1.0");
        assertThat(two.everything()).isNotEqualTo(before);
        TakingBack.takeBack(Workspace.open(two.taker()), DemoSite.SCRIPTS);
        before.remove("packs/undo.json");
        assertThat(two.everything()).isEqualTo(before);
        assertThatThrownBy(() -> TakingBack.takeBack(Workspace.open(two.taker()), DemoSite.SCRIPTS))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith("packs/undo.json: there is nothing to take back");
    }

    @Test
    void editsSinceThenStayWhereTheyCanBeToldApart() {
        take("1.0.0");
        two.give(WASH, stage("rinse", 4) + stage("foam", 5));
        take("1.1.0");
        two.have(WASH, two.had(WASH).replace("The foam", "Our foam"));
        two.have("items.json", two.had("items.json").replace("47.5", "50"));
        TakingBack.takeBack(Workspace.open(two.taker()), DemoSite.SCRIPTS);
        assertThat(two.had(WASH)).isEqualTo(stage("rinse", 3) + stage("foam", 5).replace("The foam", "Our foam"));
        assertThat(two.had("items.json")).contains("50");
    }

    @Test
    void anEditOfWhatThePackBroughtIsNotThrownAway() {
        take("1.0.0");
        two.give(WASH, stage("rinse", 4) + stage("foam", 5));
        take("1.1.0");
        two.have(WASH, two.had(WASH).replace("4.min, 5.min, 6.min", "40.min, 50.min, 60.min"));
        SortedMap<String, String> before = two.everything();
        assertThatThrownBy(() -> TakingBack.takeBack(Workspace.open(two.taker()), DemoSite.SCRIPTS))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("nothing was taken back")
                .hasMessageContaining("stage rinse/time/attended per vehicle");
        assertThat(two.everything()).isEqualTo(before);
    }
}
