package baywright.library;

import baywright.script.Characters;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problem.Severity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The files of a library's folder.
 *
 * @param texts    text of each readable file by its name relative to the folder, with {@code /}
 * @param problems files that could not be read
 */
public record LibraryFiles(Map<String, String> texts, List<Problem> problems) {

    private static final int DEEPEST_FOLDER = 8;
    private static final int MOST_FILES = 10_000;
    private static final long MOST_BYTES = 256 * 1024;

    /** Of all files together; a thousand usual scripts have a fifth of it. */
    static final long MOST_BYTES_IN_ALL = 16 * 1024 * 1024;

    public LibraryFiles {
        texts = Collections.unmodifiableMap(new TreeMap<>(texts));
        problems = List.copyOf(problems);
    }

    /**
     * Reads every file below a folder whose name ends in {@code .groovy}.
     *
     * @throws IOException when the folder itself cannot be listed; a file that cannot be read is a problem
     */
    public static LibraryFiles read(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        List<Problem> problems = new ArrayList<>();
        List<Path> paths;
        try (Stream<Path> walk = Files.walk(folder, DEEPEST_FOLDER)) {
            paths = walk.filter(p -> p.getFileName().toString().endsWith(".groovy"))
                    .filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .limit(MOST_FILES + 1L)
                    .toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        if (paths.size() > MOST_FILES) {
            problems.add(problem(".", "a library holds at most " + MOST_FILES + " files; the rest is left out"));
            paths = paths.subList(0, MOST_FILES);
        }
        long left = MOST_BYTES_IN_ALL;
        for (Path path : paths) {
            String name = folder.relativize(path).toString().replace('\\', '/');
            if (Characters.hasForbidden(name)
                    || name.indexOf('\n') >= 0
                    || name.indexOf('\t') >= 0
                    || name.indexOf('\r') >= 0) {
                problems.add(problem(
                        shown(name),
                        "the name of the file or of its folder holds an invisible character, shown as ?; rename it"));
                continue;
            }
            try {
                byte[] bytes = bytes(path);
                left -= bytes.length;
                if (left < 0) {
                    problems.add(problem(
                            name,
                            "the files of a library hold at most " + (MOST_BYTES_IN_ALL >> 20)
                                    + " MiB together; this one and those behind it are left out"));
                    break;
                }
                texts.put(name, text(bytes));
            } catch (CharacterCodingException e) {
                problems.add(problem(name, "the file is not UTF-8 text; save it as UTF-8"));
            } catch (TooLarge e) {
                problems.add(problem(name, "the file is too large; a file holds at most 65536 characters"));
            } catch (IOException e) {
                problems.add(problem(name, "the file cannot be read; check its permissions"));
            }
        }
        return new LibraryFiles(texts, problems);
    }

    private static String shown(String name) {
        StringBuilder shown = new StringBuilder();
        name.codePoints().forEach(c -> {
            boolean harmless = !Character.isISOControl(c)
                    && !Characters.isForbidden(c)
                    && Character.getType(c) != Character.NON_SPACING_MARK
                    && Character.getType(c) != Character.ENCLOSING_MARK;
            shown.appendCodePoint(harmless ? c : '?');
        });
        return shown.toString();
    }

    private static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;
    }

    private static byte[] bytes(Path path) throws IOException {
        if (Files.size(path) > MOST_BYTES) {
            throw new TooLarge();
        }
        return Files.readAllBytes(path);
    }

    private static String text(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    private static Problem problem(String name, String message) {
        return new Problem(Place.ofFile(name), Severity.ERROR, "file", message, "");
    }
}
