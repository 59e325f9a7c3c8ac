package baywright.remote;

import baywright.pack.Pack;
import baywright.pack.PackGathering;
import baywright.workspace.HeldFile;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.errors.LargeObjectException;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.lib.TreeFormatter;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * The workspace's own copy of the shared library's repository, in {@code packs/shared.git}: bare, nothing is ever checked out of it. It
 * keeps what was fetched and what was not sent yet.
 */
final class Clone implements AutoCloseable {

    static final String FOLDER = "packs/shared.git";

    /** As fetched: the main line and the proposals of all sites. */
    static final String FETCHED_MAIN = "refs/remotes/shared/main";

    static final String FETCHED_PROPOSALS = "refs/remotes/shared/" + Followed.PROPOSALS;

    /** What this site proposes, and what of it the remote has got. */
    static final String OWN = "refs/heads/own";

    static final String SENT = "refs/baywright/sent";

    /** Commits of versions that were on offer, by the SHA-256 of their manifest. */
    static final String OFFERED = "refs/baywright/offered/";

    /** Main lines that the remote has replaced by others. */
    static final String REPLACED = "refs/baywright/replaced/";

    private static final String HELD = "held";
    private static final String LOCK = ".lock";
    private static final String COMING = "coming-";
    private static final String FETCHED_AT = "fetched";
    private static final int MOST_PACKS = 100;
    private static final int DOUBLE = 2;

    private final Path folder;
    private final BoundedRepository repository;

    private Clone(Path folder, BoundedRepository repository) {
        this.folder = folder;
        this.repository = repository;
    }

    /** Opens it; it is made when it is not there. */
    static Clone of(Path workspace) {
        GitSetup.settle();
        Path folder = workspace.resolve(FOLDER);
        try {
            if (Files.isSymbolicLink(folder) || Files.isSymbolicLink(folder.getParent())) {
                throw new RemoteFault(FOLDER, RemoteFault.Kind.CLONE_DAMAGED, "it is a link");
            }
            boolean isNew = Files.notExists(folder.resolve(Constants.HEAD), LinkOption.NOFOLLOW_LINKS);
            if (isNew) {
                Files.createDirectories(folder);
                // a shop that keeps its workspace in git does not keep this in it
                Files.writeString(folder.resolve(".gitignore"), "*\n");
            }
            BoundedRepository repository = new BoundedRepository(folder.toFile());
            if (isNew) {
                repository.create(true);
            }
            StoredConfig config = repository.getConfig();
            if (!config.getBoolean("core", "fsyncRefFiles", false)) {
                config.setBoolean("core", null, "fsyncRefFiles", true);
                config.setBoolean("core", null, "fsyncObjectFiles", true);
                config.save();
            }
            return new Clone(folder, repository);
        } catch (IOException | IllegalArgumentException e) {
            throw damaged(e);
        }
    }

    BoundedRepository repository() {
        return repository;
    }

    static RemoteFault damaged(Exception e) {
        return new RemoteFault(FOLDER, RemoteFault.Kind.CLONE_DAMAGED, e, Faults.reason(e));
    }

    /** Nobody else changes it until this is closed. */
    interface Hold extends AutoCloseable {
        @Override
        void close();
    }

    /** @throws RemoteFault when somebody else holds it */
    Hold hold() {
        try {
            FileChannel channel = HeldFile.hold(folder.resolve(HELD))
                    .orElseThrow(() -> new RemoteFault(FOLDER, RemoteFault.Kind.BUSY));
            removeLeftovers();
            return () -> {
                try {
                    channel.close();
                } catch (IOException e) {
                    // the hold ends with the program at the latest
                    return;
                }
            };
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    /** Locks of JGit's, and what was on its way, that a crash has left: while it is held nobody has any. */
    private void removeLeftovers() throws IOException {
        List<Path> left = new ArrayList<>();
        try (Stream<Path> top = Files.list(folder)) {
            top.filter(p -> isLock(p) || p.getFileName().toString().startsWith(COMING))
                    .forEach(left::add);
        }
        try (Stream<Path> refs = Files.walk(folder.resolve("refs"))) {
            refs.filter(Clone::isLock).forEach(left::add);
        }
        for (Path lock : left) {
            Files.deleteIfExists(lock);
        }
    }

    private static boolean isLock(Path file) {
        return file.getFileName().toString().endsWith(LOCK) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** A file to write something to that is on its way. */
    Path fresh() throws IOException {
        return Files.createTempFile(folder, COMING, "");
    }

    // refs

    Optional<ObjectId> ref(String name) {
        try {
            return Optional.ofNullable(repository.getRefDatabase().exactRef(name))
                    .map(Ref::getObjectId);
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    /** All refs below a prefix, by what follows it. */
    SortedMap<String, ObjectId> refs(String prefix) {
        try {
            SortedMap<String, ObjectId> all = new TreeMap<>();
            for (Ref ref : repository.getRefDatabase().getRefsByPrefix(prefix)) {
                all.put(ref.getName().substring(prefix.length()), ref.getObjectId());
            }
            return all;
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    void set(String name, ObjectId commit) {
        try {
            RefUpdate update = repository.updateRef(name);
            update.setNewObjectId(commit);
            update.disableRefLog();
            RefUpdate.Result result = update.forceUpdate();
            if (result != RefUpdate.Result.NEW
                    && result != RefUpdate.Result.FORCED
                    && result != RefUpdate.Result.FAST_FORWARD
                    && result != RefUpdate.Result.NO_CHANGE) {
                throw damaged(new IOException("'" + name + "' stays where it was"));
            }
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    void remove(String name) {
        try {
            RefUpdate update = repository.updateRef(name);
            update.setForceUpdate(true);
            update.disableRefLog();
            update.delete();
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    // commits

    boolean has(ObjectId id) {
        return repository.getObjectDatabase().has(id);
    }

    RevCommit commit(ObjectId id) throws IOException {
        try (RevWalk walk = new RevWalk(repository)) {
            RevCommit commit = walk.parseCommit(id);
            walk.parseBody(commit);
            return commit;
        }
    }

    boolean isIn(ObjectId commit, ObjectId later) {
        try (RevWalk walk = new RevWalk(repository)) {
            return walk.isMergedInto(walk.parseCommit(commit), walk.parseCommit(later));
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    /**
     * Writes a commit with a pack's files. Nothing points to it yet.
     *
     * @param parents those that others of them do not lead to already
     */
    ObjectId commit(Pack pack, List<ObjectId> parents, String message, PersonIdent by) {
        try (ObjectInserter inserter = repository.newObjectInserter()) {
            SortedMap<String, byte[]> files = new TreeMap<>(pack.allFiles());
            files.put(".gitattributes", "* -text\n".getBytes(StandardCharsets.UTF_8));
            CommitBuilder commit = new CommitBuilder();
            commit.setTreeId(tree(inserter, files));
            commit.setParentIds(parents);
            commit.setAuthor(by);
            commit.setCommitter(by);
            commit.setMessage(message + "\n");
            ObjectId id = inserter.insert(commit);
            inserter.flush();
            return id;
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    /** A tree has its names in order of their bytes, those of folders as if a slash followed. */
    private static ObjectId tree(ObjectInserter inserter, SortedMap<String, byte[]> files) throws IOException {
        SortedMap<String, byte[]> here = new TreeMap<>(Clone::byBytes);
        SortedMap<String, SortedMap<String, byte[]>> folders = new TreeMap<>(Clone::byBytes);
        files.forEach((path, bytes) -> {
            int slash = path.indexOf('/');
            if (slash < 0) {
                here.put(path, bytes);
            } else {
                here.put(path.substring(0, slash + 1), bytes);
                folders.computeIfAbsent(path.substring(0, slash + 1), f -> new TreeMap<>())
                        .put(path.substring(slash + 1), bytes);
            }
        });
        TreeFormatter tree = new TreeFormatter();
        for (Map.Entry<String, byte[]> one : here.entrySet()) {
            String name = one.getKey();
            if (name.endsWith("/")) {
                tree.append(name.substring(0, name.length() - 1), FileMode.TREE, tree(inserter, folders.get(name)));
            } else {
                tree.append(name, FileMode.REGULAR_FILE, inserter.insert(Constants.OBJ_BLOB, one.getValue()));
            }
        }
        return inserter.insert(tree);
    }

    private static int byBytes(String a, String b) {
        return Arrays.compareUnsigned(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The pack that a commit holds.
     *
     * @param name what messages call it
     * @throws baywright.pack.PackRefused when it is no sound pack
     * @throws RemoteFault when objects of it are missing or damaged
     */
    Pack pack(ObjectId commit, String name) {
        PackGathering files = new PackGathering(name);
        try (ObjectReader reader = repository.newObjectReader();
                RevWalk commits = new RevWalk(reader);
                TreeWalk walk = new TreeWalk(reader)) {
            walk.addTree(commits.parseCommit(commit).getTree());
            int met = 0;
            while (walk.next()) {
                if (++met > DOUBLE * PackGathering.MOST_FILES) {
                    throw files.more();
                }
                String path = files.name(walk.getRawPath());
                if (walk.getDepth() == 0 && PackGathering.isOfGit(path)) {
                    continue;
                }
                if (walk.isSubtree()) {
                    files.refuseDeep(path + "/");
                    walk.enterSubtree();
                } else {
                    ObjectId blob = walk.getObjectId(0);
                    files.add(path, kind(walk.getFileMode(0)), most -> bytes(reader, blob, most));
                }
            }
        } catch (IOException e) {
            throw new RemoteFault(name, RemoteFault.Kind.DAMAGED, e, Faults.reason(e));
        }
        return files.judged();
    }

    private static PackGathering.Kind kind(FileMode mode) {
        return mode.equals(FileMode.REGULAR_FILE) || mode.equals(FileMode.EXECUTABLE_FILE)
                ? PackGathering.Kind.FILE
                : mode.equals(FileMode.SYMLINK) ? PackGathering.Kind.LINK : PackGathering.Kind.OTHER;
    }

    private static byte[] bytes(ObjectReader reader, ObjectId blob, int most) throws IOException {
        try {
            return reader.open(blob, Constants.OBJ_BLOB).getCachedBytes(most + 1);
        } catch (LargeObjectException e) {
            return new byte[most + 1];
        }
    }

    // care

    Optional<String> fetchedAt() {
        Path note = folder.resolve(FETCHED_AT);
        try {
            return Files.exists(note) ? Optional.of(Files.readString(note).strip()) : Optional.empty();
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    void noteFetched(String at) {
        try {
            Files.writeString(folder.resolve(FETCHED_AT), at + "\n");
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    /** Puts many small packs together once there are many, so that reading stays quick. */
    void tidy() {
        try (Stream<Path> packs = Files.list(folder.resolve("objects/pack"))) {
            if (packs.filter(p -> p.toString().endsWith(".pack")).count() > MOST_PACKS) {
                Git.wrap(repository).gc().call();
            }
        } catch (IOException | GitAPIException e) {
            throw damaged(e);
        }
    }

    @Override
    public void close() {
        repository.close();
    }
}
