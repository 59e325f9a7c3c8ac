package baywright.document;

import baywright.money.Quote;
import baywright.plan.Step.Priority;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.vehicle.FilmBand;
import baywright.vehicle.FilmSign;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.joda.money.Money;

/**
 * A quote in the customer's words: what was found, what is done and why, what it costs, what it does not include. Sentences
 * are in the document's language already; figures and dates are plain values. Amounts on it add up as they stand: what an
 * option adds is the difference of two totals, and the lines of a sum share it out to the last coin.
 *
 * @param language   BCP 47 language and country
 * @param from       who offers
 * @param reference  number, version, dates
 * @param customer   to whom; may be empty
 * @param title      of the job
 * @param vehicle    what is worked on
 * @param arrives    when it comes, if agreed
 * @param wanted     when it must be ready, if agreed
 * @param wishes     in the customer's own words
 * @param found      what the survey found
 * @param work       what is done in any case, by families of stages in order of first use; empty when all is optional
 * @param options    what may be had beside it, the most advisable first; each stands on those before it
 * @param exclusions sentences on what is not included
 * @param risks      what the customer is told and signs for
 * @param sums       what it costs
 * @param proof      what it rests on
 */
public record QuoteDocument(
        String language,
        From from,
        Reference reference,
        String customer,
        String title,
        Vehicle vehicle,
        Optional<LocalDateTime> arrives,
        Optional<LocalDateTime> wanted,
        List<String> wishes,
        Found found,
        List<Chapter> work,
        List<Choice> options,
        List<String> exclusions,
        List<Risk> risks,
        Sums sums,
        Proof proof) {

    public QuoteDocument {
        wishes = List.copyOf(wishes);
        work = List.copyOf(work);
        options = List.copyOf(options);
        exclusions = List.copyOf(exclusions);
        risks = List.copyOf(risks);
    }

    /** The shop; texts may be empty. */
    public record From(String name, List<String> address, String phone, String email, String web, String taxNumber) {
        public From {
            address = List.copyOf(address);
        }
    }

    /**
     * Which quote it is.
     *
     * @param number     under which it is kept; empty for one that is not
     * @param version    from 1; 0 for one that is not kept
     * @param issued     day of issue
     * @param validUntil last day on which it stands
     */
    public record Reference(Optional<String> number, int version, LocalDate issued, LocalDate validUntil) {}

    /** The vehicle in words that may be empty, and how many alike. */
    public record Vehicle(String shape, String description, String colour, Optional<String> vin, int count) {}

    /** What the survey found. */
    public record Found(List<Fact> facts, List<PanelFilm> films, List<ZoneNote> notes) {
        public Found {
            facts = List.copyOf(facts);
            films = List.copyOf(films);
            notes = List.copyOf(notes);
        }
    }

    /** A fact about the whole vehicle. */
    public record Fact(String what, String value) {}

    /**
     * The film of a painted zone.
     *
     * @param zone     its title
     * @param count    how many readings
     * @param lowest   µm; empty without readings, and so are the other two
     * @param band     what it says
     * @param readable whether a gauge can read it at all
     * @param signs    what is odd about it
     */
    public record PanelFilm(
            String zone,
            int count,
            Optional<BigDecimal> lowest,
            Optional<BigDecimal> mean,
            Optional<BigDecimal> highest,
            FilmBand band,
            boolean readable,
            Set<FilmSign> signs) {
        public PanelFilm {
            signs = Collections.unmodifiableSet(new TreeSet<>(signs));
        }
    }

    /** What was noted, and where. */
    public record ZoneNote(String note, String zones) {}

    /**
     * Stages of one family.
     *
     * @param net what they cost without tax, getting ready for them included
     */
    public record Chapter(String title, List<Task> tasks, Money net) {
        public Chapter {
            tasks = List.copyOf(tasks);
        }
    }

    /**
     * A stage, however often it is used.
     *
     * @param about what it is for; may be empty
     * @param zones where, in words
     * @param times how often, from 1
     */
    public record Task(String title, String about, String zones, int times) {}

    /** A task with its price without tax. */
    public record Priced(Task task, Money net) {}

    /**
     * Steps of one priority that the customer may take or leave.
     *
     * @param tasks what is done
     * @param extra getting ready, materials that do not keep; may be zero
     * @param adds  what comes on top of the total before
     * @param total with everything before
     */
    public record Choice(Priority priority, List<Priced> tasks, Money extra, Amounts adds, Amounts total) {
        public Choice {
            tasks = List.copyOf(tasks);
        }
    }

    /**
     * Net and tax add up to gross.
     *
     * @param discount what was let off before {@code net}, above zero; empty: nothing
     */
    public record Amounts(Optional<Money> discount, Money net, Money tax, Money gross) {

        /** Net before anything is let off: what the lines of the sum add up to. */
        public Money undiscounted() {
            return discount.map(net::plus).orElse(net);
        }
    }

    /**
     * What the customer is told.
     *
     * @param text     a sentence
     * @param because  its reason; may be empty
     * @param zones    where; may be empty
     * @param signedBy who has signed already; empty: still to be signed
     * @param signedAt when
     */
    public record Risk(String text, String because, String zones, String signedBy, Optional<LocalDateTime> signedAt) {}

    /**
     * The price.
     *
     * @param base               of the work that is done in any case, or of the first option where all is optional
     * @param all                of the work with every option
     * @param high               of the base with the contingency
     * @param allHigh            of all with the contingency
     * @param contingencyPercent of labour
     * @param taxName            what people call the tax
     * @param taxPercent         its rate
     * @param depositPercent     of what is taken
     * @param baseDeposit        for the base
     * @param allDeposit         for everything
     */
    public record Sums(
            Amounts base,
            Amounts all,
            Money high,
            Money allHigh,
            BigDecimal contingencyPercent,
            String taxName,
            BigDecimal taxPercent,
            BigDecimal depositPercent,
            Money baseDeposit,
            Money allDeposit) {}

    /**
     * What the quote rests on.
     *
     * @param library  SHA-256 of the library
     * @param inputs   SHA-256 of vehicle, survey, plan and terms
     * @param at       when it was proved
     * @param softened rules that the shop has softened, with its reasons
     */
    public record Proof(String library, String inputs, LocalDateTime at, Map<String, String> softened) {
        public Proof {
            softened = Collections.unmodifiableMap(new TreeMap<>(softened));
        }
    }

    /**
     * The document of a quote that is not kept.
     *
     * @param language two or three letters, with or without a country
     */
    public static QuoteDocument of(Site site, WorkedJob worked, Quote quote, String language) {
        return new QuoteDraft(site, worked, quote, language).document();
    }

    /** The same under a number. */
    public QuoteDocument under(String number, int version) {
        Reference kept = new Reference(Optional.of(number), version, reference.issued(), reference.validUntil());
        return with(kept, proof);
    }

    /** The same with another proof record. */
    QuoteDocument with(Proof other) {
        return with(reference, other);
    }

    private QuoteDocument with(Reference which, Proof with) {
        return new QuoteDocument(
                language,
                from,
                which,
                customer,
                title,
                vehicle,
                arrives,
                wanted,
                wishes,
                found,
                work,
                options,
                exclusions,
                risks,
                sums,
                with);
    }
}
