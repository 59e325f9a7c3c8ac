package baywright.money;

import baywright.script.Place;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * SHA-256 over plain values: equal values have equal fingerprints, on every run and machine. Where a value was written
 * does not count, nor does a number's trailing zero.
 */
public final class Fingerprint {

    private Fingerprint() {}

    /** The hash in hexadecimal of values in this order: texts, numbers, optional values, collections, maps, records of these. */
    public static String of(Object... values) {
        StringBuilder text = new StringBuilder();
        write(text, List.of(values));
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void write(StringBuilder text, Object value) {
        if (value instanceof Place) {
            return;
        }
        if (value instanceof BigDecimal number) {
            writeText(
                    text,
                    'n',
                    number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString());
        } else if (value instanceof Optional<?> maybe) {
            writeAll(text, 'o', maybe.stream().toList());
        } else if (value instanceof Map<?, ?> map) {
            writeMap(text, map);
        } else if (value instanceof Set<?> set) {
            Collection<String> sorted = new TreeSet<>();
            set.forEach(element -> {
                StringBuilder one = new StringBuilder();
                write(one, element);
                sorted.add(one.toString());
            });
            writeAll(text, 's', sorted);
        } else if (value instanceof Collection<?> list) {
            writeAll(text, 'l', list);
        } else if (value instanceof Record written) {
            writeRecord(text, written);
        } else {
            writeText(text, 't', value.toString());
        }
    }

    private static void writeMap(StringBuilder text, Map<?, ?> map) {
        Map<String, Object> sorted = new TreeMap<>();
        map.forEach((key, value) -> sorted.put(String.valueOf(key), value));
        text.append('m').append(sorted.size()).append('(');
        sorted.forEach((key, value) -> {
            writeText(text, 'k', key);
            write(text, value);
        });
        text.append(')');
    }

    private static void writeRecord(StringBuilder text, Record written) {
        text.append('r').append(written.getClass().getSimpleName()).append('(');
        try {
            for (RecordComponent component : written.getClass().getRecordComponents()) {
                write(text, component.getAccessor().invoke(written));
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + written.getClass(), e);
        }
        text.append(')');
    }

    private static void writeAll(StringBuilder text, char kind, Collection<?> all) {
        text.append(kind).append(all.size()).append('(');
        all.forEach(one -> write(text, one));
        text.append(')');
    }

    /** With its length, so that no two lists of texts run together alike. */
    private static void writeText(StringBuilder text, char kind, String words) {
        text.append(kind).append(words.length()).append(':').append(words);
    }
}
