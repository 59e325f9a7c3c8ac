package baywright.swing.timetable;

import baywright.chance.Simulation;
import baywright.chance.Watch;
import baywright.schedule.BookedJob;
import baywright.schedule.Help;
import baywright.schedule.ShopCalendar;
import baywright.schedule.ShopScheduler.Effort;
import baywright.schedule.ShopTimetable;
import baywright.schedule.TimedShop;
import baywright.site.Site;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.timetable.Timed.Phase;
import baywright.workspace.Job;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Times jobs in the background: at once, then better, then what may become of it and what would help. One search runs at a time;
 * a newer wish ends it and is the only one that waits. Whoever cancels the task keeps the best that was found.
 */
final class Timing {

    private static final long NANOS = 1_000_000_000L;
    private static final long CONFLICTS_OF_A_TRY = 300;
    private static final long HELP_SECONDS = 3;

    /**
     * What is to be timed.
     *
     * @param seconds   how long a better one is looked for once there is one
     * @param simulated how it is simulated
     */
    record Wish(Site site, List<Job> jobs, int seconds, Simulation.Options simulated) {}

    private final Desk desk;
    private final Consumer<Timed> tell;
    private Optional<Search> running = Optional.empty();
    private Optional<Wish> next = Optional.empty();

    /** {@code tell} gets what is known on the event thread, each time that more is. */
    Timing(Desk desk, Consumer<Timed> tell) {
        this.desk = desk;
        this.tell = tell;
    }

    /** Times jobs; what runs for an older wish is left. */
    void time(Wish wish) {
        next = Optional.of(wish);
        if (running.isPresent()) {
            running.get().leave();
        } else {
            begin();
        }
    }

    /** Leaves whatever runs. */
    void leave() {
        next = Optional.empty();
        running.ifPresent(Search::leave);
    }

    /** Ends the search for a better timetable; what follows it goes on. */
    void enough() {
        running.ifPresent(search -> search.enough = true);
    }

    boolean isRunning() {
        return running.isPresent();
    }

    private void begin() {
        Search search = new Search(next.orElseThrow());
        next = Optional.empty();
        running = Optional.of(search);
        search.handle = Optional.of(
                desk.run(new Task<>(TimetableWorkbench.TEXTS.of("task"), search::run, nothing -> {}, search::failed)));
    }

    private void ended(Search search) {
        if (running.filter(s -> s.equals(search)).isPresent()) {
            running = Optional.empty();
            if (next.isPresent()) {
                begin();
            } else {
                search.last.ifPresent(tell);
            }
        }
    }

    /** One search. Its fields that are not volatile belong to the event thread. */
    private final class Search {

        private final Wish wish;
        private final AtomicLong toldProgress = new AtomicLong();
        private volatile boolean enough;
        private volatile boolean left;
        private volatile long end = Long.MAX_VALUE;
        private Optional<TaskHandle> handle = Optional.empty();
        private Optional<Timed> last = Optional.empty();

        Search(Wish wish) {
            this.wish = wish;
        }

        void leave() {
            left = true;
            handle.ifPresent(TaskHandle::cancel);
        }

        void failed(Exception fault) {
            desk.say(Notice.failed(TimetableWorkbench.TEXTS.of("failed", String.valueOf(fault.getMessage()))));
        }

        /** What is told to the desk's task is lost when it is cancelled, so everything found is handed over from here. */
        Void run(Task.Progress progress) throws Exception {
            try {
                search(progress);
            } finally {
                SwingUtilities.invokeLater(() -> ended(this));
            }
            return null;
        }

        private void post(Timed timed) {
            if (!left) {
                SwingUtilities.invokeLater(() -> {
                    if (!left) {
                        last = Optional.of(timed);
                        tell.accept(timed);
                    }
                });
            }
        }

        private void search(Task.Progress progress) {
            Effort effort = new Effort(1, Long.MAX_VALUE, () -> isOver(progress));
            Optional<TimedShop> found = wish.site().timed(wish.jobs(), effort, better -> {
                if (end == Long.MAX_VALUE) {
                    end = System.nanoTime() + wish.seconds() * NANOS;
                }
                post(Timed.of(wish.site(), wish.jobs(), Optional.of(better), Phase.IMPROVING));
            });
            boolean stopped = enough || progress.cancelled();
            Timed timed = Timed.of(wish.site(), wish.jobs(), found, stopped ? Phase.STOPPED : Phase.DONE);
            if (found.isEmpty()) {
                post(timed.because(
                        progress.cancelled() ? List.of() : wish.site().whyNotTimed(wish.jobs(), () -> Effort.AT_ONCE)));
                return;
            }
            ShopTimetable timetable = found.get().timetable();
            timed = timed.with(wish.site().exposures(wish.jobs(), timetable));
            post(timed);
            if (progress.cancelled()) {
                return;
            }
            if (!timetable.keepsPromises()) {
                progress.says(TimetableWorkbench.TEXTS.of("task.helps"));
                timed = timed.with(helps(timetable, progress));
                post(timed);
            }
            if (!progress.cancelled()) {
                progress.says(TimetableWorkbench.TEXTS.of("task.chance"));
                post(timed.with(wish.site().chance(found.get(), wish.simulated(), watching(progress))));
            }
        }

        /** Before there is a first one the search has no end but that somebody calls it off. */
        private boolean isOver(Task.Progress progress) {
            long now = System.nanoTime();
            if (end != Long.MAX_VALUE && wish.seconds() > 0 && now - toldProgress.get() > NANOS / 10) {
                toldProgress.set(now);
                progress.at(1 - (end - now) / (double) (wish.seconds() * NANOS));
            }
            return enough || left || progress.cancelled() || now > end;
        }

        private Timed.Helps helps(ShopTimetable timetable, Task.Progress progress) {
            List<BookedJob> booked =
                    wish.jobs().stream().map(wish.site()::toTime).toList();
            ShopCalendar calendar = wish.site().shop().calendar();
            List<Help> everyDay = Help.tried(booked, calendar, Effort.AT_ONCE);
            long until = System.nanoTime() + HELP_SECONDS * NANOS;
            Effort each =
                    new Effort(1, CONFLICTS_OF_A_TRY, () -> left || progress.cancelled() || System.nanoTime() > until);
            return new Timed.Helps(Help.leastOnADay(booked, calendar, timetable, each), everyDay);
        }

        private Watch watching(Task.Progress progress) {
            return new Watch() {
                @Override
                public boolean cancelled() {
                    return left || progress.cancelled();
                }

                @Override
                public void done(int runs, int all) {
                    progress.at(runs / (double) all);
                }
            };
        }
    }
}
