package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.StringLength;

/** Whatever the text, loading gives a library and problems with their places, never an exception. */
class GarbageTest {

    private static void loads(String text) {
        LibraryLoader.Loaded loaded = LibraryLoader.load(
                Map.of("base.groovy", "state 'washed', means: 'clean'", "script.groovy", text),
                List.of(Libraries.IRON_REMOVER));
        assertThat(loaded.library().states()).extracting(State::id).contains("washed");
        assertThat(loaded.problems()).allSatisfy(p -> {
            assertThat(p.message()).isNotBlank().doesNotContain("\n").hasSizeLessThan(1_500);
            assertThat(p.place().file()).isNotBlank();
        });
    }

    @Property(tries = 60)
    void anyTextLoads(@ForAll @StringLength(max = 200) String text) {
        loads(text);
    }

    @Property(tries = 120)
    void anyHeapOfTheLanguagesOwnPiecesLoads(@ForAll("heaps") List<String> pieces) {
        loads(String.join(" ", pieces));
    }

    @Provide
    Arbitrary<List<String>> heaps() {
        return Arbitraries.of(
                        "stage('a')",
                        "{",
                        "}",
                        "(",
                        ")",
                        "[",
                        "]",
                        "title 'x'",
                        "before {",
                        "needs 'washed'",
                        ",",
                        "\n",
                        ";",
                        "attended",
                        "3.min",
                        "4",
                        "'text",
                        "\"${",
                        "per:",
                        "if (",
                        "else",
                        "switch (load) {",
                        "case 'x':",
                        "break",
                        "default:",
                        "for (x in",
                        "def y =",
                        "->",
                        "..",
                        "?",
                        ":",
                        "?:",
                        "passes",
                        "surveyed('hardness')",
                        "==",
                        "&&",
                        "!",
                        "**",
                        "/",
                        "it",
                        "null",
                        "true",
                        "inputs {",
                        "count 'passes', from: 1, to: 2, usual: 1",
                        "input('passes')",
                        "1e30",
                        "-5",
                        "example 'e', on:",
                        "with: [",
                        "/*",
                        "//",
                        "*/",
                        "'''",
                        "\\",
                        "$",
                        "#!",
                        "state 'q', means: 'r'")
                .list()
                .ofMaxSize(30);
    }

    @Property(tries = 80)
    void aGoodScriptWithOneCharacterChangedLoads(@ForAll("places") int place, @ForAll("characters") char character) {
        StringBuilder text = new StringBuilder(LibraryLoaderTest.IRON_REMOVAL);
        text.setCharAt(place, character);
        loads(text.toString());
    }

    @Provide
    Arbitrary<Integer> places() {
        return Arbitraries.integers().between(0, LibraryLoaderTest.IRON_REMOVAL.length() - 1);
    }

    @Provide
    Arbitrary<Character> characters() {
        return Arbitraries.of(
                '{', '}', '(', ')', '[', ']', '\'', '"', '\\', '$', ',', '.', ':', ' ', '\n', 'x', '0', '/', '-');
    }
}
