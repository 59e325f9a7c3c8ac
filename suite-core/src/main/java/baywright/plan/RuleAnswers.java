package baywright.plan;

import baywright.library.Fact;
import baywright.library.InputValues;
import baywright.library.Rule.Reach;
import baywright.library.StageTerms.Climate;
import baywright.plan.CompiledStep.Part;
import baywright.plan.RuleBook.Kind;
import baywright.plan.RuleBook.Question;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Value;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneFilm;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Answers what rules ask about the step at hand and one row, each as a whole number: a truth as 0 or 1, a time in ticks
 * with {@link Ticks#NEVER} for nothing, anything else by its number in the book.
 */
final class RuleAnswers {

    private final Prover prover;
    private final RuleBook book;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final Tracks tracks;
    private final RuleHistory history;
    private final long[] ends;
    private final Optional<PlannedFilm> planned;
    private final long[] scratch;
    private final long[] other;

    private int step;
    private CompiledStep at;
    private Part part;
    private long start;
    private String bay = "";
    private long[] gives;

    RuleAnswers(Prover prover, List<CompiledStep> steps, Tracks tracks, long[] ends) {
        this.prover = prover;
        book = prover.rules();
        states = prover.states();
        vehicle = prover.vehicle();
        this.tracks = tracks;
        this.ends = ends;
        history = new RuleHistory(book, vehicle, steps);
        planned = book.plansFilm() ? Optional.of(new PlannedFilm(steps, vehicle.rows())) : Optional.empty();
        scratch = new long[states.width()];
        other = new long[states.width()];
        gives = states.conditions();
    }

    /** Turns to a step's part; {@code gives} are the conditions of its bay. */
    void turnTo(int i, CompiledStep of, Part onPart, long begins, String inBay, long[] conditions) {
        step = i;
        at = of;
        part = onPart;
        start = begins;
        bay = inBay;
        gives = conditions;
    }

    /** Notes that the step is done. */
    void done(int i) {
        history.done(i, bay);
    }

    /** The raw value that a number stands for. */
    static Object decode(Kind kind, long code, List<Object> values) {
        return switch (kind) {
            case HOLDS, FOUND, LATER, USES, USED_SINCE -> code == 1;
            case SINCE_SET, SINCE, SINCE_USE ->
                code == Ticks.NEVER ? Value.NOTHING : new Quantity(Ticks.minutes(code), Unit.MINUTE);
            case COUNT -> BigDecimal.valueOf(code);
            default -> values.get((int) code);
        };
    }

    long of(Question question, int row) {
        return switch (question.kind()) {
            case HOLDS -> holds(question.index(), row, question.reach()) ? 1 : 0;
            case FOUND -> found(question.index(), row) ? 1 : 0;
            case SINCE_SET -> sinceSet(question.index(), row);
            case SINCE -> since(last(question, row));
            case COUNT ->
                reach(question, row) == Reach.ANYWHERE
                        ? history.countAnywhere(question.index())
                        : history.count(question.index(), row);
            case LAST -> stage(last(question, row));
            case NEXT -> stage(next(question, row));
            case LATER -> next(question, row) >= 0 ? 1 : 0;
            case LAST_INPUT -> lastInput(last(question, row), question.input());
            case INPUT -> input(at, question.input());
            case SURVEYED -> surveyed(question.name(), row);
            case USES -> contains(book.goodsOf(part.terms()), question.index()) ? 1 : 0;
            case USED_SINCE -> usedSince(question.index(), states.of(question.name()), row) ? 1 : 0;
            case SINCE_USE ->
                since(
                        reach(question, row) == Reach.ANYWHERE
                                ? history.lastUseAnywhere(question.index())
                                : history.lastUse(question.index(), row));
            case SETTING ->
                value(Optional.of(
                        question.name().equals("film-stop")
                                ? prover.film().limits().stopBelow()
                                : prover.film().limits().careBelow()));
            case NAMED -> named(question.name(), row);
        };
    }

    /** A step on the vehicle as a whole asks for the whole vehicle. */
    private Reach reach(Question question, int row) {
        return row == vehicle.vehicle() ? Reach.ANYWHERE : question.reach();
    }

    private boolean holds(int state, int row, Reach reach) {
        if (reach == Reach.ZONE || !states.isZoneScope(states.parts(state)[0])) {
            return holdsOn(state, row);
        }
        int[] rows = reach == Reach.NEAR ? vehicle.near(row) : vehicle.real();
        for (int one : rows) {
            tracks.settle(one, start);
            if (holdsOn(state, one)) {
                return true;
            }
        }
        return false;
    }

    private boolean holdsOn(int state, int row) {
        boolean whole = row == vehicle.vehicle();
        if (whole) {
            tracks.findOnVehicle(scratch, other);
        }
        for (int part : states.parts(state)) {
            boolean given = states.isCondition(part) && Bits.has(gives, part);
            boolean found = whole ? Bits.has(scratch, part) : tracks.holds(tracks.home(row, part), part);
            if (!given && !found) {
                return false;
            }
        }
        return true;
    }

    private boolean found(int state, int row) {
        for (int plain : states.parts(state)) {
            if (!prover.surveyed().holds(tracks.home(row, plain), plain)) {
                return false;
            }
        }
        return true;
    }

    private long sinceSet(int state, int row) {
        long latest = Long.MIN_VALUE;
        for (int plain : states.parts(state)) {
            int home = tracks.home(row, plain);
            if (!tracks.holds(home, plain) || tracks.setBy(home, plain) < 0) {
                return Ticks.NEVER;
            }
            latest = Math.max(latest, tracks.setAt(home, plain));
        }
        return Math.max(0, start - latest);
    }

    private long since(int done) {
        return done < 0 ? Ticks.NEVER : Math.max(0, start - ends[done]);
    }

    private int last(Question question, int row) {
        int set = question.index();
        if (question.sameBay()) {
            return history.lastInBay(set, bay);
        }
        return switch (reach(question, row)) {
            case ZONE -> history.last(set, row);
            case ANYWHERE -> history.lastAnywhere(set);
            case NEAR -> {
                int latest = -1;
                for (int near : vehicle.near(row)) {
                    latest = Math.max(latest, history.last(set, near));
                }
                yield latest;
            }
        };
    }

    private int next(Question question, int row) {
        int set = question.index();
        return switch (reach(question, row)) {
            case ZONE -> history.next(set, row, step);
            case ANYWHERE -> history.nextAnywhere(set, step);
            case NEAR -> {
                int first = -1;
                for (int near : vehicle.near(row)) {
                    int one = history.next(set, near, step);
                    first = first < 0 || (one >= 0 && one < first) ? one : first;
                }
                yield first;
            }
        };
    }

    private long stage(int of) {
        return of < 0 ? 0 : book.code(history.step(of).stage().orElseThrow().id());
    }

    private long lastInput(int of, String name) {
        return of < 0 ? 0 : input(history.step(of), name);
    }

    private long input(CompiledStep of, String name) {
        return of.input(name).map(v -> (long) book.code(v.raw())).orElse(0L);
    }

    private long surveyed(String id, int row) {
        Value value = prover.facts().facts(prover.facts().sheetOf(row)).get(id);
        if (value == null) {
            Optional<Fact> fact = prover.facts().fact(id);
            value = fact.map(InputValues::usual).orElse(null);
        }
        return value == null ? 0 : book.code(value.raw());
    }

    private boolean usedSince(int what, int state, int row) {
        int used = history.lastUse(what, row);
        if (used < 0) {
            return false;
        }
        for (int plain : states.parts(state)) {
            if (tracks.setBy(tracks.home(row, plain), plain) < used) {
                return true;
            }
        }
        return false;
    }

    private long value(Optional<?> raw) {
        return raw.map(r -> (long) book.code(r instanceof BigDecimal n ? n.stripTrailingZeros() : r))
                .orElse(0L);
    }

    private static Optional<BigDecimal> number(Optional<Quantity> quantity) {
        return quantity.map(Quantity::amount);
    }

    private long named(String name, int row) {
        Climate climate = part.terms().terms.climate();
        Optional<Zone> zone = vehicle.zone(row);
        return switch (name) {
            case "film.least" -> value(film(row).flatMap(ZoneFilm::lowest));
            case "film.sure" -> value(film(row).flatMap(ZoneFilm::sure));
            case "film.mean" -> value(film(row).flatMap(ZoneFilm::mean));
            case "film.most" -> value(film(row).flatMap(ZoneFilm::most));
            case "film.count" ->
                value(Optional.of(
                        BigDecimal.valueOf(film(row).map(ZoneFilm::count).orElse(0))));
            case "film.wanted" -> value(film(row).map(f -> BigDecimal.valueOf(f.wanted())));
            case "film.readable" ->
                value(Optional.of(film(row).map(ZoneFilm::readable).orElse(false)));
            case "film.budget" -> value(film(row).flatMap(ZoneFilm::budget));
            case "film.plannedLikely" -> value(planned.map(p -> p.likely(row)));
            case "film.plannedMost" -> value(planned.map(p -> p.most(row)));
            case "zone.id" -> value(Optional.of(vehicle.id(row)));
            case "zone.surface" -> value(zone.map(Zone::surface));
            case "zone.substrate" -> value(zone.map(Zone::substrate));
            case "vehicle.shape" -> value(Optional.of(vehicle.shape().id()));
            case "step.stage" -> value(at.stage().map(s -> s.id()));
            case "step.family" -> value(at.stage().map(s -> s.family()));
            case "step.start" -> value(Optional.of(minuteOfDay()));
            case "step.day" ->
                value(Optional.of(BigDecimal.valueOf(
                        ChronoUnit.DAYS.between(prover.start().toLocalDate(), begins().toLocalDate()))));
            case "step.coldest" -> value(number(climate.coldest()));
            case "step.warmest" -> value(number(climate.warmest()));
            case "step.driest" -> value(number(climate.driest()));
            case "step.dampest" -> value(number(climate.dampest()));
            default -> throw new IllegalStateException("no answer to '" + name + "'");
        };
    }

    private Optional<ZoneFilm> film(int row) {
        return prover.film().zone(vehicle.id(row));
    }

    private LocalDateTime begins() {
        return prover.start()
                .plusSeconds(
                        Ticks.minutes(start).multiply(BigDecimal.valueOf(60)).longValue());
    }

    private BigDecimal minuteOfDay() {
        return BigDecimal.valueOf(begins().toLocalTime().toSecondOfDay() / 60);
    }

    private static boolean contains(int[] all, int one) {
        for (int each : all) {
            if (each == one) {
                return true;
            }
        }
        return false;
    }
}
