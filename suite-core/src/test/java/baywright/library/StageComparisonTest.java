package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.StageChange.Aspect;
import baywright.library.StageChange.Part;
import baywright.site.LibraryFolder;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of declaration, changed, added and taken away, and what makes no difference. */
class StageComparisonTest {

    /** Bodies of a stage with what there is to tell between them. */
    record Case(Aspect aspect, Part part, String before, String after, String... sentences) {
        @Override
        public String toString() {
            return aspect + " " + part + " " + List.of(sentences);
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                whole(Aspect.ABOUT, "", "about 'Takes iron off.'", "new: what it is for: Takes iron off."),
                whole(Aspect.REVISION, "revision 1", "revision 2", "revision: 1 → 2"),
                whole(Aspect.SURFACE, "", "worksOn 'glass'", "new: works on 'glass'"),
                whole(
                        Aspect.INPUT,
                        "inputs { count 'passes', from: 1, to: 3, usual: 1 }",
                        "inputs { count 'passes', from: 1, to: 4, usual: 1 }",
                        "input 'passes': a whole number from 1 to 3 → a whole number from 1 to 4"),
                whole(Aspect.INPUT, "inputs { yesNo 'twice', usual: false }", "", "gone: input 'twice': true or false"),
                part(
                        Aspect.INPUT,
                        Part.USUAL,
                        "inputs { measure 'depth', from: 1.um, to: 5.um, usual: 2.um }",
                        "inputs { measure 'depth', from: 1.um, to: 5.um, usual: 3.um }",
                        "input 'depth', usually: 2 µm → 3 µm"),
                part(
                        Aspect.INPUT,
                        Part.REASON,
                        "inputs { yesNo 'twice', usual: false, why: 'speckled' }",
                        "inputs { yesNo 'twice', usual: false, why: 'heavy' }",
                        "input 'twice', reason: speckled → heavy"),
                whole(Aspect.NEED, "before { needs 'washed' }", "before { }", "gone: needs 'washed'"),
                whole(
                        Aspect.NEED,
                        "before { needsAny 'washed', 'dry' }",
                        "before { needsAny 'dry', 'washed'; needs 'cool' }",
                        "new: needs 'cool'"),
                part(
                        Aspect.NEED,
                        Part.REASON,
                        "before { needs 'washed', why: 'grit' }",
                        "before { needs 'washed', why: 'grit scratches' }",
                        "needs 'washed', reason: grit → grit scratches"),
                whole(Aspect.REFUSAL, "", "before { refuses 'wet' }", "new: refuses 'wet'"),
                whole(Aspect.PREFERENCE, "", "before { prefers 'tar-clear' }", "new: prefers 'tar-clear'"),
                whole(Aspect.SETS, "", "after { sets 'washed' }", "new: sets 'washed'"),
                part(
                        Aspect.SETS,
                        Part.AFTER,
                        "after { arrives 'dry', after: 2.h }",
                        "after { arrives 'dry', after: 3.h }",
                        "sets 'dry', arrives after: 2 h → 3 h"),
                whole(Aspect.CLEARS, "after { clears 'panel-wiped' }", "", "gone: clears 'panel-wiped'"),
                part(
                        Aspect.CLEARS,
                        Part.REACH,
                        "after { clears 'dry' }",
                        "after { clears 'dry', reach: 'vehicle' }",
                        "clears 'dry', reach: zone → vehicle"),
                part(
                        Aspect.CLEARS,
                        Part.SPARES,
                        "after { clears 'dry', reach: 'vehicle' }",
                        "after { clears 'dry', reach: 'vehicle', unless: 'masked' }",
                        "new: clears 'dry', spares zones with: masked"),
                whole(
                        Aspect.ATTENDED,
                        "time { attended 10.min, 12.min, 15.min, per: 'panel' }",
                        "time { attended 10.min, 14.min, 18.min, per: 'panel' }",
                        "hands-on time per panel: 10 / 12 / 15 min → 10 / 14 / 18 min"),
                whole(
                        Aspect.ATTENDED,
                        "",
                        "time { attended 0.4.min, 0.6.min, 1.min, per: 'm2' }",
                        "new: hands-on time per m2: 0.4 / 0.6 / 1 min"),
                part(
                        Aspect.ATTENDED,
                        Part.TIMES,
                        "time { attended 1.min, 2.min, 3.min }",
                        "time { attended 1.min, 2.min, 3.min, times: 2 }",
                        "hands-on time per vehicle, times: 1 → 2"),
                new Case(
                        Aspect.STANDING,
                        Part.LONGEST,
                        "time { standing 3.min, 7.min, why: 'must not dry' }",
                        "time { standing 4.min, 8.min, why: 'must not dry up' }",
                        "standing time: 3 min → 4 min",
                        "standing time, reason: must not dry → must not dry up",
                        "standing time, usually: 3 min → 4 min",
                        "standing time, at most: 7 min → 8 min"),
                whole(Aspect.SET_UP, "time { setUp 8.min }", "time { setUp 9.min }", "getting ready: 8 min → 9 min"),
                whole(
                        Aspect.USE,
                        "uses { item 'iron-remover', 70.ml, per: 'm2' }",
                        "uses { item 'iron-remover', 75.ml, per: 'm2' }",
                        "uses 'iron-remover': 70 ml → 75 ml"),
                part(
                        Aspect.USE,
                        Part.PER,
                        "uses { item 'iron-remover', 70.ml, per: 'm2' }",
                        "uses { item 'iron-remover', 70.ml, per: 'panel' }",
                        "uses 'iron-remover', per: m2 → panel"),
                part(
                        Aspect.USE,
                        Part.TIMES,
                        "uses { item 'iron-remover', 70.ml }",
                        "uses { item 'iron-remover', 70.ml, times: 3 }",
                        "uses 'iron-remover', times: 1 → 3"),
                new Case(
                        Aspect.USE,
                        Part.DILUTION,
                        "uses { item 'iron-remover', 110.ml, diluted: '1:10' }",
                        "uses { item 'iron-remover', 110.ml, diluted: '1:9' }",
                        "uses 'iron-remover': 10 ml → 11 ml",
                        "uses 'iron-remover', dilution: 1:10 → 1:9"),
                whole(
                        Aspect.REMOVAL,
                        "film { removes 1.um, 2.um, 3.um }",
                        "film { removes 1.um, 2.um, 4.um }",
                        "film taken off: 1 / 2 / 3 µm → 1 / 2 / 4 µm"),
                whole(
                        Aspect.ITEM_HAZARD,
                        "hazards { from 'iron-remover' }",
                        "hazards { }",
                        "gone: hazards of 'iron-remover'"),
                whole(
                        Aspect.RISK,
                        "hazards { risk 'vibration', 5.ms2 }",
                        "hazards { risk 'vibration', 6.ms2 }",
                        "risk 'vibration': 5 m/s² → 6 m/s²"),
                whole(Aspect.PROTECTION, "", "hazards { wear 'goggles' }", "new: wear 'goggles'"),
                part(
                        Aspect.APART,
                        Part.REASON,
                        "hazards { keepApart 'acid', why: 'gas' }",
                        "hazards { keepApart 'acid', why: 'toxic gas' }",
                        "kept apart from 'acid', reason: gas → toxic gas"),
                new Case(
                        Aspect.PEOPLE,
                        Part.ITSELF,
                        "",
                        "crew { people 2 }",
                        "people at least: 1 → 2",
                        "people at most: 1 → 2",
                        "elapsed time by number of people: 1 → 1, 0.5"),
                new Case(
                        Aspect.MOST_PEOPLE,
                        Part.ITSELF,
                        "",
                        "crew { helpers 2, takes: 0.57 }",
                        "people at most: 1 → 2",
                        "elapsed time by number of people: 1 → 1, 0.57"),
                whole(
                        Aspect.SHARES,
                        "crew { helpers 2, takes: 0.57 }",
                        "crew { helpers 2, takes: 0.60 }",
                        "elapsed time by number of people: 1, 0.57 → 1, 0.6"),
                whole(Aspect.SKILL, "", "crew { skill 'correction' }", "new: skill: correction"),
                whole(Aspect.CHECKER, "", "crew { checker() }", "new: a second person looks"),
                whole(Aspect.BAY, "place { bay 'wash' }", "place { bay 'lit' }", "bay: wash → lit"),
                whole(Aspect.EQUIPMENT, "", "place { equipment 'sprayer' }", "new: equipment 'sprayer'"),
                whole(
                        Aspect.COLDEST,
                        "climate { between 5.C, 30.C }",
                        "climate { between 10.C, 30.C }",
                        "surface at least: 5 °C → 10 °C"),
                whole(
                        Aspect.WARMEST,
                        "climate { between 5.C, 30.C }",
                        "climate { between 5.C, 25.C }",
                        "surface at most: 30 °C → 25 °C"),
                whole(
                        Aspect.DRIEST,
                        "climate { humidity 40.percent, 65.percent }",
                        "climate { humidity 45.percent, 65.percent }",
                        "air at least: 40 % → 45 %"),
                whole(
                        Aspect.DAMPEST,
                        "climate { humidity 40.percent, 65.percent }",
                        "climate { humidity 40.percent, 60.percent }",
                        "air at most: 65 % → 60 %"),
                whole(Aspect.CHECK, "", "checks { confirm 'Dry' }", "new: confirm: Dry"),
                whole(Aspect.MISTAKE, "checks { avoid 'Hot panels' }", "", "gone: avoid: Hot panels"),
                whole(
                        Aspect.EXAMPLE,
                        "time { attended 1.min, 2.min, 3.min }\nexample 'one', on: 'saloon', attended: 2.min..2.min",
                        "time { attended 1.min, 2.min, 3.min }\nexample 'one', on: 'saloon', attended: 1.min..3.min",
                        "example 'one': on 'saloon'; attended 2 min to 2 min → on 'saloon'; attended 1 min to 3 min"));
    }

    private static Case whole(Aspect aspect, String before, String after, String sentence) {
        return new Case(aspect, Part.ITSELF, before, after, sentence);
    }

    private static Case part(Aspect aspect, Part part, String before, String after, String sentence) {
        return new Case(aspect, part, before, after, sentence);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aChangedDeclarationIsTold(Case one) {
        assertThat(told(changes(one.before(), one.after()))).containsExactlyInAnyOrder(one.sentences());
        assertThat(changes(one.before(), one.after()))
                .anyMatch(c -> c.aspect() == one.aspect() && c.part() == one.part());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theWayBackTellsTheSameTurnedRound(Case one) {
        Set<List<Object>> there = Set.copyOf(changes(one.before(), one.after()).stream()
                .map(c -> ends(c, false))
                .toList());
        Set<List<Object>> back = Set.copyOf(changes(one.after(), one.before()).stream()
                .map(c -> ends(c, true))
                .toList());
        assertThat(back).isEqualTo(there);
    }

    private static List<Object> ends(StageChange change, boolean turned) {
        return List.of(
                change.aspect(),
                change.subject(),
                change.part(),
                turned ? change.after() : change.before(),
                turned ? change.before() : change.after());
    }

    /** Title, family, what it is like and whether it works have tests of their own below. */
    @Test
    void everyKindOfDeclarationHasACase() {
        Set<Aspect> tried = EnumSet.of(Aspect.TITLE, Aspect.FAMILY, Aspect.LIKE, Aspect.WORKS);
        cases().forEach(c -> tried.add(c.aspect()));
        assertThat(tried).containsExactlyInAnyOrder(Aspect.values());
    }

    @Test
    void theHeadIsCompared() {
        Library library = Libraries.load("""
                        family 'wash', title: 'Wash', setUp: 3.min
                        stage('one') { title 'One'; family 'decontamination'; worksOn 'paint' }
                        stage('two', like: 'one') { title 'Two'; family 'wash' }
                        """).library();
        assertThat(told(StageComparison.of(
                        library.stageById().get("one"), library.stageById().get("two"), library.facts())))
                .containsExactly("title: One → Two", "family: decontamination → wash", "new: like: one");
    }

    @Test
    void aStageThatCannotBeWorkedOutAnyMoreIsTold() {
        Stage sound = probe("");
        Stage spoilt = new Stage(
                sound.id(),
                sound.title(),
                sound.about(),
                sound.family(),
                sound.revision(),
                sound.inputs(),
                sound.surfaces(),
                sound.examples(),
                (with, facts) -> {
                    throw new IllegalStateException("divides by zero");
                },
                sound.place());
        assertThat(told(StageComparison.of(sound, spoilt, List.of()))).containsExactly("gone: can be worked out");
        assertThat(told(StageComparison.of(spoilt, sound, List.of()))).containsExactly("new: can be worked out");
    }

    @Test
    void whatHangsOnAnInputOrAFactIsToldWithItsValue() {
        String inputs = "inputs { choice 'load', from: ['light', 'heavy'], usual: 'light' }\n";
        assertThat(told(changes(
                        inputs + "time { attended 1.min, 2.min, 3.min\nif (load == 'heavy') { setUp 4.min } }",
                        inputs + "time { attended 1.min, 2.min, 3.min\nif (load == 'heavy') { setUp 6.min } }")))
                .containsExactly("getting ready: 4 min → 6 min (with load 'heavy')");
        assertThat(told(changes(
                        "before { if (surveyed('hardness') == 'soft') { needs 'cool' } }",
                        "before { if (surveyed('hardness') == 'soft') { needs 'dry' } }")))
                .containsExactlyInAnyOrder(
                        "gone: needs 'cool' (with hardness 'soft')", "new: needs 'dry' (with hardness 'soft')");
    }

    @Test
    void aFigureThatAnInputMultipliesIsToldOnce() {
        String inputs = "inputs { count 'passes', from: 1, to: 3, usual: 1 }\n";
        assertThat(told(changes(
                        inputs + "time { attended 1.min, 2.min, 3.min, times: passes }",
                        inputs + "time { attended 1.min, 2.min, 4.min, times: passes }")))
                .containsExactly("hands-on time per vehicle: 1 / 2 / 3 min → 1 / 2 / 4 min");
    }

    @Test
    void layoutOrderCommentsAndUnitsMakeNoDifference() {
        assertThat(changes(
                        "before { needs 'washed'; needs 'cool' }\ntime { attended 60.min, 90.min, 120.min }\n"
                                + "uses { item 'iron-remover', 1000.ml }",
                        "// the same\nuses { item 'iron-remover', 1.l }\n"
                                + "time {\n\n  attended 1.h, 1.5.h, 2.h // slow\n}\nbefore { needs 'cool', 'washed' }"))
                .isEmpty();
    }

    @Test
    void aChangeKnowsBothItsLines() {
        StageChange change =
                changes("\n\ntime { setUp 8.min }", "time { setUp 9.min }").get(0);
        assertThat(change.old().map(Object::toString)).hasValue("script.groovy:5:8");
        assertThat(change.now().map(Object::toString)).hasValue("script.groovy:3:8");
    }

    /** Every shipped stage against itself, and against the one before it. */
    @Test
    void shippedStagesEqualThemselvesAndDifferFromEachOther() {
        Library library = LibraryFolder.of(Path.of("../stage-scripts"))
                .load(ScriptCache.none())
                .library();
        assertThat(library.stages()).hasSizeGreaterThan(50);
        Stage last = null;
        for (Stage stage : library.stages()) {
            assertThat(StageComparison.of(stage, stage, library.facts())).isEmpty();
            if (last != null) {
                assertThat(StageComparison.of(last, stage, library.facts()))
                        .anyMatch(c -> c.aspect() == Aspect.TITLE)
                        .allSatisfy(c ->
                                assertThat(new StageChangeText(Locale.UK).of(c)).isNotBlank());
            }
            last = stage;
        }
    }

    private static List<String> told(List<StageChange> changes) {
        StageChangeText text = new StageChangeText(Locale.UK);
        return changes.stream().map(text::of).toList();
    }

    private static List<StageChange> changes(String before, String after) {
        return StageComparison.of(
                probe(before), probe(after), Libraries.loadStage("").library().facts());
    }

    private static Stage probe(String body) {
        LibraryLoader.Loaded loaded = Libraries.loadStage(body);
        return Optional.ofNullable(loaded.library().stageById().get("probe"))
                .orElseThrow(() -> new AssertionError(loaded.problems().toString()));
    }
}
