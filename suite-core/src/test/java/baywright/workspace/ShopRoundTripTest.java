package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Item;
import baywright.money.Rates;
import baywright.money.TaxRule;
import baywright.plan.Bay;
import baywright.plan.HouseRules;
import baywright.plan.Severity;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.safety.ApartPair;
import baywright.safety.Comparison;
import baywright.safety.SafetySettings;
import baywright.schedule.OpeningTimes;
import baywright.schedule.ShopCalendar;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.GaugeError;
import baywright.vehicle.ReadingCounts;
import baywright.vehicle.TopcoatShares;
import com.networknt.schema.InputFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.joda.money.CurrencyUnit;

/** Laws of writing the shop and the price list: what is written is what is read, and what is unknown stays. */
class ShopRoundTripTest {

    @Property(tries = 200)
    void whateverOneShopBecomesItIsReadAsWhatItBecame(@ForAll("shops") Shop before, @ForAll("shops") Shop after) {
        String file = written(before);

        assertThat(read(onto(file, after)))
                .usingRecursiveComparison()
                .withComparatorForType(BigDecimal::compareTo, BigDecimal.class)
                .isEqualTo(after);
    }

    @Property(tries = 100)
    void aWrittenShopFitsThePublishedForm(@ForAll("shops") Shop shop) {
        assertThat(Forms.of("shop.json").validate(written(shop), InputFormat.JSON))
                .isEmpty();
    }

    @Property(tries = 100)
    void writingWhatWasReadChangesNothing(@ForAll("shops") Shop shop) {
        String file = written(shop);

        assertThat(onto(file, read(file))).isEqualTo(file);
    }

    @Property(tries = 100)
    void whatTheProgramDoesNotKnowOutlivesEveryChange(@ForAll("shops") Shop before, @ForAll("shops") Shop after) {
        String file = written(before);
        for (String holder : List.of("tax", "rates", "margins", "contingency", "quote", "film")) {
            file = file.replaceFirst("\"" + holder + "\": \\{", "\"" + holder + "\": {\"own\": [1.50, \"x\"],");
        }

        String changed = onto(file, after);

        assertThat(changed.split("\"own\": \\[1.50, \"x\"\\]", -1)).hasSize(7);
        assertThat(read(changed))
                .usingRecursiveComparison()
                .withComparatorForType(BigDecimal::compareTo, BigDecimal.class)
                .isEqualTo(after);
    }

    @Property(tries = 200)
    void whateverOnePriceListBecomesItIsReadAsWhatItBecame(
            @ForAll("items") List<Item> before, @ForAll("items") List<Item> after) {
        String file = onto("{\"schema\": \"baywright/items/1\", \"currency\": \"GBP\"}\n", before);

        String changed = onto(file, after);

        assertThat(items(changed))
                .usingRecursiveComparison()
                .withComparatorForType(BigDecimal::compareTo, BigDecimal.class)
                .isEqualTo(after);
        assertThat(onto(changed, after)).isEqualTo(changed);
        assertThat(Forms.of("items.json").validate(changed, InputFormat.JSON)).isEmpty();
    }

    // reading and writing

    private static Shop read(String text) {
        Report report = new Report(new Source("shop.json", text));
        Optional<Shop> shop = ShopJson.read(report);
        assertThat(report.problems().stream().filter(FileProblem::isError)).isEmpty();
        return shop.orElseThrow();
    }

    private static List<Item> items(String text) {
        Report report = new Report(new Source("items.json", text));
        Optional<ItemsJson.PriceList> list = ItemsJson.read(report);
        assertThat(report.problems()).isEmpty();
        return list.orElseThrow().items();
    }

    private static String onto(String file, Shop shop) {
        return onto(file, ShopDraft.of(read(file), shop));
    }

    private static String onto(String file, List<Item> items) {
        return onto(file, ShopDraft.of(items));
    }

    private static String onto(String file, Draft draft) {
        Source source = new Source("any.json", file);
        Json document = JsonReader.read(new Report(source)).orElseThrow();
        Json merged = draft.onto(document);
        return merged == document ? file : JsonForm.of(merged, source);
    }

    /** A shop brought into the smallest file that there can be. */
    private static String written(Shop shop) {
        return onto(
                "{\"schema\": \"baywright/shop/1\", \"id\": \"a\", \"name\": \"A\", \"currency\": \"GBP\","
                        + " \"timeZone\": \"Europe/London\","
                        + " \"tax\": {\"name\": \"T\", \"percent\": 0, \"rounding\": \"down\", \"on\": \"line\"},"
                        + " \"rates\": {\"charge\": {\"a\": 1}, \"wage\": 1, \"employerPercent\": 0,"
                        + " \"utilisationPercent\": 1, \"overhead\": 0, \"machine\": 0, \"wastePerJob\": 0,"
                        + " \"reworkPercent\": 0, \"materialMarkupPercent\": 0},"
                        + " \"margins\": {\"afterDirectPercent\": 0, \"afterAllPercent\": 0},"
                        + " \"contingency\": {\"trialDonePercent\": 0, \"noTrialPercent\": 0, \"riskyPercent\": 0},"
                        + " \"quote\": {\"validDays\": 1, \"depositPercent\": 0},"
                        + " \"film\": {\"stopBelow\": 1, \"careBelow\": 2}}\n",
                shop);
    }

    // random values

    @Provide
    Arbitrary<Shop> shops() {
        return Arbitraries.randomValue(random -> new Draw(random).shop());
    }

    @Provide
    Arbitrary<List<Item>> items() {
        return Arbitraries.randomValue(random -> new Draw(random).items());
    }

    /** Draws a sound value; every part is now and then as usual. */
    private record Draw(Random random) {

        private boolean coin() {
            return random.nextBoolean();
        }

        /** Of no more decimals than its last digit needs, as the smallest spelling of a number is. */
        private BigDecimal number(int least, int most) {
            BigDecimal number = BigDecimal.valueOf(least)
                    .add(BigDecimal.valueOf(random.nextInt((most - least) * 100), 2))
                    .stripTrailingZeros();
            return number.scale() < 0 ? number.setScale(0) : number;
        }

        private double binary(int least, int most) {
            return number(least, most).doubleValue();
        }

        private Optional<BigDecimal> perhaps(int least, int most) {
            return coin() ? Optional.of(number(least, most)) : Optional.empty();
        }

        private String text() {
            return coin() ? "" : "a \"word\" " + random.nextInt(9) + "\n\u00e4\u20ac";
        }

        private List<String> ids() {
            return List.of("one", "two-b", "three", "four").subList(0, random.nextInt(5));
        }

        private <T> T of(List<T> all) {
            return all.get(random.nextInt(all.size()));
        }

        Shop shop() {
            List<Bay> bays = ids().stream()
                    .map(id -> new Bay(id, "Bay " + id, ids(), ids()))
                    .toList();
            List<Shop.Person> people = ids().stream()
                    .map(id -> new Shop.Person(id, "P " + random.nextInt(3), ids()))
                    .toList();
            Map<String, Integer> places = new HashMap<>();
            bays.forEach(bay -> places.put(bay.id(), coin() ? 1 : 1 + random.nextInt(99)));
            Map<String, OpeningTimes> hands = new HashMap<>();
            people.stream().filter(p -> coin()).forEach(p -> hands.put(p.id(), hours()));
            Map<String, Integer> machines = new HashMap<>();
            ids().forEach(id -> machines.put(id, 1 + random.nextInt(9)));
            return new Shop(
                    of(ids().isEmpty() ? List.of("shop") : List.of("shop", "other")),
                    "The " + random.nextInt(9),
                    ZoneId.of(of(List.of("Europe/London", "Asia/Tokyo"))),
                    of(List.of("en", "de", "en-GB")),
                    tax(),
                    rates(),
                    new Shop.QuoteTerms(1 + random.nextInt(90), number(0, 100), coin() ? List.of() : List.of("x", "y")),
                    film(),
                    bays,
                    people,
                    coin() ? SafetySettings.USUAL : safety(),
                    coin()
                            ? HouseRules.USUAL
                            : new HouseRules(Map.of("one", "why"), coin() ? Map.of() : Map.of("two-b", "so")),
                    coin() ? Shop.Letterhead.NONE : new Shop.Letterhead(ids(), text(), text(), text(), text()),
                    new Shop.WorkingTimes(coin() ? OpeningTimes.USUAL : hours(), hands, places, machines, working()));
        }

        private ShopCalendar.WorkingTime working() {
            return coin()
                    ? ShopCalendar.WorkingTime.USUAL
                    : new ShopCalendar.WorkingTime(
                            random.nextInt(1381), 60 + random.nextInt(1381), 60 + random.nextInt(10_021));
        }

        private TaxRule tax() {
            List<TaxRule.Other> others =
                    coin() ? List.of() : List.of(new TaxRule.Other(number(0, 100), List.of("one")));
            return new TaxRule(
                    "Tax " + random.nextInt(3),
                    number(0, 100),
                    of(List.of(
                            RoundingMode.HALF_UP, RoundingMode.HALF_EVEN, RoundingMode.HALF_DOWN, RoundingMode.DOWN)),
                    of(List.of(TaxRule.On.values())),
                    others,
                    coin() ? Optional.of(new BigDecimal("0.1")) : Optional.empty(),
                    perhaps(1, 100));
        }

        private Rates rates() {
            Map<String, BigDecimal> charge = new HashMap<>();
            charge.put("a", number(1, 100));
            ids().forEach(id -> charge.put(id, number(1, 100)));
            Map<String, Rates.SkillRate> bySkill = new HashMap<>();
            ids().forEach(id -> bySkill.put(id, new Rates.SkillRate("a", perhaps(1, 50))));
            BigDecimal afterAll = number(0, 50);
            return new Rates(
                    CurrencyUnit.of(of(List.of("GBP", "EUR", "JPY"))),
                    charge,
                    number(1, 100),
                    number(0, 100),
                    number(1, 100),
                    number(0, 100),
                    number(0, 100),
                    number(0, 100),
                    number(0, 100),
                    number(0, 100),
                    new Rates.Margins(number(0, 99), afterAll, coin() ? Optional.empty() : Optional.of(number(50, 99))),
                    new Rates.Contingency(number(0, 200), number(0, 200), number(0, 200), perhaps(50, 99)),
                    bySkill);
        }

        private FilmLimits film() {
            BigDecimal stop = number(1, 100);
            BigDecimal care = stop.add(number(0, 200));
            if (coin()) {
                return FilmLimits.of(stop, care);
            }
            BigDecimal repaint = care.add(number(0, 500));
            int small = 1 + random.nextInt(9);
            int panel = small + random.nextInt(9);
            return new FilmLimits(
                    stop,
                    care,
                    repaint,
                    repaint.add(number(0, 500)),
                    new GaugeError(number(0, 9), coin() ? GaugeError.USUAL.percent() : number(0, 9)),
                    new TopcoatShares(
                            number(0, 1), number(0, 99), number(0, 99), number(0, 1), number(0, 99), number(0, 1)),
                    new ReadingCounts(small, panel, panel + random.nextInt(9), number(1, 9)));
        }

        private OpeningTimes hours() {
            Map<DayOfWeek, List<OpeningTimes.Span>> week = new HashMap<>();
            week.put(DayOfWeek.SUNDAY, List.of(new OpeningTimes.Span(LocalTime.of(22, 30), LocalTime.MIDNIGHT)));
            for (DayOfWeek day : DayOfWeek.values()) {
                if (coin()) {
                    week.put(
                            day,
                            List.of(
                                    new OpeningTimes.Span(LocalTime.of(6, random.nextInt(60)), LocalTime.of(9, 0)),
                                    new OpeningTimes.Span(LocalTime.of(13, 0), LocalTime.of(17, 45))));
                }
            }
            return new OpeningTimes(week, coin() ? Set.of() : Set.of(LocalDate.of(2026, 12, 1 + random.nextInt(31))));
        }

        private SafetySettings safety() {
            SafetySettings usual = SafetySettings.USUAL;
            Map<String, Double> lux = new LinkedHashMap<>(usual.light().families());
            lux.put("cabin", binary(0, 2000));
            List<ApartPair> apart = new ArrayList<>(usual.apart());
            if (coin()) {
                ApartPair first = apart.get(0);
                apart.set(
                        0,
                        new ApartPair(
                                first.id(),
                                List.of("group:acid"),
                                first.second(),
                                ApartPair.Within.DAY,
                                random.nextInt(99),
                                Severity.WARN,
                                first.why()));
            }
            apart.add(new ApartPair(
                    "own",
                    List.of("risk:heat"),
                    List.of("item:thinner"),
                    of(List.of(ApartPair.Within.values())),
                    random.nextInt(3),
                    of(List.of(Severity.values())),
                    text()));
            return new SafetySettings(
                    coin()
                            ? usual.vibration()
                            : new SafetySettings.VibrationRule(
                                    binary(1, 2), binary(3, 5), Comparison.AT_OR_ABOVE, 0.25),
                    coin()
                            ? usual.noise()
                            : new SafetySettings.NoiseRule(
                                    binary(40, 60), binary(60, 80), binary(80, 100), Comparison.EXCEEDS, binary(0, 40)),
                    coin()
                            ? usual.day()
                            : new SafetySettings.DayRule(SafetySettings.Reckoning.MOST, 1 + random.nextInt(1440)),
                    coin()
                            ? usual.air()
                            : new SafetySettings.AirRule(
                                    of(List.of("uk", "us")),
                                    binary(1, 10),
                                    Map.of("wash", binary(1, 999)),
                                    Map.of("thinner", new SafetySettings.Solvent("ethanol", binary(1, 100)))),
                    coin() ? usual.climate() : new SafetySettings.ClimateRule(binary(0, 20), 2, binary(0, 50)),
                    apart,
                    coin()
                            ? usual.light()
                            : new SafetySettings.LightRule(
                                    binary(0, 999), lux, usual.light().stages(), Map.of("lit", binary(0, 999))));
        }

        List<Item> items() {
            return ids().stream()
                    .map(id -> new Item(
                            id,
                            "Item " + random.nextInt(3),
                            new Quantity(number(1, 5000), of(List.of(Unit.MILLILITRE, Unit.LITRE, Unit.EACH))),
                            number(0, 100),
                            coin(),
                            perhaps(1, 25),
                            coin() ? List.of() : List.of("H319", "EUH208"),
                            ids(),
                            ids(),
                            text()))
                    .toList();
        }
    }
}
