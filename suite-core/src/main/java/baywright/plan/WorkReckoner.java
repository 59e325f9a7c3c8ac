package baywright.plan;

import baywright.library.Input;
import baywright.library.JobFactor;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.library.StageTerms.Origin;
import baywright.plan.CompiledStep.Part;
import baywright.plan.Trail.Source;
import baywright.quantity.ThreePoint;
import baywright.script.Value;
import baywright.vehicle.Survey;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Works out what a use of a stage takes. Lines that count by zones are worked out for each group of zones and added up;
 * what belongs to the use as a whole (lines by the vehicle or by an amount that the step gives, set-ups, crew) is taken
 * once, from the group for which it takes longest.
 */
final class WorkReckoner {

    private record Amount(BigDecimal amount, Source source) {
        boolean ofUse() {
            return source == Source.USE || source == Source.STEP;
        }
    }

    /** What all lines of one group share. */
    private record Context(
            Stage stage, Part part, int sheet, Map<String, Value> with, Map<String, BigDecimal> drivers) {}

    private final List<JobFactor> factors;
    private final Survey survey;
    private final VehicleIndex vehicle;
    private final FactSheet facts;

    WorkReckoner(Setting setting, VehicleIndex vehicle, FactSheet facts) {
        factors = setting.library().factors();
        survey = setting.survey();
        this.vehicle = vehicle;
        this.facts = facts;
    }

    /** The numbers by which a sheet of facts multiplies lines of a stage, in the library's order. */
    List<BigDecimal> factorsOf(Stage stage, int sheet) {
        return factors.stream()
                .filter(f -> f.touches(stage.id(), stage.family(), f.onlyPer()))
                .map(f -> by(f, sheet))
                .toList();
    }

    private BigDecimal by(JobFactor factor, int sheet) {
        if (factor.fact().equals(FactSheet.SIZE)) {
            return facts.size();
        }
        return factor.values().getOrDefault(facts.text(sheet, factor.fact()), BigDecimal.ONE);
    }

    StepWork reckon(
            Stage stage, int[] rows, List<Part> parts, Map<String, Value> with, Map<String, BigDecimal> drivers) {
        List<Context> contexts = parts.stream()
                .map(p -> new Context(stage, p, facts.sheetOf(p.rows()[0]), with, drivers))
                .toList();
        int longest = 0;
        for (int c = 1; c < contexts.size(); c++) {
            if (wholeMinutes(contexts.get(c)).compareTo(wholeMinutes(contexts.get(longest))) > 0) {
                longest = c;
            }
        }
        List<StepWork.Attended> attended = new ArrayList<>();
        List<StepWork.Use> uses = new ArrayList<>();
        List<StepWork.Removal> removals = new ArrayList<>();
        for (int c = 0; c < contexts.size(); c++) {
            attended(contexts.get(c), c == longest, attended);
            uses(contexts.get(c), c == longest, uses);
            removals(contexts.get(c), removals);
        }
        StageTerms terms = contexts.get(longest).part().terms().terms;
        return new StepWork(
                "",
                stage.id(),
                stage.family(),
                ids(rows),
                parts.stream()
                        .map(p -> new StepWork.Part(ids(p.rows()), p.terms().terms))
                        .toList(),
                attended,
                setUps(contexts.get(longest)),
                standing(contexts),
                uses,
                removals,
                terms.crew());
    }

    private BigDecimal wholeMinutes(Context context) {
        List<StepWork.Attended> lines = new ArrayList<>();
        StageTerms terms = context.part().terms().terms;
        for (StageTerms.Attended line : terms.attended()) {
            Amount amount = amount(line.per(), context);
            if (amount.ofUse()) {
                lines.add(attended(line, amount, context));
            }
        }
        BigDecimal sum =
                terms.setUps().stream().map(StageTerms.SetUp::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
        for (StepWork.Attended line : lines) {
            sum = sum.add(line.minutes().mean());
        }
        return sum;
    }

    private void attended(Context context, boolean whole, List<StepWork.Attended> lines) {
        for (StageTerms.Attended line : context.part().terms().terms.attended()) {
            Amount amount = amount(line.per(), context);
            if (whole || !amount.ofUse()) {
                lines.add(attended(line, amount, context));
            }
        }
    }

    private StepWork.Attended attended(StageTerms.Attended line, Amount amount, Context context) {
        Trail trail = trail(line.origin(), line.per(), amount, line.times(), true, false, context);
        BigDecimal by = amount.amount().multiply(line.times()).multiply(product(trail));
        return new StepWork.Attended(line.minutes().times(by), line.minutes(), trail);
    }

    private void uses(Context context, boolean whole, List<StepWork.Use> lines) {
        for (StageTerms.Use line : context.part().terms().terms.uses()) {
            Amount amount = amount(line.per(), context);
            if (whole || !amount.ofUse()) {
                Trail trail = trail(line.origin(), line.per(), amount, line.times(), true, true, context);
                BigDecimal by = amount.amount().multiply(line.times()).multiply(product(trail));
                lines.add(new StepWork.Use(line.item(), line.amount().times(by), line.dilution(), trail));
            }
        }
    }

    private void removals(Context context, List<StepWork.Removal> lines) {
        for (StageTerms.Removal line : context.part().terms().terms.removals()) {
            for (int row : context.part().rows()) {
                Trail trail = new Trail(
                        line.origin().place(),
                        "",
                        BigDecimal.ONE,
                        Source.USE,
                        line.times(),
                        given(line.origin(), context),
                        List.of(),
                        List.of(vehicle.id(row)));
                ThreePoint taken = line.micrometres().times(line.times());
                lines.add(new StepWork.Removal(vehicle.id(row), taken, trail));
            }
        }
    }

    private List<StepWork.SetUp> setUps(Context context) {
        return context.part().terms().terms.setUps().stream()
                .map(s -> new StepWork.SetUp(s.minutes(), once(s.origin(), context)))
                .toList();
    }

    private List<StepWork.Standing> standing(List<Context> contexts) {
        Context longest = contexts.get(0);
        for (Context context : contexts) {
            if (context.part().terms().usualWait > longest.part().terms().usualWait) {
                longest = context;
            }
        }
        Context from = longest;
        return from.part().terms().terms.standing().stream()
                .map(s -> new StepWork.Standing(s.least(), s.usual(), s.most(), s.why(), once(s.origin(), from)))
                .toList();
    }

    private Trail once(Origin origin, Context context) {
        return trail(origin, "", new Amount(BigDecimal.ONE, Source.USE), BigDecimal.ONE, false, false, context);
    }

    private Amount amount(String driver, Context context) {
        BigDecimal fixed = context.drivers().get(driver);
        if (fixed != null) {
            return new Amount(fixed, Source.STEP);
        }
        if (driver.equals(VehicleIndex.VEHICLE)) {
            return new Amount(BigDecimal.ONE, Source.USE);
        }
        BigDecimal sum = BigDecimal.ZERO;
        boolean counted = false;
        boolean measured = false;
        for (int row : context.part().rows()) {
            BigDecimal count = survey.zone(vehicle.id(row)).counts().get(driver);
            BigDecimal measure = vehicle.zone(row).map(z -> z.measure(driver)).orElse(BigDecimal.ZERO);
            counted |= count != null;
            measured |= count == null && measure.signum() != 0;
            sum = sum.add(count != null ? count : measure);
        }
        Source source = !counted ? Source.SHAPE : measured ? Source.SURVEY_AND_SHAPE : Source.SURVEY;
        return new Amount(sum, source);
    }

    private Trail trail(
            Origin origin,
            String driver,
            Amount amount,
            BigDecimal times,
            boolean multiplied,
            boolean item,
            Context context) {
        List<Trail.Applied> applied = multiplied ? applied(driver, item, context) : List.of();
        return new Trail(
                origin.place(),
                driver,
                amount.amount(),
                amount.source(),
                times,
                given(origin, context),
                applied,
                ids(context.part().rows()));
    }

    private List<Trail.Applied> applied(String driver, boolean item, Context context) {
        List<Trail.Applied> applied = new ArrayList<>();
        for (JobFactor factor : factors) {
            boolean touches =
                    factor.touches(context.stage().id(), context.stage().family(), driver);
            if (touches && (!item || factor.items())) {
                BigDecimal by = by(factor, context.sheet());
                if (by.compareTo(BigDecimal.ONE) != 0) {
                    String value = factor.fact().equals(FactSheet.SIZE)
                            ? facts.size().toPlainString()
                            : facts.text(context.sheet(), factor.fact());
                    applied.add(new Trail.Applied(factor.id(), factor.fact(), value, by, factor.place()));
                }
            }
        }
        return applied;
    }

    private static BigDecimal product(Trail trail) {
        BigDecimal product = BigDecimal.ONE;
        for (Trail.Applied factor : trail.factors()) {
            product = product.multiply(factor.by());
        }
        return product;
    }

    private List<Trail.Given> given(Origin origin, Context context) {
        if (origin.from().isEmpty()) {
            return List.of();
        }
        List<Trail.Given> given = new ArrayList<>();
        for (String name : new TreeSet<>(origin.from())) {
            Optional<Input> input = context.stage().inputs().stream()
                    .filter(i -> i.name().equals(name))
                    .findFirst();
            if (input.isPresent()) {
                Value set = context.with().get(name);
                given.add(new Trail.Given(
                        name,
                        Texts.of(set != null ? set : input.get().usual()),
                        set != null ? Trail.Giver.STEP : Trail.Giver.USUAL));
            } else if (facts.isFact(name)) {
                given.add(new Trail.Given(
                        name,
                        facts.text(context.sheet(), name),
                        facts.isSurveyed(context.sheet(), name) ? Trail.Giver.SURVEY : Trail.Giver.USUAL));
            }
        }
        return given;
    }

    private List<String> ids(int[] rows) {
        List<String> ids = new ArrayList<>(rows.length);
        for (int row : rows) {
            ids.add(vehicle.id(row));
        }
        return ids;
    }
}
