package baywright.swing.timetable;

import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.workspace.Shop;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A row of the chart: a person, a bay, or what belongs to none.
 *
 * @param title what it is called
 * @param bars  in order of time; what overlaps lies in different lanes
 * @param lanes how many lanes of work; 0 only where there are nothing but waits
 * @param waits how many lanes of waits, from 0; they lie below
 */
record ChartRow(String title, List<Bar> bars, int lanes, int waits) {

    /** What rows stand for. */
    enum By {
        PEOPLE,
        BAYS
    }

    /**
     * A bar.
     *
     * @param lane from 0, among lanes of its own kind
     */
    record Bar(Entry entry, int lane) {
        boolean isWait() {
            return entry.doing() == Doing.STANDING;
        }

        /** Whether it stands for the same part of the same step as another one. */
        boolean isSame(Entry other) {
            return entry.job().equals(other.job())
                    && entry.vehicle() == other.vehicle()
                    && entry.step().equals(other.step())
                    && entry.doing() == other.doing();
        }
    }

    ChartRow {
        bars = List.copyOf(bars);
    }

    /**
     * The rows of a timetable: every person or bay of the shop, then what belongs to none where there is such.
     *
     * @param others title of that row
     * @param waits  title of the row of waits that belong to none
     */
    static List<ChartRow> of(ShopTimetable timetable, Shop shop, By by, String others, String waits) {
        Map<String, String> titles = new LinkedHashMap<>();
        if (by == By.PEOPLE) {
            shop.people().forEach(p -> titles.put(p.id(), p.name()));
        } else {
            shop.bays().forEach(b -> titles.put(b.id(), b.title()));
        }
        Map<String, List<Entry>> entries = new LinkedHashMap<>();
        titles.keySet().forEach(id -> entries.put(id, new ArrayList<>()));
        List<Entry> none = new ArrayList<>();
        List<Entry> waiting = new ArrayList<>();
        for (Entry entry : timetable.entries()) {
            List<String> ids = by == By.PEOPLE
                    ? entry.people()
                    : List.of(entry.bay()).stream().filter(b -> !b.isEmpty()).toList();
            ids.forEach(
                    id -> entries.computeIfAbsent(id, i -> new ArrayList<>()).add(entry));
            if (ids.isEmpty()) {
                (entry.doing() == Doing.STANDING ? waiting : none).add(entry);
            }
        }
        List<ChartRow> rows = new ArrayList<>();
        entries.forEach((id, some) -> rows.add(laid(titles.getOrDefault(id, id), some)));
        if (!none.isEmpty()) {
            rows.add(laid(others, none));
        }
        if (!waiting.isEmpty()) {
            rows.add(laid(waits, waiting));
        }
        return rows;
    }

    private static ChartRow laid(String title, List<Entry> entries) {
        List<LocalDateTime> works = new ArrayList<>();
        List<LocalDateTime> waits = new ArrayList<>();
        List<Bar> bars = new ArrayList<>();
        for (Entry entry : entries) {
            List<LocalDateTime> ends = entry.doing() == Doing.STANDING ? waits : works;
            int lane = IntStream.range(0, ends.size())
                    .filter(i -> !ends.get(i).isAfter(entry.from()))
                    .findFirst()
                    .orElse(ends.size());
            if (lane == ends.size()) {
                ends.add(entry.to());
            } else {
                ends.set(lane, entry.to());
            }
            bars.add(new Bar(entry, lane));
        }
        boolean onlyWaits = works.isEmpty() && !waits.isEmpty();
        return new ChartRow(title, bars, onlyWaits ? 0 : Math.max(1, works.size()), waits.size());
    }
}
