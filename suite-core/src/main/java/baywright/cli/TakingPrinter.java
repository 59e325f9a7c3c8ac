package baywright.cli;

import baywright.library.StageChange;
import baywright.library.StageChangeText;
import baywright.pack.Manifest;
import baywright.pack.Standing;
import baywright.script.Problem;
import baywright.share.Clash;
import baywright.share.LibraryChange;
import baywright.share.PackLock;
import baywright.share.TakenPack;
import baywright.share.Taking;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Shows what a pack changes, where it clashes, and which packs a site has. */
final class TakingPrinter {

    private static final String INDENT = "  ";

    private final Session session;
    private final StageChangeText sentences;

    TakingPrinter(Session session) {
        this.session = session;
        this.sentences = new StageChangeText(session.console().locale());
    }

    // for people

    void print(Manifest manifest, Taking taking) {
        session.console()
                .out()
                .println(session.console().paint(Ink.HEAD, manifest.name()) + INDENT + manifest.who() + ": "
                        + manifest.why());
        session.console().out().println(standing(taking.standing()));
        if (taking.changes().isEmpty()) {
            session.say("take.no-change");
        }
        taking.changes().forEach(this::print);
        taking.unpriced().forEach(id -> session.say("take.unpriced", id));
        taking.ownHazards().forEach(id -> session.say("take.own-hazards", id));
        if (!taking.leftOut().isEmpty()) {
            session.say("take.left-out", String.join(", ", taking.leftOut()));
        }
        taking.clashes().forEach(this::print);
        taking.clashes().stream()
                .map(Clash::declaration)
                .distinct()
                .filter(name -> !taking.atStake(name).isEmpty())
                .forEach(name -> {
                    session.say("take.at-stake", name);
                    taking.atStake(name).forEach(c -> lines(sentences.of(c)));
                });
        taking.problems().forEach(this::print);
        taking.failedExamples()
                .forEach(example -> session.console()
                        .out()
                        .println(session.console().paint(Ink.WARN, session.text("take.example-fails")) + " stages/"
                                + example));
        long open = taking.clashes().stream().filter(c -> c.decided().isEmpty()).count();
        session.say(
                "take.summary", taking.changes().size(), open, taking.problems().size());
        if (open > 0) {
            session.say("take.decide");
        }
    }

    /** What putting two sides of a shared library together comes to. */
    void print(List<LibraryChange> changes, List<String> items, List<Clash> clashes, List<Problem> problems) {
        changes.forEach(this::print);
        items.forEach(id -> session.say("shared.item", id));
        clashes.forEach(this::print);
        problems.forEach(this::print);
        long open = clashes.stream().filter(c -> c.decided().isEmpty()).count();
        session.say("take.summary", changes.size(), open, problems.size());
        if (open > 0) {
            session.say("take.decide");
        }
    }

    private void print(Problem problem) {
        session.console()
                .out()
                .println(session.console().paint(Ink.STOP, session.text("take.would-be-wrong")) + " stages/" + problem);
    }

    String standing(Standing standing) {
        if (standing instanceof Standing.Known known) {
            return session.text("take.signed", known.signer().name());
        }
        return standing instanceof Standing.Unknown unknown
                ? session.text("take.signed-unknown", unknown.signer().fingerprint())
                : session.text("take.unsigned");
    }

    void print(LibraryChange change) {
        session.console()
                .out()
                .println(session.console().paint(Ink.HEAD, session.text("take.kind." + Answers.word(change.kind())))
                        + " " + change.name());
        change.said().forEach(c -> lines(sentences.of(c)));
        if (change.kind() == LibraryChange.Kind.CHANGED
                && change.said().isEmpty()
                && change.name().startsWith("stage ")) {
            lines(session.text("take.same-meaning"));
        }
    }

    void print(Clash clash) {
        String mark = clash.decided()
                .map(side -> session.text("take.clash." + side.word()))
                .orElseGet(() -> session.text("take.clash.open"));
        Ink ink = clash.decided().isPresent() ? Ink.NOTE : Ink.STOP;
        session.console().out().println(session.console().paint(ink, mark) + " " + clash.name());
        lines(session.text("take.clash." + Answers.word(clash.kind())));
        text("take.before", clash.before());
        text("take.ours", clash.ours());
        text("take.theirs", clash.theirs());
    }

    private void text(String key, Optional<Clash.Written> written) {
        String said = written.map(Clash.Written::text).map(String::strip).orElse(session.text("take.nothing"));
        lines(session.text(
                key, said.lines().findFirst().orElse("") + (said.lines().count() > 1 ? " …" : "")));
    }

    private void lines(String text) {
        Wrap.lines(text, Console.WIDTH - INDENT.length())
                .forEach(line -> session.console().out().println(INDENT + line));
    }

    void print(PackLock lock) {
        Table table = new Table(
                session.text("take.list.pack"),
                session.text("take.list.version"),
                session.text("take.list.taken"),
                "~" + session.text("take.list.word"));
        for (TakenPack pack : lock.packs()) {
            String word = pack.consent()
                    .map(c -> session.text("take.list.consent", c.by(), c.why()))
                    .orElseGet(() -> pack.signer().map(s -> s.fingerprint()).orElse(""));
            String left = pack.leftOut().isEmpty()
                    ? ""
                    : " " + session.text("take.left-out", String.join(", ", pack.leftOut()));
            table.add(pack.id(), pack.version().toString(), pack.at().toString(), word + left);
        }
        if (table.isEmpty()) {
            session.say("take.list.none");
        } else {
            table.print(session.console(), "");
        }
    }

    // for programs

    ObjectNode json(Manifest manifest, Taking taking) {
        ObjectNode answer = Answers.object();
        answer.put("id", manifest.id());
        answer.put("version", manifest.version().toString());
        answer.put("ready", taking.isReady());
        answer.put("known", taking.standing().isKnown());
        addChanges(answer, taking.changes());
        addClashes(answer, taking.clashes(), taking::atStake);
        add(answer, "unpriced", taking::unpriced);
        add(answer, "ownHazards", taking::ownHazards);
        add(answer, "leftOut", taking::leftOut);
        answer.set("problems", ProblemPrinter.json(taking.problems()));
        answer.set("failedExamples", ProblemPrinter.json(taking.failedExamples()));
        return answer;
    }

    void addChanges(ObjectNode answer, List<LibraryChange> all) {
        ArrayNode changes = answer.putArray("changes");
        for (LibraryChange change : all) {
            ObjectNode one = changes.addObject();
            one.put("name", change.name());
            one.put("kind", Answers.word(change.kind()));
            ArrayNode said = one.putArray("says");
            change.said().forEach(c -> said.add(sentences.of(c)));
        }
    }

    void addClashes(ObjectNode answer, List<Clash> all, Function<String, List<StageChange>> atStake) {
        ArrayNode clashes = answer.putArray("clashes");
        for (Clash clash : all) {
            ObjectNode one = clashes.addObject();
            one.put("name", clash.name());
            one.put("kind", Answers.word(clash.kind()));
            clash.decided().ifPresent(side -> one.put("decided", side.word()));
            ArrayNode stake = one.putArray("atStake");
            atStake.apply(clash.declaration()).forEach(c -> stake.add(sentences.of(c)));
            clash.before().ifPresent(w -> one.put("before", w.text()));
            clash.ours().ifPresent(w -> one.put("ours", w.text()));
            clash.theirs().ifPresent(w -> one.put("theirs", w.text()));
        }
    }

    private static void add(ObjectNode answer, String name, Supplier<List<String>> texts) {
        ArrayNode all = answer.putArray(name);
        texts.get().forEach(all::add);
    }

    static ArrayNode json(PackLock lock) {
        ArrayNode all = Answers.array();
        lock.packs().forEach(pack -> all.add(json(pack)));
        return all;
    }

    static ObjectNode json(TakenPack pack) {
        ObjectNode one = Answers.object();
        one.put("id", pack.id());
        one.put("version", pack.version().toString());
        one.put("manifest", pack.hash());
        pack.signer().ifPresent(key -> one.put("signer", key.toString()));
        pack.consent().ifPresent(c -> one.put("consent", c.by() + ": " + c.why()));
        one.put("taken", pack.at().toString());
        add(one, "leftOut", pack::leftOut);
        return one;
    }
}
