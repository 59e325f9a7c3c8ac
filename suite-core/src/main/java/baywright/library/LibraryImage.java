package baywright.library;

import baywright.script.DamagedData;
import baywright.script.PlainReader;
import baywright.script.PlainWriter;
import baywright.script.Problem;
import baywright.script.TreeCodec;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32C;

/**
 * A library as it is kept: the trees of its scripts, and what the check across the library found.
 *
 * @param inputs   hash of all texts and the price list that the check was made of
 * @param scripts  each script by its file's name
 * @param problems everything that was wrong, in order of place
 * @param stages   the usable stages, without what they say for one use
 */
record LibraryImage(String inputs, Map<String, KeptScript> scripts, List<Problem> problems, List<Stage> stages) {

    private static final byte[] MAGIC = "BAYSTAGE".getBytes(StandardCharsets.US_ASCII);
    private static final int HEADER = MAGIC.length + 2 * Integer.BYTES;

    /** Counted up with every change of the form. */
    private static final int FORM = 1;

    private static final int MOST = 100_000;

    /** The bytes are sound, and of another version of the program. */
    static final class Outdated extends DamagedData {
        private static final long serialVersionUID = 1L;

        Outdated(String what) {
            super(what);
        }
    }

    LibraryImage {
        scripts = Map.copyOf(scripts);
        problems = List.copyOf(problems);
        stages = List.copyOf(stages);
    }

    byte[] bytes(String build) {
        PlainWriter out = new PlainWriter();
        out.text(StageLanguage.VERSION);
        out.text(build);
        out.text(inputs);
        out.count(scripts.size());
        new TreeMap<>(scripts).values().forEach(s -> s.write(out));
        KeptScript.write(out, problems);
        out.count(stages.size());
        stages.forEach(s -> StageData.write(out, s));
        byte[] body = out.bytes();
        return ByteBuffer.allocate(HEADER + body.length)
                .put(MAGIC)
                .putInt(version())
                .putInt(sum(body, 0))
                .put(body)
                .array();
    }

    private static int version() {
        return (FORM << 16) | TreeCodec.VERSION;
    }

    /** CRC-32C (RFC 3720, appendix B.4): finds damage, it does not keep out a forger. */
    private static int sum(byte[] bytes, int from) {
        CRC32C sum = new CRC32C();
        sum.update(bytes, from, bytes.length - from);
        return (int) sum.getValue();
    }

    /**
     * Reads what {@link #bytes} wrote.
     *
     * @param terms where the stages get what they say for one use
     * @throws DamagedData with the reason why the bytes are of no use
     */
    static LibraryImage read(byte[] bytes, String build, LazyStages terms) throws DamagedData {
        if (bytes.length < HEADER || !Arrays.equals(bytes, 0, MAGIC.length, MAGIC, 0, MAGIC.length)) {
            throw new DamagedData("it is no library kept by this program");
        }
        ByteBuffer header = ByteBuffer.wrap(bytes, MAGIC.length, 2 * Integer.BYTES);
        if (header.getInt() != version()) {
            throw new Outdated("it is of another form");
        }
        if (header.getInt() != sum(bytes, HEADER)) {
            throw new DamagedData("it is damaged");
        }
        PlainReader in = new PlainReader(Arrays.copyOfRange(bytes, HEADER, bytes.length));
        if (!in.text().equals(StageLanguage.VERSION) || !in.text().equals(build)) {
            throw new Outdated("another version of the program kept it");
        }
        String inputs = in.text();
        Map<String, KeptScript> scripts = new LinkedHashMap<>();
        int files = in.size(MOST);
        for (int i = 0; i < files; i++) {
            KeptScript script = KeptScript.read(in);
            scripts.put(script.file(), script);
        }
        List<Problem> problems = KeptScript.problems(in);
        List<Stage> stages = new ArrayList<>();
        int many = in.size(MOST);
        for (int i = 0; i < many; i++) {
            stages.add(StageData.read(in, terms));
        }
        in.finish();
        return new LibraryImage(inputs, scripts, problems, stages);
    }
}
