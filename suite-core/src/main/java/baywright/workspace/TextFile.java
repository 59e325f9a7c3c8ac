package baywright.workspace;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Reads one text file of a workspace, or says in one problem why it cannot. */
final class TextFile {

    static final int LARGEST_MIB = 16;

    private static final int LARGEST = LARGEST_MIB * 1024 * 1024;

    /** The file is not a text that can be used. */
    static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient FileProblem problem;

        Unreadable(FileProblem problem) {
            super(problem.toString());
            this.problem = problem;
        }

        FileProblem problem() {
            return problem;
        }
    }

    private final Path root;

    /** @param root the workspace; no file outside it is read, not even through a link */
    TextFile(Path root) {
        this.root = root;
    }

    /** The path of a file as messages show it: relative to the workspace, with {@code /}. */
    String nameOf(Path file) {
        return root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }

    /**
     * The text without a byte order mark.
     *
     * @throws Unreadable when it is missing, no file, elsewhere, too large, empty or not UTF-8
     */
    Report read(Path file) throws Unreadable {
        String name = nameOf(file);
        byte[] bytes = bytes(file, name);
        if (bytes.length == 0) {
            throw unreadable(name, "the file is empty", "restore it from a copy or delete it");
        }
        return decode(name, bytes);
    }

    private byte[] bytes(Path file, String name) throws Unreadable {
        try {
            if (Files.isSymbolicLink(file) && !Files.exists(file)) {
                throw unreadable(name, "this link leads nowhere", "put the file itself here");
            }
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw unreadable(name, "there is no such file", "restore it from a copy");
            }
            if (!file.toRealPath().startsWith(root.toRealPath())) {
                throw unreadable(name, "this link leads out of the workspace", "put the file itself here");
            }
            if (!Files.isRegularFile(file)) {
                throw unreadable(name, "this is not a file", "move it away and restore the file from a copy");
            }
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(LARGEST + 1);
                if (bytes.length > LARGEST) {
                    throw unreadable(
                            name,
                            "the file is larger than " + LARGEST_MIB + " MiB",
                            "check that it is the right file; photos go into the job's folder 'photos'");
                }
                return bytes;
            }
        } catch (AccessDeniedException e) {
            throw unreadable(name, "the file may not be read by this user", "change its permissions");
        } catch (IOException e) {
            throw unreadable(name, "the file cannot be read (" + DiskFault.reason(e) + ")", "check the disk");
        }
    }

    private static Unreadable unreadable(String name, String what, String mend) {
        return new Unreadable(Report.ofFile(name, what, mend));
    }

    /** The text that bytes are, with what is odd about them. */
    static Report decode(String name, byte[] bytes) throws Unreadable {
        if (looksLikeUtf16(bytes)) {
            throw unreadable(name, "the text is in UTF-16", "save it as UTF-8");
        }
        boolean marked = bytes.length >= 3 && at(bytes, 0) == 0xEF && at(bytes, 1) == 0xBB && at(bytes, 2) == 0xBF;
        ByteBuffer in = ByteBuffer.wrap(bytes);
        in.position(marked ? 3 : 0);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        Report report = new Report(new Source(name, out.flip().toString()));
        if (result.isError()) {
            report.error(
                    report.source().text().length(),
                    "",
                    String.format("the byte %02X is not UTF-8", at(bytes, in.position())),
                    "save the file as UTF-8");
            throw new Unreadable(report.problems().get(0));
        }
        if (marked) {
            report.warning(0, "", "the file begins with a byte order mark", "save it as UTF-8 without one");
        }
        return report;
    }

    private static int at(byte[] bytes, int index) {
        return bytes[index] & 0xFF;
    }

    /** By its byte order mark, or because an ASCII character takes two bytes. */
    private static boolean looksLikeUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int first = at(bytes, 0);
        int second = at(bytes, 1);
        boolean isMarked = (first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE);
        return isMarked || (first == 0) != (second == 0);
    }
}
