package baywright.workspace;

import baywright.library.Item;
import baywright.library.Library;
import baywright.plan.Setting;
import baywright.safety.Caution;
import baywright.vehicle.Reading;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A site's folder as it was read at one moment: shop, price list, vehicle shapes and jobs, with everything that is wrong
 * with them. Reading takes no lock; {@link WorkspaceWriter} writes.
 */
public final class Workspace {

    static final String SHOP = "shop.json";
    static final String ITEMS = "items.json";
    static final String STAGES = "stages";
    static final String SHAPES = "shapes.json";
    static final String JOBS = "jobs";
    static final String JOB = "job.json";
    static final String READINGS = "readings.csv";
    static final String QUOTES = "quotes";
    static final String PACKS = "packs";
    static final String PHOTOS = "photos";
    static final String REMOVED = ".removed";

    private static final int TRIES = 10;

    private final Path root;
    private final Optional<Shop> shop;
    private final List<Item> items;
    private final List<Shape> shapes;
    private final List<JobFile> jobs;
    private final List<FileProblem> problems;
    private final Map<String, Source> texts;

    private Workspace(
            Path root,
            Optional<Shop> shop,
            List<Item> items,
            List<Shape> shapes,
            List<JobFile> jobs,
            List<FileProblem> problems,
            Map<String, Source> texts) {
        this.root = root;
        this.shop = shop;
        this.items = List.copyOf(items);
        this.shapes = List.copyOf(shapes);
        this.jobs = List.copyOf(jobs);
        this.problems = problems.stream().sorted().toList();
        this.texts = Map.copyOf(texts);
    }

    /**
     * Reads a workspace. What is wrong inside a file becomes a problem, never an exception. A change of several files that was
     * interrupted is finished first.
     *
     * @throws WorkspaceException when there is no such folder, when it cannot be listed, or when such a change cannot be finished
     */
    public static Workspace open(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new WorkspaceException(folder + ": there is no such folder; give the folder that holds shop.json");
        }
        Path root = folder.toAbsolutePath().normalize();
        ChangeJournal.settle(root);
        List<FileProblem> problems = new ArrayList<>();
        Map<String, Source> texts = new HashMap<>();
        Optional<Shop> shop = read(root, root.resolve(SHOP), problems, report -> {
            texts.put(SHOP, report.source());
            return ShopJson.read(report);
        });
        Optional<List<Shape>> shapes = read(root, root.resolve(STAGES).resolve(SHAPES), problems, ShapesJson::read);
        Optional<List<Item>> items = read(root, root.resolve(ITEMS), problems, report -> {
            texts.put(ITEMS, report.source());
            return ItemsJson.read(report).map(list -> inCurrencyOf(shop, list, report));
        });
        Workspace known = new Workspace(
                root, shop, items.orElse(List.of()), shapes.orElse(List.of()), List.of(), problems, texts);
        return known.withJobs(known.readJobs());
    }

    /**
     * Reads a workspace together with more of its files. Reading takes no lock: where packs are taken or taken back meanwhile, what was
     * read may be old in part and new in part, and is read again.
     *
     * @param read reads the rest; may be called more than once
     * @throws WorkspaceException as {@link #open}, and when the workspace is changed over and over again
     */
    public static <T> T together(Path folder, Function<Workspace, T> read) {
        Path root = folder.toAbsolutePath().normalize();
        for (int i = 0; i < TRIES; i++) {
            ChangeJournal.settle(root);
            List<String> before = ChangeJournal.mark(root);
            try {
                T value = read.apply(open(folder));
                if (ChangeJournal.mark(root).equals(before)) {
                    return value;
                }
            } catch (RuntimeException e) {
                if (ChangeJournal.mark(root).equals(before)) {
                    throw e;
                }
                // what is neither the old state nor the new one may be wrong in any way
            }
        }
        throw new WorkspaceException(folder
                + ": another program changes the workspace again and again; wait until it is done and open it again");
    }

    private static List<Item> inCurrencyOf(Optional<Shop> shop, ItemsJson.PriceList list, Report report) {
        shop.filter(s -> !s.currency().equals(list.currency()))
                .ifPresent(s -> report.error(
                        list.currencyOffset(),
                        "currency",
                        "prices are in " + list.currency() + ", the shop reckons in " + s.currency(),
                        "bring the prices into the shop's currency"));
        return list.items();
    }

    /** The items of a price list's text; none where it has an error. */
    public static List<Item> priceList(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return ItemsJson.read(new Report(new Source(ITEMS, plain)))
                .map(ItemsJson.PriceList::items)
                .orElse(List.of());
    }

    /** What {@code read} makes of a file; empty when that adds an error to the problems. */
    private static <T> Optional<T> read(
            Path root, Path file, List<FileProblem> problems, Function<Report, Optional<T>> read) {
        try {
            Report report = new TextFile(root).read(file);
            Optional<T> value = read.apply(report);
            problems.addAll(report.problems());
            return report.hasErrors() ? Optional.empty() : value;
        } catch (TextFile.Unreadable e) {
            problems.add(e.problem());
            return Optional.empty();
        }
    }

    /**
     * Makes a workspace that is a copy of another folder.
     *
     * @param folder   where; must not exist or be empty
     * @param template what is copied; links, locks and leftovers of saves are left out
     * @return the workspace, read
     * @throws WorkspaceException when it cannot be made; nothing half-made stays behind
     */
    public static Workspace create(Path folder, Path template) {
        return create(folder, template, Optional.empty());
    }

    /**
     * Makes a workspace that is a copy of another folder, with what it lacks from a library.
     *
     * @param folder   where; must not exist or be empty
     * @param template what is copied; links, locks and leftovers of saves are left out
     * @param library  a folder of stage scripts with {@code shapes.json} and {@code items.json}: it becomes the stages
     *                 of a template without any, and its price list that of a template without one
     * @return the workspace, read
     * @throws WorkspaceException when it cannot be made; nothing half-made stays behind
     */
    public static Workspace create(Path folder, Path template, Path library) {
        return create(folder, template, Optional.of(library));
    }

    private static Workspace create(Path folder, Path template, Optional<Path> library) {
        WorkspaceCopy.copy(template, library, folder);
        return open(folder);
    }

    private List<JobFile> readJobs() {
        List<JobFile> all = new ArrayList<>();
        Map<String, String> folders = new HashMap<>();
        for (String folder : jobFolders()) {
            JobFile file = readJob(folder);
            Optional<String> id = file.job().map(Job::id);
            String before = id.map(i -> folders.putIfAbsent(i, folder)).orElse(null);
            all.add(before == null ? file : file.refused(repeated(file, id.orElseThrow(), before)));
        }
        return all;
    }

    private static FileProblem repeated(JobFile file, String id, String before) {
        return Report.ofFile(
                nameOf(file.folder(), JOB),
                "the job id '" + id + "' is already used by " + JOBS + "/" + before,
                "give this job another id, such as the name of its folder");
    }

    private static String nameOf(String folder, String file) {
        return JOBS + "/" + folder + "/" + file;
    }

    /** Names in order; hidden folders and loose files are nobody's job. */
    private List<String> jobFolders() {
        Path jobs = root.resolve(JOBS);
        if (!Files.isDirectory(jobs)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(jobs)) {
            return all.filter(Files::isDirectory)
                    .map(p -> p.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new WorkspaceException(
                    root.getFileName() + "/" + JOBS + ": the folder cannot be listed, " + DiskFault.reason(e), e);
        }
    }

    /** Reads one job's folder anew. */
    JobFile readJob(String folder) {
        List<FileProblem> problems = new ArrayList<>();
        if (!Fields.isId(folder)) {
            problems.add(Report.ofFile(
                    JOBS + "/" + Shown.plain(folder), "the name of this folder is no id", "use " + Fields.AN_ID));
            return new JobFile(folder, Optional.empty(), problems, Optional.empty());
        }
        TextFile files = new TextFile(root);
        try {
            Report report = files.read(root.resolve(JOBS).resolve(folder).resolve(JOB));
            Optional<JobJson.Read> read = JobJson.read(report);
            Optional<Report> readings = read.isEmpty() ? Optional.empty() : readings(folder, files, problems);
            Optional<Job> job = read.map(r -> checked(folder, report, r, readings, problems));
            problems.addAll(report.problems());
            return new JobFile(
                    folder,
                    job,
                    problems,
                    read.map(r -> new JobFile.Content(report.source(), r.document(), readings.map(Report::source))));
        } catch (TextFile.Unreadable e) {
            problems.add(e.problem());
            return new JobFile(folder, Optional.empty(), problems, Optional.empty());
        }
    }

    /** The text of the readings; empty when there are none, or when they become a problem. */
    private Optional<Report> readings(String folder, TextFile files, List<FileProblem> problems) {
        Path file = root.resolve(JOBS).resolve(folder).resolve(READINGS);
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try {
            return Optional.of(files.read(file));
        } catch (TextFile.Unreadable e) {
            problems.add(e.problem());
            return Optional.empty();
        }
    }

    private Job checked(
            String folder, Report report, JobJson.Read read, Optional<Report> ofReadings, List<FileProblem> problems) {
        JobCheck check = new JobCheck(report, read);
        shop.ifPresent(check::against);
        Report readingsReport = ofReadings.orElseGet(() -> new Report(new Source(nameOf(folder, READINGS), "")));
        ReadingsCsv.Readings readings = ofReadings.isPresent()
                ? ReadingsCsv.read(readingsReport, ReadingsForm.UNSAID)
                : new ReadingsCsv.Readings(Map.of(), Map.of());
        if (!shapes.isEmpty()) {
            check.against(shapes, readingsReport, readings);
        }
        problems.addAll(readingsReport.problems());
        if (!read.job().id().equals(folder)) {
            report.warning(
                    read.document().members().get("id").offset(),
                    "id",
                    "the id '" + read.job().id() + "' is not the name of the folder, '" + folder + "'",
                    "make them the same");
        }
        return read.job().withSurvey(withReadings(read.job().survey(), readings.byZone()));
    }

    private static Survey withReadings(Survey survey, Map<String, List<Reading>> readings) {
        Map<String, ZoneSurvey> zones = new HashMap<>(survey.zones());
        readings.forEach((zone, list) ->
                zones.merge(zone, ZoneSurvey.NOTHING.withReadings(list), (found, read) -> found.withReadings(list)));
        return new Survey(survey.facts(), survey.states(), zones);
    }

    private Workspace withJobs(List<JobFile> others) {
        return new Workspace(root, shop, items, shapes, others, problems, texts);
    }

    /** The same workspace with one job's folder as it now is, also one that it had not yet. */
    public Workspace with(JobFile changed) {
        return withJobs(Stream.concat(without(changed.folder()).jobs.stream(), Stream.of(changed))
                .sorted(Comparator.comparing(JobFile::folder))
                .toList());
    }

    /** The same workspace without a folder below {@code jobs}. */
    public Workspace without(String folder) {
        return withJobs(jobs.stream().filter(j -> !j.folder().equals(folder)).toList());
    }

    /** The text of {@link #SHOP} or {@link #ITEMS} as it was read; empty when it could not be. */
    Optional<Source> text(String file) {
        return Optional.ofNullable(texts.get(file));
    }

    /** The same workspace with another shop, not yet saved. */
    public Workspace with(Shop other) {
        return new Workspace(root, Optional.of(other), items, shapes, jobs, problems, texts);
    }

    /** The same workspace with another price list, not yet saved. */
    public Workspace withItems(List<Item> others) {
        return new Workspace(root, shop, others, shapes, jobs, problems, texts);
    }

    /** Absolute path of the folder. */
    public Path root() {
        return root;
    }

    /** Folder of the stage scripts. */
    public Path stages() {
        return root.resolve(STAGES);
    }

    /** Empty when {@code shop.json} has an error. */
    public Optional<Shop> shop() {
        return shop;
    }

    /** The price list; empty when {@code items.json} has an error. */
    public List<Item> items() {
        return items;
    }

    /** Vehicle shapes; empty when {@code stages/shapes.json} has an error. */
    public List<Shape> shapes() {
        return shapes;
    }

    /** All folders below {@code jobs}, also those that cannot be used, in order of name. */
    public List<JobFile> jobs() {
        return jobs;
    }

    /** The job in a folder below {@code jobs}. */
    public Optional<JobFile> job(String folder) {
        return jobs.stream().filter(j -> j.folder().equals(folder)).findFirst();
    }

    /**
     * The library's words in another language, out of {@code stages/words-LANGUAGE.json}; a language without such a file has
     * none.
     *
     * @param language two or three letters, such as {@code de}
     * @throws WorkspaceException when the file is there and cannot be used
     */
    public Words words(String language) {
        Path file = root.resolve(STAGES).resolve("words-" + language + ".json");
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Words.NONE;
        }
        List<FileProblem> found = new ArrayList<>();
        return read(root, file, found, WordsJson::read)
                .orElseThrow(() -> new WorkspaceException(found.stream()
                        .filter(FileProblem::isError)
                        .map(FileProblem::toString)
                        .findFirst()
                        .orElseThrow()));
    }

    /** Names of the files in a job's folder {@code quotes}, in order. */
    public List<String> quotes(String folder) {
        return names(root.resolve(JOBS).resolve(folder).resolve(QUOTES), nameOf(folder, QUOTES));
    }

    /** Names of the files in the folders {@code quotes} of removed jobs, so that no number is given twice. */
    public List<String> removedQuotes() {
        Path removed = root.resolve(JOBS).resolve(REMOVED);
        return names(removed, JOBS + "/" + REMOVED).stream()
                .flatMap(folder ->
                        names(removed.resolve(folder).resolve(QUOTES), nameOf(REMOVED + "/" + folder, QUOTES)).stream())
                .toList();
    }

    private static List<String> names(Path folder, String shown) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(p -> p.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new WorkspaceException(shown + ": the folder cannot be listed, " + DiskFault.reason(e), e);
        }
    }

    /**
     * The text of a file in a job's folder {@code quotes}.
     *
     * @throws WorkspaceException when it cannot be read
     */
    public String quote(String folder, String name) {
        try {
            return new TextFile(root)
                    .read(root.resolve(JOBS).resolve(folder).resolve(QUOTES).resolve(name))
                    .source()
                    .text();
        } catch (TextFile.Unreadable e) {
            throw new WorkspaceException(e.problem().toString(), e);
        }
    }

    /**
     * The bytes of a picture in a job, {@code jobs/ID/photos}: they begin as JPEG or PNG and are at most {@value PhotoFile#LARGEST_MIB}
     * MiB; whether the rest is sound shows when they are decoded. Reads the disk.
     *
     * @throws WorkspaceException when the file is gone, is a link or no such picture, or cannot be read
     */
    public byte[] photo(String folder, JobPhoto photo) {
        String name = nameOf(folder, PHOTOS + "/" + photo.file());
        Path file = root.resolve(name);
        try {
            if (Files.exists(file.getParent()) && !file.getParent().toRealPath().startsWith(root.toRealPath())) {
                throw new WorkspaceException(name + ": a link leads out of the workspace; put the folder itself there");
            }
        } catch (IOException e) {
            throw new WorkspaceException(name + ": it cannot be read: " + DiskFault.reason(e), e);
        }
        return PhotoFile.kept(file, name).bytes();
    }

    /** What is wrong with shop, price list and shapes; each job has its own problems. */
    public List<FileProblem> ownProblems() {
        return problems;
    }

    /** Everything that is wrong, in order of file and place. */
    public List<FileProblem> problems() {
        return Stream.concat(problems.stream(), jobs.stream().flatMap(j -> j.problems().stream()))
                .sorted()
                .toList();
    }

    /**
     * What a job's plan is proved against.
     *
     * @param library   the workspace's stages
     * @param otherwise when work may begin if the job says no time of arrival
     * @throws WorkspaceException when the shop or the job's shape cannot be read
     */
    public Setting setting(Job job, Library library, LocalDateTime otherwise) {
        Shop site = shop.orElseThrow(() -> new WorkspaceException(firstProblem(SHOP)));
        Shape shape = shape(job);
        return new Setting(
                library,
                job.vehicle().on(shape),
                signed(job, library),
                site.bays(),
                job.arrives().orElse(otherwise),
                site.film(),
                site.rules());
    }

    /** The survey with the facts that a named person's answer for a danger makes true. */
    private static Survey signed(Job job, Library library) {
        Survey survey = job.survey();
        Map<String, String> facts = new HashMap<>(survey.facts());
        for (Caution caution : Caution.values()) {
            if (job.safety().acknowledged(caution.id()).isPresent()) {
                caution.fact()
                        .filter(id -> library.facts().stream().anyMatch(f -> f.id().equals(id)))
                        .ifPresent(id -> facts.putIfAbsent(id, "true"));
            }
        }
        return facts.equals(survey.facts()) ? survey : new Survey(facts, survey.states(), survey.zones());
    }

    /**
     * What is wrong with a job's goals, held against the library.
     *
     * @return errors in order of place; also when the job says no goals
     * @throws WorkspaceException when the job or its shape cannot be read
     */
    public List<FileProblem> goalProblems(JobFile file, Library library) {
        Job job = file.job().orElseThrow(() -> new WorkspaceException(nameOf(file.folder(), JOB) + ": cannot be read"));
        Shape shape = job.vehicle().on(shape(job));
        return new GoalCheck(file.content().orElseThrow(), library, shape).problems(job.goals());
    }

    private Shape shape(Job job) {
        return shapes.stream()
                .filter(s -> s.id().equals(job.vehicle().shape()))
                .findFirst()
                .orElseThrow(() -> new WorkspaceException(firstProblem(STAGES + "/" + SHAPES)));
    }

    private String firstProblem(String file) {
        return problems.stream()
                .filter(p -> p.file().equals(file) && p.isError())
                .map(FileProblem::toString)
                .findFirst()
                .orElse(file + ": the job's shape is not in this file");
    }
}
