package baywright.safety;

import baywright.plan.Plan;
import baywright.plan.Step;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a job says about its own safety.
 *
 * @param acknowledgements cautions that a named person has taken on
 * @param climate          typed conditions, one for a day at most
 * @param steps            how single steps are done, by step id
 */
public record JobSafety(
        List<Acknowledgement> acknowledgements, List<DayClimate> climate, Map<String, StepSafety> steps) {

    public static final JobSafety NONE = new JobSafety(List.of(), List.of(), Map.of());

    public JobSafety {
        acknowledgements = List.copyOf(acknowledgements);
        climate = List.copyOf(climate);
        steps = java.util.Collections.unmodifiableMap(new TreeMap<>(steps));
    }

    /** A caution that someone has read and answers for. */
    public record Acknowledgement(String id, String by, LocalDateTime at) {}

    /**
     * Air and surface on a day.
     *
     * @param temperature air, °C
     * @param humidity    percent, above 0 to 100
     * @param surface     of the vehicle, °C; empty: as warm as the air
     */
    public record DayClimate(
            LocalDate day, BigDecimal temperature, BigDecimal humidity, Optional<BigDecimal> surface) {}

    /**
     * How a step is done.
     *
     * @param people    how many take turns at it; 0: as many as the stage asks for
     * @param vibration m/s² of the machine in hand, where it differs from the stage's
     * @param noise     dB(A) of it
     */
    public record StepSafety(int people, Optional<BigDecimal> vibration, Optional<BigDecimal> noise) {
        public static final StepSafety USUAL = new StepSafety(0, Optional.empty(), Optional.empty());

        public StepSafety {
            if (people < 0) {
                throw new IllegalArgumentException("people who take turns are counted from 0, got " + people);
            }
        }

        StepSafety shared(int by) {
            return new StepSafety(by, vibration, noise);
        }
    }

    /** The same for another plan: words about a step stay when the other plan has the same stage under its id. */
    public JobSafety kept(Plan before, Plan after) {
        Map<String, String> stages = new HashMap<>();
        before.steps().forEach(step -> stages.put(step.id(), step.stage()));
        Map<String, StepSafety> left = new HashMap<>();
        for (Step step : after.steps()) {
            if (steps.containsKey(step.id()) && step.stage().equals(stages.get(step.id()))) {
                left.put(step.id(), steps.get(step.id()));
            }
        }
        return new JobSafety(acknowledgements, climate, left);
    }

    public StepSafety step(String id) {
        return steps.getOrDefault(id, StepSafety.USUAL);
    }

    public Optional<DayClimate> climateOf(LocalDate day) {
        return climate.stream().filter(c -> c.day().equals(day)).findFirst();
    }

    public Optional<Acknowledgement> acknowledged(String id) {
        return acknowledgements.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /** The same with a named person's answer for a caution, in place of an earlier one for it. */
    public JobSafety acknowledged(Acknowledgement answer) {
        List<Acknowledgement> all = new ArrayList<>(withoutAnswer(answer.id()).acknowledgements);
        all.add(answer);
        return new JobSafety(all, climate, steps);
    }

    /** The same with nobody's answer for a caution. */
    public JobSafety withoutAnswer(String caution) {
        return new JobSafety(
                acknowledgements.stream().filter(a -> !a.id().equals(caution)).toList(), climate, steps);
    }

    /** The same with air and surface of a day, in place of earlier ones of that day; days in order. */
    public JobSafety with(DayClimate air) {
        List<DayClimate> all = new ArrayList<>(withoutClimate(air.day()).climate);
        all.add(air);
        all.sort(Comparator.comparing(DayClimate::day));
        return new JobSafety(acknowledgements, all, steps);
    }

    /** The same with no air and surface of a day. */
    public JobSafety withoutClimate(LocalDate day) {
        return new JobSafety(
                acknowledgements,
                climate.stream().filter(c -> !c.day().equals(day)).toList(),
                steps);
    }

    /** The same with one step done otherwise. */
    public JobSafety with(String step, StepSafety how) {
        Map<String, StepSafety> all = new TreeMap<>(steps);
        all.put(step, how);
        return new JobSafety(acknowledgements, climate, all);
    }
}
