package baywright.pack;

import baywright.workspace.Shown;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Names of files in a pack: only such as mean one file, and the same one, on every system. */
final class PackPath {

    /** By their bytes in UTF-8, as every system sorts them alike. */
    static final Comparator<String> ORDER =
            (a, b) -> Arrays.compareUnsigned(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));

    static final int LONGEST = 200;
    static final int LONGEST_PART = 100;
    static final int DEEPEST = 8;

    /** Names that Windows keeps for devices, also with an ending (Microsoft, "Naming Files, Paths, and Namespaces"). */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "conin$", "conout$", "clock$");

    private static final Pattern NUMBERED_DEVICE = Pattern.compile("(com|lpt)[0-9¹²³]");
    private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:.*", Pattern.DOTALL);
    private static final Pattern SCRIPT = Pattern.compile("stages/(?:[^/]+/)*[^/]+\\.groovy");
    private static final Pattern WORDS = Pattern.compile("stages/words-[a-z]{2,3}\\.json");
    private static final String FORBIDDEN = "<>:\"|?*~";

    private PackPath() {}

    /** Why a name cannot be used. */
    record Fault(Refusal refusal, Object... values) {}

    /** What is wrong with a name; empty when nothing is. */
    static Optional<Fault> fault(String path) {
        String shown = shown(path);
        if (path.isEmpty()) {
            return fault(Refusal.NAME_EMPTY);
        }
        Optional<Integer> odd = path.codePoints().filter(c -> !isFit(c)).boxed().findFirst();
        if (odd.isPresent()) {
            return fault(Refusal.NAME_INVISIBLE, shown, String.format("U+%04X", odd.get()));
        }
        if (path.startsWith("/") || path.startsWith("\\")) {
            return fault(Refusal.NAME_ABSOLUTE, shown);
        }
        if (DRIVE.matcher(path).matches()) {
            return fault(Refusal.NAME_DRIVE, shown);
        }
        if (path.contains("\\")) {
            return fault(Refusal.NAME_BACKSLASH, shown);
        }
        if (path.endsWith("/")) {
            return fault(Refusal.ENTRY_FOLDER, shown);
        }
        String[] parts = path.split("/", -1);
        for (String part : parts) {
            Optional<Fault> fault = ofPart(part, shown);
            if (fault.isPresent()) {
                return fault;
            }
        }
        if (path.getBytes(StandardCharsets.UTF_8).length > LONGEST || parts.length > DEEPEST) {
            return fault(Refusal.NAME_LONG, shown, LONGEST, DEEPEST);
        }
        return Normalizer.isNormalized(path, Form.NFC) ? Optional.empty() : fault(Refusal.NAME_DECOMPOSED, shown);
    }

    private static Optional<Fault> ofPart(String part, String shown) {
        if (part.isEmpty() || part.equals(".")) {
            return fault(Refusal.NAME_EMPTY_PART, shown);
        }
        if (part.equals("..")) {
            return fault(Refusal.NAME_UPWARDS, shown);
        }
        if (part.startsWith(".")) {
            return fault(Refusal.NAME_HIDDEN, shown);
        }
        if (part.endsWith(".") || part.endsWith(" ") || part.startsWith(" ")) {
            return fault(Refusal.NAME_ENDS, shown);
        }
        Optional<Integer> sign =
                part.chars().filter(c -> FORBIDDEN.indexOf(c) >= 0).boxed().findFirst();
        if (sign.isPresent()) {
            return fault(Refusal.NAME_SIGN, shown, Character.toString(sign.get()));
        }
        String stem = part.toLowerCase(Locale.ROOT).split("\\.", 2)[0].strip();
        if (DEVICES.contains(stem) || NUMBERED_DEVICE.matcher(stem).matches()) {
            return fault(Refusal.NAME_RESERVED, shown, part);
        }
        return part.length() > LONGEST_PART ? fault(Refusal.NAME_LONG, shown, LONGEST, DEEPEST) : Optional.empty();
    }

    private static Optional<Fault> fault(Refusal refusal, Object... values) {
        return Optional.of(new Fault(refusal, values));
    }

    /** Neither invisible nor of private use, and no blank but the plain one. */
    private static boolean isFit(int c) {
        return Shown.isPrintable(c)
                && Character.getType(c) != Character.PRIVATE_USE
                && (c == ' ' || Character.getType(c) != Character.SPACE_SEPARATOR);
    }

    static String shown(String path) {
        return "'" + Shown.plain(path, LONGEST) + "'";
    }

    /** What two names have in common that are one file to some system: case, and forms of the same letter. */
    static String folded(String path) {
        String folded =
                Normalizer.normalize(path, Form.NFKC).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        return Normalizer.normalize(folded, Form.NFKC);
    }

    /** What is wrong with names beside each other: the same file to some system, or a file where another needs a folder. */
    static Optional<Fault> clash(Iterable<String> paths) {
        Map<String, String> files = new HashMap<>();
        for (String path : paths) {
            String before = files.putIfAbsent(folded(path), path);
            if (before != null) {
                Refusal why = before.equals(path)
                        ? Refusal.NAME_TWICE
                        : before.equalsIgnoreCase(path) ? Refusal.NAME_CASE : Refusal.NAME_ALIKE;
                return fault(why, shown(before), shown(path));
            }
        }
        Map<String, String> folders = new HashMap<>();
        for (String path : paths) {
            for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
                String folder = path.substring(0, slash);
                String file = files.get(folded(folder));
                if (file != null) {
                    return fault(Refusal.NAME_FOLDER, shown(file), shown(path));
                }
                String before = folders.putIfAbsent(folded(folder), folder);
                if (before != null && !before.equals(folder)) {
                    return fault(Refusal.NAME_CASE, shown(before), shown(folder));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a pack holds files of this kind: scripts, shapes, words, items, a page to read and the licence. */
    static boolean isKnown(String path) {
        return SCRIPT.matcher(path).matches()
                || WORDS.matcher(path).matches()
                || Set.of(Pack.ITEMS, Pack.STAGES + "shapes.json", "README.md", "LICENSE.txt")
                        .contains(path);
    }
}
