package baywright.swing.plugins;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.swing.api.SuitePlugin;
import baywright.swing.plugins.KnownPlugin.State;
import baywright.swing.shell.UserSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JarPluginsTest {

    private static final String GOOD = "public void start(PluginContext suite) {}";

    @TempDir
    private Path folder;

    private Path user;
    private Path shop;
    private final List<String> running = new CopyOnWriteArrayList<>();
    private final PluginConsent consent = new PluginConsent(UserSettings.inMemory());
    private final JarPlugins plugins =
            new JarPlugins(consent, new Host(), JarPluginsTest.class.getClassLoader(), Duration.ofMillis(1500));

    @BeforeEach
    void makeFolders() throws IOException {
        user = Files.createDirectory(folder.resolve("user"));
        shop = Files.createDirectory(folder.resolve("shop"));
    }

    /** Starts plug-ins and keeps their ids; what they bring is not its matter. */
    private final class Host implements JarPlugins.Host {
        @Override
        public Optional<String> start(SuitePlugin plugin) {
            try {
                plugin.start(null);
            } catch (Exception e) {
                return Optional.of("refused: " + e.getMessage());
            }
            running.add(plugin.info().id());
            return Optional.empty();
        }

        @Override
        public void drop(String id) {
            running.remove(id);
        }
    }

    @Test
    void oneThatThrowsAndOneThatHangsAreNamedAndTheRestRuns() {
        Jars.ofClass(
                user,
                "Broken",
                Jars.info("broken")
                        + "public void start(PluginContext s) { throw new IllegalStateException(\"no\"); }");
        Jars.ofClass(user, "Fine", Jars.info("fine") + GOOD);
        Jars.ofClass(
                user,
                "Stuck",
                Jars.info("stuck") + "public void start(PluginContext s) throws Exception { Thread.sleep(60_000); }");
        Jars.ofClass(
                user,
                "Unborn",
                Jars.info("unborn") + "public Unborn() throws Exception { Thread.sleep(60_000); }" + GOOD);
        Jars.ofClass(user, "Vague", "public PluginInfo info() { return null; }" + GOOD);
        Jars.ofClass(user, "Zeal", Jars.info("zeal") + GOOD);
        look();
        assertThat(running).containsExactly("fine", "zeal");
        assertThat(plugins.known())
                .extracting(KnownPlugin::state)
                .containsExactly(State.FAILED, State.RUNS, State.FAILED, State.FAILED, State.FAILED, State.RUNS);
        assertThat(plugins.known().get(0).why()).isEqualTo("refused: no");
        assertThat(plugins.known().get(2).why()).startsWith("Stuck.jar took longer than 1 seconds to start");
        assertThat(plugins.known().get(3).why()).startsWith("Unborn.jar took longer");
        assertThat(plugins.known().get(4).why()).startsWith("Vague.jar: a plug-in cannot be loaded");
    }

    @Test
    void oneThatStartsAfterItWasGivenUpIsDropped() throws InterruptedException {
        Jars.ofClass(
                user,
                "Late",
                Jars.info("late") + "public void start(PluginContext s) {"
                        + " long end = System.nanoTime() + 2_000_000_000L; while (System.nanoTime() < end) { try { Thread.sleep(50); } catch (InterruptedException e) { } } }");
        look();
        assertThat(plugins.known()).extracting(KnownPlugin::state).containsExactly(State.FAILED);
        Thread.sleep(1500);
        assertThat(running).isEmpty();
    }

    @Test
    void oneOfTheWorkspaceWaitsForAYes() {
        Jars.ofClass(shop, "Came", Jars.info("came") + GOOD);
        look();
        assertThat(running).isEmpty();
        KnownPlugin came = plugins.known().get(0);
        assertThat(came.state()).isEqualTo(State.ASKS);
        plugins.allow(came.jar(), true);
        assertThat(running).containsExactly("came");
        plugins.allow(came.jar(), false);
        assertThat(running).isEmpty();
        assertThat(plugins.known()).extracting(KnownPlugin::state).containsExactly(State.ASKS);
    }

    @Test
    void oneIsSwitchedOffAndOnAgain() {
        Jars.ofClass(user, "First", Jars.info("first") + GOOD);
        Jars.ofClass(user, "Second", Jars.info("second") + GOOD);
        look();
        KnownPlugin asShown = plugins.known().get(0);
        plugins.note("first", "a rule of it is set aside");
        assertThat(plugins.known()).extracting(KnownPlugin::why).containsExactly("a rule of it is set aside", "");
        plugins.switchOff(asShown, true);
        assertThat(running).containsExactly("second");
        assertThat(plugins.known()).extracting(KnownPlugin::state).containsExactly(State.OFF, State.RUNS);
        plugins.switchOff(plugins.known().get(0), false);
        assertThat(running).containsExactly("second", "first");
        assertThat(plugins.known()).extracting(KnownPlugin::why).containsOnly("");
    }

    @Test
    void whatIsSwitchedOffStaysOffAtTheNextStart() {
        consent.switchOff("first", true);
        Jars.ofClass(user, "First", Jars.info("first") + GOOD);
        look();
        assertThat(running).isEmpty();
        plugins.switchOff(plugins.known().get(0), false);
        assertThat(running).containsExactly("first");
    }

    @Test
    void thoseOfAnotherWorkspaceGo() {
        Path jar = Jars.ofClass(shop, "Came", Jars.info("came") + GOOD);
        Jars.ofClass(user, "Stays", Jars.info("stays") + GOOD);
        look();
        plugins.allow(
                plugins.known().stream()
                        .filter(p -> p.jar().file().equals(jar))
                        .findFirst()
                        .orElseThrow()
                        .jar(),
                true);
        plugins.look(new PluginFolders(Optional.of(user), Optional.empty()));
        assertThat(running).containsExactly("stays");
        assertThat(plugins.known()).extracting(KnownPlugin::id).containsExactly("stays");
    }

    private void look() {
        plugins.look(new PluginFolders(Optional.of(user), Optional.of(shop)));
    }
}
