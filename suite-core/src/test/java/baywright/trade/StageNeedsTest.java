package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Library;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each need, wish and refusal of the trade's table speaks when it alone is not met, and stays silent when all are. */
class StageNeedsTest {

    private static final List<StageNeeds> TABLE = StageNeeds.table();
    private static final Library LIBRARY = Shipped.library().library();

    static Stream<StageNeeds> lines() {
        return TABLE.stream();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void speaksWhenItAloneIsNotMet(StageNeeds line) {
        assertThat(line.isTold(LIBRARY, TABLE)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void staysSilentWhenAllIsWell(StageNeeds line) {
        assertThat(StageNeeds.whenAllIsWell(LIBRARY, TABLE, line.stage(), line.given()))
                .isEmpty();
    }

    @Test
    void everyStageIsInTheTable() {
        assertThat(TABLE)
                .extracting(StageNeeds::stage)
                .containsAll(LIBRARY.stages().stream()
                        .map(s -> s.id())
                        .filter(id -> !id.equals("arrival-check"))
                        .toList());
    }

    /** The other way round: the library asks for nothing that the table does not know. */
    @Test
    void theLibraryAsksForNothingElse() {
        assertThat(LIBRARY.stages())
                .allSatisfy(stage -> assertThat(StageNeeds.of(LIBRARY, stage, ""))
                        .containsExactlyInAnyOrderElementsOf(TABLE.stream()
                                .filter(l -> l.stage().equals(stage.id())
                                        && l.given().isEmpty())
                                .map(l -> l.kind() + " " + l.states())
                                .toList()));
    }
}
