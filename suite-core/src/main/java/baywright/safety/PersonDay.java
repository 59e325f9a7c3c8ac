package baywright.safety;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one pair of hands takes in on a day. Hands are numbered; who they belong to is for a timetable to say.
 *
 * @param day       the day
 * @param hand      from 1
 * @param vibration use of vibrating machines with the trigger pulled
 * @param noise     noise at the ear without protector
 */
public record PersonDay(LocalDate day, int hand, List<Dose> vibration, List<Dose> noise) {

    public PersonDay {
        vibration = List.copyOf(vibration);
        noise = List.copyOf(noise);
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
