package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.DemoSite;
import baywright.workspace.Job;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenShopTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final String NEW = "stages/own/new.groovy";

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    @BeforeAll
    static void open() throws Exception {
        DemoSite.copy("millrace-works", folder);
        shop = OpenShop.open(folder, CLOCK, DemoSite.SCRIPTS);
    }

    @Test
    void aFreshOneHasNothingUnsavedAndNothingWrong() {
        assertThat(shop.unsaved()).isEmpty();
        assertThat(shop.isStale()).isFalse();
        assertThat(shop.isSound()).isTrue();
        assertThat(shop.site().library().stages())
                .hasSameSizeAs(
                        Site.open(folder, CLOCK, DemoSite.SCRIPTS).library().stages());
    }

    @Test
    void editsAreNamedAsUnsavedUntilTheyAreTakenBack() {
        String script = shop.texts().firstKey();
        OpenShop edited = shop.withText(NEW, "// new\n").withoutText(script).withoutJob("green-estate");
        assertThat(edited.unsaved()).containsExactlyInAnyOrder("jobs/green-estate", NEW, script);
        assertThat(edited.withoutText(NEW)
                        .withText(script, shop.texts().get(script))
                        .withJob(shop.job("green-estate").orElseThrow())
                        .unsaved())
                .isEmpty();
    }

    @Test
    void aStageOfAnUnsavedScriptIsInTheLibraryAfterTheReload() {
        String text = shop.texts()
                .get(
                        shop.site().library().stages().get(0).place().file().startsWith("stages/")
                                ? shop.site().library().stages().get(0).place().file()
                                : "stages/"
                                        + shop.site()
                                                .library()
                                                .stages()
                                                .get(0)
                                                .place()
                                                .file());
        String id = shop.site().library().stages().get(0).id();
        OpenShop edited = shop.withText(NEW, text.replace("'" + id + "'", "'" + id + "-again'"));
        assertThat(edited.isStale()).isTrue();
        OpenShop loaded = edited.reloaded(DemoSite.SCRIPTS);
        assertThat(loaded.isStale()).isFalse();
        assertThat(loaded.site().library().stageById()).containsKey(id + "-again");
        assertThat(loaded.withoutText(NEW).withLibraryOf(loaded).isStale()).isTrue();
    }

    @Test
    void whileScriptsHaveErrorsTheLastLibraryWithoutAnyIsUsed() {
        String script = shop.texts().firstKey();
        OpenShop broken = shop.withText(script, "stage(").reloaded(DemoSite.SCRIPTS);
        OpenShop again = broken.withText(script, "stage('").reloaded(DemoSite.SCRIPTS);
        assertThat(List.of(broken, again)).allSatisfy(s -> {
            assertThat(s.isSound()).isFalse();
            assertThat(s.problems()).anyMatch(p -> p.place().file().equals(script));
            assertThat(s.site().library()).isSameAs(shop.site().library());
        });
        OpenShop mended = again.withText(script, shop.texts().get(script)).reloaded(DemoSite.SCRIPTS);
        assertThat(mended.isSound()).isTrue();
        assertThat(mended.site().library().stages())
                .hasSameSizeAs(shop.site().library().stages());
    }

    @Test
    void aShopWhoseScriptsHaveErrorsOpensWithTheRestAndSaysSo(@TempDir Path other) throws Exception {
        DemoSite.copy("millrace-works", other);
        String script = shop.texts().firstKey();
        Files.writeString(other.resolve(script), "stage(");
        OpenShop opened = OpenShop.open(other, CLOCK, DemoSite.SCRIPTS);
        assertThat(opened.isSound()).isFalse();
        assertThat(opened.problems()).anyMatch(p -> p.place().file().equals(script));
        assertThat(opened.jobs()).isNotEmpty();
    }

    @Test
    void jobsAreJudgedBesideTheEditedJobsNotThoseOnDisk() {
        List<Job> others =
                shop.jobs().stream().filter(j -> !j.id().equals("green-estate")).toList();
        OpenShop alone = shop;
        for (Job other : others) {
            alone = alone.withoutJob(other.id());
        }
        assertThat(alone.site().jobs()).extracting(Job::id).containsExactly("green-estate");
        assertThat(alone.site()
                        .judge(alone.job("green-estate").orElseThrow())
                        .safe()
                        .others())
                .isEmpty();
    }

    @Test
    void noScriptMayStandOutsideOfTheLibrary() {
        for (String name :
                List.of("shop.json", "stages/../x.groovy", "stages/x.txt", "stages//x.groovy", "/x.groovy")) {
            assertThatThrownBy(() -> shop.withText(name, "")).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aShopWithAMistakeInItsFilesIsRefusedWithThePlace(@TempDir Path other) throws Exception {
        DemoSite.copy("millrace-works", other);
        Files.writeString(other.resolve("shop.json"), "{");
        assertThatThrownBy(() -> OpenShop.open(other, CLOCK, DemoSite.SCRIPTS))
                .isInstanceOf(SiteTrouble.class)
                .hasMessageStartingWith("shop.json:1:2:");
    }
}
