package baywright.swing.timetable;

import baywright.safety.PersonDay;
import baywright.schedule.Help;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopTimetable;
import baywright.schedule.TimedShop;
import baywright.site.NoTimetable;
import baywright.site.Site;
import baywright.workspace.Job;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a timetable at a moment.
 *
 * @param site     what it was made in
 * @param jobs     those timed together
 * @param timed    the best so far; empty where there is none
 * @param why      why there is none
 * @param phase    whether a better one is still looked for
 * @param exposure what each person takes in on each day
 * @param chance   when the jobs may be ready; empty until it is simulated
 * @param helps    what would help; empty until it is tried, or when no job is late
 */
record Timed(
        Site site,
        List<Job> jobs,
        Optional<TimedShop> timed,
        List<NoTimetable> why,
        Phase phase,
        List<PersonDay> exposure,
        Optional<ShopChance> chance,
        Optional<Helps> helps) {

    /** How far the search is. */
    enum Phase {
        /** A better one is looked for. */
        IMPROVING,
        /** The search has come to its end. */
        DONE,
        /** Somebody has stopped it. */
        STOPPED
    }

    /**
     * What would help jobs that are late.
     *
     * @param onADay   the least help on one day
     * @param everyDay what would help every day
     */
    record Helps(Optional<Help> onADay, List<Help> everyDay) {}

    Timed {
        jobs = List.copyOf(jobs);
        why = List.copyOf(why);
        exposure = List.copyOf(exposure);
    }

    static Timed of(Site site, List<Job> jobs, Optional<TimedShop> timed, Phase phase) {
        return new Timed(site, jobs, timed, List.of(), phase, List.of(), Optional.empty(), Optional.empty());
    }

    Timed because(List<NoTimetable> reasons) {
        return new Timed(site, jobs, timed, reasons, phase, exposure, chance, helps);
    }

    Timed with(List<PersonDay> days) {
        return new Timed(site, jobs, timed, why, phase, days, chance, helps);
    }

    Timed with(ShopChance simulated) {
        return new Timed(site, jobs, timed, why, phase, exposure, Optional.of(simulated), helps);
    }

    Timed with(Helps tried) {
        return new Timed(site, jobs, timed, why, phase, exposure, chance, Optional.of(tried));
    }

    Optional<ShopTimetable> timetable() {
        return timed.map(TimedShop::timetable);
    }
}
