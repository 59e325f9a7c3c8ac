package baywright.swing.papers;

import baywright.document.CardHtml;
import baywright.document.JobCard;
import baywright.document.Paper;
import baywright.document.QuoteDocument;
import baywright.document.QuoteHtml;
import baywright.money.Quote;
import baywright.plan.Severity;
import baywright.safety.HazardSheet;
import baywright.safety.SheetHtml;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.swing.api.Remark;
import java.util.List;
import java.util.Locale;

/** What is handed out. */
enum Paperwork {
    QUOTE("quote"),
    CARD("card"),
    HAZARDS("hazards");

    private final String key;

    Paperwork(String key) {
        this.key = key;
    }

    /** Key of its texts, and part of the name of its file. */
    String key() {
        return key;
    }

    /** Whether there is one: a quote and a card only for a plan that nothing stops, no plug-in's remark either. */
    boolean canBeMade(WorkedJob worked, List<Remark> remarks) {
        boolean holds = worked.offer() instanceof Quote
                && remarks.stream().noneMatch(remark -> remark.severity() == Severity.STOP);
        return this == HAZARDS || holds;
    }

    /** Its page; not for the event thread. Only where it {@link #canBeMade}. */
    String html(Site site, WorkedJob worked, String language) {
        Locale locale = site.shop().localeOf(language);
        return switch (this) {
            case QUOTE ->
                QuoteHtml.of(QuoteDocument.of(site, worked, (Quote) worked.offer(), language), Paper.of(locale));
            case CARD -> CardHtml.of(JobCard.of(site, worked, language), Paper.of(locale));
            case HAZARDS ->
                SheetHtml.of(site.inWords(HazardSheet.of(site.shop().name(), part(site, worked, locale), locale)));
        };
    }

    private static HazardSheet.Part part(Site site, WorkedJob worked, Locale locale) {
        return new HazardSheet.Part(
                worked.job().title(),
                worked.safe(),
                worked.safety(),
                site.workspace()
                        .words(locale.getLanguage())
                        .findings(worked.setting(), worked.job().plan(), locale));
    }
}
