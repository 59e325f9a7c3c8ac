package baywright.site;

import baywright.chance.Outcome;
import baywright.chance.Sample;
import baywright.money.Outlook;
import baywright.schedule.ShopChance.JobChance;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * When a job may be ready: by its timetable, or for a job that has none by the plan's simple clock.
 *
 * @param byTimetable whether people, bays and opening hours were kept
 * @param minutes     from the start to the end, run by run
 * @param moment      local time so many minutes after the start
 * @param wanted      when it must be ready; empty where that is not agreed or cannot be told
 * @param inTime      chance of that, 0 to 1; empty without {@code wanted}
 * @param band        where that chance lies, 95 % sure
 * @param textbook    the same chance by the textbook's estimate, for comparison only
 * @param drivers     of its spread, the strongest first
 */
public record FinishChance(
        boolean byTimetable,
        Sample minutes,
        DoubleFunction<LocalDateTime> moment,
        Optional<LocalDateTime> wanted,
        OptionalDouble inTime,
        Optional<Sample.Band> band,
        OptionalDouble textbook,
        List<Outcome.Driver> drivers) {

    private static final double CONFIDENCE = 0.95;

    public FinishChance {
        drivers = List.copyOf(drivers);
    }

    /**
     * Of a quoted job.
     *
     * @param chance by its timetable, where it has one
     * @return empty for a plan without work
     */
    public static Optional<FinishChance> of(WorkedJob worked, Outlook outlook, Optional<JobChance> chance) {
        return chance.map(FinishChance::byTimetable)
                .or(() -> outlook.clock().map(clock -> byClock(clock, worked, outlook)));
    }

    private static FinishChance byTimetable(JobChance chance) {
        return new FinishChance(
                true,
                chance.finish(),
                chance::moment,
                chance.wanted(),
                chance.inTime(),
                chance.inTimeBand(CONFIDENCE),
                chance.textbook(),
                chance.causes().stream()
                        .map(cause -> new Outcome.Driver(
                                cause.step().isEmpty() ? Outcome.Kind.SHARED : Outcome.Kind.ACTIVITY,
                                cause.step().isEmpty() ? cause.fact() : cause.step(),
                                cause.share(),
                                0))
                        .toList());
    }

    /** Several vehicles are not looked at: the simple clock is that of one. */
    private static FinishChance byClock(Outcome clock, WorkedJob worked, Outlook outlook) {
        LocalDateTime start = worked.setting().start();
        Optional<LocalDateTime> wanted =
                worked.job().wanted().filter(w -> worked.job().vehicles() == 1);
        Optional<Double> minute = wanted.map(w -> Duration.between(start, w).toSeconds() / 60.0);
        return new FinishChance(
                false,
                clock.finish(),
                minutes -> start.plusMinutes(Math.round(minutes)),
                wanted,
                minute.map(m -> OptionalDouble.of(clock.finish().within(m))).orElse(OptionalDouble.empty()),
                minute.map(m -> clock.finish().withinBand(m, CONFIDENCE)),
                minute.flatMap(m -> outlook.textbook().map(pert -> OptionalDouble.of(pert.within(m))))
                        .orElse(OptionalDouble.empty()),
                clock.drivers());
    }

    /**
     * The moment by which it is ready in a share of the runs. By the timetable it is one that a run did come to, as nothing lies between
     * two moments of opening hours.
     *
     * @param share from 0 to 1
     */
    public LocalDateTime readyBy(double share) {
        return moment.apply(byTimetable ? minutes.reached(share) : minutes.quantile(share));
    }
}
