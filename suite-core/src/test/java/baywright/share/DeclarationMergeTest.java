package baywright.share;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.share.Clash.Kind;
import baywright.share.Clash.Side;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DeclarationMergeTest {

    private static final String FILE = "rinse.groovy";
    private static final String RINSE = """
            // of the rinse
            stage('rinse') {
                title 'Rinse'
                before { needs 'wet';  prefers 'cool' }
                time {
                    attended 1.min, 2.min, 3.min, per: 'm2'
                    attended 5.min, 6.min, 7.min
                    attended 8.min, 9.min, 10.min  // the hose
                }
                uses {
                    item 'shampoo', 2.ml, per: 'm2'
                }
            }
            """;

    private static Merged merge(String base, String ours, String theirs) {
        return DeclarationMerge.of(Map.of(FILE, base), Map.of(FILE, ours), Map.of(FILE, theirs));
    }

    @Test
    void twoLinesOfOneBlockAreTwoChanges() {
        String ours = RINSE.replace("1.min, 2.min, 3.min", "2.min, 3.min, 4.min");
        String theirs =
                RINSE.replace("8.min, 9.min, 10.min", "9.min, 10.min, 11.min").replace("2.ml", "3.ml");
        Merged merged = merge(RINSE, ours, theirs);
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts().get(FILE)).isEqualTo(theirs.replace("1.min, 2.min, 3.min", "2.min, 3.min, 4.min"));
    }

    /** A base for a later merge: whoever merges with it meets the clash again. */
    @Test
    void whatBothAgreeAboutLeavesAClashAsItWasBefore() {
        String ours = RINSE.replace("2.ml", "3.ml").replace("'wet'", "'wet', 'cold'");
        String theirs = RINSE.replace("2.ml", "4.ml").replace("'Rinse'", "'Rinse well'");
        Merged agreed = DeclarationMerge.agreed(Map.of(FILE, RINSE), Map.of(FILE, ours), Map.of(FILE, theirs));
        assertThat(agreed.texts().get(FILE))
                .isEqualTo(RINSE.replace("'wet'", "'wet', 'cold'").replace("'Rinse'", "'Rinse well'"));
        assertThat(merge(agreed.texts().get(FILE), ours, theirs).clashes()).hasSize(1);

        String other = ours.replace("'rinse'", "'spray'");
        String another = theirs.replace("'rinse'", "'spray'");
        assertThat(DeclarationMerge.agreed(Map.of(), Map.of(FILE, other), Map.of(FILE, another))
                        .texts()
                        .values())
                .noneMatch(text -> text.contains("spray"));
    }

    @Test
    void aClashSaysWhereAndKeepsOursUntilItIsDecided() {
        String ours = RINSE.replace("2.ml", "3.ml");
        String theirs = RINSE.replace("2.ml", "4.ml").replace("'Rinse'", "'Rinse well'");
        Merged merged = merge(RINSE, ours, theirs);
        assertThat(merged.open()).singleElement().satisfies(clash -> {
            assertThat(clash.name()).isEqualTo("stage rinse/uses/item shampoo");
            assertThat(clash.kind()).isEqualTo(Kind.CHANGED);
            assertThat(clash.before().orElseThrow().text()).isEqualTo("item 'shampoo', 2.ml, per: 'm2'");
            assertThat(clash.ours().orElseThrow().text()).contains("3.ml");
            assertThat(clash.theirs().orElseThrow().text()).contains("4.ml");
        });
        assertThat(merged.texts().get(FILE)).isEqualTo(ours.replace("'Rinse'", "'Rinse well'"));

        Merged decided = DeclarationMerge.of(
                Map.of(FILE, RINSE),
                Map.of(FILE, ours),
                Map.of(FILE, theirs),
                c -> c.isIn("stage rinse") ? Optional.of(Side.THEIRS) : Optional.empty());
        assertThat(decided.open()).isEmpty();
        assertThat(decided.texts().get(FILE)).isEqualTo(theirs);
    }

    /** Taking out what the other side has changed is a clash, whichever side does it. */
    @Test
    void whatOneTakesOutAndTheOtherChangesIsAClash() {
        String without = RINSE.replace("        item 'shampoo', 2.ml, per: 'm2'\n", "");
        String changed = RINSE.replace("2.ml", "4.ml");
        assertThat(merge(RINSE, without, changed).open())
                .extracting(Clash::kind)
                .containsExactly(Kind.TAKEN_OUT_HERE);
        assertThat(merge(RINSE, without, changed).texts().get(FILE)).isEqualTo(without);
        assertThat(merge(RINSE, changed, without).open())
                .extracting(Clash::kind)
                .containsExactly(Kind.TAKEN_OUT_THERE);
        assertThat(merge(RINSE, changed, without).texts().get(FILE)).isEqualTo(changed);
        assertThat(merge(RINSE, without, RINSE).texts().get(FILE)).isEqualTo(without);
    }

    @Test
    void aStageInAnotherFileIsTheSameStage() {
        String ours = RINSE.replace("2.ml", "3.ml");
        Merged merged = DeclarationMerge.of(
                Map.of(FILE, RINSE, "b.groovy", "// b\n"),
                Map.of(FILE, ours, "b.groovy", "// b\n"),
                Map.of("b.groovy", RINSE, "c.groovy", "state 'wet', means: 'water'\n"));
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts()).containsOnlyKeys("b.groovy", "c.groovy");
        assertThat(merged.texts().get("b.groovy")).contains("3.ml").contains("// of the rinse");
    }

    @Test
    void aFileThatWasRenamedKeepsItsHelpers() {
        String helped = "def most = 7.min\n\n" + RINSE.replace("7.min", "most");
        Merged merged = DeclarationMerge.of(
                Map.of(FILE, helped),
                Map.of(FILE, helped.replace("def most = 7.min", "def most = 9.min")),
                Map.of("wash/rinse.groovy", helped.replace("2.ml", "3.ml")));
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts())
                .containsOnlyKeys("wash/rinse.groovy")
                .containsValue(helped.replace("2.ml", "3.ml").replace("def most = 7.min", "def most = 9.min"));
    }

    /** Such as {@code replaces: true}: a rule of the shop's own beside the one that it stands for. */
    @Test
    void aRuleAndTheOneThatReplacesItAreTwo() {
        String rule =
                "rule('dry') {\n    title 'Dry'\n    reason 'r'\n    at families: ['wash']\n    warns { holds('wet') }\n}\n";
        String own = rule.replace("rule('dry')", "rule('dry', replaces: true)").replace("warns", "notes");
        Merged merged = DeclarationMerge.of(
                Map.of("a.groovy", rule),
                Map.of("a.groovy", rule, "own.groovy", own),
                Map.of("a.groovy", rule.replace("'Dry'", "'Dry it'")));
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.texts()).containsEntry("own.groovy", own);
        assertThat(merged.texts().get("a.groovy")).contains("'Dry it'");
    }

    @Test
    void aLineAddedToABlockOnOneLineIsParted() {
        String theirs = RINSE.replace("prefers 'cool' }", "prefers 'cool'\n        refuses 'curing'\n    }");
        String ours = RINSE.replace("needs 'wet';", "needs 'wet', why: 'dust';");
        Merged merged = merge(RINSE, ours, theirs);
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.problems()).isEmpty();
        assertThat(merged.texts().get(FILE)).contains("why: 'dust'").contains("refuses 'curing'");
    }

    @Test
    void bothAddingAStageOfOneNameIsAClash() {
        Merged merged = DeclarationMerge.of(
                Map.of(), Map.of(FILE, RINSE), Map.of("other.groovy", RINSE.replace("2.ml", "4.ml")));
        assertThat(merged.open()).singleElement().satisfies(clash -> {
            assertThat(clash.name()).isEqualTo("stage rinse");
            assertThat(clash.kind()).isEqualTo(Kind.ADDED);
            assertThat(clash.theirs().orElseThrow().file()).isEqualTo("other.groovy");
        });
        assertThat(merged.texts().get(FILE)).isEqualTo(RINSE);
    }

    @Test
    void commentsOfBothSidesClashOnlyWhereTheyDiffer() {
        Merged merged = merge(
                RINSE,
                RINSE.replace("// of the rinse", "// of our rinse"),
                RINSE.replace("// of the rinse", "// of their rinse").replace("2.ml", "3.ml"));
        assertThat(merged.open()).extracting(Clash::name).containsExactly("stage rinse/comment");
        assertThat(merged.texts().get(FILE)).contains("// of our rinse").contains("3.ml");
    }

    @Test
    void aResultThatCannotBeReadSaysSo() {
        String broken = "stage('rinse') {\n    title 'Rinse'\n";
        Merged merged = merge("", "state 'wet', means: 'water'\n", broken);
        assertThat(merged.reads()).isFalse();
        assertThat(merged.problems())
                .first()
                .satisfies(p -> assertThat(p.place().file()).isEqualTo(FILE));
    }

    @Test
    void aPartTakesWhatIsNamedAndTheHelpersOfItsFile() {
        String two =
                "def most = 7.min\n\nstage('a') {\n    time { attended 1.min, 2.min, most }\n}\nstage('b') {\n    title 'B'\n}\n";
        String theirs = two.replace("7.min", "8.min").replace("1.min", "2.min").replace("'B'", "'BB'")
                + "stage('c') {\n    title 'C'\n}\n";
        Map<String, String> base = Map.of("x.groovy", two, "y.groovy", RINSE);
        assertThat(DeclarationMerge.part(base, Map.of("x.groovy", theirs), "stage a"::equals))
                .containsEntry("y.groovy", RINSE)
                .containsEntry("x.groovy", two.replace("7.min", "8.min").replace("1.min", "2.min"));
        assertThat(DeclarationMerge.part(base, Map.of(), "stage rinse"::equals)).containsOnlyKeys("x.groovy");
        assertThat(DeclarationMerge.differences(base, Map.of("x.groovy", theirs)))
                .containsExactly("stage a", "stage b", "stage c", "stage rinse", "x.groovy");
    }

    @Test
    void aFileThatCannotBeTakenApartIsMergedAsAWhole() {
        Map<String, String> base = Map.of("shapes.json", "{}");
        assertThat(DeclarationMerge.of(base, base, Map.of("shapes.json", "{ }")).texts())
                .containsEntry("shapes.json", "{ }");
        assertThat(DeclarationMerge.of(base, Map.of("shapes.json", "[]"), Map.of("shapes.json", "{ }"))
                        .open())
                .extracting(Clash::name)
                .containsExactly("shapes.json");
    }
}
