package baywright.workspace;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A note of unsaved edits that one window has for itself, so that two windows on one workspace do not write over each other's. The lock is the
 * operating system's and ends with the program, however that ends: then the note is there for whoever claims next. The lock's file stays.
 */
public final class EditsClaim implements AutoCloseable {

    /** So many windows may be at one workspace. */
    private static final int MOST = 32;

    private final EditsJournal journal;
    private final Optional<FileChannel> lock;

    private EditsClaim(EditsJournal journal, Optional<FileChannel> lock) {
        this.journal = journal;
        this.lock = lock;
    }

    /**
     * Claims a note that nobody holds: the first one in which an earlier run has left edits, otherwise the first. In a folder that cannot be
     * written nothing is held, as nothing will be noted there either.
     *
     * @throws WorkspaceException when as many windows as there may be are at the workspace
     */
    public static EditsClaim in(Path root) {
        List<EditsJournal> empty = new ArrayList<>();
        List<EditsJournal> left = new ArrayList<>();
        for (int number = 1; number <= MOST; number++) {
            EditsJournal journal = new EditsJournal(root, number);
            (journal.isThere() ? left : empty).add(journal);
        }
        left.addAll(empty);
        try {
            Files.createDirectories(root.resolve(EditsJournal.FOLDER));
            for (EditsJournal journal : left) {
                Optional<FileChannel> lock = HeldFile.hold(journal.lockFile());
                if (lock.isPresent()) {
                    return new EditsClaim(journal, lock);
                }
            }
        } catch (IOException e) {
            return new EditsClaim(new EditsJournal(root), Optional.empty());
        }
        throw new WorkspaceException(
                root.getFileName() + ": " + MOST + " windows are at this workspace already; close one of them");
    }

    /** Where the edits are noted. */
    public EditsJournal journal() {
        return journal;
    }

    /** Leaves the note to others. */
    @Override
    public void close() {
        try {
            if (lock.isPresent()) {
                lock.get().close();
            }
        } catch (IOException e) {
            // The lock ends with the program at the latest.
            return;
        }
    }
}
