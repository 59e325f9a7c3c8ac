package baywright.safety;

import baywright.plan.Proof;
import baywright.plan.Step;
import baywright.plan.StepWork;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which day a step falls on until there is a timetable: one step after the other, a day's work from the hour of the job's
 * start, waits of the proof's clock respected; a step with a fixed start stands on its day. Weekends are not known.
 */
final class DayBook {

    /**
     * Work on a step within a day.
     *
     * @param share of the step's hands-on time, above 0 to 1
     */
    record Stint(StepWork work, LocalDate day, double share) {}

    private static final double NOTHING = 1e-6;
    private static final double SECONDS = 60;

    private final SafetyCase all;
    private final List<Stint> stints = new ArrayList<>();
    private LocalDateTime now;

    private DayBook(SafetyCase all) {
        this.all = all;
        now = all.setting().start();
    }

    static List<Stint> of(SafetyCase all) {
        DayBook book = new DayBook(all);
        Map<String, BigDecimal> waits = new HashMap<>();
        for (Proof.Slot slot : all.proof().clock()) {
            waits.putIfAbsent(slot.step(), slot.waited());
        }
        Map<String, StepWork> works = new HashMap<>();
        all.work().steps().forEach(w -> works.putIfAbsent(w.step(), w));
        for (int vehicle = 0; vehicle < all.vehicles(); vehicle++) {
            for (Step step : all.plan().steps()) {
                StepWork work = works.get(step.id());
                if (work != null) {
                    Optional<LocalDateTime> at = vehicle == 0 ? step.at() : Optional.empty();
                    book.enter(work, at, waits.getOrDefault(step.id(), BigDecimal.ZERO));
                }
            }
        }
        return book.stints;
    }

    private void enter(StepWork work, Optional<LocalDateTime> at, BigDecimal waited) {
        double minutes = work.elapsedMinutes().doubleValue();
        double day = all.settings().day().minutes();
        now = at.orElseGet(() -> notBeforeOpening(later(now, waited.doubleValue())));
        LocalDateTime end = end(now);
        if (at.isPresent()) {
            LocalDateTime own = later(now, Math.min(minutes, day));
            end = own.isAfter(end) ? own : end;
        }
        double left = minutes;
        do {
            if (left > NOTHING && !now.isBefore(end)) {
                now = opening(now).plusDays(1);
                end = end(now);
            }
            double room = Duration.between(now, end).toSeconds() / SECONDS;
            double taken = Math.min(left, Math.max(room, 0));
            stints.add(new Stint(work, now.toLocalDate(), minutes > NOTHING ? taken / minutes : 1));
            now = later(now, taken);
            left -= taken;
            if (left > NOTHING && taken < 1) {
                now = end;
            }
        } while (left > NOTHING);
    }

    private LocalDateTime opening(LocalDateTime time) {
        return time.toLocalDate().atTime(all.setting().start().toLocalTime());
    }

    private LocalDateTime notBeforeOpening(LocalDateTime time) {
        LocalDateTime opening = opening(time);
        return time.isBefore(opening) ? opening : time;
    }

    private LocalDateTime end(LocalDateTime time) {
        return opening(time).plusMinutes(all.settings().day().minutes());
    }

    private static LocalDateTime later(LocalDateTime time, double minutes) {
        return time.plusSeconds(Math.round(minutes * SECONDS));
    }
}
