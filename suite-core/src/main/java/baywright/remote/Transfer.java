package baywright.remote;

import baywright.remote.Watch.Step;
import baywright.workspace.Shown;
import baywright.workspace.UserFolders;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jgit.internal.storage.file.FileRepository;
import org.eclipse.jgit.internal.storage.pack.PackWriter;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectIdRef;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RepositoryCache;
import org.eclipse.jgit.revwalk.ObjectWalk;
import org.eclipse.jgit.transport.BasePackFetchConnection;
import org.eclipse.jgit.transport.BasePackPushConnection;
import org.eclipse.jgit.transport.FetchConnection;
import org.eclipse.jgit.transport.PackLock;
import org.eclipse.jgit.transport.PackParser;
import org.eclipse.jgit.transport.PushConnection;
import org.eclipse.jgit.transport.RefSpec;
import org.eclipse.jgit.transport.RemoteRefUpdate;
import org.eclipse.jgit.transport.SshTransport;
import org.eclipse.jgit.transport.Transport;
import org.eclipse.jgit.transport.URIish;
import org.eclipse.jgit.transport.sshd.JGitKeyCache;
import org.eclipse.jgit.transport.sshd.SshdSessionFactory;
import org.eclipse.jgit.transport.sshd.SshdSessionFactoryBuilder;
import org.eclipse.jgit.util.FS;

/**
 * Brings commits from the remote and to it. Each piece of work has a thread of its own, so that it can be left when somebody cancels while
 * nothing comes; what that thread does not finish leaves objects behind at most, to which nothing points.
 */
final class Transfer {

    private static final int SILENCE_SECONDS = 30;
    private static final int BEAT_MILLIS = 50;
    private static final int LEAVE_MILLIS = 2_000;

    /** Most proposals that are looked at. */
    static final int MOST_PROPOSALS = 500;

    private final Clone clone;
    private final Followed followed;
    private final Access access;
    private final URIish uri;

    Transfer(Clone clone, Followed followed, Access access) {
        this.clone = clone;
        this.followed = followed;
        this.access = access;
        this.uri = RemoteAddress.of(followed.remote());
    }

    /**
     * What a remote had.
     *
     * @param main      tip of the main line
     * @param proposals tips of the branches of proposals, by site; those that are whole alone
     */
    record Brought(Optional<ObjectId> main, SortedMap<String, ObjectId> proposals) {}

    /** What became of a push. */
    enum Sent {
        DONE,
        /** The branch is not where it was expected. */
        OVERTAKEN
    }

    private String where() {
        return RemoteAddress.shown(uri);
    }

    // a thread of its own

    /** Threads whose faults come out at the other end of a pipe as well and are told there. */
    private static final class Quiet extends ThreadGroup {
        Quiet() {
            super("remote");
        }

        @Override
        public void uncaughtException(Thread thread, Throwable fault) {
            // told by the thread that waits for this one
        }
    }

    private <T> T apart(Watch watch, Step step, Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(new Quiet(), task, "remote");
        thread.setDaemon(true);
        watch.at(step, 0, 0);
        thread.start();
        try {
            while (true) {
                try {
                    return task.get(BEAT_MILLIS, TimeUnit.MILLISECONDS);
                } catch (TimeoutException e) {
                    if (watch.cancelled()) {
                        thread.interrupt();
                        thread.join(LEAVE_MILLIS);
                        throw cancelled();
                    }
                }
            }
        } catch (InterruptedException e) {
            thread.interrupt();
            Thread.currentThread().interrupt();
            throw cancelled();
        } catch (ExecutionException e) {
            throw watch.cancelled() ? cancelled() : Faults.of(where(), e.getCause());
        }
    }

    private RemoteFault cancelled() {
        return new RemoteFault(where(), RemoteFault.Kind.CANCELLED);
    }

    private Transport open() throws IOException {
        if (RemoteAddress.isLocal(uri) && !Files.isDirectory(Path.of(uri.getPath()))) {
            throw new RemoteFault(where(), RemoteFault.Kind.NOT_FOUND);
        }
        Transport transport = Transport.open(clone.repository(), uri);
        transport.setTimeout(SILENCE_SECONDS);
        transport.setCredentialsProvider(new Answers(access));
        if (transport instanceof SshTransport ssh) {
            ssh.setSshSessionFactory(Ssh.FACTORY);
        }
        return transport;
    }

    /** Made when it is first needed: the user's own keys, known hosts and settings of ssh, none of which start programs here. */
    private static final class Ssh {
        static final SshdSessionFactory FACTORY = new SshdSessionFactoryBuilder()
                .setPreferredAuthentications("publickey,keyboard-interactive,password")
                .setHomeDirectory(UserFolders.home().toFile())
                .setSshDirectory(UserFolders.home().resolve(".ssh").toFile())
                .build(new JGitKeyCache());
    }

    // bringing

    /** Brings what the clone lacks; nothing in the clone points to it yet. */
    Brought bring(Watch watch) {
        return apart(watch, Step.CONNECTING, () -> {
            if (RemoteAddress.isLocal(uri)) {
                return bringFromFolder(watch);
            }
            try (Transport transport = open();
                    FetchConnection connection = transport.openFetch(
                            List.of(new RefSpec(Constants.R_HEADS + "*:" + Constants.R_HEADS + "*")))) {
                if (!(connection instanceof BasePackFetchConnection)) {
                    // a plain web server is read file by file, without any bound
                    throw new RemoteFault(where(), RemoteFault.Kind.NO_GIT);
                }
                return bring(connection, watch);
            }
        });
    }

    private Brought bring(FetchConnection connection, Watch watch) throws IOException {
        Brought there = named(connection.getRefs());
        List<Ref> wanted = new ArrayList<>();
        for (ObjectId tip : lacking(there)) {
            wanted.add(new ObjectIdRef.Unpeeled(Ref.Storage.NETWORK, "wanted/" + tip.name(), tip));
        }
        if (!wanted.isEmpty()) {
            connection.fetch(new Steps(watch, Step.RECEIVING), wanted, Set.of());
            for (PackLock lock : connection.getPackLocks()) {
                lock.unlock();
            }
        }
        return whole(there);
    }

    /**
     * From a folder that this machine sees. JGit's own way there runs the server's half in a thread that writes its faults to the terminal.
     */
    private Brought bringFromFolder(Watch watch) throws IOException {
        File folder = RepositoryCache.FileKey.resolve(new File(uri.getPath()), FS.DETECTED);
        if (folder == null) {
            throw new RemoteFault(where(), RemoteFault.Kind.NOT_FOUND);
        }
        try (FileRepository remote = new FileRepository(folder)) {
            Brought there = named(remote.getRefDatabase().getRefsByPrefix(Constants.R_HEADS));
            Set<ObjectId> wanted = lacking(there);
            if (!wanted.isEmpty()) {
                copy(remote, wanted, watch);
            }
            return whole(there);
        }
    }

    private void copy(FileRepository remote, Set<ObjectId> wanted, Watch watch) throws IOException {
        Set<ObjectId> known = new HashSet<>(clone.refs(Constants.R_REFS).values());
        known.removeIf(id -> !remote.getObjectDatabase().has(id));
        Path pack = clone.fresh();
        try {
            try (PackWriter writer = new PackWriter(remote);
                    OutputStream out = new BufferedOutputStream(Files.newOutputStream(pack))) {
                Steps steps = new Steps(watch, Step.RECEIVING);
                writer.setIndexDisabled(true);
                writer.preparePack(steps, wanted, known);
                writer.writePack(steps, steps, out);
            }
            try (InputStream in = new BufferedInputStream(Files.newInputStream(pack));
                    ObjectInserter inserter = clone.repository().newObjectInserter()) {
                PackParser parser = inserter.newPackParser(in);
                parser.setAllowThin(true);
                PackLock lock = parser.parse(new Steps(watch, Step.RECEIVING));
                inserter.flush();
                if (lock != null) {
                    lock.unlock();
                }
            }
        } finally {
            Files.deleteIfExists(pack);
        }
    }

    /** The branches that mean something here. */
    private Brought named(Collection<Ref> refs) {
        Optional<ObjectId> main = Optional.empty();
        SortedMap<String, ObjectId> proposals = new TreeMap<>();
        for (Ref ref : refs) {
            String name = ref.getName();
            if (ref.getObjectId() == null || !name.startsWith(Constants.R_HEADS)) {
                continue;
            }
            String branch = name.substring(Constants.R_HEADS.length());
            if (branch.equals(followed.branch())) {
                main = Optional.of(ref.getObjectId());
            } else if (Proposal.isBranch(branch) && proposals.size() < MOST_PROPOSALS) {
                proposals.put(branch.substring(Followed.PROPOSALS.length()), ref.getObjectId());
            }
        }
        return new Brought(main, proposals);
    }

    private Set<ObjectId> lacking(Brought there) {
        Set<ObjectId> tips = new HashSet<>(there.proposals().values());
        there.main().ifPresent(tips::add);
        tips.removeIf(clone::has);
        return tips;
    }

    /** The same with those proposals alone that came as a whole. */
    private Brought whole(Brought there) throws IOException {
        if (there.main().isPresent()) {
            requireWhole(there.main().get());
        }
        SortedMap<String, ObjectId> proposals = new TreeMap<>(there.proposals());
        proposals.values().removeIf(tip -> !isWhole(tip));
        return new Brought(there.main(), proposals);
    }

    private boolean isWhole(ObjectId tip) {
        try {
            requireWhole(tip);
            return true;
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    /** Everything that a commit leads to is there, as far as it is not known already. */
    private void requireWhole(ObjectId tip) throws IOException {
        try (ObjectWalk walk = new ObjectWalk(clone.repository())) {
            walk.markStart(walk.parseCommit(tip));
            for (String known : List.of("refs/remotes/", "refs/heads/", "refs/baywright/")) {
                for (ObjectId id : clone.refs(known).values()) {
                    walk.markUninteresting(walk.parseCommit(id));
                }
            }
            walk.checkConnectivity();
        }
    }

    // sending

    /**
     * Puts a branch of the remote to a commit, if it is where it is expected to be.
     *
     * @param commit   empty: the branch is taken away
     * @param expected where it is; empty: there is no such branch
     * @throws RemoteFault when the remote cannot be reached or does not take it
     */
    Sent send(Optional<ObjectId> commit, String branch, Optional<ObjectId> expected, Watch watch) {
        String name = Constants.R_HEADS + branch;
        return apart(watch, Step.SENDING, () -> {
            // the connection itself, without what JGit does around it: that would run a hook of the clone
            try (Transport transport = open();
                    PushConnection connection = transport.openPush()) {
                if (!(connection instanceof BasePackPushConnection)) {
                    throw new RemoteFault(where(), RemoteFault.Kind.NO_GIT);
                }
                Optional<ObjectId> there =
                        Optional.ofNullable(connection.getRef(name)).map(Ref::getObjectId);
                if (!there.equals(expected)) {
                    return there.equals(commit) ? Sent.DONE : Sent.OVERTAKEN;
                }
                RemoteRefUpdate update = new RemoteRefUpdate(
                        clone.repository(),
                        null,
                        commit.orElse(ObjectId.zeroId()),
                        name,
                        commit.isEmpty(),
                        null,
                        expected.orElse(ObjectId.zeroId()));
                connection.push(new Steps(watch, Step.SENDING), Map.of(name, update));
                return sent(update, connection.getMessages());
            }
        });
    }

    private Sent sent(RemoteRefUpdate update, String messages) {
        switch (update.getStatus()) {
            case OK, UP_TO_DATE -> {
                return Sent.DONE;
            }
            case REJECTED_REMOTE_CHANGED, REJECTED_NONFASTFORWARD, NON_EXISTING -> {
                return Sent.OVERTAKEN;
            }
            default -> {
                // two that push at once meet at the server's lock: whether the branch has moved is seen by looking
                // again
                String said = Objects.requireNonNullElse(update.getMessage(), "") + " " + messages;
                if (said.toLowerCase(Locale.ROOT).contains("lock")) {
                    return Sent.OVERTAKEN;
                }
                throw new RemoteFault(where(), RemoteFault.Kind.NOT_ALLOWED, Shown.plain(said.strip(), 200));
            }
        }
    }
}
