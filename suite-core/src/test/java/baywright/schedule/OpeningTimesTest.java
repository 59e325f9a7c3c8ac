package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpeningTimesTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static OpeningTimes daily(OpeningTimes.Span... spans) {
        Map<DayOfWeek, List<OpeningTimes.Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            week.put(day, List.of(spans));
        }
        return new OpeningTimes(week, Set.of());
    }

    private static OpeningTimes.Span span(int from, int to) {
        return new OpeningTimes.Span(LocalTime.of(from, 0), to == 24 ? LocalTime.MIDNIGHT : LocalTime.of(to, 0));
    }

    private static Instant midnight(LocalDate date, ZoneId zone) {
        return date.atStartOfDay(zone).toInstant();
    }

    /** Local time at which work ends that pauses while it is closed. */
    private static LocalDateTime end(OpeningTimes times, ZoneId zone, LocalDateTime start, int minutes) {
        Instant origin = midnight(start.toLocalDate(), zone);
        Hours hours = new Hours(times.windows(zone, origin, 14));
        int from = Math.toIntExact(
                Duration.between(origin, start.atZone(zone).toInstant()).toMinutes());
        int end = hours.end(hours.open(from).orElseThrow(), minutes).orElseThrow();
        return LocalDateTime.ofInstant(origin.plus(Duration.ofMinutes(end)), zone);
    }

    /** 10.5 h from Friday 14:00, then 24 h of cure through the night, then an hour: reckoned by hand. */
    @Test
    void workIsDoneInTheHoursOfTheShop() {
        LocalDateTime worked = end(OpeningTimes.USUAL, LONDON, LocalDateTime.parse("2026-01-09T14:00"), 630);
        assertThat(worked).isEqualTo("2026-01-12T16:30:00");
        LocalDateTime cured = worked.plusHours(24);
        assertThat(end(OpeningTimes.USUAL, LONDON, cured, 60)).isEqualTo("2026-01-14T08:30:00");
    }

    /**
     * The clocks go forward at 01:00 UTC on 29 March 2026 and back at 01:00 UTC on 25 October (Directive 2000/84/EC; for
     * the United Kingdom the Summer Time Order 2002), in the United States at 02:00 on 8 March and 1 November (Energy
     * Policy Act 2005).
     */
    @ParameterizedTest
    @CsvSource({
        "Europe/London, 2026-03-29T00:30, 2026-03-29T02:30",
        "Europe/London, 2026-10-25T00:30, 2026-10-25T01:30",
        "Europe/London, 2026-10-25T01:30, 2026-10-25T01:30",
        "America/New_York, 2026-03-08T01:30, 2026-03-08T03:30",
        "America/New_York, 2026-11-01T01:30, 2026-11-01T01:30",
        "Asia/Tokyo, 2026-03-29T00:30, 2026-03-29T01:30"
    })
    void anHourOfWorkTakesAnHourThroughAClockChange(String zone, LocalDateTime start, LocalDateTime end) {
        assertThat(end(daily(span(0, 24)), ZoneId.of(zone), start, 60)).isEqualTo(end);
    }

    /** A night from 22:00 to 06:00 is 7 h long when the clocks go forward and 9 h when they go back. */
    @ParameterizedTest
    @CsvSource({"2026-03-28, 7", "2026-10-24, 9", "2026-06-10, 8"})
    void aNightIsAsLongAsItReallyIs(LocalDate evening, int hours) {
        ZoneId berlin = ZoneId.of("Europe/Berlin");
        List<Window> windows = daily(span(0, 6), span(22, 24)).windows(berlin, midnight(evening, berlin), 2);
        Window night = windows.get(1);
        assertThat(night.to() - night.from()).isEqualTo(hours * 60);
    }

    @Test
    void closedDaysAreClosed() {
        OpeningTimes christmas = new OpeningTimes(OpeningTimes.USUAL.week(), Set.of(LocalDate.parse("2026-12-25")));
        assertThat(christmas.on(LocalDate.parse("2026-12-25"))).isEmpty();
        assertThat(end(christmas, LONDON, LocalDateTime.parse("2026-12-24T16:30"), 60))
                .isEqualTo("2026-12-28T08:30:00");
    }

    @Test
    void spansMustBeApart() {
        assertThatThrownBy(() -> daily(span(8, 12), span(12, 17))).hasMessageContaining("in order of time and apart");
        assertThatThrownBy(() -> span(12, 8)).hasMessageContaining("ends after it begins");
    }
}
