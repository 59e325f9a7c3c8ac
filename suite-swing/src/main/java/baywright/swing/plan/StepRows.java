package baywright.swing.plan;

import baywright.money.Ledger;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Quote;
import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.Proof;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.site.WorkedJob;
import baywright.swing.api.DeskState;
import baywright.swing.api.Remark;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.table.AbstractTableModel;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The steps of the plan as last edited, each with what the newest proof says of it. The proof may be an edit behind: what it
 * says is found by a step's id, so that rows neither wait for it nor jump when it comes.
 */
final class StepRows extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

    /** What the columns show. */
    enum Column {
        NUMBER,
        STEP,
        START,
        HANDS_ON,
        PRICE,
        FOUND
    }

    /** The gravest severity found on a step, and how many findings of that severity there are. */
    record Found(Severity worst, int count) {}

    private transient List<Step> steps = List.of();
    private transient Optional<WorkedJob> worked = Optional.empty();
    private transient Map<String, StepWork> works = Map.of();
    private transient Map<String, Proof.Slot> clock = Map.of();
    private transient Map<String, BigDecimal> prices = Map.of();
    private transient Map<String, Found> found = Map.of();
    private transient Optional<CurrencyUnit> currency = Optional.empty();

    /** Takes over a new state; whether the steps or their order changed. */
    @SuppressWarnings("ReferenceEquality") // each working out is another one, and comparing whole ones would take long
    boolean show(DeskState state) {
        List<Step> now = state.job().map(Job::plan).map(Plan::steps).orElse(List.of());
        boolean sameOrder = ids(now).equals(ids(steps));
        int before = steps.size();
        steps = now;
        Optional<WorkedJob> newest =
                state.worked().filter(w -> Optional.of(w.job().id()).equals(state.jobId()));
        if (newest.isPresent() != worked.isPresent() || newest.isPresent() && newest.get() != worked.get()) {
            worked = newest;
            readOff(newest);
        }
        found = found(worked.map(WorkedJob::findings).orElse(List.of()), state.remarks());
        if (sameOrder && before > 0) {
            fireTableRowsUpdated(0, before - 1);
        } else {
            fireTableDataChanged();
        }
        return !sameOrder;
    }

    private static List<String> ids(List<Step> steps) {
        return steps.stream().map(Step::id).toList();
    }

    private void readOff(Optional<WorkedJob> newest) {
        works = new HashMap<>();
        clock = new HashMap<>();
        prices = new HashMap<>();
        currency = Optional.empty();
        newest.ifPresent(w -> {
            w.work().steps().forEach(work -> works.putIfAbsent(work.step(), work));
            w.proof().clock().forEach(slot -> clock.putIfAbsent(slot.step(), slot));
            if (w.offer() instanceof Quote quote) {
                price(quote.ledger());
            }
        });
    }

    private void price(Ledger ledger) {
        currency = Optional.of(ledger.currency());
        for (LedgerLine line : ledger.lines()) {
            if (line.kind().column() == LineKind.Column.PRICE) {
                line.step().ifPresent(step -> prices.merge(step, line.amount(), BigDecimal::add));
            }
        }
    }

    private static Map<String, Found> found(List<Finding> findings, List<Remark> remarks) {
        Map<String, List<Severity>> all = new HashMap<>();
        Stream.concat(
                        findings.stream().flatMap(f -> f.step().stream().map(s -> Map.entry(s, f.severity()))),
                        remarks.stream().flatMap(r -> r.step().stream().map(s -> Map.entry(s, r.severity()))))
                .forEach(e ->
                        all.computeIfAbsent(e.getKey(), s -> new ArrayList<>()).add(e.getValue()));
        Map<String, Found> found = new HashMap<>();
        all.forEach((step, severities) -> {
            Severity worst = severities.stream().min(Severity::compareTo).orElseThrow();
            found.put(step, new Found(worst, (int)
                    severities.stream().filter(s -> s == worst).count()));
        });
        return found;
    }

    Step step(int row) {
        return steps.get(row);
    }

    List<Step> steps() {
        return steps;
    }

    Optional<WorkedJob> worked() {
        return worked;
    }

    Optional<StepWork> work(String step) {
        return Optional.ofNullable(works.get(step));
    }

    Optional<Found> found(String step) {
        return Optional.ofNullable(found.get(step));
    }

    /** Hands-on minutes with the set-up of this use. */
    Optional<BigDecimal> minutes(String step) {
        return work(step).map(w -> w.attendedMinutes().mean().add(w.setUpMinutes()));
    }

    /** When it begins on the plan's own clock, one step after the other. */
    Optional<LocalDateTime> start(String step) {
        return worked.flatMap(w -> Optional.ofNullable(clock.get(step))
                .map(slot -> w.setting()
                        .start()
                        .plus(Duration.ofSeconds(slot.start().multiply(SECONDS).longValue()))));
    }

    /** What it adds to the net price, to the coin. */
    Optional<Money> price(String step) {
        return currency.flatMap(unit -> Optional.ofNullable(prices.get(step))
                .map(exact -> Money.of(unit, exact, java.math.RoundingMode.HALF_UP)));
    }

    @Override
    public int getRowCount() {
        return steps.size();
    }

    @Override
    public int getColumnCount() {
        return Column.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return Words.of("column", Column.values()[column]);
    }

    @Override
    public Object getValueAt(int row, int column) {
        Step step = steps.get(row);
        return switch (Column.values()[column]) {
            case NUMBER -> row + 1;
            case STEP -> step;
            case START -> start(step.id()).orElse(null);
            case HANDS_ON -> minutes(step.id()).orElse(null);
            case PRICE -> price(step.id()).orElse(null);
            case FOUND -> found.get(step.id());
        };
    }
}
