package baywright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Where words go: two streams, with or without colour, and the reader's locale.
 *
 * @param out    results
 * @param err    complaints
 * @param colour whether {@code out} and {@code err} understand colours
 * @param locale how numbers and dates are written
 */
record Console(PrintWriter out, PrintWriter err, boolean colour, Locale locale) {

    /** Widest line that is printed, in characters; a terminal of 80 wraps only long sentences. */
    static final int WIDTH = 96;

    static Console ofProcess() {
        Charset charset = System.getProperty("os.name", "").startsWith("Windows")
                ? Charset.forName(System.getProperty("native.encoding", "UTF-8"))
                : StandardCharsets.UTF_8;
        return new Console(
                writer(FileDescriptor.out, charset),
                writer(FileDescriptor.err, charset),
                mayColour(),
                Locale.getDefault(Locale.Category.FORMAT));
    }

    /** Colours only on a terminal, and never against the reader's wish (no-color.org). */
    private static boolean mayColour() {
        String refused = System.getenv("NO_COLOR");
        return "yes".equals(System.getProperty("baywright.terminal")) && (refused == null || refused.isEmpty());
    }

    private static PrintWriter writer(FileDescriptor where, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(where), charset));
    }

    void flush() {
        out.flush();
        err.flush();
    }

    String paint(Ink ink, String text) {
        return colour && !text.isEmpty() ? ink.code() + text + Ink.PLAIN : text;
    }
}
