package baywright.schedule;

import baywright.plan.Plan;
import baywright.plan.PlanOrder;
import baywright.plan.PlanWork;
import baywright.plan.Prover;
import baywright.plan.Step;
import baywright.plan.StepWork;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * Booked jobs as a project. A step holds its people; a vehicle holds its bay from the first of the steps done there one
 * after the other to the last, waits and nights between them included, and is in one bay at a time. Work of more than
 * an hour may pause while the shop is closed, unless it runs against a clock. What runs against a clock and does not fit
 * between two breaks goes on through the break when it takes six hours at most, and pauses when it takes longer: nobody
 * works for more than six hours without a break (Directive 2003/88/EC, article 4).
 */
final class ShopProject {

    /** What an activity stands for. */
    enum Kind {
        WORK,
        SETTING_UP,
        STANDING,
        MARK
    }

    /** An activity's job, vehicle and step, by their places. */
    record Part(Kind kind, int job, int vehicle, int step) {}

    /** What an activity's minutes come from: a step, and the tools that are got out with it. */
    record Hands(StepWork step, int setUp) {}

    private static final int SHORT = 60;
    private static final int WITHOUT_BREAK = 6 * 60;
    private static final int SPARE_DAYS = 30;
    private static final int MINUTES_OF_DAY = 24 * 60;
    private static final int WORKED_OF_DAY = 5 * 60;
    private static final int LATE_WEIGHT = 20;

    private final ShopCalendar calendar;
    private final boolean fixed;
    private final Instant origin;
    private final int days;
    private final Hours open;
    private final Hours wholeDays;
    private final Hours pausing;
    private final List<Resource> resources = new ArrayList<>();
    private final List<Integer> people = new ArrayList<>();
    private final Map<String, Integer> bays = new HashMap<>();
    private final Map<String, Integer> machines = new HashMap<>();
    private final List<Activity> activities = new ArrayList<>();
    private final List<Lag> lags = new ArrayList<>();
    private final List<Hold> holds = new ArrayList<>();
    private final List<Goal.Term> goals = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final Map<Integer, Hands> hands = new HashMap<>();
    private final List<Integer> ends = new ArrayList<>();
    private final DayLimits limits;
    private final Project project;

    /**
     * Builds it.
     *
     * @param inOrder places of jobs whose steps keep the order of the plan, one after the other
     * @param fixed   whether a step whose start the plan fixes begins just then; else not before
     */
    ShopProject(List<BookedJob> jobs, ShopCalendar calendar, Set<Integer> inOrder, boolean fixed) {
        this.calendar = calendar;
        this.fixed = fixed;
        LocalDateTime first = jobs.stream()
                .map(j -> j.setting().start())
                .min(LocalDateTime::compareTo)
                .orElseThrow();
        origin = first.toLocalDate().atStartOfDay(calendar.zone()).toInstant();
        List<Prover> provers =
                jobs.stream().map(j -> Prover.forSetting(j.setting())).toList();
        List<PlanWork> works = new ArrayList<>();
        long minutes = 0;
        LocalDateTime last = first;
        for (int j = 0; j < jobs.size(); j++) {
            PlanWork work = provers.get(j).work(jobs.get(j).plan());
            works.add(work);
            minutes += jobs.get(j).vehicles()
                    * work.steps().stream()
                            .mapToLong(w -> whole(w.elapsedMinutes()) + whole(w.usualStanding()))
                            .sum();
            LocalDateTime from = jobs.get(j).setting().start();
            LocalDateTime to = jobs.get(j).wanted().orElse(from);
            last = to.isAfter(last) ? to : last;
        }
        days = SPARE_DAYS
                + (int) ChronoUnit.DAYS.between(first, last)
                + (int) Math.min(3000, minutes / WORKED_OF_DAY + fullDays(jobs));
        open = hours(calendar.hours().windows(calendar.zone(), origin, days));
        wholeDays = hours(calendar.hours().wholeDays(calendar.zone(), origin, days));
        limits = new DayLimits(calendar, origin, days);
        pausing = hours(limits.rested(open.windows()));
        resources(jobs);
        for (int j = 0; j < jobs.size(); j++) {
            job(j, jobs.get(j), provers.get(j), works.get(j), inOrder.contains(j));
        }
        project = new Project(
                activities,
                resources,
                lags,
                holds,
                new Goal(goals),
                days * MINUTES_OF_DAY,
                limits.budgets(people, bays, activities),
                limits.rests(people, activities, open.windows()));
    }

    /** Days that all loads together fill at the most. */
    private static long fullDays(List<BookedJob> jobs) {
        double sum = 0;
        for (BookedJob job : jobs) {
            for (StepLoad load : job.loads().values()) {
                for (double share : load.person().values()) {
                    sum += job.vehicles() * share * load.people();
                }
                sum += job.vehicles()
                        * load.bays().values().stream()
                                .mapToDouble(Double::doubleValue)
                                .max()
                                .orElse(0);
            }
        }
        return (long) sum;
    }

    Project project() {
        return project;
    }

    Part part(int activity) {
        return parts.get(activity);
    }

    /** The activity that stands for the end of a job. */
    int end(int job) {
        return ends.get(job);
    }

    /** What an activity's minutes come from; empty where they are certain. */
    Optional<Hands> hands(int activity) {
        return Optional.ofNullable(hands.get(activity));
    }

    /** When the shop is open. */
    Hours open() {
        return open;
    }

    /** Minute 0. */
    Instant origin() {
        return origin;
    }

    LocalDateTime time(int minute) {
        return LocalDateTime.ofInstant(origin.plus(Duration.ofMinutes(minute)), calendar.zone());
    }

    /** The parts of the days on which an activity goes on. */
    List<ShopTimetable.Spell> spells(int activity, int start) {
        Course course = new Course(activities.get(activity));
        return limits.dates().stream()
                .filter(date -> course.worked(start, date) > 0)
                .map(date -> {
                    Window within = course.within(start, date);
                    return new ShopTimetable.Spell(time(within.from()), time(within.to()), course.worked(start, date));
                })
                .toList();
    }

    int minute(LocalDateTime local) {
        return Math.toIntExact(
                Duration.between(origin, local.atZone(calendar.zone()).toInstant())
                        .toMinutes());
    }

    /** A shop that is closed all the time opens after the horizon, so that nothing can be done. */
    private Hours hours(List<Window> windows) {
        int end = days * MINUTES_OF_DAY;
        return new Hours(windows.isEmpty() ? List.of(new Window(end, end + 1)) : windows);
    }

    private static int whole(BigDecimal minutes) {
        return minutes.max(BigDecimal.ZERO).setScale(0, RoundingMode.CEILING).intValueExact();
    }

    private int resource(Resource resource) {
        resources.add(resource);
        return resources.size() - 1;
    }

    private void resources(List<BookedJob> jobs) {
        for (ShopCalendar.Hand hand : calendar.people()) {
            List<Resource.Absence> absences = hand.hours().map(this::missing).orElse(List.of());
            people.add(resource(new Resource("person " + hand.id(), 1, absences)));
        }
        Set<String> named = new HashSet<>();
        jobs.forEach(j -> j.setting().bays().forEach(b -> {
            if (named.add(b.id())) {
                bays.put(b.id(), resource(bay(b.id())));
            }
        }));
        calendar.machines().forEach((id, count) -> machines.put(id, resource(Resource.of("machine " + id, count))));
    }

    private Resource bay(String id) {
        List<Resource.Absence> absences = new ArrayList<>();
        int places = calendar.places(id);
        for (ShopCalendar.Room room : calendar.rooms()) {
            if (room.bay().equals(id)) {
                places++;
                absences.addAll(missingBut(Set.of(room.day())));
            }
        }
        return new Resource("bay " + id, places, absences);
    }

    /** What is there on some days only is missing by day and by night of all others. */
    private List<Resource.Absence> missingBut(Set<LocalDate> dates) {
        List<Resource.Absence> absences = new ArrayList<>();
        int end = (days + 2) * MINUTES_OF_DAY;
        int from = 0;
        for (LocalDate date : new TreeSet<>(dates)) {
            int there = Math.min(minute(date.atStartOfDay()), end);
            if (there > from) {
                absences.add(new Resource.Absence(new Window(from, there), 1));
            }
            from = Math.max(from, minute(date.plusDays(1).atStartOfDay()));
        }
        if (from < end) {
            absences.add(new Resource.Absence(new Window(from, end), 1));
        }
        return absences;
    }

    private List<Resource.Absence> missing(OpeningTimes hours) {
        return hours.week().isEmpty()
                ? missingBut(hours.own().keySet())
                : missing(hours.windows(calendar.zone(), origin, days));
    }

    /** Someone is only missed where the shop is open. */
    private List<Resource.Absence> missing(List<Window> present) {
        List<Resource.Absence> absences = new ArrayList<>();
        for (Window window : open.windows()) {
            int from = window.from();
            for (Window there : present) {
                if (there.to() > from && there.from() < window.to()) {
                    if (there.from() > from) {
                        absences.add(new Resource.Absence(new Window(from, there.from()), 1));
                    }
                    from = Math.max(from, there.to());
                }
            }
            if (from < window.to()) {
                absences.add(new Resource.Absence(new Window(from, window.to()), 1));
            }
        }
        return absences;
    }

    // ---- one job

    private int add(Activity activity, Part part) {
        activities.add(activity);
        parts.add(part);
        return activities.size() - 1;
    }

    private int mark(int job, int vehicle, String what) {
        String id = job + "/" + vehicle + "/" + what;
        return add(Activity.of(id, 0), new Part(Kind.MARK, job, vehicle, -1));
    }

    private void job(int j, BookedJob job, Prover prover, PlanWork work, boolean inOrder) {
        PlanOrder order = PlanOrder.of(prover, job.plan());
        int end = mark(j, 0, "end");
        for (int v = 0; v < job.vehicles(); v++) {
            vehicle(j, v, job, work, order, inOrder, end);
        }
        ends.add(end);
        goals.add(new Goal.Term(
                end,
                1,
                job.wanted().map(w -> Math.max(0, minute(w))).orElse(Hours.END_OF_TIME),
                job.wanted().isPresent() ? LATE_WEIGHT : 0));
    }

    private void vehicle(int j, int v, BookedJob job, PlanWork work, PlanOrder order, boolean inOrder, int end) {
        Plan plan = job.plan();
        int[] first = new int[plan.steps().size()];
        int[] last = new int[first.length];
        java.util.Arrays.fill(first, -1);
        int release = Math.max(0, minute(job.setting().start()));
        for (StepWork step : work.steps()) {
            int s = place(plan, step.step());
            Step planned = plan.steps().get(s);
            int setUp = v == 0 ? familySetUp(work, step.step()) : 0;
            Optional<StepLoad> load = Optional.ofNullable(job.loads().get(step.step()));
            boolean apart = setUp > 0 && !(fixed && planned.at().isPresent());
            first[s] = add(
                    activity(j, v, planned, step, apart ? 0 : setUp, release, order.isTimed(s), needs(step, load)),
                    new Part(Kind.WORK, j, v, s));
            hands.put(first[s], new Hands(step, apart ? 0 : setUp));
            int served = first[s];
            load.ifPresent(l -> limits.add(served, l, activities.get(served).needs(), people));
            if (apart) {
                settingUp(first[s], setUp, release, needs(step, Optional.empty()));
            }
            last[s] = first[s];
            int standing = whole(step.usualStanding());
            if (standing > 0) {
                String id = activities.get(first[s]).id() + "/standing";
                last[s] = add(Activity.of(id, standing), new Part(Kind.STANDING, j, v, s));
                lags.add(Lag.between(first[s], last[s], 0, 0));
            }
            lags.add(Lag.after(last[s], end));
        }
        waits(order, first, roundedUp(plan, work));
        if (inOrder) {
            inOrder(first);
        }
        sittings(j, v, order, first, last);
    }

    /** Tools are got out before the step, so that no wait of the vehicle is spent on it. */
    private void settingUp(int step, int minutes, int release, List<Need> needs) {
        String id = activities.get(step).id() + "/setting-up";
        Part part = parts.get(step);
        List<Need> one = needs.stream()
                .limit(people.isEmpty() ? 0 : 1)
                .map(n -> new Need(n.anyOf(), 1, n.amount()))
                .toList();
        int setting = add(
                new Activity(id, minutes, open, false, release, Hours.END_OF_TIME, one),
                new Part(Kind.SETTING_UP, part.job(), part.vehicle(), part.step()));
        lags.add(Lag.after(setting, step));
    }

    private static int place(Plan plan, String step) {
        for (int i = 0; i < plan.steps().size(); i++) {
            if (plan.steps().get(i).id().equals(step)) {
                return i;
            }
        }
        throw new IllegalStateException("the work of a plan names the step " + step + ", which the plan has not");
    }

    private static int familySetUp(PlanWork work, String step) {
        return work.families().stream()
                .filter(f -> f.steps().get(0).equals(step))
                .mapToInt(f -> whole(f.minutes()))
                .sum();
    }

    private Activity activity(
            int j, int v, Step step, StepWork work, int setUp, int release, boolean timed, List<Need> needs) {
        String id = j + "/" + v + "/" + step.id();
        int minutes = whole(work.elapsedMinutes()) + setUp;
        Optional<Integer> at = step.at().map(this::minute).filter(minute -> minute >= 0);
        if (at.isPresent() && fixed) {
            return new Activity(id, minutes, Hours.ALWAYS, false, at.get(), at.get(), needs);
        }
        int from = at.orElse(release);
        boolean whole = timed || minutes <= SHORT;
        Hours hours = open;
        if (whole && open.startWithin(from, minutes).isEmpty()) {
            hours = wholeDays;
            whole = minutes <= WITHOUT_BREAK
                    && wholeDays.startWithin(from, minutes).isPresent();
        }
        return new Activity(id, minutes, whole ? hours : pausing, !whole, from, Hours.END_OF_TIME, needs);
    }

    /**
     * Whoever has the skill, or anyone where too few have it, which the safety part reports. Who take turns all stay with
     * the step.
     */
    private List<Need> needs(StepWork work, Optional<StepLoad> load) {
        List<Need> needs = new ArrayList<>();
        int turns = load.map(StepLoad::people).orElse(1);
        int count = Math.min(Math.max(turns, Math.max(1, work.crew().people())), people.size());
        if (count > 0) {
            List<Integer> skilled = new ArrayList<>();
            for (int p = 0; p < people.size(); p++) {
                String skill = work.crew().skill();
                if (skill.isEmpty() || calendar.people().get(p).skills().contains(skill)) {
                    skilled.add(people.get(p));
                }
            }
            needs.add(new Need(skilled.size() < count ? people : skilled, count, 1));
        }
        work.parts().stream()
                .flatMap(p -> p.terms().where().equipment().stream())
                .map(e -> machines.get(e.id()))
                .filter(m -> m != null && resources.get(m).capacity() > 0)
                .distinct()
                .forEach(m -> needs.add(Need.of(m, 1)));
        return needs;
    }

    /** By how much the whole minutes of each step are more than its own, for waits are counted from the true end. */
    private static BigDecimal[] roundedUp(Plan plan, PlanWork work) {
        BigDecimal[] more = new BigDecimal[plan.steps().size()];
        java.util.Arrays.fill(more, BigDecimal.ZERO);
        for (StepWork step : work.steps()) {
            BigDecimal exact = step.elapsedMinutes().max(BigDecimal.ZERO);
            more[place(plan, step.step())] = BigDecimal.valueOf(whole(exact)).subtract(exact);
        }
        return more;
    }

    private void waits(PlanOrder order, int[] first, BigDecimal[] roundedUp) {
        for (PlanOrder.Wait wait : order.waits()) {
            if (first[wait.from()] >= 0 && first[wait.to()] >= 0) {
                int least = whole(wait.least());
                OptionalInt most = wait.most()
                        .map(m -> m.subtract(roundedUp[wait.from()])
                                .setScale(0, RoundingMode.FLOOR)
                                .intValueExact())
                        .map(m -> OptionalInt.of(Math.max(least, m)))
                        .orElse(OptionalInt.empty());
                lags.add(new Lag(
                        first[wait.from()], Lag.Point.END, first[wait.to()], Lag.Point.START, least, most, wait.why()));
            }
        }
    }

    private void inOrder(int[] first) {
        int before = -1;
        for (int activity : first) {
            if (activity >= 0) {
                if (before >= 0) {
                    lags.add(Lag.after(before, activity));
                }
                before = activity;
            }
        }
    }

    /** Steps one after the other that one bay can take are done in one sitting; then the vehicle is moved. */
    private void sittings(int j, int v, PlanOrder order, int[] first, int[] last) {
        Sitting sitting = new Sitting();
        int moved = -1;
        for (int s = 0; s < first.length; s++) {
            if (first[s] < 0) {
                continue;
            }
            List<String> wanted =
                    order.bays(s).stream().filter(bays::containsKey).toList();
            if (!sitting.takes(wanted)) {
                moved = close(j, v, sitting, moved);
                sitting = new Sitting();
            }
            sitting.add(wanted, first[s], last[s]);
        }
        close(j, v, sitting, moved);
    }

    /** What is done in one bay. Before the first and after the last step that wants the bay, it is free for others. */
    private static final class Sitting {
        private List<String> able = List.of();
        private final List<Integer> members = new ArrayList<>();
        private int from = -1;
        private int to;

        boolean takes(List<String> wanted) {
            return wanted.isEmpty() || able.isEmpty() || able.stream().anyMatch(wanted::contains);
        }

        void add(List<String> wanted, int first, int last) {
            if (!wanted.isEmpty()) {
                able = able.isEmpty()
                        ? wanted
                        : able.stream().filter(wanted::contains).toList();
                from = from < 0 ? members.size() : from;
            }
            members.add(first);
            if (last != first) {
                members.add(last);
            }
            to = wanted.isEmpty() ? to : members.size();
        }
    }

    private int close(int j, int v, Sitting sitting, int moved) {
        if (sitting.members.isEmpty()) {
            return moved;
        }
        int next = mark(j, v, "moved-" + activities.size());
        for (int member : sitting.members) {
            lags.add(Lag.after(member, next));
            if (moved >= 0) {
                lags.add(Lag.after(moved, member));
            }
        }
        if (!sitting.able.isEmpty()) {
            List<Integer> places = sitting.able.stream().map(bays::get).toList();
            List<Integer> held = sitting.members.subList(sitting.from, sitting.to);
            holds.add(new Hold(activities.get(next).id(), held, new Need(places, 1, 1)));
        }
        return next;
    }
}
