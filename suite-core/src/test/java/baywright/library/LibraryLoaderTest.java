package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.StageTerms.Attended;
import baywright.library.StageTerms.Use;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Place;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LibraryLoaderTest {

    static final String IRON_REMOVAL = """
            stage('iron-removal') {
                title  'Iron fallout removal'
                about  'Dissolves iron specks'
                family 'decontamination'
                revision 3
                inputs  { choice 'load', from: ['light', 'moderate', 'heavy'], usual: 'moderate'
                          count  'passes', from: 1, to: 3, usual: 1
                          measure 'grit-depth', from: 1.um, to: 5.um, usual: 2.um
                          yesNo 'two-sided', usual: false }
                worksOn 'paint', 'glass'
                before  { needs 'washed', 'cool', why: 'grit scratches'
                          needsAny 'masked', 'wet'
                          refuses 'panel-wiped'
                          prefers 'tar-clear' }
                after   { sets 'iron-clear', 'wet';  clears 'dry'
                          clears 'panel-wiped', reach: 'vehicle', unless: 'masked'
                          arrives 'tar-clear', after: 12.h }
                time    { setUp 8.min
                          attended 3.min, 4.min, 8.min
                          attended 0.6.min, 0.8.min, 1.4.min, per: 'm2', times: passes
                          standing 5.min, 10.min, usual: 6.min, why: 'must not dry on the surface'
                          if (load == 'heavy') { attended 1.min, 1.min, 1.min, per: 'wheel' }
                          else if (surveyed('hardness') == 'soft') { attended 2.min, 2.min, 2.min } }
                uses    { item 'iron-remover', 70.ml, per: 'm2', times: passes, diluted: '1:9' }
                hazards { from 'iron-remover';  wear 'gloves', 'goggles'; risk 'vibration', 5.ms2; risk 'slip'
                          keepApart 'acid', why: 'gives off a toxic gas' }
                crew    { people 1; helpers 2, takes: 0.57; checker(); skill 'correction' }
                place   { bay 'wash'; equipment 'sprayer' }
                climate { between 5.C, 25.C; humidity 40.percent, 65.percent }
                film    { removes 1.um, 2.um, 3.um, times: passes }
                checks  { confirm 'No coloured run-off'; avoid 'Letting it dry' }
                example 'clean saloon', on: 'saloon', with: [passes: 1], given: ['hardness': 'hard'], drivers: [chip: 12],
                        attended: 12.min..14.min, standing: 3.min..3.min, uses: ['iron-remover': 0.9.l],
                        removes: 1.um..3.um, sets: ['iron-clear'], clears: ['dry']
            }
            stage('washing') {
                title 'Wash'; family 'decontamination'; worksOn 'paint'
                after { sets 'washed', 'wet', 'masked' }
            }
            """;

    @Test
    void everyWordOfAStageReachesItsTerms() {
        LibraryLoader.Loaded loaded = Libraries.load(IRON_REMOVAL);

        assertThat(loaded.problems()).isEmpty();
        Stage stage = loaded.library().stageById().get("iron-removal");
        assertThat(stage.title()).isEqualTo("Iron fallout removal");
        assertThat(stage.revision()).isEqualTo(3);
        assertThat(stage.place()).isEqualTo(new Place("script.groovy", 1, 7));
        assertThat(stage.inputs()).extracting(Input::name).containsExactly("load", "passes", "grit-depth", "two-sided");
        StageTerms terms = stage.usualTerms();
        assertThat(terms.needs())
                .extracting(StageTerms.Need::anyOf)
                .containsExactly(List.of("washed"), List.of("cool"), List.of("masked", "wet"), List.of("panel-wiped"));
        assertThat(terms.effects()).hasSize(5);
        assertThat(terms.attended()).extracting(Attended::per).containsExactly("vehicle", "m2");
        assertThat(terms.attended().get(1).minutes()).isEqualTo(ThreePoint.of("0.6", "0.8", "1.4"));
        assertThat(terms.attended().get(1).origin().from()).containsExactly("passes");
        assertThat(terms.uses())
                .extracting(Use::amount)
                .containsExactly(new Quantity(new BigDecimal("7"), Unit.MILLILITRE));
        assertThat(terms.crew().shares()).containsExactly(BigDecimal.ONE, new BigDecimal("0.57"));
        assertThat(terms.dependsOn()).containsExactlyInAnyOrder("load", "passes", "hardness");
        Example example = stage.examples().get(0);
        assertThat(example.attended().orElseThrow().most()).isEqualTo(Quantity.of(14, Unit.MINUTE));
        assertThat(example.uses()).containsEntry("iron-remover", Quantity.of("0.9", Unit.LITRE));
    }

    @Test
    void inputsAndFactsChooseTheBranch() {
        Stage stage = Libraries.load(IRON_REMOVAL).library().stageById().get("iron-removal");
        Place here = Place.ofFile("job.json");

        StageTerms heavy = stage.terms().of(Map.of("load", Value.of("heavy", here)), Map.of());
        StageTerms soft = stage.terms().of(Map.of(), Map.of("hardness", Value.of("soft", here)));

        assertThat(heavy.attended()).extracting(Attended::per).containsExactly("vehicle", "m2", "wheel");
        assertThat(heavy.attended().get(2).origin().from()).containsExactly("load");
        assertThat(heavy.dependsOn()).containsExactlyInAnyOrder("load", "passes");
        assertThat(soft.attended()).hasSize(3);
        assertThat(soft.attended().get(2).origin().from()).containsExactlyInAnyOrder("load", "hardness");
    }

    @Test
    void anotherTextOrPriceGivesAnotherHash() {
        LibraryLoader.Loaded one = LibraryLoader.load(Map.of("a.groovy", Libraries.BASE), List.of());
        LibraryLoader.Loaded same = LibraryLoader.load(Map.of("a.groovy", Libraries.BASE), List.of());
        LibraryLoader.Loaded renamed = LibraryLoader.load(Map.of("b.groovy", Libraries.BASE), List.of());
        LibraryLoader.Loaded priced = LibraryLoader.load(Map.of("a.groovy", Libraries.BASE), List.of(Libraries.CLAY));

        assertThat(one.library().hash()).isEqualTo(same.library().hash()).hasSize(64);
        assertThat(List.of(renamed.library().hash(), priced.library().hash()))
                .doesNotContain(one.library().hash())
                .doesNotHaveDuplicates();
    }

    @Test
    void oneBadFileLeavesTheOthersAlone() {
        LibraryLoader.Loaded loaded = LibraryLoader.load(
                Map.of("base.groovy", Libraries.BASE, "good.groovy", IRON_REMOVAL, "bad.groovy", "stage('x') { (((("),
                List.of(Libraries.IRON_REMOVER));

        assertThat(loaded.problems())
                .allMatch(p -> p.place().file().equals("bad.groovy"))
                .isNotEmpty();
        assertThat(loaded.library().stages()).extracting(Stage::id).containsExactly("iron-removal", "washing");
    }
}
