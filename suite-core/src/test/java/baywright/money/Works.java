package baywright.money;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.StageTerms;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.plan.StepWork;
import baywright.plan.Trail;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Place;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Work written by hand, as a plan would give it. */
final class Works {

    /** One line of work with everything that a step may bring. */
    record Job(
            Priority priority,
            String stage,
            String family,
            String driver,
            BigDecimal amount,
            Map<String, BigDecimal> factors,
            BigDecimal times,
            ThreePoint minutes,
            BigDecimal setUp,
            Map<String, Quantity> uses,
            boolean machine) {

        static Job of(Priority priority, String stage, String minutes) {
            return new Job(
                    priority,
                    stage,
                    "family-of-" + stage,
                    "vehicle",
                    BigDecimal.ONE,
                    Map.of(),
                    BigDecimal.ONE,
                    ThreePoint.of(minutes, minutes, minutes),
                    BigDecimal.ZERO,
                    Map.of(),
                    false);
        }

        /** The same with three points. */
        Job taking(ThreePoint points) {
            return new Job(priority, stage, family, driver, amount, factors, times, points, setUp, uses, machine);
        }

        Job using(String item, String amount, Unit unit) {
            Map<String, Quantity> more = new LinkedHashMap<>(uses);
            more.put(item, Quantity.of(amount, unit));
            return new Job(priority, stage, family, driver, amount(), factors, times, minutes, setUp, more, machine);
        }

        Job withMachine() {
            return new Job(priority, stage, family, driver, amount, factors, times, minutes, setUp, uses, true);
        }

        Job setUp(String own) {
            return new Job(
                    priority,
                    stage,
                    family,
                    driver,
                    amount,
                    factors,
                    times,
                    minutes,
                    new BigDecimal(own),
                    uses,
                    machine);
        }
    }

    private final List<Job> jobs;
    private final Map<String, BigDecimal> familySetUps;

    private Works(List<Job> jobs, Map<String, BigDecimal> familySetUps) {
        this.jobs = jobs;
        this.familySetUps = familySetUps;
    }

    static Works of(List<Job> jobs, Map<String, BigDecimal> familySetUps) {
        return new Works(jobs, familySetUps);
    }

    static Works of(Job... jobs) {
        return new Works(List.of(jobs), Map.of());
    }

    static Item item(String id, Quantity pack, String price, boolean spoils) {
        return new Item(
                id, id, pack, new BigDecimal(price), spoils, Optional.empty(), List.of(), List.of(), List.of(), "");
    }

    static Library library(Item... items) {
        return Library.of(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(items), List.of(), "library-hash");
    }

    static Library library(List<Item> items) {
        return library(items.toArray(Item[]::new));
    }

    Plan plan() {
        List<Step> steps = new ArrayList<>();
        for (Job job : jobs) {
            steps.add(new Step(
                    "s" + (steps.size() + 1),
                    job.stage(),
                    List.of("vehicle"),
                    Map.of(),
                    job.priority(),
                    Optional.empty(),
                    Map.of()));
        }
        return new Plan(steps);
    }

    PlanWork work() {
        List<StepWork> steps = new ArrayList<>();
        Map<String, List<String>> families = new LinkedHashMap<>();
        for (Job job : jobs) {
            String id = "s" + (steps.size() + 1);
            steps.add(step(id, job));
            families.computeIfAbsent(job.family(), f -> new ArrayList<>()).add(id);
        }
        List<PlanWork.FamilySetUp> setUps = families.entrySet().stream()
                .filter(entry -> familySetUps.containsKey(entry.getKey()))
                .map(entry -> new PlanWork.FamilySetUp(
                        entry.getKey(),
                        familySetUps.get(entry.getKey()),
                        new Place("families.groovy", 1, 1),
                        entry.getValue()))
                .toList();
        return new PlanWork(steps, setUps);
    }

    Ledger ledger(Library library, Rates rates, JobTerms terms) {
        return RollUp.of(plan(), work(), library, rates, terms);
    }

    private static StepWork step(String id, Job job) {
        List<Trail.Applied> applied = job.factors().entrySet().stream()
                .map(f -> new Trail.Applied(
                        f.getKey(), f.getKey(), "as surveyed", f.getValue(), new Place("factors.groovy", 1, 1)))
                .toList();
        Trail trail = new Trail(
                new Place(job.stage() + ".groovy", 3, 5),
                job.driver(),
                job.amount(),
                Trail.Source.SHAPE,
                job.times(),
                List.of(),
                applied,
                List.of("vehicle"));
        BigDecimal factor = job.factors().values().stream()
                .reduce(job.times(), BigDecimal::multiply)
                .multiply(job.amount());
        List<StepWork.SetUp> setUps =
                job.setUp().signum() == 0 ? List.of() : List.of(new StepWork.SetUp(job.setUp(), once(trail)));
        return new StepWork(
                id,
                job.stage(),
                job.family(),
                List.of("vehicle"),
                List.of(new StepWork.Part(List.of("vehicle"), terms(job.machine()))),
                List.of(new StepWork.Attended(job.minutes().times(factor), job.minutes(), trail)),
                setUps,
                List.of(new StepWork.Standing(
                        BigDecimal.valueOf(3),
                        BigDecimal.valueOf(5),
                        Optional.of(BigDecimal.valueOf(7)),
                        "",
                        once(trail))),
                job.uses().entrySet().stream()
                        .map(use -> new StepWork.Use(use.getKey(), use.getValue(), "", trail))
                        .toList(),
                List.of(),
                StageTerms.Crew.ONE);
    }

    private static Trail once(Trail trail) {
        return new Trail(
                trail.place(), "", BigDecimal.ONE, Trail.Source.USE, BigDecimal.ONE, List.of(), List.of(), List.of());
    }

    private static StageTerms terms(boolean machine) {
        StageTerms.Origin origin = StageTerms.Origin.at(new Place("stage.groovy", 1, 1));
        List<StageTerms.Risk> risks =
                machine ? List.of(new StageTerms.Risk("vibration", Optional.empty(), origin)) : List.of();
        return new StageTerms(
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new StageTerms.Hazards(List.of(), risks, List.of(), List.of()),
                StageTerms.Crew.ONE,
                StageTerms.Where.ANY,
                StageTerms.Climate.ANY,
                List.of(),
                List.of(),
                List.of(),
                Set.of());
    }
}
