package baywright.swing.plugins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import baywright.swing.api.SuitePlugin;
import baywright.swing.plugins.PluginJar.Origin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoadedJarTest {

    @TempDir
    private Path folder;

    @Test
    void theExampleOfTheDemoIsBuiltAndFound() throws IOException {
        Path jar = Jars.ofFolder(Path.of("..", "demo", "example-plugin", "src"), folder.resolve("roof-work.jar"));
        try (LoadedJar loaded = load(jar)) {
            assertThat(loaded.faults()).isEmpty();
            assertThat(loaded.plugins()).extracting(p -> p.info().id()).containsExactly("roof-work");
        }
    }

    @Test
    void aPluginSeesTheDoorAndTheCoreButNotTheWindow() throws IOException {
        Path jar = Jars.ofClass(
                folder,
                "Peeping",
                Jars.info("peeping") + "public void start(PluginContext suite) throws Exception {"
                        + "Class.forName(\"baywright.plan.Plan\"); Class.forName(\"baywright.swing.api.Desk\");"
                        + "Class.forName(\"baywright.swing.plugins.LoadedJar\"); }");
        try (LoadedJar loaded = load(jar)) {
            SuitePlugin plugin = loaded.plugins().get(0);
            assertThat(catchThrowable(() -> plugin.start(null)))
                    .isInstanceOf(ClassNotFoundException.class)
                    .hasMessage("baywright.swing.plugins.LoadedJar");
        }
    }

    @Test
    void theSuitesOwnPluginsAreNotThoseOfAJar() throws IOException {
        Path jar = Jars.ofClass(folder, "Alone", Jars.info("alone") + "public void start(PluginContext suite) {}");
        try (LoadedJar loaded = load(jar)) {
            assertThat(loaded.plugins()).hasSize(1);
        }
    }

    @Test
    void twoJarsWithAClassOfOneNameDoNotMeet() throws IOException {
        Path one = Jars.ofClass(folder, "Same", Jars.info("first") + "public void start(PluginContext suite) {}");
        Path first = Files.move(one, folder.resolve("first.jar"));
        Path second = Jars.ofClass(folder, "Same", Jars.info("second") + "public void start(PluginContext suite) {}");
        try (LoadedJar a = load(first);
                LoadedJar b = load(second)) {
            assertThat(a.plugins().get(0).info().id()).isEqualTo("first");
            assertThat(b.plugins().get(0).info().id()).isEqualTo("second");
        }
    }

    @Test
    void aJarThatIsNoneSaysSo() throws IOException {
        Path jar = Files.writeString(folder.resolve("torn.jar"), "PK and nothing more");
        try (LoadedJar loaded = load(jar)) {
            assertThat(loaded.plugins()).isEmpty();
            assertThat(loaded.faults()).singleElement().asString().startsWith("torn.jar: ");
        }
    }

    @Test
    void aJarWithoutAPluginSaysWhatIsMissing() throws IOException {
        Path jar = Jars.build(folder.resolve("empty.jar"), Map.of("bad/Empty.java", "package bad; class Empty {}"), "");
        try (LoadedJar loaded = load(jar)) {
            assertThat(loaded.faults())
                    .containsExactly("empty.jar: no plug-in is in it. A plug-in names its class in"
                            + " META-INF/services/baywright.swing.api.SuitePlugin.");
        }
    }

    @Test
    void aConstructorThatThrowsSpoilsNoOtherPluginOfTheJar() throws IOException {
        String good = "package bad; import baywright.swing.api.*; public class Good implements SuitePlugin {"
                + Jars.info("good") + "public void start(PluginContext suite) {} }";
        String bad = "package bad; import baywright.swing.api.*; public class Bad implements SuitePlugin {"
                + "public Bad() { throw new IllegalStateException(\"no film gauge\"); }" + Jars.info("bad")
                + "public void start(PluginContext suite) {} }";
        Path jar = Jars.build(
                folder.resolve("both.jar"),
                Map.of("bad/Good.java", good, "bad/Bad.java", bad),
                "bad.Bad\nbad.Gone\nbad.Good\n");
        try (LoadedJar loaded = load(jar)) {
            assertThat(loaded.plugins()).extracting(p -> p.info().id()).containsExactly("good");
            assertThat(loaded.faults()).hasSize(2);
            assertThat(loaded.faults().get(0)).contains("no film gauge");
            assertThat(loaded.faults().get(1)).contains("bad.Gone");
        }
    }

    @Test
    void aJarInBothFoldersIsTheUsers() throws IOException {
        Path user = Files.createDirectory(folder.resolve("user"));
        Path shop = Files.createDirectory(folder.resolve("shop"));
        Files.writeString(user.resolve("a.jar"), "one");
        Files.writeString(shop.resolve("b.jar"), "one");
        Files.writeString(shop.resolve("c.jar"), "two");
        Files.writeString(shop.resolve("readme.txt"), "no jar");
        Files.createSymbolicLink(shop.resolve("d.jar"), shop.resolve("c.jar"));
        PluginFolders.Found found = new PluginFolders(Optional.of(user), Optional.of(shop)).look();
        assertThat(found.jars()).extracting(PluginJar::name).containsExactly("a.jar", "c.jar");
        assertThat(found.jars()).extracting(PluginJar::origin).containsExactly(Origin.USER, Origin.WORKSPACE);
        assertThat(found.unusable()).isEmpty();
    }

    @Test
    void aFolderThatDoesNotExistIsEmpty() {
        assertThat(new PluginFolders(Optional.of(folder.resolve("none")), Optional.empty())
                        .look()
                        .jars())
                .isEmpty();
    }

    private static LoadedJar load(Path jar) throws IOException {
        return LoadedJar.of(
                new PluginJar(jar, Origin.USER, PluginFolders.sha256(jar)), LoadedJarTest.class.getClassLoader());
    }
}
