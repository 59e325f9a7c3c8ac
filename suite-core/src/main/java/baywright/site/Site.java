package baywright.site;

import baywright.chance.Loadings;
import baywright.chance.Rework;
import baywright.chance.Simulation;
import baywright.chance.Watch;
import baywright.library.Library;
import baywright.library.ScriptCache;
import baywright.money.Causes;
import baywright.money.Confidence;
import baywright.money.JobTerms;
import baywright.money.Ledger;
import baywright.money.Offer;
import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.money.Quoting;
import baywright.money.Rates;
import baywright.money.Refusal;
import baywright.money.RollUp;
import baywright.money.Uncertainty;
import baywright.money.WorkCosts;
import baywright.plan.AskedGoal;
import baywright.plan.Composer;
import baywright.plan.Delays;
import baywright.plan.GoalComposition;
import baywright.plan.Leaning;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Repair;
import baywright.plan.RepairResult;
import baywright.plan.Setting;
import baywright.plan.StepWork;
import baywright.safety.Booked;
import baywright.safety.HazardSheet;
import baywright.safety.PersonDay;
import baywright.safety.SafetyCase;
import baywright.safety.SafetyCheck;
import baywright.safety.SafetyReport;
import baywright.safety.StepDose;
import baywright.safety.Worker;
import baywright.schedule.BookedJob;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopScheduler;
import baywright.schedule.ShopTimetable;
import baywright.schedule.TimedShop;
import baywright.schedule.UncertainSteps;
import baywright.script.Problem;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import baywright.workspace.ReadingsFile;
import baywright.workspace.ReadingsForm;
import baywright.workspace.Shop;
import baywright.workspace.Workspace;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;

/** A workspace with its library, ready to prove and price jobs. */
public final class Site {

    /** Days: the longest that fresh paint is left alone by the makers' figures, and some more. */
    private static final int LONGEST_DELAY = 120;

    private final Workspace workspace;
    private final Shop shop;
    private final Library library;
    private final List<Problem> warnings;
    private final Clock clock;
    private final Neighbours neighbours;

    private Site(
            Workspace workspace,
            Shop shop,
            Library library,
            List<Problem> warnings,
            Clock clock,
            Function<Site, Neighbours> neighbours) {
        this.workspace = workspace;
        this.shop = shop;
        this.library = library;
        this.warnings = warnings;
        this.clock = clock;
        this.neighbours = neighbours.apply(this);
    }

    /** A site whose jobs are those of its workspace. */
    static Site of(Workspace workspace, Library library, List<Problem> warnings, Clock clock) {
        List<Job> jobs =
                workspace.jobs().stream().flatMap(file -> file.job().stream()).toList();
        return new Site(
                workspace,
                workspace.shop().orElseThrow(),
                library,
                warnings,
                clock,
                site -> Neighbours.of(jobs, site::booked));
    }

    /** The same site with other jobs beside each other, saved or not. */
    public Site withJobs(Collection<Job> others) {
        return new Site(workspace, shop, library, warnings, clock, site -> neighbours.withJobs(List.copyOf(others)));
    }

    /** The same site with another workspace and library. */
    Site with(Workspace other, Library stages, List<Problem> wrong) {
        return new Site(
                other, other.shop().orElseThrow(), stages, wrong, clock, site -> Neighbours.of(jobs(), site::booked));
    }

    /**
     * The same site with another library, for those who look at what becomes of its jobs.
     *
     * @param alike jobs that say the same to those beside them with either library, which is then not worked out again
     */
    public Site withLibrary(Library stages, Predicate<Job> alike) {
        return new Site(workspace, shop, stages, warnings, clock, site -> neighbours.under(site::booked, alike));
    }

    /** The same site at one moment, so that whatever is worked out later is worked out for then. */
    public Site stopped() {
        return new Site(
                workspace,
                shop,
                library,
                warnings,
                Clock.fixed(clock.instant(), clock.getZone()),
                site -> Neighbours.of(jobs(), site::booked));
    }

    /**
     * Opens a workspace and loads its stage scripts without a cache.
     *
     * @see #open(Path, Clock, ScriptCache)
     */
    public static Site open(Path folder, Clock clock) {
        return open(folder, clock, ScriptCache.none());
    }

    /**
     * Opens a workspace and loads its stage scripts. A job with errors of its own spoils no other.
     *
     * @param clock tells the time of a quote, and when work begins on a job without a time of arrival
     * @param cache where scripts are kept between runs
     * @throws SiteTrouble when shop, price list, shapes or a script have an error
     * @throws baywright.workspace.WorkspaceException when there is no such folder or it cannot be read
     */
    public static Site open(Path folder, Clock clock, ScriptCache cache) {
        return Workspace.together(folder, workspace -> {
            LibraryFolder.Loaded loaded = LibraryFolder.of(workspace).load(cache);
            loaded.refuseErrors(workspace.root());
            return of(workspace, loaded.library(), loaded.problems(), clock);
        });
    }

    Clock clock() {
        return clock;
    }

    public Workspace workspace() {
        return workspace;
    }

    public Shop shop() {
        return shop;
    }

    public Library library() {
        return library;
    }

    /** Its jobs that can be used, among which one looks for its neighbours. */
    public List<Job> jobs() {
        return neighbours.jobs();
    }

    /** What is wrong with shop, price list, shapes and scripts without making them useless. */
    public List<Problem> warnings() {
        return warnings;
    }

    /**
     * The job of a folder.
     *
     * @throws SiteTrouble when the job's files have an error
     */
    public Job job(JobFile file) {
        return file.job().orElseThrow(() -> {
            List<Problem> errors = problemsOf(file).stream()
                    .filter(p -> p.severity() == Problem.Severity.ERROR)
                    .toList();
            return new SiteTrouble(workspace.root(), errors);
        });
    }

    /** What is wrong with a job's files, in order of file and place. */
    public static List<Problem> problemsOf(JobFile file) {
        return LibraryFolder.asProblems(file.problems());
    }

    /**
     * Readings of a job's vehicle from any file, such as those taken after the work.
     *
     * @throws SiteTrouble when the file has an error
     */
    public ReadingsFile readings(Job job, Path file, ReadingsForm form) {
        ReadingsFile read = ReadingsFile.read(file, form, setting(job).shape());
        if (read.hasErrors()) {
            throw new SiteTrouble(
                    file.toAbsolutePath().normalize().getParent(), LibraryFolder.asProblems(read.problems()));
        }
        return read;
    }

    /** What a job's plan is proved against. */
    public Setting setting(Job job) {
        return workspace.setting(job, library, now());
    }

    /** A hazard sheet of this site's jobs in the words that its library has for the language of the sheet. */
    public HazardSheet inWords(HazardSheet sheet) {
        return workspace.words(sheet.locale().getLanguage()).of(sheet, library);
    }

    /** Proves a job's plan and checks its safety. */
    public JudgedJob judge(Job job) {
        Setting setting = setting(job);
        return judge(job, setting, Prover.forSetting(setting), true, UnaryOperator.identity(), SafetyCheck::of);
    }

    /** The same without ways out of what hurts people, for those who judge many plans in one setting, with a prover of it. */
    JudgedJob judgeOneOfMany(Job job, Setting setting, Prover prover) {
        return judge(job, setting, prover, false, UnaryOperator.identity(), SafetyCheck::withoutRemedies);
    }

    /** {@code whole}: the parts of the plan by priority are looked at as well. */
    private JudgedJob judge(
            Job job,
            Setting setting,
            Prover prover,
            boolean whole,
            UnaryOperator<SafetyCase> timed,
            Function<SafetyCase, SafetyReport> check) {
        Proof proof = prover.prove(job.plan());
        PlanWork work = prover.work(job.plan());
        SafetyCase safe = timed.apply(safetyCase(job, setting, proof, work));
        Leaning leaning = whole ? prover.leaning(job.plan(), proof) : Leaning.NONE;
        return new JudgedJob(job, setting, proof, work, leaning, safe, check.apply(safe));
    }

    /** The same by a timetable: its days, people and bays count, not the order of the steps. */
    public JudgedJob judge(Job job, ShopTimetable timetable) {
        Setting setting = setting(job);
        return judge(
                job,
                setting,
                Prover.forSetting(setting),
                true,
                safe -> safe.timed(Exposed.spells(job, timetable)),
                SafetyCheck::of);
    }

    /**
     * The jobs of a timetable judged by its days, people and bays, each beside the others as they are timed; without ways
     * out, since those change a plan and not a timetable.
     *
     * @param jobs those of the timetable
     */
    public List<JudgedJob> judge(List<Job> jobs, ShopTimetable timetable) {
        List<JudgedJob> judged = new ArrayList<>();
        for (Job job : jobs) {
            Setting setting = setting(job);
            List<Booked> others = jobs.stream()
                    .filter(other -> !other.id().equals(job.id()))
                    .map(other -> Booked.of(
                            other.id(), other.title(), safetyCase(other).timed(Exposed.spells(other, timetable))))
                    .toList();
            judged.add(judge(
                    job,
                    setting,
                    Prover.forSetting(setting),
                    false,
                    safe -> (others.isEmpty() ? safe : safe.beside(others)).timed(Exposed.spells(job, timetable)),
                    SafetyCheck::withoutRemedies));
        }
        return judged;
    }

    /** A job as it is timed. */
    public BookedJob toTime(Job job) {
        return new BookedJob(
                job.id(),
                setting(job),
                job.plan(),
                job.vehicles(),
                job.wanted(),
                Exposed.loads(StepDose.of(safetyCase(job))));
    }

    /**
     * What each person takes in on each day over all jobs of a timetable, in order of day and person; those with nothing
     * are left out.
     *
     * @param jobs those of the timetable
     */
    public List<PersonDay> exposures(List<Job> jobs, ShopTimetable timetable) {
        List<PersonDay> days = new ArrayList<>();
        for (Job job : shop.people().isEmpty() ? List.<Job>of() : jobs) {
            days.addAll(SafetyCheck.exposures(safetyCase(job).timed(Exposed.spells(job, timetable))));
        }
        return PersonDay.together(days).stream().filter(PersonDay::isExposed).toList();
    }

    private SafetyCase safetyCase(Job job) {
        return SafetyCase.of(setting(job), job.plan(), shop.safety(), job.safety(), workers(), job.vehicles());
    }

    private List<Worker> workers() {
        return shop.people().stream()
                .map(p -> new Worker(p.id(), p.name(), p.skills()))
                .toList();
    }

    /**
     * Times jobs together.
     *
     * @param jobs at least one
     * @return empty when there is no timetable, or none was found
     */
    public Optional<TimedShop> timed(List<Job> jobs, ShopScheduler.Effort effort) {
        return ShopScheduler.timed(jobs.stream().map(this::toTime).toList(), shop.calendar(), effort);
    }

    /**
     * The same, told while the timetable is made.
     *
     * @see ShopScheduler#timed(List, baywright.schedule.ShopCalendar, ShopScheduler.Effort, Consumer)
     */
    public Optional<TimedShop> timed(List<Job> jobs, ShopScheduler.Effort effort, Consumer<TimedShop> better) {
        return ShopScheduler.timed(jobs.stream().map(this::toTime).toList(), shop.calendar(), effort, better);
    }

    /**
     * Why jobs have no timetable together: those that bring more in a day than people and bays may be given, where there are
     * any, else what is known of each.
     *
     * @param jobs   that have none
     * @param effort what may be spent on each try, asked anew each time
     */
    public List<NoTimetable> whyNotTimed(List<Job> jobs, Supplier<ShopScheduler.Effort> effort) {
        List<NoTimetable> over = jobs.stream()
                .filter(job -> isOverLimits(toTime(job), effort))
                .map(job -> new NoTimetable(job, true, true, List.of()))
                .toList();
        return over.isEmpty() ? jobs.stream().map(this::whyNotTimed).toList() : over;
    }

    private boolean isOverLimits(BookedJob job, Supplier<ShopScheduler.Effort> effort) {
        return !job.loads().isEmpty() && isTimed(job.withoutLoads(), effort.get()) && !isTimed(job, effort.get());
    }

    private boolean isTimed(BookedJob job, ShopScheduler.Effort effort) {
        return ShopScheduler.timetable(List.of(job), shop.calendar(), effort).isPresent();
    }

    private NoTimetable whyNotTimed(Job job) {
        BookedJob booked = toTime(job);
        boolean holds = Prover.prove(booked.setting(), booked.plan()).holds();
        return new NoTimetable(job, false, holds, ShopScheduler.contradiction(booked, shop.calendar()));
    }

    /**
     * When timed jobs may be ready.
     *
     * @param watch told how far it is, and asked whether to stop
     */
    public ShopChance chance(TimedShop timed, Simulation.Options options, Watch watch) {
        Causes causes = new Causes(library, Uncertainty.USUAL, shop.rates().reworkPercent());
        return timed.chance(
                new UncertainSteps() {
                    @Override
                    public Loadings loadings(StepWork step) {
                        return causes.loadings(step);
                    }

                    @Override
                    public Rework rework(StepWork step) {
                        return causes.rework();
                    }
                },
                options,
                watch);
    }

    /**
     * When a job that has the shop to itself may be ready, by its timetable made at once; empty when it has none.
     *
     * @param options seed and number of runs
     */
    public Optional<ShopChance.JobChance> chance(Job job, Simulation.Options options) {
        return timed(List.of(job), ShopScheduler.Effort.AT_ONCE)
                .map(timed -> chance(timed, options, Watch.NOBODY).jobs().get(0));
    }

    /** Proves a job's plan, checks its safety and, when nothing stops it, prices it. */
    public WorkedJob work(Job job) {
        return work(job, judge(job));
    }

    /** The same without ways out of what hurts people, for those who work many jobs. */
    public WorkedJob workOneOfMany(Job job) {
        return work(job, judged(job));
    }

    /** The proof of a job that others stand beside is known from what it says to them. */
    private JudgedJob judged(Job job) {
        if (neighbours.known(job).isPresent()) {
            SafetyCase alone = neighbours.known(job).get().alone();
            SafetyCase safe = safetyCase(job, alone.setting(), alone.proof(), alone.work());
            return new JudgedJob(
                    job,
                    alone.setting(),
                    alone.proof(),
                    alone.work(),
                    Leaning.NONE,
                    safe,
                    SafetyCheck.withoutRemedies(safe));
        }
        Setting setting = setting(job);
        return judgeOneOfMany(job, setting, Prover.forSetting(setting));
    }

    /**
     * Whether a job that was worked with another library has an equal proof with this one. If it notices nothing of this
     * library but other rules, it then comes to the same: rules change neither what steps take nor what they bring.
     */
    public boolean provesTheSame(Job job, WorkedJob with) {
        Proof proof = neighbours
                .known(job)
                .map(booked -> booked.alone().proof())
                .orElseGet(() -> Prover.prove(setting(job), job.plan()));
        return proof.equals(with.proof());
    }

    private WorkedJob work(Job job, JudgedJob judged) {
        if (!judged.holds()) {
            return new WorkedJob(judged, new Refusal(judged.findings()), Optional.empty());
        }
        Ledger ledger = ledger(job, judged.setting(), judged.work());
        Optional<Outlook> simulated = simulated(job.plan(), judged.proof(), judged.work(), ledger);
        Offer offer = Quoting.of(
                judged.setting(),
                job.plan(),
                judged.proof(),
                ledger,
                Terms.of(shop),
                job.cap(),
                contingencyPercent(ledger, simulated),
                now());
        return new WorkedJob(judged, offer, simulated);
    }

    private SafetyCase safetyCase(Job job, Setting setting, Proof proof, PlanWork work) {
        return new SafetyCase(
                setting,
                job.plan(),
                proof,
                work,
                shop.safety(),
                job.safety(),
                workers(),
                job.vehicles(),
                neighbours.beside(job));
    }

    /** The other jobs that come at about the time of this one; none beside a job that nobody knows the arrival of. */
    public List<Job> near(Job job) {
        return neighbours.near(job);
    }

    /** Whether a job brings to those beside it what it brings them at another site. */
    public boolean bringsTheSame(Job job, Site other) {
        return neighbours.booked(job).bringsTheSame(other.neighbours.booked(job));
    }

    private Booked booked(Job other) {
        Setting setting = setting(other);
        return Booked.of(
                other.id(),
                other.title(),
                SafetyCase.of(setting, other.plan(), shop.safety(), other.safety(), List.of(), other.vehicles()));
    }

    /**
     * Looks for the smallest sets of edits that leave a job's plan without a stop.
     *
     * @param longest how long to search at most
     */
    public RepairResult mend(Job job, Duration longest) {
        return Repair.find(setting(job), job.plan(), Repair.Options.USUAL.within(longest));
    }

    /**
     * Composes a plan from a job's goals: the one that costs the shop least, as far as was found. Where all goals together
     * break the limits, those are left out that are wanted least.
     *
     * @param file the job's folder, for the places of what is wrong with its goals
     * @throws SiteTrouble when the job says no goals, or they name what the library or the vehicle does not have
     */
    public FittedGoals compose(JobFile file, PlanLimits limits) {
        return compose(jobWithGoals(file), limits, () -> false);
    }

    /**
     * Composes a plan for all goals of a job, whatever its cap and date.
     *
     * @throws SiteTrouble as {@link #compose(JobFile, PlanLimits)}
     */
    public FittedGoals composeAll(JobFile file) {
        return new GoalFitting(this, jobWithGoals(file), PlanLimits.NONE, () -> false).everything();
    }

    private Job jobWithGoals(JobFile file) {
        Job job = job(file);
        List<Problem> problems = LibraryFolder.asProblems(workspace.goalProblems(file, library));
        if (!problems.isEmpty()) {
            throw new SiteTrouble(workspace.root(), problems);
        }
        return job;
    }

    /**
     * Composes a plan from a job's goals as they are now, written or not. A goal that the library or the vehicle does not
     * have comes down to nothing.
     *
     * @param cancelled asked before each plan that is composed
     * @throws java.util.concurrent.CancellationException soon after {@code cancelled} turns true
     * @see #compose(JobFile, PlanLimits)
     */
    public FittedGoals compose(Job job, PlanLimits limits, BooleanSupplier cancelled) {
        return new GoalFitting(this, job, limits, cancelled).fitted();
    }

    /** Composes a plan for all goals of a job, whatever its cap and date. */
    public ComposedJob compose(Job job) {
        return compose(job, AskedGoal.of(job.goals(), setting(job)), Optional.empty(), () -> false);
    }

    /** @param known a plan for these goals and more */
    ComposedJob compose(Job job, List<AskedGoal> goals, Optional<Plan> known, BooleanSupplier cancelled) {
        JobTerms terms = Terms.of(job, shop, Confidence.TRIAL_DONE);
        Composer.Options options = new Composer.Options(
                true,
                WorkCosts.ofShop(library, Terms.of(shop).rates(), terms),
                new Delays(mornings(setting(job).start().toLocalDate()), job.wanted()),
                known,
                cancelled);
        GoalComposition composed = GoalComposition.of(setting(job), goals, options);
        Plan plan = composed.composition().plan();
        return new ComposedJob(composed, work(job.withPlan(plan, job.safety().kept(job.plan(), plan))));
    }

    /** When the shop opens on the days after a day. */
    private List<LocalDateTime> mornings(LocalDate day) {
        return LongStream.rangeClosed(1, LONGEST_DELAY)
                .mapToObj(day::plusDays)
                .flatMap(date ->
                        shop.calendar().hours().on(date).stream().limit(1).map(span -> date.atTime(span.from())))
                .toList();
    }

    /**
     * Chooses which steps of a job's plan that need not be stay under a cap.
     *
     * @param cap      the most that the customer pays, with tax, not negative
     * @param firmOnly whether the price alone must stay under the cap, without contingency
     */
    public FittedJob fit(Job job, BigDecimal cap, boolean firmOnly) {
        return fit(job, cap, firmOnly, () -> false);
    }

    /**
     * The same, for somebody who may not wait for the end.
     *
     * @param cancelled asked again and again
     * @throws java.util.concurrent.CancellationException soon after {@code cancelled} turns true
     */
    public FittedJob fit(Job job, BigDecimal cap, boolean firmOnly, BooleanSupplier cancelled) {
        return new Fitting(this, job, cap, firmOnly, cancelled).fitted();
    }

    Ledger ledger(Job job, Setting setting, PlanWork work) {
        JobTerms terms = Terms.of(job, shop, Confidence.found(setting, work));
        return RollUp.of(job.plan(), work, library, shop.rates(), terms);
    }

    /** The shop's contingency for how well the paint is known, or what its confidence asks for; the proof holds. */
    BigDecimal contingencyPercent(Plan plan, Proof proof, PlanWork work, Ledger ledger) {
        return contingencyPercent(ledger, simulated(plan, proof, work, ledger));
    }

    private BigDecimal contingencyPercent(Ledger ledger, Optional<Outlook> simulated) {
        Rates.Contingency contingency = shop.rates().contingency();
        return simulated
                .map(outlook -> outlook.contingencyPercent(
                        contingency.confidencePercent().orElseThrow(), ledger.minutes()))
                .orElseGet(() -> contingency.percent(ledger.terms().confidence()));
    }

    /** The outlook that a contingency is read from, where the shop asks for a confidence. */
    private Optional<Outlook> simulated(Plan plan, Proof proof, PlanWork work, Ledger ledger) {
        return shop.rates()
                .contingency()
                .confidencePercent()
                .map(confidence -> outlook(plan, proof, work, ledger, shop.rates(), Outlook.usual()));
    }

    /** What hours and cost of a quoted job may come to; what was simulated for its contingency is not simulated again. */
    public Outlook outlook(WorkedJob worked, Quote quote, Simulation.Options options) {
        Simulation.Options usual = Outlook.usual();
        return worked.simulated()
                .filter(outlook -> options.seed() == usual.seed() && options.runs() == usual.runs())
                .orElseGet(() -> outlook(
                        worked.job().plan(),
                        worked.proof(),
                        worked.work(),
                        quote.ledger(),
                        quote.terms().rates(),
                        options));
    }

    private Outlook outlook(
            Plan plan, Proof proof, PlanWork work, Ledger ledger, Rates rates, Simulation.Options options) {
        return Outlook.of(library, plan, proof, work, ledger, rates, Uncertainty.USUAL, options);
    }

    /** Local time of the shop, to the minute. */
    public LocalDateTime now() {
        return LocalDateTime.now(clock.withZone(shop.timeZone())).truncatedTo(ChronoUnit.MINUTES);
    }
}
