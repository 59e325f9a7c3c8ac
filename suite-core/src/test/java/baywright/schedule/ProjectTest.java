package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProjectTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void anActivityThatCanNeverRunIsNamed(int capacity) {
        Activity wide = Activity.of("wide", 2, Need.of(0, 3));
        assertThatThrownBy(() -> new Project(
                        List.of(wide),
                        List.of(Resource.of("people", capacity)),
                        List.of(),
                        List.of(),
                        Goal.end(0),
                        100))
                .hasMessage("activity wide can never run: it needs 1 with 3 of [people], and 0 have so much");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 1})
    void aWaitNamesActivitiesThatThereAre(int other) {
        assertThatThrownBy(() -> new Project(
                        List.of(Activity.of("a", 1)),
                        List.of(),
                        List.of(Lag.after(0, other)),
                        List.of(),
                        Goal.end(0),
                        100))
                .hasMessageContaining("got number " + other);
    }

    @Test
    void idsAreUnique() {
        assertThatThrownBy(() -> new Project(
                        List.of(Activity.of("a", 1), Activity.of("a", 2)),
                        List.of(),
                        List.of(),
                        List.of(),
                        Goal.end(0),
                        100))
                .hasMessage("the id a is given twice");
    }
}
