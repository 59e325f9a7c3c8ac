package baywright.cli;

import baywright.pack.Consent;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackMaker;
import baywright.pack.SigningKey;
import baywright.pack.Version;
import baywright.remote.Draft;
import baywright.remote.Published;
import baywright.remote.SharedLibrary;
import baywright.share.Choice;
import baywright.share.TakenPack;
import baywright.share.Taking;
import baywright.workspace.Fields;
import baywright.workspace.Workspace;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright pack publish WORKSPACE --why WHY}: proposes what a site has made of the shared library. */
@Command(name = "publish", resourceBundle = CommandTree.HELP)
final class PackPublishCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    @Option(names = "--why", paramLabel = "WHY", descriptionKey = "shared-why")
    private Optional<String> why = Optional.empty();

    @Mixin
    private ClashChoice clashes;

    @Mixin
    private SignerChoice signer;

    @Option(names = "--compare", descriptionKey = "shared-compare-proposal")
    private boolean compareOnly;

    @Option(names = "--begin", paramLabel = "REMOTE", descriptionKey = "shared-begin")
    private Optional<String> begin = Optional.empty();

    @Option(names = "--branch", paramLabel = "BRANCH", defaultValue = "main", descriptionKey = "shared-branch")
    private String branch;

    @Option(names = "--id", paramLabel = "ID", descriptionKey = "shared-id")
    private Optional<String> id = Optional.empty();

    @Option(names = "--licence", paramLabel = "LICENCE", descriptionKey = "shared-licence")
    private Optional<String> licence = Optional.empty();

    PackPublishCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        SharedDesk desk = new SharedDesk(session, workspace);
        if (begin.isPresent()) {
            return begin(desk);
        }
        try (SharedLibrary library = desk.opened()) {
            Draft draft = desk.during(
                    watch -> library.draft(desk.workspace(), clashes.choice(session, false), session.cache()));
            if (compareOnly || !draft.isReady()) {
                return draft.isEmpty() && !compareOnly ? sendWaiting(desk, library) : show(draft);
            }
            String reason = why.filter(text -> !text.isBlank()).orElseThrow(() -> session.badInput("shared.no-why"));
            String who = signer.who(session, desk.workspace());
            Optional<SigningKey> key = signer.key(session, desk.workspace());
            Published published = desk.during(watch -> library.publish(draft, who, reason, key, watch));
            return tell(library, draft, published);
        }
    }

    // a proposal

    private int sendWaiting(SharedDesk desk, SharedLibrary library) {
        boolean sent = desk.during(library::send);
        if (session.json()) {
            Answers.print(session, Answers.object().put("sent", sent).put("nothingNew", true));
        } else {
            session.say(sent ? "shared.sent-waiting" : "shared.nothing");
        }
        return ExitStatus.FINE;
    }

    private int show(Draft draft) {
        print(draft, Answers.object());
        if (!session.json() && draft.isEmpty()) {
            session.say("shared.nothing");
        }
        return draft.isReady() || draft.isEmpty() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    private int tell(SharedLibrary library, Draft draft, Published published) {
        ObjectNode answer = Answers.object().put("commit", published.commit()).put("sent", published.isSent());
        published.unsent().ifPresent(fault -> answer.put("unsentBecause", fault.getMessage()));
        print(draft, answer);
        if (!session.json()) {
            published
                    .unsent()
                    .ifPresentOrElse(
                            fault -> session.say("shared.kept", fault.getMessage()),
                            () -> session.say("shared.sent", library.followed().site()));
        }
        return published.isSent() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    private void print(Draft draft, ObjectNode answer) {
        TakingPrinter printer = new TakingPrinter(session);
        if (session.json()) {
            answer.put("ready", draft.isReady());
            printer.addChanges(answer, draft.changes());
            printer.addClashes(answer, draft.clashes(), name -> List.of());
            ArrayNode items = answer.putArray("items");
            draft.items().forEach(items::add);
            answer.set("problems", ProblemPrinter.json(draft.problems()));
            Answers.print(session, answer);
            return;
        }
        printer.print(draft.changes(), draft.items(), draft.clashes(), draft.problems());
    }

    // a library

    private int begin(SharedDesk desk) {
        String name = id.filter(Fields::isId)
                .orElseThrow(() -> session.badInput("pack.make.no-id", id.orElse(""), Fields.AN_ID));
        String under = licence.filter(text -> !text.isBlank()).orElseThrow(() -> session.badInput("pack.make.blank"));
        String reason = why.filter(text -> !text.isBlank()).orElseThrow(() -> session.badInput("shared.no-why"));
        PackMaker.About about = new PackMaker.About(
                name, Version.of("1.0.0"), signer.who(session, desk.workspace()), reason, under, List.of(), false);
        PackMaker.Made made = desk.during(
                watch -> PackMaker.make(desk.workspace(), PackMaker.Selection.EVERYTHING, about, List.of()));
        if (!made.errors().isEmpty()) {
            new ProblemPrinter(session).print(session.console().err(), workspace, made.errors());
            return ExitStatus.STOPPED;
        }
        Pack pack =
                signer.key(session, desk.workspace()).map(made.pack()::signedBy).orElse(made.pack());
        try (SharedLibrary library = desk.following(begin.orElseThrow(), branch, Optional.empty())) {
            desk.during(watch -> {
                library.begin(pack, watch);
                return taken(library, desk.workspace(), pack.manifest());
            });
        }
        if (session.json()) {
            Answers.print(session, PackPrinter.json(pack).put("sent", true));
        } else {
            session.say("shared.begun", pack.manifest().name(), session.command(), session.shown(workspace));
        }
        return ExitStatus.FINE;
    }

    /** What one begins with oneself is what others' changes are merged with; whoever begins it answers for it. */
    private TakenPack taken(SharedLibrary library, Workspace own, Manifest manifest) {
        Taking taking = library.taking(own, Choice.ALL, session.cache());
        Optional<Consent> consent = taking.standing().isKnown()
                ? Optional.empty()
                : Optional.of(new Consent(manifest.who(), manifest.why()));
        return taking.take(consent, session.clock());
    }
}
