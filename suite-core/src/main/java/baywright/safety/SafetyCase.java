package baywright.safety;

import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.plan.StepWork;
import java.util.List;
import java.util.Optional;

/**
 * A plan to be judged, with all that its judgement rests on.
 *
 * @param setting  vehicle, survey, library and bays
 * @param plan     the steps
 * @param proof    what the proof of the plan found
 * @param work     what the steps take
 * @param settings of the site
 * @param job      what the job says about its safety
 * @param people   who works there; empty: nobody was named
 * @param vehicles how many alike, from 1; their work follows one upon the other
 * @param others   other jobs of the shop at about that time
 * @param spells   when who does what by a timetable, in order of time; empty: the order of the steps counts
 */
public record SafetyCase(
        Setting setting,
        Plan plan,
        Proof proof,
        PlanWork work,
        SafetySettings settings,
        JobSafety job,
        List<Worker> people,
        int vehicles,
        List<Booked> others,
        List<Spell> spells) {

    /** Without a timetable. */
    public SafetyCase(
            Setting setting,
            Plan plan,
            Proof proof,
            PlanWork work,
            SafetySettings settings,
            JobSafety job,
            List<Worker> people,
            int vehicles,
            List<Booked> others) {
        this(setting, plan, proof, work, settings, job, people, vehicles, others, List.of());
    }

    public SafetyCase {
        spells = List.copyOf(spells);
        people = List.copyOf(people);
        others = List.copyOf(others);
        if (vehicles < 1) {
            throw new IllegalArgumentException("a job has at least one vehicle, got " + vehicles);
        }
    }

    /** Proves the plan and reckons its work first. */
    public static SafetyCase of(
            Setting setting, Plan plan, SafetySettings settings, JobSafety job, List<Worker> people, int vehicles) {
        Prover prover = Prover.forSetting(setting);
        return new SafetyCase(
                setting, plan, prover.prove(plan), prover.work(plan), settings, job, people, vehicles, List.of());
    }

    /** The same with other jobs of the shop beside it. */
    public SafetyCase beside(List<Booked> jobs) {
        return new SafetyCase(setting, plan, proof, work, settings, job, people, vehicles, jobs, spells);
    }

    /** The same by a timetable: its days, people and bays count, not the order of the steps. */
    public SafetyCase timed(List<Spell> timetable) {
        return new SafetyCase(setting, plan, proof, work, settings, job, people, vehicles, others, timetable);
    }

    /** The same with another plan and other words about its safety. */
    SafetyCase with(Remedy.Change change) {
        return of(setting, change.plan(), settings, change.safety(), people, vehicles)
                .beside(others);
    }

    Optional<StepWork> work(String step) {
        return work.steps().stream().filter(w -> w.step().equals(step)).findFirst();
    }

    Optional<Step> step(String id) {
        return plan.steps().stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** A surveyed fact of a zone, else of the vehicle; empty text: not surveyed. */
    String fact(String zone, String id) {
        String ofVehicle = setting.survey().facts().getOrDefault(id, "");
        return setting.survey().zone(zone).facts().getOrDefault(id, ofVehicle);
    }
}
