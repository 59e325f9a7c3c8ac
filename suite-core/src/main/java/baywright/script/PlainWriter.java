package baywright.script;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Writes plain data as bytes that {@link PlainReader} reads. A text that comes again is written as its number. */
public final class PlainWriter {

    private byte[] bytes = new byte[1 << 12];
    private int used;
    private final Map<String, Integer> texts = new HashMap<>();

    /** A whole number from 0. */
    public void count(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("a count is not negative, got " + number);
        }
        int rest = number;
        while (rest > 0x7f) {
            octet((rest & 0x7f) | 0x80);
            rest >>>= 7;
        }
        octet(rest);
    }

    public void yes(boolean answer) {
        octet(answer ? 1 : 0);
    }

    /** Any text, unpaired surrogates included. */
    public void text(String text) {
        Integer known = texts.get(text);
        if (known != null) {
            count(known + 1);
            return;
        }
        texts.put(text, texts.size());
        count(0);
        boolean narrow = text.chars().allMatch(c -> c < 0x100);
        count(text.length() * 2 + (narrow ? 0 : 1));
        if (narrow) {
            raw(text.getBytes(StandardCharsets.ISO_8859_1));
        } else {
            text.chars().forEach(c -> {
                octet(c >>> 8);
                octet(c & 0xff);
            });
        }
    }

    /** A decimal with its scale. */
    public void number(BigDecimal number) {
        int scale = number.scale();
        count((scale << 1) ^ (scale >> 31));
        block(number.unscaledValue().toByteArray());
    }

    /** Bytes with their length before them. */
    public void block(byte[] block) {
        count(block.length);
        raw(block);
    }

    /** All that was written. */
    public byte[] bytes() {
        return Arrays.copyOf(bytes, used);
    }

    private void octet(int value) {
        room(1);
        bytes[used++] = (byte) value;
    }

    private void raw(byte[] more) {
        room(more.length);
        System.arraycopy(more, 0, bytes, used, more.length);
        used += more.length;
    }

    private void room(int more) {
        if (used + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, used + more));
        }
    }
}
