package baywright.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The page on safety gives the limits that the program has. */
class LimitsPageTest {

    private static final Path PAGE = Path.of("..", "docs", "security.md");

    @Test
    void everyLimitOfThePageIsTheOneOfTheProgram() throws IOException {
        Map<String, Integer> rows = new LinkedHashMap<>();
        rows.put("characters of a file", Limits.TEXT);
        rows.put("lines of a file", Limits.LINES);
        rows.put("words and signs of a file", Limits.TOKENS);
        rows.put("words and signs of a statement, outside its braces", Limits.STATEMENT_TOKENS);
        rows.put("operators of a statement", Limits.CHAIN);
        rows.put("brackets in brackets", Limits.DEPTH);
        rows.put("`<` in a statement", Limits.ARROWS);
        rows.put("characters of one text or comment", Limits.TOKEN_LENGTH);
        rows.put("digits of a number", Limits.DIGITS);
        rows.put("characters of a worked-out text", Limits.TEXT_RESULT);
        rows.put("entries of a list or map, numbers of a range that is walked", Limits.LIST);
        rows.put("declarations of a file", Limits.DECLARATIONS);
        rows.put("stages of a file", Limits.STAGES);
        rows.put("examples of a stage", Limits.EXAMPLES);
        rows.put("helpers that call each other", Limits.HELPERS);
        rows.put("steps of one evaluation", Limits.STEPS);
        rows.put("steps of all evaluations that the checking of one file takes", Limits.FILE_STEPS);
        rows.put("syntax errors looked for in one file", Limits.SYNTAX_ERRORS);
        rows.put("tries of the parser for one file", (int) Limits.TRIES);
        rows.put("problems kept of one file", Limits.PROBLEMS);

        String page = Files.readString(PAGE);

        rows.forEach((what, most) -> assertThat(page)
                .containsPattern("\\Q| " + what + " | " + String.format(java.util.Locale.UK, "%,d", most) + "\\E[ ,]"));
    }
}
