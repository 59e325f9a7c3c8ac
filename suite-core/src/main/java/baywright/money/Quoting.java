package baywright.money;

import baywright.library.Stage;
import baywright.money.LineKind.Column;
import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.Proof;
import baywright.plan.Reason;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** From a proof and a ledger to the offer. */
public final class Quoting {

    private final Setting setting;
    private final SiteTerms site;
    private final Ledger ledger;
    private final CurrencyUnit currency;
    private final Optional<Money> cap;
    private final BigDecimal contingencyPercent;
    private final Map<String, Step> steps = new HashMap<>();

    private Quoting(
            Setting setting,
            SiteTerms site,
            Plan plan,
            Ledger ledger,
            Optional<BigDecimal> cap,
            BigDecimal contingencyPercent) {
        this.setting = setting;
        this.site = site;
        plan.steps().forEach(step -> steps.put(step.id(), step));
        this.ledger = ledger;
        currency = ledger.currency();
        this.cap = cap.map(most -> Rounding.toCoins(currency, most, TaxRule.PRICES));
        this.contingencyPercent = contingencyPercent;
    }

    /**
     * The offer for a plan.
     *
     * @param setting what the plan was proved against
     * @param proof   the proof of {@code plan} in {@code setting}
     * @param ledger  the roll-up of {@code plan} with the same terms
     * @param cap     the most that the customer pays, with tax, not negative
     * @param at      when, local time of the site
     * @return a refusal when the proof holds a stop, else a quote
     */
    public static Offer of(
            Setting setting,
            Plan plan,
            Proof proof,
            Ledger ledger,
            SiteTerms site,
            Optional<BigDecimal> cap,
            LocalDateTime at) {
        return of(
                setting,
                plan,
                proof,
                ledger,
                site,
                cap,
                site.rates().contingency().percent(ledger.terms().confidence()),
                at);
    }

    /**
     * The offer for a plan with a contingency that was worked out for it.
     *
     * @param contingencyPercent of labour, not negative
     * @see #of(Setting, Plan, Proof, Ledger, SiteTerms, Optional, LocalDateTime)
     */
    public static Offer of(
            Setting setting,
            Plan plan,
            Proof proof,
            Ledger ledger,
            SiteTerms site,
            Optional<BigDecimal> cap,
            BigDecimal contingencyPercent,
            LocalDateTime at) {
        if (cap.filter(most -> most.signum() < 0).isPresent()) {
            throw new IllegalArgumentException(
                    "cap must not be negative, got " + cap.get().toPlainString());
        }
        if (!proof.holds()) {
            return new Refusal(proof.findings());
        }
        String inputs = Fingerprint.of(
                setting.shape(),
                setting.survey(),
                setting.bays(),
                setting.start(),
                setting.film(),
                setting.house(),
                plan,
                site,
                ledger.terms(),
                cap);
        return new Quoting(setting, site, plan, ledger, cap, contingencyPercent)
                .quote(new ProofRecord(setting.library().hash(), inputs, at, softened(proof)));
    }

    /**
     * What would be asked for a plan, whether it proves or not; for weighing plans against each other.
     *
     * @param ledger             the roll-up of {@code plan}
     * @param contingencyPercent of labour, not negative
     */
    public static Range range(
            Setting setting, Plan plan, Ledger ledger, SiteTerms site, BigDecimal contingencyPercent) {
        return new Quoting(setting, site, plan, ledger, Optional.empty(), contingencyPercent).range(Priority.COULD);
    }

    private static Map<String, String> softened(Proof proof) {
        Map<String, String> notes = new TreeMap<>();
        for (Finding finding : proof.findings()) {
            if (finding.reason() instanceof Reason.RuleSpeaks rule
                    && !rule.note().isEmpty()) {
                notes.put(rule.rule(), rule.note());
            }
        }
        return notes;
    }

    private Quote quote(ProofRecord proof) {
        Range range = range(Priority.COULD);
        Price price = range.low();
        return new Quote(
                proof,
                site,
                ledger,
                price,
                range,
                Margin.of(ledger, price, site.rates().margins()),
                parts(),
                positions(price),
                cap.map(most -> new CapFit(most, price.gross())),
                proof.at().toLocalDate().plusDays(site.validDays()),
                Rounding.toCoins(
                        currency,
                        price.gross().getAmount().multiply(Percent.share(site.depositPercent())),
                        TaxRule.PRICES));
    }

    private List<Part> parts() {
        return Arrays.stream(Priority.values())
                .filter(p -> ledger.lines().stream().anyMatch(line -> line.priority() == p))
                .map(this::part)
                .toList();
    }

    private Part part(Priority priority) {
        Range upTo = range(priority);
        List<TaxRule.Taxed> own = taxed(accounts(priority, priority));
        return new Part(
                priority,
                ledger.total(Column.MINUTES, priority),
                site.tax().priceOfAll(currency, own),
                upTo,
                cap.map(most -> new CapFit(most, upTo.low().gross())),
                cap.map(most -> new CapFit(most, upTo.high().gross())));
    }

    /** The price of a priority and those before it; where lines are taxed one by one, contingency is one more line. */
    private Range range(Priority last) {
        List<TaxRule.Taxed> nets = taxed(accounts(Priority.MUST, last));
        BigDecimal labour = ledger.totalUpTo(LineKind.LABOUR, last).add(ledger.totalUpTo(LineKind.DISCOUNT, last));
        BigDecimal extra = labour.multiply(Percent.share(contingencyPercent));
        List<TaxRule.Taxed> withExtra = Stream.concat(
                        nets.stream(),
                        Stream.of(new TaxRule.Taxed(extra, site.tax().percent())))
                .toList();
        return new Range(
                site.tax().askedFor(currency, nets), site.tax().askedFor(currency, withExtra), contingencyPercent);
    }

    private List<Position> positions(Price price) {
        Map<Account, BigDecimal> accounts = accounts(Priority.MUST, Priority.COULD);
        List<Money> nets = coins(price, taxed(accounts));
        Map<Account, Priority> priorities = priorities();
        List<Position> positions = new ArrayList<>();
        accounts.forEach((account, exact) -> positions.add(new Position(
                account.step(),
                account.step().map(id -> steps.get(id).stage()).orElse(account.subject()),
                priorities.get(account),
                exact,
                nets.get(positions.size()))));
        return positions;
    }

    private Map<Account, Priority> priorities() {
        Map<Account, Priority> highest = new HashMap<>();
        ledger.lines()
                .forEach(line ->
                        highest.merge(Account.of(line), line.priority(), (a, b) -> a.compareTo(b) <= 0 ? a : b));
        return highest;
    }

    /** The net of each rate is shared out among what is taxed at it. */
    private List<Money> coins(Price price, List<TaxRule.Taxed> all) {
        boolean asTheyAre =
                site.tax().on() == TaxRule.On.LINE && site.tax().priceStep().isEmpty();
        Money[] coins = new Money[all.size()];
        for (Price.Tax rate : price.taxes()) {
            int[] places = IntStream.range(0, coins.length)
                    .filter(i -> all.get(i).percent().compareTo(rate.percent()) == 0)
                    .toArray();
            List<BigDecimal> exact =
                    Arrays.stream(places).mapToObj(i -> all.get(i).exactNet()).toList();
            List<Money> parts = asTheyAre || rate.net().isZero()
                    ? exact.stream()
                            .map(net -> Rounding.toCoins(currency, net, TaxRule.PRICES))
                            .toList()
                    : Shares.of(rate.net(), exact);
            for (int k = 0; k < places.length; k++) {
                coins[places[k]] = parts.get(k);
            }
        }
        return List.of(coins);
    }

    private List<TaxRule.Taxed> taxed(Map<Account, BigDecimal> accounts) {
        return accounts.entrySet().stream()
                .map(entry -> new TaxRule.Taxed(entry.getValue(), percentOf(entry.getKey())))
                .toList();
    }

    /** The rate of what an account is for; the rest of an opened pack goes with the first step that used of it. */
    private BigDecimal percentOf(Account account) {
        if (site.tax().others().isEmpty()) {
            return site.tax().percent();
        }
        Optional<String> step = account.step()
                .or(() -> ledger.lines(LineKind.MATERIAL).stream()
                        .filter(line ->
                                line.step().isPresent() && line.subject().equals(account.subject()))
                        .findFirst()
                        .flatMap(LedgerLine::step));
        return site.tax()
                .percentFor(step.map(id -> family(steps.get(id).stage())).orElse(account.subject()));
    }

    private String family(String stage) {
        return Optional.ofNullable(setting.library().stageById().get(stage))
                .map(Stage::family)
                .orElse("");
    }

    /** Who a price line is put down to: a step, or a family or an item of the whole job. */
    private record Account(Optional<String> step, String subject) {
        static Account of(LedgerLine line) {
            return new Account(line.step(), line.step().isPresent() ? "" : line.subject());
        }
    }

    private Map<Account, BigDecimal> accounts(Priority first, Priority last) {
        Map<Account, BigDecimal> sums = new LinkedHashMap<>();
        for (LedgerLine line : ledger.lines()) {
            boolean within =
                    line.priority().compareTo(first) >= 0 && line.priority().compareTo(last) <= 0;
            if (within && line.kind().column() == Column.PRICE) {
                sums.merge(Account.of(line), line.amount(), BigDecimal::add);
            }
        }
        return sums;
    }
}
