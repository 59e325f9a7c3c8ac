package baywright.safety;

import baywright.plan.Proof;
import baywright.plan.Step;
import baywright.plan.StepWork;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * When and on which day a step is worked: as a timetable says, or without one, one step after the other. Where the plan fixes a later
 * start, the plan's own clock counts up to it, as long as it keeps within a day; after the last fixed start, and where the
 * clock runs into the night, a day's work from the hour of the job's start counts, waits respected. Weekends are not known.
 */
final class DayBook {

    /**
     * Work on a step within a day.
     *
     * @param from  when it begins
     * @param to    when it ends or is broken off, on the same day or at its midnight
     * @param share of the step's hands-on time, above 0 to 1
     * @param people ids of who does it; empty: nobody was named
     * @param bay   id of the bay; empty: none is known
     */
    record Stint(StepWork work, LocalDateTime from, LocalDateTime to, double share, List<String> people, String bay) {
        LocalDate day() {
            return from.toLocalDate();
        }
    }

    private static final double NOTHING = 1e-6;
    private static final double SECONDS = 60;

    private final SafetyCase all;
    private final Hazards hazards;
    private final List<Stint> stints = new ArrayList<>();
    private final Map<String, Proof.Slot> slots = new HashMap<>();
    private final Map<String, StepWork> works = new HashMap<>();
    private LocalDateTime now;

    private DayBook(SafetyCase all) {
        this.all = all;
        hazards = new Hazards(all);
        now = all.setting().start();
        all.proof().clock().forEach(slot -> slots.putIfAbsent(slot.step(), slot));
        all.work().steps().forEach(w -> works.putIfAbsent(w.step(), w));
    }

    static List<Stint> of(SafetyCase all) {
        DayBook book = new DayBook(all);
        if (!all.spells().isEmpty()) {
            return book.timed();
        }
        book.firstVehicle();
        for (int vehicle = 1; vehicle < all.vehicles(); vehicle++) {
            for (Step step : all.plan().steps()) {
                book.enter(step.id(), Optional.empty());
            }
        }
        return book.stints;
    }

    private List<Stint> timed() {
        for (Spell spell : all.spells()) {
            StepWork work = works.get(spell.step());
            if (work != null) {
                stints.add(new Stint(work, spell.from(), spell.to(), spell.share(), spell.people(), spell.bay()));
            }
        }
        return stints;
    }

    private void add(StepWork work, LocalDateTime from, LocalDateTime to, double share) {
        stints.add(new Stint(work, from, to, share, List.of(), hazards.bay(work)));
    }

    private void firstVehicle() {
        List<Step> steps = all.plan().steps();
        int lastFixed = -1;
        for (int i = 0; i < steps.size(); i++) {
            lastFixed = steps.get(i).at().isPresent() ? i : lastFixed;
        }
        boolean byClock = true;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            byClock = (byClock || step.at().isPresent()) && i < lastFixed && fitsItsDay(step.id());
            if (byClock) {
                byClock(step.id());
            } else {
                enter(step.id(), step.at());
            }
        }
    }

    private boolean fitsItsDay(String step) {
        Proof.Slot slot = slots.get(step);
        if (slot == null) {
            return false;
        }
        LocalDateTime from = later(all.setting().start(), slot.start().doubleValue());
        LocalDateTime to = later(all.setting().start(), slot.end().doubleValue());
        return !from.isBefore(opening(from)) && to.toLocalDate().equals(from.toLocalDate());
    }

    private void byClock(String step) {
        StepWork work = works.get(step);
        Proof.Slot slot = slots.get(step);
        LocalDateTime from = later(all.setting().start(), slot.start().doubleValue());
        now = later(all.setting().start(), slot.end().doubleValue());
        if (work != null) {
            add(work, from, now, 1);
        }
    }

    private void enter(String step, Optional<LocalDateTime> at) {
        StepWork work = works.get(step);
        if (work == null) {
            return;
        }
        double waited = slots.containsKey(step) ? slots.get(step).waited().doubleValue() : 0;
        double minutes = work.elapsedMinutes().doubleValue();
        double day = all.settings().day().minutes();
        now = at.orElseGet(() -> notBeforeOpening(later(now, waited)));
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
            LocalDateTime from = now;
            now = later(now, taken);
            add(work, from, now, minutes > NOTHING ? taken / minutes : 1);
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
