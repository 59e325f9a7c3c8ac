package baywright.safety;

import baywright.library.Item;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.plan.StepWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What people who do a job must know of its dangers. It hands on what data sheets, scripts and the site's settings say; it
 * never says that anything complies with a law.
 *
 * @param shop     name of the shop
 * @param job      title of the job
 * @param locale   language of the statements
 * @param bayDays  what happens in each bay on each day
 * @param products items that carry a hazard, with what to do after a mishap
 * @param apart    what must not meet on this job
 * @param days     what each pair of hands takes in
 * @param findings of the check
 * @param settings that the figures were judged by
 */
public record HazardSheet(
        String shop,
        String job,
        Locale locale,
        List<BayDay> bayDays,
        List<Product> products,
        List<String> apart,
        List<PersonDay> days,
        List<Finding> findings,
        SafetySettings settings) {

    /** Printed on every sheet. */
    public static final String ADVICE = "Check the current safety data sheet; local law and licensed practice rule.";

    public HazardSheet {
        bayDays = List.copyOf(bayDays);
        products = List.copyOf(products);
        apart = List.copyOf(apart);
        days = List.copyOf(days);
        findings = List.copyOf(findings);
    }

    /** Work in one bay on one day. */
    public record BayDay(LocalDate day, String bay, List<Task> tasks) {
        public BayDay {
            tasks = List.copyOf(tasks);
        }
    }

    /**
     * One step.
     *
     * @param step    its id
     * @param title   its stage
     * @param items   titles of its hazardous items
     * @param risks   physical dangers, with levels
     * @param wear    protection of stage and items
     * @param people  how many do it
     * @param minutes hands-on minutes of one of them on this day
     */
    public record Task(
            String step,
            String title,
            List<String> items,
            List<String> risks,
            List<String> wear,
            int people,
            long minutes) {
        public Task {
            items = List.copyOf(items);
            risks = List.copyOf(risks);
            wear = List.copyOf(wear);
        }
    }

    /**
     * One hazardous item as it comes from its pack; thinning it is not taken to make it harmless.
     *
     * @param title      words for people
     * @param label      its label elements
     * @param statements hazard texts with their codes
     * @param protection what to wear
     * @param note       of the price list
     * @param thinned    how it is thinned for use; empty: used as it is
     * @param firstAid   texts for people
     * @param spill      texts for fire and spill
     */
    public record Product(
            String title,
            Label label,
            List<String> statements,
            List<String> protection,
            String note,
            String thinned,
            List<String> firstAid,
            List<String> spill) {
        public Product {
            statements = List.copyOf(statements);
            protection = List.copyOf(protection);
            firstAid = List.copyOf(firstAid);
            spill = List.copyOf(spill);
        }
    }

    /** The sheet of a job. */
    public static HazardSheet of(String shop, String job, SafetyCase all, SafetyReport report, Locale locale) {
        return new HazardSheet(
                shop,
                job,
                locale,
                bayDays(all),
                products(all, Statements.in(locale)),
                apart(all),
                report.days(),
                report.findings(),
                all.settings());
    }

    private static List<BayDay> bayDays(SafetyCase all) {
        Hazards hazards = new Hazards(all);
        Map<LocalDate, Map<String, List<Task>>> sorted = new LinkedHashMap<>();
        Set<String> entered = new LinkedHashSet<>();
        for (DayBook.Stint stint : DayBook.of(all)) {
            String bay = all.setting().bays().stream()
                    .filter(b -> b.id().equals(hazards.bay(stint.work())))
                    .map(Bay::title)
                    .findFirst()
                    .orElse("");
            if (entered.add(stint.day() + " " + stint.work().step())) {
                sorted.computeIfAbsent(stint.day(), d -> new LinkedHashMap<>())
                        .computeIfAbsent(bay, b -> new ArrayList<>())
                        .add(task(all, hazards, stint));
            }
        }
        List<BayDay> bayDays = new ArrayList<>();
        sorted.forEach((day, bays) -> bays.forEach((bay, tasks) -> bayDays.add(new BayDay(day, bay, tasks))));
        return bayDays;
    }

    private static Task task(SafetyCase all, Hazards hazards, DayBook.Stint stint) {
        StepWork work = stint.work();
        Stage stage = all.setting().library().stageById().get(work.stage());
        List<Item> items =
                hazards.items(work).stream().filter(i -> !i.hazards().isEmpty()).toList();
        List<String> risks = Hazards.risks(work).stream()
                .map(kind -> kind + level(hazards, work, kind))
                .toList();
        List<String> wear = Stream.concat(
                        Hazards.wear(work).stream(), items.stream().flatMap(i -> i.protection().stream()))
                .distinct()
                .toList();
        return new Task(
                work.step(),
                stage == null ? work.stage() : stage.title(),
                items.stream().map(Item::title).toList(),
                risks,
                wear,
                Exposures.hands(all, work),
                Math.round(Exposures.handsOnMinutes(all, work) * stint.share()));
    }

    private static String level(Hazards hazards, StepWork work, String kind) {
        for (Agent agent : Agent.values()) {
            if (agent.risk().equals(kind)) {
                var level = hazards.level(work, agent);
                if (level.isPresent()) {
                    String unit = agent == Agent.VIBRATION ? " m/s²" : " dB(A)";
                    return " "
                            + DoseRule.rounded(level.getAsDouble(), 1)
                                    .stripTrailingZeros()
                                    .toPlainString() + unit;
                }
            }
        }
        return "";
    }

    private static List<Product> products(SafetyCase all, Statements texts) {
        Hazards hazards = new Hazards(all);
        Map<String, Product> products = new LinkedHashMap<>();
        for (StepWork work : all.work().steps()) {
            for (Item item : hazards.items(work)) {
                if (!item.hazards().isEmpty()) {
                    products.computeIfAbsent(item.id(), id -> product(item, thinned(all, id), texts));
                }
            }
        }
        return List.copyOf(products.values());
    }

    private static String thinned(SafetyCase all, String item) {
        return all.work().steps().stream()
                .flatMap(w -> w.uses().stream())
                .filter(u -> u.item().equals(item) && !u.dilution().isEmpty())
                .map(StepWork.Use::dilution)
                .findFirst()
                .orElse("");
    }

    private static Product product(Item item, String thinned, Statements texts) {
        Label label = Label.ofCodes(item.hazards());
        Precautions precautions = Precautions.of(item.hazards());
        return new Product(
                item.title(),
                label,
                label.merged().stream()
                        .map(c -> c + " " + texts.textOrWhyNot(c))
                        .toList(),
                item.protection(),
                item.note(),
                thinned,
                texts(precautions.firstAid(), texts),
                texts(precautions.spill(), texts));
    }

    private static List<String> texts(List<String> codes, Statements texts) {
        return codes.stream()
                .map(c -> texts.text(c))
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private static List<String> apart(SafetyCase all) {
        Set<String> apart = new LinkedHashSet<>();
        for (StepWork work : all.work().steps()) {
            Stage stage = all.setting().library().stageById().get(work.stage());
            for (StageTerms terms : Hazards.terms(work)) {
                for (StageTerms.Apart one : terms.hazards().keepApart()) {
                    String why = one.why().isEmpty() ? "" : ": " + one.why();
                    apart.add((stage == null ? work.stage() : stage.title()) + ", keep from " + one.what() + why);
                }
            }
        }
        return List.copyOf(apart);
    }
}
