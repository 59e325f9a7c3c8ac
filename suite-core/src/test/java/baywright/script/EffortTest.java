package baywright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.groovy.parser.antlr4.internal.atnmanager.AtnManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The parser's work has an end that depends on the text, not on the machine. */
class EffortTest {

    private static final Path SHIPPED = Path.of("..", "stage-scripts");
    private static final String TOO_INTRICATE =
            "the file is too intricate to be read any further; split it, or write this statement as several simpler"
                    + " ones";

    private static Effort effort(String text) {
        Effort effort = new Effort();
        SourceText source = new SourceText("script.groovy", text);
        Guard.Verdict verdict = Guard.look(source, new Problems());
        assertThat(verdict.fatal()).isFalse();
        assertThat(verdict.badLines()).isEmpty();
        if (GroovyReader.read(source, verdict.blocks(), effort).isEmpty()) {
            GroovyReader.read(source, effort);
        }
        return effort;
    }

    private static List<String> shipped() throws IOException {
        try (Stream<Path> all = Files.walk(SHIPPED)) {
            List<String> texts = new ArrayList<>();
            for (Path path :
                    all.filter(p -> p.toString().endsWith(".groovy")).sorted().toList()) {
                texts.add(Files.readString(path));
            }
            return texts;
        }
    }

    @Test
    void noShippedScriptTakesATenthOfIt() throws IOException {
        assertThat(shipped())
                .isNotEmpty()
                .allSatisfy(
                        text -> assertThat(effort(text).tries()).isPositive().isLessThan(Limits.TRIES / 10));
    }

    /** As many stages as the limit on words lets through, in one file. */
    private static String largest() throws IOException {
        StringBuilder large = new StringBuilder();
        for (String text : shipped()) {
            String more = large + text + "\n";
            SourceText source = new SourceText("script.groovy", more);
            if (text.contains("stage(") && !Guard.look(source, new Problems()).fatal()) {
                large.append(text).append('\n');
            }
        }
        return large.toString();
    }

    @Test
    void theLargestSoundFileTakesAFourthOfItAndASyntaxErrorInItIsFoundAllTheSame() throws IOException {
        String text = largest();
        assertThat(effort(text).tries()).isLessThan(Limits.TRIES / 4);
        int lines = (int) text.lines().count();

        Script script = ScriptParser.parse("script.groovy", text + "surface 'x', means: 'y' 'z' ]\n");

        assertThat(script.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.code()).isEqualTo("syntax"))
                .satisfies(p -> assertThat(p.place().line()).isEqualTo(lines + 1));
    }

    /** The slowest texts that a search over the shapes of Groovy's grammar has found within the limits. */
    static Stream<Arguments> slowest() {
        return Stream.of(
                Arguments.of(
                        "what may be casts",
                        "f { if (a) { if (a) { if (a) { " + ("(A) ".repeat(30) + "a.b; ").repeat(30)
                                + " } } } }\na a a ]"),
                Arguments.of(
                        "texts in texts",
                        "f { if (a) { " + ("f { a -> f \"${".repeat(9) + "1" + "}\" } + a".repeat(9) + "[0]").repeat(9)
                                + " } }"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slowest")
    void theSlowestTextsEndWithinIt(String shape, String text) {
        Effort effort = new Effort();
        SourceText source = new SourceText("script.groovy", text);
        assertThat(Guard.look(source, new Problems()).fatal()).as(shape).isFalse();

        assertTimeoutPreemptively(Duration.ofMinutes(2), () -> GroovyReader.read(source, effort));

        assertThat(effort.tries()).isLessThanOrEqualTo(Limits.TRIES + 1_000);
    }

    /** These took the parser seconds to minutes, since what they nest is compared with itself again and again. */
    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("f { " + "a = ".repeat(99) + "[:] }", Refused.ONCE),
                Arguments.of("f {\n" + "A[] a = A[] a = a{ }\n.".repeat(24) + "b\n}", Refused.TYPED),
                Arguments.of("f {\n" + "A a = b\n.".repeat(30) + "c\n}", Refused.TYPED),
                Arguments.of("f { a = b { }.c = d }", Refused.ONCE));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void whatTakesLongestIsRefusedBeforeItIsRead(String text, String message) {
        Problems problems = new Problems();
        Guard.Verdict verdict = Guard.look(new SourceText("script.groovy", text), problems);

        assertThat(verdict.badLines()).isNotEmpty();
        assertThat(problems.sorted()).extracting(Problem::message).contains(message);
    }

    @Test
    void unitsAndArgumentsWithCapitalLettersAreNoTypes() {
        Problems problems = new Problems();
        String text = "climate { between 5.C, 30.C }\nf(5.C a)\ng A\nB[0]\nitem A, b: C\n[A: 1]\nx.Y(Z)";

        Guard.look(new SourceText("script.groovy", text), problems);

        assertThat(problems.sorted()).isEmpty();
    }

    private static GroovyReader.Result spent(String text, Effort effort) {
        SourceText source = new SourceText("script.groovy", text);
        return GroovyReader.read(source, effort);
    }

    @Test
    void whatIsSpentIsSaidWhereTheParserWas() {
        String text = "a 1\nb 2\nstage('x') {\n    title 'y'\n}\n" + "c 3\n".repeat(500);

        GroovyReader.Result result = spent(text, new Effort(20_000, Duration.ofHours(1)));

        assertThat(result.body()).isEmpty();
        assertThat(result.errorLine()).isZero();
        assertThat(result.problems().sorted())
                .singleElement()
                .satisfies(p -> assertThat(p.code()).isEqualTo("limit"))
                .satisfies(p -> assertThat(p.message()).isEqualTo(TOO_INTRICATE))
                .satisfies(p -> assertThat(p.place().line()).isBetween(3, 505));
    }

    @Test
    void aReadingThatTakesTooLongIsEndedByTheClock() {
        String text = "stage('x') {\n" + "    title 'y', a ? b : c\n".repeat(200) + "}\n";

        GroovyReader.Result result = spent(text, new Effort(Long.MAX_VALUE, Duration.ofMillis(1)));

        assertThat(result.problems().sorted())
                .singleElement()
                .satisfies(p -> assertThat(p.message())
                        .isEqualTo("reading the file took longer than 0 s and was ended here; split the file, or this"
                                + " statement"));
    }

    @Test
    void onceSpentEveryFurtherTryEndsAtOnce() {
        Effort effort = new Effort(2, Duration.ofHours(1));
        effort.take();
        effort.take();
        assertThat(effort.spent()).isEmpty();

        assertThatThrownBy(effort::take).isInstanceOf(Effort.Spent.class);
        assertThatThrownBy(effort::take).isInstanceOf(Effort.Spent.class);
        assertThat(effort.spent()).contains(TOO_INTRICATE);
    }

    @Test
    void neitherAThreadNorALockIsLeftBehind() throws InterruptedException {
        Set<Thread> before = new HashSet<>(Thread.getAllStackTraces().keySet());
        String text = "stage('x') {\n" + "    title 'y', a ? b : c\n".repeat(200) + "}\n";

        for (int i = 0; i < 20; i++) {
            spent(text, new Effort(5_000L * i, Duration.ofHours(1)));
        }
        ScriptParser.parse("script.groovy", text);

        assertThat(AtnManager.READ_LOCK.toString()).endsWith("[Read locks = 0]");
        Set<Thread> after = new HashSet<>(Thread.getAllStackTraces().keySet());
        after.removeAll(before);
        for (Thread thread : after) {
            thread.join(10_000); // a parser's thread says what it has read before it ends
        }
        assertThat(after).filteredOn(Thread::isAlive).isEmpty();
    }

    @Test
    void whatEffortEndedSpoilsNoLaterReading() {
        String text = "stage('x') {\n    title 'y'\n    time {\n        attended 1.min, 2.min, 3.min\n    }\n}\n";
        List<Node> whole = ScriptParser.parse("script.groovy", text).body();

        for (int most = 1; most < 3_000; most += 37) {
            spent(text, new Effort(most, Duration.ofHours(1)));
        }

        assertThat(ScriptParser.parse("script.groovy", text).body()).isEqualTo(whole);
    }
}
