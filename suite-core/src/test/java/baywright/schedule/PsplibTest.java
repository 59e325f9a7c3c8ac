package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of PSPLIB whose optima are published; see {@code psplib/SOURCE.md}. */
class PsplibTest {

    private static final int SAMPLE_STEP = 3;

    static List<Psplib.Known> sample() {
        List<Psplib.Known> all = Psplib.known("j30");
        List<Psplib.Known> sample = new ArrayList<>();
        for (int i = 0; i < all.size(); i += SAMPLE_STEP) {
            sample.add(all.get(i));
        }
        return sample;
    }

    @ParameterizedTest
    @MethodSource("sample")
    void thePublishedOptimumIsFoundAndProved(Psplib.Known known) {
        proved(known, Long.MAX_VALUE);
    }

    private static Improvement proved(Psplib.Known known, long effort) {
        Project project = Psplib.project(known);
        Improvement found = Improver.improve(project, Serial.first(project), 1, effort, () -> false, i -> {});
        Timetable best = found.best().orElseThrow();
        assertThat(TimetableCheck.faults(project, best)).isEmpty();
        assertThat(best.goal()).isEqualTo(known.optimum());
        assertThat(found.lowerBound()).isEqualTo(known.optimum());
        assertThat(found.proved()).isTrue();
        return found;
    }

    // ---- all of them, on demand: mvn test -Dtest=PsplibTest -Dpsplib.full=true

    @Test
    @EnabledIfSystemProperty(named = "psplib.full", matches = "true")
    void everyFileOfThirtyIsProved() {
        List<Double> seconds = new ArrayList<>();
        for (Psplib.Known known : Psplib.known("j30")) {
            long start = System.nanoTime();
            proved(known, Long.MAX_VALUE);
            seconds.add((System.nanoTime() - start) / 1e9);
        }
        Collections.sort(seconds);
        System.out.printf(
                "j30: %d proved, median %.3f s, worst %.3f s%n",
                seconds.size(), seconds.get(seconds.size() / 2), seconds.get(seconds.size() - 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"j60", "j120"})
    @EnabledIfSystemProperty(named = "psplib.full", matches = "true")
    void theGapAfterFiveSeconds(String set) {
        double above = 0;
        double serialAbove = 0;
        int proved = 0;
        for (Psplib.Known known : Psplib.known(set)) {
            Project project = Psplib.project(known);
            Optional<Timetable> first = Serial.first(project);
            long end = System.nanoTime() + 5_000_000_000L;
            Improvement found =
                    Improver.improve(project, first, 1, Long.MAX_VALUE, () -> System.nanoTime() > end, i -> {});
            Timetable best = found.best().orElseThrow();
            assertThat(TimetableCheck.faults(project, best)).isEmpty();
            assertThat(best.goal()).isGreaterThanOrEqualTo(known.optimum());
            assertThat(found.lowerBound()).isLessThanOrEqualTo(known.optimum());
            above += percentAbove(best, known);
            serialAbove += percentAbove(first.orElseThrow(), known);
            proved += found.proved() ? 1 : 0;
        }
        int n = Psplib.known(set).size();
        System.out.printf(
                "%s: at once %.2f %%, after 5 s %.2f %% above the optimum, %d of %d proved%n",
                set, serialAbove / n, above / n, proved, n);
        assertThat(above / n).isLessThan(1);
    }

    private static double percentAbove(Timetable timetable, Psplib.Known known) {
        return 100.0 * (timetable.goal() - known.optimum()) / known.optimum();
    }
}
