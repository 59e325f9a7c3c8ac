package baywright.document;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadProgressListener;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes pictures of the bytes of photos, which are believed in nothing. The only place of the core that decodes pictures: paper
 * needs them as much as the window.
 */
public final class Picture {

    /** What a camera may give, with room to spare; common practice, no source. */
    private static final long MOST_PIXELS = 150_000_000;

    private static final int LONGEST_SIDE = 30_000;

    private Picture() {}

    /**
     * Decodes a JPEG or PNG picture, upright as its camera was held. Off the event thread.
     *
     * @param side      the longer side of what is returned has at least these pixels where the picture has them, and less than twice
     * @param cancelled asked while it is decoded
     * @throws IOException when it is broken or too large, in words for the user
     */
    public static BufferedImage of(byte[] bytes, int side, BooleanSupplier cancelled) throws IOException {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers =
                    ImageIO.getImageReadersByFormatName(bytes[0] == (byte) 0xFF ? "jpeg" : "png");
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return Orientation.of(bytes).upright(read(reader, side, cancelled));
            } finally {
                reader.dispose();
            }
        } catch (RuntimeException e) {
            // What decoders throw when the bytes contradict each other is no fault of the program.
            throw new IOException(e);
        }
    }

    /**
     * A photo made small for paper: a JPEG of its pixels alone, without place, time or whatever else its file says, on white.
     *
     * @param side its longer side has at most these pixels
     * @throws IOException when it is broken or too large, in words for the user
     */
    static byte[] small(byte[] bytes, int side) throws IOException {
        BufferedImage image = of(bytes, side, () -> false);
        double scale = Math.min(1, side / (double) Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(image, 0, 0, width, height, Color.WHITE, null);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
            if (!ImageIO.write(small, "jpeg", to)) {
                throw new IOException("no writer for JPEG");
            }
        }
        return out.toByteArray();
    }

    private static BufferedImage read(ImageReader reader, int side, BooleanSupplier cancelled) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if (width < 1
                || height < 1
                || width > LONGEST_SIDE
                || height > LONGEST_SIDE
                || (long) width * height > MOST_PIXELS) {
            throw new IOException(width + " \u00D7 " + height);
        }
        ImageReadParam param = reader.getDefaultReadParam();
        int every = Math.max(1, Math.max(width, height) / Math.max(1, side));
        param.setSourceSubsampling(every, every, 0, 0);
        reader.addIIOReadProgressListener(new Stop(cancelled));
        BufferedImage read = reader.read(0, param);
        // A picture of eight or sixteen bits a channel, with or without a palette, becomes one that is painted fast.
        BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = plain.createGraphics();
        g.drawImage(read, 0, 0, null);
        g.dispose();
        return plain;
    }

    /** How a camera was held: the values 1 to 8 of the tag Orientation. */
    public record Orientation(int value) {

        private static final int TAG = 0x0112;
        private static final Orientation PLAIN = new Orientation(1);

        /** From the first Exif segment of a JPEG file (CIPA DC-008, 4.6.4 A and 4.7.2); 1 where there is none that can be read. */
        public static Orientation of(byte[] b) {
            int at = 2;
            while (at + 10 < b.length && u8(b, at) == 0xFF && u8(b, at + 1) >= 0xE0 && u8(b, at + 1) <= 0xEF) {
                int length = u16(b, at + 2, false);
                if (u8(b, at + 1) == 0xE1 && b[at + 4] == 'E' && b[at + 5] == 'x' && b[at + 6] == 'i') {
                    return ofTiff(b, at + 10, Math.min(b.length, at + 2 + length));
                }
                at += 2 + length;
            }
            return PLAIN;
        }

        private static Orientation ofTiff(byte[] b, int start, int end) {
            if (start + 8 > end) {
                return PLAIN;
            }
            boolean little = b[start] == 'I';
            long first = start
                    + (((long) u16(b, start + (little ? 6 : 4), little) << 16)
                            | u16(b, start + (little ? 4 : 6), little));
            if (first + 2 > end) {
                return PLAIN;
            }
            int entries = u16(b, (int) first, little);
            for (int i = 0; i < entries; i++) {
                long entry = first + 2 + 12L * i;
                if (entry + 12 > end) {
                    return PLAIN;
                }
                if (u16(b, (int) entry, little) == TAG) {
                    int value = u16(b, (int) entry + 8, little);
                    return value >= 1 && value <= 8 ? new Orientation(value) : PLAIN;
                }
            }
            return PLAIN;
        }

        private static int u8(byte[] b, int at) {
            return b[at] & 0xFF;
        }

        private static int u16(byte[] b, int at, boolean little) {
            return little ? u8(b, at) | (u8(b, at + 1) << 8) : (u8(b, at) << 8) | u8(b, at + 1);
        }

        /** The picture turned so that its top is up. */
        public BufferedImage upright(BufferedImage image) {
            if (value == 1) {
                return image;
            }
            int w = image.getWidth();
            int h = image.getHeight();
            AffineTransform turn =
                    switch (value) {
                        case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
                        case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
                        case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
                        case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
                        case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
                        case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
                        default -> new AffineTransform(0, -1, 1, 0, 0, w);
                    };
            boolean onItsSide = value >= 5;
            BufferedImage turned = new BufferedImage(onItsSide ? h : w, onItsSide ? w : h, BufferedImage.TYPE_INT_ARGB);
            Graphics2D g = turned.createGraphics();
            g.drawImage(image, turn, null);
            g.dispose();
            return turned;
        }
    }

    /** Ends the decoding of a picture that nobody waits for any more. */
    private record Stop(BooleanSupplier cancelled) implements IIOReadProgressListener {

        @Override
        public void imageProgress(ImageReader reader, float percent) {
            if (cancelled.getAsBoolean()) {
                reader.abort();
            }
        }

        @Override
        public void sequenceStarted(ImageReader reader, int first) {}

        @Override
        public void sequenceComplete(ImageReader reader) {}

        @Override
        public void imageStarted(ImageReader reader, int index) {}

        @Override
        public void imageComplete(ImageReader reader) {}

        @Override
        public void thumbnailStarted(ImageReader reader, int index, int thumbnail) {}

        @Override
        public void thumbnailProgress(ImageReader reader, float percent) {}

        @Override
        public void thumbnailComplete(ImageReader reader) {}

        @Override
        public void readAborted(ImageReader reader) {}
    }
}
