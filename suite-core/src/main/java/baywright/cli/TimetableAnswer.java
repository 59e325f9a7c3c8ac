package baywright.cli;

import baywright.chance.Watch;
import baywright.money.Outlook;
import baywright.schedule.BookedJob;
import baywright.schedule.Help;
import baywright.schedule.ShopCalendar;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopScheduler;
import baywright.schedule.ShopTimetable;
import baywright.schedule.TimedShop;
import baywright.site.Site;
import baywright.workspace.Job;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Times jobs and says what came out. */
final class TimetableAnswer {

    private static final long NANOS = 1_000_000_000L;
    private static final long CONFLICTS_OF_A_TRY = 300;

    private final Session session;
    private final Site site;
    private final List<Job> jobs;
    private final int seconds;
    private final boolean chance;

    /**
     * What is to be answered.
     *
     * @param chance whether the timetable is simulated too
     * @throws BadInput when seconds are below 0
     */
    TimetableAnswer(Session session, Site site, List<Job> jobs, int seconds, boolean chance) {
        this.session = session;
        this.site = site;
        this.jobs = jobs;
        this.seconds = seconds;
        this.chance = chance;
        if (seconds < 0) {
            throw session.badInput("timetable.seconds", seconds);
        }
    }

    /** Prints it; gives the exit status. */
    int give() {
        List<BookedJob> booked = jobs.stream().map(site::toTime).toList();
        ShopCalendar calendar = site.shop().calendar();
        Optional<TimedShop> found = ShopScheduler.timed(booked, calendar, effort());
        TimetablePrinter printer = new TimetablePrinter(session, site, jobs, seconds > 0);
        if (found.isEmpty()) {
            site.whyNotTimed(jobs, this::effort).forEach(printer::none);
            return ExitStatus.STOPPED;
        }
        ShopTimetable timetable = found.get().timetable();
        List<Help> helps = new ArrayList<>();
        Optional<Help> onADay = Optional.empty();
        if (!timetable.keepsPromises()) {
            helps.addAll(Help.tried(booked, calendar, ShopScheduler.Effort.AT_ONCE));
            onADay = Help.leastOnADay(booked, calendar, timetable, eachTry());
        }
        Optional<ShopChance> chances = chance
                ? Optional.of(Progress.during(
                        session, "timetable.simulating", () -> site.chance(found.get(), Outlook.usual(), Watch.NOBODY)))
                : Optional.empty();
        ExposureTable exposure = new ExposureTable(session, site, site.exposures(jobs, timetable));
        TimetableDangers dangers = new TimetableDangers(session, site, site.judge(jobs, timetable));
        if (session.json()) {
            ObjectNode answer = TimetableJson.of(timetable, helps, onADay, chances);
            answer.set("exposure", exposure.json());
            answer.set("dangers", dangers.json());
            Answers.print(session, answer);
        } else {
            printer.print(timetable, helps, onADay, chances);
            exposure.print();
            dangers.print();
        }
        return timetable.keepsPromises() && dangers.hold() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    /** One hard try must not take the time of all others. */
    private ShopScheduler.Effort eachTry() {
        long end = System.nanoTime() + seconds * NANOS;
        return seconds == 0
                ? ShopScheduler.Effort.AT_ONCE
                : new ShopScheduler.Effort(1, CONFLICTS_OF_A_TRY, () -> System.nanoTime() - end > 0);
    }

    private ShopScheduler.Effort effort() {
        return seconds == 0
                ? ShopScheduler.Effort.AT_ONCE
                : ShopScheduler.Effort.until(System.nanoTime() + seconds * NANOS);
    }
}
