package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Family;
import baywright.library.Item;
import baywright.library.Stage;
import baywright.vehicle.Zone;
import baywright.workspace.Words;
import baywright.workspace.Workspace;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The standard library's German words are those of its stages, zones and items, all of them. */
class GermanWordsTest {

    @TempDir
    private static Path folder;

    private static Workspace workspace;
    private static Words words;

    @BeforeAll
    static void copyTheDemo() {
        workspace =
                Workspace.create(folder.resolve("millrace"), Shipped.DEMO.resolve("millrace-works"), Shipped.STAGES);
        words = workspace.words("de");
    }

    @Test
    void everyStageZoneShapeFamilyAndItemHasThem() {
        var library = Shipped.library().library();
        assertThat(words.stages())
                .containsOnlyKeys(ids(library.stages().stream().map(Stage::id)));
        assertThat(words.families())
                .containsOnlyKeys(ids(library.families().stream().map(Family::id)));
        assertThat(words.items())
                .containsOnlyKeys(ids(workspace.items().stream().map(Item::id)));
        assertThat(words.shapes())
                .containsOnlyKeys(ids(workspace.shapes().stream().map(s -> s.id())));
        assertThat(words.zones().keySet())
                .containsAll(workspace.shapes().stream()
                        .flatMap(shape -> shape.zones().stream())
                        .map(Zone::id)
                        .toList());
        assertThat(words.stages().values())
                .allSatisfy(named -> assertThat(named.about()).isNotBlank());
    }

    private static String[] ids(Stream<String> all) {
        return all.toArray(String[]::new);
    }

    @Test
    void theFileFitsItsForm() throws Exception {
        String form = Files.readString(Path.of("..", "docs", "schema", "words-1.json"));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(form)
                        .validate(Files.readString(Shipped.STAGES.resolve("words-de.json")), InputFormat.JSON))
                .isEmpty();
    }

    /** A sentence that no script says any more is a leftover. */
    @Test
    void everySentenceIsSaidByAScriptAnItemOrAShop() throws Exception {
        StringBuilder said = new StringBuilder();
        for (Path root : new Path[] {Shipped.STAGES, Shipped.DEMO}) {
            try (Stream<Path> all = Files.walk(root)) {
                for (Path file : all.filter(p -> p.toString().matches(".*\\.(groovy|json)")
                                && !p.toString().contains("words-"))
                        .toList()) {
                    said.append(Files.readString(file).replace("\\'", "'"));
                }
            }
        }
        assertThat(words.sentences().keySet())
                .allSatisfy(sentence -> assertThat(said).contains(sentence));
    }

    @Test
    void aLanguageWithoutAFileHasTheScriptsOwn() {
        assertThat(workspace.words("fr")).isSameAs(Words.NONE);
    }
}
