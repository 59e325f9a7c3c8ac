package baywright.cli;

import baywright.chance.Watch;
import baywright.document.ImpactOnQuotes;
import baywright.library.Item;
import baywright.library.Library;
import baywright.share.Impact;
import baywright.site.LibraryFolder;
import baywright.site.Site;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright shop impact WORKSPACE --with FOLDER}: what other stage scripts would make of the shop's jobs. */
@Command(name = "impact", resourceBundle = CommandTree.HELP)
final class ShopImpactCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    @Option(names = "--with", paramLabel = "FOLDER", required = true, descriptionKey = "impact-with")
    private Path with;

    ShopImpactCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Site site = Site.open(workspace, session.clock(), session.cache());
        site.workspace().jobs().stream()
                .filter(file -> file.job().isEmpty())
                .forEach(file -> session.console()
                        .err()
                        .println(session.text(
                                "timetable.skipped",
                                file.folder(),
                                session.command(),
                                session.shown(workspace.resolve("jobs").resolve(file.folder())))));
        Library other = other(site);
        Impact impact = Progress.during(
                session, "impact.progress", () -> Impact.of(site, other, new ImpactOnQuotes(site), Watch.NOBODY));
        new ImpactPrinter(session, site, other).print(impact);
        return impact.stopping().isEmpty() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    /** The folder's scripts at the site's own prices; what only the folder has comes at the folder's. */
    private Library other(Site site) {
        LibraryFolder folder = LibraryPath.around(session, with);
        List<Item> items = new ArrayList<>(site.workspace().items());
        Set<String> own = items.stream().map(Item::id).collect(Collectors.toSet());
        folder.items().stream().filter(item -> !own.contains(item.id())).forEach(items::add);
        LibraryFolder.Loaded loaded = new LibraryFolder(
                        folder.folder(), folder.below(), items, folder.shapes(), folder.before())
                .load(session.cache());
        loaded.refuseErrors(folder.folder());
        return loaded.library();
    }
}
