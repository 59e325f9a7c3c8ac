package baywright.schedule;

import baywright.chance.Simulation;
import baywright.chance.Watch;
import java.util.List;

/** A timetable with what it was made from, to ask what may become of it. */
public final class TimedShop {

    private final List<BookedJob> jobs;
    private final ShopCalendar calendar;
    private final ShopProject shop;
    private final Timetable found;
    private final ShopTimetable timetable;

    TimedShop(List<BookedJob> jobs, ShopCalendar calendar, ShopProject shop, Timetable found, ShopTimetable timetable) {
        this.jobs = jobs;
        this.calendar = calendar;
        this.shop = shop;
        this.found = found;
        this.timetable = timetable;
    }

    /** The timetable. */
    public ShopTimetable timetable() {
        return timetable;
    }

    /**
     * When the jobs may be ready. Who does what in which bay and in which order stays as in the timetable; steps take times
     * drawn from beta-PERT distributions, in whole minutes, rounded up. The same seed gives the same answer on any number of
     * threads.
     *
     * @param watch told how far it is, and asked whether to stop
     * @throws java.util.concurrent.CancellationException when the watch says so, or the thread is interrupted
     */
    public ShopChance chance(UncertainSteps uncertain, Simulation.Options options, Watch watch) {
        return new ShopSimulation(jobs, calendar, shop, found, uncertain, options).run(watch);
    }
}
