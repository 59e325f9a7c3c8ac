package baywright.cli;

import baywright.document.PagePdf;
import baywright.document.Paper;
import baywright.document.Texts;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** Where a document goes, in which language and on which paper. */
final class PaperOptions {

    @Option(names = "--html", paramLabel = "OUT", descriptionKey = "document-html")
    private Optional<Path> html = Optional.empty();

    @Option(names = "--pdf", paramLabel = "OUT", descriptionKey = "document-pdf")
    private Optional<Path> pdf = Optional.empty();

    @Option(names = "--language", paramLabel = "LANGUAGE", descriptionKey = "language")
    private Optional<String> language = Optional.empty();

    @Option(names = "--paper", paramLabel = "PAPER", descriptionKey = "paper")
    private Optional<Paper> paper = Optional.empty();

    @Option(names = "--force", descriptionKey = "force")
    private boolean force;

    /** Whether a document is asked for. */
    boolean wanted() {
        return html.isPresent() || pdf.isPresent();
    }

    /** The language that was asked for. */
    Optional<String> language() {
        return language;
    }

    /**
     * Language of the document: as asked for, else the job's, else the shop's.
     *
     * @throws BadInput when there are no texts in the language that was asked for
     */
    String language(Session session, Shop shop, Job job) {
        if (language.isPresent() && !Texts.nearest(language.get()).equals(language.get())) {
            throw session.badInput("document.language", language.get(), String.join(", ", Texts.LANGUAGES));
        }
        return language.orElseGet(() -> Texts.nearest(job.language().orElse(shop.language())));
    }

    /**
     * Refuses before anything is worked out when a file is there that nobody said to overwrite.
     *
     * @param more further files that will be written
     */
    void check(Session session, Optional<Path> more) {
        for (Optional<Path> file : java.util.List.of(html, pdf, more)) {
            if (file.filter(f -> !force && Files.exists(f, LinkOption.NOFOLLOW_LINKS))
                    .isPresent()) {
                throw session.badInput("document.there", session.shown(file.get()));
            }
        }
    }

    /** Writes the document where it is asked for. */
    void write(Session session, Locale locale, Function<Paper, String> page) {
        String made = page.apply(paper.orElseGet(() -> Paper.of(locale)));
        html.ifPresent(file -> save(session, file, made.getBytes(StandardCharsets.UTF_8)));
        pdf.ifPresent(file -> save(session, file, PagePdf.of(made)));
    }

    /** Writes a file; one that is there is overwritten only with {@code --force}. */
    void save(Session session, Path file, byte[] content) {
        OpenOption[] how = force
                ? new OpenOption[] {
                    StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING
                }
                : new OpenOption[] {StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE};
        try {
            Files.write(file, content, how);
        } catch (java.nio.file.FileAlreadyExistsException e) {
            throw session.badInput("document.there", session.shown(file));
        } catch (IOException e) {
            throw session.badInput("safety.cannot-write", session.shown(file), e.toString());
        }
        if (!session.json()) {
            session.say("document.wrote", session.shown(file));
        }
    }
}
