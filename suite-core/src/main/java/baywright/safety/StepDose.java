package baywright.safety;

import baywright.plan.Bay;
import baywright.plan.StepWork;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What a step does to those who do it and to its bay, as shares of what a day allows. Shares of a day's steps add up: the
 * dose of vibration goes with {@code a² t} (ISO 5349-1:2001, 5.3), that of noise with energy (Directive 2003/10/EC), and
 * vapour with the mean over eight hours (29 CFR 1910.1000(d)). What counts as equal to a limit is still within it.
 *
 * @param people how many do it or take turns at it
 * @param person what each of so many takes in, by {@code vibration}, {@code noise} and {@code solvent-air}
 * @param bays   what goes into the air of each bay that the step can be done in, by bay id
 */
public record StepDose(int people, Map<String, Double> person, Map<String, Double> bays) {

    private static final double MINUTES = 60;
    private static final double HOURS = 8;
    private static final double PERCENT = 100;

    public StepDose {
        person = java.util.Collections.unmodifiableMap(new TreeMap<>(person));
        bays = java.util.Collections.unmodifiableMap(new TreeMap<>(bays));
    }

    /** Those steps of a plan that do something to people or bays, by their ids. */
    public static Map<String, StepDose> of(SafetyCase all) {
        Map<String, StepDose> doses = new LinkedHashMap<>();
        for (StepWork work : all.work().steps()) {
            StepDose dose = of(all, work);
            if (!dose.person().isEmpty()
                    || !dose.bays().isEmpty()
                    || dose.people() > work.crew().people()) {
                doses.put(work.step(), dose);
            }
        }
        return doses;
    }

    private static StepDose of(SafetyCase all, StepWork work) {
        Hazards hazards = new Hazards(all);
        int people = Exposures.hands(all, work);
        double hours = Exposures.handsOnMinutes(all, work, people) / MINUTES;
        Map<String, Double> person = new TreeMap<>();
        OptionalDouble vibration = hazards.level(work, Agent.VIBRATION);
        SafetySettings.VibrationRule shaking = all.settings().vibration();
        if (vibration.isPresent() && hours > 0) {
            double of = vibration.getAsDouble() / shaking.comparison().most(shaking.limit());
            person.put(Agent.VIBRATION.risk(), of * of * hours * shaking.triggerShare() / HOURS);
        }
        OptionalDouble noise = hazards.level(work, Agent.NOISE);
        SafetySettings.NoiseRule loud = all.settings().noise();
        if (noise.isPresent() && hours > 0) {
            double protector = Hazards.earsCovered(work) ? loud.protector() : 0;
            double above = noise.getAsDouble() - protector - loud.comparison().most(loud.limit());
            person.put(Agent.NOISE.risk(), Math.pow(10, above / 10) * hours / HOURS);
        }
        Map<String, Double> bays = new TreeMap<>();
        AirRule air = new AirRule(all);
        double most = Comparison.EXCEEDS.most(PERCENT);
        for (Bay bay : hazards.places(work)) {
            double percent = air.percent(work, bay.id());
            if (percent > 0) {
                bays.put(bay.id(), percent / most);
                // whose bay is not known yet is reckoned with the worst
                person.merge(SafetyCodes.SOLVENT_AIR, percent / most, Math::max);
            }
        }
        return new StepDose(people, person, bays);
    }
}
