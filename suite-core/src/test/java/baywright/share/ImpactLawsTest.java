package baywright.share;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import baywright.chance.Watch;
import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryFiles;
import baywright.library.LibraryLoader;
import baywright.money.Fingerprint;
import baywright.plan.Finding;
import baywright.site.Site;
import baywright.vehicle.Shape;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is told of a changed library is what comes out when every job is worked anew with both; by brute force. */
class ImpactLawsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-07T07:00:00Z"), ZoneOffset.UTC);
    private static final int ROUNDS = 8;
    private static final int COPIES = 4;

    @TempDir
    private static Path folder;

    private static Site site;

    /** The shipped library with many of its lines changed: whatever is taken of it is a change that somebody could make. */
    private static Library other;

    private static List<ImpactChange> all;

    @BeforeAll
    static void open() throws Exception {
        DemoSite.copy("millrace-works", folder);
        Site demo = Site.open(folder, CLOCK, DemoSite.SCRIPTS);
        List<Job> jobs = new ArrayList<>(demo.jobs());
        jobs.addAll(Estate.of(
                demo.jobs(),
                demo.library(),
                demo.workspace().shapes().stream().map(Shape::id).toList(),
                COPIES,
                20_261_201));
        site = demo.withJobs(jobs);
        Random random = new Random(7);
        Map<String, String> texts = new TreeMap<>();
        LibraryFiles.read(demo.workspace().stages())
                .texts()
                .forEach((name, text) -> texts.put(name, changed(text, oneLineIn(name), random)));
        List<Item> items = demo.workspace().items().stream()
                .map(item -> random.nextInt(3) > 0 ? item : other(item, random))
                .toList();
        other = LibraryLoader.load(texts, items).library();
        all = Impact.changes(site.library(), other);
    }

    /** Of what few jobs notice more is changed. */
    private static int oneLineIn(String file) {
        if (file.startsWith("rules/")) {
            return 2;
        }
        return file.contains("/") || file.startsWith("states") ? 6 : 1;
    }

    private static String changed(String text, int oneIn, Random random) {
        return text.lines()
                .map(line -> random.nextInt(oneIn) > 0 ? line : changedLine(line, random))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String changedLine(String line, Random random) {
        if (line.strip().startsWith("warns {")) {
            return line.replace("warns {", "forbids {");
        }
        if (line.strip().startsWith("forbids {") && line.contains(" < ")) {
            return line.replace(" < ", " >= ");
        }
        if (line.strip().startsWith("state '") && !line.contains("lasts:")) {
            return line + ", lasts: 20.min";
        }
        if (line.strip().startsWith("wants '")) {
            return line.replace("wants ", "wants 'iron-clear', ");
        }
        if (line.strip().startsWith("prefers ") && !line.contains("why")) {
            return line.replace("prefers ", "needs ");
        }
        if (line.strip().startsWith("value ")) {
            return line.replaceFirst("[0-9.]+$", "1.7");
        }
        Matcher amounts =
                Pattern.compile("(\\d+(?:\\.\\d+)?)\\.(min|ml|g|h)\\b").matcher(line);
        BigDecimal factor = random.nextBoolean() ? new BigDecimal("1.5") : new BigDecimal("0.5");
        return line.contains("example") || line.contains("attended:") || line.contains("uses:")
                ? line
                : amounts.replaceAll(
                        m -> new BigDecimal(m.group(1)).multiply(factor).toPlainString() + "." + m.group(2));
    }

    /** Dearer, and now and then an acid, which must not meet what other jobs bring. */
    private static Item other(Item of, Random random) {
        List<String> groups = new ArrayList<>(of.groups());
        if (random.nextInt(3) == 0) {
            groups.add("acid");
        }
        return new Item(
                of.id(),
                of.title(),
                of.pack(),
                of.price().add(new BigDecimal("3.10")),
                of.spoils(),
                of.density(),
                of.hazards(),
                of.protection(),
                groups,
                of.note());
    }

    private static Map<String, ImpactFigures> everyJob(Library library) {
        Site anew = site.withLibrary(library, job -> false);
        return anew.jobs().stream()
                .collect(Collectors.toMap(Job::id, job -> ImpactFigures.of(anew.workOneOfMany(job))));
    }

    @Test
    void whatIsToldIsWhatComesOutWhenEveryJobIsWorkedAnew() {
        Map<String, ImpactFigures> before = everyJob(site.library());
        Random random = new Random(41);
        int moved = 0;
        int untouched = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Impact impact = heldAgainstEveryJob(before, some(random, round % 2 == 0 ? 1 : 1 + random.nextInt(6)));
            moved += impact.jobs().size();
            untouched += impact.untouched();
        }
        assertThat(moved).as("the changes are felt").isGreaterThan(ROUNDS);
        assertThat(untouched).as("and not by every job").isPositive();
    }

    /** So that no kind hides behind another which the same jobs notice. */
    @ParameterizedTest
    @EnumSource(
            value = ImpactChange.Kind.class,
            names = {"STAGE", "RULE", "STATE", "ITEM", "FAMILY", "FACTOR", "GOAL"})
    void changesOfOneKindAloneAreToldAsTheyComeOut(ImpactChange.Kind kind) {
        List<ImpactChange> taken = all.stream().filter(c -> c.kind() == kind).toList();
        Impact impact =
                heldAgainstEveryJob(everyJob(site.library()), ImpactLibraries.with(site.library(), other, taken));
        assertThat(impact.jobs()).as("jobs that %s move", taken).isNotEmpty();
    }

    private static Impact heldAgainstEveryJob(Map<String, ImpactFigures> before, Library after) {
        Impact impact = Impact.of(site, after, ImpactPapers.NONE, Watch.NOBODY);
        Map<String, ImpactOfJob> told =
                impact.jobs().stream().collect(Collectors.toMap(j -> j.job().id(), Function.identity()));
        everyJob(after).forEach((id, figures) -> {
            ImpactOfJob job = told.get(id);
            assertThat(before.get(id).saysTheSame(figures))
                    .as("%s under %s", id, impact.changes())
                    .isEqualTo(job == null);
            if (job != null) {
                assertSame(job.before(), before.get(id));
                assertSame(job.after(), figures);
                assertThat(fingerprints(job.come())).isEqualTo(fingerprints(figures.without(before.get(id))));
                assertThat(fingerprints(job.gone()))
                        .isEqualTo(fingerprints(before.get(id).without(figures)));
            }
        });
        assertThat(impact.jobs().size() + impact.same() + impact.untouched())
                .isEqualTo(site.jobs().size());
        return impact;
    }

    /** A single change makes the whole difference; of several each is what the job comes to with it alone. */
    @Test
    void eachCauseIsTheWorkOfItsChangeAloneAndTheRestMakesUpTheWhole() {
        Random random = new Random(5);
        List<ImpactChange> plain =
                all.stream().filter(c -> c.how() == ImpactChange.How.CHANGED).toList();
        Map<String, ImpactFigures> before = everyJob(site.library());
        for (int round = 0; round < 3; round++) {
            List<ImpactChange> taken = new ArrayList<>(plain);
            Collections.shuffle(taken, random);
            taken = taken.subList(0, 3);
            Library after = ImpactLibraries.with(site.library(), other, taken);
            Impact impact = Impact.of(site, after, ImpactPapers.NONE, Watch.NOBODY);
            for (ImpactChange change : taken) {
                Map<String, ImpactFigures> alone =
                        everyJob(ImpactLibraries.with(site.library(), other, List.of(change)));
                for (ImpactOfJob job : impact.jobs()) {
                    ImpactFigures was = before.get(job.job().id());
                    ImpactCause expected =
                            ImpactCause.of(change, was, alone.get(job.job().id()));
                    Optional<ImpactCause> cause = job.causes().stream()
                            .filter(c -> c.change().equals(change))
                            .findFirst();
                    assertThat(cause.isEmpty()).isEqualTo(expected.isNothing());
                    cause.ifPresent(c -> {
                        assertThat(c.effect().minus(expected.effect()).isNothing())
                                .isTrue();
                        assertThat(fingerprints(c.come())).isEqualTo(fingerprints(expected.come()));
                        assertThat(fingerprints(c.gone())).isEqualTo(fingerprints(expected.gone()));
                    });
                }
            }
            for (ImpactOfJob job : impact.jobs()) {
                BigDecimal sum = job.causes().stream()
                        .map(c -> c.effect().attended())
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .add(job.rest().map(ImpactEffect::attended).orElse(BigDecimal.ZERO));
                assertThat(sum).isEqualByComparingTo(job.effect().attended());
            }
        }
    }

    @Test
    void aWorkedJobSaysTheSameWithItsWaysOutAndWithoutThem() {
        Job job = site.workspace().job("hurried-hatch").orElseThrow().job().orElseThrow();
        assertSame(ImpactFigures.of(site.workOneOfMany(job)), ImpactFigures.of(site.work(job)));
    }

    private static Library some(Random random, int count) {
        List<ImpactChange> taken = new ArrayList<>(all);
        Collections.shuffle(taken, random);
        return ImpactLibraries.with(site.library(), other, taken.subList(0, count));
    }

    private static void assertSame(ImpactFigures one, ImpactFigures two) {
        assertThat(one.saysTheSame(two)).as("%s and %s", one, two).isTrue();
    }

    private static List<String> fingerprints(List<Finding> findings) {
        return findings.stream().map(f -> Fingerprint.of(f)).sorted().toList();
    }
}
