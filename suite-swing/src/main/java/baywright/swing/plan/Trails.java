package baywright.swing.plan;

import baywright.library.Stage;
import baywright.money.CapFit;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Quote;
import baywright.plan.FilmBudget;
import baywright.plan.FilmBudget.ZoneBudget;
import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.PlanWork;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.plan.Trail;
import baywright.safety.DoseShare;
import baywright.safety.HazardSheet;
import baywright.safety.PersonDay;
import baywright.site.WorkedJob;
import baywright.swing.api.Destination;
import baywright.swing.api.Readout;
import baywright.swing.parts.TrailLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Tells where the figures of a worked plan come from. */
final class Trails {

    private static final int DECIMALS = 2;
    private static final int CHANCE_DECIMALS = 1;

    private final WorkedJob worked;
    private final Readout readout;

    Trails(WorkedJob worked, Readout readout) {
        this.worked = worked;
        this.readout = readout;
    }

    /** A stage by its title. */
    String title(String stage) {
        Stage known = worked.setting().library().stageById().get(stage);
        return known == null ? stage : known.title();
    }

    private String step(String id) {
        return Words.of(
                "trail.step",
                worked.job().plan().step(id).map(Step::stage).map(this::title).orElse(id),
                id);
    }

    private String zone(String id) {
        return worked.setting().shape().zone(id).map(z -> z.title()).orElse(id);
    }

    private static BigDecimal number(double value) {
        return BigDecimal.valueOf(value);
    }

    /** Percent of a chance from 0 to 1. */
    String chance(double chance) {
        return readout.number(number(chance * 100), CHANCE_DECIMALS);
    }

    /** Zone by zone: what is there, what goes, what is left; then each removal. */
    List<TrailLine> film(FilmBudget film) {
        List<TrailLine> lines = new ArrayList<>();
        for (ZoneBudget zone : film.zones()) {
            if (zone.planned().most().signum() == 0) {
                continue;
            }
            String name = zone(zone.film().zone());
            String text = zone.thinnest().isPresent()
                    ? Words.of(
                            "trail.film",
                            name,
                            readout.film(zone.film().lowest().orElse(BigDecimal.ZERO)),
                            readout.film(zone.planned().likely()),
                            readout.film(zone.planned().most()),
                            readout.film(number(zone.thinnest().get().mean())),
                            readout.film(film.limits().stopBelow()),
                            chance(zone.chanceBelow(film.limits().stopBelow()).orElse(0.0)))
                    : Words.of(
                            "trail.film.unread",
                            name,
                            readout.film(zone.planned().likely()));
            lines.add(TrailLine.of(text, Destination.zone(zone.film().zone())));
            zone.taken()
                    .forEach(t -> lines.add(TrailLine.of(
                            Words.of(
                                    "trail.film.taken",
                                    step(t.step()),
                                    readout.film(t.removal().micrometres().likely()),
                                    readout.film(t.removal().micrometres().most())),
                            t.removal().trail().place())));
        }
        return lines;
    }

    /** Products with their label elements, then what must be kept apart. */
    List<TrailLine> hazards(HazardSheet sheet) {
        List<TrailLine> lines = new ArrayList<>();
        sheet.products().forEach(product -> {
            String label =
                    product.label().pictograms().stream().map(p -> p.title()).collect(Collectors.joining(", "));
            String wear = String.join(", ", product.protection());
            lines.add(TrailLine.of(Words.of(
                    "trail.hazard",
                    product.title(),
                    label.isEmpty() ? Words.of("trail.hazard.unlabelled") : label,
                    wear.isEmpty() ? Words.of("trail.hazard.sheet") : wear)));
        });
        sheet.apart().forEach(a -> lines.add(TrailLine.of(Words.of("trail.apart", a.stage(), a.what(), a.why()))));
        lines.add(TrailLine.of(Words.of("trail.advice")));
        return lines;
    }

    /** What a share is of, in words. */
    String dose(DoseShare share) {
        return Words.of(
                "trail.dose." + share.agent().name(),
                readout.number(number(share.value()), 1),
                readout.number(number(share.limit()), 1));
    }

    /** Each day and pair of hands, with the steps that bring it. */
    List<TrailLine> doses() {
        List<TrailLine> lines = new ArrayList<>();
        for (PersonDay day : worked.safety().days()) {
            for (DoseShare share : DoseShare.of(day, worked.safe().settings())) {
                lines.add(TrailLine.of(Words.of(
                        "trail.dose",
                        readout.day(share.day()),
                        share.hand(),
                        dose(share),
                        readout.number(number(share.share() * 100), 0))));
            }
            day.vibration().forEach(d -> lines.add(dose("VIBRATION", d)));
            day.noise().forEach(d -> lines.add(dose("NOISE", d)));
        }
        return lines;
    }

    private TrailLine dose(String agent, PersonDay.Dose dose) {
        return TrailLine.of(
                Words.of(
                        "trail.dose.step." + agent,
                        step(dose.step()),
                        readout.number(number(dose.level()), 1),
                        readout.minutes(number(dose.hours() * 60))),
                Destination.step(dose.step()));
    }

    /** Hands-on time and set-ups, line by line of the scripts. */
    List<TrailLine> time() {
        List<TrailLine> lines = new ArrayList<>();
        for (StepWork work : worked.work().steps()) {
            lines.addAll(time(work));
        }
        for (PlanWork.FamilySetUp family : worked.work().families()) {
            lines.add(TrailLine.of(
                    Words.of("trail.family", family.family(), readout.minutes(family.minutes())), family.place()));
        }
        return lines;
    }

    /** The times of one step. */
    List<TrailLine> time(StepWork work) {
        List<TrailLine> lines = new ArrayList<>();
        work.attended()
                .forEach(a -> lines.add(TrailLine.of(
                        Words.of(
                                "trail.hands-on",
                                step(work.step()),
                                readout.minutes(a.minutes().mean()),
                                readout.minutes(a.minutes().least()),
                                readout.minutes(a.minutes().most()),
                                by(a.trail())),
                        a.trail().place())));
        work.setUps()
                .forEach(s -> lines.add(TrailLine.of(
                        Words.of("trail.set-up", step(work.step()), readout.minutes(s.minutes())),
                        s.trail().place())));
        work.standing()
                .forEach(s -> lines.add(TrailLine.of(
                        Words.of(
                                s.why().isEmpty() ? "trail.standing" : "trail.standing.why",
                                step(work.step()),
                                readout.minutes(s.usual()),
                                s.why()),
                        s.trail().place())));
        return lines;
    }

    /** Film that one step takes off. */
    List<TrailLine> removals(StepWork work) {
        return work.removals().stream()
                .map(r -> TrailLine.of(
                        Words.of(
                                "trail.removal",
                                zone(r.zone()),
                                readout.film(r.micrometres().likely()),
                                readout.film(r.micrometres().most())),
                        r.trail().place()))
                .toList();
    }

    /** Consumables of one step. */
    List<TrailLine> uses(StepWork work) {
        return work.uses().stream()
                .map(u -> TrailLine.of(
                        Words.of("trail.use", item(u.item()), u.amount().toString(), by(u.trail())),
                        u.trail().place()))
                .toList();
    }

    /** An item by its title. */
    String item(String id) {
        var item = worked.setting().library().itemById().get(id);
        return item == null ? id : item.title();
    }

    private String by(Trail trail) {
        return trail.driver().isEmpty()
                ? Words.of("trail.once")
                : Words.of("trail.by", readout.number(trail.amount(), DECIMALS), trail.driver());
    }

    /** The price: each line of labour and material, then sum, tax and what the cap leaves; or what stops a quote. */
    List<TrailLine> price() {
        List<TrailLine> lines = new ArrayList<>();
        if (!(worked.offer() instanceof Quote quote)) {
            FindingText texts = new FindingText(worked.setting(), worked.job().plan(), readout.locale());
            worked.findings().stream()
                    .filter(f -> f.severity() == Severity.STOP)
                    .forEach(f -> lines.add(stop(f, texts)));
            return lines;
        }
        for (LedgerLine line : quote.ledger().lines()) {
            if (line.kind().column() == LineKind.Column.PRICE) {
                lines.add(price(line, quote));
            }
        }
        lines.add(TrailLine.of(Words.of(
                "trail.net",
                readout.money(quote.price().net()),
                quote.terms().tax().name(),
                readout.money(quote.price().tax()),
                readout.money(quote.price().gross()))));
        quote.cap().ifPresent(cap -> lines.add(TrailLine.of(cap(cap))));
        return lines;
    }

    private static TrailLine stop(Finding finding, FindingText texts) {
        String text = Words.capital(texts.of(finding));
        return finding.step()
                .map(step -> TrailLine.of(text, Destination.step(step)))
                .orElseGet(() -> TrailLine.of(text));
    }

    private TrailLine price(LedgerLine line, Quote quote) {
        String what = line.step().map(this::step).orElseGet(() -> item(line.subject()));
        String subject = line.kind() == LineKind.MATERIAL ? item(line.subject()) : title(line.subject());
        String text = Words.of(
                "trail.price",
                what,
                what.startsWith(subject) ? Words.of("kind", line.kind()) : subject,
                readout.number(line.quantity(), DECIMALS),
                line.unit(),
                readout.number(line.rate(), DECIMALS),
                readout.money(Money.of(quote.ledger().currency(), line.amount(), java.math.RoundingMode.HALF_UP)));
        return line.step()
                .map(step -> TrailLine.of(text, Destination.step(step)))
                .orElseGet(() -> line.kind() == LineKind.MATERIAL
                        ? TrailLine.of(text, new Destination("library", Map.of("item", line.subject())))
                        : TrailLine.of(text));
    }

    /** What the cap leaves, or by how much it is passed. */
    String cap(CapFit cap) {
        return cap.fits()
                ? Words.of("cap.left", readout.money(cap.spare()), readout.money(cap.cap()))
                : Words.of("cap.over", readout.money(cap.over()), readout.money(cap.cap()));
    }
}
