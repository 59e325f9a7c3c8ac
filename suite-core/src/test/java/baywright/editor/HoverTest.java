package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class HoverTest {

    private static Optional<Hover> at(String withCaret) {
        return Hover.at(withCaret.replace("|", ""), withCaret.indexOf('|'), Scripts.known());
    }

    @Test
    void aWordShowsItsReference() {
        Hover hover = at("stage('x') { before { nee|ds 'washed' } }").orElseThrow();
        assertThat(hover.title()).isEqualTo("needs");
        assertThat(hover.text())
                .startsWith("every one of these states must hold; else the plan stops")
                .contains("why: a text such as 'rinse twice'; optional")
                .contains("stands in 'before { }'; since 1.0");
    }

    @Test
    void aWordOfTwoBlocksShowsTheOneOfItsBlock() {
        assertThat(at("stage('x') { fam|ily 'wash' }").orElseThrow().text()).startsWith("the group of stages");
        assertThat(at("fam|ily 'wash', title: 'W'").orElseThrow().text()).startsWith("a group of stages");
    }

    @Test
    void anArgumentShowsItsTypeAndUsualValue() {
        Hover hover = at("stage('x') { time { attended 1.min, 2.min, 3.min, p|er: 'm2' } }")
                .orElseThrow();
        assertThat(hover.title()).isEqualTo("per: of attended");
        assertThat(hover.text()).isEqualTo("a driver such as 'm2'; usually 'vehicle'");
    }

    @Test
    void anIdShowsWhatItMeans() {
        assertThat(at("stage('x') { before { needs 'was|hed' } }").orElseThrow())
                .isEqualTo(new Hover(
                        28,
                        36,
                        "state 'washed'",
                        "contact-washed, no loose grit\neach zone has its own; ends with 'loose-soil'"));
        assertThat(at("stage('x') { uses { item 'iron-rem|over', 3.ml } }")
                        .orElseThrow()
                        .text())
                .contains("pack of 5000 ml at ");
        assertThat(at("stage('x') { time { if (surveyed('hard|ness') == 'soft') { } } }")
                        .orElseThrow()
                        .text())
                .contains("one of 'soft', ")
                .endsWith("usually medium");
        assertThat(at("factor('x') { stages 'clay|ing' }").orElseThrow().title())
                .isEqualTo("stage 'claying'");
    }

    @Test
    void anInputShowsItsDeclaration() {
        String text = Scripts.PROBE.replace("times: passes", "times: pas|ses");
        assertThat(at(text).orElseThrow().text()).isEqualTo("count 'passes', from: 1, to: 3, usual: 1");
    }

    @Test
    void aNumberSaysWhatItCounts() {
        assertThat(at("stage('x') { time { attended 0.|4.min, 2.min, 3.min, per: 'm2', times: 2 } }")
                        .orElseThrow())
                .isEqualTo(new Hover(
                        29, 32, "0.4.min of attended", "least: hands-on time of one person, per m², times 2"));
        assertThat(at("stage('x') { time { attended 1.min, 2.min, 3.m|in } }")
                        .orElseThrow()
                        .text())
                .isEqualTo("most: hands-on time of one person, per vehicle");
        assertThat(at("stage('x') { film { removes 1.um, |2.um, 3.um } }")
                        .orElseThrow()
                        .text())
                .isEqualTo("likely: film taken off");
    }

    @Test
    void theSameTextElsewhereMeansNothing() {
        assertThat(at("stage('x') { title 'was|hed' }")).isEmpty();
        assertThat(at("// was|hed")).isEmpty();
        assertThat(at("stage('x') { hazards { keepApart 'ac|id' } }")).isEmpty();
    }

    @Test
    void anUnknownIdIsNamedWithoutMeaning() {
        assertThat(at("stage('x') { before { needs 'wahs|ed' } }").orElseThrow().text())
                .isEmpty();
    }
}
