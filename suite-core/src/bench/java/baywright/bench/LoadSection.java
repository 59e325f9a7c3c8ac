package baywright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Loading libraries in processes that have read nothing before. */
final class LoadSection {

    private static final double COLD = 1.2;

    private static final double CACHED_SECONDS = 0.5;

    private static final String CACHED = "cached";
    private static final String OURS = "library";
    private static final String PARSER = "groovy-parser";
    private static final String SHELL = "groovy-shell";
    private static final String NOTHING = "nothing";

    private final Path work;
    private final int rounds;

    LoadSection(Path work, int rounds) {
        this.work = work;
        this.rounds = rounds;
    }

    List<Figure> measure(Sample sample, int scripts) throws IOException {
        Path items = sample.items();
        List<Figure> figures = new ArrayList<>();
        Map<String, Runs> first =
                contest(sample.script(), items, "script", PARSER, NOTHING).run(rounds);
        figures.add(told("first script after the start, whole process", first, "script", PARSER));
        figures.add(beyond("first script after the start, without the start", first, "script", PARSER));

        Map<String, Runs> shipped = contest(sample.workspace().resolve("stages"), items, OURS, PARSER, SHELL)
                .run(rounds);
        figures.add(told("shipped library, cold", shipped, OURS, PARSER));
        figures.add(told("shipped library, cold", shipped, OURS, SHELL));

        Map<String, Runs> cold =
                contest(sample.library(), items, OURS, CACHED, PARSER, NOTHING).run(rounds);
        Runs ours = cold.get(OURS);
        Runs parser = cold.get(PARSER);
        double ratio = ours.ratio(parser, Runs.Run::wall);
        figures.add(new Figure(
                scripts + "-script library, cold",
                ours.both(),
                PARSER + " on one thread: " + parser.both(),
                Optional.of(ratio),
                "ratio ≤ " + COLD,
                ratio <= COLD));
        // The round that is not counted has filled the cache.
        double beyond = cold.get(CACHED).beyond(cold.get(NOTHING));
        figures.add(new Figure(
                scripts + "-script library, cached, beyond the start",
                Figure.seconds(beyond),
                OURS + ", cold: " + ours.both(),
                Optional.of(beyond / ours.beyond(cold.get(NOTHING))),
                "≤ " + Figure.seconds(CACHED_SECONDS),
                beyond <= CACHED_SECONDS));
        return figures;
    }

    private Contest contest(Path scripts, Path items, String... ways) {
        Contest contest = new Contest(work);
        Stream.of(ways)
                .forEach(way -> contest.with(
                        way, Jvm.command(LoadProcess.class, way, scripts.toString(), items.toString(), cache())));
        return contest;
    }

    private String cache() {
        return work.resolve("cache").toString();
    }

    private static Figure told(String what, Map<String, Runs> runs, String ours, String baseline) {
        Runs measured = runs.get(ours);
        Runs against = runs.get(baseline);
        return Figure.told(
                what, measured.both(), baseline + ": " + against.both(), measured.ratio(against, Runs.Run::wall));
    }

    private static Figure beyond(String what, Map<String, Runs> runs, String ours, String baseline) {
        Runs start = runs.get(NOTHING);
        double measured = runs.get(ours).beyond(start);
        double against = runs.get(baseline).beyond(start);
        return Figure.told(
                what, Figure.seconds(measured), baseline + ": " + Figure.seconds(against), measured / against);
    }
}
