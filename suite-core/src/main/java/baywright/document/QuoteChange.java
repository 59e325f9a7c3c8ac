package baywright.document;

import baywright.document.KeptQuote.ItemPin;
import baywright.document.KeptQuote.Pins;
import baywright.document.KeptQuote.PlannedStep;
import baywright.document.KeptQuote.StagePin;
import baywright.money.Quote;
import baywright.site.WorkedJob;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * One thing that a kept quote rested on and that is otherwise now.
 *
 * @param kind    what sort of thing
 * @param subject its id or field
 * @param was     value in the kept quote; empty: it was not there
 * @param is      value now; empty: it is not there any more
 * @param by      what it alone makes of today's figures; empty where that cannot be told
 */
public record QuoteChange(Kind kind, String subject, String was, String is, Optional<QuoteEffect> by) {

    /** A quote that was kept before there was this field had no such discount. */
    private static final String DISCOUNT = "price.discountPercent";

    /** What sort of thing has changed, in the order in which they are told. */
    public enum Kind {
        ITEM_PRICE,
        ITEM_PACK,
        STAGE_REVISION,
        /** What the stage says, though its author has not counted the revision up. */
        STAGE_WORDS,
        /** Hands-on minutes in this plan, of a stage that says the same as before. */
        STAGE_MINUTES,
        TERM,
        STEP,
        SURVEY,
        /** What the changes make together and none of them alone, and what no other kind tells. */
        TOGETHER
    }

    /** Everything that is otherwise; empty when the same quote would come out. */
    public static List<QuoteChange> since(KeptQuote kept, WorkedJob now, Quote quote) {
        Pins was = kept.pins();
        Pins is = KeptQuote.pins(now, quote);
        QuoteEffects effects = new QuoteEffects(kept, now, quote);
        List<QuoteChange> changes = new ArrayList<>();
        items(was, is, effects, changes);
        stages(was, is, effects, changes);
        terms(was, is, effects, changes);
        steps(kept.plan(), KeptQuote.plan(now), effects, changes);
        if (!was.survey().equals(is.survey())) {
            changes.add(new QuoteChange(Kind.SURVEY, "", was.survey(), is.survey(), Optional.empty()));
        }
        QuoteEffect left = effects.all();
        for (QuoteChange change : changes) {
            left = left.minus(change.by().orElse(QuoteEffect.NONE));
        }
        if (!left.isNothing()) {
            changes.add(new QuoteChange(Kind.TOGETHER, "", "", "", Optional.of(left)));
        }
        return changes;
    }

    private static void items(Pins was, Pins is, QuoteEffects effects, List<QuoteChange> changes) {
        was.items().forEach((id, before) -> {
            ItemPin now = is.items().get(id);
            if (now != null && !now.pack().equals(before.pack())) {
                changes.add(new QuoteChange(
                        Kind.ITEM_PACK, id, before.pack(), now.pack(), Optional.of(effects.item(id, false, true))));
            }
            if (now != null && now.price().compareTo(before.price()) != 0) {
                changes.add(new QuoteChange(
                        Kind.ITEM_PRICE,
                        id,
                        before.price().toPlainString(),
                        now.price().toPlainString(),
                        Optional.of(effects.item(id, true, false))));
            }
        });
    }

    private static void stages(Pins was, Pins is, QuoteEffects effects, List<QuoteChange> changes) {
        was.stages().forEach((id, before) -> {
            StagePin now = is.stages().get(id);
            if (now == null) {
                return;
            }
            String minutesWas = minutes(before);
            String minutesIs = minutes(now);
            if (before.revision() != now.revision()) {
                changes.add(new QuoteChange(
                        Kind.STAGE_REVISION,
                        id,
                        before.revision() + " · " + minutesWas,
                        now.revision() + " · " + minutesIs,
                        Optional.of(effects.stage(id))));
            } else if (!before.fingerprint().equals(now.fingerprint())) {
                changes.add(
                        new QuoteChange(Kind.STAGE_WORDS, id, minutesWas, minutesIs, Optional.of(effects.stage(id))));
            } else if (!minutesWas.equals(minutesIs)) {
                changes.add(
                        new QuoteChange(Kind.STAGE_MINUTES, id, minutesWas, minutesIs, Optional.of(effects.stage(id))));
            }
        });
    }

    private static String minutes(StagePin pin) {
        return pin.minutes().setScale(1, java.math.RoundingMode.HALF_UP).toPlainString() + " min";
    }

    private static void terms(Pins was, Pins is, QuoteEffects effects, List<QuoteChange> changes) {
        TreeSet<String> fields = new TreeSet<>(was.terms().keySet());
        fields.addAll(is.terms().keySet());
        for (String field : fields) {
            BigDecimal before = field.equals(DISCOUNT)
                    ? was.terms().getOrDefault(field, BigDecimal.ZERO)
                    : was.terms().get(field);
            BigDecimal now = is.terms().get(field);
            if (before == null || now == null || before.compareTo(now) != 0) {
                changes.add(new QuoteChange(
                        Kind.TERM,
                        field,
                        plain(before),
                        plain(now),
                        now == null ? Optional.empty() : effects.term(field, before)));
            }
        }
    }

    private static String plain(BigDecimal number) {
        return number == null ? "" : number.toPlainString();
    }

    private static void steps(
            List<PlannedStep> was, List<PlannedStep> is, QuoteEffects effects, List<QuoteChange> changes) {
        Map<String, PlannedStep> before = byId(was);
        Map<String, PlannedStep> now = byId(is);
        before.forEach((id, step) -> {
            if (!step.equals(now.get(id))) {
                String stage = now.containsKey(id) ? now.get(id).stage() : "";
                changes.add(new QuoteChange(Kind.STEP, id, step.stage(), stage, Optional.of(effects.step(id))));
            }
        });
        now.forEach((id, step) -> {
            if (!before.containsKey(id)) {
                changes.add(new QuoteChange(Kind.STEP, id, "", step.stage(), Optional.of(effects.step(id))));
            }
        });
    }

    private static Map<String, PlannedStep> byId(List<PlannedStep> steps) {
        Map<String, PlannedStep> byId = new LinkedHashMap<>();
        steps.forEach(step -> byId.put(step.id(), step));
        return byId;
    }
}
