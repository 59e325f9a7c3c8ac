package baywright.bench;

import baywright.schedule.Improvement;
import baywright.schedule.Improver;
import baywright.schedule.Project;
import baywright.schedule.Psplib;
import baywright.schedule.Serial;
import baywright.schedule.Timetable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Timetables of the published projects in the tests, whose optima are known: at once, improved by one thread, by the plain
 * serial schedule, and by CP-SAT with two workers. Contenders take turns, file by file.
 */
final class TimetableSection {

    private static final int WORKERS = 2;
    private static final double FIRST_BUDGET = 0.05;
    private static final double PROOF_BUDGET = 2;
    private static final double GAP_BUDGET = 1;
    private static final double NANOS = 1e9;

    private TimetableSection() {}

    /** What a contender made of a file. */
    private record Result(double seconds, boolean proved, double percentAbove) {}

    /** All contenders on a file. */
    private record Round(Result first, Result ours, Result plain, Result other) {}

    /**
     * The figures.
     *
     * @param seconds what each search may take on each file
     * @param files   how many files of each set at most
     */
    static List<Figure> measure(int seconds, int files) {
        OtherSolver.load();
        for (Psplib.Known known : Psplib.known("j30")) {
            round(known, 1);
        }
        List<Figure> figures = new ArrayList<>();
        for (String set : List.of("j30", "j60", "j120")) {
            List<Psplib.Known> all = Psplib.known(set);
            List<Round> rounds = all.subList(0, Math.min(files, all.size())).stream()
                    .map(known -> round(known, seconds))
                    .toList();
            figures.addAll(figures(set, seconds, rounds));
        }
        return figures;
    }

    private static Round round(Psplib.Known known, int seconds) {
        Project project = Psplib.project(known);
        long begun = System.nanoTime();
        Optional<Timetable> first = Serial.first(project);
        double atOnce = since(begun);
        begun = System.nanoTime();
        long end = begun + (long) (seconds * NANOS);
        Improvement found =
                Improver.improve(project, first, 1, Long.MAX_VALUE, () -> System.nanoTime() - end > 0, i -> {});
        double improving = since(begun);
        begun = System.nanoTime();
        int[] plain = PlainSchedule.starts(project);
        double plainly = since(begun);
        begun = System.nanoTime();
        OtherSolver.Answer other = OtherSolver.solve(project, plain, seconds, WORKERS);
        double elsewhere = since(begun);
        return new Round(
                result(atOnce, false, first.orElseThrow().goal(), known),
                result(improving, found.proved(), found.best().orElseThrow().goal(), known),
                result(plainly, false, plain[plain.length - 1], known),
                result(elsewhere, other.proved(), other.end(), known));
    }

    private static double since(long begun) {
        return (System.nanoTime() - begun) / NANOS;
    }

    private static Result result(double seconds, boolean proved, long end, Psplib.Known known) {
        if (end < known.optimum() || (proved && end > known.optimum())) {
            throw new IllegalStateException(known.file() + " ends at " + end + ", proved " + proved
                    + "; the published optimum is " + known.optimum());
        }
        return new Result(seconds, proved, 100.0 * (end - known.optimum()) / known.optimum());
    }

    private static List<Figure> figures(String set, int seconds, List<Round> rounds) {
        String of = set + ", " + rounds.size() + " files: ";
        List<Result> ours = rounds.stream().map(Round::ours).toList();
        List<Result> other = rounds.stream().map(Round::other).toList();
        List<Result> plain = rounds.stream().map(Round::plain).toList();
        List<Result> first = rounds.stream().map(Round::first).toList();
        boolean all = ours.stream().allMatch(Result::proved);
        List<Figure> figures = new ArrayList<>();
        boolean small = set.equals("j30");
        figures.add(new Figure(
                of + "proved within " + seconds + " s, median and longest",
                told(ours),
                "CP-SAT: " + told(other),
                Optional.of(median(ours) / median(other)),
                small ? "all, ≤ " + Figure.seconds(PROOF_BUDGET) : "",
                !small || (all && longest(ours) <= PROOF_BUDGET)));
        double above = mean(ours);
        figures.add(new Figure(
                of + "above the optimum after " + seconds + " s",
                percent(above),
                "CP-SAT: " + percent(mean(other)),
                Optional.empty(),
                set.equals("j60") ? "≤ " + percent(GAP_BUDGET) : "",
                !set.equals("j60") || above <= GAP_BUDGET));
        figures.add(new Figure(
                of + "above the optimum at once",
                percent(mean(first)),
                "plain serial schedule: " + percent(mean(plain)),
                Optional.of(mean(first) / mean(plain)),
                "",
                true));
        if (set.equals("j60")) {
            figures.add(new Figure(
                    "first timetable of 60 activities, median; longest " + milliseconds(longest(first)),
                    milliseconds(median(first)),
                    "plain serial schedule: " + milliseconds(median(plain)),
                    Optional.of(median(first) / median(plain)),
                    "≤ " + milliseconds(FIRST_BUDGET),
                    longest(first) <= FIRST_BUDGET));
        }
        return figures;
    }

    private static String told(List<Result> results) {
        long proved = results.stream().filter(Result::proved).count();
        return proved + String.format(Locale.ROOT, " (%.3f s, %.2f s)", median(results), longest(results));
    }

    private static String percent(double percent) {
        return String.format(Locale.ROOT, "%.2f %%", percent);
    }

    private static String milliseconds(double seconds) {
        return Figure.milliseconds(seconds * 1e3);
    }

    private static double mean(List<Result> results) {
        return results.stream().mapToDouble(Result::percentAbove).average().orElseThrow();
    }

    private static double median(List<Result> results) {
        double[] sorted = sorted(results, Result::seconds);
        return sorted[sorted.length / 2];
    }

    private static double longest(List<Result> results) {
        double[] sorted = sorted(results, Result::seconds);
        return sorted[sorted.length - 1];
    }

    private static double[] sorted(List<Result> results, ToDoubleFunction<Result> figure) {
        double[] values = results.stream().mapToDouble(figure).toArray();
        Arrays.sort(values);
        return values;
    }
}
