package baywright.cli;

import baywright.document.PagePdf;
import baywright.plan.FindingText;
import baywright.safety.HazardSheet;
import baywright.safety.SheetHtml;
import baywright.site.JudgedJob;
import baywright.site.Site;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Writes a hazard sheet to the files that were asked for. */
final class SafetySheet {

    private final Session session;
    private final Optional<Path> html;
    private final Optional<Path> pdf;
    private final Optional<String> language;

    SafetySheet(Session session, Optional<Path> html, Optional<Path> pdf, Optional<String> language) {
        this.session = session;
        this.html = html;
        this.pdf = pdf;
        this.language = language;
    }

    /** A job as a part of a sheet. */
    static HazardSheet.Part part(JudgedJob judged, FindingText sentences) {
        return new HazardSheet.Part(judged.job().title(), judged.safe(), judged.safety(), sentences);
    }

    /** Words for a job's findings on a sheet in a language. */
    static FindingText onPaper(Site site, JudgedJob judged, Locale locale) {
        return site.workspace()
                .words(locale.getLanguage())
                .findings(judged.setting(), judged.job().plan(), locale);
    }

    /** Nothing when no file was asked for. The language is the shop's unless another is named. */
    void write(Site site, Function<Locale, HazardSheet> sheet) {
        if (html.isPresent() || pdf.isPresent()) {
            Locale locale =
                    language.map(Locale::forLanguageTag).orElse(site.shop().locale());
            String page = SheetHtml.of(site.inWords(sheet.apply(locale)));
            html.ifPresent(file -> save(file, page.getBytes(StandardCharsets.UTF_8)));
            pdf.ifPresent(file -> save(file, PagePdf.of(page)));
        }
    }

    private void save(Path file, byte[] content) {
        try {
            Files.write(file, content);
        } catch (IOException e) {
            throw session.badInput("safety.cannot-write", session.shown(file), e.toString());
        }
        if (!session.json()) {
            session.say("safety.wrote", session.shown(file));
        }
    }
}
