package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.script.Functions;
import baywright.script.Problem;
import baywright.script.Vocabulary;
import baywright.script.Vocabulary.Section;
import baywright.script.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class LanguagePageTest {

    private static final Path PAGE = Path.of("..", "docs", "language.md");

    /** What the examples name beyond the base of all tests. */
    private static final String MORE = """
            state 'coated', means: 'coating has cured'
            state 'live', means: 'a chemical is at work'
            state 'water-safe', means: 'water does no harm'
            surface 'wheel', means: 'rims'
            family 'sanding', title: 'Sanding'
            family 'correction', title: 'Correction'
            """;

    /** What the examples of rules speak of. */
    private static final String TRADE = MORE + Libraries.stage("hazards { keepApart 'acid' }")
            + Libraries.stage("inputs { choice 'grit', from: ['P1500', 'P2000'], usual: 'P2000' }")
                    .replace("probe", "machine-sand")
            + Stream.of("polish", "compound", "panel-wipe", "wax")
                    .map(id -> Libraries.stage("").replace("probe", id))
                    .collect(Collectors.joining())
            + "state 'glazed', means: 'fillers'\nstate 'rinsed', means: 'no chemistry'\n";

    private static String rule(String example) {
        boolean verdict = example.matches("(?s)(forbids|warns|notes) .*");
        return "rule('probe') {\n"
                + Stream.of("title 'Probe'", "reason 'because'", "at families: ['decontamination', 'sanding']")
                        .filter(h -> !example.startsWith(h.substring(0, h.indexOf(' ') + 1)))
                        .collect(Collectors.joining("\n"))
                + "\n" + example + (verdict ? "" : "\nforbids { holds('masked') }") + "\n}\n" + TRADE.replace(MORE, "");
    }

    @Test
    void thePageIsThatOfTheWords() throws IOException {
        if (Boolean.getBoolean("baywright.rewrite")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, LanguagePage.text());
        }
        assertThat(PAGE)
                .as("renew it with: mvn -pl suite-core test -Dtest=LanguagePageTest -Dbaywright.rewrite=true")
                .hasContent(LanguagePage.text());
    }

    @Test
    void wordsOnTheirWayOutAreListedWithTheirSuccessors() {
        Word wants = Word.word("longsFor").retired("1.4", "needs");
        Vocabulary some =
                new Vocabulary(List.of(new Section("room", "in the room", "A room.", List.of(wants))), List.of());

        assertThat(LanguagePage.retiredWords(some)).contains("\n| `longsFor` | `needs` | 1.4 |\n");
        assertThat(LanguagePage.retiredWords(StageLanguage.VOCABULARY)).contains("no word is on its way out");
    }

    @Test
    void theStageThatOpensThePageLoadsWithoutAWarning() {
        String washing = Libraries.stage("after { sets 'washed', 'tar-clear' }");
        assertThat(Libraries.problemsOf(LanguagePage.example() + washing)).isEmpty();
    }

    static Stream<Arguments> words() {
        return StageLanguage.VOCABULARY.sections().stream()
                .flatMap(s -> s.words().stream().map(w -> Arguments.of(s, w)));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("words")
    void everyWordHasAnExampleThatLoads(Section section, Word word) {
        assertThat(word.example()).contains(word.name());
        assertThat(word.means()).isNotBlank();
        assertThat(Libraries.load(around(section, word.example()) + "\n" + MORE).errors())
                .extracting(Problem::toString)
                .isEmpty();
    }

    /** A script in which words of the section may stand. */
    private static String around(Section section, String example) {
        String inputs = "inputs { count 'passes', from: 1, to: 3, usual: 1 }\n";
        return switch (section.name()) {
            case "library" -> renamed(example);
            case "factor" ->
                Libraries.stage("").replace("probe", "claying")
                        + Libraries.stage("").replace("probe", "finishing-polish")
                        + "factor('probe') {\n" + (example.startsWith("reads") ? "" : "reads 'hardness'\n") + example
                        + "\n}";
            case "stage" -> headless(inputs, example);
            case "rule" -> rule(example);
            case "goal" -> goal(example);
            case "inputs" -> Libraries.stage("inputs {\n" + example + "\n}");
            default -> Libraries.stage(inputs + section.name() + " {\n" + example + "\n}");
        };
    }

    /** Declarations that the base has already go under another id; a stage needs a whole head. */
    private static String renamed(String example) {
        if (example.startsWith("stage")) {
            return example.replace("}", "; family 'decontamination'; worksOn 'paint' }");
        }
        if (example.startsWith("goal")) {
            return example.replace("}", "; wants 'washed', on: ['paint'] }");
        }
        if (example.startsWith("rule")) {
            return example.replace(
                    "}", "; reason 'because'; at families: ['decontamination']; forbids { holds('masked') } }");
        }
        return example.replaceFirst("'[a-z]+'", "'probe'");
    }

    private static String goal(String example) {
        String title = example.startsWith("title") ? "" : "title 'Probe'\n";
        String wants = example.startsWith("wants") ? "" : "wants 'washed', on: ['paint']\n";
        return "goal('probe') {\n" + title + wants + example + "\n}";
    }

    private static String headless(String inputs, String example) {
        Stream<String> head = Stream.of("title 'Probe'", "family 'decontamination'", "worksOn 'paint'")
                .filter(h -> !example.startsWith(h.substring(0, h.indexOf(' '))));
        String given = example.startsWith("inputs") ? "" : inputs;
        return "stage('probe') {\n" + String.join("\n", head.toList()) + "\n" + given + example + "\n}";
    }

    @Test
    void everyFunctionHasAnExampleThatGivesAValue() {
        for (Functions.Info info : Functions.all()) {
            assertThat(Libraries.problemsOf("def probe = " + info.example()))
                    .as(info.example())
                    .isEmpty();
        }
        for (Word word : RuleQueries.WORDS) {
            List<String> problems = Libraries.problemsOf(rule("forbids { (" + word.example() + ") != null }") + MORE);
            assertThat(problems).as(word.name()).isEmpty();
        }
        for (Word word : StageLanguage.VOCABULARY.functions()) {
            if (RuleQueries.WORDS.contains(word)) {
                continue;
            }
            List<String> problems = Libraries.problemsOf(
                    Libraries.stage("inputs { measure 'grit-depth', from: 1.um, to: 5.um, usual: 2.um }\ndef probe = "
                                    + word.example())
                            + (word.name().equals("constant") ? "constant 'bench-rate', 3.min\n" : ""));
            assertThat(problems).as(word.name()).isEmpty();
        }
    }
}
