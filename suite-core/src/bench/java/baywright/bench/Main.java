package baywright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Measures everything that has a budget and writes {@code target/bench/figures.md}. Words that may be given, all of them
 * when none is: {@code load}, {@code start}, {@code repair}, {@code plan}, {@code chance},
 * {@code timetable}, {@code impact}. {@code jobs=N} is the most jobs of the last. {@code scripts=N}, {@code rounds=N}, {@code seconds=N} and {@code files=N} make it shorter,
 * {@code steps=N} proves plans of that one length only.
 */
public final class Main {

    private static final int SCRIPTS = 1_000;
    private static final int ROUNDS = 5;
    private static final int TIMETABLE_SECONDS = 5;
    private static final int JOBS = 10_000;

    private Main() {}

    public static void main(String[] args) throws IOException {
        Path work = Path.of("target", "bench").toAbsolutePath();
        Files.createDirectories(work);
        List<String> wanted =
                List.of(args).stream().filter(a -> !a.contains("=")).toList();
        int scripts = number("scripts", SCRIPTS, args);
        int rounds = number("rounds", ROUNDS, args);
        List<String> page = new ArrayList<>(List.of(
                "Measured on " + LocalDate.now(ZoneOffset.UTC) + ", Java " + System.getProperty("java.version") + ", "
                        + Runtime.getRuntime().availableProcessors() + " cores, " + rounds + " rounds, load before: "
                        + load() + ".",
                "",
                "| what | figure | baseline | ratio | budget | |",
                "| --- | --- | --- | --- | --- | --- |"));
        Sample sample = Sample.in(work, scripts);
        Map<String, Section> sections = Map.of(
                "load",
                () -> new LoadSection(work, rounds).measure(sample, scripts),
                "start",
                () -> new StartSection(work, rounds).measure(sample),
                "repair",
                () -> RepairSection.measure(sample, rounds),
                "plan",
                () -> PlanSection.measure(sample.workspace(), rounds, number("steps", 0, args)),
                "chance",
                () -> ChanceSection.measure(sample.workspace(), rounds),
                "timetable",
                () -> TimetableSection.measure(
                        number("seconds", TIMETABLE_SECONDS, args), number("files", Integer.MAX_VALUE, args)),
                "impact",
                () -> ImpactSection.measure(sample.workspace(), number("jobs", JOBS, args)));
        for (String name : List.of("load", "start", "repair", "plan", "chance", "timetable", "impact")) {
            if (wanted.isEmpty() || wanted.contains(name)) {
                for (Figure figure : sections.get(name).measure()) {
                    page.add(figure.row());
                    System.out.println(figure.row());
                }
            }
        }
        page.addAll(List.of("", "Load after: " + load() + "."));
        Files.write(work.resolve("figures.md"), page, StandardCharsets.UTF_8);
        System.out.println("written: " + work.resolve("figures.md"));
    }

    /** A part of the measuring. */
    private interface Section {
        List<Figure> measure() throws IOException;
    }

    private static int number(String name, int usual, String... args) {
        for (String arg : args) {
            if (arg.startsWith(name + "=")) {
                return Integer.parseInt(arg.substring(name.length() + 1));
            }
        }
        return usual;
    }

    /** Processes that wait for a core; figures of a machine where that is much above one hold only as ratios. */
    private static String load() {
        double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        return String.format(Locale.ROOT, "%.1f", load);
    }
}
