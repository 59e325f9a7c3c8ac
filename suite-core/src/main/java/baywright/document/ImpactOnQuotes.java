package baywright.document;

import baywright.money.Fingerprint;
import baywright.money.Quote;
import baywright.share.ImpactPapers;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The kept quotes of a site, for those who ask what another library would make of them. */
public final class ImpactOnQuotes implements ImpactPapers {

    private final Site site;
    private final Map<String, Optional<KeptQuote>> read = new ConcurrentHashMap<>();

    public ImpactOnQuotes(Site site) {
        this.site = site;
    }

    @Override
    public Optional<String> newest(Job job) {
        return newestOf(job).map(kept -> kept.number() + "-v" + kept.version());
    }

    /**
     * What the newest quote rests on and is otherwise now.
     *
     * @throws baywright.workspace.WorkspaceException when the kept quote is not as it was written
     */
    @Override
    public List<String> differences(Job job, WorkedJob worked) {
        if (!(worked.offer() instanceof Quote quote)) {
            return List.of("refused");
        }
        return newestOf(job)
                .map(kept -> QuoteChange.since(kept, worked, quote).stream()
                        .map(change -> Fingerprint.of(change))
                        .toList())
                .orElse(List.of());
    }

    private Optional<KeptQuote> newestOf(Job job) {
        return read.computeIfAbsent(job.id(), id -> {
            KeptQuotes quotes = new KeptQuotes(site, id);
            return quotes.names().stream().reduce((a, b) -> b).map(quotes::read);
        });
    }
}
