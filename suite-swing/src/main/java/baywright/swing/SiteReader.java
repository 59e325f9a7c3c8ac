package baywright.swing;

import baywright.library.ScriptCache;
import baywright.site.Site;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;

/** Reads a workspace through the core. */
final class SiteReader implements ShopReader {

    private final Clock clock;
    private final Locale locale;
    private final ScriptCache cache;

    SiteReader(Clock clock, Locale locale, ScriptCache cache) {
        this.clock = clock;
        this.locale = locale;
        this.cache = cache;
    }

    @Override
    public ShopView read(Path workspace) {
        Site site = Site.open(workspace, clock, cache);
        JobViews views = new JobViews(site, locale);
        return new ShopView(
                site.shop().name(),
                site.workspace().jobs().stream().map(views::of).toList());
    }
}
