package baywright.workspace;

import baywright.schedule.OpeningTimes;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** {@code hours} of a shop or a person to {@link OpeningTimes}. */
final class HoursJson {

    private static final Pattern SPAN = Pattern.compile("([01]\\d|2[0-3]):[0-5]\\d-(([01]\\d|2[0-3]):[0-5]\\d|24:00)");
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private HoursJson() {}

    static OpeningTimes read(Fields in) {
        int before = in.report().count();
        Map<DayOfWeek, List<OpeningTimes.Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            List<OpeningTimes.Span> spans = spans(in, day.name().toLowerCase(Locale.ROOT));
            if (!spans.isEmpty()) {
                week.put(day, spans);
            }
        }
        Set<LocalDate> closed = closed(in);
        boolean sound = in.report().count() == before;
        in.done();
        if (week.isEmpty()) {
            if (sound) {
                in.refuse("monday", "no day has hours", "give at least one such as [\"08:00-12:00\", \"13:00-17:00\"]");
            }
            return OpeningTimes.USUAL;
        }
        return new OpeningTimes(week, closed);
    }

    private static List<OpeningTimes.Span> spans(Fields in, String day) {
        List<OpeningTimes.Span> spans = new ArrayList<>();
        for (String text : in.texts(day, SPAN, "a span such as \"08:00-12:00\"")) {
            if (!SPAN.matcher(text).matches()) {
                continue;
            }
            LocalTime from = LocalTime.parse(text.substring(0, 5));
            String until = text.substring(6);
            LocalTime to = until.equals("24:00") ? LocalTime.MIDNIGHT : LocalTime.parse(until);
            boolean ends = to.equals(LocalTime.MIDNIGHT) ? until.equals("24:00") : to.isAfter(from);
            LocalTime before =
                    spans.isEmpty() ? null : spans.get(spans.size() - 1).to();
            boolean follows = before == null || (!before.equals(LocalTime.MIDNIGHT) && from.isAfter(before));
            if (ends && follows) {
                spans.add(new OpeningTimes.Span(from, to));
            } else {
                in.refuse(
                        day,
                        "the span " + Shown.quoted(text)
                                + (ends ? " does not come after the one before" : " does not end after it begins"),
                        "give spans of the day in order of time, with a break between them");
            }
        }
        return spans;
    }

    private static Set<LocalDate> closed(Fields in) {
        Set<LocalDate> closed = new TreeSet<>();
        for (String text : in.texts("closed", DATE, "a date such as \"2026-12-25\"")) {
            try {
                closed.add(LocalDate.parse(text));
            } catch (DateTimeException e) {
                if (DATE.matcher(text).matches()) {
                    in.refuse("closed", "there is no day " + Shown.quoted(text), "give a day of the calendar");
                }
            }
        }
        return closed;
    }
}
