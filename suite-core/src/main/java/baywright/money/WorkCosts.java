package baywright.money;

import baywright.library.Item;
import baywright.library.Library;
import baywright.money.LineKind.Column;
import baywright.plan.Costing;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What work costs the shop, or the customer, at the rates of one job and for all its vehicles. */
public final class WorkCosts implements Costing {

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private final Library library;
    private final Rates rates;
    private final JobTerms terms;
    private final boolean priced;
    private final BigDecimal minute;
    private final BigDecimal vehicles;

    /** What a discount on everything leaves of the price of materials. */
    private final BigDecimal left;

    private final Map<String, BigDecimal> opened = new TreeMap<>();

    private WorkCosts(Library library, Rates rates, JobTerms terms, boolean priced) {
        this.library = library;
        this.rates = rates;
        this.terms = terms;
        this.priced = priced;
        vehicles = BigDecimal.valueOf(terms.vehicles());
        BigDecimal all = Percent.share(Percent.HUNDRED.subtract(terms.discountPercent()));
        BigDecimal let = Percent.share(Percent.HUNDRED.subtract(terms.discountLabourPercent()))
                .multiply(all);
        left = priced ? all : BigDecimal.ONE;
        BigDecimal hour = priced
                ? rates.chargeFor(terms.grade()).multiply(let)
                : rates.hourCost().perPaidHour();
        minute = hour.multiply(vehicles).divide(SIXTY, Rates.PRECISION);
        library.items().stream().filter(Item::spoils).forEach(item -> opened.put(item.id(), pack(item)));
    }

    /** The shop's direct cost: pay of the hours worked, and materials. */
    public static WorkCosts ofShop(Library library, Rates rates, JobTerms terms) {
        return new WorkCosts(library, rates, terms, false);
    }

    /** The exact net price: labour at charge-out less what is let off, materials with their mark-up. */
    public static WorkCosts ofCustomer(Library library, Rates rates, JobTerms terms) {
        return new WorkCosts(library, rates, terms, true);
    }

    private BigDecimal pack(Item item) {
        return priced
                ? new Markup(rates.materialMarkupPercent()).on(item.price()).multiply(left)
                : item.price();
    }

    @Override
    public BigDecimal minute() {
        return minute;
    }

    @Override
    public BigDecimal amount(String id, Quantity amount) {
        Item item = library.itemById().get(id);
        return item == null || item.spoils()
                ? BigDecimal.ZERO
                : Packs.fraction(item, amount).multiply(vehicles).multiply(pack(item));
    }

    @Override
    public Map<String, BigDecimal> opened() {
        return opened;
    }

    @Override
    public BigDecimal of(PlanWork work) {
        Ledger ledger = RollUp.of(new Plan(List.of()), work, library, rates, terms);
        return priced ? ledger.total(Column.PRICE) : ledger.directCost();
    }
}
