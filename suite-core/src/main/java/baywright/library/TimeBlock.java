package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Attended;
import baywright.library.StageTerms.SetUp;
import baywright.library.StageTerms.Standing;
import baywright.quantity.ThreePoint;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Vocabulary.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code time { }}: how long it takes. */
final class TimeBlock extends Blocks {

    static final Type DRIVER = Type.ID.called("a driver", "drivers", "'m2'").naming("driver");
    static final Type FACTOR = Type.NUMBER.called("a number", "numbers", "passes");

    static final Section SECTION = new Section(
            "time",
            "in 'time { }'",
            "Hands-on minutes of one person and time that passes by itself.",
            List.of(
                    word("attended")
                            .takes("least", Type.DURATION)
                            .takes("likely", Type.DURATION)
                            .takes("most", Type.DURATION)
                            .named("per", DRIVER, "vehicle")
                            .named("times", FACTOR, BigDecimal.ONE)
                            .means(
                                    "hands-on time of one person: the least seen in practice, the most frequent and the most, for each unit"
                                            + " of the driver; several lines add up")
                            .example("attended 0.4.min, 0.6.min, 1.0.min, per: 'm2', times: passes"),
                    word("standing")
                            .takes("least", Type.DURATION)
                            .mayTake("most", Type.DURATION)
                            .named("usual", Type.DURATION)
                            .named("why", Type.TEXT)
                            .means(
                                    "time that passes by itself afterwards: the next step on the zone begins no sooner than"
                                            + " the first and no later than the second; a plan reckons with 'usual:', or else the"
                                            + " first")
                            .example("standing 3.min, 7.min, why: 'must not dry'"),
                    word("setUp")
                            .takes("minutes", Type.DURATION)
                            .means("time to get ready each time the stage is used")
                            .example("setUp 8.min")));

    private final List<Attended> attended = new ArrayList<>();
    private final List<Standing> standing = new ArrayList<>();
    private final List<SetUp> setUps = new ArrayList<>();

    TimeBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        switch (call.word().name()) {
            case "attended" -> attended(call);
            case "standing" -> standing(call);
            default -> setUp(call);
        }
    }

    private void attended(Call call) {
        Optional<ThreePoint> minutes = threePoints(call);
        Optional<BigDecimal> times = times(call);
        if (minutes.isPresent() && times.isPresent()) {
            attended.add(new Attended(minutes.get(), call.text("per"), times.get(), origin(call)));
        }
    }

    /** The arguments least, likely and most in base units, if they are in order and none is below zero. */
    static Optional<ThreePoint> threePoints(Call call) {
        BigDecimal least = call.quantity("least").inBase();
        BigDecimal likely = call.quantity("likely").inBase();
        BigDecimal most = call.quantity("most").inBase();
        if (least.signum() < 0) {
            call.badValue(
                    call.value("least").place(),
                    "'" + call.word().name() + "' wants nothing below zero; the first is "
                            + call.value("least").described());
            return Optional.empty();
        }
        if (likely.compareTo(least) < 0 || most.compareTo(likely) < 0) {
            boolean second = likely.compareTo(least) < 0;
            call.badValue(
                    call.value(second ? "likely" : "most").place(),
                    "'" + call.word().name() + "' wants least, likely and most in rising order; the "
                            + (second ? "second" : "third") + " is smaller than the one before it");
            return Optional.empty();
        }
        return Optional.of(new ThreePoint(least, likely, most));
    }

    /** The factor, if it is not below zero. */
    static Optional<BigDecimal> times(Call call) {
        BigDecimal times = call.number("times");
        if (times.signum() < 0) {
            call.badValue(
                    call.value("times").place(),
                    "'times:' of '" + call.word().name() + "' is a number from 0; it is "
                            + call.value("times").described());
            return Optional.empty();
        }
        return Optional.of(times);
    }

    private void standing(Call call) {
        BigDecimal least = call.quantity("least").inBase();
        Optional<BigDecimal> most =
                call.has("most") ? Optional.of(call.quantity("most").inBase()) : Optional.empty();
        BigDecimal usual = call.has("usual") ? call.quantity("usual").inBase() : least;
        if (least.signum() < 0) {
            call.badValue(call.value("least").place(), "'standing' wants nothing below zero");
            return;
        }
        if (most.isPresent() && most.get().compareTo(least) < 0) {
            call.badValue(
                    call.value("most").place(),
                    "'standing' wants least and most in rising order; the second is smaller");
            return;
        }
        boolean inside = usual.compareTo(least) >= 0 && (most.isEmpty() || usual.compareTo(most.get()) <= 0);
        if (!inside) {
            call.badValue(
                    call.value("usual").place(), "'usual:' of 'standing' lies from its first to its second duration");
            return;
        }
        standing.add(new Standing(least, most, usual, call.text("why"), origin(call)));
    }

    private void setUp(Call call) {
        BigDecimal minutes = call.quantity("minutes").inBase();
        if (minutes.signum() < 0) {
            call.badValue(call.value("minutes").place(), "'setUp' wants nothing below zero");
            return;
        }
        setUps.add(new SetUp(minutes, origin(call)));
    }

    List<Attended> attended() {
        return attended;
    }

    List<Standing> standing() {
        return standing;
    }

    List<SetUp> setUps() {
        return setUps;
    }
}
