package baywright.swing.sites;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.share.Impact;
import baywright.share.ImpactCause;
import baywright.share.ImpactChange;
import baywright.share.ImpactEffect;
import baywright.share.ImpactFigures;
import baywright.share.ImpactOfJob;
import baywright.site.Site;
import baywright.swing.api.Readout;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Puts what another library makes of jobs into words. */
final class ImpactWords {

    private static final String NONE = "–";

    private final Site now;
    private final Site then;
    private final Readout readout;
    private final CurrencyUnit currency;

    /** @param then the same shop with the other library */
    ImpactWords(Site now, Site then, Readout readout) {
        this.now = now;
        this.then = then;
        this.readout = readout;
        currency = now.shop().currency();
    }

    /** The jobs with what moves most on top: first those that stop or are freed, then by price, then by hands-on time. */
    static List<ImpactOfJob> bySize(Impact impact) {
        return impact.jobs().stream()
                .sorted(Comparator.comparing((ImpactOfJob j) ->
                                j.before().holds() == j.after().holds())
                        .thenComparing(j -> price(j).abs(), Comparator.reverseOrder())
                        .thenComparing(j -> j.effect().attended().abs(), Comparator.reverseOrder())
                        .thenComparing(j -> j.job().id()))
                .toList();
    }

    /** How the price moves; nothing where one of the two is not known. */
    static BigDecimal price(ImpactOfJob job) {
        return job.effect().price().orElse(BigDecimal.ZERO);
    }

    String summary(Impact impact) {
        return Words.of(
                "impact.summary",
                impact.jobs().size(),
                impact.same() + impact.untouched(),
                impact.stopping().size(),
                impact.freed().size());
    }

    String proves(ImpactOfJob job) {
        String before = holds(job.before());
        String after = holds(job.after());
        return before.equals(after) ? after : Words.of("impact.turns", before, after);
    }

    private static String holds(ImpactFigures figures) {
        return Words.of(figures.holds() ? "impact.holds" : "impact.stops");
    }

    String handsOn(BigDecimal by) {
        return signed(by, readout.minutes(by.abs()));
    }

    String price(Optional<BigDecimal> by) {
        return by.map(amount -> {
                    Money coins = Money.of(currency, amount, RoundingMode.HALF_UP);
                    return signed(coins.getAmount(), readout.money(coins.abs()));
                })
                .orElse(NONE);
    }

    private static String signed(BigDecimal by, String size) {
        return by.signum() == 0 ? NONE : (by.signum() > 0 ? "+" : "−") + size;
    }

    String priceThen(ImpactOfJob job) {
        return job.after()
                .price()
                .map(amount -> readout.money(Money.of(currency, amount, RoundingMode.HALF_UP)))
                .orElse(NONE);
    }

    /** The first cause, and how many more there are. */
    String why(ImpactOfJob job) {
        List<ImpactCause> causes = job.causes();
        if (causes.isEmpty()) {
            return Words.of("impact.together");
        }
        String first = named(causes.get(0).change());
        return causes.size() == 1 ? first : Words.of("impact.more", first, causes.size() - 1);
    }

    private static String named(ImpactChange change) {
        return Words.of("impact.kind", change.kind()) + " " + change.id();
    }

    /** All that is known of a job, a line each. */
    String details(ImpactOfJob job) {
        List<String> lines = new ArrayList<>();
        for (ImpactCause cause : job.causes()) {
            lines.add(Words.of("impact.cause", named(cause.change()), effect(cause.effect())));
        }
        job.rest().ifPresent(rest -> lines.add(Words.of("impact.cause", Words.of("impact.together"), effect(rest))));
        findings(lines, "impact.comes", job.come(), then, job);
        findings(lines, "impact.goes", job.gone(), now, job);
        job.paper().ifPresent(name -> lines.add(Words.of("impact.paper", name)));
        return String.join("\n", lines);
    }

    private String effect(ImpactEffect effect) {
        return Words.of("impact.effect", handsOn(effect.attended()), price(effect.price()));
    }

    private void findings(List<String> lines, String key, List<Finding> findings, Site at, ImpactOfJob job) {
        if (findings.isEmpty()) {
            return;
        }
        FindingText text = new FindingText(at.setting(job.job()), job.job().plan(), readout.locale());
        findings.forEach(f -> lines.add(Words.of(key, Words.of("severity", f.severity()), text.of(f))));
    }
}
