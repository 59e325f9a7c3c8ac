package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.script.Problem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class QuickFixTest {

    /** Mends a text with the first fix of each problem in turn, until none has one. */
    private static String mended(String text) {
        String now = text;
        for (int round = 0; round < 10; round++) {
            List<QuickFix> fixes = fixes(now);
            if (fixes.isEmpty()) {
                return now;
            }
            now = TextEdit.apply(now, List.of(fixes.get(0).edit()));
        }
        throw new AssertionError("fixes never end: " + now);
    }

    private static List<QuickFix> fixes(String text) {
        return problems(text).stream()
                .flatMap(p -> QuickFix.of(text, p).stream())
                .toList();
    }

    private static List<Problem> problems(String text) {
        return Scripts.load(Map.of("a.groovy", text)).problems();
    }

    @Test
    void mistypedNamesAreWrittenAsTheNearestRightOnes() {
        String wrong = Scripts.PROBE
                .replace("sets 'washed'", "sets 'wahsed'")
                .replace("worksOn 'paint'", "worksOn 'pain'")
                .replace("attended 2.min", "atended 2.min")
                .replace("per: 'm2'", "pre: 'm2'")
                .replace("load == 'heavy'", "load == 'heavvy'")
                .replace("surveyed('hardness')", "surveyed('hardnes')");
        assertThat(problems(wrong)).hasSizeGreaterThan(3);
        assertThat(mended(wrong)).isEqualTo(Scripts.PROBE);
    }

    @Test
    void missingHazardsAreNamed() {
        String uses = "    uses {\n        item 'iron-remover', 5.ml\n    }\n}\n";
        String text = Scripts.PROBE.stripTrailing().replaceAll("}$", "") + uses;
        assertThat(mended(text)).contains("    }\n    hazards {\n        from 'iron-remover'\n    }\n}");
        String block = text.replace("    uses {", "    hazards {\n        risk 'slip'\n    }\n    uses {");
        assertThat(mended(block)).contains("hazards {\n        from 'iron-remover'\n        risk 'slip'");
    }

    @Test
    void aProblemWithoutASuggestionHasNoFix() {
        assertThat(fixes("state 'x'")).isEmpty();
        assertThat(fixes("stage('x') {")).isEmpty();
    }
}
