package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import baywright.library.LibraryLoader.Loaded;
import baywright.script.DamagedData;
import baywright.script.PlainReader;
import baywright.script.PlainWriter;
import baywright.script.ScriptFault;
import java.io.File;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A library comes out the same with any cache; a cache that cannot be trusted is left alone and written again. */
class ScriptCacheTest {

    private static final List<Item> ITEMS = List.of(Libraries.IRON_REMOVER, Libraries.CLAY);

    @TempDir
    private Path temp;

    private Path scripts;
    private Path kept;
    private Loaded without;

    @BeforeEach
    void writeScripts() throws IOException {
        scripts = Files.createDirectories(temp.resolve("stages"));
        kept = temp.resolve("cache").resolve("scripts");
        Files.writeString(scripts.resolve("base.groovy"), Libraries.BASE);
        Files.writeString(scripts.resolve("iron.groovy"), LibraryLoaderTest.IRON_REMOVAL);
        Files.writeString(scripts.resolve("again.groovy"), """
                def one = 1.min
                constant 'extra', one * 2
                def half = { it / 2 }
                stage('again', like: 'iron-removal') {
                    adds { time { attended half(extra), extra, extra * 2 } }
                }
                """);
        Files.writeString(scripts.resolve("warned.groovy"), Libraries.stage("after { sets 'wahsed' }"));
        Files.writeString(scripts.resolve("broken.groovy"), "stage('broken') { title 'x' ((( }");
        without = LibraryLoader.load(scripts, ITEMS);
        assertThat(without.problems()).isNotEmpty();
    }

    private Loaded load() throws IOException {
        return LibraryLoader.load(scripts, ITEMS, ScriptCache.in(kept));
    }

    private Path file() {
        return ScriptCache.in(kept).fileOf(scripts).orElseThrow().path();
    }

    private void same(Loaded loaded) {
        SameLibrary.check(loaded, without);
    }

    private void isRefusedAndMended(String why) throws IOException {
        Loaded loaded = load();
        same(loaded);
        assertThat(loaded.notes()).containsExactly(file() + ": what was kept of this library is not used: " + why);
        Loaded again = load();
        same(again);
        assertThat(again.notes()).isEmpty();
    }

    /** What every edit and every new version brings about is no news. */
    private void isReadAgainInSilence() throws IOException {
        byte[] old = Files.readAllBytes(file());
        Loaded loaded = load();
        same(loaded);
        assertThat(loaded.notes()).isEmpty();
        assertThat(Files.readAllBytes(file())).isNotEqualTo(old);
        Loaded again = load();
        same(again);
        assertThat(again.notes()).isEmpty();
    }

    @Test
    void theSecondLoadIsThatOfTheCache() throws IOException {
        same(load());
        byte[] first = Files.readAllBytes(file());
        Loaded second = load();
        same(second);
        assertThat(second.notes()).isEmpty();
        assertThat(Files.readAllBytes(file())).isEqualTo(first);
    }

    private static final String RULES = """
            rule('no-strip') {
                title 'No strip'; reason 'because'; at families: 'decontamination'
                forbids { holds('panel-wiped') && uses('thioglycolate') }
            }
            rule('unsound') {
                title 'Unsound'; reason 'because'; at families: 'decontamination'
                forbids { uses('thioglycolat') }
            }
            """;

    @Test
    void rulesAreThoseOfTheTextsAmongErrors() throws IOException {
        Files.writeString(scripts.resolve("rules.groovy"), RULES);
        without = LibraryLoader.load(scripts, ITEMS);
        assertThat(without.library().rules()).extracting(Rule::id).containsExactly("no-strip");
        same(load());
        Loaded second = load();
        same(second);
        assertThat(second.notes()).isEmpty();
    }

    @Test
    void rulesOfASoundLibraryComeOutOfTheCacheAndJudgeTheSame() throws IOException {
        Files.delete(scripts.resolve("warned.groovy"));
        Files.delete(scripts.resolve("broken.groovy"));
        Files.writeString(scripts.resolve("rules.groovy"), RULES.substring(0, RULES.indexOf("rule('unsound')")));
        without = LibraryLoader.load(scripts, ITEMS);
        assertThat(without.errors()).isEmpty();
        load();
        Loaded second = load();
        same(second);
        Rule kept = second.library().rules().get(0);
        assertThat(kept.judge().of(List.of(true, true))).isPresent();
        assertThat(kept.judge().of(List.of(true, false))).isEmpty();
    }

    @Test
    void onlyTheOwnerMayReadOrWriteIt() throws IOException {
        assumePosix();
        load();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(kept)))
                .isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo("rw-------");
        try (Stream<Path> all = Files.list(kept)) {
            assertThat(all).containsExactly(file());
        }
    }

    @Test
    void anyChangedByteIsNoticed() throws IOException {
        load();
        byte[] good = Files.readAllBytes(file());
        Random random = new Random(20_261_125);
        for (int i = 0; i < good.length; i++) {
            byte[] bad = good.clone();
            bad[i] ^= (byte) (1 << random.nextInt(8));
            assertThatThrownBy(() -> LibraryImage.read(bad, BuildMark.here(), new LazyStages()))
                    .isInstanceOf(DamagedData.class);
        }
        good[good.length / 2] ^= 1;
        Files.write(file(), good);
        isRefusedAndMended("it is damaged");
    }

    @Test
    void aCutFileIsNoticed() throws IOException {
        load();
        byte[] good = Files.readAllBytes(file());
        for (int length : new int[] {0, 15, 16, good.length - 1}) {
            Files.write(file(), Arrays.copyOf(good, length));
            isRefusedAndMended(length < 16 ? "it is no library kept by this program" : "it is damaged");
        }
    }

    @Test
    void aFileOfAnotherProgramIsLeftOut() throws IOException {
        load();
        Files.writeString(file(), "something else that is long enough to be looked at");
        isRefusedAndMended("it is no library kept by this program");
    }

    @Test
    void aFileOfAnotherFormIsLeftOut() throws IOException {
        load();
        byte[] bytes = Files.readAllBytes(file());
        bytes[9]++;
        Files.write(file(), bytes);
        isReadAgainInSilence();
    }

    @Test
    void aFileOfAnotherBuildIsLeftOut() throws IOException, DamagedData {
        load();
        LibraryImage image = LibraryImage.read(Files.readAllBytes(file()), BuildMark.here(), new LazyStages());
        Files.write(file(), image.bytes("another build"));
        isReadAgainInSilence();
    }

    @Test
    void changedTextsAreReadAgainAndOnlyThose() throws IOException {
        load();
        Files.writeString(scripts.resolve("warned.groovy"), Libraries.stage("after { sets 'washed' }"));
        Files.writeString(scripts.resolve("more.groovy"), "surface 'wheel', means: 'rims'");
        Files.delete(scripts.resolve("broken.groovy"));
        without = LibraryLoader.load(scripts, ITEMS);
        isReadAgainInSilence();
    }

    @Test
    void changedPricesAreSeen() throws IOException {
        load();
        Loaded dearer = LibraryLoader.load(scripts, List.of(Libraries.CLAY), ScriptCache.in(kept));
        SameLibrary.check(dearer, LibraryLoader.load(scripts, List.of(Libraries.CLAY)));
        assertThat(dearer.problems()).isNotEqualTo(without.problems());
    }

    @Test
    void aFileThatOthersMayWriteToIsLeftOut() throws IOException {
        assumePosix();
        load();
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw----rw-"));
        isRefusedAndMended("others may write to it");
    }

    @Test
    void aFolderThatOthersMayWriteToIsLeftOutAndClosed() throws IOException {
        assumePosix();
        load();
        Files.setPosixFilePermissions(kept, PosixFilePermissions.fromString("rwxrwxrwx"));
        isRefusedAndMended("others may write to its folder");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(kept)))
                .isEqualTo("rwx------");
    }

    @Test
    void aFileOfSomeoneElseIsLeftOut() throws IOException {
        assumePosix();
        load();
        boolean given;
        try {
            Files.setOwner(
                    file(),
                    FileSystems.getDefault().getUserPrincipalLookupService().lookupPrincipalByName("nobody"));
            given = true;
        } catch (IOException e) {
            given = false;
        }
        assumeThat(given)
                .as("only the system's administrator may give files away")
                .isTrue();
        isRefusedAndMended("it belongs to someone else");
    }

    @Test
    void aFileThatIsTooLargeIsNotRead() throws IOException {
        load();
        try (RandomAccessFile large = new RandomAccessFile(file().toFile(), "rw")) {
            large.setLength(CacheFile.MOST + 1L);
        }
        isRefusedAndMended("it is larger than " + CacheFile.MOST + " bytes");
    }

    /** A forger gets the check sum right; then what he wrote is data within its limits, or of no use. */
    @Test
    void forgedDataOfAnyKindGivesALibraryOrIsLeftOut() throws IOException {
        load();
        byte[] good = Files.readAllBytes(file());
        Random random = new Random(20_261_126);
        for (int i = 0; i < 100; i++) {
            byte[] forged = good.clone();
            for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
                forged[16 + random.nextInt(good.length - 16)] = (byte) random.nextInt(256);
            }
            CRC32C sum = new CRC32C();
            sum.update(forged, 16, forged.length - 16);
            ByteBuffer.wrap(forged).putInt(12, (int) sum.getValue());
            Files.write(file(), forged);

            Loaded loaded = load();

            assertThat(loaded.library()).isNotNull();
            loaded.library().stages().forEach(ScriptCacheTest::ask);
        }
    }

    /** What a stage says is checked where it is asked for. */
    private static void ask(Stage stage) {
        try {
            stage.usualTerms();
        } catch (ScriptFault e) {
            assertThat(e.getMessage()).isNotBlank();
        }
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        assumePosix();
        load();
        Path elsewhere = temp.resolve("elsewhere");
        Files.move(file(), elsewhere);
        byte[] there = Files.readAllBytes(elsewhere);
        Files.createSymbolicLink(file(), elsewhere);
        isRefusedAndMended("it is a link or no plain file");
        assertThat(Files.readAllBytes(elsewhere)).isEqualTo(there);
        assertThat(Files.isSymbolicLink(file())).isFalse();
    }

    @Test
    void aFolderThatIsALinkIsNotUsed() throws IOException {
        assumePosix();
        load();
        Path elsewhere = temp.resolve("elsewhere");
        Files.move(kept, elsewhere);
        Files.createSymbolicLink(kept, elsewhere);
        Loaded loaded = load();
        same(loaded);
        assertThat(loaded.notes())
                .containsExactly(
                        file() + ": what was kept of this library is not used: its folder is a link or no plain folder",
                        file()
                                + ": this library is not kept for the next time: its folder is a link or no plain folder");
    }

    @Test
    void aFolderInThePlaceOfTheFileIsSaid() throws IOException {
        Files.createDirectories(file().resolve("inner"));
        assumePosix();
        Files.setPosixFilePermissions(kept, PosixFilePermissions.fromString("rwx------"));
        Loaded loaded = load();
        same(loaded);
        assertThat(loaded.notes()).hasSize(2).allMatch(n -> n.startsWith(file() + ": "));
    }

    @Test
    void aForgedTreeIsReadAgainFromItsText() throws IOException, DamagedData {
        load();
        LibraryImage image = LibraryImage.read(Files.readAllBytes(file()), BuildMark.here(), new LazyStages());
        PlainWriter forged = new PlainWriter();
        forged.text("iron.groovy");
        forged.text(image.scripts().get("iron.groovy").textHash());
        forged.yes(true);
        forged.count(0);
        forged.block(new byte[] {5, 6, 7});
        Map<String, KeptScript> trees = new HashMap<>(image.scripts());
        trees.put("iron.groovy", KeptScript.read(new PlainReader(forged.bytes())));
        LibraryImage other = new LibraryImage(image.inputs(), trees, image.problems(), image.stages());
        Files.write(file(), other.bytes(BuildMark.here()));
        same(load());
    }

    private Path copy() throws IOException {
        Path copy = Files.createDirectories(temp.resolve("copy"));
        try (Stream<Path> all = Files.list(scripts)) {
            for (Path one : all.toList()) {
                Files.copy(one, copy.resolve(one.getFileName()));
            }
        }
        return copy;
    }

    @Test
    void aCopyOfAKeptLibraryIsLoadedWithoutAnyClassOfGroovyAndThenKeptItself() throws Exception {
        load();
        Path copy = copy();

        loadsWithoutAnyClassOfGroovy(copy);

        assertThat(ScriptCache.in(kept).fileOf(copy).orElseThrow().path()).hasSameBinaryContentAs(file());
    }

    @Test
    void aLibraryLikeTheOneKeptLastComesOutAsWithoutACache() throws IOException {
        load();
        Path copy = copy();
        Files.writeString(copy.resolve("warned.groovy"), Libraries.stage("after { sets 'washed' }"));
        Files.delete(copy.resolve("broken.groovy"));
        Loaded fresh = LibraryLoader.load(copy, ITEMS);
        for (int i = 0; i < 2; i++) {
            Loaded loaded = LibraryLoader.load(copy, ITEMS, ScriptCache.in(kept));
            SameLibrary.check(loaded, fresh);
            assertThat(loaded.notes()).isEmpty();
        }
    }

    @Test
    void fromADamagedFileOfAnotherLibraryNothingIsTakenAndNothingIsSaid() throws IOException {
        load();
        Files.write(file(), new byte[100]);
        Loaded loaded = LibraryLoader.load(copy(), ITEMS, ScriptCache.in(kept));
        same(loaded);
        assertThat(loaded.notes()).isEmpty();
    }

    @Test
    void onlyTheLibrariesUsedLastStay() throws IOException {
        for (int i = 0; i < 25; i++) {
            Path one = Files.createDirectories(temp.resolve("library-" + i));
            Files.writeString(one.resolve("a.groovy"), "surface 'paint', means: 'paint'");
            LibraryLoader.load(one, List.of(), ScriptCache.in(kept));
        }
        try (Stream<Path> all = Files.list(kept)) {
            assertThat(all.count()).isLessThanOrEqualTo(21);
        }
    }

    @Test
    void everySystemHasItsPlace() {
        Path home = temp.toAbsolutePath();
        String own = home.toString();
        assertThat(ScriptCache.userFolder(Map.of(), "Linux", own)).contains(home.resolve(".cache/baywright/scripts"));
        assertThat(ScriptCache.userFolder(Map.of("XDG_CACHE_HOME", own), "Linux", "/elsewhere"))
                .contains(home.resolve("baywright/scripts"));
        assertThat(ScriptCache.userFolder(Map.of("XDG_CACHE_HOME", "relative"), "Linux", own))
                .contains(home.resolve(".cache/baywright/scripts"));
        assertThat(ScriptCache.userFolder(Map.of(), "Mac OS X", own))
                .contains(home.resolve("Library/Caches/baywright/scripts"));
        assertThat(ScriptCache.userFolder(Map.of("LOCALAPPDATA", own), "Windows 11", ""))
                .contains(home.resolve("Baywright/scripts"));
        assertThat(ScriptCache.userFolder(Map.of(), "Windows 11", "")).isEqualTo(Optional.empty());
        assertThat(ScriptCache.userFolder(Map.of(), "Linux", "")).isEqualTo(Optional.empty());
    }

    @Test
    void aKeptLibraryIsLoadedWithoutAnyClassOfGroovy() throws IOException, InterruptedException {
        load();
        loadsWithoutAnyClassOfGroovy(scripts);
    }

    private void loadsWithoutAnyClassOfGroovy(Path folder) throws IOException, InterruptedException {
        Path log = temp.resolve("classes.log");
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load:file=" + log + "::filecount=0",
                        "-cp",
                        System.getProperty("java.class.path"),
                        CachedLoadChild.class.getName(),
                        folder.toString(),
                        kept.toString())
                .redirectErrorStream(true)
                .redirectOutput(new File(temp.toFile(), "out"))
                .start();
        assertThat(child.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(Files.readString(temp.resolve("out"))).isEqualTo("stages 3, notes []\n");
        String classes = Files.readString(log);
        assertThat(classes).contains("baywright.library.LibraryImage");
        assertThat(classes)
                .doesNotContain(" groovy")
                .doesNotContain("org.codehaus.groovy")
                .doesNotContain("org.apache.groovy");
    }

    private static void assumePosix() {
        assumeThat(FileSystems.getDefault().supportedFileAttributeViews()).contains("posix");
    }
}
