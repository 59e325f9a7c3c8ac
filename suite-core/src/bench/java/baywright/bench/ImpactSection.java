package baywright.bench;

import baywright.chance.Watch;
import baywright.library.Library;
import baywright.library.LibraryFiles;
import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.money.Quote;
import baywright.share.Estate;
import baywright.share.Impact;
import baywright.share.ImpactPapers;
import baywright.site.Site;
import baywright.vehicle.Shape;
import baywright.workspace.Job;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
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
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What one revision of a library makes of many open jobs, beside working all of them anew. */
final class ImpactSection {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-07T07:00:00Z"), ZoneOffset.UTC);
    private static final long SEED = 20_261_201;
    private static final int SAMPLE = 100;
    private static final int WARM_UP = 300;
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
            new Revision("times of 'compound'", "correction/compound.groovy", "attended 15.min", "attended 16.min"),
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
        Impact.of(estate(Math.min(jobs, WARM_UP)), first, ImpactPapers.NONE, Watch.NOBODY);
        Site tenth = estate(jobs / 10);
        REVISIONS.forEach(revision -> figures.add(besideAllAnew(revision.what(), tenth, revised(revision))));
        List<Double> logs = new ArrayList<>();
        for (int count : List.of(jobs / 10, 3 * jobs / 10, jobs)) {
            double before = heap();
            Site all = estate(count);
            double held = heap() - before;
            Taken taken = new Taken();
            Impact told = taken.during(() -> Impact.of(all, first, ImpactPapers.NONE, Watch.NOBODY));
            logs.add(Math.log(taken.processor));
            figures.add(told(
                    REVISIONS.get(0).what() + " over " + shares(told, count),
                    taken.shown()
                            + String.format(
                                    Locale.ROOT,
                                    "; %.0f MiB of jobs, %.0f MiB with what was worked out",
                                    held,
                                    heap() - before)));
        }
        double power = (logs.get(2) - logs.get(0)) / Math.log(10);
        figures.add(told(
                "growth of the processor's time from a tenth to all",
                String.format(Locale.ROOT, "jobs to the power of %.2f", power)));
        return figures;
    }

    private static Figure told(String what, String measured) {
        return new Figure(what, measured, "", Optional.empty(), "", true);
    }

    private static String shares(Impact told, int jobs) {
        return String.format(
                Locale.ROOT,
                "%d jobs: %.0f %% worked anew, %.0f %% moved",
                jobs,
                100.0 * (jobs - told.untouched()) / jobs,
                100.0 * told.jobs().size() / jobs);
    }

    /** Every job anew is worked out for some and reckoned for all. */
    private static Figure besideAllAnew(String what, Site all, Library library) {
        int jobs = all.jobs().size();
        Taken taken = new Taken();
        Impact told = taken.during(() -> Impact.of(all, library, ImpactPapers.NONE, Watch.NOBODY));
        List<Job> sample = all.jobs().subList(0, Math.min(SAMPLE, jobs));
        Site anew = all.withLibrary(library, job -> false);
        Taken each = new Taken();
        each.during(() -> Stream.of(all, anew)
                .mapToLong(site -> sample.stream()
                        .map(site::workOneOfMany)
                        .filter(worked -> worked.offer() instanceof Quote)
                        .count())
                .sum());
        double whole = each.processor * jobs / sample.size();
        return Figure.told(
                what + " over " + shares(told, jobs),
                taken.shown(),
                "every job anew, from " + sample.size() + ": " + Figure.seconds(whole) + " of processor",
                taken.processor / whole);
    }

    /** How long something took, by the clock and of all processors. */
    private static final class Taken {
        private static final OperatingSystemMXBean SYSTEM =
                (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

        private double clock;
        private double processor;

        <T> T during(Supplier<T> work) {
            long began = System.nanoTime();
            long used = SYSTEM.getProcessCpuTime();
            T result = work.get();
            clock = (System.nanoTime() - began) / NANOS;
            processor = (SYSTEM.getProcessCpuTime() - used) / NANOS;
            return result;
        }

        String shown() {
            return Figure.seconds(clock) + ", " + Figure.seconds(processor) + " of processor";
        }
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

    private static double heap() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / MEBIBYTE;
    }
}
