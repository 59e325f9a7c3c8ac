package baywright.swing.timetable;

import baywright.schedule.OpeningTimes;
import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.schedule.ShopTimetable.JobEnd;
import baywright.schedule.ShopTimetable.Spell;
import baywright.workspace.Shop;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a chart shows.
 *
 * @param shop      whose hours and time zone count
 * @param timetable when everything is done
 * @param rows      people or bays
 * @param places    place of each job among those shown, from 0, by id
 * @param fixed     entries whose start the plan fixes
 * @param p80       by when a job is ready in four of five simulated runs, by id
 * @param label     short words on a bar
 * @param says      a bar in full
 */
record ChartPicture(
        Shop shop,
        ShopTimetable timetable,
        List<ChartRow> rows,
        Map<String, Integer> places,
        Set<Entry> fixed,
        Map<String, LocalDateTime> p80,
        Function<Entry, String> label,
        Function<Entry, String> says) {

    ChartPicture {
        rows = List.copyOf(rows);
        places = Map.copyOf(places);
        fixed = Set.copyOf(fixed);
        p80 = Map.copyOf(p80);
    }

    JobMark mark(String job) {
        return new JobMark(places.get(job));
    }

    /** The scale from the first day to one day after whatever is shown last. */
    TimeScale scale(double perHour) {
        OpeningTimes hours = shop.calendar().hours();
        return new TimeScale(shop.timeZone(), first(), last().plusDays(1), hours, busy(), perHour);
    }

    private LocalDate first() {
        return moments().min(LocalDateTime::compareTo).orElseThrow().toLocalDate();
    }

    private LocalDate last() {
        return moments().max(LocalDateTime::compareTo).orElseThrow().toLocalDate();
    }

    private Stream<LocalDateTime> moments() {
        Stream<LocalDateTime> ends =
                timetable.ends().stream().flatMap(e -> Stream.concat(Stream.of(e.end()), e.wanted().stream()));
        Stream<LocalDateTime> entries = timetable.entries().stream().flatMap(e -> Stream.of(e.from(), e.to()));
        return Stream.of(ends, entries, p80.values().stream()).flatMap(s -> s);
    }

    private List<TimeScale.Span> busy() {
        return timetable.entries().stream()
                .flatMap(e -> e.spells().stream())
                .map(s -> new TimeScale.Span(s.from(), s.to()))
                .toList();
    }

    /** The last bar of a job, after which its end may lie. */
    Optional<Entry> lastOf(JobEnd end) {
        return timetable.entries().stream()
                .filter(e -> e.job().equals(end.job()))
                .filter(e -> e.to().equals(end.end()))
                .reduce((one, other) -> other.doing() == Doing.WORK ? other : one);
    }

    /** The days on which an entry goes on; what stands goes on without a break. */
    static List<Spell> spells(Entry entry) {
        return entry.spells().isEmpty() ? List.of(new Spell(entry.from(), entry.to(), 0)) : entry.spells();
    }
}
