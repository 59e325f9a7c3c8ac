package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Right and wrong plans with the findings that they must give, and no other stop and no other word of a rule. */
class BenchTest {

    static List<Bench> cases() {
        return Benches.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void givesTheExpectedFindings(Bench bench) {
        assertThat(bench.lines(Benches.library(bench)))
                .as("%s: %s", bench.id(), bench.title())
                .isEqualTo(bench.expect().stream().sorted().toList());
    }
}
