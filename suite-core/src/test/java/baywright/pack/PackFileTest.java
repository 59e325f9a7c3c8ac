package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The form of a pack: as one file, and as a folder. */
class PackFileTest {

    @TempDir
    private Path folder;

    @Test
    void aPackIsReadBackAsItWas() throws IOException {
        Path file = folder.resolve("gentle-wash-1.2.0.pack");
        PackFile.write(Packs.signed(), file);

        Pack read = PackFile.read(file);

        assertThat(read.manifest()).isEqualTo(Packs.signed().manifest());
        assertThat(read.manifest().name()).isEqualTo("gentle-wash@1.2.0");
        assertThat(read.paths()).containsExactlyElementsOf(Packs.content().keySet());
        Packs.content()
                .forEach((path, bytes) -> assertThat(read.file(path)).get().isEqualTo(bytes));
        assertThat(read.signature())
                .map(PackSignature::signer)
                .contains(Packs.key().signer());
        assertThat(read.items()).isEqualTo(Packs.items());
        assertThat(read.scripts()).containsOnlyKeys("rinse.groovy", "states.groovy");
        assertThat(PackFile.bytes(read)).isEqualTo(Files.readAllBytes(file));
    }

    /** The order in which files are handed over, and who made the pack when, leave no trace. */
    @Test
    void theSameContentGivesTheSameBytes() {
        List<String> names = new java.util.ArrayList<>(Packs.signed().allFiles().keySet());
        Collections.shuffle(names, new Random(1));
        Map<String, byte[]> shuffled = new LinkedHashMap<>();
        names.forEach(name -> shuffled.put(name, Packs.signed().allFiles().get(name)));

        assertThat(PackZip.write(shuffled)).isEqualTo(PackFile.bytes(Packs.signed()));
    }

    /** The bytes of one small archive, set down by hand after PKWARE's APPNOTE 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16. */
    @Test
    void theBytesAreThoseOfTheStandard() {
        String local = "504b0304 1400 0008 0000 0000 2100 c241243 5 03000000 03000000 0100 0000 61 616263";
        String central =
                "504b0102 1400 1400 0008 0000 0000 2100 c2412435 03000000 03000000 0100 0000 0000 0000 0000 00000000"
                        + " 00000000 61";
        String end = "504b0506 0000 0000 0100 0100 2f000000 22000000 0000";

        byte[] written = PackZip.write(Map.of("a", Packs.bytes("abc")));

        assertThat(java.util.HexFormat.of().formatHex(written)).isEqualTo((local + central + end).replace(" ", ""));
    }

    /** Two readers that know nothing of ours: Java's own, by the directory and by the headers of the files. */
    @Test
    void otherReadersSeeTheSameFiles() throws IOException {
        Path file = folder.resolve("a.pack");
        PackFile.write(Packs.signed(), file);
        SortedMap<String, byte[]> expected = Packs.signed().allFiles();

        try (ZipFile zip = new ZipFile(file.toFile())) {
            List<? extends ZipEntry> entries = Collections.list(zip.entries());
            assertThat(entries).extracting(ZipEntry::getName).containsExactlyElementsOf(expected.keySet());
            for (ZipEntry entry : entries) {
                assertThat(zip.getInputStream(entry).readAllBytes()).isEqualTo(expected.get(entry.getName()));
            }
        }
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
            for (Map.Entry<String, byte[]> one : expected.entrySet()) {
                assertThat(zip.getNextEntry().getName()).isEqualTo(one.getKey());
                assertThat(zip.readAllBytes()).isEqualTo(one.getValue());
            }
            assertThat(zip.getNextEntry()).isNull();
        }
    }

    @Test
    void namesAreSortedByTheirBytes() {
        // U+FFxx goes before U+1xxxx by code point and bytes, and behind it by Java's own order
        assertThat(Stream.of("\uD83D\uDE97", "\uFF41", "z").sorted(PackPath.ORDER))
                .containsExactly("z", "\uFF41", "\uD83D\uDE97");
    }

    /**
     * A pack in which anything at all was changed is refused in one line, or is the same pack: bytes flipped, set, cut out, put in and
     * doubled at random, from a fixed seed.
     */
    @Test
    void whateverHappensToItsBytesItIsTheSamePackOrRefused() {
        byte[] good = PackFile.bytes(Packs.signed());
        String hash = Packs.signed().hash();
        Random chance = new Random(20261201);
        int refused = 0;
        for (int round = 0; round < 300; round++) {
            byte[] bytes = mutated(good, chance);
            try {
                Pack pack = PackFile.read("fuzz.pack", bytes);
                assertThat(pack.hash()).isEqualTo(hash);
                assertThat(bytes).as("round " + round).isEqualTo(good);
            } catch (PackRefused e) {
                refused++;
                assertThat(e.getMessage())
                        .as("round " + round)
                        .startsWith("fuzz.pack: ")
                        .doesNotContain("\n", "{0}");
            }
        }
        assertThat(refused).isGreaterThan(280);
    }

    private static byte[] mutated(byte[] good, Random chance) {
        byte[] bytes = good.clone();
        int changes = 1 + chance.nextInt(3);
        for (int i = 0; i < changes; i++) {
            int at = chance.nextInt(bytes.length);
            int length = Math.min(1 + chance.nextInt(40), bytes.length - at);
            switch (chance.nextInt(5)) {
                case 0 -> bytes[at] ^= (byte) (1 << chance.nextInt(8));
                case 1 -> bytes[at] = (byte) chance.nextInt(256);
                case 2 ->
                    bytes = joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, at + length, bytes.length));
                case 3 ->
                    bytes = joined(Arrays.copyOf(bytes, at + length), Arrays.copyOfRange(bytes, at, bytes.length));
                default -> bytes = Arrays.copyOf(bytes, Math.max(1, at));
            }
        }
        return bytes;
    }

    private static byte[] joined(byte[] head, byte[] tail) {
        byte[] all = Arrays.copyOf(head, head.length + tail.length);
        System.arraycopy(tail, 0, all, head.length, tail.length);
        return all;
    }

    // folders

    @Test
    void aFolderHoldsTheSamePack() throws IOException {
        Path pack = folder.resolve("pack");
        PackFolder.write(Packs.signed(), pack);
        Files.createDirectories(pack.resolve(".git/hooks"));
        Files.writeString(pack.resolve(".git/hooks/post-checkout"), "not ours");

        assertThat(PackFile.bytes(PackFile.readAny(pack))).isEqualTo(PackFile.bytes(Packs.signed()));
        assertThat(pack.resolve(".gitattributes")).hasContent("* -text");
    }

    @Test
    void aLaterVersionTakesTheEarliersFilesAway() throws IOException {
        Path pack = folder.resolve("pack");
        PackFolder.write(Packs.signed(), pack);
        SortedMap<String, byte[]> less = new TreeMap<>(Packs.content());
        less.remove("README.md");

        PackFolder.write(Packs.of(less), pack);

        assertThat(pack.resolve("README.md")).doesNotExist();
        assertThat(pack.resolve("signature.json")).doesNotExist();
        assertThat(PackFolder.read(pack).hash()).isEqualTo(Packs.of(less).hash());
    }

    @Test
    void aFolderWithOtherThingsIsNotWrittenInto() throws IOException {
        Files.writeString(folder.resolve("holiday.txt"), "mine");

        assertThatThrownBy(() -> PackFolder.write(Packs.signed(), folder))
                .isInstanceOf(PackRefused.class)
                .hasMessageContaining(": 'holiday.txt' is no file that a pack has");
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactly(folder.resolve("holiday.txt"));
        }
    }

    @Test
    void aFolderWithALinkIsRefused() throws IOException {
        PackFolder.write(Packs.signed(), folder);
        Path script = folder.resolve("stages/rinse.groovy");
        Path outside = Files.move(script, folder.resolveSibling(folder.getFileName() + "-outside"));
        Files.createSymbolicLink(script, outside);

        assertThatThrownBy(() -> PackFolder.read(folder))
                .hasMessage(
                        folder.getFileName() + ": 'stages/rinse.groovy' is a link, and a pack has files only; ask its"
                                + " maker to put the file itself there");
        Files.delete(outside);
    }

    @Test
    void aFolderWithAFileTooManyOrTooFewIsRefused() throws IOException {
        PackFolder.write(Packs.signed(), folder);
        Files.writeString(folder.resolve("stages/own.groovy"), "state 'x', means: 'y'");
        assertThatThrownBy(() -> PackFolder.read(folder))
                .hasMessageEndingWith(
                        "'stages/own.groovy' is not listed in pack.json; do not use this pack, or take the"
                                + " file out");

        Files.delete(folder.resolve("stages/own.groovy"));
        Files.delete(folder.resolve("stages/rinse.groovy"));
        assertThatThrownBy(() -> PackFolder.read(folder))
                .hasMessageEndingWith(
                        "'stages/rinse.groovy' is listed in pack.json and is not there; fetch the pack again"
                                + " or ask its maker");
    }
}
