package baywright.document;

import baywright.DemoSite;
import baywright.money.Quote;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** The demo's sites as a user gets them, on a fixed day. */
final class Paperwork {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private Paperwork() {}

    /** A copy of a demo site below a folder. */
    static Site site(Path folder, String name) {
        Path root = folder.resolve(name);
        Workspace.create(root, Path.of("..", "demo", name), Path.of("..", "stage-scripts"));
        return opened(root);
    }

    /** A site as its files are now. */
    static Site opened(Path root) {
        return Site.open(root, CLOCK, DemoSite.SCRIPTS);
    }

    static WorkedJob job(Site site, String folder) {
        return site.work(site.job(site.workspace().job(folder).orElseThrow()));
    }

    static QuoteDocument quote(Site site, String folder, String language) {
        WorkedJob worked = job(site, folder);
        return QuoteDocument.of(site, worked, (Quote) worked.offer(), language);
    }
}
