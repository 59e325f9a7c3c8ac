package baywright.workspace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** Copies a folder to a place where nothing is, all of it or nothing. */
final class WorkspaceCopy {

    private WorkspaceCopy() {}

    static void copy(Path template, Optional<Path> library, Path folder) {
        Path from = template.toAbsolutePath().normalize();
        Path to = folder.toAbsolutePath().normalize();
        checkThere(template);
        library.ifPresent(WorkspaceCopy::checkThere);
        if (from.getFileSystem().equals(to.getFileSystem()) && to.startsWith(from)) {
            throw new WorkspaceException(folder + ": a workspace cannot be made inside the folder it is copied from");
        }
        checkFree(folder, to);
        grow(folder, part -> {
            copyTree(from, part);
            if (library.isPresent()) {
                complete(part, library.get().toAbsolutePath().normalize());
            }
        });
    }

    /**
     * Makes a folder of files with what it lacks from a library.
     *
     * @param files text of each by its name in the folder
     */
    static void make(Map<String, String> files, Path library, Path folder) {
        checkThere(library);
        checkFree(folder, folder.toAbsolutePath().normalize());
        grow(folder, part -> {
            Files.createDirectory(part);
            for (Map.Entry<String, String> file : files.entrySet()) {
                Files.writeString(part.resolve(file.getKey()), file.getValue());
            }
            complete(part, library.toAbsolutePath().normalize());
        });
    }

    /** Fills a folder. */
    private interface Filling {
        void fill(Path folder) throws IOException;
    }

    /** What breaks off must not look like a workspace, so it grows under another name. */
    private static void grow(Path folder, Filling filling) {
        Path to = folder.toAbsolutePath().normalize();
        Path part = to.resolveSibling(".making-" + UUID.randomUUID());
        try {
            Files.createDirectories(to.getParent());
            filling.fill(part);
            Files.deleteIfExists(to);
            Files.move(part, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            removeTree(part, e);
            throw new WorkspaceException(folder + ": the workspace cannot be made, " + DiskFault.reason(e), e);
        }
    }

    private static void checkThere(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new WorkspaceException(folder + ": there is no such folder to copy from");
        }
    }

    private static void complete(Path part, Path library) throws IOException {
        Path stages = part.resolve(Workspace.STAGES);
        if (Files.notExists(stages)) {
            copyTree(library, stages);
            Path prices = stages.resolve(Workspace.ITEMS);
            if (Files.notExists(part.resolve(Workspace.ITEMS)) && Files.exists(prices)) {
                Files.move(prices, part.resolve(Workspace.ITEMS));
            }
            Files.deleteIfExists(prices);
        }
    }

    private static void checkFree(Path shown, Path to) {
        if (to.getParent() == null) {
            throw new WorkspaceException(shown + ": this is no place for a workspace; name a new folder");
        }
        if (!Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.list(to)) {
            if (Files.isDirectory(to, LinkOption.NOFOLLOW_LINKS)
                    && all.findAny().isEmpty()) {
                return;
            }
        } catch (IOException e) {
            throw new WorkspaceException(shown + ": there is a file of this name; name a new folder", e);
        }
        throw new WorkspaceException(
                shown + ": the folder exists and is not empty; name a new one, nothing is overwritten");
    }

    private static void copyTree(Path from, Path to) throws IOException {
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes)
                    throws IOException {
                if (directory.getFileName().toString().equals(EditsJournal.FOLDER)) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                Files.createDirectory(target(directory));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                boolean isOwn = file.getFileName().toString().equals(WriteLock.FILE) || AtomicFile.isLeftover(file);
                if (attributes.isRegularFile() && !isOwn) {
                    Files.write(target(file), Files.readAllBytes(file));
                }
                return FileVisitResult.CONTINUE;
            }

            private Path target(Path source) {
                return to.resolve(from.relativize(source).toString());
            }
        });
    }

    private static void removeTree(Path folder, IOException cause) {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.delete(path);
            }
        } catch (IOException | UncheckedIOException e) {
            cause.addSuppressed(e);
        }
    }
}
