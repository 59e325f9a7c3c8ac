package baywright.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PertEstimateTest {

    /** A problem of Render, Stair, Hanna, with a worked solution; probabilities computed from its z. */
    @Test
    void fourteenActivities() {
        Network network = Networks.fourteen();
        assertThat(means(network))
                .containsExactly(
                        new double[] {5.33, 2.33, 5.0, 8.17, 9.67, 4.67, 5.83, 4.33, 6.67, 4.17, 9.83, 5.33, 2.17, 7.83
                        },
                        within(0.005));
        assertThat(deviations(network))
                .containsExactly(
                        new double[] {0.33, 0.67, 0.0, 1.50, 2.67, 1.00, 1.17, 0.33, 1.33, 0.83, 1.17, 0.67, 0.17, 0.83
                        },
                        within(0.005));
        CriticalPath path = CriticalPath.ofMeans(network);
        assertThat(path.critical()).containsExactly("A", "C", "E", "H", "I", "K", "M", "N");
        assertThat(slack(path, "B", "D", "F", "G", "J", "L"))
                .containsExactly(new double[] {8.0, 1.83, 1.83, 5.0, 2.5, 2.5}, within(0.005));
        PertEstimate pert = PertEstimate.of(network);
        assertThat(pert.mean()).isEqualTo(50.833, within(0.005));
        assertThat(pert.variance()).isEqualTo(11.194, within(0.005));
        assertThat(pert.deviation()).isEqualTo(3.346, within(0.005));
        assertThat(pert.within(53)).isEqualTo(0.7414, within(1e-3));
        assertThat(pert.within(55)).isEqualTo(0.8935, within(1e-3));
    }

    /** Render, Stair, Hanna; Heizer, Render. The printed 0.7157 comes from z rounded to 0.57. */
    @Test
    void eightActivities() {
        Network network = Networks.eight();
        assertThat(means(network)).containsExactly(new double[] {2.0, 3.0, 2.0, 4.0, 4.0, 3.0, 5.0, 2.0}, within(1e-3));
        CriticalPath path = CriticalPath.ofMeans(network);
        assertThat(path.critical()).containsExactly("A", "C", "E", "G", "H");
        assertThat(slack(path, "B", "D", "F")).containsExactly(new double[] {1.0, 1.0, 6.0}, within(1e-3));
        PertEstimate pert = PertEstimate.of(network);
        assertThat(pert.mean()).isEqualTo(15, within(1e-3));
        assertThat(pert.variance()).isEqualTo(28.0 / 9, within(1e-3));
        assertThat(pert.within(16)).isEqualTo(0.7146, within(1e-3)).isEqualTo(0.7157, within(0.002));
    }

    /** Hillier, Lieberman, Introduction to Operations Research, prototype example. */
    @Test
    void prototypeExample() {
        Network network = Networks.prototype();
        assertThat(means(network))
                .containsExactly(
                        new double[] {2.0, 4.0, 10.0, 6.0, 4.0, 5.0, 7.0, 9.0, 7.0, 8.0, 4.0, 5.0, 2.0, 6.0},
                        within(1e-4));
        CriticalPath path = CriticalPath.ofMeans(network);
        assertThat(path.critical()).containsExactly("A", "B", "C", "E", "F", "J", "L", "N");
        assertThat(slack(path, "D", "G", "H", "M", "I", "K"))
                .containsExactly(new double[] {4.0, 4.0, 4.0, 4.0, 2.0, 1.0}, within(1e-4));
        PertEstimate pert = PertEstimate.of(network);
        assertThat(pert.mean()).isEqualTo(44, within(1e-4));
        assertThat(pert.variance()).isEqualTo(9, within(1e-4));
        assertThat(pert.within(47)).isEqualTo(0.8413, within(1e-4));
        assertThat(all(network, 0)).isEqualTo(26, within(1e-4));
        assertThat(all(network, 1)).isEqualTo(70, within(1e-4));
    }

    @Test
    void aCertainNetworkEndsWhenItEnds() {
        PertEstimate pert = PertEstimate.of(Networks.ofArrows("1-2: 7", "2-3: 3"));
        assertThat(pert.within(9.99)).isZero();
        assertThat(pert.within(10)).isEqualTo(1);
    }

    private static double all(Network network, int which) {
        return CriticalPath.of(
                        network,
                        network.activities().stream()
                                .map(Activity::minutes)
                                .mapToDouble(m -> (which == 0 ? m.least() : m.most()).doubleValue())
                                .toArray())
                .length();
    }

    private static double[] means(Network network) {
        return network.activities().stream()
                .mapToDouble(a -> a.minutes().mean().doubleValue())
                .toArray();
    }

    private static double[] deviations(Network network) {
        return network.activities().stream()
                .mapToDouble(a -> Math.sqrt(a.minutes().variance().doubleValue()))
                .toArray();
    }

    private static double[] slack(CriticalPath path, String... ids) {
        return Stream.of(ids)
                .mapToDouble(id -> path.timings().stream()
                        .filter(t -> t.activity().equals(id))
                        .findFirst()
                        .orElseThrow()
                        .totalFloat())
                .toArray();
    }
}
