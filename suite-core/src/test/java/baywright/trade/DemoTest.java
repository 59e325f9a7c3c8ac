package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Library;
import baywright.money.Confidence;
import baywright.money.JobTerms;
import baywright.money.Ledger;
import baywright.money.Offer;
import baywright.money.Part;
import baywright.money.Quote;
import baywright.money.Quoting;
import baywright.money.RollUp;
import baywright.money.SiteTerms;
import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Reason;
import baywright.plan.Setting;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's sites with the standard library copied in, as a user gets them. */
class DemoTest {

    private static final LocalDateTime NOON = LocalDateTime.of(2026, 12, 1, 12, 0);

    @TempDir
    static Path folder;

    private static Workspace millrace;
    private static Workspace saltmarsh;

    @BeforeAll
    static void copy() throws IOException {
        copyTree(Shipped.DEMO.resolve("millrace-works"), folder.resolve("millrace-works"));
        copyTree(Shipped.DEMO.resolve("saltmarsh-quay"), folder.resolve("saltmarsh-quay"));
        for (String site : List.of("millrace-works", "saltmarsh-quay")) {
            Path root = folder.resolve(site);
            copyTree(Shipped.STAGES, root.resolve("stages"));
            Path items = root.resolve("stages").resolve("items.json");
            if (Files.exists(root.resolve("items.json"))) {
                Files.delete(items);
            } else {
                Files.move(items, root.resolve("items.json"));
            }
        }
        millrace = Workspace.open(folder.resolve("millrace-works"));
        saltmarsh = Workspace.open(folder.resolve("saltmarsh-quay"));
    }

    private static void copyTree(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            all.forEach(p -> {
                try {
                    Path target = to.resolve(from.relativize(p).toString());
                    if (Files.isDirectory(p)) {
                        Files.createDirectories(target);
                    } else {
                        Files.copy(p, target, StandardCopyOption.REPLACE_EXISTING);
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    @Test
    void bothSitesReadWithoutAProblem() {
        assertThat(millrace.problems()).isEmpty();
        assertThat(saltmarsh.problems()).isEmpty();
        assertThat(millrace.jobs()).hasSize(3);
        assertThat(saltmarsh.jobs()).hasSize(1);
    }

    @Test
    void theVansProveWithoutAFinding() {
        assertThat(proof(millrace, "bramblegate-vans").findings()).isEmpty();
    }

    /** The bonnet's compound is the option that may cost too much film; 88 µm and plastic take care. */
    @Test
    void theEstateProvesWithTheWarningsThatItsReadingsAskFor() {
        assertThat(told("millrace", "green-estate"))
                .containsExactly(
                        "WARN film-budget s24 [bonnet]",
                        "WARN thin-film-with-care s27 [rear-door-left]",
                        "WARN unreadable-zone s27 [front-bumper, rear-bumper, mirror-left, mirror-right]");
    }

    /** Old paint: tried first, watched on thin and ragged panels; the fresh boot lid waits for its thirty days. */
    @Test
    void theCoupeProvesWithTheWarningsThatItsPaintAsksFor() {
        assertThat(told("saltmarsh", "show-coupe"))
                .containsExactly(
                        "WARN thin-film-with-care s23 [roof]",
                        "WARN film-budget s23 [roof]",
                        "WARN film-budget s24 [bonnet]",
                        "WARN film-budget s25 [front-wing-left]",
                        "WARN uneven-readings s25 [front-wing-left]",
                        "WARN film-budget s37 [front-door-left]",
                        "WARN thin-film-with-care s40 [roof]",
                        "WARN thin-film-with-care s40 [front-door-right]",
                        "WARN unreadable-zone s40 [mirror-left, mirror-right]",
                        "WARN thin-film-with-care s41 [roof]",
                        "WARN thin-film-with-care s41 [front-door-right]",
                        "WARN unreadable-zone s41 [mirror-left, mirror-right]");
    }

    private static List<String> told(String site, String job) {
        return proof(site.equals("millrace") ? millrace : saltmarsh, job).findings().stream()
                .map(f -> f.severity() + " "
                        + (f.reason() instanceof Reason.RuleSpeaks r ? r.rule() : f.code()) + " "
                        + f.step().orElse("") + " " + f.zones())
                .toList();
    }

    /** Waxed a day earlier the boot lid is 29 days old: the rule holds it, and it alone. */
    @Test
    void theCoupesBootLidTakesNoWaxBeforeDayTen() {
        Job job = job(saltmarsh, "show-coupe");
        Optional<LocalDateTime> eve = Optional.of(LocalDateTime.of(2026, 12, 16, 16, 0));
        List<Step> steps = job.plan().steps().stream()
                .map(s -> s.id().equals("s45")
                        ? new Step(s.id(), s.stage(), s.zones(), s.with(), s.priority(), eve, s.drivers())
                        : s)
                .toList();
        List<Finding> stops = Prover.prove(setting(saltmarsh, job), new Plan(steps)).findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .toList();
        assertThat(stops).extracting(Finding::zones).containsExactly(List.of("boot-lid"));
        assertThat(stops).extracting(f -> f.step().orElse("")).containsExactly("s47");
    }

    /** Iron remover left to dry, damp taped over, paint not measured, no panel wipe, sealed and passed with the tape on. */
    @Test
    void theHatchbackIsPlannedWrongInFiveWays() {
        List<Finding> stops = proof(millrace, "hurried-hatch").findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .toList();
        assertThat(stops)
                .extracting(f -> f.step().orElse("") + " " + f.code())
                .containsExactlyInAnyOrder(
                        "s9 too-late",
                        "s15 need-unmet",
                        "s16 need-unmet",
                        "s18 need-unmet",
                        "s18 must-not-hold",
                        "s19 need-unmet",
                        "s19 must-not-hold",
                        "s20 must-not-hold");
    }

    /** Workshop's own sums for a van: minutes, net, gross. From memory; the arithmetic is exact. */
    @Test
    void aVanCostsWhatTheWorkshopReckoned() {
        Job job = job(millrace, "bramblegate-vans");
        JobTerms one = new JobTerms("valeting", 1, BigDecimal.ZERO, Confidence.TRIAL_DONE);
        Quote quote = quote(millrace, job, one);
        assertThat(quote.ledger().minutes().setScale(2, RoundingMode.HALF_UP)).isEqualByComparingTo("112.21");
        assertThat(quote.price().net().getAmount()).isEqualByComparingTo("82.97");
        assertThat(quote.price().gross().getAmount()).isEqualByComparingTo("99.57");
    }

    @Test
    void theEstateCostsWhatTheWorkshopReckoned() {
        Job job = job(millrace, "green-estate");
        Quote quote = quote(millrace, job, new JobTerms("detailing", 1, BigDecimal.ZERO, Confidence.TRIAL_DONE));
        assertPart(quote, Priority.MUST, "674", "592.25", "710.70");
        assertPart(quote, Priority.SHOULD, "93", "72.31", "86.77");
        assertPart(quote, Priority.COULD, "225", "194.21", "233.06");
        assertThat(quote.price().gross().getAmount()).isEqualByComparingTo("1030.53");
        Part should = quote.part(Priority.SHOULD).orElseThrow();
        assertThat(should.upTo().low().gross().getAmount()).isEqualByComparingTo("797.47");
        assertThat(should.upTo().high().gross().getAmount()).isEqualByComparingTo("832.00");
    }

    /** About 50 attended hours, 3390 net, 4170 gross: "about" is taken as five in the hundred. */
    @Test
    void theCoupeCostsAboutWhatTheWorkshopReckoned() {
        Job job = job(saltmarsh, "show-coupe");
        Quote quote = quote(saltmarsh, job, new JobTerms("detailing", 1, BigDecimal.ZERO, Confidence.TRIAL_DONE));
        assertThat(quote.ledger().minutes()).isBetween(new BigDecimal("2850"), new BigDecimal("3150"));
        assertThat(quote.price().net().getAmount()).isBetween(new BigDecimal("3220"), new BigDecimal("3560"));
    }

    private static void assertPart(Quote quote, Priority priority, String minutes, String net, String gross) {
        Part part = quote.part(priority).orElseThrow();
        assertThat(part.minutes().setScale(0, RoundingMode.HALF_UP))
                .as("%s", priority)
                .isEqualByComparingTo(minutes);
        assertThat(part.alone().exactNet().setScale(2, RoundingMode.HALF_UP))
                .as("%s", priority)
                .isEqualByComparingTo(net);
        assertThat(part.alone().gross().getAmount()).as("%s", priority).isEqualByComparingTo(gross);
    }

    private static Quote quote(Workspace site, Job job, JobTerms terms) {
        Setting setting = setting(site, job);
        Shop shop = site.shop().orElseThrow();
        Prover prover = Prover.forSetting(setting);
        PlanWork work = prover.work(job.plan());
        Ledger ledger = RollUp.of(job.plan(), work, setting.library(), shop.rates(), terms);
        SiteTerms siteTerms = new SiteTerms(
                shop.rates(), shop.tax(), shop.quote().validDays(), shop.quote().depositPercent());
        Offer offer = Quoting.of(setting, job.plan(), prover.prove(job.plan()), ledger, siteTerms, job.cap(), NOON);
        assertThat(offer).isInstanceOf(Quote.class);
        return (Quote) offer;
    }

    private static Proof proof(Workspace site, String id) {
        Job job = job(site, id);
        return Prover.prove(setting(site, job), job.plan());
    }

    private static Job job(Workspace site, String id) {
        return site.job(id).orElseThrow().job().orElseThrow();
    }

    /** The shipped scripts are the same at both sites; only the price list differs. */
    private static Setting setting(Workspace site, Job job) {
        Library all = Shipped.library().library();
        Library own = Library.of(
                all.states(),
                all.surfaces(),
                all.families(),
                all.facts(),
                all.factors(),
                new ArrayList<>(site.items()),
                all.stages(),
                all.rules(),
                all.hash());
        return site.setting(job, own, NOON);
    }
}
