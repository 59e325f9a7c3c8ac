package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files of PSPLIB whose optima are published; see {@code psplib/SOURCE.md}. */
class PsplibTest {

    static List<Psplib.Known> files() {
        return Psplib.known("j30");
    }

    @ParameterizedTest
    @MethodSource("files")
    void thePublishedOptimumIsFoundAndProved(Psplib.Known known) {
        Project project = Psplib.project(known);
        Improvement found = Improver.improve(project, Serial.first(project), 1, Long.MAX_VALUE, () -> false, i -> {});
        Timetable best = found.best().orElseThrow();
        assertThat(TimetableCheck.faults(project, best)).isEmpty();
        assertThat(best.goal()).isEqualTo(known.optimum());
        assertThat(found.lowerBound()).isEqualTo(known.optimum());
        assertThat(found.proved()).isTrue();
    }
}
