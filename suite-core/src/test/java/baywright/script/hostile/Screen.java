package baywright.script.hostile;

import java.io.File;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.plaf.basic.BasicHTML;

/** Judges what texts would do to the people and the terminals that they are shown to. */
final class Screen {

    private static final String BIDI = "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069";
    private static final Pattern WORD = Pattern.compile("[^\\s'\"()\\[\\]{},.:;<>=+*/&|!?$]+");

    /** Some of the letters that Unicode's list of confusable characters gives for a Latin letter. */
    private static final Map<Integer, String> LIKE =
            Map.of(0x430, "a", 0x435, "e", 0x440, "p", 0x3bf, "o", 0x2011, "-", 0x2010, "-");

    private Screen() {}

    /** The class path of this process for one that runs in another folder. */
    static String classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    static Set<Danger> of(List<String> shown, String source) {
        Set<Danger> found = EnumSet.noneOf(Danger.class);
        for (String text : shown) {
            if (BasicHTML.isHTMLString(text)) {
                found.add(Danger.HTML);
            }
            if (text.codePoints().anyMatch(Screen::obeyedOrUnseen) || piled(text)) {
                found.add(Danger.CONTROL);
            }
            if (text.indexOf('\ufffd') >= 0) {
                found.add(Danger.GARBLED);
            }
            if (bidi(text)) {
                found.add(Danger.BIDI);
            }
        }
        if (bidi(source)) {
            found.add(Danger.BIDI);
        }
        if (source.indexOf('\ufffd') >= 0) {
            found.add(Danger.GARBLED);
        }
        if (WORD.matcher(source).results().anyMatch(word -> looksLikeAnother(word.group()))) {
            found.add(Danger.LOOKALIKE);
        }
        return found;
    }

    private static boolean bidi(String text) {
        return text.chars().anyMatch(c -> BIDI.indexOf(c) >= 0);
    }

    private static boolean obeyedOrUnseen(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.PRIVATE_USE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> BIDI.indexOf(character) < 0;
            default -> false;
        };
    }

    private static boolean piled(String text) {
        return Pattern.compile("\\p{Mn}{5}").matcher(text).find();
    }

    private static boolean looksLikeAnother(String word) {
        if (word.chars().allMatch(c -> c < 128)) {
            return false;
        }
        StringBuilder bare = new StringBuilder();
        Normalizer.normalize(word, Normalizer.Form.NFKC)
                .codePoints()
                .filter(c -> Character.getType(c) != Character.FORMAT && c != 0x1160)
                .forEach(c -> bare.append(LIKE.getOrDefault(c, Character.toString(c))));
        return bare.chars().allMatch(c -> c < 128) || !Normalizer.isNormalized(word, Normalizer.Form.NFC);
    }
}
