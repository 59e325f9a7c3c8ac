package baywright.cli;

import baywright.schedule.Help;
import baywright.schedule.ShopTimetable;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;

/** A timetable in JSON. */
final class TimetableJson {

    private TimetableJson() {}

    static ObjectNode of(ShopTimetable timetable, List<Help> helps) {
        ObjectNode answer = Answers.object();
        answer.put("timed", true);
        answer.put("inTime", timetable.keepsPromises());
        answer.put("proved", timetable.proved());
        answer.put("gap", Answers.figure(BigDecimal.valueOf(timetable.gap())));
        ArrayNode ends = answer.putArray("jobs");
        for (ShopTimetable.JobEnd end : timetable.ends()) {
            ObjectNode one = ends.addObject();
            one.put("job", end.job());
            one.put("ready", end.end().toString());
            end.wanted().ifPresent(w -> one.put("wanted", w.toString()));
            one.put("lateMinutes", end.lateMinutes());
        }
        ArrayNode entries = answer.putArray("entries");
        timetable.entries().forEach(e -> entries.add(entry(e)));
        ArrayNode help = answer.putArray("wouldHelp");
        for (Help each : helps) {
            ObjectNode one = help.addObject();
            one.put("more", Answers.word(each.kind()));
            one.put("of", each.what());
            one.put("gainedMinutes", each.gained());
            one.put("lateMinutes", each.late());
        }
        return answer;
    }

    private static ObjectNode entry(ShopTimetable.Entry entry) {
        ObjectNode one = Answers.object();
        one.put("job", entry.job());
        one.put("vehicle", entry.vehicle());
        one.put("step", entry.step());
        one.put("doing", Answers.word(entry.doing()));
        one.put("from", entry.from().toString());
        one.put("to", entry.to().toString());
        ArrayNode people = one.putArray("people");
        entry.people().forEach(people::add);
        one.put("bay", entry.bay());
        one.put("critical", entry.critical());
        one.put("waitsFor", entry.waitsFor());
        entry.movedFrom().ifPresent(at -> one.put("movedFrom", at.toString()));
        return one;
    }
}
