package baywright.workspace;

import baywright.money.Rates;
import baywright.money.TaxRule;
import baywright.plan.Bay;
import baywright.plan.HouseRules;
import baywright.safety.SafetySettings;
import baywright.schedule.OpeningTimes;
import baywright.schedule.ShopCalendar;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.GaugeError;
import baywright.vehicle.ReadingCounts;
import baywright.vehicle.TopcoatShares;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** {@code shop.json} to {@link Shop}. */
final class ShopJson {

    static final String KIND = "shop";
    static final int VERSION = 1;

    static final Map<String, RoundingMode> ROUNDINGS = inOrder(
            Map.entry("half-up", RoundingMode.HALF_UP),
            Map.entry("half-even", RoundingMode.HALF_EVEN),
            Map.entry("half-down", RoundingMode.HALF_DOWN),
            Map.entry("down", RoundingMode.DOWN));
    static final Map<String, TaxRule.On> ON = inOrder(
            Map.entry("total", TaxRule.On.TOTAL),
            Map.entry("line", TaxRule.On.LINE),
            Map.entry("gross", TaxRule.On.GROSS));
    private static final int MINUTES_OF_DAY = 24 * 60;
    private static final BigDecimal MINUTES_OF_HOUR = BigDecimal.valueOf(60);
    static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}(-[A-Z]{2})?");

    private ShopJson() {}

    @SafeVarargs
    static <T> Map<String, T> inOrder(Map.Entry<String, T>... entries) {
        Map<String, T> map = new LinkedHashMap<>();
        for (Map.Entry<String, T> entry : entries) {
            map.put(entry.getKey(), entry.getValue());
        }
        return map;
    }

    static Optional<Shop> read(Report report) {
        return Fields.ofDocument(report, KIND, VERSION).flatMap(ShopJson::read);
    }

    private static Optional<Shop> read(Fields in) {
        String id = in.id("id");
        String name = in.title("name");
        Optional<CurrencyUnit> currency = currency(in);
        Optional<ZoneId> timeZone = timeZone(in);
        String language = in.text("language", "en");
        if (!LANGUAGE.matcher(language).matches()) {
            in.refuse("language", "met the text " + Shown.quoted(language), "give a language such as \"en\"");
        }
        Optional<TaxRule> tax = in.object("tax").map(ShopJson::tax);
        Optional<Fields> rates = in.object("rates");
        Optional<Rates.Margins> margins = in.object("margins").map(ShopJson::margins);
        Optional<Rates.Contingency> contingency = in.object("contingency").map(ShopJson::contingency);
        Optional<Rates> allRates = rates.flatMap(r -> rates(r, currency, margins, contingency));
        Optional<Shop.QuoteTerms> quote = in.object("quote").map(ShopJson::quote);
        Optional<FilmLimits> film = in.object("film").flatMap(ShopJson::film);
        Map<String, Integer> places = new LinkedHashMap<>();
        List<Bay> bays = bays(in, places);
        Map<String, OpeningTimes> hands = new LinkedHashMap<>();
        List<Shop.Person> people = people(in, hands);
        OpeningTimes hours = in.objectIfGiven("hours").map(HoursJson::read).orElse(OpeningTimes.USUAL);
        Map<String, Integer> machines = in.wholes("machines", Span.from(1, 1000));
        ShopCalendar.WorkingTime working =
                in.objectIfGiven("workingTime").map(ShopJson::working).orElse(ShopCalendar.WorkingTime.USUAL);
        SafetySettings safety = in.objectIfGiven("safety").map(SafetyJson::read).orElse(SafetySettings.USUAL);
        HouseRules rules = in.objectIfGiven("rules").map(ShopJson::rules).orElse(HouseRules.USUAL);
        Shop.Letterhead letterhead =
                in.objectIfGiven("letterhead").map(ShopJson::letterhead).orElse(Shop.Letterhead.NONE);
        in.done();
        return in.report()
                .whenSound(() -> new Shop(
                        id,
                        name,
                        timeZone.orElseThrow(),
                        language,
                        tax.orElseThrow(),
                        allRates.orElseThrow(),
                        quote.orElseThrow(),
                        film.orElseThrow(),
                        bays,
                        people,
                        safety,
                        rules,
                        letterhead,
                        new Shop.WorkingTimes(hours, hands, places, machines, working)));
    }

    /** An ISO 4217 code of a currency that has coins. */
    static Optional<CurrencyUnit> currency(Fields in) {
        String code = in.text("currency");
        try {
            CurrencyUnit currency = CurrencyUnit.of(code);
            if (!currency.isPseudoCurrency()) {
                return Optional.of(currency);
            }
        } catch (IllegalCurrencyException e) {
            if (Fields.isStandIn(code)) {
                return Optional.empty();
            }
        }
        in.refuse("currency", "met the text " + Shown.quoted(code), "give a code of ISO 4217 such as \"GBP\"");
        return Optional.empty();
    }

    private static Optional<ZoneId> timeZone(Fields in) {
        String name = in.text("timeZone");
        try {
            ZoneId zone = ZoneId.of(name);
            if (!(zone instanceof ZoneOffset)) {
                return Optional.of(zone);
            }
        } catch (DateTimeException e) {
            if (Fields.isStandIn(name)) {
                return Optional.empty();
            }
        }
        in.refuse("timeZone", "met the text " + Shown.quoted(name), "give a region such as \"Europe/London\"");
        return Optional.empty();
    }

    private static TaxRule tax(Fields in) {
        TaxRule tax = new TaxRule(
                in.title("name"),
                in.number("percent", Span.PERCENT),
                in.choice("rounding", ROUNDINGS),
                in.choice("on", ON),
                in.objects("others").stream().map(ShopJson::otherRate).toList(),
                step(in, "lineStep", Span.above(0, 1)),
                step(in, "priceStep", Span.RATE));
        in.done();
        return tax;
    }

    /** A number out of range is reported, and its stand-in is no step. */
    private static Optional<BigDecimal> step(Fields in, String name, Span span) {
        return in.numberIfGiven(name, span).filter(span::holds);
    }

    private static TaxRule.Other otherRate(Fields in) {
        BigDecimal percent = in.number("percent", Span.PERCENT);
        List<String> families = in.ids("families");
        in.done();
        if (families.isEmpty()) {
            in.refuse("families", "there is no family", "give at least one such as \"cabin\"");
        }
        return new TaxRule.Other(percent, families.isEmpty() ? List.of("none") : families);
    }

    private static Optional<Rates> rates(
            Fields in,
            Optional<CurrencyUnit> currency,
            Optional<Rates.Margins> margins,
            Optional<Rates.Contingency> contingency) {
        Map<String, BigDecimal> charge = in.numbers("charge", Span.RATE);
        if (charge.isEmpty()) {
            in.refuse("charge", "there is no charge rate", "give at least one such as { \"detailing\": 45 }");
        }
        BigDecimal wage = in.number("wage", Span.RATE);
        BigDecimal employer = in.number("employerPercent", Span.from(0, 200));
        BigDecimal utilisation = in.number("utilisationPercent", Span.above(0, 100));
        BigDecimal overhead = in.number("overhead", Span.from(0, 100_000));
        BigDecimal machine = in.number("machine", Span.from(0, 100_000));
        BigDecimal waste = in.number("wastePerJob", Span.from(0, 100_000));
        BigDecimal rework = in.number("reworkPercent", Span.PERCENT);
        BigDecimal markup = in.number("materialMarkupPercent", Span.from(0, 1000));
        Map<String, Rates.SkillRate> bySkill = bySkill(in, charge);
        in.done();
        return in.report()
                .whenSound(() -> new Rates(
                        currency.orElseThrow(),
                        charge,
                        wage,
                        employer,
                        utilisation,
                        overhead,
                        machine,
                        waste,
                        rework,
                        markup,
                        margins.orElseThrow(),
                        contingency.orElseThrow(),
                        bySkill));
    }

    private static Map<String, Rates.SkillRate> bySkill(Fields in, Map<String, BigDecimal> charge) {
        Map<String, Rates.SkillRate> bySkill = new LinkedHashMap<>();
        for (Fields one : in.objects("bySkill")) {
            String skill = one.id("skill");
            String grade = one.id("charge");
            Optional<BigDecimal> wage = one.numberIfGiven("wage", Span.RATE);
            one.done();
            if (!charge.containsKey(grade) && !Fields.isStandIn(grade)) {
                one.refuse(
                        "charge",
                        "no rate is called " + Shown.quoted(grade),
                        "give one of " + String.join(", ", charge.keySet()));
            }
            if (bySkill.put(skill, new Rates.SkillRate(grade, wage)) != null && !Fields.isStandIn(skill)) {
                one.refuse("skill", "the skill " + Shown.quoted(skill) + " is there twice", "give each skill once");
            }
        }
        return bySkill;
    }

    private static Rates.Margins margins(Fields in) {
        Span span = Span.from(0, 99);
        BigDecimal afterDirect = in.number("afterDirectPercent", span);
        BigDecimal afterAll = in.number("afterAllPercent", span);
        Optional<BigDecimal> target = in.numberIfGiven("targetPercent", span);
        in.done();
        boolean low = target.filter(percent -> percent.compareTo(afterAll) < 0).isPresent();
        if (low && !in.report().hasErrors()) {
            in.refuse(
                    "targetPercent",
                    "the number " + target.get().toPlainString() + " is below afterAllPercent, "
                            + afterAll.toPlainString(),
                    "give a number that is not below it");
        }
        Rates.Margins margins = new Rates.Margins(afterDirect, afterAll, low ? Optional.empty() : target);
        return margins;
    }

    private static Rates.Contingency contingency(Fields in) {
        Span span = Span.from(0, 200);
        Span confidence = Span.from(50, 99);
        Rates.Contingency contingency = new Rates.Contingency(
                in.number("trialDonePercent", span),
                in.number("noTrialPercent", span),
                in.number("riskyPercent", span),
                // a number out of range is reported, and a stand-in comes back
                in.numberIfGiven("confidencePercent", confidence).filter(confidence::holds));
        in.done();
        return contingency;
    }

    private static Shop.QuoteTerms quote(Fields in) {
        Shop.QuoteTerms quote = new Shop.QuoteTerms(
                in.whole("validDays", Span.from(1, 3650)),
                in.number("depositPercent", Span.PERCENT),
                in.texts("notIncluded"));
        in.done();
        return quote;
    }

    private static Shop.Letterhead letterhead(Fields in) {
        Shop.Letterhead letterhead = new Shop.Letterhead(
                in.texts("address"),
                in.text("phone", ""),
                in.text("email", ""),
                in.text("web", ""),
                in.text("taxNumber", ""));
        in.done();
        return letterhead;
    }

    private static Optional<FilmLimits> film(Fields in) {
        Span span = Span.above(0, 20_000);
        BigDecimal stop = in.number("stopBelow", span);
        BigDecimal care = in.number("careBelow", span);
        FilmLimits usual =
                in.report().hasErrors() || stop.compareTo(care) > 0 ? FilmLimits.USUAL : FilmLimits.of(stop, care);
        BigDecimal repaint = in.number("repaintAbove", span, usual.repaintAbove());
        BigDecimal filler = in.number("fillerAbove", span, repaint.max(usual.fillerAbove()));
        GaugeError gauge = in.objectIfGiven("gauge").map(ShopJson::gauge).orElse(usual.gauge());
        TopcoatShares shares = in.objectIfGiven("share").map(ShopJson::shares).orElse(usual.shares());
        ReadingCounts readings =
                in.objectIfGiven("readings").flatMap(ShopJson::readings).orElse(usual.readings());
        in.done();
        if (stop.compareTo(care) > 0 && !in.report().hasErrors()) {
            in.refuse(
                    "stopBelow",
                    "the number " + stop.toPlainString() + " is above careBelow, " + care.toPlainString(),
                    "give a number that is not above it");
        }
        notBelow(in, "repaintAbove", repaint, "careBelow", care);
        notBelow(in, "fillerAbove", filler, "repaintAbove", repaint);
        return in.report().whenSound(() -> new FilmLimits(stop, care, repaint, filler, gauge, shares, readings));
    }

    private static void notBelow(Fields in, String name, BigDecimal value, String other, BigDecimal bound) {
        if (value.compareTo(bound) < 0 && !in.report().hasErrors()) {
            in.refuse(
                    name,
                    "the number " + value.toPlainString() + " is below " + other + ", " + bound.toPlainString(),
                    "give a number that is not below it");
        }
    }

    private static GaugeError gauge(Fields in) {
        GaugeError usual = GaugeError.USUAL;
        BigDecimal offset = in.number("offset", Span.from(0, 1_000), usual.fixed());
        BigDecimal percent = in.number("percent", Span.from(0, 100), usual.percent());
        in.done();
        return new GaugeError(offset, percent);
    }

    private static TopcoatShares shares(Fields in) {
        TopcoatShares usual = TopcoatShares.USUAL;
        Span share = Span.from(0, 1);
        Span film = Span.from(0, 20_000);
        BigDecimal factory = in.number("factory", share, usual.factory());
        BigDecimal factoryMost = in.number("factoryMost", film, usual.factoryMost());
        BigDecimal repaint = in.number("repaint", film, usual.repaint());
        BigDecimal single = in.number("singleStage", share, usual.single());
        BigDecimal singleMost = in.number("singleStageMost", film, usual.singleMost());
        BigDecimal life = in.number("life", share, usual.life());
        in.done();
        return new TopcoatShares(factory, factoryMost, repaint, single, singleMost, life);
    }

    private static Optional<ReadingCounts> readings(Fields in) {
        ReadingCounts usual = ReadingCounts.USUAL;
        Span count = Span.from(1, 1_000);
        int small = in.whole("small", count, usual.small());
        int panel = in.whole("panel", count, Math.max(small, usual.panel()));
        int large = in.whole("large", count, Math.max(panel, usual.large()));
        BigDecimal largeFrom = in.number("largeFrom", Span.above(0, 1_000), usual.largeFrom());
        in.done();
        notBelow(in, "panel", BigDecimal.valueOf(panel), "small", BigDecimal.valueOf(small));
        notBelow(in, "large", BigDecimal.valueOf(large), "panel", BigDecimal.valueOf(panel));
        return in.report().whenSound(() -> new ReadingCounts(small, panel, large, largeFrom));
    }

    /** Hours to minutes. A day that is not given is what the rest leaves of 24 hours. */
    private static ShopCalendar.WorkingTime working(Fields in) {
        ShopCalendar.WorkingTime usual = ShopCalendar.WorkingTime.USUAL;
        int rest = minutes(in.number("rest", Span.from(0, 23), hours(usual.rest())));
        int day = minutes(in.number("day", Span.from(1, 24), hours(MINUTES_OF_DAY - rest)));
        int week = minutes(in.number("week", Span.from(1, 168), hours(usual.week())));
        in.done();
        // a number out of range is reported, and a stand-in comes back
        return in.report()
                .whenSound(() -> new ShopCalendar.WorkingTime(rest, day, week))
                .orElse(usual);
    }

    /** Of so many minutes, to two decimals, which minutes can be told from. */
    static BigDecimal hours(int minutes) {
        return new BigDecimal(BigDecimal.valueOf(minutes)
                .divide(MINUTES_OF_HOUR, 2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString());
    }

    private static int minutes(BigDecimal hours) {
        return hours.multiply(MINUTES_OF_HOUR).setScale(0, RoundingMode.HALF_UP).intValueExact();
    }

    private static HouseRules rules(Fields in) {
        Map<String, String> softened = reasons(in, "soften");
        Map<String, String> off = reasons(in, "off");
        in.done();
        return new HouseRules(softened, off);
    }

    /** A rule is softened for a reason that can be read later. */
    private static Map<String, String> reasons(Fields in, String name) {
        Map<String, String> reasons = in.titles(name);
        reasons.forEach((rule, reason) -> {
            if (reason.isBlank()) {
                in.refuse(name, "the rule '" + rule + "' is given no reason", "say why, such as \"we use 7-day tape\"");
            }
        });
        return reasons;
    }

    private static List<Bay> bays(Fields in, Map<String, Integer> places) {
        List<Fields> all = in.objects("bays");
        List<Bay> bays = all.stream()
                .map(b -> {
                    Bay bay = new Bay(b.id("id"), b.title("title"), b.ids("kind"), b.ids("conditions"));
                    places.put(bay.id(), b.whole("places", Span.from(1, 100), 1));
                    b.done();
                    return bay;
                })
                .toList();
        Fields.refuseRepeated(all, bays.stream().map(Bay::id).toList());
        return bays;
    }

    private static List<Shop.Person> people(Fields in, Map<String, OpeningTimes> hands) {
        List<Fields> all = in.objects("people");
        List<Shop.Person> people = all.stream()
                .map(p -> {
                    Shop.Person person = new Shop.Person(p.id("id"), p.title("name"), p.ids("skills"));
                    p.objectIfGiven("hours").ifPresent(h -> hands.put(person.id(), HoursJson.read(h)));
                    p.done();
                    return person;
                })
                .toList();
        Fields.refuseRepeated(all, people.stream().map(Shop.Person::id).toList());
        return people;
    }
}
