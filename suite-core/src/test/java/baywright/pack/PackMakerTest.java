package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.script.Problem;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a workspace puts into a pack, and what it keeps to itself. */
class PackMakerTest {

    private static final String POLISH = """
            stage('polish') {
                title 'Polish'
                family 'correction'
                worksOn 'paint'
                before { needs 'washed', why: 'loose grit scratches' }
                after { clears 'dull' }
                time { attended 30.min, 40.min, 60.min }
                uses { item 'compound', 40.ml }
                hazards { from 'compound' }
            }
            """;

    @TempDir
    private Path folder;

    private Workspace workspace;

    @BeforeEach
    void makeWorkspace() throws IOException {
        write(
                "stages/states.groovy",
                Packs.STATES + "family 'correction', title: 'Correction'\n" + "state 'dull', means: 'without gloss'\n");
        write("stages/rinse.groovy", Packs.RINSE);
        write("stages/polish.groovy", POLISH);
        write("stages/notes.txt", "the site's own");
        write("items.json", """
                {"schema": "baywright/items/1", "currency": "EUR", "items": [
                  {"id": "shampoo", "title": "Shampoo", "pack": "5000 ml", "price": 29.17, "hazards": ["H319"],
                   "protection": ["eye shield"], "note": "30 to 40 ml a car"},
                  {"id": "compound", "title": "Compound", "pack": "1000 ml", "price": 31.53}]}
                """);
        Files.copy(Path.of("..", "demo", "saltmarsh-quay", "shop.json"), folder.resolve("shop.json"));
        workspace = Workspace.open(folder);
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static PackMaker.About about(boolean prices) {
        return new PackMaker.About("gentle-wash", Version.of("1.0.0"), "Quay", "a test", "CC0-1.0", List.of(), prices);
    }

    private PackMaker.Made make(PackMaker.Selection selection) {
        return PackMaker.make(workspace, selection, about(false), List.of());
    }

    @Test
    void everythingIsScriptsItemsAndTexts() {
        PackMaker.Made made = make(PackMaker.Selection.EVERYTHING);

        assertThat(made.errors()).isEmpty();
        assertThat(made.pack().paths())
                .containsExactly("items.json", "stages/polish.groovy", "stages/rinse.groovy", "stages/states.groovy");
    }

    /** Neither prices nor rates, people, bays and tax, which stand in shop.json. */
    @Test
    void whatIsTheSitesOwnStaysThere() {
        String all = text(make(PackMaker.Selection.EVERYTHING).pack());

        assertThat(all)
                .contains("H319", "eye shield", "30 to 40 ml a car", "5000 ml")
                .doesNotContain("31.53", "29.17", "EUR", "Marramgrass", "wage", "VAT");
    }

    @Test
    void pricesGoAlongWhenTheyAreAskedFor() {
        Pack pack = PackMaker.make(workspace, PackMaker.Selection.EVERYTHING, about(true), List.of())
                .pack();

        assertThat(text(pack)).contains("31.53", "29.17", "EUR").doesNotContain("Marramgrass", "wage", "VAT");
        assertThat(pack.manifest().prices()).isTrue();
    }

    private static String text(Pack pack) {
        return new String(PackFile.bytes(pack), StandardCharsets.UTF_8);
    }

    @Test
    void aFamilyBringsItsStagesItsItemsAndTheDeclarations() {
        PackMaker.Made made = make(new PackMaker.Selection(Set.of("wash"), Set.of()));

        assertThat(made.errors()).isEmpty();
        assertThat(made.pack().paths()).containsExactly("items.json", "stages/rinse.groovy", "stages/states.groovy");
        assertThat(made.pack().items().items())
                .extracting(item -> item.likeness().id())
                .containsExactly("shampoo");
    }

    @Test
    void aRuleThatSpeaksOfOtherStagesIsLeftOutAndTold() throws IOException {
        write("stages/rule.groovy", """
                rule('no-polish-on-dull-paint') {
                    title 'Look first'
                    reason 'dull paint may be worn through'
                    at stages: ['polish']
                    forbids { holds('dull') }
                }
                """);
        workspace = Workspace.open(folder);

        PackMaker.Made made = make(new PackMaker.Selection(Set.of(), Set.of("rinse")));

        assertThat(made.errors()).isEmpty();
        assertThat(made.leftOut()).containsExactly("stages/rule.groovy");
        assertThat(make(PackMaker.Selection.EVERYTHING).leftOut()).isEmpty();
    }

    @Test
    void aScriptWithAnErrorIsToldAndNotLeftOut() throws IOException {
        write("stages/broken.groovy", "state 'x'\n");
        workspace = Workspace.open(folder);

        assertThat(make(new PackMaker.Selection(Set.of(), Set.of("rinse"))).errors())
                .extracting(problem -> problem.place().file())
                .containsExactly("stages/broken.groovy");
    }

    @Test
    void theSameWorkspaceGivesTheSameBytes() {
        assertThat(PackFile.bytes(make(PackMaker.Selection.EVERYTHING).pack()))
                .isEqualTo(PackFile.bytes(make(PackMaker.Selection.EVERYTHING).pack()));
    }

    @Test
    void anUnknownFamilyOrStageIsTold() {
        assertThatThrownBy(() -> make(new PackMaker.Selection(Set.of("wahs"), Set.of())))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage("no family of the workspace is called 'wahs'; nearest is 'wash'");
        assertThatThrownBy(() -> make(new PackMaker.Selection(Set.of(), Set.of("rinze"))))
                .hasMessage("no stage of the workspace is called 'rinze'; nearest is 'rinse'");
    }

    /** The fence: what a script may not say is a finding with its place, and nothing of it is run. */
    @Test
    void scriptsOfAPackAreReadInsideTheFence() {
        var content = Packs.content();
        content.put("stages/evil.groovy", Packs.bytes("System.exit(1)\nnew File('/etc/passwd').text\n"));

        PackScripts.Checked checked = PackScripts.check(Packs.of(content), List.of());

        assertThat(checked.errors())
                .isNotEmpty()
                .allMatch(problem -> problem.place().file().equals("stages/evil.groovy"));
        assertThat(checked.library().stageById()).containsOnlyKeys("rinse");
    }

    @Test
    void namesOfAPackThatIsNeededAreKnownWhenItIsBeside() {
        var base = Packs.content();
        base.keySet().removeIf(path -> !path.equals("stages/states.groovy"));
        var wash = Packs.content();
        wash.remove("stages/states.groovy");

        assertThat(PackScripts.check(Packs.of(wash), List.of()).errors())
                .extracting(Problem::toString)
                .contains("stages/rinse.groovy:3:12: no family is called 'wash'");
        assertThat(PackScripts.check(Packs.of(wash), List.of(Packs.of(base))).errors())
                .isEmpty();
    }

    @Test
    void shapesAndWordsAreReadAsWell() {
        var content = Packs.content();
        content.put("stages/shapes.json", Packs.bytes("{\"schema\": \"baywright/shapes/1\", \"shapes\": 5}"));

        assertThat(PackScripts.check(Packs.of(content), List.of()).errors())
                .extracting(Problem::toString)
                .containsExactly("stages/shapes.json:1:44: shapes: met the number 5; give a list in square brackets");
    }
}
