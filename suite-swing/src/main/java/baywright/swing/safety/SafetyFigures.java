package baywright.swing.safety;

import baywright.plan.FindingText;
import baywright.safety.Cautioned;
import baywright.safety.DayBounds;
import baywright.safety.HazardSheet;
import baywright.safety.Remedy;
import baywright.safety.SafetyCheck;
import baywright.safety.SafetyReport;
import baywright.site.WorkedJob;
import baywright.swing.api.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What is read off a worked job for this workbench.
 *
 * @param worked   the job
 * @param sheet    its products in the chosen language, and what is kept apart
 * @param cautions what a named person must answer for
 * @param days     the days of work, with what their steps ask of air and surface
 * @param ways     ways to bring an exposure below its limit
 */
record SafetyFigures(
        WorkedJob worked, HazardSheet sheet, List<Cautioned> cautions, List<DayBounds> days, List<Way> ways) {

    /** A way out with what the check would find after it. */
    record Way(Remedy remedy, SafetyReport after) {}

    /** Reads them off; takes a moment, not for the event thread. When it is cancelled some ways may be missing. */
    static SafetyFigures of(WorkedJob worked, String shop, Locale language, Task.Progress progress) {
        HazardSheet.Part part = new HazardSheet.Part(
                worked.job().title(),
                worked.safe(),
                worked.safety(),
                new FindingText(worked.setting(), worked.job().plan(), language));
        List<Way> ways = new ArrayList<>();
        for (Remedy remedy : worked.safety().remedies()) {
            if (!progress.cancelled()) {
                ways.add(new Way(remedy, SafetyCheck.after(worked.safe(), remedy)));
            }
        }
        return new SafetyFigures(
                worked,
                HazardSheet.of(shop, part, language),
                SafetyCheck.cautions(worked.safe()),
                SafetyCheck.climate(worked.safe()),
                ways);
    }
}
