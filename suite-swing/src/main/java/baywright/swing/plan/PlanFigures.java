package baywright.swing.plan;

import baywright.money.Quote;
import baywright.plan.FilmBudget;
import baywright.plan.FilmSheet;
import baywright.plan.FindingText;
import baywright.plan.Proof;
import baywright.plan.Severity;
import baywright.safety.DoseShare;
import baywright.safety.HazardSheet;
import baywright.safety.Pictogram;
import baywright.site.WorkedJob;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a plan comes to at a glance.
 *
 * @param worked     the job that it was read off
 * @param film       what is taken off and left
 * @param hazards    products and what is kept apart
 * @param pictograms of all products, by number
 * @param dose       the worst share of a day's limit
 * @param hours      hands-on minutes of all vehicles
 * @param elapsed    minutes from the first start to the last end on the plan's own clock
 */
record PlanFigures(
        WorkedJob worked,
        FilmBudget film,
        HazardSheet hazards,
        List<Pictogram> pictograms,
        Optional<DoseShare> dose,
        BigDecimal hours,
        BigDecimal elapsed) {

    /** Reads them off a worked job. Takes a moment; off the event thread. */
    static PlanFigures of(WorkedJob worked, String shop, Locale locale) {
        HazardSheet sheet = HazardSheet.of(
                shop,
                new HazardSheet.Part(
                        worked.job().title(),
                        worked.safe(),
                        worked.safety(),
                        new FindingText(worked.setting(), worked.job().plan(), locale)),
                locale);
        return new PlanFigures(
                worked,
                FilmBudget.of(FilmSheet.of(worked.setting()), worked.work().steps()),
                sheet,
                sheet.products().stream()
                        .flatMap(p -> p.label().pictograms().stream())
                        .distinct()
                        .sorted()
                        .toList(),
                DoseShare.worst(worked.safety().days(), worked.safe().settings()),
                worked.minutes(),
                worked.proof().clock().stream()
                        .map(Proof.Slot::end)
                        .max(BigDecimal::compareTo)
                        .orElse(BigDecimal.ZERO));
    }

    Optional<Quote> quote() {
        return worked.offer() instanceof Quote quote ? Optional.of(quote) : Optional.empty();
    }

    int findings(Severity severity) {
        return (int)
                worked.findings().stream().filter(f -> f.severity() == severity).count();
    }
}
