package baywright.workspace;

import baywright.money.Rates;
import baywright.money.TaxRule;
import baywright.plan.Bay;
import baywright.plan.HouseRules;
import baywright.safety.SafetySettings;
import baywright.schedule.OpeningTimes;
import baywright.schedule.ShopCalendar;
import baywright.vehicle.FilmLimits;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * One site as {@code shop.json} describes it. All money is in its currency and without tax.
 *
 * @param id       stable kebab-case id
 * @param name     words for people, printed on quotes
 * @param timeZone where its local times are
 * @param language BCP 47 language of its documents, such as {@code en} or {@code en-GB}
 * @param tax      tax on its sales
 * @param rates    what it charges and what its hours and materials cost
 * @param quote    terms of its quotes
 * @param film     what it concludes from which film
 * @param bays     where work is done; ids are unique
 * @param people   who works there; ids are unique
 * @param safety   what plans are held to so that nobody is hurt
 * @param rules    what it makes of the library's rules
 * @param letterhead where it is and how it is reached, as printed on its documents
 * @param times    when work can go on, and how much of what there is
 */
public record Shop(
        String id,
        String name,
        ZoneId timeZone,
        String language,
        TaxRule tax,
        Rates rates,
        QuoteTerms quote,
        FilmLimits film,
        List<Bay> bays,
        List<Person> people,
        SafetySettings safety,
        HouseRules rules,
        Letterhead letterhead,
        WorkingTimes times) {

    private static final String EUROPE = "150";

    public Shop {
        bays = List.copyOf(bays);
        people = List.copyOf(people);
    }

    public CurrencyUnit currency() {
        return rates.currency();
    }

    /** What a timetable can count on. */
    public ShopCalendar calendar() {
        List<ShopCalendar.Hand> hands = people.stream()
                .map(p -> new ShopCalendar.Hand(
                        p.id(),
                        p.name(),
                        p.skills(),
                        Optional.ofNullable(times.people().get(p.id()))))
                .toList();
        return new ShopCalendar(
                timeZone, times.hours(), hands, times.places(), times.machines(), List.of(), times.working());
    }

    /**
     * When work can go on, and how much of what there is.
     *
     * @param hours    when the shop is open
     * @param people   when a person works, by id, for those who do not work whenever it is open
     * @param places   how many vehicles a bay takes, by id
     * @param machines how many there are of a kind of equipment, by its words in the scripts
     * @param working  how long anyone works, and the rest between two days
     */
    public record WorkingTimes(
            OpeningTimes hours,
            Map<String, OpeningTimes> people,
            Map<String, Integer> places,
            Map<String, Integer> machines,
            ShopCalendar.WorkingTime working) {
        public WorkingTimes {
            people = Map.copyOf(people);
            places = Map.copyOf(places);
            machines = Map.copyOf(machines);
        }
    }

    /** How its documents write dates and numbers. */
    public Locale locale() {
        return locale(language, currency());
    }

    /** How a document in another language writes dates and numbers. */
    public Locale localeOf(String other) {
        return locale(other, currency());
    }

    /**
     * A language without a country is read as that of the country whose money the shop takes: the first two letters of
     * an ISO 4217 code are those of the country (ISO 3166-1). The euro has no country; its region is Europe, 150 of UN M49.
     */
    static Locale locale(String language, CurrencyUnit currency) {
        Locale given = Locale.forLanguageTag(language);
        if (!given.getCountry().isEmpty()) {
            return given;
        }
        String country = currency.getCode().substring(0, 2);
        String region = country.equals("EU") ? EUROPE : country;
        boolean known =
                region.equals(EUROPE) || Arrays.asList(Locale.getISOCountries()).contains(region);
        return known ? new Locale.Builder().setLocale(given).setRegion(region).build() : given;
    }

    /**
     * Terms of quotes.
     *
     * @param validDays      how long a quote holds, in days
     * @param depositPercent in percent of the price
     * @param notIncluded    sentences on what no quote of the shop includes, in its own words; empty: the usual ones
     */
    public record QuoteTerms(int validDays, BigDecimal depositPercent, List<String> notIncluded) {
        public QuoteTerms {
            notIncluded = List.copyOf(notIncluded);
        }
    }

    /**
     * Head of the shop's documents. Every text may be empty and is then not printed.
     *
     * @param address   lines of the postal address, without the name
     * @param phone     as it is dialled
     * @param email     address for letters
     * @param web       page
     * @param taxNumber the shop's number with the tax office
     */
    public record Letterhead(List<String> address, String phone, String email, String web, String taxNumber) {

        /** A shop that says nothing but its name. */
        public static final Letterhead NONE = new Letterhead(List.of(), "", "", "", "");

        public Letterhead {
            address = List.copyOf(address);
        }
    }

    /** Someone who works there, with the ids of what they are skilled in. */
    public record Person(String id, String name, List<String> skills) {
        public Person {
            skills = List.copyOf(skills);
        }
    }
}
