package baywright.workspace;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Changes several files as one. The whole change is written down first, in one step; from then on it counts as made, and whoever opens
 * the workspace next finishes what a crash has left undone. Before that step nothing has happened.
 */
final class ChangeJournal {

    static final String NAME = EditsJournal.FOLDER + "/change.json";

    private static final long LARGEST = 128L << 20;
    private static final int PATIENCE = 60;
    private static final long BREATH_MILLIS = 50;

    private final Path root;
    private final Disk disk;

    ChangeJournal(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
    }

    /**
     * Makes a change; the caller holds the right to write.
     *
     * @throws WorkspaceException when a file is not as the change expects it, or when the disk refuses; all files are then as they were
     */
    void make(FilesChange change) {
        if (change.isEmpty()) {
            return;
        }
        try {
            for (Map.Entry<String, FilesChange.Replaced> file : change.files().entrySet()) {
                requireBefore(file.getKey(), file.getValue().before());
            }
            for (String name : change.files().keySet()) {
                makeFolder(name);
            }
            makeFolder(NAME);
            new AtomicFile(disk).write(root.resolve(NAME), change.text().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw DiskFault.notWritten("packs", e);
        }
        try {
            apply(change);
            disk.delete(root.resolve(NAME));
        } catch (IOException e) {
            takeBack(change, e);
        }
    }

    private void takeBack(FilesChange change, IOException cause) {
        try {
            apply(change.reversed());
            disk.delete(root.resolve(NAME));
        } catch (IOException e) {
            cause.addSuppressed(e);
            throw new WorkspaceException(
                    NAME + ": the change is half made, " + DiskFault.reason(cause)
                            + "; mend the disk and open the workspace again, and it is finished",
                    cause);
        }
        throw DiskFault.notWritten("packs", cause);
    }

    private void apply(FilesChange change) throws IOException {
        for (Map.Entry<String, FilesChange.Replaced> file : change.files().entrySet()) {
            put(file.getKey(), file.getValue().after());
        }
    }

    private void put(String name, Optional<String> text) throws IOException {
        if (text.equals(now(name))) {
            return;
        }
        if (text.isPresent()) {
            makeFolder(name);
            new AtomicFile(disk).write(root.resolve(name), text.get().getBytes(StandardCharsets.UTF_8));
        } else {
            disk.delete(root.resolve(name));
            removeEmptyFolders(root.resolve(name).getParent());
        }
    }

    /** Those that only held what is gone; the folders of scripts and packs themselves stay. */
    private void removeEmptyFolders(Path from) throws IOException {
        for (Path folder = from; root.relativize(folder).getNameCount() > 1; folder = folder.getParent()) {
            try (Stream<Path> inside = Files.list(folder)) {
                if (inside.findAny().isPresent()) {
                    return;
                }
            }
            Files.delete(folder);
        }
    }

    private void makeFolder(String name) throws IOException {
        Path folder = Files.createDirectories(root.resolve(name).getParent());
        if (!folder.toRealPath().startsWith(root.toRealPath())) {
            throw new WorkspaceException(name + ": not saved, a link leads out of the workspace");
        }
    }

    private void requireBefore(String name, Optional<String> before) throws IOException {
        if (!before.equals(now(name))) {
            throw new WorkspaceException(name
                    + ": not saved, someone else has changed the file since it was read; open the workspace again"
                    + " and repeat the change");
        }
    }

    /** What a file holds, letter by letter. */
    private Optional<String> now(String name) throws IOException {
        Path file = root.resolve(name);
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        if (Files.isSymbolicLink(file)) {
            throw new WorkspaceException(name + ": not saved, this is a link; put the file itself here");
        }
        return Optional.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
    }

    // after a crash

    /** Finishes what was left undone, if anything; waits a moment for whoever is at it. Takes the right to write only when there is need. */
    static void settle(Path root) {
        Path journal = root.resolve(NAME);
        for (int i = 0; i < PATIENCE && Files.exists(journal, LinkOption.NOFOLLOW_LINKS); i++) {
            try (WriteLock lock = WriteLock.take(root)) {
                new ChangeJournal(root, Disk.REAL).finish(lock);
            } catch (WriteLock.Held e) {
                breathe(e);
            }
        }
        if (Files.exists(journal, LinkOption.NOFOLLOW_LINKS)) {
            throw new WorkspaceException(
                    NAME + ": another program has begun to change the workspace and has not finished;"
                            + " close it there and open the workspace again");
        }
    }

    /**
     * What a workspace looks like whose files change as one: alike before and after a reading only when no such change was made
     * meanwhile. A change writes itself down, and the record of packs, anew.
     */
    static List<String> mark(Path root) {
        return Stream.of(EditsJournal.FOLDER, NAME, Workspace.PACKS + "/lock.json", Workspace.PACKS + "/undo.json")
                .map(name -> look(root.resolve(name)))
                .toList();
    }

    private static String look(Path file) {
        try {
            BasicFileAttributes of = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return of.lastModifiedTime() + " " + of.fileKey() + " " + (of.isDirectory() ? 0 : of.size());
        } catch (IOException e) {
            // what is not there looks alike as long as it is not there
            return "";
        }
    }

    private static void breathe(WriteLock.Held cause) {
        try {
            Thread.sleep(BREATH_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw cause;
        }
    }

    /** The same for the holder of the right to write. */
    void finish(WriteLock holder) {
        Path journal = root.resolve(NAME);
        if (holder.isOpen() && Files.exists(journal, LinkOption.NOFOLLOW_LINKS)) {
            FilesChange change = read(journal);
            try {
                for (Map.Entry<String, FilesChange.Replaced> file :
                        change.files().entrySet()) {
                    keepOwn(file.getKey(), file.getValue());
                }
                apply(change);
                disk.delete(journal);
            } catch (IOException e) {
                throw new WorkspaceException(
                        NAME + ": a change that was interrupted cannot be finished, " + DiskFault.reason(e)
                                + "; mend the disk and open the workspace again",
                        e);
            }
        }
    }

    /** What somebody wrote between the crash and now is neither old nor new: it goes aside and is not lost. */
    private void keepOwn(String name, FilesChange.Replaced file) throws IOException {
        Optional<String> now = now(name);
        if (now.isPresent() && !now.equals(file.before()) && !now.equals(file.after())) {
            new EditsJournal(root).keep(name, now.get());
        }
    }

    private FilesChange read(Path journal) {
        try {
            if (Files.isSymbolicLink(journal)
                    || !journal.toRealPath().startsWith(root.toRealPath())
                    || Files.size(journal) > LARGEST) {
                throw unreadable();
            }
            return FilesChange.read(Files.readString(journal, StandardCharsets.UTF_8))
                    .orElseThrow(ChangeJournal::unreadable);
        } catch (IOException e) {
            throw new WorkspaceException(NAME + ": the file cannot be read, " + DiskFault.reason(e), e);
        }
    }

    private static WorkspaceException unreadable() {
        return new WorkspaceException(NAME
                + ": this is no change that the program has begun; move the file away and open the workspace again");
    }
}
