package baywright.swing.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import baywright.document.Picture;
import baywright.site.OpenShop;
import baywright.site.Saving;
import baywright.swing.DemoShops;
import baywright.swing.TestDesk;
import baywright.swing.api.Destination;
import baywright.swing.api.Texts;
import baywright.workspace.JobPhoto;
import baywright.workspace.Workspace;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotosPanelTest {

    private static final String DOOR = "rear-door-left";

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    private TestDesk desk;
    private SurveyView view;

    @BeforeAll
    static void openTheDemo() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless())
                .as("no display: run under xvfb-run")
                .isFalse();
        Path root = Path.of("..");
        Path shopFolder = folder.resolve("shop");
        Workspace.create(shopFolder, root.resolve("demo/millrace-works"), root.resolve("stage-scripts"));
        shop = OpenShop.open(shopFolder, Clock.systemUTC(), DemoShops.SCRIPTS);
        SwingUtilities.invokeAndWait(() -> {
            FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
            FlatLightLaf.setup();
        });
    }

    @BeforeEach
    void showADoorOfTheEstate() throws Exception {
        asking(() -> {
            desk = new TestDesk(shop, Optional.of("green-estate"));
            open();
            return desk;
        });
    }

    private void open() {
        view = new SurveyView(desk, Texts.beside(SurveyView.class, "texts"));
        desk.listen((before, now) -> view.show(now));
        view.show(desk.state());
        view.show(Destination.zone(DOOR));
    }

    private static <T> T asking(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        SwingUtilities.invokeAndWait(task);
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e;
        }
    }

    private static byte[] bytes(String form, int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), form, out);
        return out.toByteArray();
    }

    private static Path picture(String name) throws IOException {
        return Files.write(folder.resolve(name), bytes("png", 60, 40));
    }

    private List<JobPhoto> photos() {
        return desk.state().job().orElseThrow().photos();
    }

    private PhotosPanel ofTheDoor() {
        return view.zonePanel().photos();
    }

    private String saidOfTheDoor() {
        return view.vehicleView().orElseThrow().look(DOOR).says();
    }

    @Test
    void photosOfAZoneAreCopiedShownNamedAndTakenBack() throws Exception {
        Path first = picture("first.png");
        Path second = Files.write(folder.resolve("second.png"), bytes("jpg", 30, 20));
        Path wrong = Files.writeString(folder.resolve("wrong.jpg"), "no picture");
        asking(() -> {
            assertThat(ofTheDoor().saysThatThereIsNone()).isTrue();
            ofTheDoor().add(List.of(first, wrong, second));

            assertThat(photos()).extracting(JobPhoto::zone).containsExactly(Optional.of(DOOR), Optional.of(DOOR));
            assertThat(photos().get(1).file()).endsWith(".jpg");
            assertThat(ofTheDoor().rows()).allMatch(row -> row.trouble().isEmpty());
            assertThat(ofTheDoor().saysThatThereIsNone()).isFalse();
            assertThat(view.vehiclePanel().photos().saysThatThereIsNone()).isTrue();
            assertThat(desk.notices)
                    .singleElement()
                    .satisfies(notice -> assertThat(notice.text()).startsWith("wrong.jpg: not added, it is neither"));
            assertThat(saidOfTheDoor()).endsWith("2 photos");
            desk.undo();
            assertThat(photos()).isEmpty();
            assertThat(saidOfTheDoor()).doesNotContain("photo");
            desk.redo();
            return null;
        });
        for (JobPhoto photo : photos()) {
            assertThat(shop.folder().resolve("jobs/green-estate/photos").resolve(photo.file()))
                    .exists();
        }
    }

    @Test
    void aCaptionIsAnEditAndNamesThePhotoForEveryReader() throws Exception {
        Path file = picture("a.png");
        asking(() -> {
            ofTheDoor().add(List.of(file, file));
            PhotosPanel.Row row = ofTheDoor().rows().get(0);
            row.caption().type("<html>Scratch below the handle");

            assertThat(photos().get(0).caption()).isEqualTo("<html>Scratch below the handle");
            assertThat(row.picture().getAccessibleContext().getAccessibleName())
                    .isEqualTo("Show large: <html>Scratch below the handle");
            row.caption().type("x".repeat(5000));
            assertThat(row.caption().trouble()).contains("more than 4000 characters");
            desk.undo();
            assertThat(photos().get(0).caption()).isEmpty();
            return null;
        });
    }

    @Test
    void oneIsTakenAwayAndComesBackWithUndo() throws Exception {
        Path file = picture("a.png");
        asking(() -> {
            view.vehiclePanel().photos().add(List.of(file, file));
            List<JobPhoto> both = photos();
            assertThat(both).allMatch(p -> p.zone().isEmpty());
            view.vehiclePanel().photos().rows().get(0).away().doClick();
            assertThat(photos()).containsExactly(both.get(1));
            desk.undo();
            assertThat(photos()).isEqualTo(both);
            return null;
        });
    }

    @Test
    void aPhotoThatIsGoneOrBrokenSaysSoAndTheOthersAreShown() throws Exception {
        Path file = picture("a.png");
        byte[] whole = bytes("png", 60, 40);
        Path half = Files.write(folder.resolve("half.png"), java.util.Arrays.copyOf(whole, 30));
        asking(() -> {
            JobPhoto gone = new JobPhoto("gone.jpg", "", Optional.of(DOOR), Optional.empty());
            desk.change("", s -> s.withJob(s.job("green-estate").orElseThrow().withPhotos(List.of(gone))));
            ofTheDoor().add(List.of(half, file));

            List<PhotosPanel.Row> rows = ofTheDoor().rows();
            assertThat(rows.get(0).trouble()).contains("gone.jpg: the file is gone");
            assertThat(rows.get(1).trouble()).contains("the picture is broken");
            assertThat(rows.get(2).trouble()).isEmpty();

            PhotoLarge large = ofTheDoor().large(gone);
            assertThat(large.loaded().trouble()).contains("gone.jpg");
            large.show(1);
            large.show(1);
            assertThat(large.loaded().image()).isPresent();
            large.show(1);
            assertThat(large.caption()).isEqualTo(photos().get(2).file());
            return null;
        });
    }

    @Test
    void aJobThatWasNeverSavedIsSavedFirst() throws Exception {
        Path file = picture("a.png");
        asking(() -> {
            String shape = shop.jobs().get(0).vehicle().shape();
            NewJob.add(desk, Texts.beside(SurveyView.class, "texts"), "Fresh van", shape);
            view.vehiclePanel().photos().add(List.of(file));
            assertThat(desk.saves).isEqualTo(1);
            assertThat(desk.notices.get(desk.notices.size() - 1).text()).contains("is saved first");
            assertThat(photos()).isEmpty();

            desk.change("", s -> Saving.save(s, Saving.Clashes.LEAVE).shop());
            assertThat(photos()).hasSize(1);
            return null;
        });
    }

    @Test
    void severalZonesHaveNoPhotosOfTheirOwnAndACopyHasNone() throws Exception {
        Path file = picture("a.png");
        asking(() -> {
            ofTheDoor().add(List.of(file));
            Surveyed now = Surveyed.of(desk.state()).orElseThrow();
            view.zonePanel().show(now, List.of(DOOR, "bonnet"));
            assertThat(ofTheDoor().isVisible()).isFalse();
            NewJob.copy(desk, Texts.beside(SurveyView.class, "texts"));
            assertThat(photos()).isEmpty();
            return null;
        });
    }

    // decoding

    /** A header that promises far more than the file holds takes no memory: width and height stand at 16 and 20 (ISO/IEC 15948, 11.2.2). */
    @Test
    void aPictureOfImpossibleSizeIsRefused() throws Exception {
        byte[] png = bytes("png", 10, 10);
        ByteBuffer.wrap(png).putInt(16, 29_000).putInt(20, 29_000);
        java.util.zip.CRC32 check = new java.util.zip.CRC32();
        check.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) check.getValue());
        assertThatThrownBy(() -> Picture.of(png, 100, () -> false))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("29000");
    }

    @Test
    void aLargePictureIsReadSmaller() throws Exception {
        BufferedImage small = Picture.of(bytes("png", 1000, 500), 100, () -> false);
        assertThat(small.getWidth()).isEqualTo(100);
        assertThat(small.getHeight()).isEqualTo(50);
    }

    /**
     * Where the corner that the file has first comes to lie, by Exif's tag Orientation (CIPA DC-008, 4.6.4 A): the row 0 and column 0 are
     * at 1 top left, 2 top right, 3 bottom right, 4 bottom left, 5 left top, 6 right top, 7 right bottom, 8 left bottom.
     */
    @ParameterizedTest
    @CsvSource({
        "1,false,false", "2,true,false", "3,true,true", "4,false,true",
        "5,false,false", "6,true,false", "7,true,true", "8,false,true"
    })
    void aPictureStandsUpright(int orientation, boolean right, boolean bottom) throws Exception {
        BufferedImage image = new BufferedImage(6, 4, BufferedImage.TYPE_INT_ARGB);
        image.setRGB(0, 0, 0xFFFFFFFF);
        byte[] exif = {
            (byte) 0xFF,
            (byte) 0xD8,
            (byte) 0xFF,
            (byte) 0xE1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            1,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) orientation,
            0,
            0,
            0,
            0,
            0,
            0
        };
        Picture.Orientation read = Picture.Orientation.of(exif);
        BufferedImage turned = read.upright(image);
        assertThat(read.value()).isEqualTo(orientation);
        assertThat(turned.getWidth()).isEqualTo(orientation >= 5 ? 4 : 6);
        assertThat(turned.getRGB(right ? turned.getWidth() - 1 : 0, bottom ? turned.getHeight() - 1 : 0))
                .isEqualTo(0xFFFFFFFF);
    }

    @Test
    void noLyingSegmentIsFollowedOutOfTheFile() {
        byte[] lies = {
            (byte) 0xFF,
            (byte) 0xD8,
            (byte) 0xFF,
            (byte) 0xE1,
            0x7F,
            0x7F,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'I',
            'I',
            42,
            0,
            (byte) 0xFF,
            (byte) 0xFF,
            (byte) 0xFF,
            (byte) 0xFF,
            0,
            0
        };
        for (int length = 0; length <= lies.length; length++) {
            assertThat(Picture.Orientation.of(java.util.Arrays.copyOf(lies, length))
                            .value())
                    .isEqualTo(1);
        }
    }
}
