package baywright.cli;

import baywright.safety.PersonDay;
import baywright.safety.SafetySettings;
import baywright.site.Numbers;
import baywright.site.Site;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What each person takes in on each day of a timetable, beside what a day may bring. */
final class ExposureTable {

    private static final String INDENT = "  ";

    private final Session session;
    private final SafetySettings settings;
    private final Numbers numbers;
    private final List<PersonDay> days;

    ExposureTable(Session session, Site site, List<PersonDay> days) {
        this.session = session;
        settings = site.shop().safety();
        numbers = new Numbers(site.shop().locale());
        this.days = days;
    }

    /** Nothing when nobody is exposed to anything. */
    void print() {
        if (days.isEmpty()) {
            return;
        }
        session.console().out().println();
        session.say("timetable.exposure");
        Table table = new Table(
                session.text("safety.day"),
                session.text("safety.hand"),
                ">" + session.text("safety.vibration"),
                ">" + session.text("safety.worn"),
                ">" + session.text("timetable.vapour"));
        for (PersonDay day : days) {
            table.add(
                    numbers.day(day.day()),
                    day.name(),
                    day.vibration().isEmpty() ? "-" : figure(day.dailyVibration(), " m/s²"),
                    day.noise().isEmpty() ? "-" : figure(day.protectedNoise(), " dB(A)"),
                    day.vapour() > 0 ? figure(day.vapour(), " %") : "-");
        }
        table.print(session.console(), INDENT);
        String kept = session.text(
                "timetable.exposure.limits",
                numbers.fixed(BigDecimal.valueOf(settings.vibration().limit()), 1),
                numbers.fixed(BigDecimal.valueOf(settings.noise().limit()), 1));
        Wrap.lines(kept, Console.WIDTH).forEach(session.console().out()::println);
    }

    private String figure(double value, String unit) {
        return numbers.fixed(BigDecimal.valueOf(value), 1) + unit;
    }

    ArrayNode json() {
        ArrayNode all = Answers.array();
        for (PersonDay day : days) {
            ObjectNode one = all.addObject();
            one.put("day", day.day().toString());
            one.put("person", day.name());
            putDoses(one, day);
            one.put("vapourPercent", rounded(day.vapour()));
        }
        return all;
    }

    /** What a person takes in on a day by vibration and noise. */
    static void putDoses(ObjectNode one, PersonDay day) {
        one.put("vibration", rounded(day.dailyVibration()));
        one.put("points", rounded(day.vibrationPoints()));
        if (!day.noise().isEmpty()) {
            one.put("noise", rounded(day.dailyNoise()));
            one.put("noiseUnderProtector", rounded(day.protectedNoise()));
        }
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    }
}
