package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Fact;
import baywright.library.Family;
import baywright.library.Input;
import baywright.library.Item;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.safety.SafetySettings;
import baywright.vehicle.Zone;
import baywright.workspace.Words;
import baywright.workspace.Workspace;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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

    /**
     * Whatever a paper may print: of a stage, at every choice of its inputs and every fact, of an item, of a rule about film
     * and of a pair that must not meet.
     */
    @Test
    void everySentenceOnAPaperHasThem() {
        var library = Shipped.library().library();
        Set<String> said = new TreeSet<>();
        for (Stage stage : library.stages()) {
            terms(stage, library.facts()).forEach(terms -> said.addAll(printed(terms)));
            for (Input input : stage.inputs()) {
                said.add(input.name());
                said.addAll(input.choices());
            }
        }
        workspace.items().forEach(item -> {
            said.addAll(item.protection());
            said.add(item.note());
        });
        SafetySettings.USUAL.apart().forEach(pair -> said.add(pair.why()));
        library.rules().stream()
                .filter(rule -> rule.asks().stream().anyMatch(ask -> ask.word().startsWith("film.")))
                .forEach(rule -> said.addAll(List.of(rule.title(), rule.reason())));
        said.remove("");
        assertThat(said).isSubsetOf(words.sentences().keySet());
    }

    private static Stream<StageTerms> terms(Stage stage, List<Fact> facts) {
        Stream<StageTerms> byInput = stage.inputs().stream()
                .flatMap(input ->
                        input.samples().stream().map(value -> stage.terms().of(Map.of(input.name(), value), Map.of())));
        Stream<StageTerms> byFact = facts.stream()
                .flatMap(fact ->
                        fact.samples().stream().map(value -> stage.terms().of(Map.of(), Map.of(fact.id(), value))));
        return Stream.of(Stream.of(stage.usualTerms()), byInput, byFact).flatMap(s -> s);
    }

    private static List<String> printed(StageTerms terms) {
        StageTerms.Hazards hazards = terms.hazards();
        return Stream.of(
                        terms.where().equipment().stream().map(StageTerms.Named::id),
                        terms.checks().stream().map(StageTerms.Note::text),
                        terms.mistakes().stream().map(StageTerms.Note::text),
                        terms.standing().stream().map(StageTerms.Standing::why),
                        hazards.wear().stream().map(StageTerms.Named::id),
                        hazards.keepApart().stream().flatMap(apart -> Stream.of(apart.what(), apart.why())))
                .flatMap(s -> s)
                .toList();
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

    /** A sentence that nobody says any more is a leftover. */
    @Test
    void everySentenceIsSaidByAScriptAnItemAShopOrTheUsualPairsThatMustNotMeet() throws Exception {
        StringBuilder said = new StringBuilder(
                Files.readString(Path.of("src", "main", "resources", "baywright", "safety", "usual.json")));
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
