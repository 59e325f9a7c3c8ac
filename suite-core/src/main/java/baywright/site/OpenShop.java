package baywright.site;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryFiles;
import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.script.Problem;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import baywright.workspace.Shop;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * A shop that is being worked at: a workspace as it was read, with what has been edited since. A value: an edit gives another one,
 * and nothing is written to disk.
 *
 * <p>Editing a script or the price list leaves the library as it was until {@link #reloaded} gives it anew, since that takes longer
 * than an edit may. While the scripts have errors the last library without any is used, and {@link #problems} tells them.
 */
public final class OpenShop {

    private static final String STAGES = "stages/";
    private static final String JOBS = "jobs/";
    private static final String SHOP = "shop.json";
    private static final String ITEMS = "items.json";
    private static final String SCRIPT = ".groovy";

    private final Workspace read;
    private final Map<String, JobFile> files;
    private final LibraryFiles readScripts;
    private final Site site;
    private final Map<String, Job> jobs;
    private final SortedMap<String, String> texts;
    private final Shelf shelf;

    /**
     * A library as it was loaded last.
     *
     * @param texts    the scripts that it was loaded from, by their names below the workspace
     * @param items    the price list
     * @param problems what was wrong with them
     * @param kept     whether the library in use is an earlier one without errors
     */
    private record Shelf(SortedMap<String, String> texts, List<Item> items, List<Problem> problems, boolean kept) {

        boolean isOf(Map<String, String> others, List<Item> prices) {
            return (texts == others || texts.equals(others)) && items.equals(prices);
        }

        boolean isSound() {
            return problems.stream().noneMatch(OpenShop::isError);
        }
    }

    private OpenShop(
            Workspace read,
            Map<String, JobFile> files,
            LibraryFiles readScripts,
            Site site,
            Map<String, Job> jobs,
            SortedMap<String, String> texts,
            Shelf shelf) {
        this.read = read;
        this.files = files;
        this.readScripts = readScripts;
        this.site = site;
        this.jobs = jobs;
        this.texts = texts;
        this.shelf = shelf;
    }

    /**
     * Reads a workspace. Off the event thread. Scripts and jobs that have errors are left out and stand among the problems.
     *
     * @throws SiteTrouble when shop, price list or shapes have an error
     * @throws WorkspaceException when there is no such folder or it cannot be read
     */
    public static OpenShop open(Path folder, Clock clock, ScriptCache cache) {
        return Workspace.together(
                folder,
                read -> read(read, clock, (workspace, scripts) -> {
                    LibraryLoader.Loaded loaded =
                            LibraryLoader.load(workspace.stages(), scripts, workspace.items(), cache);
                    List<Problem> own = LibraryFolder.asProblems(workspace.ownProblems());
                    Shelf shelf = new Shelf(named(scripts.texts()), workspace.items(), problems(own, loaded), false);
                    return new Opened(loaded.library(), shelf);
                }));
    }

    /** A library with what it was loaded from. */
    private record Opened(Library library, Shelf shelf) {}

    private static OpenShop read(
            Workspace workspace, Clock clock, BiFunction<Workspace, LibraryFiles, Opened> library) {
        refuseErrors(workspace.root(), LibraryFolder.asProblems(workspace.ownProblems()));
        LibraryFiles scripts = scriptsOf(workspace);
        Opened opened = library.apply(workspace, scripts);
        Map<String, JobFile> files = new TreeMap<>();
        Map<String, Job> jobs = new TreeMap<>();
        for (JobFile file : workspace.jobs()) {
            file.job().ifPresent(job -> {
                files.put(job.id(), file);
                jobs.put(job.id(), job);
            });
        }
        return new OpenShop(
                workspace,
                Collections.unmodifiableMap(files),
                scripts,
                Site.of(workspace, opened.library(), opened.shelf().problems(), clock),
                Collections.unmodifiableMap(jobs),
                named(scripts.texts()),
                opened.shelf());
    }

    private static void refuseErrors(Path root, List<Problem> own) {
        List<Problem> errors = own.stream().filter(OpenShop::isError).toList();
        if (!errors.isEmpty()) {
            throw new SiteTrouble(root, errors);
        }
    }

    private static LibraryFiles scriptsOf(Workspace workspace) {
        try {
            return LibraryFiles.read(workspace.stages());
        } catch (IOException e) {
            throw new WorkspaceException(
                    workspace.stages() + ": the folder of the stage scripts cannot be read; restore it from a copy", e);
        }
    }

    private static SortedMap<String, String> named(Map<String, String> below) {
        SortedMap<String, String> named = new TreeMap<>();
        below.forEach((name, text) -> named.put(STAGES + name, text));
        return Collections.unmodifiableSortedMap(named);
    }

    private static List<Problem> problems(List<Problem> own, LibraryLoader.Loaded loaded) {
        return Stream.concat(
                        own.stream(), loaded.problems().stream().map(problem -> LibraryFolder.placed(problem, STAGES)))
                .sorted()
                .toList();
    }

    private static boolean isError(Problem problem) {
        return problem.severity() == Problem.Severity.ERROR;
    }

    /** Library, shop and what proves and prices jobs; the jobs beside a job are the edited ones. */
    public Site site() {
        return site;
    }

    /** The folder of the workspace. */
    public Path folder() {
        return read.root();
    }

    // jobs

    /** Jobs that can be used, in order of their ids. */
    public List<Job> jobs() {
        return List.copyOf(jobs.values());
    }

    public Optional<Job> job(String id) {
        return Optional.ofNullable(jobs.get(id));
    }

    /** The files that a job was read from; empty for a new one. */
    public Optional<JobFile> file(String id) {
        return Optional.ofNullable(files.get(id));
    }

    /** The same shop with a job changed or added. */
    public OpenShop withJob(Job job) {
        if (job.equals(jobs.get(job.id()))) {
            return this;
        }
        Map<String, Job> all = new TreeMap<>(jobs);
        all.put(job.id(), job);
        return withJobs(all);
    }

    /** The same shop without a job; nothing changes when there is none with this id. */
    public OpenShop withoutJob(String id) {
        if (!jobs.containsKey(id)) {
            return this;
        }
        Map<String, Job> all = new TreeMap<>(jobs);
        all.remove(id);
        return withJobs(all);
    }

    private OpenShop withJobs(Map<String, Job> all) {
        return new OpenShop(
                read, files, readScripts, site.withJobs(all.values()), Collections.unmodifiableMap(all), texts, shelf);
    }

    // scripts

    /** Text of each stage script by its name below the workspace, such as {@code stages/wash/rinse.groovy}, as last edited. */
    public SortedMap<String, String> texts() {
        return texts;
    }

    /** Text of a script as it was read; empty for a new one. */
    public Optional<String> readText(String name) {
        return name.startsWith(STAGES)
                ? Optional.ofNullable(readScripts.texts().get(name.substring(STAGES.length())))
                : Optional.empty();
    }

    /**
     * The same shop with a script changed or added.
     *
     * @param name below the workspace, such as {@code stages/wash/rinse.groovy}
     * @throws IllegalArgumentException when no script may be there
     */
    public OpenShop withText(String name, String text) {
        requireScript(name);
        if (text.equals(texts.get(name))) {
            return this;
        }
        SortedMap<String, String> all = new TreeMap<>(texts);
        all.put(name, text);
        return withTexts(all);
    }

    /** The same shop without a script; nothing changes when there is none of this name. */
    public OpenShop withoutText(String name) {
        if (!texts.containsKey(name)) {
            return this;
        }
        SortedMap<String, String> all = new TreeMap<>(texts);
        all.remove(name);
        return withTexts(all);
    }

    private OpenShop withTexts(SortedMap<String, String> all) {
        return new OpenShop(read, files, readScripts, site, jobs, Collections.unmodifiableSortedMap(all), shelf);
    }

    private static void requireScript(String name) {
        boolean isClean = Stream.of(name.split("/", -1))
                .noneMatch(part -> part.isBlank() || part.startsWith(".") || part.indexOf('\\') >= 0);
        if (!name.startsWith(STAGES) || !name.endsWith(SCRIPT) || !isClean) {
            throw new IllegalArgumentException(
                    "a stage script is named like 'stages/wash/rinse.groovy', got '" + name + "'");
        }
    }

    // shop and prices

    public Shop shop() {
        return site.shop();
    }

    public List<Item> items() {
        return site.workspace().items();
    }

    /** The same shop with other rates, people, bays or settings. */
    public OpenShop withShop(Shop other) {
        return other.equals(shop()) ? this : withSite(site.workspace().with(other));
    }

    /** The same shop with another price list; prices are those of the library from {@link #reloaded} on. */
    public OpenShop withItems(List<Item> others) {
        return others.equals(items()) ? this : withSite(site.workspace().withItems(others));
    }

    private OpenShop withSite(Workspace workspace) {
        Site other = site.with(workspace, site.library(), site.warnings());
        return new OpenShop(read, files, readScripts, other, jobs, texts, shelf);
    }

    // library

    /** Whether library and problems are not yet those of the scripts and prices as last edited. */
    public boolean isStale() {
        return !shelf.isOf(texts, items());
    }

    /** Whether scripts, prices, shapes and shop have no errors; what is proved and priced otherwise is by the last library that had none. */
    public boolean isSound() {
        return shelf.isSound();
    }

    /** The same shop with the library of its scripts as last edited. Off the event thread. */
    public OpenShop reloaded(ScriptCache cache) {
        if (!isStale()) {
            return this;
        }
        Map<String, String> below = new LinkedHashMap<>();
        texts.forEach((name, text) -> below.put(name.substring(STAGES.length()), text));
        LibraryLoader.Loaded loaded =
                LibraryLoader.load(read.stages(), new LibraryFiles(below, readScripts.problems()), items(), cache);
        List<Problem> own = LibraryFolder.asProblems(read.ownProblems());
        List<Problem> wrong = problems(own, loaded);
        boolean keepsLast = wrong.stream().anyMatch(OpenShop::isError) && (shelf.isSound() || shelf.kept());
        Shelf fresh = new Shelf(texts, items(), wrong, keepsLast);
        Site with = site.with(site.workspace(), keepsLast ? site.library() : loaded.library(), wrong);
        return new OpenShop(read, files, readScripts, with, jobs, texts, fresh);
    }

    /** This shop with the library and problems of another state of it, which was loaded meanwhile. */
    public OpenShop withLibraryOf(OpenShop loaded) {
        Site with = site.with(site.workspace(), loaded.site.library(), loaded.site.warnings());
        return new OpenShop(read, files, readScripts, with, jobs, texts, loaded.shelf);
    }

    /** What is wrong with shop, prices, shapes, scripts and jobs, in order of file and place, as of the last load. */
    public List<Problem> problems() {
        return Stream.concat(
                        shelf.problems().stream(), read.jobs().stream().flatMap(file -> Site.problemsOf(file).stream()))
                .sorted()
                .toList();
    }

    // edits as differences

    /**
     * What can be edited.
     *
     * @param jobs  by id
     * @param texts of scripts
     */
    private record Parts(Map<String, Job> jobs, SortedMap<String, String> texts, Shop shop, List<Item> items) {

        List<String> namesOfDifferencesTo(Parts other) {
            List<String> names = new ArrayList<>();
            differing(jobs, other.jobs).forEach(id -> names.add(JOBS + id));
            differing(texts, other.texts).forEach(names::add);
            if (!shop.equals(other.shop)) {
                names.add(SHOP);
            }
            if (!items.equals(other.items)) {
                names.add(ITEMS);
            }
            return names.stream().sorted().toList();
        }

        /** These with what is named as in the other. */
        Parts with(Parts other, Collection<String> names) {
            Map<String, Job> newJobs = new TreeMap<>(jobs);
            SortedMap<String, String> newTexts = new TreeMap<>(texts);
            for (String name : names) {
                if (name.startsWith(JOBS)) {
                    put(newJobs, name.substring(JOBS.length()), other.jobs);
                } else if (name.startsWith(STAGES)) {
                    put(newTexts, name, other.texts);
                }
            }
            return new Parts(
                    newJobs,
                    newTexts,
                    names.contains(SHOP) ? other.shop : shop,
                    names.contains(ITEMS) ? other.items : items);
        }

        private static <T> void put(Map<String, T> all, String key, Map<String, T> from) {
            if (from.containsKey(key)) {
                all.put(key, from.get(key));
            } else {
                all.remove(key);
            }
        }

        private static <T> Stream<String> differing(Map<String, T> before, Map<String, T> now) {
            return Stream.concat(before.keySet().stream(), now.keySet().stream())
                    .distinct()
                    .filter(name -> !Objects.equals(before.get(name), now.get(name)));
        }
    }

    private Parts parts() {
        return new Parts(jobs, texts, shop(), items());
    }

    private Parts readParts() {
        Map<String, Job> before = new TreeMap<>();
        files.forEach((id, file) -> before.put(id, file.job().orElseThrow()));
        return new Parts(before, named(readScripts.texts()), read.shop().orElseThrow(), read.items());
    }

    private OpenShop with(Parts parts) {
        OpenShop changed = this;
        if (!parts.jobs().equals(jobs)) {
            changed = changed.withJobs(parts.jobs());
        }
        if (!parts.texts().equals(texts)) {
            changed = changed.withTexts(parts.texts());
        }
        return changed.withShop(parts.shop()).withItems(parts.items());
    }

    /** This shop with whatever differs between two others as it is in the second: how an edit is taken back or made again. */
    public OpenShop patched(OpenShop from, OpenShop to) {
        Parts target = to.parts();
        return with(parts().with(target, from.parts().namesOfDifferencesTo(target)));
    }

    /** These edits over the files that another state of this shop knows, after a save. */
    public OpenShop overFilesOf(OpenShop saved) {
        return new OpenShop(saved.read, saved.files, saved.readScripts, site, jobs, texts, shelf);
    }

    /** This shop that still knows what is named as another state of it has read it, so that a clash stays one until it is decided. */
    OpenShop withFilesOf(OpenShop old, Collection<String> names) {
        if (names.isEmpty()) {
            return this;
        }
        Map<String, JobFile> mixed = new TreeMap<>(files);
        Map<String, String> scripts = new TreeMap<>(readScripts.texts());
        for (String name : names) {
            if (name.startsWith(JOBS)) {
                Parts.put(mixed, name.substring(JOBS.length()), old.files);
            } else if (name.startsWith(STAGES)) {
                Parts.put(scripts, name.substring(STAGES.length()), old.readScripts.texts());
            }
        }
        boolean isShop = names.contains(SHOP) || names.contains(ITEMS);
        return new OpenShop(
                isShop ? old.read : read,
                Collections.unmodifiableMap(mixed),
                new LibraryFiles(scripts, readScripts.problems()),
                site,
                jobs,
                texts,
                shelf);
    }

    /** This shop with what is named as it was read. */
    OpenShop reverted(Collection<String> names) {
        return with(parts().with(readParts(), names));
    }

    // what is not yet on disk

    /** The workspace as it was read. */
    Workspace read() {
        return read;
    }

    /** Names below the workspace of what a save would change, in order: {@code jobs/saloon}, {@code stages/wash/rinse.groovy}, {@code shop.json}. */
    public List<String> unsaved() {
        return readParts().namesOfDifferencesTo(parts());
    }

    /**
     * This shop over the files as they are on disk now.
     *
     * @param shop    with what others have changed taken over
     * @param taken   names of what was taken over
     * @param clashes names of what is edited here and changed on disk to something else; in {@code shop} it is as edited here
     */
    record Merge(OpenShop shop, List<String> taken, List<String> clashes) {}

    /** @throws SiteTrouble when shop, price list or shapes on disk have an error */
    Merge mergedOverDisk() {
        OpenShop disk = onDisk(read.root());
        Parts there = disk.parts();
        List<String> edited = unsaved();
        List<String> changed = readParts().namesOfDifferencesTo(there);
        List<String> differing = parts().namesOfDifferencesTo(there);
        List<String> taken =
                changed.stream().filter(name -> !edited.contains(name)).toList();
        List<String> clashes = changed.stream()
                .filter(name -> edited.contains(name) && differing.contains(name))
                .toList();
        OpenShop merged = with(parts().with(there, taken)).overFilesOf(disk);
        return new Merge(merged, taken, clashes);
    }

    /** This shop after a save: what was written is as it can be read now. */
    OpenShop overFilesOnDisk(Collection<String> written) {
        OpenShop disk = onDisk(read.root());
        return with(parts().with(disk.parts(), written)).overFilesOf(disk);
    }

    /** The shop of a folder with the library of this one. */
    private OpenShop onDisk(Path folder) {
        return Workspace.together(
                folder, read -> read(read, site.clock(), (workspace, scripts) -> new Opened(site.library(), shelf)));
    }

    /** This shop with edits that were made in a copy of its folder; what cannot be read there stays as it is here. */
    OpenShop withEditsIn(Path copy, Collection<String> gone) {
        OpenShop edited = onDisk(copy);
        Parts there = edited.parts();
        List<String> names = parts().namesOfDifferencesTo(there).stream()
                .filter(name -> !name.startsWith(JOBS)
                        || edited.jobs.containsKey(name.substring(JOBS.length()))
                        || gone.contains(folderOf(name)))
                .toList();
        return with(parts().with(there, names));
    }

    private String folderOf(String name) {
        return JOBS + file(name.substring(JOBS.length())).map(JobFile::folder).orElse(name.substring(JOBS.length()));
    }
}
