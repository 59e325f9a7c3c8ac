package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Library;
import baywright.library.Rule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The page on the trade's rules names what the library has, and nothing else. */
class TradePageTest {

    private static final Pattern ROW = Pattern.compile("(?m)^\\| (\\d+) \\| (.*) \\| (.*) \\| (.*) \\|$");
    private static final Pattern NAME = Pattern.compile("`([a-z]+(?:-[a-z0-9]+)*)`");
    private static final Set<String> OTHER_WORDS = Set.of("standing", "high-voltage", "old-paint");
    private static final Library LIBRARY = Shipped.library().library();

    private static String page() throws IOException {
        return Files.readString(Path.of("..", "docs", "guide", "trade.md"));
    }

    private static List<MatchResult> rows() throws IOException {
        return ROW.matcher(page()).results().toList();
    }

    private static Set<String> named() throws IOException {
        return rows().stream()
                .flatMap(row -> NAME.matcher(row.group(3)).results())
                .map(name -> name.group(1))
                .collect(Collectors.toSet());
    }

    @Test
    void everyRuleOfTheTradeHasARow() throws IOException {
        assertThat(rows())
                .extracting(row -> Integer.parseInt(row.group(1)))
                .isEqualTo(IntStream.rangeClosed(1, 65).boxed().toList());
        assertThat(rows()).allSatisfy(row -> assertThat(row.group(4)).matches("(common|memory|by chart|law|shares).*"));
    }

    @Test
    void everyRuleOfTheLibraryIsNamed() throws IOException {
        assertThat(named()).containsAll(LIBRARY.rules().stream().map(Rule::id).toList());
    }

    @Test
    void whatIsNamedIsThere() throws IOException {
        Set<String> known = LIBRARY.rules().stream().map(Rule::id).collect(Collectors.toSet());
        LIBRARY.states().forEach(s -> known.add(s.id()));
        known.addAll(OTHER_WORDS);
        assertThat(known).containsAll(named());
    }

    @Test
    void theScoreSpeaksOfThisLibrary() throws IOException {
        int rules = LIBRARY.rules().size();
        int needs = MutationTest.mutants().size();
        assertThat(page().replaceAll("\\s+", " "))
                .contains("all " + rules + " rules and all " + needs + " needs, wishes and refusals")
                .contains("(" + (rules + needs) + " of " + (rules + needs) + ")");
    }
}
