package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Scripts that are wrong, each with every message that its author gets, in {@code bad-scripts.txt}. */
class BadScriptsTest {

    record Bad(String name, String script, List<String> messages) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Bad> badScripts() {
        try (InputStream in = BadScriptsTest.class.getResourceAsStream("bad-scripts.txt")) {
            String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Arrays.stream(all.split("(?m)^=== "))
                    .filter(b -> !b.isBlank() && !b.startsWith("#"))
                    .map(BadScriptsTest::read);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Bad read(String block) {
        List<String> lines = new ArrayList<>(block.lines().toList());
        String name = lines.remove(0);
        List<String> messages = lines.stream()
                .filter(l -> l.startsWith("--- "))
                .map(l -> l.substring(4))
                .toList();
        List<String> script = lines.stream().filter(l -> !l.startsWith("---")).toList();
        return new Bad(name, String.join("\n", script) + "\n", messages);
    }

    @ParameterizedTest
    @MethodSource("badScripts")
    void everyProblemIsToldAsItsAuthorNeedsIt(Bad bad) {
        assertThat(bad.messages()).isNotEmpty();
        assertThat(Libraries.problemsOf(bad.script())).containsExactlyElementsOf(bad.messages());
    }
}
