package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.DemoSite;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Step;
import baywright.plan.StepNeeds;
import baywright.workspace.Job;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bounds by which a search for what fits cuts branches, against true prices. */
class FittingTest {

    @TempDir
    private Path folder;

    /** However a shop rounds and taxes, more never costs less than the bound of what it grew from. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"rounding\": \"half-up\", \"on\": \"total\"",
                "\"rounding\": \"down\", \"on\": \"line\"",
                "\"rounding\": \"half-up\", \"on\": \"gross\", \"priceStep\": 5"
            })
    void noPriceIsBelowItsBound(String tax) throws IOException {
        DemoSite.copy("millrace-works", folder);
        Path file = folder.resolve("shop.json");
        String shop = Files.readString(file);
        String changed =
                shop.replaceFirst("\"tax\": \\{[^}]*\\}", "\"tax\": {\"name\": \"VAT\", \"percent\": 20, " + tax + "}");
        Files.writeString(file, changed);
        Site site =
                Site.open(folder, Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC), DemoSite.SCRIPTS);
        Fitting fitting = new Fitting(
                site, site.job(site.workspace().job("green-estate").orElseThrow()), new BigDecimal(850), false);
        Random random = new Random(8);
        int size = fitting.items().size();
        for (int round = 0; round < 40; round++) {
            BitSet few = new BitSet();
            BitSet many = new BitSet();
            BigDecimal added = BigDecimal.ZERO;
            for (int i = 0; i < size; i++) {
                int lot = random.nextInt(3);
                few.set(i, lot == 0);
                many.set(i, lot < 2);
                added = lot == 1 ? added.add(fitting.items().get(i).least()) : added;
            }
            assertThat(fitting.floor(few).add(added)).isLessThanOrEqualTo(fitting.price(many));
        }
    }

    /** Whoever cancels after some questions gets no answer, and none is asked for long. */
    @Test
    void aCancelledSearchEnds() throws IOException {
        DemoSite.copy("millrace-works", folder);
        Site site =
                Site.open(folder, Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC), DemoSite.SCRIPTS);
        Job job = site.job(site.workspace().job("green-estate").orElseThrow());
        AtomicInteger asked = new AtomicInteger();
        assertThatThrownBy(() -> site.fit(job, new BigDecimal(850), false, () -> asked.incrementAndGet() > 3))
                .isInstanceOf(CancellationException.class);
        assertThat(asked).hasValue(4);
    }

    /** What is told of steps that need each other is true: against it the prover always stops the plan. */
    @Test
    void noPlanAgainstANeedProves() throws IOException {
        DemoSite.copy("millrace-works", folder);
        Site site =
                Site.open(folder, Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC), DemoSite.SCRIPTS);
        Job whole = site.job(site.workspace().job("green-estate").orElseThrow());
        Prover prover = Prover.forSetting(site.setting(whole));
        List<Step> steps = whole.plan().steps();
        List<StepNeeds.Need> needs = StepNeeds.of(prover, whole.plan());
        assertThat(needs).hasSizeGreaterThan(40);
        Random random = new Random(30);
        for (StepNeeds.Need need : needs) {
            for (int round = 0; round < 3; round++) {
                List<Step> kept = new ArrayList<>();
                for (int i = 0; i < steps.size(); i++) {
                    boolean stays = i == need.step() || (!need.anyOf().contains(i) && random.nextInt(3) > 0);
                    if (stays) {
                        kept.add(steps.get(i));
                    }
                }
                assertThat(prover.stops(new Plan(kept)))
                        .as("%s without %s", steps.get(need.step()).id(), need.anyOf())
                        .anyMatch(f -> f.step()
                                .equals(Optional.of(steps.get(need.step()).id())));
            }
        }
    }
}
