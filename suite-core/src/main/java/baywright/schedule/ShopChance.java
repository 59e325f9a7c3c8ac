package baywright.schedule;

import baywright.chance.Sample;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When jobs may be ready if work takes longer or shorter than planned, by simulation of their timetable.
 *
 * @param seed what the draws grew from
 * @param runs how many
 * @param jobs in the order of the jobs
 */
public record ShopChance(long seed, int runs, List<JobChance> jobs) {

    public ShopChance {
        jobs = List.copyOf(jobs);
    }

    /**
     * When a job may be ready.
     *
     * @param job      its id
     * @param planned  when the timetable has it ready, local time
     * @param wanted   when it is wanted, local time
     * @param finish   minutes from {@code origin} to its end, whole
     * @param origin   where they are counted from
     * @param zone     of the shop
     * @param textbook chance of the wanted moment by the textbook: the timetable's critical chain alone, sum of the
     *                 variances {@code ((most − least)/6)²}, normal, room counted in opening hours (Malcolm, Roseboom, Clark,
     *                 Fazar, Operations Research 7 (1959) 646); empty when nothing is wanted
     * @param roles    of all steps that the end ever hangs on or goes with, the most often first
     * @param causes   of the spread, the strongest first
     * @param missed   longest waits of the job that are ever missed, the most often first
     */
    public record JobChance(
            String job,
            LocalDateTime planned,
            Optional<LocalDateTime> wanted,
            Sample finish,
            Instant origin,
            ZoneId zone,
            OptionalDouble textbook,
            List<Role> roles,
            List<Cause> causes,
            List<Missed> missed) {

        public JobChance {
            roles = List.copyOf(roles);
            causes = List.copyOf(causes);
            missed = List.copyOf(missed);
        }

        /**
         * The moment by which it is ready in a share of the runs, to the minute, local time.
         *
         * @param share from 0 to 1
         */
        public LocalDateTime readyBy(double share) {
            return moment(finish.reached(share));
        }

        /** A moment of the finish, local time. */
        public LocalDateTime moment(double minutes) {
            return LocalDateTime.ofInstant(origin.plus(Duration.ofMinutes(Math.round(minutes))), zone);
        }

        /** Share of the runs in which it is ready when it is wanted. */
        public OptionalDouble inTime() {
            return wanted.isPresent() ? OptionalDouble.of(finish.within(wantedMinute())) : OptionalDouble.empty();
        }

        /**
         * Where that chance lies.
         *
         * @param confidence two-sided, above 0 and below 1
         */
        public Optional<Sample.Band> inTimeBand(double confidence) {
            return wanted.map(w -> finish.withinBand(wantedMinute(), confidence));
        }

        private double wantedMinute() {
            return Duration.between(origin, wanted.orElseThrow().atZone(zone).toInstant())
                    .toMinutes();
        }
    }

    /**
     * What a step has to do with the end of a job, its own or another's.
     *
     * @param job         the step's job
     * @param vehicle     from 1
     * @param step        its id
     * @param criticality share of the runs in which the end hangs on it: it lies on a chain back from the end, in which each
     *                    began when the one before was over (criticality index; R. Van Slyke, Operations Research 11 (1963)
     *                    839)
     * @param correlation of its minutes' ranks with those of the end (Spearman), over the first 4,096 runs at most
     */
    public record Role(String job, int vehicle, String step, double criticality, double correlation) {}

    /**
     * A cause of the spread of a job's end.
     *
     * @param fact  a surveyed fact that moves several steps; empty: a step by itself
     * @param step  id of the step; empty for a fact
     * @param share of the variance of the end that goes straight with it: squared correlation
     */
    public record Cause(String fact, int vehicle, String step, double share) {}

    /**
     * A longest wait, and how often it is missed.
     *
     * @param why    words of the stage, or the state that perishes; may be empty
     * @param most   minutes
     * @param chance from 0 to 1
     */
    public record Missed(int vehicle, String from, String to, String why, int most, double chance) {}

    /** The chance of a job. */
    public Optional<JobChance> job(String id) {
        return jobs.stream().filter(j -> j.job().equals(id)).findFirst();
    }
}
