package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import baywright.plan.Plan;
import baywright.workspace.EditsJournal;
import baywright.workspace.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SavingTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final String JOB = "green-estate";
    private static final String OTHER = "hurried-hatch";
    private static final String NEW = "stages/own/new.groovy";

    @TempDir
    private Path folder;

    private OpenShop shop;

    @BeforeEach
    void open() throws Exception {
        DemoSite.copy("millrace-works", folder);
        thinOut(folder.resolve("stages"));
        shop = opened();
    }

    /** A few scripts do: what is saved does not depend on whether they fit together. */
    private static void thinOut(Path stages) throws IOException {
        try (Stream<Path> all = Files.walk(stages)) {
            for (Path script : all.filter(p -> p.toString().endsWith(".groovy"))
                    .sorted()
                    .skip(3)
                    .toList()) {
                Files.delete(script);
            }
        }
    }

    private OpenShop opened() {
        return OpenShop.open(folder, CLOCK, DemoSite.SCRIPTS);
    }

    private static Job shorter(OpenShop in, String id) {
        Job job = in.job(id).orElseThrow();
        var steps = new ArrayList<>(job.plan().steps());
        steps.remove(steps.size() - 1);
        return job.withPlan(new Plan(steps));
    }

    private String gone() {
        return shop.texts().lastKey();
    }

    private OpenShop edited() {
        return shop.withJob(shorter(shop, JOB))
                .withText(NEW, "// new\n")
                .withoutText(gone())
                .withText(shop.texts().firstKey(), shop.texts().get(shop.texts().firstKey()) + "// more\n");
    }

    @Test
    void whatWasEditedIsOnDiskAndNothingIsUnsavedAfterwards() {
        Saving.Outcome outcome = Saving.save(edited(), Saving.Clashes.LEAVE);
        assertThat(outcome.refused()).isEmpty();
        assertThat(outcome.clashes()).isEmpty();
        assertThat(outcome.written()).hasSize(4);
        assertThat(outcome.shop().unsaved()).isEmpty();
        OpenShop again = opened();
        assertThat(again.texts())
                .isEqualTo(outcome.shop().texts())
                .containsKey(NEW)
                .doesNotContainKey(gone());
        assertThat(again.job(JOB)).isEqualTo(outcome.shop().job(JOB));
        assertThat(again.job(JOB).orElseThrow().plan())
                .isEqualTo(shorter(shop, JOB).plan());
    }

    @Test
    void whatNobodyEditedStaysByteForByte() throws Exception {
        var before = bytes();
        Saving.save(shop.withText(NEW, "// new\n"), Saving.Clashes.LEAVE);
        Files.delete(folder.resolve(NEW));
        assertThat(bytes()).isEqualTo(before);
    }

    private java.util.Map<String, String> bytes() throws IOException {
        java.util.Map<String, String> all = new java.util.TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.getFileName().toString().startsWith(".baywright")) {
                    all.put(folder.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return all;
    }

    @Test
    void aNewJobIsAddedAndARemovedOneGoes() {
        OpenShop without = shop.withoutJob(OTHER);
        Saving.Outcome outcome = Saving.save(without, Saving.Clashes.LEAVE);
        assertThat(outcome.refused()).isEmpty();
        assertThat(opened().job(OTHER)).isEmpty();
        Saving.Outcome back = Saving.save(outcome.shop().withJob(shop.job(OTHER).orElseThrow()), Saving.Clashes.LEAVE);
        assertThat(back.refused()).isEmpty();
        assertThat(opened().job(OTHER)).isPresent();
        assertThat(back.shop().unsaved()).isEmpty();
    }

    @Test
    void whatOthersChangedMeanwhileIsTakenOverAndTold() {
        Saving.save(opened().withJob(shorter(shop, OTHER)), Saving.Clashes.LEAVE);
        Saving.Outcome outcome = Saving.save(edited(), Saving.Clashes.LEAVE);
        assertThat(outcome.taken()).containsExactly("jobs/" + OTHER);
        assertThat(outcome.shop().job(OTHER).orElseThrow().plan())
                .isEqualTo(shorter(shop, OTHER).plan());
        assertThat(outcome.shop().unsaved()).isEmpty();
    }

    private void othersChange() throws IOException {
        Files.writeString(folder.resolve(shop.texts().firstKey()), "// theirs\n");
    }

    @Test
    void aClashIsLeftAloneUntilItIsDecidedAndTheRestIsSaved() throws Exception {
        othersChange();
        String name = shop.texts().firstKey();
        Saving.Outcome outcome = Saving.save(edited(), Saving.Clashes.LEAVE);
        assertThat(outcome.clashes()).containsExactly(name);
        assertThat(outcome.shop().unsaved()).containsExactly(name);
        assertThat(folder.resolve(name)).hasContent("// theirs\n");
        assertThat(folder.resolve(NEW)).exists();
        assertThat(outcome.shop().texts().get(name)).endsWith("// more\n");
        assertThat(Saving.save(outcome.shop(), Saving.Clashes.LEAVE).clashes()).containsExactly(name);
        assertThat(Saving.save(outcome.shop(), Saving.Clashes.THEIRS).shop().unsaved())
                .isEmpty();
        assertThat(folder.resolve(name)).hasContent("// theirs\n");
    }

    @Test
    void keepingMineWritesItAndPutsTheirsAside() throws Exception {
        othersChange();
        String name = shop.texts().firstKey();
        Saving.Outcome outcome = Saving.save(edited(), Saving.Clashes.MINE);
        assertThat(outcome.shop().unsaved()).isEmpty();
        assertThat(folder.resolve(name)).content().endsWith("// more\n");
        assertThat(kept()).containsExactly("// theirs\n");
    }

    @Test
    void keepingTheirsTakesItAndPutsMineAside() throws Exception {
        othersChange();
        String name = shop.texts().firstKey();
        Saving.Outcome outcome = Saving.save(edited(), Saving.Clashes.THEIRS);
        assertThat(outcome.shop().unsaved()).isEmpty();
        assertThat(outcome.shop().texts().get(name)).isEqualTo("// theirs\n");
        assertThat(folder.resolve(name)).hasContent("// theirs\n");
        assertThat(kept()).hasSize(1).allMatch(text -> text.endsWith("// more\n"));
    }

    @Test
    void aClashingJobIsPutAsideWithItsReadings() throws Exception {
        Saving.save(opened().withJob(shorter(shop, JOB)), Saving.Clashes.LEAVE);
        Job twice = shorter(shop.withJob(shorter(shop, JOB)), JOB);
        Saving.Outcome outcome = Saving.save(shop.withJob(twice), Saving.Clashes.MINE);
        assertThat(outcome.refused()).isEmpty();
        assertThat(opened().job(JOB).orElseThrow().plan()).isEqualTo(twice.plan());
        assertThat(kept()).hasSize(2);
    }

    private List<String> kept() throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder.resolve(".baywright/kept"))) {
            for (Path file : files.toList()) {
                texts.add(Files.readString(file));
            }
        }
        return texts;
    }

    @Test
    void notedEditsComeBackAsTheyWere() {
        OpenShop edited = edited().withoutJob(OTHER);
        EditsJournal journal = new EditsJournal(folder);
        journal.write(UnsavedEdits.of(edited));
        OpenShop back = UnsavedEdits.restore(opened(), journal.read().orElseThrow());
        assertThat(back.unsaved()).isEqualTo(edited.unsaved());
        assertThat(back.texts()).isEqualTo(edited.texts());
        assertThat(back.jobs()).isEqualTo(edited.jobs());
        journal.write(UnsavedEdits.of(opened()));
        assertThat(journal.read()).isEmpty();
    }

    @Test
    void aNoteThatNamesOtherFilesIsNotFollowed() throws Exception {
        Files.createDirectories(folder.resolve(".baywright"));
        Files.writeString(
                folder.resolve(".baywright/unsaved.json"),
                "{\"kind\":\"unsaved\",\"version\":1,\"files\":{\"../evil.groovy\":\"x\",\"stages/../../e.groovy\":\"x\","
                        + "\"/etc/x\":\"x\",\"stages/good.groovy\":\"x\"},\"gone\":[\"../x\",\"jobs/../..\"]}");
        EditsJournal.Edits edits = new EditsJournal(folder).read().orElseThrow();
        assertThat(edits.files().keySet()).containsExactly("stages/good.groovy");
        assertThat(edits.gone()).isEmpty();
    }
}
