package baywright.workspace;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The one writer of a workspace. While it is open no other program can open one; reading is always possible.
 *
 * <p>A save replaces a file as a whole. Fields that this version does not know, the order of fields and the way unchanged
 * values are written stay. A save that fails leaves the file as it was.
 */
public final class WorkspaceWriter implements AutoCloseable {

    private final Workspace workspace;
    private final WriteLock lock;
    private final AtomicFile files;

    private WorkspaceWriter(Workspace workspace, WriteLock lock, Disk disk) {
        this.workspace = workspace;
        this.lock = lock;
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
        WorkspaceWriter writer = new WorkspaceWriter(workspace, lock, disk);
        writer.removeLeftovers();
        return writer;
    }

    /** What a killed program left behind; only the holder of the lock may judge that nobody is writing it. */
    private void removeLeftovers() {
        try (Stream<Path> all = Files.find(
                workspace.root(), 4, (path, attributes) -> attributes.isRegularFile() && AtomicFile.isLeftover(path))) {
            for (Path leftover : all.toList()) {
                Files.deleteIfExists(leftover);
            }
        } catch (IOException e) {
            // A leftover does no harm but to take room; the next writer tries again.
            return;
        }
    }

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
        String name = Workspace.JOBS + "/" + file.folder() + "/" + Workspace.JOB;
        JobFile.Content content = file.content()
                .orElseThrow(() -> new WorkspaceException(
                        name + ": not saved, the file could not be read; mend it and open the workspace again"));
        Json merged = JobJson.draft(changed).onto(content.document());
        if (merged == content.document()) {
            return file;
        }
        String text = JsonForm.of(merged, content.source());
        checkReadable(name, text);
        write(
                Path.of(Workspace.JOBS, file.folder(), Workspace.JOB),
                name,
                content.source().text(),
                text);
        return workspace.readJob(file.folder());
    }

    /**
     * Writes a new file of a job; folders on the way are made.
     *
     * @param folder name of the job's folder
     * @param below  path below it, with {@code /}
     * @throws WorkspaceException when there is such a file already, or when the disk refuses
     */
    public void create(String folder, String below, String text) {
        String name = Workspace.JOBS + "/" + folder + "/" + below;
        Path file = workspace.root().resolve(name);
        try {
            Files.createDirectories(file.getParent());
            if (!file.getParent().toRealPath().startsWith(workspace.root().toRealPath())) {
                throw new WorkspaceException(name + ": not saved, a link leads out of the workspace");
            }
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new WorkspaceException(name + ": not saved, there is such a file already");
            }
            files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        }
    }

    private static void checkReadable(String name, String text) {
        Report report = new Report(new Source(name, text));
        Optional<JobJson.Read> read = JobJson.read(report);
        if (read.isEmpty()) {
            throw new WorkspaceException(report.problems().stream()
                    .filter(FileProblem::isError)
                    .map(p -> name + ": not saved, " + p.message())
                    .findFirst()
                    .orElseThrow());
        }
    }

    private void write(Path relative, String name, String before, String text) {
        try {
            Path file = workspace.root().resolve(relative.toString()).toRealPath();
            String now = new TextFile(workspace.root())
                    .read(workspace.root().resolve(relative.toString()))
                    .source()
                    .text();
            if (!now.equals(before)) {
                throw new WorkspaceException(name
                        + ": not saved, someone else has changed the file since it was read; open the workspace again"
                        + " and repeat the change");
            }
            files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw DiskFault.notWritten(name, e);
        } catch (TextFile.Unreadable e) {
            throw new WorkspaceException(name + ": not saved, " + e.problem().what(), e);
        }
    }

    /** Lets others write. */
    @Override
    public void close() {
        lock.close();
    }
}
