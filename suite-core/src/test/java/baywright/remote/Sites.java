package baywright.remote;

import baywright.library.ScriptCache;
import baywright.pack.Consent;
import baywright.pack.Pack;
import baywright.pack.PackMaker;
import baywright.pack.SigningKey;
import baywright.pack.Version;
import baywright.share.Choice;
import baywright.share.TakenPack;
import baywright.share.Taking;
import baywright.share.TwoSites;
import baywright.workspace.Workspace;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.eclipse.jgit.internal.storage.file.FileRepository;

/** A bare repository and sites that share a small library through it. */
final class Sites {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-07T07:00:00Z"), ZoneOffset.UTC);
    static final Optional<Consent> YES = Consent.of("Ines: looked through every script");
    static final String WASH = TwoSites.WASH;
    static final String WORDS = TwoSites.WORDS;

    private static final Path MILL = Path.of("src", "test", "resources", "baywright", "workspace", "mill");
    private static final String DECLARED = """
            surface 'paint', means: 'painted panels'
            family 'wash', title: 'Washing'
            state 'wet', means: 'carries water'
            state 'clean', means: 'carries no dirt'
            """;

    private final Path folder;

    private Sites(Path folder) {
        this.folder = folder;
    }

    /** A remote whose main line has two stages, and no sites yet. */
    static Sites in(Path folder) {
        Sites sites = empty(folder);
        Site first = sites.site("first");
        first.have(WORDS, DECLARED);
        first.have(WASH, TwoSites.stage("rinse", 3) + TwoSites.stage("foam", 5));
        try (SharedLibrary library = first.opened()) {
            library.begin(first.pack("1.0.0"), Watch.NOBODY);
        }
        return sites;
    }

    /** A remote without anything in it. */
    static Sites empty(Path folder) {
        GitSetup.settle();
        Sites sites = new Sites(folder);
        sites.makeRemote();
        return sites;
    }

    private void makeRemote() {
        try (FileRepository bare = new FileRepository(remote().toFile())) {
            bare.create(true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path remote() {
        return folder.resolve("remote.git");
    }

    File remoteFile() {
        return remote().toFile();
    }

    /** The remote's own repository. */
    FileRepository bare() {
        try {
            return new FileRepository(remoteFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A site that is there from now on, with a shop and a price list and without scripts. */
    Site site(String id) {
        Site site = new Site(folder.resolve(id));
        if (Files.notExists(site.root)) {
            site.have(
                    "shop.json",
                    read(MILL.resolve("shop.json")).replaceFirst("\"id\": \"[a-z-]+\"", "\"id\": \"" + id + "\""));
            site.have("items.json", read(MILL.resolve("items.json")));
            site.have("stages/own.groovy", "// our own\n");
        }
        return site;
    }

    /** A site that has taken the main line. */
    Site follower(String id) {
        Site site = site(id);
        site.follow();
        return site;
    }

    /** One of the sites. */
    final class Site {

        final Path root;

        private Site(Path root) {
            this.root = root;
        }

        String id() {
            return String.valueOf(root.getFileName());
        }

        Workspace workspace() {
            return Workspace.open(root);
        }

        SharedLibrary opened() {
            return SharedLibrary.follow(
                    workspace(), remote().toString(), "main", Optional.empty(), Access.NOBODY, CLOCK);
        }

        Pack pack(String version) {
            PackMaker.About about = new PackMaker.About(
                    "gentle-wash", Version.of(version), "The Mill", "to wash gently", "CC-BY-4.0", List.of(), false);
            return PackMaker.make(workspace(), PackMaker.Selection.EVERYTHING, about, List.of())
                    .pack();
        }

        void have(String file, String text) {
            try {
                Files.createDirectories(root.resolve(file).getParent());
                Files.writeString(root.resolve(file), text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        void change(String file, String from, String to) {
            String text = had(file);
            if (!text.contains(from)) {
                throw new AssertionError(from + " is not in " + text);
            }
            have(file, text.replace(from, to));
        }

        String had(String file) {
            return read(root.resolve(file));
        }

        Fetched fetch() {
            try (SharedLibrary library = opened()) {
                return library.fetch(Watch.NOBODY);
            }
        }

        TakenPack follow(Choice choice) {
            try (SharedLibrary library = opened()) {
                library.fetch(Watch.NOBODY);
                return library.taking(workspace(), choice, ScriptCache.none()).take(YES, CLOCK);
            }
        }

        TakenPack follow() {
            return follow(Choice.ALL);
        }

        Taking taking() {
            try (SharedLibrary library = opened()) {
                return library.taking(workspace(), Choice.ALL, ScriptCache.none());
            }
        }

        Draft draft(Choice choice) {
            try (SharedLibrary library = opened()) {
                return library.draft(workspace(), choice, ScriptCache.none());
            }
        }

        Published publish(Choice choice) {
            try (SharedLibrary library = opened()) {
                return library.publish(
                        library.draft(workspace(), choice, ScriptCache.none()),
                        id(),
                        "as " + id() + " does it",
                        NO_KEY,
                        Watch.NOBODY);
            }
        }

        Published publish() {
            return publish(Choice.ALL);
        }

        List<Proposal> proposals() {
            try (SharedLibrary library = opened()) {
                library.fetch(Watch.NOBODY);
                return library.proposals();
            }
        }

        Acceptance acceptance(String of, Choice choice) {
            try (SharedLibrary library = opened()) {
                library.fetch(Watch.NOBODY);
                return library.acceptance(workspace(), library.proposal(of), choice, ScriptCache.none());
            }
        }

        Accepted accept(Acceptance acceptance) {
            try (SharedLibrary library = opened()) {
                return library.accept(workspace(), acceptance, Optional.empty(), id(), NO_KEY, YES, Watch.NOBODY);
            }
        }

        Accepted accept(String of) {
            return accept(acceptance(of, Choice.ALL));
        }

        /** Everything of the site but its copy of the repository and its lock, letter by letter. */
        SortedMap<String, String> everything() {
            SortedMap<String, String> all = new TreeMap<>();
            try (Stream<Path> walk = Files.walk(root)) {
                for (Path file : walk.filter(Files::isRegularFile).toList()) {
                    String name = root.relativize(file).toString();
                    if (!name.startsWith(".") && !name.startsWith(Clone.FOLDER)) {
                        all.put(name, read(file));
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return all;
        }
    }

    static final Optional<SigningKey> NO_KEY = Optional.empty();

    static Choice only(String... names) {
        return new Choice(Set.of(names), Map.of(), false);
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
