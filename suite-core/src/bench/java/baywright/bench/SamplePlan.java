package baywright.bench;

import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.money.Confidence;
import baywright.money.JobTerms;
import baywright.money.SiteTerms;
import baywright.plan.Plan;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A plan of any length on a vehicle of forty painted zones, with the shipped stages and the demo's shop. Each of its steps
 * works on all forty.
 *
 * @param setting what it is proved against
 * @param plan    the steps of the demo's estate that work on paint, over and over
 * @param site    the shop's rates and tax
 * @param terms   the job's
 */
record SamplePlan(Setting setting, Plan plan, SiteTerms site, JobTerms terms) {

    static final int ZONES = 40;

    private static final LocalDateTime START = LocalDateTime.of(2026, 12, 7, 8, 0);

    /** Makes a plan of so many steps with the stages and the shop of a workspace. */
    static SamplePlan of(Path workspace, int steps) throws IOException {
        Workspace files = Workspace.open(workspace);
        Shop shop = files.shop().orElseThrow();
        Library library = LibraryLoader.load(files.stages(), files.items()).library();
        Job estate = files.job("green-estate").orElseThrow().job().orElseThrow();
        Setting setting = new Setting(
                library, vehicle(), new Survey(Map.of(), List.of("loose-soil"), Map.of()), shop.bays(), START);
        SiteTerms site = new SiteTerms(
                shop.rates(), shop.tax(), shop.quote().validDays(), shop.quote().depositPercent());
        return new SamplePlan(
                setting,
                new Plan(steps(library, estate.plan(), steps)),
                site,
                JobTerms.at("detailing", Confidence.TRIAL_DONE));
    }

    private static Shape vehicle() {
        List<Zone> zones = IntStream.range(0, ZONES)
                .mapToObj(i -> new Zone(
                        id(i),
                        "Panel " + i,
                        "paint",
                        "steel",
                        Map.of("m2", new BigDecimal("0.9"), "panel", BigDecimal.ONE, "m", BigDecimal.ONE),
                        List.of(id((i + 1) % ZONES), id((i + ZONES - 1) % ZONES))))
                .toList();
        return new Shape("forty", "Forty panels", BigDecimal.ONE, zones);
    }

    private static String id(int zone) {
        return "panel-" + zone;
    }

    private static List<Step> steps(Library library, Plan estate, int count) {
        List<Step> like = estate.steps().stream()
                .filter(s -> library.stageById().get(s.stage()).surfaces().contains("paint"))
                .toList();
        List<Step> steps = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            Step step = like.get(i % like.size());
            steps.add(new Step(
                    "s" + i,
                    step.stage(),
                    List.of("surface:paint"),
                    step.with(),
                    step.priority(),
                    Optional.empty(),
                    Map.of()));
        }
        return steps;
    }
}
