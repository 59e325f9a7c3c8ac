package baywright.script.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes out the marks with which the stored scripts say what would be unreadable or too large to store:
 * {@code «U+202E»} a character, {@code «byte FF»} one byte, {@code «port»} the port of the listener and
 * {@code «2000×text»} a repetition, which may hold marks itself.
 */
final class Template {

    private static final char OPEN = '«';
    private static final char CLOSE = '»';

    private final String text;
    private final int port;
    private int next;

    private Template(String text, int port) {
        this.text = text;
        this.port = port;
    }

    static void write(String text, int port, OutputStream out) throws IOException {
        Template template = new Template(text, port);
        template.upTo(false, out);
        if (template.next != text.length()) {
            throw new IllegalArgumentException("a mark is closed that was not opened, at character " + template.next);
        }
    }

    private void upTo(boolean inside, OutputStream out) throws IOException {
        int from = next;
        while (next < text.length() && text.charAt(next) != CLOSE) {
            if (text.charAt(next) == OPEN) {
                out.write(text.substring(from, next).getBytes(UTF_8));
                mark(out);
                from = next;
            } else {
                next++;
            }
        }
        if (inside && next == text.length()) {
            throw new IllegalArgumentException("a mark is not closed");
        }
        out.write(text.substring(from, next).getBytes(UTF_8));
    }

    private void mark(OutputStream out) throws IOException {
        int times = text.indexOf('×', next);
        int close = text.indexOf(CLOSE, next);
        if (times > 0 && times < close) {
            int count = Integer.parseInt(text.substring(next + 1, times));
            next = times + 1;
            ByteArrayOutputStream once = new ByteArrayOutputStream();
            upTo(true, once);
            byte[] what = once.toByteArray();
            for (int i = 0; i < count; i++) {
                out.write(what);
            }
        } else {
            out.write(single(text.substring(next + 1, close)));
            next = close;
        }
        next++;
    }

    private byte[] single(String mark) {
        if (mark.startsWith("U+")) {
            return Character.toString(Integer.parseInt(mark.substring(2), 16)).getBytes(UTF_8);
        }
        if (mark.startsWith("byte ")) {
            return new byte[] {(byte) Integer.parseInt(mark.substring(5), 16)};
        }
        if (mark.equals("port")) {
            return Integer.toString(port).getBytes(UTF_8);
        }
        throw new IllegalArgumentException("no mark is called '" + mark + "'");
    }
}
