package baywright.bench;

import baywright.chance.Watch;
import baywright.library.Library;
import baywright.library.LibraryFiles;
import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.share.Estate;
import baywright.share.Impact;
import baywright.share.ImpactPapers;
import baywright.site.Site;
import baywright.vehicle.Shape;
import baywright.workspace.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What one revision of a library makes of many open jobs, beside working all of them anew. */
final class ImpactSection {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-07T07:00:00Z"), ZoneOffset.UTC);
    private static final long SEED = 20_261_201;
    private static final int SAMPLE = 400;
    private static final double NANOS = 1e9;
    private static final double MEBIBYTE = 1 << 20;

    /** One thing that somebody may revise: a line of a script, and what it is then. */
    private record Revision(String what, String file, String line, String then) {}

    private static final List<Revision> REVISIONS = List.of(
            new Revision(
                    "times of 'iron-removal'",
                    "decontamination/iron-removal.groovy",
                    "standing 3.min, 7.min",
                    "standing 4.min, 8.min"),
            new Revision("times of 'polish'", "correction/polish.groovy", "attended 10.min", "attended 11.min"),
            new Revision(
                    "a rule of the bays",
                    "rules/cabin.groovy",
                    "since('ozone', anywhere: true) < 75.min",
                    "since('ozone', anywhere: true) < 90.min"));

    private final Site site;
    private final Map<String, String> texts;

    private ImpactSection(Site site) throws IOException {
        this.site = site;
        texts = LibraryFiles.read(site.workspace().stages()).texts();
    }

    /** @param jobs the most; a tenth and three tenths of them show the growth */
    static List<Figure> measure(Path workspace, int jobs) throws IOException {
        return new ImpactSection(Site.open(workspace, CLOCK, ScriptCache.none())).measure(jobs);
    }

    private List<Figure> measure(int jobs) {
        List<Figure> figures = new ArrayList<>();
        Library first = revised(REVISIONS.get(0));
        Impact.of(estate(Math.min(jobs, 1_000)), first, ImpactPapers.NONE, Watch.NOBODY); // warms up
        double before = heap();
        Site all = estate(jobs);
        double held = heap() - before;
        for (Revision revision : REVISIONS) {
            Library library = revised(revision);
            figures.add(figure(revision.what(), all, library));
        }
        double perJob = held * 1024 / jobs;
        figures.add(new Figure(
                jobs + " jobs in memory",
                String.format(Locale.ROOT, "%.0f MiB, %.1f KiB each", held, perJob),
                "",
                Optional.empty(),
                "",
                true));
        List<Double> logs = new ArrayList<>();
        for (int count : List.of(jobs / 10, 3 * jobs / 10, jobs)) {
            double seconds = seconds(() -> Impact.of(estate(count), first, ImpactPapers.NONE, Watch.NOBODY));
            logs.add(Math.log(seconds));
            figures.add(new Figure(
                    REVISIONS.get(0).what() + " over " + count + " jobs",
                    Figure.seconds(seconds),
                    "",
                    Optional.empty(),
                    "",
                    true));
        }
        figures.add(new Figure(
                "growth from a tenth to all",
                String.format(Locale.ROOT, "jobs to the power of %.2f", (logs.get(2) - logs.get(0)) / Math.log(10)),
                "linear: to the power of 1",
                Optional.empty(),
                "",
                true));
        return figures;
    }

    private Figure figure(String what, Site all, Library library) {
        Impact[] told = new Impact[1];
        double seconds = seconds(() -> told[0] = Impact.of(all, library, ImpactPapers.NONE, Watch.NOBODY));
        List<Job> sample = all.jobs().subList(0, Math.min(SAMPLE, all.jobs().size()));
        Site anew = all.withLibrary(library, job -> false);
        double each = seconds(() -> Stream.of(all, anew)
                        .flatMap(site -> sample.parallelStream().map(site::workOneOfMany))
                        .forEach(worked -> {}))
                / sample.size();
        int jobs = all.jobs().size();
        int touched = jobs - told[0].untouched();
        return Figure.told(
                String.format(
                        Locale.ROOT,
                        "%s over %d jobs: %.0f %% touched, %d moved",
                        what,
                        jobs,
                        100.0 * touched / jobs,
                        told[0].jobs().size()),
                Figure.seconds(seconds),
                "every job anew, from " + sample.size() + ": " + Figure.seconds(each * jobs),
                seconds / (each * jobs));
    }

    private Site estate(int jobs) {
        List<String> shapes = site.workspace().shapes().stream().map(Shape::id).toList();
        return site.withJobs(Estate.of(site.jobs(), site.library(), shapes, jobs, SEED));
    }

    private Library revised(Revision revision) {
        Map<String, String> others = new TreeMap<>(texts);
        String text = others.get(revision.file());
        if (text == null || !text.contains(revision.line())) {
            throw new IllegalStateException("no '" + revision.line() + "' in " + revision.file());
        }
        others.put(revision.file(), text.replace(revision.line(), revision.then()));
        return LibraryLoader.load(others, site.workspace().items()).library();
    }

    private static double seconds(Runnable work) {
        long began = System.nanoTime();
        work.run();
        return (System.nanoTime() - began) / NANOS;
    }

    private static double heap() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / MEBIBYTE;
    }
}
