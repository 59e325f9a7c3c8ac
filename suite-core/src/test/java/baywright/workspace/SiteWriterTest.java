package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.library.Item;
import baywright.vehicle.Reading;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saving the shop, the price list and readings, and adding, copying and removing jobs. */
class SiteWriterTest {

    @TempDir
    private Path folder;

    private Mill mill;

    @BeforeEach
    void copyTheFixture() {
        mill = Mill.in(folder);
    }

    private static Shop named(Shop shop, String name) {
        return new Shop(
                shop.id(),
                name,
                shop.timeZone(),
                shop.language(),
                shop.tax(),
                shop.rates(),
                shop.quote(),
                shop.film(),
                shop.bays(),
                shop.people(),
                shop.safety(),
                shop.rules(),
                shop.letterhead(),
                shop.times());
    }

    private Workspace rename(Workspace read, String name, Disk disk) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(read, disk)) {
            return writer.save(read, named(read.shop().orElseThrow(), name));
        }
    }

    private JobFile estate() {
        return mill.open().job("green-estate").orElseThrow();
    }

    // shop

    @Test
    void aChangedShopIsOneChangedLine() {
        mill.replace("shop.json", "\"charge\": {", "\"charge\": { \"odd\": 1.00,");
        String before = mill.text("shop.json");

        Workspace saved = rename(mill.open(), "The Other Mill", Disk.REAL);

        assertThat(mill.text("shop.json")).isEqualTo(before.replace("The Mill", "The Other Mill"));
        assertThat(saved.shop().orElseThrow().name()).isEqualTo("The Other Mill");
        assertThat(saved.jobs()).hasSize(2);
    }

    @Test
    void anUnchangedShopIsNotWritten() {
        Workspace read = mill.open();

        assertThat(rename(read, "The Mill", FailingDisk.after(0, new IOException("asked"))))
                .isSameAs(read);
    }

    @Test
    void someoneElsesShopIsNotOverwritten() {
        Workspace read = mill.open();
        mill.replace("shop.json", "\"wage\": 16", "\"wage\": 17");

        assertThatThrownBy(() -> rename(read, "Mine", Disk.REAL))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage("shop.json: not saved, someone else has changed the file since it was read; open the"
                        + " workspace again and repeat the change");
        assertThat(mill.text("shop.json")).contains("\"wage\": 17").contains("The Mill");
    }

    @Test
    void aShopThatCouldNotBeReadBackIsNotSaved() {
        assertThatThrownBy(() -> rename(mill.open(), " ", Disk.REAL))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage("shop.json: not saved, name: met an empty text; give a text that people read");
        assertThat(mill.text("shop.json")).contains("The Mill");
    }

    /** What protects people is not dropped without a reason, not by a program either. */
    @Test
    void aPairKeptApartIsNotDroppedWithoutAReason() {
        Workspace read = mill.open();
        Shop shop = read.shop().orElseThrow();
        var safety = shop.safety();
        Shop careless = new Shop(
                shop.id(),
                shop.name(),
                shop.timeZone(),
                shop.language(),
                shop.tax(),
                shop.rates(),
                shop.quote(),
                shop.film(),
                shop.bays(),
                shop.people(),
                new baywright.safety.SafetySettings(
                        safety.vibration(),
                        safety.noise(),
                        safety.day(),
                        safety.air(),
                        safety.climate(),
                        List.of(),
                        safety.light()),
                shop.rules(),
                shop.letterhead(),
                shop.times());

        try (WorkspaceWriter writer = WorkspaceWriter.open(read)) {
            assertThatThrownBy(() -> writer.save(read, careless))
                    .isInstanceOf(WorkspaceException.class)
                    .hasMessageContaining("severity: drops what protects people; say the reason in why");
        }
    }

    // price list

    @Test
    void aDearerItemIsOneChangedLine() {
        String before = mill.text("items.json");
        Workspace read = mill.open();
        List<Item> items = new ArrayList<>(read.items());
        Item tape = items.get(1);
        items.set(
                1,
                new Item(
                        tape.id(),
                        tape.title(),
                        tape.pack(),
                        new BigDecimal("3.45"),
                        tape.spoils(),
                        tape.density(),
                        tape.hazards(),
                        tape.protection(),
                        tape.groups(),
                        tape.note()));

        try (WorkspaceWriter writer = WorkspaceWriter.open(read)) {
            Workspace saved = writer.save(read, items);

            assertThat(saved.items().get(1).price()).isEqualByComparingTo("3.45");
        }
        assertThat(mill.text("items.json").replace(" ", ""))
                .isEqualTo(before.replace("3.2 }", "3.45 }").replace(" ", ""));
    }

    @Test
    void aPriceListThatCouldNotBeReadIsNotOverwritten() {
        mill.replace("items.json", "\"pack\": \"50 m\"", "\"pack\": 50");
        Workspace read = mill.open();

        try (WorkspaceWriter writer = WorkspaceWriter.open(read)) {
            assertThatThrownBy(() -> writer.save(read, List.of()))
                    .hasMessage(
                            "items.json: not saved, the file could not be read; mend it and open the workspace again");
        }
    }

    // readings

    private static Job withReadings(Job job, String zone, String... um) {
        Map<String, ZoneSurvey> zones = new HashMap<>(job.survey().zones());
        List<Reading> readings = Stream.of(um)
                .map(number -> new Reading(new BigDecimal(number), "typed"))
                .toList();
        zones.merge(zone, ZoneSurvey.NOTHING.withReadings(readings), (old, now) -> old.withReadings(readings));
        return job.withSurvey(new Survey(job.survey().facts(), job.survey().states(), zones));
    }

    private JobFile saveReadings(JobFile file, String zone, String... um) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            return writer.saveReadings(file, withReadings(file.job().orElseThrow(), zone, um));
        }
    }

    @Test
    void readingsAreSavedBesideTheirNotes() {
        JobFile saved = saveReadings(estate(), "bonnet", "108.5", "112", "109");

        assertThat(mill.text(Mill.READINGS))
                .isEqualTo("zone,um,note\nbonnet,108.5,\nbonnet,112,\"near the edge, left\"\nbonnet,109,\nroof,124,\n");
        assertThat(saved.job().orElseThrow().survey().zone("bonnet").readings())
                .extracting(Reading::source)
                .containsExactly(Mill.READINGS + ":2", Mill.READINGS + ":3", Mill.READINGS + ":4");
    }

    @Test
    void aJobWithoutReadingsGetsAFileOfThem() {
        JobFile vans = mill.open().job("vans").orElseThrow();
        String zone = mill.open().shapes().get(0).zones().get(0).id();

        saveReadings(vans, zone, "120.25");

        assertThat(mill.text("jobs/vans/readings.csv")).isEqualTo("zone,um\n" + zone + ",120.25\n");
        assertThatThrownBy(() -> saveReadings(vans, zone, "121"))
                .hasMessageStartingWith("jobs/vans/readings.csv: not saved, someone else has changed the file");
    }

    @Test
    void aReadingThatNoGaugeGivesIsNotSaved() {
        assertThatThrownBy(() -> saveReadings(estate(), "bonnet", "0.0001"))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith(Mill.READINGS + ": not saved, um: the text '0' is no film thickness; ");
        assertThatThrownBy(() -> saveReadings(estate(), "bonet", "100"))
                .hasMessage(Mill.READINGS
                        + ": not saved, zone: 'bonet' is no zone of the shape 'estate'; nearest is 'bonnet'");
        assertThat(mill.open().problems()).isEmpty();
    }

    @Test
    void theSameReadingsTouchNothing() {
        JobFile file = estate();

        assertThat(saveReadings(file, "roof", "124.0")).isSameAs(file);
    }

    // jobs

    private static Job as(Job job, String id) {
        JobParts parts = new JobParts(job);
        parts.id = id;
        return parts.job();
    }

    @Test
    void anAddedJobIsReadAsItWasGiven() {
        Job job = as(estate().job().orElseThrow(), "blue-estate");
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            JobFile added = writer.add(job);

            assertThat(added.problems()).isEmpty();
            assertThat(added.job().orElseThrow().plan().steps())
                    .extracting(baywright.plan.Step::stage)
                    .isEqualTo(job.plan().steps().stream()
                            .map(baywright.plan.Step::stage)
                            .toList());
            assertThat(added.job()
                            .orElseThrow()
                            .survey()
                            .zone("roof")
                            .readings()
                            .get(0)
                            .micrometres())
                    .isEqualByComparingTo("124");
            assertThat(mill.open().jobs()).hasSize(3);
            assertThatThrownBy(() -> writer.add(job))
                    .hasMessage("jobs/blue-estate/job.json: not saved, the job id 'blue-estate' is already used by"
                            + " jobs/blue-estate; give this job another id");
            assertThatThrownBy(() -> writer.add(as(job, "Blue estate")))
                    .hasMessageStartingWith(
                            "jobs/Blue estate/job.json: not saved, id: the text 'Blue estate' is no id");
        }
    }

    @Test
    void aCopyKeepsWhatTheProgramDoesNotKnow() {
        mill.replace(Mill.JOB, "\"cap\": 850,", "\"mood\": \"hurried\",\n  \"cap\": 850.00,");
        JobFile file = estate();
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            writer.copy(file, as(file.job().orElseThrow(), "blue-estate"));
        }

        assertThat(mill.text("jobs/blue-estate/job.json"))
                .isEqualTo(mill.text(Mill.JOB).replace("\"id\": \"green-estate\"", "\"id\": \"blue-estate\""));
        assertThat(mill.text("jobs/blue-estate/readings.csv")).isEqualTo(mill.text(Mill.READINGS));
    }

    @Test
    void aRemovedJobCanBePutBack() {
        mill.write("jobs/green-estate/photos/a.jpg", "a picture");
        String text = mill.text(Mill.JOB);
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            RemovedJob removed = writer.remove(estate());

            assertThat(mill.open().jobs()).extracting(JobFile::folder).containsExactly("vans");
            JobFile back = writer.restore(removed);
            assertThat(back.job()).isPresent();
            assertThat(mill.text(Mill.JOB)).isEqualTo(text);
            assertThat(mill.text("jobs/green-estate/photos/a.jpg")).isEqualTo("a picture");
            assertThatThrownBy(() -> writer.restore(removed))
                    .hasMessage(
                            "jobs/green-estate: not restored, there is such a folder already; rename that one first");
        }
    }

    @Test
    void aSecondJobOfTheSameNameIsRemovedBesideTheFirst() {
        Job job = estate().job().orElseThrow();
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            assertThat(writer.remove(estate()).kept()).isEqualTo("green-estate");
            RemovedJob second = writer.remove(writer.add(job));

            assertThat(second).isEqualTo(new RemovedJob("green-estate", "green-estate-2"));
        }
    }

    @Test
    void aJobThatSomeoneElseHasChangedIsNotRemoved() {
        JobFile file = estate();
        mill.replace(Mill.READINGS, "124", "125");

        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            assertThatThrownBy(() -> writer.remove(file))
                    .hasMessageStartingWith(Mill.READINGS + ": not saved, someone else has changed the file");
        }
        assertThat(estate().job()).isPresent();
    }

    @Test
    void everyStepOfAddingMayFailAndNothingIsHalfThere() throws IOException {
        Job job = as(estate().job().orElseThrow(), "blue-estate");
        int refused = 0;
        for (int i = 0; i < 5; i++) {
            try (WorkspaceWriter writer =
                    WorkspaceWriter.open(mill.open(), FailingDisk.after(i, new IOException("no luck")))) {
                writer.add(job);
            } catch (WorkspaceException e) {
                refused++;
                assertThat(e).hasMessageStartingWith("jobs/blue-estate/job.json: not saved, no luck");
            }
            assertThat(mill.open().jobs()).hasSize(2);
            try (Stream<Path> left = Files.list(mill.path("jobs"))) {
                assertThat(left.filter(AtomicFile::isLeftover)).isEmpty();
            }
        }
        assertThat(refused).isEqualTo(5);
    }

    @Test
    void whatAPowerCutLeftOfAnAddedJobIsTidiedAway() throws IOException {
        Job job = as(estate().job().orElseThrow(), "blue-estate");
        Files.createDirectories(mill.path("jobs/.saving-x.tmp"));
        mill.write("jobs/.saving-x.tmp/job.json", "{");
        assertThat(mill.open().jobs()).hasSize(2);

        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            writer.add(job);
        }

        assertThat(mill.path("jobs/.saving-x.tmp")).doesNotExist();
        assertThat(mill.open().problems()).isEmpty();
    }
}
