package baywright.script.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Runs scripts in child processes, many per process: a script that stops its process costs a new one, which goes on with
 * the next script. Everything a child sees as its home, its working folder and its temporary folder lies in one folder.
 */
final class DangerRun {

    /**
     * Time for the start of a process and the first compilation in it. A busy machine has taken more than a minute; it is
     * waited for in full only where a child says nothing at all.
     */
    private static final Duration START = Duration.ofMinutes(5);

    private final Path folder;
    private final Duration deadline;

    /**
     * @param folder   empty, the caller removes it
     * @param deadline after which a script counts as one that hangs
     */
    DangerRun(Path folder, Duration deadline) {
        this.folder = folder;
        this.deadline = deadline;
    }

    /** What each script was seen to do, in the order given. */
    Map<String, Set<Danger>> run(List<String> names) throws IOException, InterruptedException {
        Map<String, Set<Danger>> seen = new LinkedHashMap<>();
        List<String> left = new ArrayList<>(names);
        while (!left.isEmpty()) {
            Map<String, Set<Danger>> some = runOne(left);
            if (some.isEmpty()) {
                throw new IllegalStateException("no script was started; the child said: " + said());
            }
            seen.putAll(some);
            left.removeAll(some.keySet());
        }
        return seen;
    }

    private Map<String, Set<Danger>> runOne(List<String> names) throws IOException, InterruptedException {
        Path report = folder.resolve("report");
        Files.deleteIfExists(report);
        Path list = Files.write(folder.resolve("list"), names);
        Process child = start(report, list);
        int exit;
        try {
            exit = exitOf(child, report);
        } finally {
            child.destroyForcibly().waitFor();
        }
        return read(report, exit);
    }

    private Process start(Path report, Path list) throws IOException {
        Path work = Files.createDirectories(folder.resolve("work"));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx112m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8",
                "-Duser.home=" + work,
                "-Djava.io.tmpdir=" + work,
                "-Dgrape.root=" + work.resolve("grapes"),
                "-Divy.default.ivy.user.dir=" + work.resolve("ivy"),
                "-Dhostile.armed=true",
                "-Dhostile.flag=true",
                "-Dhostile.secret=" + DangerChild.SECRET,
                "-cp",
                Screen.classPath(),
                DangerChild.class.getName(),
                report.toString(),
                list.toString(),
                Long.toString(deadline.toMillis())));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(work.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile());
        builder.environment().keySet().retainAll(Set.of("PATH"));
        builder.environment().put("HOSTILE_SECRET", DangerChild.SECRET);
        return builder.start();
    }

    /** Waits as long as the report grows; a child that is silent for too long is stopped as one that hangs. */
    private int exitOf(Process child, Path report) throws IOException, InterruptedException {
        long size = -1;
        long grown = System.nanoTime();
        while (!child.waitFor(100, TimeUnit.MILLISECONDS)) {
            long now = Files.exists(report) ? Files.size(report) : 0;
            if (now != size) {
                size = now;
                grown = System.nanoTime();
            }
            Duration allowed = deadline.plus(size <= 0 ? START : Duration.ofSeconds(5));
            if (System.nanoTime() - grown > allowed.toNanos()) {
                return DangerChild.STOPPED_BY_DEADLINE;
            }
        }
        return child.exitValue();
    }

    private Map<String, Set<Danger>> read(Path report, int exit) throws IOException {
        Map<String, Set<Danger>> seen = new LinkedHashMap<>();
        if (!Files.exists(report)) {
            return seen;
        }
        String open = null;
        for (String line : Files.readAllLines(report)) {
            if (line.startsWith("BEGIN ")) {
                open = line.substring("BEGIN ".length());
            } else {
                seen.put(open, dangers(line.substring("END".length()).strip()));
                open = null;
            }
        }
        if (open != null) {
            seen.put(open, EnumSet.of(ended(exit)));
        }
        return seen;
    }

    private static Danger ended(int exit) {
        return switch (exit) {
            case DangerChild.STOPPED_BY_DEADLINE -> Danger.HANGS;
            case DangerChild.STOPPED_BY_MEMORY -> Danger.MEMORY;
            default -> Danger.EXITS;
        };
    }

    private static Set<Danger> dangers(String words) {
        Set<Danger> all = EnumSet.noneOf(Danger.class);
        if (!words.isEmpty()) {
            Arrays.stream(words.split(" ")).map(Danger::of).forEach(all::add);
        }
        return all;
    }

    private String said() throws IOException {
        Path said = folder.resolve("said");
        String all = Files.exists(said) ? new String(Files.readAllBytes(said), UTF_8) : "";
        return all.substring(0, Math.min(2000, all.length()));
    }
}
