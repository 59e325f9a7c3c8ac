package baywright.swing.timetable;

import baywright.plan.Step;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.site.Numbers;
import baywright.site.TimetableText;
import baywright.swing.api.Readout;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says the entries of a timetable in the window's words. */
final class EntryWords {

    private final Readout readout;
    private final TimetableText texts;
    private final Map<String, Job> jobs = new HashMap<>();
    private final Map<String, Integer> places = new HashMap<>();

    EntryWords(Timed timed, Readout readout) {
        this.readout = readout;
        texts = new TimetableText(timed.site(), timed.jobs(), new Numbers(readout.locale()), readout.locale());
        for (Job job : timed.jobs()) {
            places.put(job.id(), places.size());
            jobs.put(job.id(), job);
        }
    }

    TimetableText texts() {
        return texts;
    }

    Map<String, Integer> places() {
        return places;
    }

    /** The start that the plan fixes, if it fixes one. */
    Optional<LocalDateTime> fixed(Entry entry) {
        return entry.doing() == Doing.WORK
                ? jobs.get(entry.job()).plan().step(entry.step()).flatMap(Step::at)
                : Optional.empty();
    }

    /** Short, for a bar: the job's number where there are several, the step, its stage. */
    String label(Entry entry) {
        String number = jobs.size() > 1 ? new JobMark(places.get(entry.job())).number() + " " : "";
        return number + entry.step() + " " + texts.stage(entry);
    }

    /** Everything that the chart shows of it. */
    String says(Entry entry) {
        List<String> parts = new ArrayList<>();
        parts.add(entry.step() + " " + texts.what(entry));
        parts.add(jobs.get(entry.job()).title());
        parts.add(readout.day(entry.from().toLocalDate()) + ", " + texts.time(entry));
        if (entry.doing() != Doing.STANDING) {
            parts.add(TimetableWorkbench.TEXTS.of("says.worked", readout.minutes(BigDecimal.valueOf(entry.minutes()))));
        }
        if (!entry.people().isEmpty()) {
            parts.add(texts.people(entry));
        }
        if (!entry.bay().isEmpty()) {
            parts.add(texts.bay(entry.bay()));
        }
        if (entry.critical()) {
            parts.add(TimetableWorkbench.TEXTS.of("says.critical"));
        }
        if (entry.movedFrom().isEmpty()) {
            fixed(entry).ifPresent(at -> parts.add(TimetableWorkbench.TEXTS.of("says.fixed")));
        }
        return String.join(" · ", parts);
    }
}
