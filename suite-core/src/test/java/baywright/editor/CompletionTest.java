package baywright.editor;

import static baywright.editor.Scripts.labels;
import static baywright.editor.Scripts.proposals;
import static baywright.editor.Scripts.taken;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CompletionTest {

    @Test
    void aBlockOffersItsOwnWordsOnly() {
        assertThat(labels("stage('x') {\n    before {\n        |\n    }\n}"))
                .containsExactly("needs", "needsAny", "refuses", "prefers");
    }

    @Test
    void aBegunWordComesFirst() {
        assertThat(labels("stage('x') {\n    before {\n        re|")).startsWith("refuses");
        assertThat(labels("st|").get(0)).isEqualTo("state");
    }

    @Test
    void aMistypedWordIsFound() {
        assertThat(labels("stage('x') {\n    time {\n        atended|")).containsExactly("attended");
    }

    @Test
    void aWordComesWithWhatItMustHaveAndWaitsForIt() {
        assertThat(taken("stage('x') {\n    time {\n        att|\n    }\n}", "attended"))
                .contains("\n        attended 3.min, 4.min, 8.min\n");
        Proposal proposal =
                proposals("stage('x') {\n    time {\n        att|\n").get(0);
        assertThat(proposal.slots())
                .extracting(s -> proposal.edit().with().substring(s.from(), s.to()))
                .containsExactly("3.min", "4.min", "8.min");
    }

    @Test
    void aBlockComesWithItsBracesOnLinesOfTheirOwn() {
        assertThat(taken("stage('x') {\n    bef|\n}", "before"))
                .isEqualTo("stage('x') {\n    before {\n        \n    }\n}");
        assertThat(taken("|", "stage")).isEqualTo("stage('iron-removal') {\n    \n}");
        assertThat(taken("stage('x') {\n    crew {\n        ch|\n    }\n}", "checker"))
                .contains("checker()");
    }

    @Test
    void aWordWithItsArgumentsAlreadyThereIsOnlyCorrected() {
        assertThat(taken("stage('x') {\n    before {\n        need| 'dry'\n    }\n}", "needs"))
                .contains("\n        needs 'dry'\n");
    }

    @Test
    void whereAStateIsWantedStatesAreOffered() {
        assertThat(labels("stage('x') {\n    before {\n        needs 'was|'\n    }\n}"))
                .startsWith("washed")
                .doesNotContain("wheel");
        assertThat(taken("stage('x') { before { needs |", "washed")).endsWith("needs 'washed'");
        assertThat(taken("stage('x') { before { needs 'wa|", "washed")).endsWith("needs 'washed'");
        assertThat(taken("stage('x') { before { needs 'wa|shd' } }", "washed")).contains("needs 'washed' }");
    }

    @Test
    void whatIsGivenAlreadyIsNotOfferedAgain() {
        assertThat(labels("stage('x') { before { needs 'washed', '|"))
                .contains("dry")
                .doesNotContain("washed");
    }

    @Test
    void eachArgumentHasItsKindOfId() {
        assertThat(labels("stage('x') { uses { item 'iron|'")).containsExactly("iron-remover");
        assertThat(labels("stage('x') { family '|'"))
                .contains("decontamination")
                .doesNotContain("washed");
        assertThat(labels("stage('x') { worksOn 'paint', '|'"))
                .contains("glass")
                .doesNotContain("paint");
        assertThat(labels("stage('x') { time { attended 1.min, 2.min, 3.min, per: '|'"))
                .contains("m2", "vehicle");
        assertThat(labels("factor('x') { stages 'clay|'")).startsWith("claying");
        assertThat(labels("state 'x', means: 'y', opposite: ['|'")).contains("washed");
        assertThat(labels("stage('x') { example 'y', on: 'saloon', given: [|")).contains("hardness", "cabin-soiling");
        assertThat(labels("stage('x') { example 'y', on: 'saloon', given: [hardness: '|'"))
                .contains("soft", "hard");
        assertThat(labels("stage('x') { hazards { risk '|'")).contains("vibration");
        assertThat(labels("stage('x') { place { bay '|'")).contains("wash");
        assertThat(labels("factor('x') { reads 'hardness'\n value '|'")).contains("soft", "hard");
    }

    @Test
    void aPlainTextOffersNothing() {
        assertThat(labels("stage('x') { title '|'")).isEmpty();
        assertThat(labels("stage('x') { before { needs 'washed', why: '|'")).isEmpty();
        assertThat(labels("// st|")).isEmpty();
        assertThat(labels("stage('x') { time { attended 3|")).isEmpty();
    }

    @Test
    void argumentsByNameAreOfferedUntilTheyAreGiven() {
        assertThat(labels("stage('x') { time { attended 1.min, 2.min, 3.min, |"))
                .contains("per:", "times:");
        assertThat(labels("stage('x') { time { attended 1.min, 2.min, 3.min, per: 'm2', |"))
                .contains("times:")
                .doesNotContain("per:");
        assertThat(labels("stage('x') { time { attended 1.min, 2.min, 3.min, |, times: 2 } }"))
                .contains("per:")
                .doesNotContain("times:");
        assertThat(taken("stage('x') { time { attended 1.min, 2.min, 3.min| } }", "per:"))
                .contains("3.min, per: 'vehicle' }");
    }

    @Test
    void aFixedChoiceIsOffered() {
        assertThat(labels("state 'x', means: 'y', scope: '|'")).containsExactly("zone", "vehicle", "condition");
        assertThat(labels("stage('x') { after { clears 'dry', reach: |"))
                .contains("zone", "neighbours", "vehicle")
                .doesNotContain("wet");
        assertThat(labels("stage('x') { inputs { yesNo 'y', usual: |")).startsWith("true", "false");
    }

    @Test
    void unitsFitWhatIsWanted() {
        assertThat(labels("stage('x') { time { attended 3.|")).containsExactly("s", "min", "h", "days");
        assertThat(labels("stage('x') { time { attended 3.m|"))
                .startsWith("min")
                .doesNotContain("ml");
        assertThat(labels("stage('x') { film { removes 1.|")).containsExactly("um", "mil");
        assertThat(labels("stage('x') { uses { item 'clay', 5.|")).contains("g", "ml", "each");
    }

    @Test
    void inputsAndFactsAreOfferedWithTheirValues() {
        String head = "stage('x') {\n inputs {\n choice 'load', from: ['light', 'heavy'], usual: 'light'\n"
                + " count 'grit-depth', from: 1, to: 2, usual: 1\n }\n time {\n ";
        assertThat(labels(head + "if (lo|")).startsWith("load");
        assertThat(labels(head + "if (load == '|')")).containsExactly("light", "heavy");
        assertThat(labels(head + "if (surveyed('har|")).startsWith("hardness");
        assertThat(labels(head + "if (surveyed('colour') == |")).containsExactly("light", "mid", "dark");
        assertThat(taken(head + "attended 1.min, 2.min, 3.min, times: |", "grit-depth"))
                .endsWith("times: input('grit-depth')");
    }

    @Test
    void idsOfTheTextItselfAreOfferedBeforeTheyAreSaved() {
        assertThat(labels("state 'degreased', means: 'no fat'\nstage('x') { before { needs 'degr|"))
                .containsExactly("degreased");
    }

    @Test
    void aBrokenLineBeforeDoesNoHarm() {
        assertThat(labels("stage('x') {\n    before {\n        needs 'washed', [\n        prefers 'dr|'\n    }\n}"))
                .startsWith("dry");
        assertThat(labels("stage('x') {\n    title 'open\n    before {\n        |"))
                .contains("needs");
    }

    @Test
    void anyOffsetOfAnyTextHasAnAnswer() {
        assertThat(Completion.at("", -5, Known.nothing()))
                .extracting(Proposal::label)
                .contains("stage");
        assertThat(Completion.at("}}}((( '\"${", 99, Known.nothing())).isNotNull();
    }
}
