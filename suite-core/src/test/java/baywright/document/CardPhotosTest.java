package baywright.document;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.site.Site;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardPhotosTest {

    /** What an Exif segment may say about where and when; here as plain text, which is all that must not go on. */
    private static final String PLACE = "Exif\0\0 53.4N 2.1W";

    @TempDir
    private static Path folder;

    private static Site site;

    @BeforeAll
    static void takePhotos() throws Exception {
        Paperwork.site(folder, "millrace-works");
        Path job = folder.resolve("millrace-works/jobs/green-estate");
        Path photos = Files.createDirectories(job.resolve("photos"));
        Files.write(photos.resolve("photo-1.jpg"), withPlace(jpeg(2400, 1200)));
        Files.write(photos.resolve("photo-2.jpg"), new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0, 1, 2});
        Path file = job.resolve("job.json");
        Files.writeString(
                file,
                Files.readString(file)
                        .replaceFirst(
                                "\\{",
                                "{\"photos\": [{\"file\": \"photo-1.jpg\", \"caption\": \"Swirls & <sun>\", \"zone\": \"bonnet\"},"
                                        + "{\"file\": \"photo-2.jpg\", \"caption\": \"\"}, {\"file\": \"photo-3.jpg\","
                                        + " \"caption\": \"scratch\"}],"));
        site = Paperwork.opened(folder.resolve("millrace-works"));
    }

    private static byte[] jpeg(int width, int height) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "jpeg", out);
        return out.toByteArray();
    }

    /** A segment APP1 behind the start of the picture (CIPA DC-008, 4.5.4). */
    private static byte[] withPlace(byte[] jpeg) throws Exception {
        byte[] said = PLACE.getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (said.length + 2)});
        out.write(said);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static JobCard card(boolean withPhotos) {
        return JobCard.of(site, Paperwork.job(site, "green-estate"), "en", withPhotos);
    }

    @Test
    void aPhotoIsSmallAndSaysNothingButItsPixels() throws Exception {
        byte[] small = Base64.getDecoder().decode(card(true).photos().get(0).jpeg());

        BufferedImage image = ImageIO.read(new ByteArrayInputStream(small));
        assertThat(image.getWidth()).isEqualTo(1000);
        assertThat(image.getHeight()).isEqualTo(500);
        assertThat(new String(small, StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "53.4N");
    }

    @Test
    void whatCannotBeShownIsToldAndStopsNothing() throws Exception {
        JobCard card = card(true);

        assertThat(card.photos()).hasSize(3);
        try (PDDocument pdf = Loader.loadPDF(PagePdf.of(CardHtml.of(card, Paper.A4)))) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Photos of the survey", "Bonnet: Swirls & <sun>", "scratch")
                    .contains("The photo photo-2.jpg is gone", "The photo photo-3.jpg is gone");
            assertThat(pdf.getPage(pdf.getNumberOfPages() - 1).getResources().getXObjectNames())
                    .isNotEmpty();
        }
    }

    @Test
    void theyCanBeLeftOut() {
        assertThat(card(false).photos()).isEmpty();
        assertThat(CardHtml.of(card(false), Paper.A4)).doesNotContain("Photos of the survey", "<img");
    }
}
