package baywright.swing.plan;

import baywright.site.FittedGoals;
import baywright.site.FittedGoals.LeftOut;
import baywright.site.FittedGoals.Priced;
import baywright.site.PlanLimits;
import baywright.swing.api.Readout;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What a composed plan comes to against the job's cap and date, and which goals were left out for them. */
final class LimitNotes {

    private final FittedGoals fitted;
    private final PlanLimits limits;
    private final Readout readout;

    LimitNotes(FittedGoals fitted, Readout readout) {
        this.fitted = fitted;
        limits = fitted.limits();
        this.readout = readout;
    }

    List<String> all() {
        List<String> notes = new ArrayList<>();
        price().ifPresent(notes::add);
        fitted.out().forEach(out -> notes.add(leftOut(out)));
        if (!fitted.out().isEmpty()) {
            notes.add(Words.of(
                    fitted.certain()
                            ? "compose.certain"
                            : fitted.proved() ? "compose.choices-composed" : "compose.not-proved"));
        }
        ready().ifPresent(notes::add);
        return notes;
    }

    private Optional<Money> cap(Money asked) {
        return limits.cap().map(most -> Money.of(asked.getCurrencyUnit(), most, RoundingMode.HALF_UP));
    }

    private Optional<String> price() {
        Optional<Money> asked = fitted.shown().asked();
        return asked.flatMap(price -> cap(price).map(cap -> price(price, cap)));
    }

    private String price(Money asked, Money cap) {
        if (!asked.isGreaterThan(cap)) {
            return Words.of("compose.below", readout.money(asked), readout.money(cap.minus(asked)), readout.money(cap));
        }
        return Words.of(
                fitted.certain() ? "compose.cannot.certain" : "compose.cannot",
                readout.money(asked),
                readout.money(asked.minus(cap)),
                readout.money(cap));
    }

    private String leftOut(LeftOut out) {
        Priced with = out.with();
        if (!with.isOffered()) {
            return Words.of("compose.left-out.stopped", out.goal().title());
        }
        Money asked = with.asked().orElseThrow();
        String over = cap(asked)
                .filter(asked::isGreaterThan)
                .map(cap -> Words.of("compose.left-out.over", readout.money(asked.minus(cap))))
                .orElse("");
        String late = with.ready()
                .filter(this::isLate)
                .map(ready -> Words.of("compose.left-out.late", readout.moment(ready)))
                .orElse("");
        return Words.of("compose.left-out", out.goal().title(), readout.money(asked), over + late);
    }

    private boolean isLate(LocalDateTime ready) {
        return limits.wanted().filter(ready::isAfter).isPresent();
    }

    private Optional<String> ready() {
        return fitted.shown()
                .ready()
                .map(ready -> limits.wanted()
                        .map(wanted -> Words.of(
                                isLate(ready) ? "compose.late" : "compose.in-time",
                                readout.moment(ready),
                                readout.moment(wanted)))
                        .orElseGet(() -> Words.of("compose.ready", readout.moment(ready))));
    }
}
