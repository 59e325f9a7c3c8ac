package baywright.safety;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one pair of hands takes in on a day. Hands are numbered; a timetable says whose they are.
 *
 * @param day       the day
 * @param hand      from 1; of a named person their place among the people of the shop
 * @param name      who it is; empty: nobody in particular
 * @param vibration use of vibrating machines with the trigger pulled
 * @param noise     noise at the ear without protector
 * @param vapour    what their own steps give off, averaged over eight hours; percent of the limits
 */
public record PersonDay(LocalDate day, int hand, String name, List<Dose> vibration, List<Dose> noise, double vapour) {

    public PersonDay {
        vibration = List.copyOf(vibration);
        noise = List.copyOf(noise);
    }

    /** The days of several jobs with what each person takes in on all of them; in order of day and person. */
    public static List<PersonDay> together(List<PersonDay> days) {
        Map<String, PersonDay> sums = new LinkedHashMap<>();
        days.stream()
                .sorted(Comparator.comparing(PersonDay::day).thenComparing(PersonDay::hand))
                .forEach(d -> sums.merge(d.day() + " " + d.hand(), d, PersonDay::plus));
        return List.copyOf(sums.values());
    }

    private PersonDay plus(PersonDay other) {
        List<Dose> shaking = new ArrayList<>(vibration);
        shaking.addAll(other.vibration);
        List<Dose> loud = new ArrayList<>(noise);
        loud.addAll(other.noise);
        return new PersonDay(day, hand, name, shaking, loud, vapour + other.vapour);
    }

    /** Whether there is anything to be exposed to. */
    public boolean isExposed() {
        return !vibration.isEmpty() || !noise.isEmpty() || vapour > 0;
    }

    /**
     * One step's part.
     *
     * @param level     m/s² or dB(A)
     * @param hours     exposed
     * @param protector dB that a hearing protector takes off, 0 for vibration
     */
    public record Dose(String step, double level, double hours, double protector) {}

    /** A(8), m/s². */
    public double dailyVibration() {
        return Vibration.daily(vibration.stream()
                .map(d -> new Vibration.Use(d.level(), d.hours()))
                .toList());
    }

    public double vibrationPoints() {
        return Vibration.toPoints(dailyVibration());
    }

    /** LEX,8h without protector, dB(A). */
    public double dailyNoise() {
        return Noise.daily(
                noise.stream().map(d -> new Noise.Use(d.level(), d.hours())).toList());
    }

    /** LEX,8h under the protectors that the stages ask for, dB(A). */
    public double protectedNoise() {
        return Noise.daily(noise.stream()
                .map(d -> new Noise.Use(d.level() - d.protector(), d.hours()))
                .toList());
    }

    /** The step that brings most. */
    Optional<String> worst(Agent agent) {
        return agent == Agent.VIBRATION
                ? vibration.stream()
                        .max(Comparator.comparing(d -> d.level() * d.level() * d.hours()))
                        .map(Dose::step)
                : noise.stream()
                        .max(Comparator.comparing(d -> Math.pow(10, (d.level() - d.protector()) / 10) * d.hours()))
                        .map(Dose::step);
    }

    List<Dose> doses(Agent agent) {
        return agent == Agent.VIBRATION ? vibration : noise;
    }
}
