package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class HoursTest {

    private static final Hours SHIFTS = new Hours(List.of(new Window(480, 720), new Window(780, 1020)));

    @Test
    void workWithoutBreakFitsIntoOneWindow() {
        assertThat(SHIFTS.startWithin(0, 240)).hasValue(480);
        assertThat(SHIFTS.startWithin(481, 240)).hasValue(780);
        assertThat(SHIFTS.startWithin(781, 240)).isEmpty();
    }

    @Test
    void workWithBreaksPausesWhileClosed() {
        assertThat(SHIFTS.end(700, 20)).hasValue(720);
        assertThat(SHIFTS.end(700, 21)).hasValue(781);
        assertThat(SHIFTS.end(700, 261)).isEmpty();
    }

    @Test
    void openMinutesAreCounted() {
        assertThat(SHIFTS.openBefore(480)).isZero();
        assertThat(SHIFTS.openBefore(800)).isEqualTo(260);
        assertThat(SHIFTS.openMinute(0)).hasValue(480);
        assertThat(SHIFTS.openMinute(240)).hasValue(780);
        assertThat(SHIFTS.openMinute(480)).isEmpty();
    }

    @Test
    void windowsMustNotTouch() {
        assertThatThrownBy(() -> new Hours(List.of(new Window(0, 5), new Window(5, 7))))
                .hasMessageContaining("gaps between");
    }
}
