package baywright.site;

import baywright.workspace.EditsJournal;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import baywright.workspace.WorkspaceWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Writes what was edited in an open shop, and takes over what others have changed on disk meanwhile. What both have changed is a clash;
 * nothing of it is lost, whichever way it is decided.
 */
public final class Saving {

    /** What to do with files that were changed here and by someone else. */
    public enum Clashes {
        /** Save nothing that clashes; it stays unsaved here and as it is on disk. */
        LEAVE,
        /** Write the edits of here; what is on disk is kept aside in the workspace. */
        MINE,
        /** Take over what is on disk; the edits of here are kept aside in the workspace. */
        THEIRS
    }

    /**
     * What came of a save.
     *
     * @param shop    the shop with the files as they are now; what is still unsaved is so because of {@code clashes} or {@code refused}
     * @param written names of what was written
     * @param taken   names of what was taken over from disk
     * @param clashes names of what both have changed and nobody has decided
     * @param refused why something could not be written, in words that name it
     */
    public record Outcome(
            OpenShop shop, List<String> written, List<String> taken, List<String> clashes, List<String> refused) {}

    private Saving() {}

    /**
     * Saves. Off the event thread.
     *
     * @throws WorkspaceException when another program is writing the workspace, or it is not there any more
     */
    public static Outcome save(OpenShop mine, Clashes clashes) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(Workspace.open(mine.folder()))) {
            OpenShop.Merge merge = mine.mergedOverDisk();
            List<String> undecided = List.of();
            OpenShop merged = merge.shop();
            List<String> taken = new ArrayList<>(merge.taken());
            EditsJournal journal = new EditsJournal(mine.folder());
            if (!merge.clashes().isEmpty()) {
                switch (clashes) {
                    case LEAVE -> undecided = merge.clashes();
                    case MINE -> keepAside(journal, mine.folder(), merge.clashes());
                    case THEIRS -> {
                        SortedMap<String, String> texts =
                                UnsavedEdits.of(merged).files();
                        merge.clashes()
                                .forEach(name -> texts.forEach((file, text) -> {
                                    if (file.equals(name) || file.startsWith(name + "/")) {
                                        journal.keep(file, text);
                                    }
                                }));
                        merged = merged.reverted(merge.clashes());
                        taken.addAll(merge.clashes());
                    }
                }
            }
            return new Writing(writer, mine, merged, undecided, taken).run();
        }
    }

    private static void keepAside(EditsJournal journal, Path root, List<String> names) {
        for (String name : names) {
            Path there = root.resolve(name);
            List<Path> files = Files.isDirectory(there)
                    ? List.of(there.resolve("job.json"), there.resolve("readings.csv"))
                    : List.of(there);
            for (Path file : files) {
                if (Files.isRegularFile(file)) {
                    try {
                        journal.keep(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
                    } catch (IOException e) {
                        throw new WorkspaceException(name + ": not saved, what is on disk cannot be kept aside", e);
                    }
                }
            }
        }
    }

    /** One save under way. */
    private static final class Writing {

        private final WorkspaceWriter writer;
        private final OpenShop mine;
        private final OpenShop shop;
        private final List<String> undecided;
        private final List<String> taken;
        private final List<String> written = new ArrayList<>();
        private final List<String> refused = new ArrayList<>();

        Writing(WorkspaceWriter writer, OpenShop mine, OpenShop shop, List<String> undecided, List<String> taken) {
            this.writer = writer;
            this.mine = mine;
            this.shop = shop;
            this.undecided = undecided;
            this.taken = taken;
        }

        Outcome run() {
            for (String name : shop.unsaved()) {
                if (!undecided.contains(name)) {
                    try {
                        write(name);
                        written.add(name);
                    } catch (WorkspaceException e) {
                        refused.add(e.getMessage());
                    }
                }
            }
            OpenShop saved = shop.overFilesOnDisk(written).withFilesOf(mine, undecided);
            return new Outcome(saved, written, taken, undecided, refused);
        }

        private void write(String name) {
            Workspace read = shop.read();
            if (name.equals("shop.json")) {
                writer.save(read, shop.shop());
            } else if (name.equals("items.json")) {
                writer.save(read, shop.items());
            } else if (name.startsWith("jobs/")) {
                writeJob(name.substring("jobs/".length()));
            } else {
                Optional<String> before = shop.readText(name);
                Optional<String> now = Optional.ofNullable(shop.texts().get(name));
                writer.saveText(name, before, now);
            }
        }

        private void writeJob(String id) {
            Optional<Job> job = shop.job(id);
            Optional<JobFile> file = shop.file(id);
            if (job.isEmpty()) {
                writer.remove(file.orElseThrow());
            } else if (file.isEmpty()) {
                writer.add(job.get());
            } else {
                JobFile saved = writer.save(file.get(), job.get());
                writer.saveReadings(saved, job.get());
            }
        }
    }
}
