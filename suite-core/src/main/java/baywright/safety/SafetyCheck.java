package baywright.safety;

import baywright.library.StageTerms;
import baywright.plan.Finding;
import baywright.script.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Judges how safely a plan can be done. Pure: the same case gives an equal report. */
public final class SafetyCheck {

    private SafetyCheck() {}

    /** Findings, exposures and, where one is over a limit, ways out. */
    public static SafetyReport of(SafetyCase all) {
        SafetyReport report = withoutRemedies(all);
        return new SafetyReport(report.days(), report.findings(), new RemedyFinder(all, report).find());
    }

    /** What each person takes in on each day, in order of day and person. */
    public static List<PersonDay> exposures(SafetyCase all) {
        return Exposures.of(all, DayBook.of(all));
    }

    /** What a check would find after one of the ways out, without further ways. */
    public static SafetyReport after(SafetyCase all, Remedy remedy) {
        return withoutRemedies(all.with(remedy.applyTo(all.plan(), all.job())));
    }

    /** The cautions that a plan brings, with who answers for them. */
    public static List<Cautioned> cautions(SafetyCase all) {
        return new CautionRule(all).cautions();
    }

    /** The days on which a plan is worked, in order, with what its steps ask of air and surface. */
    public static List<DayBounds> climate(SafetyCase all) {
        Map<LocalDate, Set<DayBounds.OfStep>> days = new TreeMap<>();
        for (DayBook.Stint stint : DayBook.of(all)) {
            Set<DayBounds.OfStep> steps = days.computeIfAbsent(stint.day(), day -> new LinkedHashSet<>());
            Hazards.terms(stint.work()).stream()
                    .map(StageTerms::climate)
                    .filter(c -> c.origin().isPresent())
                    .forEach(c -> steps.add(new DayBounds.OfStep(stint.work().step(), c)));
        }
        List<DayBounds> bounds = new ArrayList<>();
        days.forEach((day, steps) -> bounds.add(new DayBounds(day, List.copyOf(steps))));
        return bounds;
    }

    /** The line of a script whose level counts for a step; empty where the job gives the level itself or no line does. */
    public static Optional<Place> levelLine(SafetyCase all, String step, Agent agent) {
        return all.work(step).flatMap(work -> new Hazards(all).levelLine(work, agent));
    }

    /** The same without ways out, for those who judge many variants: finding the ways takes most of the time. */
    public static SafetyReport withoutRemedies(SafetyCase all) {
        List<DayBook.Stint> stints = DayBook.of(all);
        List<PersonDay> days = Exposures.of(all, stints);
        List<Finding> findings = new ArrayList<>();
        findings.addAll(DoseRule.check(all.settings(), days));
        findings.addAll(new ApartRule(all).check(stints));
        findings.addAll(new PeopleRule(all).check());
        findings.addAll(new CautionRule(all).check());
        findings.addAll(new ClimateRule(all).check(stints));
        findings.addAll(new AirRule(all).check(stints));
        findings.addAll(LightRule.check(all));
        return new SafetyReport(days, findings, List.of());
    }
}
