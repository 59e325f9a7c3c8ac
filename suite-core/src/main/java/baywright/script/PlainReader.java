package baywright.script;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads what {@link PlainWriter} wrote. It trusts nothing: every length is held against what is left, every number
 * against its bounds, and a text holds no forbidden characters, as a script's own would not.
 */
public final class PlainReader {

    private final byte[] bytes;
    private final int end;
    private int at;
    private final List<String> texts = new ArrayList<>();

    public PlainReader(byte[] bytes) {
        this(bytes, 0, bytes.length);
    }

    private PlainReader(byte[] bytes, int from, int to) {
        this.bytes = bytes;
        this.at = from;
        this.end = to;
    }

    /** Insists that all has been read. */
    public void finish() throws DamagedData {
        if (at != end) {
            throw new DamagedData("there is more than was expected");
        }
    }

    /** A whole number from 0 to {@code most}. */
    public int count(int most) throws DamagedData {
        long number = 0;
        for (int shift = 0; shift < 35; shift += 7) {
            int octet = octet();
            number |= (long) (octet & 0x7f) << shift;
            if (octet < 0x80) {
                if (number > most) {
                    throw new DamagedData("a number is " + number + " where " + most + " is the most");
                }
                return (int) number;
            }
        }
        throw new DamagedData("a number does not end");
    }

    /** How many parts follow, each of at least one byte. */
    public int size(int most) throws DamagedData {
        return count(Math.min(most, end - at));
    }

    public boolean yes() throws DamagedData {
        return count(1) == 1;
    }

    public String text() throws DamagedData {
        int known = count(texts.size());
        if (known > 0) {
            return texts.get(known - 1);
        }
        int header = count(Limits.TEXT * 2 + 1);
        int length = header >> 1;
        boolean wide = (header & 1) == 1;
        int size = wide ? length * 2 : length;
        need(size);
        String text = new String(bytes, at, size, wide ? StandardCharsets.UTF_16BE : StandardCharsets.ISO_8859_1);
        at += size;
        if (text.length() != length || Characters.hasForbidden(text)) {
            throw new DamagedData("a text holds forbidden characters");
        }
        texts.add(text);
        return text;
    }

    public BigDecimal number() throws DamagedData {
        int folded = count(Limits.COMPUTED_SCALE * 2);
        int scale = (folded >>> 1) ^ -(folded & 1);
        int length = count(Limits.COMPUTED_SCALE);
        need(Math.max(length, 1));
        if (length == 0) {
            throw new DamagedData("a number has no digits");
        }
        BigInteger unscaled = new BigInteger(bytes, at, length);
        at += length;
        return new BigDecimal(unscaled, scale);
    }

    /** Bytes with their length before them. */
    public byte[] block() throws DamagedData {
        int length = count(end - at);
        need(length);
        byte[] block = Arrays.copyOfRange(bytes, at, at + length);
        at += length;
        return block;
    }

    private int octet() throws DamagedData {
        need(1);
        return bytes[at++] & 0xff;
    }

    private void need(int length) throws DamagedData {
        if (length > end - at) {
            throw new DamagedData("it ends too early");
        }
    }
}
