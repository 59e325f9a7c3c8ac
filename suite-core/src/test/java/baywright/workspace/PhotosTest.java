package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.vehicle.Shape;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotosTest {

    /** The first eight bytes of every PNG file: ISO/IEC 15948, 5.2. */
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3};

    /** Start of image and the marker of an application segment: ISO/IEC 10918-1, table B.1. */
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0, 4, 5, 6};

    private static final JobPhoto FIRST = new JobPhoto(
            "photo-1.jpg",
            "Scratch below the handle",
            Optional.of("bonnet"),
            Optional.of(LocalDateTime.of(2026, 12, 7, 8, 10)));
    private static final JobPhoto SECOND = new JobPhoto("IMG_2.PNG", "", Optional.empty(), Optional.empty());

    @TempDir
    private Path folder;

    private Mill mill;

    @BeforeEach
    void copyTheFixture() {
        mill = Mill.in(folder);
    }

    private JobFile estate() {
        return mill.open().job("green-estate").orElseThrow();
    }

    private Job job() {
        return estate().job().orElseThrow();
    }

    private JobFile save(Job changed) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            return writer.save(estate(), changed);
        }
    }

    private String add(Path chosen, Disk disk) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open(), disk)) {
            return writer.addPhoto("green-estate", chosen);
        }
    }

    private Path file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private List<String> kept() throws IOException {
        Path photos = mill.path("jobs/green-estate/photos");
        if (Files.notExists(photos)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(photos)) {
            return all.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    // job.json

    @Test
    void photosComeBackAsTheyWereSaved() {
        Job changed = job().withPhotos(List.of(FIRST, SECOND));
        assertThat(save(changed).job()).contains(changed);
        assertThat(mill.text(Mill.JOB))
                .contains("{\"file\": \"IMG_2.PNG\"}")
                .contains("\"caption\": \"Scratch below the handle\"");
        assertThat(save(changed.withPhotos(List.of())).job().orElseThrow().photos())
                .isEmpty();
    }

    @Test
    void whatTheProgramDoesNotKnowOfAPhotoGoesWithItsFile() {
        save(job().withPhotos(List.of(FIRST, SECOND)));
        mill.replace(Mill.JOB, "{\"file\": \"IMG_2.PNG\"}", "{\"file\": \"IMG_2.PNG\", \"lens\": \"wide\"}");

        save(job().withPhotos(List.of(SECOND.withCaption("As it came"))));

        assertThat(mill.text(Mill.JOB)).contains("\"lens\": \"wide\"").contains("As it came");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../shop.json", "a/b.jpg", ".hidden.jpg", "film.csv"})
    void aNameThatCouldLeadElsewhereIsRefusedAtItsField(String name) {
        save(job().withPhotos(List.of(FIRST)));
        mill.replace(Mill.JOB, "photo-1.jpg", name);

        assertThat(estate().job()).isEmpty();
        assertThat(estate().problems())
                .singleElement()
                .asString()
                .contains("photos[0].file: '" + name + "' is no name of a photo");
        assertThatThrownBy(() -> new JobPhoto(name, "", Optional.empty(), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is no name of a photo");
    }

    @Test
    void aFileNamedTwiceIsRefusedAndAnUnknownZoneOnlyNoted() {
        save(job().withPhotos(List.of(FIRST, SECOND)));
        mill.replace(Mill.JOB, "\"zone\": \"bonnet\"", "\"zone\": \"bonet\"");
        assertThat(estate().job()).isPresent();
        assertThat(estate().problems())
                .singleElement()
                .asString()
                .contains("photos[0].zone: 'bonet' is no zone of the shape")
                .contains("'bonnet'");

        mill.replace(Mill.JOB, "IMG_2.PNG", "PHOTO-1.JPG");
        assertThat(estate().problems())
                .anySatisfy(p -> assertThat(p.toString())
                        .contains("photos[1].file: 'PHOTO-1.JPG' stands in photos[0].file already"));
    }

    @Test
    void onAShapeWithoutTheZoneThePhotoIsOfTheVehicle() {
        Shape shape = mill.open().shapes().get(0);
        JobPhoto gone = new JobPhoto("a.jpg", "", Optional.of("sidecar"), Optional.empty());
        Job other = JobEdit.onShape(job().withPhotos(List.of(FIRST, gone)), shape);
        assertThat(other.photos()).containsExactly(FIRST, gone.on(Optional.empty()));
    }

    @Test
    void aCopyOfAJobBeginsWithoutPhotos() {
        JobFile file = save(job().withPhotos(List.of(FIRST)));
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            Job as = JobEdit.of(file.job().orElseThrow()).id("second").job();
            assertThat(writer.copy(file, as).job().orElseThrow().photos()).isEmpty();
        }
        assertThat(mill.text("jobs/second/job.json")).doesNotContain("photo-1.jpg");
    }

    // pictures

    @Test
    void aPictureIsCopiedByWhatItHoldsAndNotByItsName() throws IOException {
        Path chosen = file("M. Thistle, 12 Mill Lane.png", JPEG);
        String name = add(chosen, Disk.REAL);
        String second = add(chosen, Disk.REAL);
        String other = add(file("b.jpg", PNG), Disk.REAL);

        assertThat(name).matches("photo-[0-9a-f]{12}\\.jpg");
        assertThat(second).isEqualTo(name.replace(".jpg", "-2.jpg"));
        assertThat(other).matches("photo-[0-9a-f]{12}\\.png");
        assertThat(kept()).containsExactlyInAnyOrder(name, second, other);
        assertThat(mill.open().photo("green-estate", new JobPhoto(name, "", Optional.empty(), Optional.empty())))
                .isEqualTo(JPEG);
    }

    @Test
    void whatIsNoPictureIsRefusedInOneLineAndNothingIsAdded() throws IOException {
        byte[] large = Arrays.copyOf(JPEG, PhotoFile.LARGEST_MIB * 1024 * 1024 + 1);
        Path link = Files.createSymbolicLink(folder.resolve("link.jpg"), file("there.jpg", JPEG));
        refused(file("a.jpg", "<svg/>".getBytes(StandardCharsets.UTF_8)), "a.jpg: not added, it is neither a JPEG nor");
        refused(file("b.jpg", new byte[0]), "b.jpg: not added, the file is empty");
        refused(file("c.jpg", large), "c.jpg: not added, the file is larger than 20 MiB");
        refused(link, "link.jpg: not added, the file is a link");
        refused(folder.resolve("d.jpg"), "d.jpg: not added, the file is gone");
        refused(Files.createDirectory(folder.resolve("e.jpg")), "e.jpg: not added, this is not a file");
        assertThat(kept()).isEmpty();
    }

    private void refused(Path chosen, String message) {
        assertThatThrownBy(() -> add(chosen, Disk.REAL))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith(message)
                .hasMessageNotContaining("\n");
    }

    @Test
    void aFullDiskLeavesNoHalfPicture() throws IOException {
        Path chosen = file("a.jpg", JPEG);
        Disk full = new Disk() {
            @Override
            public void force(Path file) throws IOException {
                throw new FileSystemException(file.toString(), null, "No space left on device");
            }
        };
        assertThatThrownBy(() -> add(chosen, full)).hasMessageContaining("the disk is full");
        assertThat(kept()).isEmpty();
    }

    @Test
    void aFolderOfPhotosThatLeadsOutIsNeitherWrittenNorRead() throws IOException {
        Path outside = Files.createDirectory(folder.resolve("outside"));
        Files.write(outside.resolve("photo-1.jpg"), JPEG);
        Files.createSymbolicLink(mill.path("jobs/green-estate/photos"), outside);
        Path chosen = file("a.jpg", JPEG);

        assertThatThrownBy(() -> add(chosen, Disk.REAL)).hasMessageContaining("a link leads out of the workspace");
        assertThatThrownBy(() -> mill.open().photo("green-estate", FIRST))
                .hasMessageContaining("a link leads out of the workspace");
        assertThat(outside.toFile().list()).containsExactly("photo-1.jpg");
    }

    @Test
    void aJobThatWasNeverSavedHasNoPlaceForPhotos() throws IOException {
        Path chosen = file("a.jpg", JPEG);
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            assertThatThrownBy(() -> writer.addPhoto("not-yet", chosen))
                    .hasMessage("jobs/not-yet/photos: not saved, the job has no folder yet; save the job first");
        }
    }

    @Test
    void aPictureThatIsGoneOrBrokenIsNamedAndTheJobStaysReadable() {
        save(job().withPhotos(List.of(FIRST, SECOND)));
        mill.write("jobs/green-estate/photos/IMG_2.PNG", "no picture");
        assertThat(estate().job()).isPresent();
        assertThatThrownBy(() -> mill.open().photo("green-estate", FIRST))
                .hasMessageStartingWith("jobs/green-estate/photos/photo-1.jpg: the file is gone");
        assertThatThrownBy(() -> mill.open().photo("green-estate", SECOND))
                .hasMessageStartingWith("jobs/green-estate/photos/IMG_2.PNG: it is neither a JPEG nor a PNG");
    }
}
