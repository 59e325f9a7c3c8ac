package baywright.cli;

import baywright.schedule.Help;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopTimetable;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** A timetable in JSON. */
final class TimetableJson {

    private TimetableJson() {}

    static ObjectNode of(
            ShopTimetable timetable, List<Help> helps, Optional<Help> onADay, Optional<ShopChance> chances) {
        ObjectNode answer = Answers.object();
        answer.put("timed", true);
        answer.put("inTime", timetable.keepsPromises());
        answer.put("proved", timetable.proved());
        answer.put("gap", Answers.figure(BigDecimal.valueOf(timetable.gap())));
        answer.set("jobs", ends(timetable.ends()));
        ArrayNode entries = answer.putArray("entries");
        timetable.entries().forEach(e -> entries.add(entry(e)));
        ArrayNode help = answer.putArray("wouldHelp");
        helps.forEach(each -> help.add(help(each)));
        onADay.ifPresent(least -> answer.set("leastOnADay", help(least)));
        chances.ifPresent(c -> answer.set("chance", chance(c)));
        return answer;
    }

    private static ArrayNode ends(List<ShopTimetable.JobEnd> ends) {
        ArrayNode all = Answers.object().arrayNode();
        for (ShopTimetable.JobEnd end : ends) {
            ObjectNode one = all.addObject();
            one.put("job", end.job());
            one.put("ready", end.end().toString());
            end.wanted().ifPresent(w -> one.put("wanted", w.toString()));
            one.put("lateMinutes", end.lateMinutes());
        }
        return all;
    }

    private static ObjectNode help(Help help) {
        ObjectNode one = Answers.object();
        one.put("more", Answers.word(help.kind()));
        one.put("of", help.what());
        help.day().ifPresent(day -> one.put("day", day.toString()));
        one.put("gainedMinutes", help.gained());
        one.put("lateMinutes", help.late());
        one.set("jobs", ends(help.ends()));
        return one;
    }

    private static ObjectNode chance(ShopChance chances) {
        ObjectNode chance = Answers.object();
        chance.put("runs", chances.runs());
        chance.put("seed", chances.seed());
        ArrayNode each = chance.putArray("jobs");
        chances.jobs().forEach(job -> each.add(ChancePrinter.json(job)));
        return chance;
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
