package baywright.swing.shell;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.pack.Consent;
import baywright.pack.PackMaker;
import baywright.pack.Version;
import baywright.share.Choice;
import baywright.share.Clash;
import baywright.share.Taking;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.api.Notice;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SuiteTest {

    private static final String NEW = "stages/own/new.groovy";

    @TempDir
    private Path folder;

    private final List<String> asked = new ArrayList<>();
    private Path shop;
    private Suite suite;
    private int answer;
    private boolean ended;

    @BeforeAll
    static void onlyWithADisplay() throws Exception {
        Screen.needed();
        run(Look.LIGHT::apply);
    }

    @BeforeEach
    void start() throws Exception {
        shop = DemoShops.copyWithFewScripts("millrace-works", folder.resolve("shop"));
        begin();
    }

    private void begin() throws Exception {
        suite = new Suite(new Suite.Surroundings(
                Clock.systemUTC(),
                DemoShops.SCRIPTS,
                UserSettings.in(folder.resolve("settings")),
                Optional.of(folder.resolve("settings")),
                Optional.of(Path.of("..").toAbsolutePath().normalize()),
                Locale.UK));
        suite.start(ServiceLoader.load(baywright.swing.api.SuitePlugin.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList());
        suite.askBy((title, text, choices) -> {
            asked.add(title);
            return answer;
        });
        suite.endBy(() -> ended = true);
        run(() -> suite.makeWindow().setVisible(true));
    }

    @AfterEach
    void end() throws Exception {
        run(suite::release);
    }

    private void open() throws Exception {
        run(() -> suite.open(shop));
        until(() -> suite.desk().state().worked().isPresent() && !suite.isBusy());
    }

    private void edit() throws Exception {
        run(() -> suite.desk().change("Add a script", s -> s.withText(NEW, "// new\n")));
        until(() -> !suite.isBusy());
    }

    private boolean unsaved() throws Exception {
        return on(() -> suite.desk().state().unsaved());
    }

    @Test
    void savingWritesAndLeavesUndoAlive() throws Exception {
        open();
        edit();
        run(suite::save);
        until(() -> !suite.isBusy());
        assertThat(shop.resolve(NEW)).hasContent("// new\n");
        assertThat(unsaved()).isFalse();
        run(suite.desk()::undo);
        assertThat(unsaved()).isTrue();
        run(suite::save);
        until(() -> !suite.isBusy());
        assertThat(shop.resolve(NEW)).doesNotExist();
    }

    @Test
    void editsOfARunThatEndedBadlyAreOfferedAndTaken() throws Exception {
        open();
        edit();
        until(() -> Files.exists(shop.resolve(".baywright/unsaved.json")));
        run(suite::release);
        begin();
        answer = 0;
        open();
        until(() -> !suite.isBusy());
        assertThat(asked).hasSize(1);
        assertThat(on(() -> suite.desk().state().shop().orElseThrow().texts())).containsKey(NEW);
        assertThat(unsaved()).isTrue();
        run(suite.desk()::undo);
        assertThat(unsaved()).isFalse();
        until(() -> !Files.exists(shop.resolve(".baywright/unsaved.json")));
    }

    @Test
    void editsThatAreLeftArePutAside() throws Exception {
        open();
        edit();
        until(() -> Files.exists(shop.resolve(".baywright/unsaved.json")));
        run(suite::release);
        begin();
        answer = 1;
        open();
        assertThat(unsaved()).isFalse();
        assertThat(shop.resolve(".baywright/unsaved.json")).doesNotExist();
        assertThat(shop.resolve(".baywright/kept")).isNotEmptyDirectory();
    }

    @Test
    void twoWindowsNoteTheirEditsApart() throws Exception {
        open();
        edit();
        until(() -> Files.exists(shop.resolve(".baywright/unsaved.json")));
        Suite first = suite;
        begin();
        open();
        assertThat(asked).isEmpty();
        edit();
        until(() -> Files.exists(shop.resolve(".baywright/unsaved-2.json")));
        run(first::release);
    }

    @Test
    void anotherStartBringsItsShopToTheFrontAndLeavesTheOneThatIsThereAlone() throws Exception {
        open();
        edit();
        run(() -> suite.comeForward(Optional.of(shop)));
        run(() -> {});
        until(() -> !suite.isBusy());
        assertThat(unsaved()).isTrue();
        Path other = DemoShops.copyWithFewScripts("saltmarsh-quay", folder.resolve("other"));
        suite.comeForward(Optional.of(other));
        until(() -> suite.desk().state().shop().orElseThrow().folder().equals(other) && !suite.isBusy());
    }

    @Test
    void aClashIsAskedAboutOnce() throws Exception {
        open();
        edit();
        Files.createDirectories(shop.resolve("stages/own"));
        Files.writeString(shop.resolve(NEW), "// theirs\n");
        answer = 2;
        run(suite::save);
        until(() -> !suite.isBusy() && !asked.isEmpty());
        until(() -> !suite.desk().state().unsaved());
        assertThat(asked).hasSize(1);
        assertThat(shop.resolve(NEW)).hasContent("// theirs\n");
        assertThat(on(() -> suite.desk().state().shop().orElseThrow().texts().get(NEW)))
                .isEqualTo("// theirs\n");
    }

    /**
     * A pack is taken into the files while a script is being edited in the window. What the pack brings and what was edited are both
     * there afterwards, and where both stand in one file the user is asked.
     */
    @Test
    void aPackTakenWhileScriptsAreEditedLosesNothing() throws Exception {
        Path script = shop.resolve("stages/words.groovy");
        try (Stream<Path> all = Files.walk(shop.resolve("stages"))) {
            for (Path path : all.filter(p -> p.toString().endsWith(".groovy")).toList()) {
                Files.delete(path);
            }
        }
        Files.writeString(script, "family 'wash', title: 'Washing'\n");
        Path giver = DemoShops.copyWithoutJobs("millrace-works", folder.resolve("giver"));
        try (Stream<Path> all = Files.walk(giver.resolve("stages"))) {
            for (Path path : all.filter(p -> p.toString().endsWith(".groovy")).toList()) {
                Files.delete(path);
            }
        }
        Files.writeString(giver.resolve("stages/more.groovy"), "state 'misted', means: 'carries a film of water'\n");
        Files.writeString(giver.resolve("stages/words.groovy"), "family 'wash', title: 'Washing by hand'\n");
        PackMaker.About about =
                new PackMaker.About("mist", Version.of("1.0.0"), "The Mill", "mist", "CC-BY-4.0", List.of(), false);
        PackMaker.Made made = PackMaker.make(Workspace.open(giver), PackMaker.Selection.EVERYTHING, about, List.of());
        assertThat(made.errors()).isEmpty();
        open();
        edit();
        String mine = "family 'wash', title: 'Washing'\n// my own note\n";
        run(() -> suite.desk().change("Edit a script", s -> s.withText("stages/words.groovy", mine)));
        until(() -> !suite.isBusy());
        Taking.of(
                        Workspace.open(shop),
                        made.pack(),
                        new Choice(Set.of(), Map.of("all", Clash.Side.THEIRS), false),
                        DemoShops.SCRIPTS)
                .take(Consent.of("Ines: read it"), Clock.systemUTC());
        answer = 0;
        run(suite.desk()::reread);
        until(() -> !suite.isBusy());
        assertThat(asked).as("both have changed one file").hasSize(1);
        assertThat(shop.resolve(NEW)).hasContent("// new\n");
        assertThat(shop.resolve("stages/more.groovy")).content().contains("misted");
        assertThat(on(() -> suite.desk().state().shop().orElseThrow().texts())).containsKeys(NEW, "stages/more.groovy");
        String kept;
        try (Stream<Path> all = Files.walk(shop)) {
            kept = all.filter(Files::isRegularFile).map(SuiteTest::textOf).collect(Collectors.joining("\n"));
        }
        assertThat(kept).contains("Washing by hand").contains("my own note");
    }

    private static String textOf(Path file) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void closingWithUnsavedEditsAsksAndSaves() throws Exception {
        open();
        edit();
        answer = 2;
        run(suite::close);
        assertThat(ended).isFalse();
        answer = 0;
        run(suite::close);
        until(() -> ended);
        assertThat(shop.resolve(NEW)).exists();
        assertThat(folder.resolve("settings/settings.json")).exists();
    }

    @Test
    void aFaultIsWrittenDownToldOnceAndWorkGoesOn() throws Exception {
        IllegalStateException fault = new IllegalStateException("meant to break");
        suite.fault(fault);
        suite.fault(fault);
        until(() -> suite.window().notices().notices().size() == 1);
        assertThat(on(() -> suite.window().notices().notices().get(0).weight())).isEqualTo(Notice.Weight.FAILED);
        assertThat(folder.resolve("settings/reports"))
                .isDirectoryContaining(f -> f.toString().endsWith(".txt"));
        open();
    }

    @Test
    void theDemoIsCopiedWithTheStandardLibrary() throws Exception {
        Path home = Path.of("..").toAbsolutePath().normalize();
        Path first = Suite.copyDemo(home, folder.resolve("demo"));
        assertThat(first.resolve("stages/shapes.json")).exists();
        assertThat(first.resolve("items.json")).exists();
        assertThat(Suite.copyDemo(home, folder.resolve("demo"))).isEqualTo(first);
    }

    @Test
    void wishesFindActionsJobsAndStages() throws Exception {
        open();
        run(() -> suite.window().wishes().setText("set"));
        assertThat(on(() -> suite.window().wishes().wishes().get(0).title())).isEqualTo("Settings…");
        String job =
                on(() -> suite.desk().state().shop().orElseThrow().jobs().get(2).title());
        run(() -> suite.window().wishes().setText(job));
        run(suite.window().wishes()::grant);
        until(() -> suite.desk().state().job().orElseThrow().title().equals(job));
    }

    @Test
    void settingsAreKeptAndADamagedFileIsPutAside() throws Exception {
        Path place = folder.resolve("other");
        UserSettings settings = UserSettings.in(place);
        settings.put("suite.look", "dark");
        settings.flush();
        assertThat(UserSettings.in(place).get("suite.look")).contains("dark");
        Files.writeString(place.resolve("settings.json"), "{\"a\":");
        assertThat(UserSettings.in(place).get("suite.look")).isEmpty();
        assertThat(place.resolve("settings-damaged.json")).exists();
    }

    @Test
    void theBestFitStandsFirst() {
        assertThat(Ranking.best("un", List.of("Tint", "Save and unload", "Undo", "Upon noon", "Zoom"), title -> title))
                .containsExactly("Undo", "Save and unload", "Upon noon")
                .doesNotContain("Zoom");
    }
}
