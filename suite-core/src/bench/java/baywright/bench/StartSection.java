package baywright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The command line as a user starts it, from the launcher to the end of the process. */
final class StartSection {

    private static final double QUOTE_SECONDS = 1.2;
    private static final double OWN_SECONDS = 1;

    private static final String HELLO = "bare java";
    private static final String PARSER = "java that parses one script";
    private static final String VERSION = "--version";
    private static final String QUOTE = "plan quote";

    private final Path work;
    private final int rounds;
    private final String launcher =
            Path.of("..", "baywright").toAbsolutePath().normalize().toString();

    StartSection(Path work, int rounds) {
        this.work = work;
        this.rounds = rounds;
    }

    /** The first, uncounted round builds the program if need be. */
    List<Figure> measure(Sample sample) throws IOException {
        Path job = sample.workspace().resolve("jobs/green-estate");
        Map<String, Runs> runs = new Contest(work)
                .with(HELLO, Jvm.command(Hello.class))
                .with(
                        PARSER,
                        Jvm.command(
                                LoadProcess.class,
                                "groovy-parser",
                                sample.script().toString()))
                .with(VERSION, List.of(launcher, VERSION))
                .with(QUOTE, List.of(launcher, "plan", "quote", job.toString()))
                .run(rounds);
        List<Figure> figures = new ArrayList<>();
        figures.add(figure("baywright --version, whole process", runs, VERSION, HELLO, OWN_SECONDS));
        figures.add(figure("baywright plan quote, whole process", runs, QUOTE, HELLO, QUOTE_SECONDS));
        figures.add(figure("baywright plan quote, whole process", runs, QUOTE, PARSER, QUOTE_SECONDS));
        return figures;
    }

    private static Figure figure(String what, Map<String, Runs> runs, String ours, String baseline, double budget) {
        Runs measured = runs.get(ours);
        Runs against = runs.get(baseline);
        return new Figure(
                what,
                measured.both(),
                baseline + ": " + against.both(),
                Optional.of(measured.ratio(against, Runs.Run::wall)),
                "≤ " + Figure.seconds(budget),
                measured.wall() <= budget);
    }
}
