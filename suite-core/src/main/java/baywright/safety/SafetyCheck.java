package baywright.safety;

import baywright.plan.Finding;
import java.util.ArrayList;
import java.util.List;

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
