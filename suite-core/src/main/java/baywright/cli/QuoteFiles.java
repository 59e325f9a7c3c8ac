package baywright.cli;

import baywright.document.LedgerCsv;
import baywright.document.QuoteDocument;
import baywright.document.QuoteHtml;
import baywright.money.Quote;
import baywright.site.WorkedJob;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Files that {@code plan quote} writes beside what it prints. */
final class QuoteFiles {

    @Mixin
    private PaperOptions paper = new PaperOptions();

    @Option(names = "--csv", paramLabel = "OUT", descriptionKey = "csv")
    private Optional<Path> csv = Optional.empty();

    void check(Session session, OpenedJob opened) {
        paper.language(session, opened.site().shop(), opened.job());
        paper.check(session, csv);
    }

    void write(Session session, OpenedJob opened, WorkedJob worked, Quote quote) {
        csv.ifPresent(
                file -> paper.save(session, file, LedgerCsv.of(quote.ledger()).getBytes(StandardCharsets.UTF_8)));
        if (paper.wanted()) {
            String language = paper.language(session, opened.site().shop(), opened.job());
            QuoteDocument document = QuoteDocument.of(opened.site(), worked, quote, language);
            paper.write(session, opened.site().shop().localeOf(language), sheet -> QuoteHtml.of(document, sheet));
        }
    }
}
