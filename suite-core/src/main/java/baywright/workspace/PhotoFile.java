package baywright.workspace;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** The bytes of a picture, known to begin as a JPEG or PNG file does. Whether the rest is sound shows when it is decoded. */
final class PhotoFile {

    static final int LARGEST_MIB = 20;

    /** ISO/IEC 10918-1, annex B: start of image, then a further marker. */
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

    /** ISO/IEC 15948, 5.2. */
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};

    private static final int LARGEST = LARGEST_MIB * 1024 * 1024;

    private final byte[] bytes;
    private final String ending;

    private PhotoFile(byte[] bytes, String ending) {
        this.bytes = bytes;
        this.ending = ending;
    }

    byte[] bytes() {
        return bytes;
    }

    /** A picture that the user has chosen, anywhere on the disk. */
    static PhotoFile chosen(Path file) {
        return read(file, Shown.plain(String.valueOf(file.getFileName())), "not added, ");
    }

    /** A picture of a job; {@code name} is shown in messages. */
    static PhotoFile kept(Path file, String name) {
        return read(file, name, "");
    }

    private static PhotoFile read(Path file, String name, String outcome) {
        String start = name + ": " + outcome;
        if (Files.isSymbolicLink(file)) {
            throw new WorkspaceException(start + "the file is a link; choose the file that it leads to");
        }
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new WorkspaceException(start + "the file is gone; put it back or remove the photo");
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new WorkspaceException(start + "this is not a file; choose a JPEG or PNG file");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            bytes = in.readNBytes(LARGEST + 1);
        } catch (IOException e) {
            throw new WorkspaceException(start + "it cannot be read: " + DiskFault.reason(e), e);
        }
        if (bytes.length == 0) {
            throw new WorkspaceException(start + "the file is empty; copy it again from the camera");
        }
        if (bytes.length > LARGEST) {
            throw new WorkspaceException(
                    start + "the file is larger than " + LARGEST_MIB + " MiB; make a smaller copy of the picture");
        }
        return new PhotoFile(bytes, ending(bytes, start));
    }

    private static String ending(byte[] bytes, String start) {
        if (beginsWith(bytes, JPEG)) {
            return "jpg";
        }
        if (beginsWith(bytes, PNG)) {
            return "png";
        }
        throw new WorkspaceException(
                start + "it is neither a JPEG nor a PNG picture, whatever its name says; save it as one of them");
    }

    private static boolean beginsWith(byte[] bytes, byte[] signature) {
        return bytes.length >= signature.length
                && Arrays.equals(bytes, 0, signature.length, signature, 0, signature.length);
    }

    /** A name made of what the file holds, so that nothing of the name it had comes along. */
    String name(String more) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
            return "photo-" + HexFormat.of().formatHex(hash, 0, 6) + more + "." + ending;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
