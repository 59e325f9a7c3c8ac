package baywright.document;

import baywright.money.Fingerprint;
import baywright.money.Quote;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.WorkspaceException;
import baywright.workspace.WorkspaceWriter;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The quotes of a workspace that are kept, in {@code jobs/ID/quotes/NUMBER-vVERSION.json}. A file carries the SHA-256 of its
 * own values as its seal: it shows a slip of the hand or a broken disk, and does not keep out whoever means to forge one.
 */
public final class KeptQuotes {

    private static final String FORM = "baywright/quote/1";
    private static final String SCHEMA = "schema";
    private static final String SEAL = "seal";
    private static final Pattern NAME = Pattern.compile("(\\d{4}-\\d{3,6})-v([1-9]\\d{0,4})\\.json");

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private final Site site;
    private final String job;

    /** @param job name of the job's folder */
    public KeptQuotes(Site site, String job) {
        this.site = site;
        this.job = job;
    }

    /** Name of a kept quote. */
    public record Name(String number, int version) implements Comparable<Name> {
        private static final Comparator<Name> ORDER =
                Comparator.comparing(Name::number).thenComparing(Name::version);

        @Override
        public int compareTo(Name other) {
            return ORDER.compare(this, other);
        }

        @Override
        public String toString() {
            return number + "-v" + version;
        }
    }

    /** The names of this job's kept quotes, oldest first. */
    public List<Name> names() {
        return namesOf(job);
    }

    private List<Name> namesOf(String folder) {
        return namesOf(site.workspace().quotes(folder));
    }

    private static List<Name> namesOf(List<String> files) {
        return files.stream()
                .map(NAME::matcher)
                .filter(Matcher::matches)
                .map(m -> new Name(m.group(1), Integer.parseInt(m.group(2))))
                .sorted()
                .toList();
    }

    /**
     * The name that somebody means: all of it, a number for its newest version, or a version such as {@code 2} or {@code v2}
     * of the job's newest number.
     */
    public Optional<Name> find(String said) {
        List<Name> all = names();
        String bare = said.startsWith("v") ? said.substring(1) : said;
        Stream<Name> exact =
                all.stream().filter(n -> n.toString().equals(said) || n.number().equals(said));
        Stream<Name> byVersion = all.isEmpty()
                ? Stream.of()
                : all.stream()
                        .filter(n -> n.number().equals(all.get(all.size() - 1).number()))
                        .filter(n -> Integer.toString(n.version()).equals(bare));
        return Stream.concat(byVersion, exact).reduce((a, b) -> b);
    }

    /**
     * Keeps a quote. One that says the same as the newest is not kept a second time.
     *
     * @param at now, local time of the site
     * @return the quote as it is kept
     * @throws WorkspaceException when it cannot be written, or the newest cannot be read
     */
    public KeptQuote keep(WorkedJob worked, Quote quote, QuoteDocument document, LocalDateTime at) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(site.workspace())) {
            List<Name> before = names();
            Optional<Name> newest = before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
            if (newest.isPresent()) {
                KeptQuote last = read(newest.get());
                if (last.document()
                        .equals(KeptQuote.of(last.number(), last.version(), at, worked, quote, asIssued(document, last))
                                .document())) {
                    return last;
                }
            }
            Name name = newest.map(n -> new Name(n.number(), n.version() + 1)).orElseGet(() -> next(at.getYear()));
            KeptQuote kept = KeptQuote.of(name.number(), name.version(), at, worked, quote, document);
            writer.create(job, "quotes/" + name + ".json", text(kept));
            return kept;
        }
    }

    /** A later hour of proof on the same day is no other quote. */
    private static QuoteDocument asIssued(QuoteDocument document, KeptQuote last) {
        QuoteDocument.Proof proof = document.proof();
        LocalDateTime before = last.document().proof().at();
        boolean sameDay = before.toLocalDate().equals(proof.at().toLocalDate());
        return sameDay
                ? document.with(new QuoteDocument.Proof(proof.library(), proof.inputs(), before, proof.softened()))
                : document;
    }

    /** The name that the first quote of a job would get now. */
    Name next(int year) {
        Stream<Name> ofJobs = site.workspace().jobs().stream().flatMap(file -> namesOf(file.folder()).stream());
        Stream<Name> ofRemoved = namesOf(site.workspace().removedQuotes()).stream();
        int highest = Stream.concat(ofJobs, ofRemoved)
                .filter(name -> name.number().startsWith(year + "-"))
                .mapToInt(name -> Integer.parseInt(name.number().substring(5)))
                .max()
                .orElse(0);
        return new Name(String.format("%04d-%03d", year, highest + 1), 1);
    }

    private static String text(KeptQuote kept) {
        ObjectNode json = MAPPER.createObjectNode();
        json.put(SCHEMA, FORM);
        json.setAll((ObjectNode) RecordJson.write(kept));
        json.put(SEAL, seal(json));
        try {
            return MAPPER.writeValueAsString(json).replace("\r\n", "\n") + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Of everything but the seal, whatever the layout. */
    private static String seal(ObjectNode json) {
        ObjectNode bare = json.deepCopy();
        bare.remove(SEAL);
        return Fingerprint.of(bare.toString());
    }

    /**
     * Reads a kept quote.
     *
     * @throws WorkspaceException when the file is not as it was written
     */
    public KeptQuote read(Name name) {
        String file = "jobs/" + job + "/quotes/" + name + ".json";
        JsonNode json = parsed(file, site.workspace().quote(job, name + ".json"));
        if (!(json instanceof ObjectNode object)
                || !object.path(SCHEMA).asText().startsWith("baywright/quote/")) {
            throw new WorkspaceException(file + ": this is no kept quote; restore it from a copy");
        }
        if (!object.path(SCHEMA).asText().equals(FORM)) {
            throw new WorkspaceException(file + ": the file has the form '"
                    + object.path(SCHEMA).asText() + "', this version of the program reads '" + FORM
                    + "'; open it with a newer version");
        }
        if (!object.path(SEAL).asText().equals(seal(object))) {
            throw new WorkspaceException(
                    file + ": this kept quote is not as it was written, its seal does not fit; restore it from a copy,"
                            + " or keep a new version");
        }
        try {
            KeptQuote kept = RecordJson.read(KeptQuote.class, object);
            if (!new Name(kept.number(), kept.version()).equals(name)) {
                throw new RecordJson.Misfit("the quote in it is " + kept.number() + "-v" + kept.version());
            }
            return kept;
        } catch (RecordJson.Misfit e) {
            throw new WorkspaceException(file + ": this kept quote cannot be used, " + e.getMessage(), e);
        }
    }

    private static JsonNode parsed(String file, String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            String place = e.getLocation() == null
                    ? ""
                    : ":" + e.getLocation().getLineNr() + ":" + e.getLocation().getColumnNr();
            throw new WorkspaceException(
                    file + place
                            + ": this kept quote is not as it was written, it is no JSON here; restore it from a copy, or"
                            + " keep a new version",
                    e);
        }
    }
}
