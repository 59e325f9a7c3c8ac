package baywright.swing.quote;

import baywright.library.Stage;
import baywright.plan.Step;
import baywright.site.Numbers;
import baywright.site.WorkedJob;
import baywright.swing.api.Readout;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Writes figures and names of one job for the user. */
final class Figures {

    /** Enough that a reader can add the lines up to the coin. */
    private static final int EXACT = 5;

    private final WorkedJob worked;
    private final Readout readout;
    private final CurrencyUnit currency;
    private final Numbers numbers;

    Figures(WorkedJob worked, CurrencyUnit currency, Readout readout) {
        this.worked = worked;
        this.readout = readout;
        this.currency = currency;
        numbers = new Numbers(readout.locale());
    }

    CurrencyUnit currency() {
        return currency;
    }

    /** With the currency's code. */
    String money(Money money) {
        return readout.money(money);
    }

    /** Rounded to coins for the eye, with the currency's code. */
    String money(BigDecimal amount) {
        return readout.money(coins(amount));
    }

    /** Rounded to coins for the eye, without the currency. */
    String bare(BigDecimal amount) {
        return numbers.coins(coins(amount));
    }

    String bare(Money money) {
        return numbers.coins(money);
    }

    private Money coins(BigDecimal amount) {
        return Money.of(currency, amount, RoundingMode.HALF_UP);
    }

    String exact(BigDecimal number) {
        return readout.number(number, EXACT);
    }

    /** A share from 0 to 1 in percent, with one decimal. */
    String percent(double share) {
        return percent(BigDecimal.valueOf(100 * share));
    }

    String percent(BigDecimal percent) {
        return numbers.fixed(percent, 1) + " %";
    }

    String minutes(double minutes) {
        return readout.minutes(BigDecimal.valueOf(minutes));
    }

    Readout readout() {
        return readout;
    }

    // names

    /** A stage by its title. */
    String stage(String id) {
        Stage known = worked.setting().library().stageById().get(id);
        return known == null ? id : known.title();
    }

    /** An item by its title. */
    String item(String id) {
        var known = worked.setting().library().itemById().get(id);
        return known == null ? id : known.title();
    }

    String zone(String id) {
        return worked.setting().shape().zone(id).map(z -> z.title()).orElse(id);
    }

    String step(Step step) {
        return Words.of("step", stage(step.stage()), step.id());
    }

    String step(String id) {
        return worked.job().plan().step(id).map(this::step).orElse(id);
    }

    String steps(List<Step> steps) {
        return steps.stream().map(this::step).collect(Collectors.joining(", "));
    }
}
