package baywright.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ScriptParserTest {

    private static Script parse(String text) {
        return ScriptParser.parse("script.groovy", text);
    }

    private static List<String> problems(String text) {
        return parse(text).problems().stream().map(Problem::toString).toList();
    }

    @ParameterizedTest
    @MethodSource("nothing")
    void aFileWithoutStatementsIsFine(String text) {
        Script script = parse(text);
        assertThat(script.problems()).isEmpty();
        assertThat(script.body()).isEmpty();
    }

    static Stream<String> nothing() {
        return Stream.of("", "\n\n", "// only a note\n", "/* a\nb */", "\uFEFF", ";");
    }

    @Test
    void argumentsByNameMayStandAnywhere() {
        Node.Call call = (Node.Call) parse("item 'x', per: 'm2', 3.ml").body().get(0);
        assertThat(call.args()).hasSize(2);
        assertThat(call.named()).hasSize(1);
        Node.Call map = (Node.Call) parse("item([per: 'm2'], 3)").body().get(0);
        assertThat(map.args()).hasSize(2);
        assertThat(map.named()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lineEnds")
    void placesCountCodePointsAndEveryKindOfLineEnd(String name, String text, int line, int column) {
        Node last = parse(text).body().get(parse(text).body().size() - 1);
        assertThat(last.place()).isEqualTo(new Place("script.groovy", line, column));
    }

    static Stream<Arguments> lineEnds() {
        return Stream.of(
                Arguments.of("line feeds", "a 1\nb 2", 2, 1),
                Arguments.of("carriage returns", "a 1\r\rb 2", 3, 1),
                Arguments.of("both", "a 1\r\n  b 2", 2, 3),
                Arguments.of("a tab is one column", "\tb 2", 1, 2),
                Arguments.of("beyond the basic plane", "a '\uD83D\uDE97'; b 2", 1, 8),
                Arguments.of("byte-order mark", "\uFEFFb 2", 1, 1));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tooMuch")
    void whatWouldKeepTheParserBusyIsRefusedAtOnce(String name, String text, String message) {
        long start = System.nanoTime();
        assertThat(problems(text)).anySatisfy(p -> assertThat(p).contains(message));
        assertThat(System.nanoTime() - start).as("ns").isLessThan(20_000_000_000L);
    }

    static Stream<Arguments> tooMuch() {
        return Stream.of(
                Arguments.of("long text", "a '" + "x".repeat(70_000) + "'", "at most 65536 characters"),
                Arguments.of("long token", "a '" + "x".repeat(5_000) + "'", "at most 4000 characters"),
                Arguments.of("many tokens", "a 1\n".repeat(2_001), "at most 4000 words and signs"),
                Arguments.of("long statement", "a " + "1, ".repeat(300) + "1", "at most 400 words and signs"),
                Arguments.of("deep round", "(".repeat(30) + "1" + ")".repeat(30), "24 deep"),
                Arguments.of("deep square", "a(" + "[".repeat(30) + "]".repeat(30) + ")", "24 deep"),
                Arguments.of("deep braces", "a {".repeat(30) + "}".repeat(30), "24 deep"),
                Arguments.of("texts in texts", "a \"" + "${\"".repeat(30) + "\"}".repeat(30) + "\"", "24 deep"),
                Arguments.of("arrows", "def x = " + "(a) -> ".repeat(60) + "1", "8 times '->'"),
                Arguments.of("arrows over lines", "def x = " + "(a) ->\n".repeat(60) + "1", "8 times '->'"),
                Arguments.of("sum", "def x = " + "1 + ".repeat(150) + "1", "at most 100 operators"),
                Arguments.of("sum over lines", "def x = " + "1 +\n".repeat(150) + "1", "at most 100 operators"),
                Arguments.of("minus", "def x = " + "- ".repeat(150) + "1", "at most 100 operators"),
                Arguments.of("not", "def x = " + "!".repeat(150) + "true", "at most 100 operators"),
                Arguments.of("ternary", "def x = " + "true ? 1 : ".repeat(120) + "1", "at most"),
                Arguments.of("elvis", "def x = " + "1 ?: ".repeat(120) + "1", "at most 100 operators"),
                Arguments.of("assignments", "def x = " + "x = ".repeat(120) + "1", "at most 100 operators"),
                Arguments.of("else if", "if (true) { }" + " else if (true) { }".repeat(120), "at most"),
                Arguments.of("else if over lines", "if (true) { }" + "\nelse if (true) { }".repeat(120), "at most"),
                Arguments.of("type arguments", "def x = " + "A<".repeat(100) + "B" + ">".repeat(100), "8 times '<'"),
                Arguments.of("casts", "def x = " + "(int)".repeat(200) + "1", "'int' is not part"),
                Arguments.of("digits", "def x = " + "9".repeat(31), "at most 30 digits"),
                Arguments.of("exponent", "def x = 1e2147483647", "30 places before"),
                Arguments.of("small exponent", "def x = 1e-2147483647", "30 places before"));
    }

    @ParameterizedTest
    @MethodSource("hidden")
    void invisibleCharactersAreRefusedWhereverTheyStand(String character, String code) {
        assertThat(problems("// a" + character + "b\na 1"))
                .containsExactly("script.groovy:1:5: the invisible character " + code
                        + " is not allowed; delete it or write it in words");
    }

    static Stream<Arguments> hidden() {
        return Stream.of(
                Arguments.of("\u202E", "U+202E"),
                Arguments.of("\u2066", "U+2066"),
                Arguments.of("\u200B", "U+200B"),
                Arguments.of("\u0000", "U+0000"),
                Arguments.of("\u001B", "U+001B"),
                Arguments.of("\u0085", "U+0085"),
                Arguments.of("\uD800", "U+D800"),
                Arguments.of("\uFEFF", "U+FEFF"));
    }

    @Test
    void aTextMayHoldWhatPeopleWrite() {
        assertThat(problems("a 'Größe 12 µm – naïve „Zitat“ 漆 \uD83D\uDE97'\n// äöü\n"))
                .isEmpty();
    }

    @Test
    void severalSyntaxErrorsAreFoundInOneGo() {
        assertThat(parse("a 1,, 2\nb {\n  c 3 +* 4\n}\nd 5\n").problems())
                .extracting(p -> p.place().line())
                .containsExactly(1, 3);
        assertThat(problems("stage('x') {\n  before {\n    needs 'a', , 'b'\n  }\n  time { attended 3 +* 4 }\n}\n"))
                .hasSize(2)
                .allSatisfy(p -> assertThat(p).contains("is not expected here"));
    }

    @Test
    void theWordOnAnEmptiedLineMeansNothingElsewhere() {
        assertThat(parse("_ { }").body()).hasSize(1);
    }

    @Test
    void tenSyntaxErrorsAreEnough() {
        assertThat(parse("a 1,, 2\n".repeat(40)).problems()).hasSizeBetween(10, 11);
    }

    @Test
    void aTreeIsPlainDataAndComparesByIt() {
        String text = "a { b 1 + 2, c: [x, 'y'] ; if (z) { d() } }";
        assertThat(parse(text).body()).isEqualTo(parse(text).body()).isNotEmpty();
    }
}
