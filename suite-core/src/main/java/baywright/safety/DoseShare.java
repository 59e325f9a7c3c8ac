package baywright.safety;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one pair of hands takes in on a day as a share of what a day may bring at most. The share is one of dose, so that half
 * the time is half the share: the square of A(8) for vibration, as exposure points count (HSE, L140), and sound energy for noise
 * (ISO 9612).
 *
 * @param agent what is taken in
 * @param day   the day
 * @param hand  from 1
 * @param value A(8) in m/s², or LEX,8h under the protectors in dB(A)
 * @param limit the limit of the same
 * @param share from 0; 1 is the limit
 */
public record DoseShare(Agent agent, LocalDate day, int hand, double value, double limit, double share) {

    private static final double DECIBELS_OF_TEN = 10;

    /** The shares of a day's limits; an agent that it brings nothing of is left out. */
    public static List<DoseShare> of(PersonDay day, SafetySettings settings) {
        List<DoseShare> shares = new ArrayList<>();
        if (!day.vibration().isEmpty()) {
            double daily = day.dailyVibration();
            double limit = settings.vibration().limit();
            shares.add(new DoseShare(
                    Agent.VIBRATION, day.day(), day.hand(), daily, limit, daily * daily / (limit * limit)));
        }
        if (!day.noise().isEmpty()) {
            double daily = day.protectedNoise();
            double limit = settings.noise().limit();
            double share = Math.pow(10, (daily - limit) / DECIBELS_OF_TEN);
            shares.add(new DoseShare(Agent.NOISE, day.day(), day.hand(), daily, limit, share));
        }
        return shares;
    }

    /** The greatest share of all; empty when nobody takes in anything. */
    public static Optional<DoseShare> worst(List<PersonDay> days, SafetySettings settings) {
        return days.stream().flatMap(day -> of(day, settings).stream()).max(Comparator.comparing(DoseShare::share));
    }
}
