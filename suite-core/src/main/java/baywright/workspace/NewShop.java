package baywright.workspace;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * A shop that is to be made, in the words that someone has typed. What is wrong with them is told by the reader of {@code shop.json}, so that a
 * shop that is made can be opened. Numbers may have a decimal comma.
 *
 * @param name      words for people
 * @param currency  ISO 4217 code
 * @param timeZone  region of the IANA time zone database
 * @param language  BCP 47 language of its documents
 * @param taxName   what the tax on sales is called
 * @param taxPercent in percent
 * @param charge    what an attended hour is charged at, by grade; a grade without a rate is left out
 * @param wage      pay of an hour
 * @param hours     when it is open, such as {@code 08:00-12:00, 13:00-17:00}; a day without is a day off
 * @param bays      where work is done
 * @param people    who works there
 */
public record NewShop(
        String name,
        String currency,
        String timeZone,
        String language,
        String taxName,
        String taxPercent,
        Map<String, String> charge,
        String wage,
        Map<DayOfWeek, String> hours,
        List<NewBay> bays,
        List<NewPerson> people) {

    /**
     * A bay.
     *
     * @param title      words for people
     * @param kind       what it serves as, ids with commas or spaces between them
     * @param conditions what it gives, in the same way
     */
    public record NewBay(String title, String kind, String conditions) {}

    /**
     * Someone who works there.
     *
     * @param name   words for people
     * @param skills ids with commas or spaces between them
     */
    public record NewPerson(String name, String skills) {}

    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,12}([.,]\\d{1,9})?");
    private static final Pattern SHORT_HOUR = Pattern.compile("(?<!\\d)(\\d:\\d\\d)");
    private static final Pattern DASH = Pattern.compile("\\s*[-\u2013\u2014]\\s*");
    private static final String DAY = "08:00-12:00, 13:00-17:00";

    public NewShop {
        charge = Collections.unmodifiableMap(new LinkedHashMap<>(charge));
        hours = Map.copyOf(hours);
        bays = List.copyOf(bays);
        people = List.copyOf(people);
    }

    /**
     * A shop to begin from: a wash bay, a lit bay and a clean bay, open on weekdays, with rates that are examples. All figures are common
     * practice without a source, and each shop has its own.
     *
     * @param locale of the user, for language and currency
     */
    public static NewShop usual(Locale locale, ZoneId zone) {
        Map<DayOfWeek, String> week = new EnumMap<>(DayOfWeek.class);
        Stream.of(DayOfWeek.values()).limit(5).forEach(day -> week.put(day, DAY));
        Map<String, String> charge = new LinkedHashMap<>();
        charge.put("valeting", "40");
        charge.put("detailing", "45");
        charge.put("coating", "52");
        return new NewShop(
                "",
                currencyOf(locale),
                zone.getId(),
                locale.getLanguage().equals("de") ? "de" : "en",
                locale.getLanguage().equals("de") ? "USt." : "VAT",
                "20",
                charge,
                "16",
                week,
                List.of(
                        new NewBay(
                                "Wash bay",
                                "wash, isolated",
                                "cool, shade, drained, ventilated, engine-cold, electrics-covered"),
                        new NewBay("Lit bay", "lit, indoors, flat, reception", "cool, shade, lit, ventilated"),
                        new NewBay("Clean bay", "clean, film, indoors", "cool, shade, lit, ventilated, still, heated")),
                List.of(new NewPerson("", "correction, coating")));
    }

    private static String currencyOf(Locale locale) {
        return CurrencyUnit.registeredCurrencies().stream()
                .filter(unit ->
                        !unit.isPseudoCurrency() && unit.getCountryCodes().contains(locale.getCountry()))
                .map(CurrencyUnit::getCode)
                .findFirst()
                .orElse("EUR");
    }

    /** What is wrong, with the path of each field, such as {@code rates.wage} or {@code bays[0].title}; empty when it can be made. */
    public List<FileProblem> problems() {
        Report report = new Report(new Source(Workspace.SHOP, text()));
        ShopJson.read(report);
        return report.problems();
    }

    /** An id out of its name, which also serves as the name of its folder. */
    public String id() {
        return JobEdit.idFor(name, "shop", List.of());
    }

    /** The text of its {@code shop.json}. */
    String text() {
        return JsonForm.of(draft().onto(null));
    }

    private Draft draft() {
        return Draft.object()
                .with("schema", Draft.text("baywright/" + ShopJson.KIND + "/" + ShopJson.VERSION))
                .with("id", Draft.text(id()))
                .with("name", Draft.text(name.strip()))
                .with("currency", Draft.text(currency.strip().toUpperCase(Locale.ROOT)))
                .with("timeZone", Draft.text(timeZone.strip()))
                .with("language", Draft.text(language.strip()))
                .with(
                        "tax",
                        Draft.object()
                                .with("name", Draft.text(taxName.strip()))
                                .with("percent", number(taxPercent))
                                .with("rounding", Draft.text("half-up"))
                                .with("on", Draft.text("total")))
                .with("rates", rates())
                .with("margins", numbers("afterDirectPercent", 45, "afterAllPercent", 10))
                .with("contingency", numbers("trialDonePercent", 5, "noTrialPercent", 12, "riskyPercent", 20))
                .with("quote", numbers("validDays", 30, "depositPercent", 25))
                .with("film", numbers("stopBelow", 60, "careBelow", 90))
                .with("hours", week())
                .with("bays", bayDrafts())
                .with("people", peopleDrafts());
    }

    private Draft rates() {
        Map<String, String> given = new LinkedHashMap<>(charge);
        given.values().removeIf(String::isBlank);
        return Draft.object()
                .with("charge", Draft.map(given, NewShop::number))
                .with("wage", number(wage))
                .with("employerPercent", number("22"))
                .with("utilisationPercent", number("75"))
                .with("overhead", number("9"))
                .with("machine", number("1.5"))
                .with("wastePerJob", number("5"))
                .with("reworkPercent", number("3"))
                .with("materialMarkupPercent", number("25"));
    }

    private static Draft numbers(Object... namesAndNumbers) {
        Draft.Obj draft = Draft.object();
        for (int i = 0; i < namesAndNumbers.length; i += 2) {
            draft.with((String) namesAndNumbers[i], number(String.valueOf(namesAndNumbers[i + 1])));
        }
        return draft;
    }

    /** What is no number stays as typed, for the reader to refuse it in its place. */
    private static Draft number(String typed) {
        String text = typed.strip();
        return NUMBER.matcher(text).matches() ? Draft.number(new BigDecimal(text.replace(',', '.'))) : Draft.text(text);
    }

    private Draft week() {
        Draft.Obj draft = Draft.object();
        for (DayOfWeek day : DayOfWeek.values()) {
            List<String> spans = Stream.of(hours.getOrDefault(day, "").split("[,;]"))
                    .map(NewShop::span)
                    .filter(span -> !span.isEmpty())
                    .toList();
            draft.with(day.name().toLowerCase(Locale.ROOT), Draft.texts(spans));
        }
        return draft;
    }

    private static String span(String typed) {
        String joined = DASH.matcher(typed.strip()).replaceAll("-");
        return SHORT_HOUR.matcher(joined).replaceAll("0$1");
    }

    private Draft bayDrafts() {
        List<String> taken = new ArrayList<>();
        return Draft.list(
                bays,
                bay -> Draft.object()
                        .with("id", Draft.text(fresh(bay.title(), "bay", taken)))
                        .with("title", Draft.text(bay.title().strip()))
                        .with("kind", Draft.texts(ids(bay.kind())))
                        .with("conditions", Draft.texts(ids(bay.conditions()))));
    }

    private Draft peopleDrafts() {
        List<String> taken = new ArrayList<>();
        return Draft.list(
                people,
                person -> Draft.object()
                        .with("id", Draft.text(fresh(person.name(), "person", taken)))
                        .with("name", Draft.text(person.name().strip()))
                        .with("skills", Draft.texts(ids(person.skills()))));
    }

    private static String fresh(String title, String otherwise, List<String> taken) {
        String id = JobEdit.idFor(title, otherwise, taken);
        taken.add(id);
        return id;
    }

    private static List<String> ids(String typed) {
        return Stream.of(BETWEEN.split(typed.strip()))
                .map(word -> word.toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /**
     * Makes its workspace: the shop, a copy of the standard stage scripts that is the shop's own from now on, and their price list in the shop's
     * currency. The prices are examples: their numbers are not converted.
     *
     * @param folder  where; must not exist or be empty
     * @param library the standard stage scripts, with {@code shapes.json} and {@code items.json}
     * @return the workspace, read
     * @throws WorkspaceException when something is wrong with what was typed, or it cannot be made; nothing half-made stays behind
     */
    public Workspace create(Path folder, Path library) {
        Optional<FileProblem> wrong =
                problems().stream().filter(FileProblem::isError).findFirst();
        if (wrong.isPresent()) {
            throw new WorkspaceException(
                    folder + ": the shop is not made, " + wrong.get().message());
        }
        Map<String, String> files = new LinkedHashMap<>();
        files.put(Workspace.SHOP, text());
        files.put(Workspace.ITEMS, prices(library));
        WorkspaceCopy.make(files, library, folder);
        return Workspace.open(folder);
    }

    private String prices(Path library) {
        try {
            Source source =
                    new TextFile(library).read(library.resolve(Workspace.ITEMS)).source();
            Json list = JsonReader.read(new Report(source))
                    .orElseThrow(() -> new WorkspaceException(
                            library + ": the price list there cannot be read; install the program again"));
            Draft other =
                    Draft.object().with("currency", Draft.text(currency.strip().toUpperCase(Locale.ROOT)));
            return JsonForm.of(other.onto(list), source);
        } catch (TextFile.Unreadable e) {
            throw new WorkspaceException(library + ": " + e.problem().message(), e);
        }
    }
}
