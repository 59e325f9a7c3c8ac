package baywright.cli;

import baywright.document.KeptQuote;
import baywright.document.KeptQuotes;
import baywright.document.LedgerCsv;
import baywright.document.QuoteDocument;
import baywright.document.QuoteHtml;
import baywright.money.Quote;
import baywright.site.WorkedJob;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Files that {@code plan quote} writes beside what it prints, and quotes that it keeps. */
final class QuoteFiles {

    @Mixin
    private PaperOptions paper = new PaperOptions();

    @Option(names = "--csv", paramLabel = "OUT", descriptionKey = "csv")
    private Optional<Path> csv = Optional.empty();

    @Option(names = "--keep", descriptionKey = "keep")
    private boolean keep;

    @Option(names = "--kept", paramLabel = "N", descriptionKey = "kept")
    private Optional<String> kept = Optional.empty();

    /** Which kept quote is asked for. */
    Optional<String> kept() {
        return kept;
    }

    void check(Session session, OpenedJob opened) {
        if (keep && kept.isPresent()) {
            throw session.badInput("kept.or-keep");
        }
        paper.language(session, opened.site().shop(), opened.job());
        paper.check(session, csv);
    }

    /** Keeps the quote where that is asked for. */
    Optional<KeptQuote> keep(Session session, OpenedJob opened, WorkedJob worked, Quote quote) {
        if (!keep) {
            return Optional.empty();
        }
        KeptQuotes quotes = new KeptQuotes(opened.site(), opened.file().folder());
        return Optional.of(quotes.keep(
                worked,
                quote,
                document(session, opened, worked, quote),
                opened.site().now()));
    }

    private QuoteDocument document(Session session, OpenedJob opened, WorkedJob worked, Quote quote) {
        return QuoteDocument.of(
                opened.site(),
                worked,
                quote,
                paper.language(session, opened.site().shop(), opened.job()));
    }

    /** Writes the quote of today; one that has just been kept goes out under its number. */
    void write(Session session, OpenedJob opened, WorkedJob worked, Quote quote, Optional<KeptQuote> under) {
        if (!session.json()) {
            under.ifPresent(k -> session.say("kept.kept", k.number(), k.version()));
        }
        csv.ifPresent(file -> save(session, file, LedgerCsv.of(quote.ledger())));
        if (paper.wanted()) {
            page(session, under.map(KeptQuote::document).orElseGet(() -> document(session, opened, worked, quote)));
        }
    }

    /** Writes a kept quote as it was handed out. */
    void write(Session session, KeptQuote old) {
        String language = Locale.forLanguageTag(old.document().language()).getLanguage();
        if (paper.language()
                .filter(asked -> !Locale.forLanguageTag(asked).getLanguage().equals(language))
                .isPresent()) {
            throw session.badInput("kept.language", old.number(), language);
        }
        csv.ifPresent(file -> save(session, file, LedgerCsv.of(old)));
        if (paper.wanted()) {
            page(session, old.document());
        }
    }

    private void save(Session session, Path file, String text) {
        paper.save(session, file, text.getBytes(StandardCharsets.UTF_8));
    }

    private void page(Session session, QuoteDocument document) {
        paper.write(session, Locale.forLanguageTag(document.language()), sheet -> QuoteHtml.of(document, sheet));
    }
}
