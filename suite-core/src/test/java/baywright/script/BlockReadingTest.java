package baywright.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A text read block by block gives what Groovy's parser makes of the whole, or is left to it. */
class BlockReadingTest {

    private static final List<String> SHIPPED = texts(Path.of("..", "stage-scripts"));

    private static List<String> texts(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            List<String> texts = new ArrayList<>();
            for (Path path :
                    all.filter(p -> p.toString().endsWith(".groovy")).sorted().toList()) {
                texts.add(Files.readString(path));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<String> shipped() {
        return SHIPPED.stream();
    }

    /** Reads both ways and compares; what came of the blocks. */
    private static Optional<GroovyReader.Result> both(String text) {
        SourceText source = new SourceText("script.groovy", text);
        Guard.Verdict verdict = Guard.look(source, new Problems());
        if (verdict.fatal() || !verdict.badLines().isEmpty()) {
            return Optional.empty();
        }
        Optional<GroovyReader.Result> apart = GroovyReader.read(source, verdict.blocks(), new Effort());
        GroovyReader.Result whole = GroovyReader.read(source, new Effort());
        apart.ifPresent(read -> {
            assertThat(whole.problems().sorted()).as(text).isEmpty();
            assertThat(read.body()).as(text).isEqualTo(whole.body());
        });
        return apart;
    }

    private static List<BlockFinder.Block> blocks(String text) {
        return Guard.look(new SourceText("script.groovy", text), new Problems()).blocks();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedScriptReadsTheSame(String text) {
        assertThat(both(text).isPresent()).isEqualTo(!blocks(text).isEmpty());
    }

    @Test
    void theBlocksOfAStageAreReadApart() {
        String stage = SHIPPED.stream()
                .filter(t -> t.contains("stage('iron-removal')"))
                .findFirst()
                .orElseThrow();
        assertThat(both(stage)).isPresent();
        assertThat(blocks(stage)).hasSizeGreaterThan(8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a {\n  b 1\n}",
                "a('x') {\n  b {\n    c 1\n  }\n  d 2\n}\ne 3",
                "a { // why\n  b 1\n}",
                "a {\n\n\n}",
                "a {\n  /* } */\n  b '}'\n  c '''\n}\n'''\n}",
                "a {\n  if (b) {\n    c 1\n  } else {\n    d 2\n  }\n}",
                "a {\n  switch (b) {\n    case 1:\n      c {\n        d 1\n      }\n      break\n    default:\n      e 1\n  }\n}",
                "a {\n  [1, 2].each {\n    b it\n  }\n}",
                "a {\n  b \"${[1].collect {\n    it + 1\n  }}\"\n}",
                "a(1, b {\n  c 2\n}, 3)",
                "a {\n  b 1\n}.c(2)",
                "a {\n  def b = 1\n  c b\n}",
                "a {\r\n  b '\uD83D\uDE97', c: 1; d {\r\n    e 1\r\n  }\r\n}",
                "a {\n  b $/\n}\n/$\n}"
            })
    void whatIsRightReadsTheSame(String text) {
        assertThat(both(text)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a {\n  b -> c b\n}",
                "a {\n  b, c ->\n  d b\n}",
                "a {\n  b 1 1 1 }\n  c {\n}\n}",
                "a {\n  def b() {\n    1\n  }\n}",
                "a {\n  break\n}",
                "a {\n  import b\n}",
                "a {\n  b: c 1\n}",
                "a {\n  b '\n}",
                "a {\n  /* \n}",
                "a {\n  b(\n}\n)",
                "new A() {\n  b 1\n}",
                "record a(b) {\n  c 1\n}",
                "a {\n  this.b {\n    c 1\n  }\n}"
            })
    void whatIsWrongOrUnusualIsLeftToTheWhole(String text) {
        assertThat(both(text)).isEmpty();
    }

    @Test
    void aBlockOfAnotherKindIsNotReadApart() {
        assertThat(blocks("if (a) {\n  b 1\n}")).isEmpty();
        assertThat(blocks("for (a in b) {\n  c 1\n}")).isEmpty();
        assertThat(blocks("a { b 1 }")).isEmpty();
        assertThat(blocks("a { b 1\n  c 2\n}")).isEmpty();
        assertThat(blocks("a {\n  b 1 }")).isEmpty();
        assertThat(blocks("a \"${\n  b\n}\"")).isEmpty();
        assertThat(blocks("a {\n  b '''\n''' }")).isEmpty();
        assertThat(blocks("a { /*\n*/ b 1\n}")).isEmpty();
        assertThat(blocks("a {\n  b 1\n}")).hasSize(1);
    }

    /** Shipped scripts with lines lost, doubled, swapped or cut, so that braces and texts go wrong in every way. */
    @Property(tries = 150)
    void spoiltScriptsReadTheSameOrAreLeftToTheWhole(@ForAll long seed) {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>(
                SHIPPED.get(random.nextInt(SHIPPED.size())).lines().toList());
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(lines.size());
            String line = lines.get(at);
            switch (random.nextInt(6)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, line);
                case 2 -> lines.add(random.nextInt(lines.size()), lines.remove(at));
                case 3 -> lines.set(at, line.substring(0, random.nextInt(line.length() + 1)));
                case 4 ->
                    lines.set(
                            at,
                            line
                                    + List.of(" {", "}", "'", "/*", "*/", "'''", "(", ")", " ->", "\"${")
                                            .get(random.nextInt(10)));
                default ->
                    lines.set(
                            at,
                            line.stripTrailing() + " "
                                    + lines.get(random.nextInt(lines.size())).strip());
            }
        }
        both(String.join("\n", lines));
    }
}
