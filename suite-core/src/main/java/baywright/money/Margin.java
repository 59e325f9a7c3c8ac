package baywright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a price leaves.
 *
 * @param floor       the lowest net price that is no loss, rounded up
 * @param loss        whether the price is below it
 * @param afterDirect percent of the net price left after pay of the hours worked and materials; empty for a free job
 * @param afterAll    percent of the net price left after everything that the job costs; empty for a free job
 * @param target      the net price that leaves the margin that the site would like, rounded up; empty where it names none
 * @param ownerSigns  whether either is below what the site allows without the owner
 */
public record Margin(
        Money floor,
        boolean loss,
        Optional<BigDecimal> afterDirect,
        Optional<BigDecimal> afterAll,
        Optional<Money> target,
        boolean ownerSigns) {

    static Margin of(Ledger ledger, Price price, Rates.Margins least) {
        BigDecimal net = price.net().getAmount();
        Money floor = Rounding.toCoins(ledger.currency(), ledger.cost(), RoundingMode.CEILING);
        Optional<Money> target = least.targetPercent()
                .map(percent -> Rounding.toCoins(
                        ledger.currency(), Markup.leaving(percent).on(ledger.cost()), RoundingMode.CEILING));
        boolean loss = price.net().isLessThan(floor);
        if (net.signum() == 0) {
            return new Margin(floor, loss, Optional.empty(), Optional.empty(), target, loss);
        }
        BigDecimal afterDirect = Markup.marginPercent(net, ledger.directCost());
        BigDecimal afterAll = Markup.marginPercent(net, ledger.cost());
        boolean signs = afterDirect.compareTo(least.afterDirectPercent()) < 0
                || afterAll.compareTo(least.afterAllPercent()) < 0;
        return new Margin(floor, loss, Optional.of(afterDirect), Optional.of(afterAll), target, loss || signs);
    }
}
