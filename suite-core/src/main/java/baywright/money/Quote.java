package baywright.money;

import baywright.plan.Step.Priority;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The price of a proved plan. It pins everything that it rests on: the library by its hash, rates and tax in the terms,
 * pack prices in the ledger's purchases.
 *
 * @param proof      what it was proved with
 * @param terms      the site's rates, tax and terms of that day
 * @param ledger     every line with its trail, exact
 * @param price      of all steps
 * @param range      what the customer may have to pay
 * @param margin     what the price leaves
 * @param parts      by priority, those that have steps; each adds to those before it
 * @param positions  lines as the customer sees them, in the plan's order
 * @param cap        the price against the customer's cap, where there is one
 * @param validUntil last day on which it stands
 * @param deposit    asked for at acceptance
 */
public record Quote(
        ProofRecord proof,
        SiteTerms terms,
        Ledger ledger,
        Price price,
        Range range,
        Margin margin,
        List<Part> parts,
        List<Position> positions,
        Optional<CapFit> cap,
        LocalDate validUntil,
        Money deposit)
        implements Offer {
    public Quote {
        parts = List.copyOf(parts);
        positions = List.copyOf(positions);
    }

    /** The steps of one priority, if there are any. */
    public Optional<Part> part(Priority priority) {
        return parts.stream().filter(part -> part.priority() == priority).findFirst();
    }
}
