package baywright.swing;

import baywright.site.Site;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;

/** Reads a workspace through the core. */
final class SiteReader implements ShopReader {

    private final Clock clock;
    private final Locale locale;

    SiteReader(Clock clock, Locale locale) {
        this.clock = clock;
        this.locale = locale;
    }

    @Override
    public ShopView read(Path workspace) {
        Site site = Site.open(workspace, clock);
        JobViews views = new JobViews(site, locale);
        return new ShopView(
                site.shop().name(),
                site.workspace().jobs().stream().map(views::of).toList());
    }
}
