package baywright.swing.timetable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.schedule.OpeningTimes;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class TimeScaleTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final LocalDate MONDAY = LocalDate.of(2026, 12, 7);

    private static TimeScale scale(LocalDate first, LocalDate last, List<TimeScale.Span> busy) {
        return new TimeScale(LONDON, first, last, OpeningTimes.USUAL, busy, 60);
    }

    /** From 00:00 to 08:00 pressed to 45 min (a twelfth would be 40), open or short break to 17:00: 45 + 90 = 135. */
    @Test
    void openHoursAreEquallyWideAndNightsPressed() {
        TimeScale scale = scale(MONDAY, MONDAY.plusDays(1), List.of());
        assertThat(scale.x(MONDAY.atTime(8, 0))).isCloseTo(45, within(1e-9));
        assertThat(scale.x(MONDAY.atTime(9, 30))).isCloseTo(135, within(1e-9));
        assertThat(scale.x(MONDAY.atTime(17, 0))).isCloseTo(45 + 540, within(1e-9));
        // 15 h of night are a twelfth wide: 75 min
        assertThat(scale.x(MONDAY.plusDays(1).atTime(8, 0))).isCloseTo(45 + 540 + 75, within(1e-9));
    }

    @Test
    void aPlaceGivesItsMomentBackToTheQuarter() {
        TimeScale scale = scale(MONDAY, MONDAY.plusDays(4), List.of());
        for (LocalDate day : scale.days()) {
            for (int quarter = 0; quarter < 36; quarter++) {
                LocalDateTime at = day.atTime(8, 0).plusMinutes(15L * quarter);
                assertThat(scale.quarterAt(scale.x(at))).isEqualTo(at);
                assertThat(scale.quarterAt(scale.x(at.plusMinutes(6)))).isEqualTo(at);
            }
        }
    }

    @Test
    void laterIsNeverFurtherLeft() {
        TimeScale scale = scale(MONDAY, MONDAY.plusDays(8), List.of());
        double before = -1;
        for (LocalDateTime at = MONDAY.atStartOfDay();
                at.isBefore(MONDAY.plusDays(9).atStartOfDay());
                at = at.plusMinutes(7)) {
            assertThat(scale.x(at)).isGreaterThan(before);
            before = scale.x(at);
        }
    }

    /** Work at night is not pressed. */
    @Test
    void whatGoesOnAtNightKeepsItsWidth() {
        LocalDateTime from = MONDAY.atTime(20, 0);
        TimeScale scale = scale(MONDAY, MONDAY.plusDays(1), List.of(new TimeScale.Span(from, from.plusHours(2))));
        assertThat(scale.x(from.plusHours(2)) - scale.x(from)).isCloseTo(120, within(1e-9));
    }

    /** Clocks in London go from 01:00 to 02:00 on 29 March 2026 (Directive 2000/84/EC sets the hour; the Summer Time Order 2002 for the United Kingdom). */
    @Test
    void anHourThatAClockChangeLeavesOutHasNoWidth() {
        LocalDate day = LocalDate.of(2026, 3, 29);
        TimeScale scale = scale(day, day, List.of(new TimeScale.Span(day.atStartOfDay(), day.atTime(6, 0))));
        assertThat(scale.x(day.atTime(6, 0)) - scale.x(day.atStartOfDay())).isCloseTo(300, within(1e-9));
    }

    @Test
    void closedHoursAreTheRestOfTheDay() {
        TimeScale scale = scale(MONDAY, MONDAY, List.of());
        assertThat(scale.closed()).hasSize(3);
        assertThat(scale.closed().get(1).left()).isEqualTo(scale.x(MONDAY.atTime(12, 0)));
        assertThat(scale.closed().get(1).right()).isEqualTo(scale.x(MONDAY.atTime(13, 0)));
    }

    @Test
    void theNextQuarterIsNextEvenFromBetweenTwo() {
        assertThat(TimeScale.beside(MONDAY.atTime(8, 7), true)).isEqualTo(MONDAY.atTime(8, 15));
        assertThat(TimeScale.beside(MONDAY.atTime(8, 7), false)).isEqualTo(MONDAY.atTime(8, 0));
        assertThat(TimeScale.beside(MONDAY.atTime(8, 0), false)).isEqualTo(MONDAY.atTime(7, 45));
        assertThat(TimeScale.beside(MONDAY.atTime(8, 0), true)).isEqualTo(MONDAY.atTime(8, 15));
    }
}
