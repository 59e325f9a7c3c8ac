package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.money.LineKind.Column;
import baywright.plan.PlanWork;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Step.Priority;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demo's jobs, from the shipped scripts and files to the price. The totals are those of the worked examples of the
 * shop's price scheme (see {@link PriceSchemeTest}): common practice, no source.
 */
class DemoPricesTest {

    private static final LocalDateTime AT = LocalDateTime.of(2026, 11, 25, 9, 0);

    @TempDir
    private static Path folder;

    private static Workspace workspace;
    private static Library library;

    @BeforeAll
    static void openTheDemo() throws IOException {
        DemoSite.copy("millrace-works", folder);
        workspace = Workspace.open(folder);
        library = LibraryLoader.load(folder.resolve("stages"), workspace.items(), DemoSite.SCRIPTS)
                .library();
    }

    private static Quote quote(String id) {
        Shop shop = workspace.shop().orElseThrow();
        Job job = workspace.job(id).orElseThrow().job().orElseThrow();
        Setting setting = workspace.setting(job, library, AT);
        Prover prover = Prover.forSetting(setting);
        PlanWork work = prover.work(job.plan());
        SiteTerms site = new SiteTerms(
                shop.rates(), shop.tax(), shop.quote().validDays(), shop.quote().depositPercent());
        JobTerms terms = new JobTerms(
                job.rate().orElseThrow(), job.vehicles(), job.discountLabourPercent(), Confidence.found(setting, work));
        Ledger ledger = RollUp.of(job.plan(), work, library, site.rates(), terms);
        return (Quote) Quoting.of(setting, job.plan(), prover.prove(job.plan()), ledger, site, job.cap(), AT);
    }

    private static Money pounds(String amount) {
        return Money.parse("GBP " + amount);
    }

    @ParameterizedTest
    @CsvSource({
        "MUST, 674, 592.25, 710.70, 710.70",
        "SHOULD, 93, 72.31, 86.77, 797.47",
        "COULD, 225, 194.21, 233.06, 1030.53"
    })
    void theEstateComesOutToThePenny(Priority priority, int minutes, String net, String gross, String grossUpTo) {
        Part part = quote("green-estate").part(priority).orElseThrow();

        assertThat(part.minutes().setScale(0, RoundingMode.HALF_UP)).isEqualByComparingTo(BigDecimal.valueOf(minutes));
        assertThat(part.alone().exactNet().setScale(2, RoundingMode.HALF_UP)).isEqualTo(net);
        assertThat(part.alone().gross()).isEqualTo(pounds(gross));
        assertThat(part.upTo().low().gross()).isEqualTo(pounds(grossUpTo));
    }

    @Test
    void theEstatesMustAndShouldFitTheCapAndTheRestDoesNot() {
        Quote quote = quote("green-estate");

        assertThat(quote.ledger().terms().confidence()).isEqualTo(Confidence.TRIAL_DONE);
        assertThat(quote.part(Priority.SHOULD).orElseThrow().upTo().high().gross())
                .isEqualTo(pounds("832.00"));
        assertThat(quote.part(Priority.SHOULD)
                        .orElseThrow()
                        .capHigh()
                        .orElseThrow()
                        .fits())
                .isTrue();
        assertThat(quote.cap().orElseThrow().over()).isEqualTo(pounds("180.53"));
    }

    /** 99.57 a van, and six times the exact price for the six of them. */
    @Test
    void theVansComeOutToThePenny() {
        Quote quote = quote("bramblegate-vans");
        BigDecimal six = BigDecimal.valueOf(6);
        BigDecimal perVan = quote.price().exactNet().divide(six, Rates.PRECISION);

        assertThat(quote.ledger().minutes().divide(six, 2, RoundingMode.HALF_UP))
                .isEqualTo("112.21");
        assertThat(perVan.setScale(2, RoundingMode.HALF_UP)).isEqualTo("82.97");
        assertThat(quote.terms()
                        .tax()
                        .priceOf(quote.ledger().currency(), perVan)
                        .gross())
                .isEqualTo(pounds("99.57"));
        assertThat(quote.price().gross()).isEqualTo(pounds("597.40"));
    }

    @Test
    void everyLineOfTheDemoKnowsWhereItComesFrom() {
        Ledger ledger = quote("green-estate").ledger();

        assertThat(ledger.lines(LineKind.HANDS_ON))
                .hasSizeGreaterThan(30)
                .allSatisfy(line -> assertThat(line.trail())
                        .singleElement()
                        .isInstanceOfSatisfying(Origin.Work.class, work -> {
                            assertThat(work.trail().place().file()).endsWith(".groovy");
                            assertThat(work.trail().place().line()).isPositive();
                        }));
        assertThat(List.of(Column.MINUTES, Column.COST, Column.PRICE))
                .allSatisfy(column -> assertThat(ledger.total(column)).isPositive());
    }
}
