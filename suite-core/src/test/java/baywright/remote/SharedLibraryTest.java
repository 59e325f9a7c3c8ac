package baywright.remote;

import static baywright.remote.Sites.CLOCK;
import static baywright.remote.Sites.NO_KEY;
import static baywright.remote.Sites.WASH;
import static baywright.remote.Sites.YES;
import static baywright.remote.Sites.only;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.library.ScriptCache;
import baywright.library.StageChangeText;
import baywright.pack.Pack;
import baywright.pack.PackRefused;
import baywright.pack.SigningKey;
import baywright.pack.TrustList;
import baywright.pack.Version;
import baywright.share.Choice;
import baywright.share.Clash;
import baywright.share.Clash.Side;
import baywright.share.LibraryChange;
import baywright.share.TakenPack;
import baywright.share.Taking;
import baywright.share.TakingBack;
import baywright.share.TwoSites;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.eclipse.jgit.lib.ObjectId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedLibraryTest {

    @TempDir
    Path folder;

    private Sites sites;

    @BeforeEach
    void open() {
        sites = Sites.in(folder);
    }

    private static Choice decided(String name, Side side) {
        return new Choice(Set.of(), Map.of(name, side), false);
    }

    private static RemoteFault.Kind kind(Throwable fault) {
        assertThat(fault.getMessage()).doesNotContain("\n");
        return ((RemoteFault) fault).kind();
    }

    // following

    @Test
    void aSiteTakesTheMainLineAsItTakesAnyPack() {
        Sites.Site mill = sites.site("mill");
        assertThat(mill.fetch()).isEqualTo(new Fetched(false, true, false, 0));
        assertThat(mill.fetch()).isEqualTo(new Fetched(false, false, false, 0));
        Taking taking = mill.taking();
        assertThat(taking.changes()).extracting(LibraryChange::name).contains("stage rinse", "stage foam", "state wet");
        assertThatThrownBy(() -> taking.take(Optional.empty(), CLOCK)).isInstanceOf(PackRefused.class);
        TakenPack taken = taking.take(YES, CLOCK);
        assertThat(taken.id()).isEqualTo("gentle-wash");
        assertThat(mill.had(WASH)).isEqualTo(sites.site("first").had(WASH));
        try (SharedLibrary library = mill.opened()) {
            SharedState state = library.state();
            assertThat(state.isUpToDate()).isTrue();
            assertThat(state.isUnsent()).isFalse();
            assertThat(state.taken()).contains(Version.of("1.0.0"));
            assertThat(state.fetched()).contains("2026-12-07T07:00:00Z");
        }
    }

    @Test
    void whatIsFollowedIsOnRecordWithoutWhatIsTheRemotesAlone() {
        Sites.Site mill = sites.follower("mill");
        assertThat(Followed.of(mill.root)).contains(new Followed(sites.remote().toString(), "main", "mill"));
        assertThat(mill.had(Clone.FOLDER + "/.gitignore")).isEqualTo("*\n");
        assertThat(mill.root.resolve(".git")).doesNotExist();
        assertThatThrownBy(() -> SharedLibrary.open(sites.site("quay").root, Access.NOBODY, CLOCK))
                .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.NOT_FOLLOWED));
    }

    /** A shop may keep its workspace in git: its repository is no business of ours. */
    @Test
    void theShopsOwnRepositoryIsNotTouched() throws IOException {
        Sites.Site mill = sites.site("mill");
        mill.have(".git/HEAD", "ref: refs/heads/ours\n");
        mill.have(".git/config", "[core]\n\trepositoryformatversion = 99\n[remote \"x\"]\n\turl = ext::sh\n");
        mill.have(".git/hooks/pre-push", "exit 1\n");
        mill.follow();
        mill.change(WASH, "3.min, 4.min, 5.min", "4.min, 5.min, 6.min");
        mill.publish();
        assertThat(Files.readString(mill.root.resolve(".git/HEAD"))).isEqualTo("ref: refs/heads/ours\n");
        try (var inside = Files.list(mill.root.resolve(".git"))) {
            assertThat(inside.map(p -> p.getFileName().toString()))
                    .containsExactlyInAnyOrder("HEAD", "config", "hooks");
        }
    }

    @Test
    void aLibraryIsBegunOnceAndInAnEmptyRepositoryAlone() {
        Sites fresh = Sites.empty(folder.resolve("fresh"));
        Sites.Site mill = fresh.site("mill");
        assertThat(mill.fetch().isEmpty()).isTrue();
        assertThatThrownBy(mill::taking)
                .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.NOTHING_FETCHED));
        Pack first = sites.site("first").pack("1.0.0");
        try (SharedLibrary library = mill.opened()) {
            library.begin(first, Watch.NOBODY);
            assertThat(library.main().hash()).isEqualTo(first.hash());
            assertThatThrownBy(() -> library.begin(first, Watch.NOBODY))
                    .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.NOT_EMPTY));
        }
        mill.follow();
        assertThat(mill.had(WASH)).isEqualTo(sites.site("first").had(WASH));
    }

    @Test
    void anotherLibraryTakesThePlaceOnlyWhenNothingWaits() {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "3.min, 4.min, 5.min", "4.min, 5.min, 6.min");
        moveRemote();
        assertThat(mill.publish().isSent()).isFalse();
        Sites other = Sites.in(folder.resolve("other"));
        assertThatThrownBy(() -> SharedLibrary.follow(
                        mill.workspace(), other.remote().toString(), "main", Optional.empty(), Access.NOBODY, CLOCK))
                .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.UNSENT_ELSEWHERE));
        assertThat(Followed.of(mill.root).orElseThrow().remote())
                .isEqualTo(sites.remote().toString());
        bringRemoteBack();
        try (SharedLibrary library = mill.opened()) {
            assertThat(library.send(Watch.NOBODY)).isTrue();
        }
        try (SharedLibrary next = SharedLibrary.follow(
                mill.workspace(), other.remote().toString(), "main", Optional.empty(), Access.NOBODY, CLOCK)) {
            assertThat(next.proposals()).isEmpty();
            assertThat(next.fetch(Watch.NOBODY).isNew()).isTrue();
        }
    }

    // proposing, reviewing, accepting

    @Test
    void aProposalIsReviewedInMeaningAndAccepted() {
        Sites.Site mill = sites.follower("mill");
        Sites.Site quay = sites.follower("quay");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.have("stages/dry.groovy", TwoSites.stage("dry", 7));
        Draft draft = mill.draft(Choice.ALL);
        assertThat(draft.changes()).extracting(LibraryChange::name).containsExactly("stage dry", "stage rinse");
        Published published = mill.publish();
        assertThat(published.isSent()).isTrue();

        Proposal proposal = quay.proposals().get(0);
        assertThat(proposal.site()).isEqualTo("mill");
        assertThat(proposal.commit()).isEqualTo(published.commit());
        assertThat(proposal.manifest().orElseThrow().why()).isEqualTo("as mill does it");
        assertThat(proposal.manifest().orElseThrow().version()).hasToString("1.0.1-proposal");
        Acceptance acceptance = quay.acceptance("mill", Choice.ALL);
        assertThat(acceptance.changes().get(1).said())
                .extracting(new StageChangeText(Locale.ENGLISH)::of)
                .singleElement()
                .asString()
                .contains("3 / 4 / 5 min → 30 / 40 / 50 min");
        Accepted accepted = quay.accept(acceptance);
        assertThat(accepted.version()).hasToString("1.0.1");
        assertThat(quay.proposals()).isEmpty();

        quay.follow();
        mill.follow();
        assertThat(quay.had(WASH)).isEqualTo(mill.had(WASH)).contains("30.min, 40.min, 50.min");
        assertThat(quay.had("stages/dry.groovy")).isEqualTo(TwoSites.stage("dry", 7));
        assertThat(mill.draft(Choice.ALL).isEmpty()).isTrue();
        try (SharedLibrary library = mill.opened()) {
            Draft nothing = library.draft(mill.workspace(), Choice.ALL, ScriptCache.none());
            assertThatThrownBy(() -> library.publish(nothing, "Mill", "nothing", NO_KEY, Watch.NOBODY))
                    .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.NOTHING_TO_PROPOSE));
        }
    }

    @Test
    void aPartIsProposedAndTheRestStaysTheSitesOwn() {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.have("stages/dry.groovy", TwoSites.stage("dry", 7));
        assertThat(mill.draft(only("dry")).changes())
                .extracting(LibraryChange::name)
                .containsExactly("stage dry");
        mill.publish(only("dry"));
        Sites.Site quay = sites.follower("quay");
        quay.accept("mill");
        mill.follow();
        assertThat(mill.had(WASH)).contains("30.min, 40.min, 50.min");
        assertThat(mill.draft(Choice.ALL).changes())
                .extracting(LibraryChange::name)
                .containsExactly("stage rinse");
    }

    @Test
    void aPartIsAcceptedAndTheRestIsProposedAgain() {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.have("stages/dry.groovy", TwoSites.stage("dry", 7));
        mill.publish();
        Sites.Site quay = sites.follower("quay");
        Acceptance part = quay.acceptance("mill", only("dry"));
        assertThat(part.changes()).extracting(LibraryChange::name).containsExactly("stage dry");
        quay.accept(part);
        assertThat(quay.proposals()).isEmpty();
        mill.follow();
        assertThat(mill.had(WASH)).contains("30.min, 40.min, 50.min");
        mill.publish();
        assertThat(quay.acceptance("mill", Choice.ALL).changes())
                .extracting(LibraryChange::name)
                .containsExactly("stage rinse");
        assertThatThrownBy(() -> quay.acceptance("mill", only("stage rinze")))
                .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.UNKNOWN_NAME))
                .hasMessageContaining("nearest is 'stage rinse'");
    }

    /** What one has left out of the pack is not proposed to be taken out. */
    @Test
    void leavingOutPartsOfThePackProposesNothing() {
        Sites.Site mill = sites.site("mill");
        mill.fetch();
        mill.follow(only("rinse", "state wet", "state clean", "family wash", "surface paint"));
        assertThat(mill.had(WASH)).doesNotContain("foam");
        assertThat(mill.draft(Choice.ALL).isEmpty()).isTrue();
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        Acceptance acceptance = sites.follower("quay").acceptance("mill", Choice.ALL);
        assertThat(acceptance.changes()).extracting(LibraryChange::name).containsExactly("stage rinse");
        assertThat(acceptance.clashes()).isEmpty();
    }

    @Test
    void afterTakingBackTheProposalBeginsFromTheFormerVersion() {
        Sites.Site mill = sites.follower("mill");
        Sites.Site quay = sites.follower("quay");
        quay.have("stages/dry.groovy", TwoSites.stage("dry", 7));
        quay.publish();
        quay.accept("quay");
        mill.follow();
        TakingBack.takeBack(mill.workspace(), ScriptCache.none());
        assertThat(mill.root.resolve("stages/dry.groovy")).doesNotExist();
        assertThat(mill.draft(Choice.ALL).isEmpty()).isTrue();
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        quay.accept("mill");
        quay.follow();
        assertThat(quay.had("stages/dry.groovy")).contains("'dry'");
        assertThat(quay.had(WASH)).contains("30.min, 40.min, 50.min");
    }

    @Test
    void aClashIsShownByDeclarationAndNothingIsAcceptedWhileItIsOpen() {
        Sites.Site mill = sites.follower("mill");
        Sites.Site quay = sites.follower("quay");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        quay.change(WASH, "3.min, 4.min, 5.min", "1.min, 2.min, 3.min");
        mill.publish();
        quay.publish();
        quay.accept("quay");
        Acceptance open = quay.acceptance("mill", Choice.ALL);
        assertThat(open.clashes()).extracting(Clash::name).containsExactly("stage rinse/time/attended per vehicle");
        assertThat(open.isReady()).isFalse();
        ObjectId before = mainTip();
        assertThatThrownBy(() -> quay.accept(open))
                .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.OPEN));
        assertThat(mainTip()).isEqualTo(before);
        quay.accept(quay.acceptance("mill", decided("rinse", Side.THEIRS)));
        quay.follow(decided("rinse", Side.THEIRS));
        assertThat(quay.had(WASH)).contains("30.min, 40.min, 50.min");
    }

    /** Before the first of two proposals of a site is accepted it has proposed more: what both have is no clash. */
    @Test
    void aProposalThatGrewWhileItsBeginningWasAcceptedDoesNotClashWithItself() {
        Sites.Site mill = sites.follower("mill");
        Sites.Site quay = sites.follower("quay");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        Acceptance first = quay.acceptance("mill", Choice.ALL);
        quay.have("stages/dry.groovy", TwoSites.stage("dry", 7));
        quay.publish();
        quay.accept("quay");
        mill.follow();
        mill.change(WASH, "30.min, 40.min, 50.min", "31.min, 41.min, 51.min");
        mill.publish();
        try (SharedLibrary library = quay.opened()) {
            library.accept(quay.workspace(), first, Optional.empty(), "Quay", NO_KEY, YES, Watch.NOBODY);
        }
        Acceptance second = quay.acceptance("mill", Choice.ALL);
        assertThat(second.clashes()).isEmpty();
        quay.accept(second);
        quay.follow();
        assertThat(quay.had(WASH)).contains("31.min, 41.min, 51.min");
        assertThat(quay.had("stages/dry.groovy")).contains("'dry'");
    }

    @Test
    void aProposalThatWouldSpoilTheLibraryIsNeitherPublishedNorAccepted() {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "sets 'wet', 'clean'", "sets 'wet', 'dry'");
        Draft draft = mill.draft(Choice.ALL);
        assertThat(draft.isReady()).isFalse();
        assertThat(draft.problems()).isNotEmpty();
        assertThatThrownBy(mill::publish).satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.OPEN));
    }

    @Test
    void newItemsGoAlongWithoutAPriceAndEquivalentsStayAtHome() {
        Sites.Site mill = sites.follower("mill");
        String items = mill.had("items.json");
        mill.have(
                "items.json",
                items.replace("[\"H302\", \"H317\", \"EUH208\"]", "[\"H319\"]")
                        .replace(
                                "{ \"id\": \"tape\"",
                                "{ \"id\": \"foam-liquid\", \"title\": \"Foam\", \"pack\": \"1000 ml\", \"price\": 12, \"hazards\": [\"H318\"] },\n    { \"id\": \"tape\""));
        mill.have(WASH, mill.had(WASH).replaceFirst("item 'iron-remover', 10.ml", "item 'foam-liquid', 10.ml"));
        Draft draft = mill.draft(Choice.ALL);
        assertThat(draft.items()).containsExactly("foam-liquid");
        mill.publish();
        assertThat(mill.draft(only("item iron-remover")).items()).containsExactly("iron-remover");
        Sites.Site quay = sites.follower("quay");
        assertThat(quay.acceptance("mill", Choice.ALL).items()).containsExactly("foam-liquid");
        quay.accept("mill");
        quay.follow();
        assertThat(quay.workspace().items()).anySatisfy(item -> {
            assertThat(item.id()).isEqualTo("foam-liquid");
            assertThat(item.price()).isZero();
            assertThat(item.hazards()).containsExactly("H318");
        });
        assertThat(quay.had("items.json")).contains("H302");
    }

    @Test
    void aDeclinedProposalIsGoneThereAndKeptHere() {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        Sites.Site quay = sites.follower("quay");
        Proposal proposal = quay.proposals().get(0);
        try (SharedLibrary library = quay.opened()) {
            library.decline(proposal, Watch.NOBODY);
            library.decline(proposal, Watch.NOBODY);
        }
        assertThat(mill.proposals()).isEmpty();
        try (SharedLibrary library = mill.opened()) {
            assertThat(library.send(Watch.NOBODY)).isFalse();
        }
        assertThat(mill.had(WASH)).contains("30.min, 40.min, 50.min");
        assertThat(mill.publish().isSent()).isTrue();
        assertThat(quay.proposals()).hasSize(1);
        mill.have("stages/dry.groovy", TwoSites.stage("dry", 7));
        mill.publish();
        try (SharedLibrary library = quay.opened()) {
            assertThatThrownBy(() -> library.decline(proposal, Watch.NOBODY))
                    .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.OVERTAKEN));
        }
        assertThat(quay.proposals()).hasSize(1);
    }

    // whose word

    @Test
    void theListOfTrustHoldsForWhatComesFromARemoteToo() {
        Sites.Site mill = sites.follower("mill");
        Sites.Site quay = sites.follower("quay");
        SigningKey key = SigningKey.fresh();
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        try (SharedLibrary library = mill.opened()) {
            library.publish(
                    library.draft(mill.workspace(), Choice.ALL, ScriptCache.none()),
                    "Mill",
                    "slower",
                    Optional.of(key),
                    Watch.NOBODY);
        }
        Acceptance unknown = quay.acceptance("mill", Choice.ALL);
        try (SharedLibrary library = quay.opened()) {
            assertThatThrownBy(() -> library.accept(
                            quay.workspace(),
                            unknown,
                            Optional.empty(),
                            "Quay",
                            NO_KEY,
                            Optional.empty(),
                            Watch.NOBODY))
                    .isInstanceOf(PackRefused.class)
                    .hasMessageContaining("is not on the list of trust");
        }
        TrustList.of(quay.root)
                .with(new TrustList.Trusted("Mill", key.signer(), LocalDate.of(2026, 12, 7), "Ines"))
                .save(quay.workspace());
        Acceptance known = quay.acceptance("mill", Choice.ALL);
        assertThat(known.standing().isKnown()).isTrue();
        try (SharedLibrary library = quay.opened()) {
            library.accept(
                    quay.workspace(),
                    known,
                    Optional.of(Version.of("2.0.0")),
                    "Quay",
                    Optional.of(key),
                    Optional.empty(),
                    Watch.NOBODY);
            TakenPack taken = library.taking(quay.workspace(), Choice.ALL, ScriptCache.none())
                    .take(Optional.empty(), CLOCK);
            assertThat(taken.version()).hasToString("2.0.0");
            assertThat(taken.consent()).isEmpty();
            assertThat(taken.signer()).contains(key.signer());
        }
    }

    @Test
    void aVersionThatDoesNotComeLaterIsRefused() {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        Acceptance acceptance = mill.acceptance("mill", Choice.ALL);
        try (SharedLibrary library = mill.opened()) {
            assertThatThrownBy(() -> library.accept(
                            mill.workspace(),
                            acceptance,
                            Optional.of(Version.of("1.0.0")),
                            "Mill",
                            NO_KEY,
                            YES,
                            Watch.NOBODY))
                    .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.VERSION));
        }
    }

    // without the net, and with a remote that is not what it was

    private void moveRemote() {
        move(sites.remote(), folder.resolve("away.git"));
    }

    private void bringRemoteBack() {
        move(folder.resolve("away.git"), sites.remote());
    }

    private static void move(Path from, Path to) {
        try {
            Files.move(from, to);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private ObjectId mainTip() {
        try (var bare = sites.bare()) {
            return bare.resolve("refs/heads/main");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void withoutTheNetEverythingButTheWayThereWorksAndWhatWaitsIsSentLater() {
        Sites.Site mill = sites.follower("mill");
        moveRemote();
        assertThatThrownBy(mill::fetch).satisfies(e -> {
            assertThat(kind(e)).isEqualTo(RemoteFault.Kind.NOT_FOUND);
            assertThat(((RemoteFault) e).mayPass()).isTrue();
        });
        assertThat(mill.taking().changes()).isEmpty();
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        Published kept = mill.publish();
        assertThat(kept.isSent()).isFalse();
        assertThat(kept.unsent().orElseThrow().kind()).isEqualTo(RemoteFault.Kind.NOT_FOUND);
        mill.have("stages/dry.groovy", TwoSites.stage("dry", 7));
        mill.publish();
        try (SharedLibrary library = mill.opened()) {
            assertThat(library.state().isUnsent()).isTrue();
            assertThatThrownBy(() -> library.send(Watch.NOBODY)).isInstanceOf(RemoteFault.class);
            bringRemoteBack();
            assertThat(library.send(Watch.NOBODY)).isTrue();
            assertThat(library.send(Watch.NOBODY)).isFalse();
            assertThat(library.state().isUnsent()).isFalse();
        }
        assertThat(sites.follower("quay").acceptance("mill", Choice.ALL).changes())
                .extracting(LibraryChange::name)
                .containsExactly("stage dry", "stage rinse");
    }

    @Test
    void acceptingWithoutTheNetChangesNothing() {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        Acceptance acceptance = mill.acceptance("mill", Choice.ALL);
        moveRemote();
        assertThatThrownBy(() -> mill.accept(acceptance))
                .satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.NOT_FOUND));
        try (SharedLibrary library = mill.opened()) {
            assertThat(library.proposals()).hasSize(1);
            assertThat(library.main().manifest().version()).hasToString("1.0.0");
        }
    }

    /** Somebody has replaced the history of the main line by another one. */
    @Test
    void aRewrittenMainLineIsToldAndLosesNothing() throws IOException {
        Sites.Site mill = sites.follower("mill");
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        Sites.Site first = sites.site("first");
        first.change(WASH, "5.min, 6.min, 7.min", "6.min, 7.min, 8.min");
        ObjectId old = mainTip();
        try (Clone clone = Clone.of(first.root);
                var bare = sites.bare()) {
            ObjectId other = clone.commit(
                    first.pack("1.1.0"), List.of(), "anew", new org.eclipse.jgit.lib.PersonIdent("x", "x@x.invalid"));
            clone.set("refs/heads/anew", other);
            Transfer transfer = new Transfer(clone, Followed.of(first.root).orElseThrow(), Access.NOBODY);
            transfer.send(Optional.of(other), "anew", Optional.empty(), Watch.NOBODY);
            var update = bare.updateRef("refs/heads/main");
            update.setNewObjectId(other);
            update.forceUpdate();
        }
        Fetched fetched = mill.fetch();
        assertThat(fetched.isRewritten()).isTrue();
        try (Clone clone = Clone.of(mill.root)) {
            assertThat(clone.refs(Clone.REPLACED)).containsValue(old);
        }
        mill.follow();
        assertThat(mill.had(WASH)).contains("30.min, 40.min, 50.min", "6.min, 7.min, 8.min");
        mill.publish();
        Acceptance acceptance = mill.acceptance("mill", Choice.ALL);
        assertThat(acceptance.clashes()).isEmpty();
        mill.accept(acceptance);
        Sites.Site quay = sites.follower("quay");
        assertThat(quay.had(WASH)).contains("30.min, 40.min, 50.min", "6.min, 7.min, 8.min");
    }

    @Test
    void aMainLineThatIsGoneIsToldAndWhatWasFetchedStays() throws IOException {
        Sites.Site mill = sites.follower("mill");
        try (var bare = sites.bare()) {
            var update = bare.updateRef("refs/heads/main");
            update.setForceUpdate(true);
            update.delete();
        }
        assertThatThrownBy(mill::fetch).satisfies(e -> assertThat(kind(e)).isEqualTo(RemoteFault.Kind.BRANCH_GONE));
        assertThat(mill.taking().changes()).isEmpty();
    }

    /** The same workspace on two machines: what both propose is put together. */
    @Test
    void twoCopiesOfOneSiteLoseNothingOfEachOther() throws IOException {
        Sites.Site mill = sites.follower("mill");
        Path copy = folder.resolve("copies/mill");
        try (var all = Files.walk(mill.root)) {
            for (Path from : all.toList()) {
                Path to = copy.resolve(mill.root.relativize(from).toString());
                Files.createDirectories(to.getParent());
                if (Files.isRegularFile(from)) {
                    Files.copy(from, to);
                }
            }
        }
        mill.change(WASH, "3.min, 4.min, 5.min", "30.min, 40.min, 50.min");
        mill.publish();
        Files.writeString(copy.resolve("stages/dry.groovy"), TwoSites.stage("dry", 7));
        var other = baywright.workspace.Workspace.open(copy);
        try (SharedLibrary library = SharedLibrary.open(copy, Access.NOBODY, CLOCK)) {
            Published late = library.publish(
                    library.draft(other, Choice.ALL, ScriptCache.none()), "Mill", "dry", NO_KEY, Watch.NOBODY);
            assertThat(late.unsent().orElseThrow().kind()).isEqualTo(RemoteFault.Kind.RIVAL);
            Draft both = library.draft(other, Choice.ALL, ScriptCache.none());
            assertThat(both.changes()).extracting(LibraryChange::name).containsExactly("stage dry", "stage rinse");
            assertThat(library.publish(both, "Mill", "both", NO_KEY, Watch.NOBODY)
                            .isSent())
                    .isTrue();
        }
        assertThat(sites.follower("quay").acceptance("mill", Choice.ALL).changes())
                .extracting(LibraryChange::name)
                .containsExactly("stage dry", "stage rinse");
    }

    // several at once

    /** Real threads push at once: one is first, the others put theirs on top. */
    @Test
    void sitesThatAcceptAndPublishAtOnceLoseNothing() throws Exception {
        List<Sites.Site> all = new ArrayList<>();
        for (String id : List.of("mill", "quay", "lane", "yard")) {
            Sites.Site site = sites.follower(id);
            site.have("stages/" + id + ".groovy", TwoSites.stage("dry-" + id, 7));
            all.add(site);
        }
        List<Thread> threads = new ArrayList<>();
        List<Throwable> faults = java.util.Collections.synchronizedList(new ArrayList<>());
        var together = new java.util.concurrent.CyclicBarrier(all.size());
        for (Sites.Site site : all) {
            Thread thread = new Thread(() -> {
                try {
                    together.await();
                    assertThat(site.publish().isSent()).isTrue();
                    Acceptance acceptance = site.acceptance(site.id(), Choice.ALL);
                    together.await();
                    site.accept(acceptance);
                } catch (Throwable e) {
                    faults.add(e);
                }
            });
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        assertThat(faults).isEmpty();
        SortedMap<String, String> stages = sites.follower("last").everything();
        assertThat(stages.keySet())
                .contains("stages/mill.groovy", "stages/quay.groovy", "stages/lane.groovy", "stages/yard.groovy");
        try (SharedLibrary library = all.get(0).opened()) {
            library.fetch(Watch.NOBODY);
            assertThat(library.main().manifest().version()).hasToString("1.0.4");
        }
    }
}
