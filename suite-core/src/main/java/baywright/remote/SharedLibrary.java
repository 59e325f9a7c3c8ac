package baywright.remote;

import baywright.library.Item;
import baywright.library.ScriptCache;
import baywright.pack.Consent;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackRefused;
import baywright.pack.SigningKey;
import baywright.pack.TrustList;
import baywright.pack.Version;
import baywright.remote.RemoteFault.Kind;
import baywright.remote.Transfer.Sent;
import baywright.remote.Watch.Step;
import baywright.share.Choice;
import baywright.share.DeclarationMerge;
import baywright.share.TakenPack;
import baywright.share.Taking;
import baywright.share.Texts;
import baywright.workspace.SharedItem;
import baywright.workspace.Shop;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.revwalk.RevCommit;

/**
 * The shared library that a site follows: a pack on the main line of a git repository, and proposals of the sites, each on the branch of
 * its site. Only {@link #fetch}, {@link #send}, {@link #publish}, {@link #accept}, {@link #decline} and {@link #begin} use the net.
 *
 * <p>Nothing of the workspace's library changes here: {@link #taking} gives what following comes to, which is then taken as any pack is.
 */
public final class SharedLibrary implements AutoCloseable {

    /** How often others may be quicker before it is given up. */
    static final int MOST_TRIES = 12;

    private static final int LONGEST_PAUSE_MILLIS = 200;
    private static final String PACKS = "packs/";
    private static final String ITEM = "item ";

    private final Path root;
    private final Followed followed;
    private final Clock clock;
    private final Clone clone;
    private final Transfer transfer;

    private SharedLibrary(Path root, Followed followed, Access access, Clock clock) {
        this.root = root;
        this.followed = followed;
        this.clock = clock;
        this.clone = Clone.of(root);
        this.transfer = new Transfer(clone, followed, access);
    }

    /**
     * Opens what a workspace follows.
     *
     * @param access answers what the remote asks
     * @param clock  tells the time for commits
     * @throws RemoteFault when it follows nothing, or its copy of the repository cannot be read
     */
    public static SharedLibrary open(Path workspace, Access access, Clock clock) {
        Followed followed = Followed.of(workspace)
                .orElseThrow(() -> new RemoteFault(String.valueOf(workspace.getFileName()), Kind.NOT_FOLLOWED));
        return new SharedLibrary(workspace, followed, access, clock);
    }

    /**
     * Follows a shared library from now on; it is on record in the workspace. Nothing is fetched yet.
     *
     * @param remote a folder, {@code file://}, {@code ssh://}, {@code user@host:path} or {@code https://}; no password in it
     * @param branch its main line
     * @param site   id of the site; empty: that of its shop
     * @throws RemoteFault when the address cannot be used, or another library is followed to which a proposal waits to be sent
     */
    public static SharedLibrary follow(
            Workspace workspace, String remote, String branch, Optional<String> site, Access access, Clock clock) {
        String id = site.or(() -> workspace.shop().map(Shop::id))
                .orElseThrow(() -> new RemoteFault(Followed.FILE, Kind.NO_SITE));
        Followed next = new Followed(RemoteAddress.kept(remote), branch, id);
        Optional<Followed> before = Followed.of(workspace.root());
        if (before.isPresent() && !before.get().equals(next)) {
            try (SharedLibrary old = new SharedLibrary(workspace.root(), before.get(), access, clock)) {
                old.forget();
            }
        }
        if (!before.equals(Optional.of(next))) {
            Optional<String> text = new Texts(workspace.root()).text(Followed.FILE);
            try (WorkspaceWriter writer = WorkspaceWriter.open(workspace)) {
                writer.saveText(Followed.FILE, text, Optional.of(next.text()));
            }
        }
        return new SharedLibrary(workspace.root(), next, access, clock);
    }

    /** Lets go of what belongs to the remote alone. */
    private void forget() {
        if (isUnsent()) {
            throw new RemoteFault(Followed.FILE, Kind.UNSENT_ELSEWHERE, followed.remote());
        }
        try (Clone.Hold hold = clone.hold()) {
            Objects.requireNonNull(hold);
            clone.remove(Clone.FETCHED_MAIN);
            clone.refs(Clone.FETCHED_PROPOSALS).keySet().forEach(name -> clone.remove(Clone.FETCHED_PROPOSALS + name));
            clone.remove(Clone.OWN);
            clone.remove(Clone.SENT);
        }
    }

    /** What is followed. */
    public Followed followed() {
        return followed;
    }

    private RemoteFault fault(Kind kind, Object... values) {
        return new RemoteFault(followed.remote(), kind, values);
    }

    // as it stands

    /** How the site stands to the library. */
    public SharedState state() {
        Optional<Pack> main = clone.ref(Clone.FETCHED_MAIN).flatMap(this::usable);
        Optional<TakenPack> taken =
                main.flatMap(pack -> Taking.lockOf(root).pack(pack.manifest().id()));
        boolean isNewest = taken.isPresent()
                && taken.get().hash().equals(main.orElseThrow().hash());
        return new SharedState(
                clone.fetchedAt(), main.map(Pack::manifest), taken.map(TakenPack::version), isNewest, isUnsent());
    }

    private Optional<Pack> usable(ObjectId commit) {
        try {
            return Optional.of(clone.pack(commit, followed.branch()));
        } catch (PackRefused | RemoteFault e) {
            return Optional.empty();
        }
    }

    private boolean isUnsent() {
        Optional<ObjectId> own = clone.ref(Clone.OWN);
        return own.isPresent() && !own.equals(clone.ref(Clone.SENT));
    }

    private ObjectId mainTip() {
        return clone.ref(Clone.FETCHED_MAIN).orElseThrow(() -> fault(Kind.NOTHING_FETCHED));
    }

    /**
     * The pack of the main line as it was fetched last.
     *
     * @throws PackRefused when it is no sound pack
     * @throws RemoteFault when nothing was fetched yet
     */
    public Pack main() {
        return clone.pack(mainTip(), followed.branch());
    }

    // following

    /**
     * Brings main line and proposals from the remote.
     *
     * @throws RemoteFault when it does not go; what was fetched before stays
     */
    public Fetched fetch(Watch watch) {
        try (Clone.Hold hold = clone.hold()) {
            Objects.requireNonNull(hold);
            return fetchHeld(watch);
        }
    }

    private Fetched fetchHeld(Watch watch) {
        Transfer.Brought brought = transfer.bring(watch);
        Optional<ObjectId> before = clone.ref(Clone.FETCHED_MAIN);
        Optional<ObjectId> now = brought.main();
        if (before.isPresent() && now.isEmpty()) {
            throw fault(Kind.BRANCH_GONE, followed.branch());
        }
        boolean isNew = !before.equals(now);
        boolean isRewritten = isNew && before.isPresent() && !clone.isIn(before.get(), now.get());
        if (isRewritten) {
            clone.set(Clone.REPLACED + before.get().name(), before.get());
        }
        SortedMap<String, ObjectId> old = clone.refs(Clone.FETCHED_PROPOSALS);
        brought.proposals().forEach((site, tip) -> {
            if (!tip.equals(old.remove(site))) {
                clone.set(Clone.FETCHED_PROPOSALS + site, tip);
            }
        });
        old.keySet().forEach(site -> clone.remove(Clone.FETCHED_PROPOSALS + site));
        if (isNew) {
            now.ifPresent(tip -> clone.set(Clone.FETCHED_MAIN, tip));
        }
        clone.noteFetched(clock.instant().truncatedTo(ChronoUnit.SECONDS).toString());
        clone.tidy();
        int open = (int) clone.refs(Clone.FETCHED_PROPOSALS).values().stream()
                .filter(this::isOpen)
                .count();
        return new Fetched(now.isEmpty(), isNew, isRewritten, open);
    }

    /**
     * What taking the main line, as it was fetched last, comes to.
     *
     * @throws PackRefused when it is no sound pack or does not go together with others
     * @throws RemoteFault when nothing was fetched yet
     */
    public Taking taking(Workspace workspace, Choice choice, ScriptCache cache) {
        ObjectId tip = mainTip();
        Pack pack = main();
        Taking taking = Taking.of(workspace, pack, choice, cache, came -> common(came, tip));
        if (!clone.ref(Clone.OFFERED + pack.hash()).equals(Optional.of(tip))) {
            try (Clone.Hold hold = clone.hold()) {
                Objects.requireNonNull(hold);
                clone.set(Clone.OFFERED + pack.hash(), tip);
            }
        }
        return taking;
    }

    /** What was taken last, with what the main line has accepted of this site since. */
    private SortedMap<String, String> common(SortedMap<String, String> came, ObjectId main) {
        Optional<ObjectId> own = clone.ref(Clone.OWN);
        Optional<ObjectId> taken = commitOfTaken();
        if (own.isEmpty() || taken.isEmpty()) {
            return came;
        }
        Content last = new Content(came, new TreeMap<>(), Optional.empty());
        return new TreeMap<>(
                new History(clone).common(last, taken.get(), own.get(), main).texts());
    }

    // proposing

    /**
     * What the site would propose: what it has made of the version that it took. Works without the net.
     *
     * @param choice what of it; everything but what other packs declare when it names nothing. Items that the site has otherwise go
     *               along only by name, since equivalents are the site's own
     * @throws RemoteFault when the site has not taken the library
     */
    public Draft draft(Workspace workspace, Choice choice, ScriptCache cache) {
        ObjectId takenFrom = takenCommit();
        Pack taken = clone.pack(takenFrom, followed.branch());
        Content then = Content.of(taken);
        Content wished = wished(workspace, taken.manifest().id(), then, choice);
        Optional<ObjectId> rival = clone.ref(Clone.FETCHED_PROPOSALS + followed.site())
                .filter(tip ->
                        clone.ref(Clone.OWN).map(own -> !clone.isIn(tip, own)).orElse(true))
                .filter(tip -> !clone.isIn(tip, takenFrom));
        Content.Joined joined = new Content.Joined(wished, List.of(), true);
        if (rival.isPresent()) {
            History history = new History(clone);
            joined = Content.join(history.base(takenFrom, rival.get()), wished, history.content(rival.get()), choice);
        }
        Outcome outcome =
                Outcome.of(then, joined, beside(workspace, taken.manifest().id()), root.resolve(Clone.FOLDER), cache);
        List<String> items = items(then, joined.content());
        return new Draft(joined.content(), outcome, items, parents(takenFrom, rival));
    }

    /** The commit whose pack the site took last. */
    private ObjectId takenCommit() {
        return commitOfTaken().orElseThrow(() -> fault(Kind.NOT_TAKEN));
    }

    private Optional<ObjectId> commitOfTaken() {
        return Taking.lockOf(root).packs().stream()
                .map(pack -> clone.ref(Clone.OFFERED + pack.hash()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private List<ObjectId> parents(ObjectId takenFrom, Optional<ObjectId> rival) {
        List<ObjectId> all = new ArrayList<>();
        Stream.of(clone.ref(Clone.OWN), rival, Optional.of(takenFrom))
                .flatMap(Optional::stream)
                .forEach(tip -> {
                    if (all.stream().noneMatch(other -> clone.isIn(tip, other))) {
                        all.removeIf(other -> clone.isIn(other, tip));
                        all.add(tip);
                    }
                });
        return all;
    }

    /** The version that was taken, with what the site has made of it. */
    private Content wished(Workspace workspace, String id, Content then, Choice choice) {
        Texts files = new Texts(root);
        SortedMap<String, String> came = files.below(PACKS + id + "/stages");
        SortedMap<String, String> ours = files.below("stages");
        ours.keySet().removeIf(name -> !Pack.mayHave(Pack.STAGES + name));
        Set<String> elsewhere = elsewhere(files, id);
        Set<String> declared = DeclarationMerge.declared(came);
        Predicate<String> wanted =
                choice.only().isEmpty() ? name -> declared.contains(name) || !elsewhere.contains(name) : choice::wants;
        SortedMap<String, String> texts = DeclarationMerge.of(
                        came,
                        DeclarationMerge.part(came, ours, wanted),
                        then.texts(),
                        clash -> Optional.of(baywright.share.Clash.Side.OURS))
                .texts();
        String all = String.join("\n", texts.values());
        SortedMap<String, SharedItem> items = new TreeMap<>(then.items());
        for (Item item : workspace.items()) {
            boolean isNew = !items.containsKey(item.id()) && Content.isNamed(item.id(), all);
            if (isNew || choice.only().contains(ITEM + item.id())) {
                items.put(item.id(), shared(workspace, item, then));
            }
        }
        return new Content(texts, items, then.currency());
    }

    private SharedItem shared(Workspace workspace, Item item, Content then) {
        if (then.currency().isPresent()
                && !then.currency().equals(workspace.shop().map(Shop::currency))) {
            throw fault(Kind.PRICES, then.currency().get(), item.id());
        }
        return new SharedItem(item, then.currency().map(c -> item.price()));
    }

    private Set<String> elsewhere(Texts files, String id) {
        Set<String> names = new HashSet<>();
        Taking.lockOf(root).packs().stream()
                .filter(p -> !p.id().equals(id))
                .forEach(p -> names.addAll(DeclarationMerge.declared(files.below(PACKS + p.id() + "/stages"))));
        return names;
    }

    /** Scripts of other packs that the site has taken, for what is named in there. */
    private Map<String, String> beside(Workspace workspace, String id) {
        Texts files = new Texts(workspace.root());
        Map<String, String> beside = new HashMap<>();
        Taking.lockOf(workspace.root()).packs().stream()
                .filter(p -> !p.id().equals(id))
                .forEach(p -> files.below(PACKS + p.id() + "/stages").forEach((name, text) -> {
                    if (name.endsWith(".groovy")) {
                        beside.put(PACKS + p.id() + "/" + name, text);
                    }
                }));
        return beside;
    }

    private static List<String> items(Content before, Content after) {
        return after.differences(before).stream()
                .filter(name -> name.startsWith(ITEM))
                .map(name -> name.substring(ITEM.length()))
                .toList();
    }

    /**
     * Makes a draft a proposal on the branch of the site, and sends it. Where it cannot be sent it is kept, and sent with the next one or
     * by {@link #send}.
     *
     * @param who whose name it bears
     * @param why one line for whoever looks it over
     * @param key signs it; empty: nobody does
     * @throws RemoteFault when the draft is not {@link Draft#isReady ready}, or when it was cancelled before it was kept
     */
    public Published publish(Draft draft, String who, String why, Optional<SigningKey> key, Watch watch) {
        if (draft.isEmpty()) {
            throw fault(Kind.NOTHING_TO_PROPOSE);
        }
        if (!draft.isReady()) {
            throw fault(Kind.OPEN);
        }
        try (Clone.Hold hold = clone.hold()) {
            Objects.requireNonNull(hold);
            ObjectId commit = again(draft).orElseGet(() -> commit(draft, who, why, key));
            if (watch.cancelled()) {
                throw fault(Kind.CANCELLED);
            }
            clone.set(Clone.OWN, commit);
            try {
                sendHeld(watch);
                return new Published(commit.name(), Optional.empty());
            } catch (RemoteFault e) {
                return new Published(commit.name(), Optional.of(e));
            }
        }
    }

    /** The last proposal, when a draft says the same and is made from the same; sent anew where it was declined. */
    private Optional<ObjectId> again(Draft draft) {
        Optional<ObjectId> own = clone.ref(Clone.OWN)
                .filter(tip -> draft.parents().stream().allMatch(parent -> clone.isIn(parent, tip)))
                .filter(tip -> new History(clone).content(tip).equals(draft.content()));
        if (own.isPresent()
                && clone.ref(Clone.FETCHED_PROPOSALS + followed.site()).isEmpty()) {
            clone.remove(Clone.SENT);
        }
        return own;
    }

    private ObjectId commit(Draft draft, String who, String why, Optional<SigningKey> key) {
        Pack taken = clone.pack(takenCommit(), followed.branch());
        Version version = Version.of(taken.manifest().version().nextPatch() + "-proposal");
        Pack pack = signed(draft.content().pack(taken, version, who, why), key);
        return clone.commit(pack, draft.parents(), why, by(who));
    }

    private static Pack signed(Pack pack, Optional<SigningKey> key) {
        return key.map(pack::signedBy).orElse(pack);
    }

    private PersonIdent by(String who) {
        return new PersonIdent(who, followed.site() + "@site.invalid", clock.instant(), clock.getZone());
    }

    /**
     * Sends the proposal that waits.
     *
     * @return false: none did
     * @throws RemoteFault when it does not go; it goes on waiting
     */
    public boolean send(Watch watch) {
        try (Clone.Hold hold = clone.hold()) {
            Objects.requireNonNull(hold);
            return sendHeld(watch);
        }
    }

    private boolean sendHeld(Watch watch) {
        if (!isUnsent()) {
            return false;
        }
        ObjectId own = clone.ref(Clone.OWN).orElseThrow();
        String branch = Followed.PROPOSALS + followed.site();
        for (int tries = 1; tries <= MOST_TRIES; tries++) {
            Optional<ObjectId> there = clone.ref(Clone.FETCHED_PROPOSALS + followed.site());
            if (there.isPresent() && !clone.isIn(there.get(), own)) {
                // another copy of this workspace was quicker: nothing of it may be lost
                throw fault(Kind.RIVAL, followed.site());
            }
            if (transfer.send(Optional.of(own), branch, there, watch) == Sent.DONE) {
                clone.set(Clone.SENT, own);
                clone.set(Clone.FETCHED_PROPOSALS + followed.site(), own);
                return true;
            }
            pause(tries);
            fetchHeld(watch);
        }
        throw fault(Kind.OVERTAKEN, MOST_TRIES);
    }

    private static void pause(int tries) {
        try {
            Thread.sleep(ThreadLocalRandom.current().nextInt(Math.min(LONGEST_PAUSE_MILLIS, 20 * tries)) + 1L);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    // reviewing

    private boolean isOpen(ObjectId tip) {
        return clone.ref(Clone.FETCHED_MAIN).map(main -> !clone.isIn(tip, main)).orElse(true);
    }

    /** The open proposals as they were fetched last, in order of site; those that cannot be used say why. */
    public List<Proposal> proposals() {
        TrustList trust = TrustList.of(root);
        List<Proposal> all = new ArrayList<>();
        clone.refs(Clone.FETCHED_PROPOSALS).forEach((site, tip) -> {
            if (isOpen(tip)) {
                all.add(proposal(site, tip, trust));
            }
        });
        return all;
    }

    private Proposal proposal(String site, ObjectId tip, TrustList trust) {
        Instant at = at(tip);
        try {
            Pack pack = clone.pack(tip, Followed.PROPOSALS + site);
            return new Proposal(
                    site,
                    tip.name(),
                    at,
                    Optional.of(pack.manifest()),
                    Optional.of(trust.standing(pack)),
                    Optional.empty());
        } catch (PackRefused | RemoteFault e) {
            return new Proposal(site, tip.name(), at, Optional.empty(), Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    private Instant at(ObjectId tip) {
        try {
            RevCommit commit = clone.commit(tip);
            return commit.getCommitterIdent().getWhenAsInstant();
        } catch (IOException e) {
            throw Clone.damaged(e);
        }
    }

    /**
     * The open proposal of a site.
     *
     * @throws RemoteFault when there is none
     */
    public Proposal proposal(String site) {
        List<Proposal> all = proposals();
        String known = String.join(", ", all.stream().map(Proposal::site).toList());
        return all.stream()
                .filter(p -> p.site().equals(site))
                .findFirst()
                .orElseThrow(() -> fault(Kind.NO_PROPOSAL, site, known.isEmpty() ? "" : "; there is " + known));
    }

    /**
     * What accepting a proposal would make of the main line as it was fetched last. Works without the net.
     *
     * @param choice what of it, and whose is taken of clashes: ours is the main line's, theirs the proposal's
     * @throws PackRefused when one of the two is no sound pack
     */
    public Acceptance acceptance(Workspace workspace, Proposal proposal, Choice choice, ScriptCache cache) {
        ObjectId tip = ObjectId.fromString(proposal.commit());
        ObjectId main = mainTip();
        Pack before = main();
        Content ours = Content.of(before);
        Content theirs = Content.of(clone.pack(tip, Followed.PROPOSALS + proposal.site()));
        Content base = new History(clone).base(main, tip);
        refuseUnknownNames(proposal, choice, theirs.differences(base));
        Content.Joined joined = Content.join(base, ours, theirs.part(base, choice), choice);
        Outcome outcome =
                Outcome.of(ours, joined, beside(workspace, before.manifest().id()), root.resolve(Clone.FOLDER), cache);
        return new Acceptance(
                proposal, choice, cache, main, before, joined.content(), outcome, items(ours, joined.content()));
    }

    private void refuseUnknownNames(Proposal proposal, Choice choice, Set<String> known) {
        choice.only().stream()
                .sorted()
                .filter(name -> !known.contains(name) && !known.contains("stage " + name))
                .findFirst()
                .ifPresent(name -> {
                    throw fault(Kind.UNKNOWN_NAME, proposal.site(), name, baywright.script.Nearest.hint(name, known));
                });
    }

    /**
     * Makes a proposal part of the main line. Where others are quicker it is put together anew with what they have made, as long as nothing
     * new has to be decided.
     *
     * @param version that the main line gets; empty: the next one
     * @param who     whose name it bears
     * @param key     signs it; empty: nobody does, and others will have to answer for it when they follow
     * @param consent somebody's word where nobody known has signed the proposal; it is on record in the commit
     * @throws RemoteFault when it is not {@link Acceptance#isReady ready} any more, when the remote cannot be reached or does not take it,
     *                     or when it was cancelled; the main line is then as it was
     * @throws PackRefused when nobody known has signed it and nobody answers for it
     */
    public Accepted accept(
            Workspace workspace,
            Acceptance acceptance,
            Optional<Version> version,
            String who,
            Optional<SigningKey> key,
            Optional<Consent> consent,
            Watch watch) {
        if (consent.isEmpty()) {
            acceptance
                    .standing()
                    .refuseUnknown(Followed.PROPOSALS + acceptance.proposal().site());
        }
        try (Clone.Hold hold = clone.hold()) {
            Objects.requireNonNull(hold);
            Acceptance now = acceptance;
            for (int tries = 1; tries <= MOST_TRIES; tries++) {
                if (tries > 1 || !now.main().equals(mainTip())) {
                    watch.at(Step.COMPARING, 0, 0);
                    now = acceptance(workspace, acceptance.proposal(), acceptance.choice(), acceptance.cache());
                }
                if (!now.isReady()) {
                    throw fault(Kind.OPEN);
                }
                Version next = version(version, now);
                ObjectId commit = commit(now, next, who, key, consent);
                if (transfer.send(Optional.of(commit), followed.branch(), Optional.of(now.main()), watch)
                        == Sent.DONE) {
                    clone.set(Clone.FETCHED_MAIN, commit);
                    return new Accepted(commit.name(), next, tries);
                }
                pause(tries);
                fetchHeld(watch);
                if (!isOpen(ObjectId.fromString(acceptance.proposal().commit()))) {
                    throw fault(Kind.NO_PROPOSAL, acceptance.proposal().site(), "");
                }
            }
            throw fault(Kind.OVERTAKEN, MOST_TRIES);
        }
    }

    private Version version(Optional<Version> asked, Acceptance now) {
        asked.filter(version -> !now.now().isBefore(version)).ifPresent(version -> {
            throw fault(Kind.VERSION, version, now.now());
        });
        return asked.orElseGet(now::next);
    }

    private ObjectId commit(
            Acceptance now, Version version, String who, Optional<SigningKey> key, Optional<Consent> consent) {
        Manifest proposed = now.proposal().manifest().orElseThrow();
        String why = proposed.why();
        Pack pack = signed(now.content().pack(now.before(), version, who, why), key);
        String word = consent.filter(c -> !now.standing().isKnown())
                .map(c -> "\n\nAnswered for by " + c.by() + ": " + c.why())
                .orElse("");
        String message = why + "\n\nProposed by " + proposed.who() + " ("
                + now.proposal().site() + ")" + word;
        return clone.commit(
                pack, List.of(now.main(), ObjectId.fromString(now.proposal().commit())), message, by(who));
    }

    /**
     * Takes the branch of a proposal away at the remote. Its site keeps what it has made, and may propose it again.
     *
     * @throws RemoteFault when the proposal has changed meanwhile, or when it does not go
     */
    public void decline(Proposal proposal, Watch watch) {
        try (Clone.Hold hold = clone.hold()) {
            Objects.requireNonNull(hold);
            Optional<ObjectId> tip = Optional.of(ObjectId.fromString(proposal.commit()));
            if (transfer.send(Optional.empty(), Followed.PROPOSALS + proposal.site(), tip, watch) == Sent.OVERTAKEN) {
                fetchHeld(watch);
                throw fault(Kind.OVERTAKEN, 1);
            }
            clone.remove(Clone.FETCHED_PROPOSALS + proposal.site());
        }
    }

    // beginning

    /**
     * Puts a pack into an empty repository as the first version of its main line.
     *
     * @throws RemoteFault when it has a main line already, or when it does not go
     */
    public void begin(Pack first, Watch watch) {
        try (Clone.Hold hold = clone.hold()) {
            Objects.requireNonNull(hold);
            if (!fetchHeld(watch).isEmpty()) {
                throw fault(Kind.NOT_EMPTY);
            }
            Manifest manifest = first.manifest();
            ObjectId commit = clone.commit(first, List.of(), manifest.why(), by(manifest.who()));
            if (transfer.send(Optional.of(commit), followed.branch(), Optional.empty(), watch) == Sent.OVERTAKEN) {
                throw fault(Kind.NOT_EMPTY);
            }
            clone.set(Clone.FETCHED_MAIN, commit);
        }
    }

    @Override
    public void close() {
        clone.close();
    }
}
