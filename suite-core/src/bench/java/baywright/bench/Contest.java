package baywright.bench;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whole processes that take turns: one run of each contender, then again one of each, so that whatever else the machine
 * does meets all of them alike. A round that is not counted comes first and fills the disk's cache.
 */
final class Contest {

    /** Second line of the shell's {@code times}: what its children used. */
    private static final Pattern TIMES = Pattern.compile("(\\d+)m([\\d.]+)s (\\d+)m([\\d.]+)s\\s*$");

    private final Map<String, List<String>> contenders = new LinkedHashMap<>();
    private final Path folder;

    /** A contest whose processes start in a folder. */
    Contest(Path folder) {
        this.folder = folder;
    }

    Contest with(String name, List<String> command) {
        contenders.put(name, List.copyOf(command));
        return this;
    }

    /**
     * Runs all contenders in turn.
     *
     * @return the runs of each, in seconds
     * @throws IOException when a process cannot be started or fails
     */
    Map<String, Runs> run(int rounds) throws IOException {
        Map<String, List<Runs.Run>> runs = new LinkedHashMap<>();
        for (int round = 0; round <= rounds; round++) {
            for (Map.Entry<String, List<String>> contender : contenders.entrySet()) {
                Runs.Run run = run(contender.getKey(), contender.getValue());
                if (round > 0) {
                    runs.computeIfAbsent(contender.getKey(), n -> new ArrayList<>())
                            .add(run);
                }
            }
        }
        Map<String, Runs> all = new LinkedHashMap<>();
        runs.forEach((name, list) -> all.put(name, new Runs(list)));
        return all;
    }

    private Runs.Run run(String name, List<String> command) throws IOException {
        Path errors = Files.createTempFile("bench", ".err");
        try {
            List<String> line = new ArrayList<>(List.of("sh", "-c", "\"$@\" >/dev/null; s=$?; times; exit $s", "sh"));
            line.addAll(command);
            long start = System.nanoTime();
            Process process = new ProcessBuilder(line)
                    .directory(folder.toFile())
                    .redirectError(errors.toFile())
                    .redirectInput(new File("/dev/null"))
                    .start();
            String times = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int status = process.waitFor();
            double wall = (System.nanoTime() - start) / 1e9;
            Matcher used = TIMES.matcher(times.strip());
            if (status != 0 || !used.find()) {
                throw new IOException(name + " ended with " + status + ": " + Files.readString(errors) + times);
            }
            return new Runs.Run(wall, seconds(used, 1) + seconds(used, 3));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        } finally {
            Files.delete(errors);
        }
    }

    private static double seconds(Matcher used, int group) {
        return 60 * Double.parseDouble(used.group(group)) + Double.parseDouble(used.group(group + 1));
    }
}
