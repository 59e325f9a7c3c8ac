package baywright.workspace;

import baywright.library.Item;
import baywright.money.Rates;
import baywright.money.TaxRule;
import baywright.plan.Bay;
import baywright.schedule.OpeningTimes;
import baywright.schedule.ShopCalendar;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.GaugeError;
import baywright.vehicle.ReadingCounts;
import baywright.vehicle.TopcoatShares;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;

/** {@link Shop} and price list as the program would write them; what a shop keeps stays as its file says it. */
final class ShopDraft {

    private final Shop before;
    private final Shop now;

    private ShopDraft(Shop before, Shop now) {
        this.before = before;
        this.now = now;
    }

    /** @param before what the file says */
    static Draft of(Shop before, Shop now) {
        return new ShopDraft(before, now).draft();
    }

    private Draft draft() {
        return Draft.object()
                .with("id", Draft.text(now.id()))
                .with("name", Draft.text(now.name()))
                .with("currency", Draft.text(now.currency().getCode()))
                .with("timeZone", Draft.text(now.timeZone().getId()))
                .usually("language", Draft.text(now.language()), "en")
                .with("tax", kept(before.tax(), now.tax(), tax(now.tax())))
                .with("rates", kept(before.rates(), now.rates(), rates(now.rates())))
                .with("margins", margins(now.rates().margins()))
                .with("contingency", contingency(now.rates().contingency()))
                .with("quote", quote(now.quote()))
                .with("film", kept(before.film(), now.film(), film(now.film())))
                .with("bays", Draft.list(now.bays(), this::bay))
                .with("people", Draft.list(now.people(), this::person))
                .with("hours", hours(now.times().hours(), OpeningTimes.USUAL))
                .with("machines", Draft.map(now.times().machines(), count -> Draft.number(BigDecimal.valueOf(count))))
                .with(
                        "workingTime",
                        kept(
                                before.times().working(),
                                now.times().working(),
                                working(now.times().working())))
                .with("safety", kept(before.safety(), now.safety(), SafetyDraft.of(now.safety())))
                .with(
                        "rules",
                        Draft.object()
                                .with("soften", Draft.map(now.rules().softened(), Draft::text))
                                .with("off", Draft.map(now.rules().off(), Draft::text)))
                .with("letterhead", letterhead(now.letterhead()));
    }

    /** Equal values may have been written in several ways; the file's stays. */
    private static Draft kept(Object before, Object now, Draft draft) {
        return before.equals(now) ? Draft.asItWas() : draft;
    }

    private static Draft tax(TaxRule tax) {
        return Draft.object()
                .with("name", Draft.text(tax.name()))
                .with("percent", Draft.number(tax.percent()))
                .with("rounding", Draft.choice(ShopJson.ROUNDINGS, tax.rounding()))
                .with("on", Draft.choice(ShopJson.ON, tax.on()))
                .with(
                        "others",
                        Draft.list(
                                tax.others(),
                                other -> Draft.object()
                                        .with("percent", Draft.number(other.percent()))
                                        .with("families", Draft.texts(other.families()))))
                .with("lineStep", Draft.number(tax.lineStep()))
                .with("priceStep", Draft.number(tax.priceStep()));
    }

    private static Draft rates(Rates rates) {
        return Draft.object()
                .with("charge", Draft.map(rates.charge(), Draft::number))
                .with("wage", Draft.number(rates.wage()))
                .with("employerPercent", Draft.number(rates.employerPercent()))
                .with("utilisationPercent", Draft.number(rates.utilisationPercent()))
                .with("overhead", Draft.number(rates.overhead()))
                .with("machine", Draft.number(rates.machine()))
                .with("wastePerJob", Draft.number(rates.wastePerJob()))
                .with("reworkPercent", Draft.number(rates.reworkPercent()))
                .with("materialMarkupPercent", Draft.number(rates.materialMarkupPercent()))
                .with(
                        "bySkill",
                        Draft.loose(
                                rates.bySkill().entrySet(),
                                "skill",
                                one -> Draft.object()
                                        .with("skill", Draft.text(one.getKey()))
                                        .with(
                                                "charge",
                                                Draft.text(one.getValue().grade()))
                                        .with(
                                                "wage",
                                                Draft.number(one.getValue().wage()))));
    }

    private static Draft margins(Rates.Margins margins) {
        return Draft.object()
                .with("afterDirectPercent", Draft.number(margins.afterDirectPercent()))
                .with("afterAllPercent", Draft.number(margins.afterAllPercent()))
                .with("targetPercent", Draft.number(margins.targetPercent()));
    }

    private static Draft contingency(Rates.Contingency contingency) {
        return Draft.object()
                .with("trialDonePercent", Draft.number(contingency.trialDonePercent()))
                .with("noTrialPercent", Draft.number(contingency.noTrialPercent()))
                .with("riskyPercent", Draft.number(contingency.riskyPercent()))
                .with("confidencePercent", Draft.number(contingency.confidencePercent()));
    }

    private static Draft quote(Shop.QuoteTerms quote) {
        return Draft.object()
                .with("validDays", Draft.number(BigDecimal.valueOf(quote.validDays())))
                .with("depositPercent", Draft.number(quote.depositPercent()))
                .with("notIncluded", Draft.texts(quote.notIncluded()));
    }

    private static Draft film(FilmLimits film) {
        FilmLimits usual = FilmLimits.of(film.stopBelow(), film.careBelow());
        GaugeError gauge = usual.gauge();
        TopcoatShares shares = usual.shares();
        ReadingCounts readings = usual.readings();
        return Draft.object()
                .with("stopBelow", Draft.number(film.stopBelow()))
                .with("careBelow", Draft.number(film.careBelow()))
                .usually("repaintAbove", film.repaintAbove(), usual.repaintAbove())
                .usually("fillerAbove", film.fillerAbove(), film.repaintAbove().max(usual.fillerAbove()))
                .with(
                        "gauge",
                        Draft.object()
                                .usually("offset", film.gauge().fixed(), gauge.fixed())
                                .usually("percent", film.gauge().percent(), gauge.percent()))
                .with(
                        "share",
                        Draft.object()
                                .usually("factory", film.shares().factory(), shares.factory())
                                .usually("factoryMost", film.shares().factoryMost(), shares.factoryMost())
                                .usually("repaint", film.shares().repaint(), shares.repaint())
                                .usually("singleStage", film.shares().single(), shares.single())
                                .usually("singleStageMost", film.shares().singleMost(), shares.singleMost())
                                .usually("life", film.shares().life(), shares.life()))
                .with("readings", readings(film.readings(), readings));
    }

    private static Draft readings(ReadingCounts now, ReadingCounts usual) {
        return Draft.object()
                .usually("small", now.small(), usual.small())
                .usually("panel", now.panel(), Math.max(now.small(), usual.panel()))
                .usually("large", now.large(), Math.max(now.panel(), usual.large()))
                .usually("largeFrom", now.largeFrom(), usual.largeFrom());
    }

    private Draft bay(Bay bay) {
        return Draft.object()
                .with("id", Draft.text(bay.id()))
                .with("title", Draft.text(bay.title()))
                .with("kind", Draft.texts(bay.kind()))
                .with("conditions", Draft.texts(bay.conditions()))
                .usually("places", now.times().places().getOrDefault(bay.id(), 1), 1);
    }

    private Draft person(Shop.Person person) {
        OpeningTimes hours = now.times().people().get(person.id());
        return Draft.object()
                .with("id", Draft.text(person.id()))
                .with("name", Draft.text(person.name()))
                .with("skills", Draft.texts(person.skills()))
                .with("hours", hours == null ? Draft.nothing() : hours(hours));
    }

    private static Draft hours(OpeningTimes hours, OpeningTimes usual) {
        return Draft.unless(hours.equals(usual), hours(hours));
    }

    private static Draft hours(OpeningTimes hours) {
        Draft.Obj draft = Draft.object();
        for (DayOfWeek day : DayOfWeek.values()) {
            draft.with(
                    day.name().toLowerCase(Locale.ROOT),
                    Draft.list(hours.week().getOrDefault(day, List.of()), ShopDraft::span));
        }
        return draft.with(
                "closed",
                Draft.texts(hours.closed().stream().map(LocalDate::toString).toList()));
    }

    private static Draft span(OpeningTimes.Span span) {
        String to = span.to().equals(LocalTime.MIDNIGHT) ? "24:00" : span.to().toString();
        return Draft.text(span.from() + "-" + to);
    }

    private static Draft working(ShopCalendar.WorkingTime working) {
        return Draft.object()
                .with("rest", Draft.number(ShopJson.hours(working.rest())))
                .with("day", Draft.number(ShopJson.hours(working.day())))
                .with("week", Draft.number(ShopJson.hours(working.week())));
    }

    private static Draft letterhead(Shop.Letterhead letterhead) {
        return Draft.object()
                .with("address", Draft.texts(letterhead.address()))
                .usually("phone", Draft.text(letterhead.phone()), "")
                .usually("email", Draft.text(letterhead.email()), "")
                .usually("web", Draft.text(letterhead.web()), "")
                .usually("taxNumber", Draft.text(letterhead.taxNumber()), "");
    }

    // price list

    /** The price list; its currency stays that of its file. */
    static Draft of(List<Item> items) {
        return Draft.object().with("items", Draft.list(items, ShopDraft::item));
    }

    private static Draft.Obj item(Item item) {
        return Draft.object()
                .with("id", Draft.text(item.id()))
                .with("title", Draft.text(item.title()))
                .with("pack", Draft.text(item.pack().toString()))
                .with("price", Draft.number(item.price()))
                .usually("spoils", Draft.bool(item.spoils()), "false")
                .with("density", Draft.number(item.density()))
                .with("hazards", Draft.texts(item.hazards()))
                .with("protection", Draft.texts(item.protection()))
                .with("groups", Draft.texts(item.groups()))
                .usually("note", Draft.text(item.note()), "");
    }

    /** The items of a pack; the same items give the same text. */
    static Draft of(SharedItems shared) {
        return Draft.object()
                .with("schema", Draft.text("baywright/" + SharedItems.KIND + "/" + SharedItems.VERSION))
                .with("currency", Draft.text(shared.currency().map(CurrencyUnit::getCode)))
                .with("items", Draft.list(shared.items(), ShopDraft::shared));
    }

    private static Draft shared(SharedItem shared) {
        return item(shared.likeness()).with("price", Draft.number(shared.price()));
    }
}
