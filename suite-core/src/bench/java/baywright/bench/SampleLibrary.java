package baywright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Libraries to load: the shipped one, and one of any size whose stages are the shipped ones over and over, each with its
 * own id, texts and choice of lines, so that no two files are alike.
 */
final class SampleLibrary {

    /** Where the shipped scripts lie, seen from the folder of suite-core. */
    static final Path SHIPPED = Path.of("..", "stage-scripts");

    private static final long SEED = 20_261_125;

    /** One in so many of the lines that a stage can do without is left out. */
    private static final int LEFT_OUT = 5;

    /** A text without its closing quote. */
    private static final String TEXT = "'(?:[^'\\\\]|\\\\.)+";

    private SampleLibrary() {}

    /** Text of each shipped script by its name. */
    static Map<String, String> shipped() throws IOException {
        return read(SHIPPED);
    }

    /** Text of each script below a folder by its name. */
    static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path path : walk.filter(p -> p.toString().endsWith(".groovy")).toList()) {
                texts.put(folder.relativize(path).toString(), Files.readString(path));
            }
        }
        return texts;
    }

    /** Writes a library of so many files into a folder that does not yet exist. */
    static void write(Path folder, int files) throws IOException {
        for (Map.Entry<String, String> file : generated(files).entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
    }

    /**
     * A library of so many files: the shipped ones, then stages made of them.
     *
     * @throws IllegalArgumentException when that is fewer than the shipped library has
     */
    static Map<String, String> generated(int files) throws IOException {
        Map<String, String> texts = shipped();
        if (files < texts.size()) {
            throw new IllegalArgumentException("a library needs its " + texts.size() + " shipped files, got " + files);
        }
        List<Map.Entry<String, String>> stages = texts.entrySet().stream()
                .filter(e -> e.getValue().contains("\nstage('"))
                .toList();
        Random random = new Random(SEED);
        for (int i = 0; texts.size() < files; i++) {
            Map.Entry<String, String> stage = stages.get(i % stages.size());
            String name = stage.getKey().replace(".groovy", "-" + i + ".groovy");
            texts.put(name, varied(stage.getValue(), i, random));
        }
        return texts;
    }

    private static String varied(String stage, int number, Random random) {
        return stage.lines()
                .filter(line -> !dispensable(line) || random.nextInt(LEFT_OUT) > 0)
                .map(line -> line.replaceFirst("^stage\\('([^']+)'", "stage('$1-" + number + "'")
                        .replaceFirst("^( +(?:title|about|confirm|avoid) " + TEXT + ")'", "$1 (" + number + ")'")
                        .replaceFirst("(why: " + TEXT + ")'", "$1 (" + number + ")'"))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static boolean dispensable(String line) {
        String word = line.strip();
        return word.startsWith("confirm ") || word.startsWith("avoid ") || word.startsWith("risk ");
    }
}
