package baywright.safety;

import baywright.library.Item;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.StepWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What people who do a job, or the jobs of a day, must know of its dangers. It hands on what data sheets, scripts and the
 * site's settings say; it never says that anything complies with a law.
 *
 * @param shop     name of the shop
 * @param title    of the job, or the day
 * @param locale   language of the sheet
 * @param ofDay    whether it is about a day of the shop rather than about one job
 * @param bayDays  what happens in each bay on each day
 * @param products items that carry a hazard, with what to do after a mishap
 * @param apart    what must not meet
 * @param exposed  what each pair of hands takes in
 * @param told     what the check found
 * @param risks    kinds of physical danger that there are
 * @param settings that the figures were judged by
 */
public record HazardSheet(
        String shop,
        String title,
        Locale locale,
        boolean ofDay,
        List<BayDay> bayDays,
        List<Product> products,
        List<Apart> apart,
        List<Exposed> exposed,
        List<Told> told,
        Set<String> risks,
        SafetySettings settings) {

    /** Printed on every sheet, here in English. */
    public static final String ADVICE = "Check the current safety data sheet; local law and licensed practice rule.";

    public HazardSheet {
        bayDays = List.copyOf(bayDays);
        products = List.copyOf(products);
        apart = List.copyOf(apart);
        exposed = List.copyOf(exposed);
        told = List.copyOf(told);
        risks = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(risks));
    }

    /**
     * A job with its check.
     *
     * @param title     words for people
     * @param all       what was checked
     * @param report    what was found
     * @param sentences words its findings
     */
    public record Part(String title, SafetyCase all, SafetyReport report, FindingText sentences) {}

    /** A finding in words; {@code job} is empty on the sheet of one job. */
    public record Told(String job, Finding finding, String sentence) {}

    /**
     * What a pair of hands takes in on a day on which it takes in something; {@code job} is empty on the sheet of one job, and
     * on that of a day for all of them if one person did them.
     */
    public record Exposed(String job, PersonDay day) {}

    /** What a stage keeps from its things. */
    public record Apart(String stage, String what, String why) {}

    /** Work in one bay on one day. */
    public record BayDay(LocalDate day, String bay, List<Task> tasks) {
        public BayDay {
            tasks = List.copyOf(tasks);
        }
    }

    /**
     * One step.
     *
     * @param job     title of its job; empty on the sheet of one job
     * @param step    its id
     * @param title   its stage
     * @param items   titles of its hazardous items
     * @param risks   physical dangers, with levels
     * @param wear    protection of stage and items
     * @param people  how many do it
     * @param minutes hands-on minutes of one of them on this day
     */
    public record Task(
            String job,
            String step,
            String title,
            List<String> items,
            List<Risk> risks,
            List<String> wear,
            int people,
            long minutes) {
        public Task {
            items = List.copyOf(items);
            risks = List.copyOf(risks);
            wear = List.copyOf(wear);
        }

        private Task inWords(UnaryOperator<String> stages, UnaryOperator<String> items, UnaryOperator<String> said) {
            return new Task(
                    job,
                    step,
                    stages.apply(title),
                    this.items.stream().map(items).toList(),
                    risks,
                    wear.stream().map(said).toList(),
                    people,
                    minutes);
        }
    }

    /** A physical danger with its level in words, which may be empty. */
    public record Risk(String kind, String level) {}

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

        private Product inWords(UnaryOperator<String> items, UnaryOperator<String> said) {
            return new Product(
                    items.apply(title),
                    label,
                    statements,
                    protection.stream().map(said).toList(),
                    said.apply(note),
                    thinned,
                    firstAid,
                    spill);
        }
    }

    /** The sheet of a job, all its days. */
    public static HazardSheet of(String shop, Part part, Locale locale) {
        return of(shop, part.title(), false, List.of(part), day -> true, locale);
    }

    /** The sheet of a day of the shop: what of its jobs falls on that day. */
    public static HazardSheet ofDay(String shop, LocalDate day, List<Part> jobs, Locale locale) {
        return of(shop, new SheetWords(locale).day(day), true, jobs, day::equals, locale);
    }

    /**
     * The same sheet with what the library and the shop call things in other words, such as those of another language.
     * Findings stay: their sentences are made by {@link Part#sentences()}.
     *
     * @param stages other title for a stage's title
     * @param items  other title for an item's title
     * @param said   other words for what else a script or the shop says
     */
    public HazardSheet inWords(UnaryOperator<String> stages, UnaryOperator<String> items, UnaryOperator<String> said) {
        return new HazardSheet(
                shop,
                title,
                locale,
                ofDay,
                bayDays.stream()
                        .map(d -> new BayDay(
                                d.day(),
                                said.apply(d.bay()),
                                d.tasks().stream()
                                        .map(t -> t.inWords(stages, items, said))
                                        .toList()))
                        .toList(),
                products.stream().map(p -> p.inWords(items, said)).toList(),
                apart.stream()
                        .map(a -> new Apart(stages.apply(a.stage()), said.apply(a.what()), said.apply(a.why())))
                        .toList(),
                exposed,
                told,
                risks,
                settings);
    }

    /** Whether a job is worked on a day. */
    public static boolean isWorked(SafetyCase all, LocalDate day) {
        return DayBook.of(all).stream().anyMatch(s -> s.day().equals(day));
    }

    private static HazardSheet of(
            String shop, String title, boolean ofDay, List<Part> parts, Predicate<LocalDate> days, Locale locale) {
        Map<LocalDate, Map<String, List<Task>>> tasks = new TreeMap<>();
        Map<String, Product> products = new LinkedHashMap<>();
        Set<Apart> apart = new LinkedHashSet<>();
        List<Exposed> exposed = new ArrayList<>();
        List<Told> told = new ArrayList<>();
        Set<String> risks = new LinkedHashSet<>();
        for (Part part : parts) {
            String job = ofDay ? part.title() : "";
            List<DayBook.Stint> stints = DayBook.of(part.all()).stream()
                    .filter(s -> days.test(s.day()))
                    .toList();
            List<StepWork> works =
                    stints.stream().map(DayBook.Stint::work).distinct().toList();
            tasks(part.all(), job, stints, tasks);
            works.forEach(w -> products(part.all(), w, products, Statements.in(locale)));
            works.forEach(w -> apart(part.all(), w, apart));
            works.forEach(w -> risks.addAll(Hazards.risks(w)));
            part.report().days().stream()
                    .filter(d -> days.test(d.day()))
                    .filter(d -> !d.vibration().isEmpty() || !d.noise().isEmpty())
                    .forEach(d -> exposed.add(new Exposed(job, d)));
            told.addAll(told(part, job, works, days));
        }
        if (parts.size() > 1) {
            exposed.addAll(together(exposed));
        }
        List<BayDay> bayDays = new ArrayList<>();
        tasks.forEach((day, bays) -> bays.forEach((bay, all) -> bayDays.add(new BayDay(day, bay, all))));
        SafetySettings settings =
                parts.isEmpty() ? SafetySettings.USUAL : parts.get(0).all().settings();
        return new HazardSheet(
                shop,
                title,
                locale,
                ofDay,
                bayDays,
                List.copyOf(products.values()),
                List.copyOf(apart),
                exposed,
                told,
                risks,
                settings);
    }

    /** The gravest first, as one reads them before the work. */
    private static List<Told> told(Part part, String job, List<StepWork> works, Predicate<LocalDate> days) {
        Set<String> steps = new LinkedHashSet<>();
        works.forEach(w -> steps.add(w.step()));
        return part.report().findings().stream()
                .filter(f -> f.step().isEmpty() || steps.contains(f.step().get()))
                .filter(f -> dayOf(f).map(days::test).orElse(true))
                .sorted(Comparator.comparing(Finding::severity))
                .map(f -> new Told(job, f, part.sentences().of(f)))
                .toList();
    }

    private static Optional<LocalDate> dayOf(Finding finding) {
        if (finding.reason() instanceof SafetyReason.Dose dose) {
            return Optional.of(dose.day());
        } else if (finding.reason() instanceof SafetyReason.OutOfBounds bounds) {
            return Optional.of(bounds.day());
        } else if (finding.reason() instanceof SafetyReason.Damp damp) {
            return Optional.of(damp.day());
        } else if (finding.reason() instanceof SafetyReason.Vapour vapour) {
            return Optional.of(vapour.day());
        }
        return Optional.empty();
    }

    /** What one person would take in who did the first hands' part of every job. */
    private static List<Exposed> together(List<Exposed> each) {
        Map<LocalDate, List<PersonDay>> byDay = new TreeMap<>();
        each.stream()
                .map(Exposed::day)
                .filter(d -> d.hand() == 1)
                .forEach(d ->
                        byDay.computeIfAbsent(d.day(), x -> new ArrayList<>()).add(d));
        List<Exposed> all = new ArrayList<>();
        byDay.forEach((day, of) -> all.add(new Exposed(
                "",
                new PersonDay(
                        day,
                        1,
                        "",
                        of.stream().flatMap(d -> d.vibration().stream()).toList(),
                        of.stream().flatMap(d -> d.noise().stream()).toList(),
                        of.stream().mapToDouble(PersonDay::vapour).sum()))));
        return all;
    }

    private static void tasks(
            SafetyCase all, String job, List<DayBook.Stint> stints, Map<LocalDate, Map<String, List<Task>>> sorted) {
        Hazards hazards = new Hazards(all);
        Map<String, Double> shares = new LinkedHashMap<>();
        stints.forEach(s -> shares.merge(s.day() + " " + s.work().step(), s.share(), Double::sum));
        Set<String> entered = new LinkedHashSet<>();
        for (DayBook.Stint stint : stints) {
            String key = stint.day() + " " + stint.work().step();
            if (entered.add(key)) {
                String bay = all.setting().bays().stream()
                        .filter(b -> b.id().equals(stint.bay()))
                        .map(Bay::title)
                        .findFirst()
                        .orElse("");
                sorted.computeIfAbsent(stint.day(), d -> new LinkedHashMap<>())
                        .computeIfAbsent(bay, b -> new ArrayList<>())
                        .add(task(all, hazards, job, stint.work(), shares.get(key)));
            }
        }
    }

    private static Task task(SafetyCase all, Hazards hazards, String job, StepWork work, double share) {
        List<Item> items =
                hazards.items(work).stream().filter(i -> !i.hazards().isEmpty()).toList();
        List<Risk> risks = Hazards.risks(work).stream()
                .map(kind -> new Risk(kind, level(hazards, work, kind)))
                .toList();
        List<String> wear = Stream.concat(
                        Hazards.wear(work).stream(), items.stream().flatMap(i -> i.protection().stream()))
                .distinct()
                .toList();
        return new Task(
                job,
                work.step(),
                title(all, work),
                items.stream().map(Item::title).toList(),
                risks,
                wear,
                Exposures.hands(all, work),
                Math.round(Exposures.handsOnMinutes(all, work, Exposures.hands(all, work)) * share));
    }

    private static String title(SafetyCase all, StepWork work) {
        Stage stage = all.setting().library().stageById().get(work.stage());
        return stage == null ? work.stage() : stage.title();
    }

    private static String level(Hazards hazards, StepWork work, String kind) {
        for (Agent agent : Agent.values()) {
            if (agent.risk().equals(kind)) {
                var level = hazards.level(work, agent);
                if (level.isPresent()) {
                    String unit = agent == Agent.VIBRATION ? " m/s²" : " dB(A)";
                    return DoseRule.rounded(level.getAsDouble(), 1)
                                    .stripTrailingZeros()
                                    .toPlainString()
                            + unit;
                }
            }
        }
        return "";
    }

    private static void products(SafetyCase all, StepWork work, Map<String, Product> products, Statements texts) {
        for (Item item : new Hazards(all).items(work)) {
            if (!item.hazards().isEmpty()) {
                products.computeIfAbsent(item.id(), id -> product(item, thinned(all, id), texts));
            }
        }
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
                .map(texts::printed)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private static void apart(SafetyCase all, StepWork work, Set<Apart> apart) {
        for (StageTerms terms : Hazards.terms(work)) {
            for (StageTerms.Apart one : terms.hazards().keepApart()) {
                apart.add(new Apart(title(all, work), one.what(), one.why()));
            }
        }
    }
}
