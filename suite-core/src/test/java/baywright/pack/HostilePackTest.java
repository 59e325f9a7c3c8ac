package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import baywright.workspace.SharedItems;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Packs made to do harm, each refused with its line. What they try is the catalogue of archive attacks that is common knowledge: CWE-22
 * (path traversal), CWE-59 (links), CWE-178 (case), CWE-409 (bombs), CWE-436 (two readers, two contents).
 */
class HostilePackTest {

    private static final String RINSE = "stages/rinse.groovy";

    /** A pack that must be refused, and the line that says why, after the name of its file. */
    record Hostile(String what, byte[] bytes, Refusal refusal, String line) {
        @Override
        public String toString() {
            return what;
        }
    }

    private static SortedMap<String, byte[]> good() {
        return new TreeMap<>(Packs.signed().allFiles());
    }

    private static byte[] zip(Consumer<RawZip> change) {
        return RawZip.of(good()).with(change).bytes();
    }

    private static byte[] renamed(String to) {
        return zip(zip -> zip.entry(RINSE).rename(to));
    }

    private static byte[] entry(Consumer<RawZip.Entry> change) {
        return zip(zip -> change.accept(zip.entry(RINSE)));
    }

    private static byte[] files(Consumer<SortedMap<String, byte[]>> change) {
        SortedMap<String, byte[]> files = good();
        change.accept(files);
        return PackZip.write(files);
    }

    /** Content with a manifest that fits it, as a maker would write it who means harm. */
    private static byte[] listed(Consumer<SortedMap<String, byte[]>> change) {
        SortedMap<String, byte[]> content = Packs.content();
        change.accept(content);
        SortedMap<String, byte[]> files = new TreeMap<>(content);
        files.put(Pack.MANIFEST, ManifestJson.bytes(Packs.manifest(content)));
        return PackZip.write(files);
    }

    private static byte[] manifest(String from, String to) {
        return files(files -> {
            String text = new String(files.get(Pack.MANIFEST), StandardCharsets.UTF_8);
            assertThat(text).contains(from);
            files.put(Pack.MANIFEST, Packs.bytes(text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to))));
            files.remove(Pack.SIGNATURE);
        });
    }

    private static byte[] signature(String from, String to) {
        return files(files -> {
            String text = new String(files.get(Pack.SIGNATURE), StandardCharsets.UTF_8);
            assertThat(text).contains(from);
            files.put(Pack.SIGNATURE, Packs.bytes(text.replace(from, to)));
        });
    }

    private static byte[] deflated(byte[] data) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflate =
                new DeflaterOutputStream(out, new Deflater(Deflater.BEST_COMPRESSION, true))) {
            deflate.write(data);
        } catch (IOException e) {
            throw new IllegalStateException("memory does not fail", e);
        }
        return out.toByteArray();
    }

    private static byte[] bomb() {
        byte[] zeroes = new byte[1 << 20];
        return entry(entry -> {
            RawZip.Entry honest = new RawZip.Entry(RINSE, zeroes);
            entry.data = deflated(zeroes);
            entry.method = 8;
            entry.crc = honest.crc;
            entry.size = zeroes.length;
            entry.localSize = zeroes.length;
            entry.packed = entry.data.length;
        });
    }

    private static byte[] patched(int fromEnd, int... bytes) {
        byte[] all = PackFile.bytes(Packs.signed());
        for (int i = 0; i < bytes.length; i++) {
            all[all.length - fromEnd + i] = (byte) bytes[i];
        }
        return all;
    }

    static List<Hostile> hostile() {
        byte[] whole = PackFile.bytes(Packs.signed());
        List<Hostile> all = new ArrayList<>();
        // the file
        all.add(new Hostile("empty", new byte[0], Refusal.EMPTY, "the file is empty; fetch it again"));
        all.add(new Hostile(
                "no archive",
                Packs.bytes("stage('rinse') { title 'Rinse' }"),
                Refusal.NO_ARCHIVE,
                "this is no pack; give a file that 'pack make' wrote, or a folder that holds pack.json"));
        all.add(new Hostile(
                "cut in the directory",
                Arrays.copyOf(whole, whole.length - 30),
                Refusal.TRUNCATED,
                "the file ends too early; fetch it again"));
        all.add(new Hostile(
                "cut in a file",
                Arrays.copyOf(whole, 300),
                Refusal.TRUNCATED,
                "the file ends too early; fetch it again"));
        all.add(new Hostile(
                "a program before it",
                zip(zip -> {
                    zip.before = Packs.bytes("#!/bin/sh\n");
                    zip.shift = true;
                }),
                Refusal.GAP,
                "'README.md' begins at byte 10 and not at 0, where the file before it ends; fetch it again or ask its"
                        + " maker"));
        all.add(new Hostile(
                "a program before it, places as if it were not there",
                zip(zip -> zip.before = Packs.bytes("#!/bin/sh\n")),
                Refusal.BEFORE,
                "10 bytes stand before the first file, where a pack has nothing; fetch it again or ask its maker"));
        all.add(new Hostile(
                "bytes behind it",
                zip(zip -> zip.behind = new byte[1]),
                Refusal.BEHIND,
                "1 byte stands behind the end, where a pack has nothing; fetch it again or ask its maker"));
        all.add(new Hostile(
                "a second archive behind it",
                zip(zip -> zip.behind = RawZip.of(good()).bytes()),
                Refusal.BEFORE,
                "2,490 bytes stand before the first file, where a pack has nothing; fetch it again or ask its maker"));
        all.add(new Hostile(
                "bytes before the directory",
                zip(zip -> zip.between = new byte[7]),
                Refusal.BETWEEN,
                "7 bytes stand between the files and their directory, where a pack has nothing; fetch it again or ask"
                        + " its maker"));
        all.add(new Hostile(
                "a comment",
                zip(zip -> zip.comment = Packs.bytes("hello")),
                Refusal.COMMENT,
                "the archive carries a comment, and a pack has none; ask its maker for what 'pack make' wrote"));
        all.add(new Hostile(
                "large form",
                patched(12, 0xFF, 0xFF),
                Refusal.ZIP64,
                "the archive is of the large form that a pack never needs; ask its maker for what 'pack make' wrote"));
        all.add(new Hostile(
                "one of several parts",
                zip(zip -> zip.disk = 1),
                Refusal.SPLIT,
                "the archive is one part of several, and a pack is whole; ask its maker for what 'pack make' wrote"));
        all.add(new Hostile(
                "more files said than there are",
                zip(zip -> zip.more = 1),
                Refusal.DIRECTORY,
                "the directory of the archive is damaged; fetch it again"));
        all.add(new Hostile(
                "fewer files said than there are",
                zip(zip -> zip.more = -1),
                Refusal.COUNT,
                "the archive says that it has 5 files, and has another number; fetch it again or ask its maker"));
        all.add(new Hostile(
                "too many files said",
                zip(zip -> zip.more = 60_000),
                Refusal.MANY_FILES,
                "the archive has 60,006 files, and a pack has at most 10,000; part it in several packs"));
        all.add(new Hostile(
                "files out of order",
                zip(zip -> Collections.swap(zip.entries, 0, 3)),
                Refusal.ORDER,
                "'items.json' stands behind 'signature.json', and the files of a pack are in order of name; ask its maker"
                        + " for what 'pack make' wrote"));
        all.add(new Hostile(
                "two files in one place",
                entry(entry -> entry.offset = 0),
                Refusal.GAP,
                "'stages/rinse.groovy' begins at byte 0 and not at 1515, where the file before it ends; fetch it again or"
                        + " ask its maker"));
        // names that lead elsewhere
        all.add(new Hostile(
                "up and out",
                renamed("stages/../../../rinse.groovy"),
                Refusal.NAME_UPWARDS,
                "'stages/../../../rinse.groovy' leads out of the pack; do not use this pack"));
        all.add(new Hostile(
                "absolute",
                renamed("/etc/cron.d/rinse"),
                Refusal.NAME_ABSOLUTE,
                "'/etc/cron.d/rinse' is not below the pack, since its name begins at the root; do not use this pack"));
        all.add(new Hostile(
                "another computer's share",
                renamed("\\\\server\\share\\rinse"),
                Refusal.NAME_ABSOLUTE,
                "'\\\\server\\share\\rinse' is not below the pack, since its name begins at the root; do not use this"
                        + " pack"));
        all.add(new Hostile(
                "a drive",
                renamed("C:/rinse.groovy"),
                Refusal.NAME_DRIVE,
                "'C:/rinse.groovy' is not below the pack, since its name begins with a drive; do not use this pack"));
        all.add(new Hostile(
                "backslashes up",
                renamed("stages\\..\\..\\rinse"),
                Refusal.NAME_BACKSLASH,
                "'stages\\..\\..\\rinse' has a backslash in its name; part folders with /"));
        all.add(new Hostile(
                "a stream of a file",
                renamed("stages/rinse.groovy:hidden"),
                Refusal.NAME_SIGN,
                "'stages/rinse.groovy:hidden' has the sign : in its name, which not every system takes; rename it"));
        all.add(new Hostile(
                "a short name of Windows",
                renamed("stages/GIT~1/config"),
                Refusal.NAME_SIGN,
                "'stages/GIT~1/config' has the sign ~ in its name, which not every system takes; rename it"));
        all.add(new Hostile(
                "git's own folder",
                renamed(".git/hooks/post-checkout"),
                Refusal.NAME_HIDDEN,
                "'.git/hooks/post-checkout' is hidden, since a part of its name begins with a point; rename it"));
        all.add(new Hostile(
                "an empty part",
                renamed("stages//rinse.groovy"),
                Refusal.NAME_EMPTY_PART,
                "'stages//rinse.groovy' has an empty part in its name; rename it"));
        all.add(new Hostile(
                "a part that stays",
                renamed("stages/./rinse.groovy"),
                Refusal.NAME_EMPTY_PART,
                "'stages/./rinse.groovy' has an empty part in its name; rename it"));
        all.add(new Hostile(
                "no name",
                renamed(""),
                Refusal.NAME_EMPTY,
                "a file has no name; ask its maker for what 'pack make' wrote"));
        // names that mean something else on another system
        all.add(new Hostile(
                "a device",
                renamed("stages/nul.groovy"),
                Refusal.NAME_RESERVED,
                "'stages/nul.groovy' cannot be a file on Windows, which keeps the name 'nul.groovy'; rename it"));
        all.add(new Hostile(
                "a numbered device",
                renamed("stages/LPT1/rinse.groovy"),
                Refusal.NAME_RESERVED,
                "'stages/LPT1/rinse.groovy' cannot be a file on Windows, which keeps the name 'LPT1'; rename it"));
        all.add(new Hostile(
                "a point at the end",
                renamed("stages/rinse.groovy."),
                Refusal.NAME_ENDS,
                "'stages/rinse.groovy.' has a part that begins with a blank or ends in a blank or a point, which Windows"
                        + " drops; rename it"));
        all.add(new Hostile(
                "a blank at the end",
                renamed("stages /rinse.groovy"),
                Refusal.NAME_ENDS,
                "'stages /rinse.groovy' has a part that begins with a blank or ends in a blank or a point, which Windows"
                        + " drops; rename it"));
        all.add(new Hostile(
                "a control character",
                renamed("stages/rin\u001b[2Jse.groovy"),
                Refusal.NAME_INVISIBLE,
                "'stages/rinU+001B[2Jse.groovy' has the character U+001B in its name, which does not show; rename it"));
        all.add(
                new Hostile(
                        "a zero character",
                        renamed("stages/rinse.groovy\0.txt"),
                        Refusal.NAME_INVISIBLE,
                        "'stages/rinse.groovyU+0000.txt' has the character U+0000 in its name, which does not show; rename it"));
        all.add(new Hostile(
                "a name read from the right",
                renamed("stages/rinse\u202eyvoorg.txt"),
                Refusal.NAME_INVISIBLE,
                "'stages/rinseU+202Eyvoorg.txt' has the character U+202E in its name, which does not show; rename it"));
        all.add(new Hostile(
                "accents apart",
                renamed("stages/spu\u0308len.groovy"),
                Refusal.NAME_DECOMPOSED,
                "'stages/spu\u0308len.groovy' is written with letters and accents apart (not in Unicode form NFC); rename"
                        + " it"));
        all.add(new Hostile(
                "a very long name",
                renamed("stages/" + "r".repeat(101)),
                Refusal.NAME_LONG,
                "'stages/" + "r".repeat(101)
                        + "' has a name that is too long: at most 200 bytes, 8 parts and 100 characters"
                        + " a part; shorten it"));
        all.add(new Hostile(
                "a very deep name",
                renamed("stages/a/b/c/d/e/f/g/h"),
                Refusal.NAME_LONG,
                "'stages/a/b/c/d/e/f/g/h' has a name that is too long: at most 200 bytes, 8 parts and 100 characters a"
                        + " part; shorten it"));
        all.add(new Hostile(
                "no UTF-8",
                entry(entry -> {
                    entry.name = new byte[] {'s', (byte) 0xFF};
                    entry.localName = entry.name;
                }),
                Refusal.NAME_BYTES,
                "the name of a file is not UTF-8; ask its maker for what 'pack make' wrote"));
        // names that clash
        all.add(new Hostile(
                "twice",
                zip(zip -> zip.entries.add(5, new RawZip.Entry(RINSE, Packs.bytes("other")))),
                Refusal.NAME_TWICE,
                "'stages/rinse.groovy' is there twice; keep one of the two"));
        all.add(new Hostile(
                "capitals",
                listed(files -> files.put("stages/Rinse.groovy", Packs.bytes("other"))),
                Refusal.NAME_CASE,
                "'stages/Rinse.groovy' and 'stages/rinse.groovy' differ by capitals alone and are one on many systems;"
                        + " rename one"));
        all.add(new Hostile(
                "capitals of a folder",
                listed(files -> {
                    files.put("stages/Wash/a.groovy", Packs.bytes(""));
                    files.put("stages/wash/b.groovy", Packs.bytes(""));
                }),
                Refusal.NAME_CASE,
                "'stages/Wash' and 'stages/wash' differ by capitals alone and are one on many systems; rename one"));
        all.add(new Hostile(
                "the sharp s",
                listed(files -> {
                    files.put("stages/gross.groovy", Packs.bytes(""));
                    files.put("stages/groß.groovy", Packs.bytes(""));
                }),
                Refusal.NAME_ALIKE,
                "'stages/gross.groovy' and 'stages/groß.groovy' are written with forms of the same letters and are one on"
                        + " some systems; rename one"));
        all.add(new Hostile(
                "wide letters",
                listed(files -> files.put("stages/ｒinse.groovy", Packs.bytes(""))),
                Refusal.NAME_ALIKE,
                "'stages/rinse.groovy' and 'stages/ｒinse.groovy' are written with forms of the same letters and are one on"
                        + " some systems; rename one"));
        all.add(new Hostile(
                "a file where a folder must be",
                listed(files -> files.put("stages/rinse.groovy/more.groovy", Packs.bytes(""))),
                Refusal.NAME_FOLDER,
                "'stages/rinse.groovy' is a file, and 'stages/rinse.groovy/more.groovy' needs a folder of that name; rename"
                        + " one"));
        // kinds of entries
        all.add(
                new Hostile(
                        "a link",
                        entry(entry -> {
                            entry.attributes = 0xA1FF << 16;
                            entry.data = Packs.bytes("/etc/passwd");
                        }),
                        Refusal.ENTRY_LINK,
                        "'stages/rinse.groovy' is a link, and a pack has files only; ask its maker to put the file itself there"));
        all.add(
                new Hostile(
                        "a folder by its name",
                        renamed("stages/rinse/"),
                        Refusal.ENTRY_FOLDER,
                        "'stages/rinse/' is a folder, and a pack names its files only; ask its maker for what 'pack make' wrote"));
        all.add(new Hostile(
                "a folder by its kind",
                entry(entry -> entry.attributes = 0x41FF << 16),
                Refusal.ENTRY_FOLDER,
                "'stages/rinse.groovy' is a folder, and a pack names its files only; ask its maker for what 'pack make'"
                        + " wrote"));
        all.add(new Hostile(
                "a block device",
                entry(entry -> entry.attributes = 0x61FF << 16),
                Refusal.ENTRY_DEVICE,
                "'stages/rinse.groovy' is neither file nor folder; do not use this pack"));
        all.add(new Hostile(
                "a program",
                entry(entry -> entry.attributes = 0x81ED << 16),
                Refusal.ENTRY_STRANGE,
                "'stages/rinse.groovy' has a header that 'pack make' does not write, such as another time; fetch it again"
                        + " or ask its maker"));
        all.add(new Hostile(
                "encrypted",
                entry(entry -> entry.flags |= 1),
                Refusal.ENTRY_ENCRYPTED,
                "'stages/rinse.groovy' is encrypted, and a pack is open to read; ask its maker for what 'pack make'"
                        + " wrote"));
        all.add(new Hostile(
                "a thousand times as large unpacked",
                bomb(),
                Refusal.ENTRY_COMPRESSED,
                "'stages/rinse.groovy' is compressed, and a pack stores files as they are; ask its maker for what 'pack"
                        + " make' wrote"));
        all.add(new Hostile(
                "size told afterwards",
                entry(entry -> entry.flags |= 8),
                Refusal.ENTRY_STREAMED,
                "'stages/rinse.groovy' has its size behind it, and a pack has it before; ask its maker for what 'pack make'"
                        + " wrote"));
        all.add(new Hostile(
                "four gigabytes said",
                entry(entry -> {
                    entry.size = -2;
                    entry.packed = -2;
                }),
                Refusal.ENTRY_LARGE,
                "'stages/rinse.groovy' is larger than 4 MiB, more than a file of a pack can be; ask its maker to part"
                        + " it"));
        all.add(new Hostile(
                "two sizes",
                entry(entry -> entry.size--),
                Refusal.ENTRY_SIZES,
                "'stages/rinse.groovy' has two sizes, and a stored file has one; fetch it again or ask its maker"));
        all.add(new Hostile(
                "extra fields",
                entry(entry -> entry.extra = new byte[] {0x75, 0x70, 0, 0}),
                Refusal.ENTRY_EXTRA,
                "'stages/rinse.groovy' carries extra fields, and a file of a pack has none; ask its maker for what 'pack"
                        + " make' wrote"));
        all.add(new Hostile(
                "a file's comment",
                entry(entry -> entry.comment = Packs.bytes("x")),
                Refusal.ENTRY_COMMENT,
                "'stages/rinse.groovy' carries a comment, and a file of a pack has none; ask its maker for what 'pack make'"
                        + " wrote"));
        all.add(new Hostile(
                "another time",
                entry(entry -> entry.time = 1),
                Refusal.ENTRY_STRANGE,
                "'stages/rinse.groovy' has a header that 'pack make' does not write, such as another time; fetch it again"
                        + " or ask its maker"));
        all.add(new Hostile(
                "a file that reaches into the directory",
                zip(zip -> {
                    RawZip.Entry last = zip.entry("stages/states.groovy");
                    last.size += 40;
                    last.packed += 40;
                    last.localSize += 40;
                }),
                Refusal.ENTRY_BEYOND,
                "'stages/states.groovy' reaches into what stands behind it; fetch it again or ask its maker"));
        all.add(new Hostile(
                "another name in its own header",
                entry(entry -> entry.localName = Packs.bytes("stages/other.groovy")),
                Refusal.ENTRY_TOLD_TWICE,
                "'stages/rinse.groovy' is told otherwise by its own header than by the directory of the archive; do not use"
                        + " this pack"));
        all.add(new Hostile(
                "another size in its own header",
                entry(entry -> entry.localSize = 5),
                Refusal.ENTRY_TOLD_TWICE,
                "'stages/rinse.groovy' is told otherwise by its own header than by the directory of the archive; do not use"
                        + " this pack"));
        all.add(new Hostile(
                "a changed letter",
                entry(entry -> {
                    entry.data = entry.data.clone();
                    entry.data[0] ^= 1;
                }),
                Refusal.ENTRY_DAMAGED,
                "'stages/rinse.groovy' is damaged (its CRC-32 is wrong); fetch it again"));
        // content
        all.add(new Hostile(
                "no manifest",
                files(files -> files.remove(Pack.MANIFEST)),
                Refusal.MANIFEST_MISSING,
                "there is no pack.json in it; give a file that 'pack make' wrote, or a folder that holds pack.json"));
        all.add(new Hostile(
                "nothing at all",
                PackZip.write(new TreeMap<>()),
                Refusal.MANIFEST_MISSING,
                "there is no pack.json in it; give a file that 'pack make' wrote, or a folder that holds pack.json"));
        all.add(new Hostile(
                "an archive in the archive",
                listed(files -> files.put("stages/more.zip", PackFile.bytes(Packs.unsigned()))),
                Refusal.FILE_KIND,
                "'stages/more.zip' is no file that a pack has: scripts, shapes.json and words-LANGUAGE.json in stages/,"
                        + " items.json, README.md and LICENSE.txt; take it out"));
        all.add(new Hostile(
                "the site's own file",
                listed(files -> files.put("shop.json", Packs.bytes("{}"))),
                Refusal.FILE_KIND,
                "'shop.json' is no file that a pack has: scripts, shapes.json and words-LANGUAGE.json in stages/,"
                        + " items.json, README.md and LICENSE.txt; take it out"));
        all.add(new Hostile(
                "a file that is not listed",
                files(files -> files.put("stages/extra.groovy", Packs.bytes("state 'x'"))),
                Refusal.FILE_UNLISTED,
                "'stages/extra.groovy' is not listed in pack.json; do not use this pack, or take the file out"));
        all.add(
                new Hostile(
                        "a file that is missing",
                        files(files -> files.remove(RINSE)),
                        Refusal.FILE_MISSING,
                        "'stages/rinse.groovy' is listed in pack.json and is not there; fetch the pack again or ask its maker"));
        all.add(new Hostile(
                "a longer file",
                files(files -> files.put(RINSE, Packs.bytes(Packs.RINSE + "\n"))),
                Refusal.FILE_SIZE,
                "'stages/rinse.groovy' has 295 bytes, and pack.json says 294; fetch the pack again or ask its maker"));
        all.add(new Hostile(
                "another file of the same size",
                files(files -> files.put(RINSE, Packs.bytes(Packs.RINSE.replace("8.min", "9.min")))),
                Refusal.FILE_HASH,
                "'stages/rinse.groovy' is not the file that pack.json lists (its SHA-256 is another one); fetch the pack"
                        + " again or ask its maker"));
        all.add(new Hostile(
                "no text",
                listed(files -> files.put("stages/states.groovy", new byte[] {(byte) 0xC3})),
                Refusal.FILE_TEXT,
                "'stages/states.groovy' is not UTF-8 text; ask its maker to save it as UTF-8"));
        all.add(new Hostile(
                "prices in secret",
                listed(files -> files.put(
                        "items.json",
                        SharedItems.of(List.of(Packs.shampoo()), Optional.of(CurrencyUnit.GBP))
                                .bytes())),
                Refusal.PRICES,
                "items.json carries prices, and pack.json says that it does not; do not use this pack"));
        all.add(new Hostile(
                "a later language",
                manifest("\"1.3\"", "\"1.999\""),
                Refusal.VOCABULARY,
                "the pack is written in version 1.999 of the stage language, and this program reads up to "
                        + baywright.library.StageLanguage.VERSION + "; use a newer version of the program"));
        all.add(new Hostile(
                "no version",
                manifest("1.2.0", "1.2"),
                Refusal.FILE_UNREADABLE,
                "pack.json:4:14: version: met the text '1.2'; give a version by Semantic Versioning such as \"1.2.0\", at"
                        + " most 64 characters and nine digits a number"));
        all.add(new Hostile(
                "a key twice",
                manifest("\"who\"", "\"id\": \"other\",\n  \"who\""),
                Refusal.FILE_UNREADABLE,
                "pack.json:5:3: the field 'id' is already given in line 3; keep one of the two"));
        all.add(new Hostile(
                "a file listed twice",
                manifest("\"path\": \"items.json\"", "\"path\": \"README.md\""),
                Refusal.FILE_UNREADABLE,
                "pack.json:18:15: files[1].path: the file 'README.md' is listed twice; keep one of the two"));
        all.add(new Hostile(
                "needs itself",
                manifest("\"needs\": []", "\"needs\": [{\"id\": \"gentle-wash\", \"range\": \"^1.0.0\"}]"),
                Refusal.FILE_UNREADABLE,
                "pack.json:8:20: needs[0].id: the pack needs itself; take it out"));
        all.add(new Hostile(
                "no range",
                manifest("\"needs\": []", "\"needs\": [{\"id\": \"base\", \"range\": \"latest\"}]"),
                Refusal.FILE_UNREADABLE,
                "pack.json:8:37: needs[0].range: met the text 'latest'; give conditions such as \">=1.2.0 <2.0.0\" or"
                        + " \"^1.2.0\""));
        // signatures
        all.add(
                new Hostile(
                        "a changed manifest",
                        files(files -> files.put(
                                Pack.MANIFEST,
                                Packs.bytes(new String(files.get(Pack.MANIFEST), StandardCharsets.UTF_8)
                                        .replace("Saltmarsh Quay", "Saltmarsh Quey")))),
                        Refusal.SIGNATURE_WRONG,
                        "the signature is not of this pack.json: one of the two was changed after signing; do not use this pack"));
        all.add(
                new Hostile(
                        "the signature under another key",
                        signature(
                                Packs.key().signer().toString(),
                                Packs.base64("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a")),
                        Refusal.SIGNATURE_WRONG,
                        "the signature is not of this pack.json: one of the two was changed after signing; do not use this pack"));
        all.add(new Hostile(
                "another algorithm",
                signature("Ed25519", "none"),
                Refusal.FILE_UNREADABLE,
                "signature.json:3:16: algorithm: this algorithm is not known here; give \"Ed25519\""));
        all.add(new Hostile(
                "a signature of nothing",
                signature(
                        Base64.getEncoder()
                                .encodeToString(
                                        Packs.key().signature(Packs.unsigned().manifestBytes())),
                        ""),
                Refusal.FILE_UNREADABLE,
                "signature.json:5:16: signature: this is no signature; give 64 bytes in Base64"));
        all.add(new Hostile(
                "a signature with a tail",
                signature("}\n", "}\n\n"),
                Refusal.SIGNATURE_FORM,
                "signature.json is not written in the one way; ask its maker for what 'pack make' wrote"));
        return all;
    }

    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("hostile")
    void isRefusedInOneLineAndNothingIsWritten(Hostile hostile) throws IOException {
        Path file = Files.write(folder.resolve("hostile.pack"), hostile.bytes());

        PackRefused refused = catchThrowableOfType(PackRefused.class, () -> PackFile.read(file));

        assertThat(refused).hasMessage("hostile.pack: " + hostile.line());
        assertThat(refused.refusal()).isEqualTo(hostile.refusal());
        assertThat(refused.getMessage().lines()).hasSize(1);
        try (Stream<Path> left = Files.walk(folder)) {
            assertThat(left).containsExactly(folder, file);
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(hostile.bytes());
    }

    /** The packs that the hostile ones are made of are sound, so that each is refused for what was done to it. */
    @Test
    void withoutTheHarmTheyAreSound() {
        assertThat(zip(zip -> {})).isEqualTo(PackFile.bytes(Packs.signed()));
        assertThat(PackFile.read("good.pack", zip(zip -> {})).hash())
                .isEqualTo(Packs.signed().hash());
        assertThat(PackFile.read("good.pack", listed(files -> {})).signature()).isEmpty();
        assertThat(PackFile.read("good.pack", manifest("\"1.3\"", "\"1.2\""))
                        .manifest()
                        .vocabulary())
                .isEqualTo("1.2");
    }

    @Test
    void whatAFileOfAPackCanBeRefusedForIsTriedHere() {
        Set<Refusal> tried = EnumSet.noneOf(Refusal.class);
        hostile().forEach(hostile -> tried.add(hostile.refusal()));
        Set<Refusal> elsewhere = EnumSet.of(
                Refusal.UNREADABLE,
                Refusal.LARGE,
                Refusal.LARGE_IN_ALL,
                Refusal.UNSIGNED,
                Refusal.UNKNOWN_SIGNER,
                Refusal.NEED_MISSING,
                Refusal.NEED_CLASH,
                Refusal.NEED_CIRCLE,
                Refusal.PACK_TWICE,
                Refusal.DOWNGRADE);
        assertThat(tried).isEqualTo(EnumSet.complementOf(EnumSet.copyOf(elsewhere)));
    }

    @Test
    void moreThanAPackCanHoldIsRefused() {
        assertThatThrownBy(() -> PackFile.read("large.pack", new byte[PackZip.LARGEST_ARCHIVE + 1]))
                .hasMessage(
                        "large.pack: the file is larger than 20 MiB, more than a pack can be; check that it is the right"
                                + " file");
        byte[] part = new byte[PackZip.LARGEST_FILE];
        byte[] much = listed(
                files -> List.of("a", "b", "c", "d").forEach(name -> files.put("stages/" + name + ".groovy", part)));
        assertThatThrownBy(() -> PackFile.read("much.pack", much))
                .hasMessage("much.pack: the files have more than 16 MiB together; part them in several packs");
    }

    @Test
    void aFileThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> PackFile.read(folder.resolve("no.pack")))
                .hasMessage(
                        "no.pack: the file cannot be read (it is not there); check its name, its permissions and the disk");
    }
}
