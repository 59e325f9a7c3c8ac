package baywright.cli;

import baywright.safety.Agent;
import baywright.safety.Remedy;
import baywright.safety.SafetyReport;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Shows the ways to bring an exposure below its limit. */
final class RemedyPrinter {

    private final Session session;
    private final List<Remedy> remedies;

    RemedyPrinter(Session session, SafetyReport safety) {
        this.session = session;
        remedies = safety.remedies();
    }

    /** Nothing when there is no way to be shown. */
    void print(String shownJob) {
        List<String> sentences = sentences();
        if (sentences.isEmpty()) {
            return;
        }
        session.say("safety.ways");
        for (String sentence : sentences) {
            Wrap.lines(sentence, Console.WIDTH - 2)
                    .forEach(line -> session.console().out().println("  " + line));
        }
        session.say("safety.next", session.command(), shownJob);
    }

    /** One of them, from 1. */
    String sentence(int number) {
        return sentence(number, remedies.get(number - 1));
    }

    ArrayNode json() {
        ArrayNode all = Answers.array();
        sentences().forEach(all::add);
        return all;
    }

    private List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        for (Remedy remedy : remedies) {
            sentences.add(sentence(sentences.size() + 1, remedy));
        }
        return sentences;
    }

    private String sentence(int number, Remedy remedy) {
        if (remedy instanceof Remedy.Share share) {
            return session.text("safety.share", number, String.join(", ", share.steps()), share.people());
        }
        if (remedy instanceof Remedy.Move move) {
            return session.text("safety.move", number, move.step(), move.at().toString());
        }
        if (remedy instanceof Remedy.Split split) {
            List<String> pieces = new ArrayList<>();
            for (Remedy.Split.Piece piece : split.pieces()) {
                String zones = String.join(", ", piece.zones());
                pieces.add(piece.at()
                        .map(at -> session.text(
                                "safety.piece", zones, at.toLocalDate().toString()))
                        .orElse(zones));
            }
            return session.text(
                    "safety.split", number, split.step(), split.pieces().size(), String.join("; ", pieces));
        }
        Remedy.Gentler gentler = (Remedy.Gentler) remedy;
        String kind = gentler.agent() == Agent.VIBRATION ? "vibration" : "noise";
        List<String> levels = new ArrayList<>();
        gentler.levels()
                .forEach(
                        (step, level) -> levels.add(session.text("safety.level." + kind, step, level.toPlainString())));
        return session.text("safety.gentler." + kind.toLowerCase(Locale.ROOT), number, String.join(", ", levels));
    }
}
