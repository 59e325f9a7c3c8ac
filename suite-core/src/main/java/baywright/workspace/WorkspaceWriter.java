package baywright.workspace;

import baywright.library.Item;
import baywright.vehicle.Reading;
import baywright.vehicle.Shape;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * The one writer of a workspace. While it is open no other program can open one; reading is always possible.
 *
 * <p>A save replaces a file as a whole. Fields that this version does not know, the order of fields and the way unchanged
 * values are written stay. A save that fails leaves the file as it was. What could not be read back is not written.
 */
public final class WorkspaceWriter implements AutoCloseable {

    private Workspace workspace;
    private final WriteLock lock;
    private final Disk disk;
    private final AtomicFile files;

    private WorkspaceWriter(Workspace workspace, WriteLock lock, Disk disk) {
        this.workspace = workspace;
        this.lock = lock;
        this.disk = disk;
        this.files = new AtomicFile(disk);
    }

    /**
     * Takes the right to write.
     *
     * @throws WorkspaceException when another program writes, or the folder cannot be written
     */
    public static WorkspaceWriter open(Workspace workspace) {
        return open(workspace, Disk.REAL);
    }

    static WorkspaceWriter open(Workspace workspace, Disk disk) {
        WriteLock lock = WriteLock.take(workspace.root());
        boolean opened = false;
        try {
            WorkspaceWriter writer = new WorkspaceWriter(workspace, lock, disk);
            writer.removeLeftovers();
            new ChangeJournal(workspace.root(), disk).finish(lock);
            opened = true;
            return writer;
        } finally {
            if (!opened) {
                lock.close();
            }
        }
    }

    /** What a killed program left behind; only the holder of the lock may judge that nobody is writing it. */
    private void removeLeftovers() {
        try (Stream<Path> all = Files.find(workspace.root(), 12, (path, attributes) -> AtomicFile.isLeftover(path))) {
            for (Path leftover : all.toList()) {
                removeTree(leftover);
            }
        } catch (IOException e) {
            // A leftover does no harm but to take room; the next writer tries again.
            return;
        }
    }

    private static void removeTree(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }

    // shop and price list

    /**
     * Saves the shop in {@code shop.json}.
     *
     * @param read    the workspace that the change began from; its shop could be read
     * @param changed the shop; of the usual light by family and stage nothing can be left out
     * @return the workspace read anew, as jobs are judged by the shop; {@code read} itself when nothing had changed
     * @throws WorkspaceException when the file has been changed by someone else, when it could not be read back, or when
     *                            the disk refuses; the file is then as it was
     */
    public Workspace save(Workspace read, Shop changed) {
        Shop before = read.shop().orElseThrow(() -> unread(Workspace.SHOP));
        return save(read, Workspace.SHOP, ShopDraft.of(before, changed), ShopJson::read);
    }

    /**
     * Saves the price list in {@code items.json}; its currency stays.
     *
     * @param read    the workspace that the change began from; its price list could be read
     * @param changed all items, in the order in which the file is to list them
     * @return the workspace read anew; {@code read} itself when nothing had changed
     * @throws WorkspaceException as {@link #save(Workspace, Shop)}
     */
    public Workspace save(Workspace read, List<Item> changed) {
        if (read.ownProblems().stream().anyMatch(p -> p.isError() && p.file().equals(Workspace.ITEMS))) {
            throw unread(Workspace.ITEMS);
        }
        return save(read, Workspace.ITEMS, ShopDraft.of(changed), ItemsJson::read);
    }

    /**
     * The text of {@code items.json} with other items, without a byte order mark; layout, order of fields and what the program does not know stay.
     *
     * @param read    a workspace whose price list could be read
     * @param changed all items, in the order in which the file is to list them
     * @throws WorkspaceException when the price list of {@code read} has an error, or the text could not be read back
     */
    public static String priceList(Workspace read, List<Item> changed) {
        Source source = read.text(Workspace.ITEMS).orElseThrow(() -> unread(Workspace.ITEMS));
        Json document = JsonReader.read(new Report(source)).orElseThrow(() -> unread(Workspace.ITEMS));
        String text = JsonForm.of(ShopDraft.of(changed).onto(document), source);
        checkReadable(Workspace.ITEMS, text, ItemsJson::read);
        return text;
    }

    private Workspace save(Workspace read, String name, Draft draft, Consumer<Report> reader) {
        Source source = read.text(name).orElseThrow(() -> unread(name));
        Json document = JsonReader.read(new Report(source)).orElseThrow();
        Json merged = draft.onto(document);
        if (merged == document) {
            return read;
        }
        String text = JsonForm.of(merged, source);
        checkReadable(name, text, reader);
        write(name, Optional.of(source.text()), text);
        workspace = Workspace.open(workspace.root());
        return workspace;
    }

    private static WorkspaceException unread(String name) {
        return new WorkspaceException(
                name + ": not saved, the file could not be read; mend it and open the workspace again");
    }

    // scripts and other texts

    /**
     * Saves, adds or removes a stage script, or another text that is kept as it is written.
     *
     * @param name   below the workspace, such as {@code stages/wash/rinse.groovy}
     * @param before what the file held when it was read; empty: there was none
     * @param text   what it is to hold; empty: it is to be removed
     * @throws WorkspaceException when the file has been changed by someone else, or when the disk refuses; it is then as it was
     */
    public void saveText(String name, Optional<String> before, Optional<String> text) {
        Path file = workspace.root().resolve(name);
        try {
            requireSameBytes(name, file, before);
            if (text.isEmpty()) {
                disk.delete(file);
                return;
            }
            Files.createDirectories(file.getParent());
            refuseLinksOut(name, file.getParent());
            files.write(file, text.get().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
    }

    /**
     * Changes several files as one: whatever happens meanwhile, whoever opens the workspace next finds all of them changed or none.
     *
     * @throws WorkspaceException when one of them has been changed by someone else, or when the disk refuses; all are then as they were
     */
    public void change(FilesChange change) {
        new ChangeJournal(workspace.root(), disk).make(change);
    }

    /** A text may be empty or begin with a mark: it is compared as it is. */
    private static void requireSameBytes(String name, Path file, Optional<String> before) throws IOException {
        boolean isThere = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        boolean same = before.isPresent()
                ? isThere
                        && !Files.isSymbolicLink(file)
                        && Arrays.equals(Files.readAllBytes(file), before.get().getBytes(StandardCharsets.UTF_8))
                : !isThere;
        if (!same) {
            throw new WorkspaceException(name
                    + ": not saved, someone else has changed the file since it was read; open the workspace again"
                    + " and repeat the change");
        }
    }

    // jobs

    /**
     * Saves a job in the file that it was read from; readings are not touched.
     *
     * @param file    as it was read
     * @param changed the job with the same id
     * @return the folder as it now is; {@code file} itself when nothing had changed
     * @throws WorkspaceException when the file has been changed by someone else, when the job could not be read back, or
     *                            when the disk refuses; the file is then as it was
     */
    public JobFile save(JobFile file, Job changed) {
        String name = nameOf(file.folder(), Workspace.JOB);
        JobFile.Content content = file.content().orElseThrow(() -> unread(name));
        Json merged = JobJson.draft(changed).onto(content.document());
        if (merged == content.document()) {
            return file;
        }
        String text = JsonForm.of(merged, content.source());
        checkReadable(name, text, JobJson::read);
        write(name, Optional.of(content.source().text()), text);
        return workspace.readJob(file.folder());
    }

    /**
     * Saves a job's readings in its {@code readings.csv}. Rows of zones that are the same stay as they are; separator,
     * unit, decimal mark and further columns too. A row whose readings are all gone goes with its note. What is new is
     * rounded to a thousandth of the file's unit, 0.001 µm or 0.001 mil.
     *
     * @param file    as it was read, with a job
     * @param changed the job with the readings that the file is to hold; nothing else of it is written
     * @return the folder as it now is; {@code file} itself when nothing had changed
     * @throws WorkspaceException when the file has been changed by someone else, when a zone or reading could not be read
     *                            back, or when the disk refuses; the file is then as it was
     */
    public JobFile saveReadings(JobFile file, Job changed) {
        String name = nameOf(file.folder(), Workspace.READINGS);
        if (file.job().isEmpty()) {
            throw unread(name);
        }
        Optional<Source> before = file.content().orElseThrow().readings();
        Optional<String> text = readings(name, before, changed);
        if (text.equals(before.map(Source::text))) {
            return file;
        }
        write(name, before.map(Source::text), text.orElseThrow());
        return workspace.readJob(file.folder());
    }

    /** What the file of a job's readings is to hold; empty when it need not be there. */
    private Optional<String> readings(String name, Optional<Source> before, Job changed) {
        Map<String, List<Reading>> readings = new LinkedHashMap<>();
        changed.survey().zones().forEach((zone, found) -> {
            if (!found.readings().isEmpty()) {
                readings.put(zone, found.readings());
            }
        });
        if (before.isEmpty() && readings.isEmpty()) {
            return Optional.empty();
        }
        Report report = new Report(new Source(name, ""));
        for (boolean mustTellDecimals : List.of(false, true)) {
            String text = before.map(source -> ReadingsDraft.onto(source, readings, mustTellDecimals))
                    .orElseGet(() -> ReadingsDraft.of(readings));
            report = new Report(new Source(name, text));
            check(report, changed);
            if (!report.hasErrors()) {
                return Optional.of(text);
            }
        }
        throw notReadable(name, report);
    }

    private void check(Report report, Job job) {
        ReadingsCsv.Readings found = ReadingsCsv.read(report, ReadingsForm.UNSAID);
        Optional<Shape> shape = workspace.shapes().stream()
                .filter(s -> s.id().equals(job.vehicle().shape()))
                .findFirst();
        shape.ifPresent(s -> found.check(report, s));
    }

    /**
     * Adds a job in a folder named like its id, with its readings.
     *
     * @return the folder as it now is
     * @throws WorkspaceException when the id is none or is used already, when the job could not be read back, or when the
     *                            disk refuses; nothing is then added
     */
    public JobFile add(Job job) {
        return add(job, JsonForm.of(JobJson.draft(job).onto(null)), Optional.empty());
    }

    /**
     * Adds a job that is a copy of another one: what its files hold beside what the program knows is copied too. Kept
     * quotes and photos are not.
     *
     * @param file what is copied, with a job
     * @param as   the job as it is to be, with an id of its own
     * @return the folder of the copy
     * @throws WorkspaceException as {@link #add(Job)}, and when {@code file} could not be read
     */
    public JobFile copy(JobFile file, Job as) {
        if (file.job().isEmpty()) {
            throw unread(nameOf(file.folder(), Workspace.JOB));
        }
        JobFile.Content content = file.content().orElseThrow();
        Job bare = as.withPhotos(List.of());
        Json merged = JobJson.draft(bare).onto(content.document());
        return add(bare, JsonForm.of(merged, content.source()), content.readings());
    }

    private JobFile add(Job job, String text, Optional<Source> otherReadings) {
        String name = nameOf(Shown.plain(job.id()), Workspace.JOB);
        checkReadable(name, text, JobJson::read);
        Optional<String> readings = readings(nameOf(job.id(), Workspace.READINGS), otherReadings, job);
        Workspace now = Workspace.open(workspace.root());
        now.jobs().stream()
                .filter(other ->
                        other.job().filter(j -> j.id().equals(job.id())).isPresent())
                .findFirst()
                .ifPresent(other -> {
                    throw new WorkspaceException(name + ": not saved, the job id '" + job.id()
                            + "' is already used by " + Workspace.JOBS + "/" + other.folder()
                            + "; give this job another id");
                });
        Path jobs = workspace.root().resolve(Workspace.JOBS);
        Path part = jobs.resolve(AtomicFile.leftover());
        try {
            Files.createDirectories(jobs);
            refuseLinksOut(name, jobs);
            Path folder = jobs.resolve(job.id());
            if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
                throw new WorkspaceException(
                        name + ": not saved, there is such a folder already; give this job another id");
            }
            Files.createDirectory(part);
            put(part.resolve(Workspace.JOB), text);
            if (readings.isPresent()) {
                put(part.resolve(Workspace.READINGS), readings.get());
            }
            disk.replace(part, folder);
        } catch (IOException | RuntimeException e) {
            tidy(part, e);
            throw e instanceof IOException io ? DiskFault.notWritten(name, io) : (RuntimeException) e;
        }
        return workspace.readJob(job.id());
    }

    private void put(Path file, String text) throws IOException {
        disk.write(file, text.getBytes(StandardCharsets.UTF_8));
        disk.force(file);
    }

    private static void tidy(Path part, Exception cause) {
        try {
            if (Files.exists(part, LinkOption.NOFOLLOW_LINKS)) {
                removeTree(part);
            }
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    /**
     * Takes a job's folder out of the workspace, with everything in it. Nothing is deleted: it goes below
     * {@code jobs/.removed}, from where {@link #restore} puts it back.
     *
     * @throws WorkspaceException when its files have been changed by someone else since they were read, or when the disk
     *                            refuses; the folder is then where it was
     */
    public RemovedJob remove(JobFile file) {
        String name = Workspace.JOBS + "/" + file.folder();
        file.content().ifPresent(content -> {
            requireUnchanged(
                    nameOf(file.folder(), Workspace.JOB),
                    Optional.of(content.source().text()));
            requireUnchanged(
                    nameOf(file.folder(), Workspace.READINGS),
                    content.readings().map(Source::text));
        });
        try {
            Path removed = workspace.root().resolve(Workspace.JOBS).resolve(Workspace.REMOVED);
            Files.createDirectories(removed);
            refuseLinksOut(name, removed);
            String kept = file.folder();
            for (int i = 2; Files.exists(removed.resolve(kept), LinkOption.NOFOLLOW_LINKS); i++) {
                kept = file.folder() + "-" + i;
            }
            disk.replace(workspace.root().resolve(name), removed.resolve(kept));
            return new RemovedJob(file.folder(), kept);
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
    }

    /**
     * Puts a removed job back.
     *
     * @return its folder as it now is
     * @throws WorkspaceException when there is another job in its place, when it is gone, or when the disk refuses
     */
    public JobFile restore(RemovedJob removed) {
        String name = Workspace.JOBS + "/" + removed.folder();
        Path jobs = workspace.root().resolve(Workspace.JOBS);
        Path folder = jobs.resolve(removed.folder());
        Path kept = jobs.resolve(Workspace.REMOVED).resolve(removed.kept());
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw new WorkspaceException(
                    name + ": not restored, there is such a folder already; rename that one first");
        }
        if (Files.notExists(kept, LinkOption.NOFOLLOW_LINKS)) {
            throw new WorkspaceException(name + ": not restored, " + Workspace.JOBS + "/" + Workspace.REMOVED + "/"
                    + removed.kept() + " is gone");
        }
        try {
            disk.replace(kept, folder);
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
        return workspace.readJob(removed.folder());
    }

    /**
     * Writes a new file of a job; folders on the way are made.
     *
     * @param folder name of the job's folder
     * @param below  path below it, with {@code /}
     * @throws WorkspaceException when there is such a file already, or when the disk refuses
     */
    public void create(String folder, String below, String text) {
        String name = nameOf(folder, below);
        Path file = workspace.root().resolve(name);
        try {
            Files.createDirectories(file.getParent());
            refuseLinksOut(name, file.getParent());
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new WorkspaceException(name + ": not saved, there is such a file already");
            }
            files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
    }

    /**
     * Copies a picture into a job's {@code photos} folder, under a name made of what it holds. The job's file does not name it
     * until the job is saved with it.
     *
     * @param folder name of the job's folder, which is there
     * @param chosen the picture, JPEG or PNG by its first bytes, at most {@value PhotoFile#LARGEST_MIB} MiB; no link
     * @return the name of the file in {@code photos}, as {@link JobPhoto#file}
     * @throws WorkspaceException when {@code chosen} is no such picture, the folder is not there or the disk refuses; nothing is
     *                            then added
     */
    public String addPhoto(String folder, Path chosen) {
        PhotoFile photo = PhotoFile.chosen(chosen);
        String name = nameOf(folder, Workspace.PHOTOS);
        try {
            Path home = workspace.root().resolve(Workspace.JOBS).resolve(folder);
            if (!Files.isDirectory(home)) {
                throw new WorkspaceException(name + ": not saved, the job has no folder yet; save the job first");
            }
            Path photos = home.resolve(Workspace.PHOTOS);
            refuseLinksOut(name, home);
            Files.createDirectories(photos);
            refuseLinksOut(name, photos);
            String file = photo.name("");
            for (int i = 2; Files.exists(photos.resolve(file), LinkOption.NOFOLLOW_LINKS); i++) {
                file = photo.name("-" + i);
            }
            files.write(photos.resolve(file), photo.bytes());
            return file;
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
    }

    // files

    private static String nameOf(String folder, String below) {
        return Workspace.JOBS + "/" + folder + "/" + below;
    }

    private void refuseLinksOut(String name, Path folder) throws IOException {
        if (!folder.toRealPath().startsWith(workspace.root().toRealPath())) {
            throw new WorkspaceException(name + ": not saved, a link leads out of the workspace");
        }
    }

    private static void checkReadable(String name, String text, Consumer<Report> reader) {
        Report report = new Report(new Source(name, text));
        reader.accept(report);
        if (report.hasErrors()) {
            throw notReadable(name, report);
        }
    }

    private static WorkspaceException notReadable(String name, Report report) {
        return new WorkspaceException(report.problems().stream()
                .filter(FileProblem::isError)
                .map(p -> name + ": not saved, " + p.message())
                .findFirst()
                .orElseThrow());
    }

    /** @param before what the file held when it was read; empty: there was none */
    private void requireUnchanged(String name, Optional<String> before) {
        Path file = workspace.root().resolve(name);
        try {
            Optional<String> now = Files.notExists(file, LinkOption.NOFOLLOW_LINKS) && before.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            new TextFile(workspace.root()).read(file).source().text());
            if (!now.equals(before)) {
                throw new WorkspaceException(name
                        + ": not saved, someone else has changed the file since it was read; open the workspace again"
                        + " and repeat the change");
            }
        } catch (TextFile.Unreadable e) {
            throw new WorkspaceException(name + ": not saved, " + e.problem().what(), e);
        }
    }

    private void write(String name, Optional<String> before, String text) {
        try {
            Path given = workspace.root().resolve(name);
            Path file = before.isPresent() ? given.toRealPath() : given;
            requireUnchanged(name, before);
            files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
    }

    /** Lets others write. */
    @Override
    public void close() {
        lock.close();
    }
}
