package baywright.site;

import baywright.safety.Spell;
import baywright.safety.StepDose;
import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.schedule.StepLoad;
import baywright.workspace.Job;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Between a timetable, which counts shares of a day, and safety, which knows what they are shares of. */
final class Exposed {

    private Exposed() {}

    static Map<String, StepLoad> loads(Map<String, StepDose> doses) {
        Map<String, StepLoad> loads = new HashMap<>();
        doses.forEach((step, dose) -> loads.put(step, new StepLoad(dose.people(), dose.person(), dose.bays())));
        return loads;
    }

    /** The work of a job by a timetable, in order of time. */
    static List<Spell> spells(Job job, ShopTimetable timetable) {
        List<Spell> spells = new ArrayList<>();
        for (Entry entry : timetable.entries()) {
            if (entry.job().equals(job.id()) && entry.doing() == Doing.WORK) {
                for (ShopTimetable.Spell spell : entry.spells()) {
                    double share = spell.minutes() / (double) entry.minutes();
                    spells.add(new Spell(entry.step(), spell.from(), spell.to(), share, entry.people(), entry.bay()));
                }
            }
        }
        return spells;
    }
}
