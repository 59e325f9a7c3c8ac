package baywright.pack;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;

/**
 * The one way to write files as a ZIP archive (PKWARE APPNOTE 6.3): stored, in order of name, at one fixed time, with nothing that
 * could be left out. Reading accounts for every byte: each part of an archive must be what writing would have put there, so that two
 * programs cannot see two contents in it.
 */
final class PackZip {

    static final int MOST_FILES = 10_000;
    static final int LARGEST_FILE = 4 << 20;
    static final int LARGEST_IN_ALL = 16 << 20;

    /** What a pack's file can have at most: the content, and for each file two headers with its name, and the manifest and so on. */
    static final int LARGEST_ARCHIVE = LARGEST_IN_ALL + (MOST_FILES + 2) * 512;

    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END = 0x06054b50;
    private static final int END_64_LOCATOR = 0x07064b50;
    private static final int LOCAL_LENGTH = 30;
    private static final int CENTRAL_LENGTH = 46;
    private static final int END_LENGTH = 22;
    private static final int LOCATOR_LENGTH = 20;

    /** 2.0, the least that knows names in folders. */
    private static final short ZIP_VERSION = 20;

    /** Names are UTF-8. */
    private static final short FLAGS = 0x0800;

    private static final int ENCRYPTED = 0x0001;
    private static final int STREAMED = 0x0008;

    /** 1 January 1980, the earliest date that there is. */
    private static final short DATE = 0x0021;

    private static final int LINK = 0xA000;
    private static final int FOLDER = 0x4000;
    private static final int PLAIN = 0x8000;
    private static final int KINDS = 0xF000;

    private PackZip() {}

    /** A file's place in an archive. */
    private record Entry(byte[] name, int crc, int size, int offset) {

        byte[] local() {
            return buffer(LOCAL_LENGTH + name.length)
                    .putInt(LOCAL)
                    .putShort(ZIP_VERSION)
                    .putShort(FLAGS)
                    .putShort((short) 0)
                    .putShort((short) 0)
                    .putShort(DATE)
                    .putInt(crc)
                    .putInt(size)
                    .putInt(size)
                    .putShort((short) name.length)
                    .putShort((short) 0)
                    .put(name)
                    .array();
        }

        byte[] central() {
            return buffer(CENTRAL_LENGTH + name.length)
                    .putInt(CENTRAL)
                    .putShort(ZIP_VERSION)
                    .putShort(ZIP_VERSION)
                    .putShort(FLAGS)
                    .putShort((short) 0)
                    .putShort((short) 0)
                    .putShort(DATE)
                    .putInt(crc)
                    .putInt(size)
                    .putInt(size)
                    .putShort((short) name.length)
                    .putShort((short) 0)
                    .putShort((short) 0)
                    .putShort((short) 0)
                    .putShort((short) 0)
                    .putInt(0)
                    .putInt(offset)
                    .put(name)
                    .array();
        }

        int dataAt() {
            return offset + LOCAL_LENGTH + name.length;
        }

        int endsAt() {
            return dataAt() + size;
        }
    }

    private static ByteBuffer buffer(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static byte[] end(int count, int size, int offset) {
        return buffer(END_LENGTH)
                .putInt(END)
                .putInt(0)
                .putShort((short) count)
                .putShort((short) count)
                .putInt(size)
                .putInt(offset)
                .putShort((short) 0)
                .array();
    }

    /** The archive; the same files give the same bytes. */
    static byte[] write(Map<String, byte[]> files) {
        SortedMap<String, byte[]> sorted = new TreeMap<>(PackPath.ORDER);
        sorted.putAll(files);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream central = new ByteArrayOutputStream();
        sorted.forEach((path, bytes) -> {
            Entry entry = new Entry(
                    path.getBytes(StandardCharsets.UTF_8), crc(bytes, 0, bytes.length), bytes.length, out.size());
            out.writeBytes(entry.local());
            out.writeBytes(bytes);
            central.writeBytes(entry.central());
        });
        int at = out.size();
        out.writeBytes(central.toByteArray());
        out.writeBytes(end(sorted.size(), central.size(), at));
        return out.toByteArray();
    }

    private static int crc(byte[] bytes, int from, int length) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, length);
        return (int) crc.getValue();
    }

    /**
     * The files of an archive.
     *
     * @param pack what messages call the archive
     * @throws PackRefused when anything in it is otherwise than {@link #write} would have it
     */
    static SortedMap<String, byte[]> read(String pack, byte[] archive) {
        return new Reading(pack, archive).files();
    }

    /** One archive that is being read. */
    private static final class Reading {

        private final String pack;
        private final byte[] all;
        private final ByteBuffer in;
        private final SortedMap<String, byte[]> files = new TreeMap<>(PackPath.ORDER);

        Reading(String pack, byte[] all) {
            this.pack = pack;
            this.all = all;
            this.in = ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN);
        }

        private PackRefused refused(Refusal refusal, Object... values) {
            return new PackRefused(pack, refusal, values);
        }

        SortedMap<String, byte[]> files() {
            if (all.length == 0) {
                throw refused(Refusal.EMPTY);
            }
            int end = all.length - END_LENGTH;
            if (end < 0 || in.getInt(end) != END) {
                throw withoutEnd();
            }
            int count = judgeEnd(end);
            int at = in.getInt(end + 16);
            int next = 0;
            String before = "";
            for (int i = 0; i < count; i++) {
                Entry entry = central(at, end);
                String name = name(entry.name());
                order(before, name);
                if (entry.offset() != next) {
                    throw refused(Refusal.GAP, PackPath.shown(name), entry.offset(), next);
                }
                files.put(name, content(entry, name, in.getInt(end + 16)));
                before = name;
                next = entry.endsAt();
                at += CENTRAL_LENGTH + entry.name().length;
            }
            if (at != end) {
                throw refused(Refusal.COUNT, count);
            }
            if (next != in.getInt(end + 16)) {
                throw refused(Refusal.BETWEEN, in.getInt(end + 16) - next);
            }
            return Collections.unmodifiableSortedMap(files);
        }

        /** The archive does not end where it should; looks for what happened to it. */
        private PackRefused withoutEnd() {
            for (int i = all.length - END_LENGTH - 1; i >= 0; i--) {
                if (in.getInt(i) == END) {
                    int comment = in.getShort(i + 20) & 0xFFFF;
                    int behind = all.length - i - END_LENGTH;
                    return comment == behind ? refused(Refusal.COMMENT) : refused(Refusal.BEHIND, behind);
                }
            }
            boolean begins = all.length >= 4 && in.getInt(0) == LOCAL;
            return begins ? refused(Refusal.TRUNCATED) : refused(Refusal.NO_ARCHIVE);
        }

        /** How many files the end says there are. */
        private int judgeEnd(int end) {
            boolean has64 = end >= LOCATOR_LENGTH && in.getInt(end - LOCATOR_LENGTH) == END_64_LOCATOR;
            if (has64 || in.getShort(end + 10) == -1 || in.getInt(end + 12) == -1 || in.getInt(end + 16) == -1) {
                throw refused(Refusal.ZIP64);
            }
            if (in.getInt(end + 4) != 0) {
                throw refused(Refusal.SPLIT);
            }
            int count = in.getShort(end + 10) & 0xFFFF;
            if (count > MOST_FILES + 2) {
                throw refused(Refusal.MANY_FILES, count, MOST_FILES);
            }
            long size = in.getInt(end + 12) & 0xFFFFFFFFL;
            long offset = in.getInt(end + 16) & 0xFFFFFFFFL;
            if (offset + size < end) {
                throw refused(Refusal.BEFORE, end - offset - size);
            }
            if (offset + size > end) {
                throw refused(Refusal.TRUNCATED);
            }
            if (in.getShort(end + 8) != in.getShort(end + 10)) {
                throw refused(Refusal.COUNT, count);
            }
            if (in.getShort(end + 20) != 0) {
                throw refused(Refusal.COMMENT);
            }
            return count;
        }

        private Entry central(int at, int end) {
            if (at > end - CENTRAL_LENGTH || in.getInt(at) != CENTRAL) {
                throw refused(Refusal.DIRECTORY);
            }
            int nameLength = in.getShort(at + 28) & 0xFFFF;
            if (at + CENTRAL_LENGTH + nameLength > end) {
                throw refused(Refusal.DIRECTORY);
            }
            byte[] bytes = Arrays.copyOfRange(all, at + CENTRAL_LENGTH, at + CENTRAL_LENGTH + nameLength);
            String name = name(bytes);
            int attributes = in.getInt(at + 38) >>> 16;
            if ((attributes & KINDS) == LINK) {
                throw refused(Refusal.ENTRY_LINK, PackPath.shown(name));
            }
            if ((attributes & KINDS) == FOLDER) {
                throw refused(Refusal.ENTRY_FOLDER, PackPath.shown(name));
            }
            if ((attributes & KINDS) != 0 && (attributes & KINDS) != PLAIN) {
                throw refused(Refusal.ENTRY_DEVICE, PackPath.shown(name));
            }
            PackPath.fault(name).ifPresent(fault -> {
                throw refused(fault.refusal(), fault.values());
            });
            int flags = in.getShort(at + 8);
            if ((flags & ENCRYPTED) != 0) {
                throw refused(Refusal.ENTRY_ENCRYPTED, PackPath.shown(name));
            }
            if (in.getShort(at + 10) != 0) {
                throw refused(Refusal.ENTRY_COMPRESSED, PackPath.shown(name));
            }
            if ((flags & STREAMED) != 0) {
                throw refused(Refusal.ENTRY_STREAMED, PackPath.shown(name));
            }
            long size = in.getInt(at + 24) & 0xFFFFFFFFL;
            if (size > LARGEST_FILE) {
                throw refused(Refusal.ENTRY_LARGE, PackPath.shown(name), LARGEST_FILE >> 20);
            }
            if ((in.getInt(at + 20) & 0xFFFFFFFFL) != size) {
                throw refused(Refusal.ENTRY_SIZES, PackPath.shown(name));
            }
            if (in.getShort(at + 30) != 0) {
                throw refused(Refusal.ENTRY_EXTRA, PackPath.shown(name));
            }
            if (in.getShort(at + 32) != 0) {
                throw refused(Refusal.ENTRY_COMMENT, PackPath.shown(name));
            }
            Entry entry = new Entry(bytes, in.getInt(at + 16), (int) size, in.getInt(at + 42));
            if (!isAt(at, entry.central())) {
                throw refused(Refusal.ENTRY_STRANGE, PackPath.shown(name));
            }
            return entry;
        }

        private boolean isAt(int at, byte[] expected) {
            return at + expected.length <= all.length
                    && Arrays.equals(all, at, at + expected.length, expected, 0, expected.length);
        }

        private String name(byte[] bytes) {
            try {
                return StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes))
                        .toString();
            } catch (CharacterCodingException e) {
                throw refused(Refusal.NAME_BYTES);
            }
        }

        private void order(String before, String name) {
            if (files.containsKey(name)) {
                throw refused(Refusal.NAME_TWICE, PackPath.shown(name), PackPath.shown(name));
            }
            if (!before.isEmpty() && PackPath.ORDER.compare(before, name) > 0) {
                throw refused(Refusal.ORDER, PackPath.shown(name), PackPath.shown(before));
            }
        }

        private byte[] content(Entry entry, String name, int directory) {
            if (entry.endsAt() > directory) {
                throw refused(Refusal.ENTRY_BEYOND, PackPath.shown(name));
            }
            byte[] local = entry.local();
            if (!isAt(entry.offset(), local)) {
                throw refused(Refusal.ENTRY_TOLD_TWICE, PackPath.shown(name));
            }
            if (crc(all, entry.dataAt(), entry.size()) != entry.crc()) {
                throw refused(Refusal.ENTRY_DAMAGED, PackPath.shown(name));
            }
            return Arrays.copyOfRange(all, entry.dataAt(), entry.endsAt());
        }
    }
}
