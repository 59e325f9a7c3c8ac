package baywright.cli;

import baywright.schedule.BookedJob;
import baywright.schedule.Help;
import baywright.schedule.ShopCalendar;
import baywright.schedule.ShopScheduler.Effort;
import baywright.schedule.ShopTimetable;
import baywright.schedule.TimedShop;
import baywright.site.FittedGoals.Priced;
import baywright.site.Numbers;
import baywright.site.PlanLimits;
import baywright.site.Site;
import baywright.site.TimetableText;
import baywright.workspace.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What makes a composed job late by the timetable that tells when it is ready, and what would help, as sentences. */
final class Lateness {

    private static final long NANOS = 3_000_000_000L;
    private static final long CONFLICTS_OF_A_TRY = 300;

    private final List<String> sentences;

    private Lateness(List<String> sentences) {
        this.sentences = List.copyOf(sentences);
    }

    /** Of a job that is in time, or has no timetable, there is nothing to say. */
    static Lateness of(Session session, Site site, Priced plan, PlanLimits limits) {
        boolean late = plan.ready()
                .flatMap(ready -> limits.wanted().filter(ready::isAfter))
                .isPresent();
        return late
                ? Progress.during(session, "compose.helping", () -> told(session, site, plan))
                : new Lateness(List.of());
    }

    private static Lateness told(Session session, Site site, Priced plan) {
        Job job = plan.composed().worked().job();
        TimetableText texts = new TimetableText(
                site,
                List.of(job),
                new Numbers(site.shop().locale()),
                session.console().locale());
        List<BookedJob> booked = List.of(site.toTime(job));
        ShopCalendar calendar = site.shop().calendar();
        Optional<ShopTimetable> found = site.timed(List.of(job), Effort.AT_ONCE).map(TimedShop::timetable);
        List<String> sentences = new ArrayList<>();
        found.ifPresent(timetable -> {
            long end = System.nanoTime() + NANOS;
            Effort each = new Effort(1, CONFLICTS_OF_A_TRY, () -> System.nanoTime() - end > 0);
            sentences.addAll(texts.chain(timetable.entries()));
            sentences.addAll(
                    texts.onADay(Help.leastOnADay(booked, calendar, timetable, each), timetable.lateMinutes()));
            sentences.addAll(texts.helps(Help.tried(booked, calendar, Effort.AT_ONCE)));
        });
        return new Lateness(sentences);
    }

    List<String> sentences() {
        return sentences;
    }
}
