package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormsTest {

    /** Every file of the fixture, the demo workspaces and the standard library that has a form. */
    static List<Path> files() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path root : List.of(Mill.TEMPLATE, Path.of("..", "demo"), Path.of("..", "stage-scripts"))) {
            if (Files.isDirectory(root)) {
                try (Stream<Path> found = Files.walk(root)) {
                    found.filter(p -> p.getFileName().toString().matches("(shop|items|shapes|job)\\.json"))
                            .filter(p -> !p.toString().contains("target"))
                            .forEach(all::add);
                }
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyShippedFileFitsItsForm(Path file) throws IOException {
        String text = Files.readString(file);

        assertThat(Forms.of(file.toString().replace('\\', '/')).validate(text, InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void theFixtureIsAmongThem() throws IOException {
        assertThat(files()).hasSizeGreaterThanOrEqualTo(5);
    }

    /** The forms themselves are valid by the meta-schema that the validator brings along. */
    @ParameterizedTest
    @ValueSource(strings = {"shop", "items", "shapes", "job"})
    void everyFormIsAForm(String kind) throws IOException {
        String text = Files.readString(Forms.FOLDER.resolve(kind + "-1.json"));
        var meta = com.networknt.schema.SchemaRegistry.withDefaultDialect(
                        com.networknt.schema.SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of(
                        com.networknt.schema.SpecificationVersion.DRAFT_2020_12.getDialectId()));

        assertThat(meta.validate(text, InputFormat.JSON)).isEmpty();
        assertThat(meta.validate(text.replace("\"object\"", "\"thing\""), InputFormat.JSON))
                .isNotEmpty();
    }
}
