package baywright.swing;

import baywright.library.ScriptCache;
import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;
import baywright.swing.shell.Suite;
import baywright.swing.shell.UserSettings;
import com.formdev.flatlaf.FlatLightLaf;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * How long the window takes from the start of its process until it has painted, until the demo's shop lies on the desk with its
 * first job worked out, and until all its jobs are; by turns with a bare FlatLaf frame that holds one table. Both run on what the build has packed, with the same options of Java, once without an
 * archive of classes and once with one that a run of their own has left. Words: how many rounds; usually 5.
 */
final class StartTime {

    private static final int PATIENCE_MILLIS = 120_000;

    /** As the launcher gives them to the window. */
    private static final List<String> OPTIONS = List.of(
            "-XX:+UseSerialGC",
            "-XX:Tier4InvocationThreshold=50000",
            "-XX:Tier4MinInvocationThreshold=6000",
            "-XX:Tier4CompileThreshold=150000",
            "-XX:Tier4BackEdgeThreshold=400000");

    private StartTime() {}

    public static void main(String[] args) throws Exception {
        switch (args.length == 0 ? "" : args[0]) {
            case "bare" -> bare();
            case "suite" -> suite(Path.of(args[1]), Path.of(args[2]));
            default -> measure(args.length == 0 ? 5 : Integer.parseInt(args[0]));
        }
    }

    // the two contenders

    private static void bare() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            FlatLightLaf.setup();
            Object[][] cells = new Object[60][6];
            for (Object[] row : cells) {
                Arrays.fill(row, "a cell");
            }
            JFrame frame = new JFrame("bare");
            frame.add(new JScrollPane(new JTable(cells, new Object[] {"A", "B", "C", "D", "E", "F"})));
            frame.setSize(1280, 800);
            frame.setVisible(true);
        });
        SwingUtilities.invokeAndWait(() -> {});
        end("usable");
    }

    private static void suite(Path workspace, Path cache) throws Exception {
        Suite suite = new Suite(new Suite.Surroundings(
                Clock.systemUTC(),
                ScriptCache.in(cache),
                UserSettings.inMemory(),
                Optional.empty(),
                Optional.empty(),
                Locale.UK));
        List<SuitePlugin> plugins = new ArrayList<>();
        ServiceLoader.load(SuitePlugin.class).forEach(plugins::add);
        suite.start(plugins);
        suite.start(List.of(new Watching()));
        SwingUtilities.invokeAndWait(() -> {
            suite.open(workspace);
            suite.applyLook();
            suite.makeWindow().setVisible(true);
        });
        SwingUtilities.invokeAndWait(() -> {});
        say("window");
        SwingUtilities.invokeLater(() -> {
            Timer look = new Timer(5, null);
            look.addActionListener(e -> {
                if (!suite.isBusy()) {
                    look.stop();
                    SwingUtilities.invokeLater(() -> end("settled"));
                }
            });
            look.start();
        });
    }

    /** Sees when the shop lies on the desk and its first job is worked out. */
    private static final class Watching implements SuitePlugin {

        private boolean said;

        @Override
        public PluginInfo info() {
            return new PluginInfo("start-time", "start time", "1", new ApiVersion(1, 0));
        }

        @Override
        public void start(PluginContext suite) {
            SwingUtilities.invokeLater(() -> suite.desk().listen((before, now) -> {
                if (!said && now.worked().isPresent()) {
                    said = true;
                    SwingUtilities.invokeLater(() -> say("usable"));
                }
            }));
        }
    }

    private static void say(String what) {
        System.out.println(what + " " + (System.currentTimeMillis() - Long.getLong("began")));
    }

    private static void end(String what) {
        say(what);
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime now = Runtime.getRuntime();
        System.out.println("heap " + (now.totalMemory() - now.freeMemory() >> 20));
        System.exit(0);
    }

    // the measuring

    private static void measure(int rounds) throws Exception {
        Path folder = Files.createTempDirectory("baywright-start");
        Path shop = DemoShops.copy("millrace-works", folder.resolve("shop"));
        String classes = classPath(folder);
        Map<String, List<String>> contenders = new LinkedHashMap<>();
        contenders.put("bare frame", List.of("bare"));
        contenders.put(
                "the window",
                List.of("suite", shop.toString(), folder.resolve("cache").toString()));
        for (String name : contenders.keySet()) {
            run(classes, List.of("-XX:ArchiveClassesAtExit=" + archive(folder, name)), contenders.get(name));
        }
        Map<String, Map<String, List<Long>>> times = new LinkedHashMap<>();
        for (int round = 0; round < rounds; round++) {
            for (String name : contenders.keySet()) {
                note(times, name, run(classes, List.of("-Xshare:auto"), contenders.get(name)));
                note(
                        times,
                        name + ", archive of its classes",
                        run(
                                classes,
                                List.of("-Xshare:auto", "-XX:SharedArchiveFile=" + archive(folder, name)),
                                contenders.get(name)));
            }
        }
        times.forEach((name, found) -> found.forEach((what, all) -> System.out.printf(
                Locale.ROOT,
                "%s: %s %d (%d to %d)%n",
                name,
                what,
                all.stream().sorted().toList().get(all.size() / 2),
                all.stream().min(Long::compare).orElseThrow(),
                all.stream().max(Long::compare).orElseThrow())));
    }

    private static Path archive(Path folder, String name) {
        return folder.resolve(name.replace(' ', '-') + ".jsa");
    }

    private static void note(Map<String, Map<String, List<Long>>> times, String name, Map<String, Long> found) {
        found.forEach((what, value) -> times.computeIfAbsent(name, n -> new LinkedHashMap<>())
                .computeIfAbsent(what, w -> new ArrayList<>())
                .add(value));
    }

    /** What the build has packed, and this program in a jar of its own: archives of classes hold no folders. */
    private static String classPath(Path folder) throws IOException {
        Path target = Path.of("target");
        Path own = folder.resolve("start-time.jar");
        try (OutputStream file = Files.newOutputStream(own);
                JarOutputStream jar = new JarOutputStream(file)) {
            for (Class<?> one : List.of(StartTime.class, Watching.class)) {
                String name = one.getName().replace('.', '/') + ".class";
                jar.putNextEntry(new JarEntry(name));
                try (InputStream in = one.getClassLoader().getResourceAsStream(name)) {
                    in.transferTo(jar);
                }
            }
        }
        List<String> all =
                new ArrayList<>(List.of(target.resolve("baywright.jar").toString()));
        try (Stream<Path> lib = Files.list(target.resolve("lib"))) {
            lib.sorted().forEach(path -> all.add(path.toString()));
        }
        all.add(own.toString());
        return String.join(File.pathSeparator, all);
    }

    private static Map<String, Long> run(String classes, List<String> options, List<String> words) throws Exception {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(OPTIONS);
        command.addAll(options);
        command.addAll(List.of("-Xlog:disable", "-Xlog:all=off", "-cp", classes));
        command.add("-Dbegan=" + System.currentTimeMillis());
        command.add(StartTime.class.getName());
        command.addAll(words);
        Process child = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        Timer late = new Timer(PATIENCE_MILLIS, e -> child.destroyForcibly());
        late.start();
        Map<String, Long> found = new LinkedHashMap<>();
        try (Stream<String> lines = child.inputReader(StandardCharsets.UTF_8).lines()) {
            lines.map(line -> line.split(" ")).forEach(line -> found.put(line[0], Long.valueOf(line[1])));
        }
        late.stop();
        if (child.waitFor() != 0) {
            throw new IllegalStateException(words + " ended with " + child.exitValue());
        }
        return found;
    }
}
