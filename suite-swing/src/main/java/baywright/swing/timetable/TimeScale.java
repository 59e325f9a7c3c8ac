package baywright.swing.timetable;

import baywright.schedule.OpeningTimes;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where a moment lies on a chart. Minutes that really pass are equally wide, so that a clock change keeps the length of work;
 * stretches in which nothing is open and nothing goes on are pressed together.
 */
final class TimeScale {

    /** Shorter closed stretches, such as a break, keep their width. */
    private static final int PRESSED_ABOVE = 90;

    private static final int PRESSED_LEAST = 45;
    private static final double PRESSED = 1 / 12.0;
    private static final double HOUR = 60;
    private static final int QUARTER = 15;

    /** From a minute to another and from a place to another. */
    record Stretch(long from, long to, double left, double right, boolean pressed) {}

    /** A part of the chart's width. */
    record Part(double left, double right) {}

    /** From a moment to another, local time. */
    record Span(LocalDateTime from, LocalDateTime to) {}

    private final ZoneId zone;
    private final Instant origin;
    private final LocalDate first;
    private final LocalDate last;
    private final OpeningTimes hours;
    private final double perHour;
    private final List<Stretch> stretches = new ArrayList<>();

    /**
     * A scale of whole days.
     *
     * @param first   its first day
     * @param last    its last day
     * @param hours   when the shop is open
     * @param busy    what must not be pressed together beside the hours of the shop
     * @param perHour width of an hour, above 0
     */
    TimeScale(ZoneId zone, LocalDate first, LocalDate last, OpeningTimes hours, List<Span> busy, double perHour) {
        this.zone = zone;
        this.first = first;
        this.last = last;
        this.hours = hours;
        this.perHour = perHour;
        origin = first.atStartOfDay(zone).toInstant();
        long end = minute(last.plusDays(1).atStartOfDay());
        long at = 0;
        double left = 0;
        for (long[] open : merged(busy)) {
            long from = Math.max(at, open[0]);
            long to = Math.min(end, open[1]);
            if (to > from) {
                left = add(at, from, left, true);
                left = add(from, to, left, false);
                at = to;
            }
        }
        add(at, end, left, true);
    }

    private double add(long from, long to, double left, boolean closed) {
        if (to <= from) {
            return left;
        }
        long minutes = to - from;
        boolean pressed = closed && minutes > PRESSED_ABOVE;
        double wide = pressed ? Math.max(PRESSED_LEAST, minutes * PRESSED) : minutes;
        double right = left + wide * perHour / HOUR;
        stretches.add(new Stretch(from, to, left, right, pressed));
        return right;
    }

    private List<long[]> merged(List<Span> busy) {
        List<long[]> all = Stream.concat(open(), busy.stream())
                .map(s -> new long[] {minute(s.from()), minute(s.to())})
                .sorted(Comparator.comparingLong(s -> s[0]))
                .toList();
        List<long[]> merged = new ArrayList<>();
        for (long[] next : all) {
            long[] before = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (before != null && next[0] <= before[1]) {
                before[1] = Math.max(before[1], next[1]);
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    private Stream<Span> open() {
        return days().stream().flatMap(day -> hours.on(day).stream().map(span -> span(day, span)));
    }

    private static Span span(LocalDate day, OpeningTimes.Span span) {
        LocalDate end = span.to().equals(LocalTime.MIDNIGHT) ? day.plusDays(1) : day;
        return new Span(day.atTime(span.from()), end.atTime(span.to()));
    }

    private long minute(LocalDateTime at) {
        return Duration.between(origin, at.atZone(zone).toInstant()).toMinutes();
    }

    /** Its days. */
    List<LocalDate> days() {
        return first.datesUntil(last.plusDays(1)).toList();
    }

    double perHour() {
        return perHour;
    }

    double width() {
        return stretches.get(stretches.size() - 1).right();
    }

    /** Where a moment lies; one before or after the chart at its edge. */
    double x(LocalDateTime at) {
        long minute = minute(at);
        Stretch in = stretches.get(0);
        for (Stretch stretch : stretches) {
            if (stretch.from() > minute) {
                break;
            }
            in = stretch;
        }
        double share = (minute - in.from()) / (double) (in.to() - in.from());
        return in.left() + Math.min(1, Math.max(0, share)) * (in.right() - in.left());
    }

    /** The moment at a place, to the quarter of an hour of the clock. */
    LocalDateTime quarterAt(double x) {
        Stretch in = stretches.get(0);
        for (Stretch stretch : stretches) {
            if (stretch.left() > x) {
                break;
            }
            in = stretch;
        }
        double share = Math.min(1, Math.max(0, (x - in.left()) / (in.right() - in.left())));
        long minute = in.from() + Math.round(share * (in.to() - in.from()));
        return quarter(LocalDateTime.ofInstant(origin.plus(Duration.ofMinutes(minute)), zone));
    }

    /** The nearest quarter of an hour. */
    static LocalDateTime quarter(LocalDateTime at) {
        LocalDateTime hour = at.withMinute(0).withSecond(0).withNano(0);
        return hour.plusMinutes(QUARTER * Math.round(at.getMinute() / (double) QUARTER));
    }

    /** The next quarter of an hour after a moment, or the one before it. */
    static LocalDateTime beside(LocalDateTime at, boolean later) {
        int past = at.getMinute() % QUARTER;
        return later ? at.plusMinutes(QUARTER - past) : at.minusMinutes(past == 0 ? QUARTER : past);
    }

    /** Where a day lies. */
    Part day(LocalDate day) {
        return new Part(x(day.atStartOfDay()), x(day.plusDays(1).atStartOfDay()));
    }

    /** Where the shop is closed. */
    List<Part> closed() {
        List<Part> closed = new ArrayList<>();
        double at = 0;
        for (Span open : open().toList()) {
            double left = x(open.from());
            if (left > at) {
                closed.add(new Part(at, left));
            }
            at = x(open.to());
        }
        if (width() > at) {
            closed.add(new Part(at, width()));
        }
        return closed;
    }

    /** Full steps of so many minutes that lie where the scale is not pressed together. */
    List<LocalDateTime> ticks(int minutes) {
        List<LocalDateTime> ticks = new ArrayList<>();
        for (LocalDate day : days()) {
            for (int minute = 0; minute < 24 * HOUR; minute += minutes) {
                LocalDateTime tick = day.atStartOfDay().plusMinutes(minute);
                if (!isPressed(minute(tick))) {
                    ticks.add(tick);
                }
            }
        }
        return ticks;
    }

    private boolean isPressed(long minute) {
        return stretches.stream().anyMatch(s -> s.pressed() && s.from() <= minute && minute < s.to());
    }
}
