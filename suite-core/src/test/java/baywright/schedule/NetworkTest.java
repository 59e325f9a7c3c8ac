package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NetworkTest {

    private static final Lag COAT_AFTER_WIPE =
            new Lag(0, Lag.Point.END, 1, Lag.Point.START, 0, OptionalInt.of(60), "the wipe dries");

    /** Wipe, coat, lamp, hand-over: longest paths with an arc back for each most-wait, derived by hand. */
    private static Project coating(int coatFrom, Lag... more) {
        List<Activity> activities = List.of(
                Activity.of("wipe", 20),
                Activity.of("coat", 90).from(coatFrom),
                Activity.of("lamp", 45),
                Activity.of("hand-over", 0));
        List<Lag> lags =
                new java.util.ArrayList<>(List.of(COAT_AFTER_WIPE, Lag.between(1, 2, 30, 40), Lag.after(1, 3, 720)));
        lags.addAll(List.of(more));
        return new Project(activities, List.of(), lags, List.of(), Goal.end(3), 10_000);
    }

    private static List<Integer> earliest(Project project) {
        Network network = Network.of(project);
        return List.of(network.earliest(0), network.earliest(1), network.earliest(2), network.earliest(3));
    }

    @Test
    void earliestStartsKeepTheWaits() {
        assertThat(earliest(coating(0))).containsExactly(0, 20, 140, 830);
        assertThat(Serial.first(coating(0)).orElseThrow().starts()).containsExactly(0, 20, 140, 830);
    }

    @Test
    void aMostWaitPullsTheEarlierOneAlong() {
        assertThat(earliest(coating(200))).containsExactly(120, 200, 320, 1010);
        assertThat(Serial.first(coating(200)).orElseThrow().starts()).containsExactly(120, 200, 320, 1010);
    }

    @Test
    void waitsThatContradictEachOtherAreNamed() {
        Lag tooLong = Lag.after(0, 1, 75);
        Project project = coating(0, tooLong);
        assertThat(Network.of(project).contradiction()).containsExactlyInAnyOrder(COAT_AFTER_WIPE, tooLong);
        assertThat(Serial.first(project)).isEmpty();
        assertThat(Improver.improve(project, Optional.empty(), 1, 1000, () -> false, i -> {})
                        .impossible())
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("files")
    void theLengthIsThatOfThePublishedCriticalPath(Psplib.Known known) {
        Network network = Network.of(Psplib.project(known));
        assertThat(network.length()).isEqualTo(known.criticalPath());
        assertThat(network.tail(0)).isEqualTo(known.criticalPath());
    }

    static List<Psplib.Known> files() {
        return Psplib.known();
    }
}
