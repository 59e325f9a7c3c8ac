package baywright.pack;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.CRC32;

/** Writes archives as nobody should: every field of every header can be set. Knows nothing of the class that it is to deceive. */
final class RawZip {

    /** One file; what its own header says can differ from what the directory says. */
    static final class Entry {
        byte[] name;
        byte[] data;
        byte[] localName;
        byte[] extra = {};
        byte[] comment = {};
        int flags = 0x0800;
        int method;
        int time;
        int crc;
        int size;
        int packed;
        int attributes;
        int localSize;
        int offset = -1;

        Entry(String name, byte[] data) {
            this.name = name.getBytes(StandardCharsets.UTF_8);
            this.localName = this.name;
            this.data = data;
            CRC32 sum = new CRC32();
            sum.update(data);
            crc = (int) sum.getValue();
            size = data.length;
            packed = data.length;
            localSize = data.length;
        }

        void rename(String other) {
            name = other.getBytes(StandardCharsets.UTF_8);
            localName = name;
        }
    }

    final List<Entry> entries = new ArrayList<>();
    byte[] before = {};
    byte[] between = {};
    byte[] comment = {};
    byte[] behind = {};
    int more;
    int disk;

    /** Whether all places are told as they are, with what stands before the files. */
    boolean shift;

    static RawZip of(Map<String, byte[]> files) {
        RawZip zip = new RawZip();
        files.forEach((name, data) -> zip.entries.add(new Entry(name, data)));
        return zip;
    }

    RawZip with(Consumer<RawZip> change) {
        change.accept(this);
        return this;
    }

    Entry entry(String name) {
        return entries.stream()
                .filter(entry -> new String(entry.name, StandardCharsets.UTF_8).equals(name))
                .findFirst()
                .orElseThrow();
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream directory = new ByteArrayOutputStream();
        out.writeBytes(before);
        int shifted = shift ? 0 : before.length;
        for (Entry entry : entries) {
            int at = entry.offset >= 0 ? entry.offset : out.size() - shifted;
            byte[] localHeader = new byte[30 + entry.localName.length + entry.extra.length];
            ByteBuffer local = over(localHeader);
            local.putInt(0x04034b50)
                    .putShort((short) 20)
                    .putShort((short) entry.flags)
                    .putShort((short) entry.method);
            local.putShort((short) entry.time).putShort((short) 0x21).putInt(entry.crc);
            local.putInt(entry.packed).putInt(entry.localSize);
            local.putShort((short) entry.localName.length).putShort((short) entry.extra.length);
            local.put(entry.localName).put(entry.extra);
            out.writeBytes(localHeader);
            out.writeBytes(entry.data);
            byte[] centralHeader = new byte[46 + entry.name.length + entry.extra.length + entry.comment.length];
            ByteBuffer central = over(centralHeader);
            central.putInt(0x02014b50).putShort((short) 20).putShort((short) 20).putShort((short) entry.flags);
            central.putShort((short) entry.method).putShort((short) entry.time).putShort((short) 0x21);
            central.putInt(entry.crc).putInt(entry.packed).putInt(entry.size);
            central.putShort((short) entry.name.length).putShort((short) entry.extra.length);
            central.putShort((short) entry.comment.length)
                    .putInt(0)
                    .putInt(entry.attributes)
                    .putInt(at);
            central.put(entry.name).put(entry.extra).put(entry.comment);
            directory.writeBytes(centralHeader);
        }
        out.writeBytes(between);
        int start = out.size() - shifted;
        out.writeBytes(directory.toByteArray());
        int count = entries.size() + more;
        byte[] endRecord = new byte[22 + comment.length];
        ByteBuffer end = over(endRecord).putInt(0x06054b50);
        end.putShort((short) disk)
                .putShort((short) disk)
                .putShort((short) count)
                .putShort((short) count);
        end.putInt(directory.size())
                .putInt(start)
                .putShort((short) comment.length)
                .put(comment);
        out.writeBytes(endRecord);
        out.writeBytes(behind);
        return out.toByteArray();
    }

    private static ByteBuffer over(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}
