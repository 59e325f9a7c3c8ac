package baywright.editor;

import baywright.script.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An edit that mends a problem.
 *
 * @param title what it does, in words
 * @param edit  the change
 */
public record QuickFix(String title, TextEdit edit) {

    private static final Pattern NEAREST = Pattern.compile("; nearest is '([^':]+):?'");
    private static final Pattern QUOTED = Pattern.compile("'([^':]+):?'");

    /**
     * What mends a problem of a text, if that can be told from it; best first.
     *
     * @param text    the text of the problem's file as it was when the problem was found
     * @param problem a problem with its place
     */
    public static List<QuickFix> of(String text, Problem problem) {
        if (problem.place().line() < 1) {
            return List.of();
        }
        int offset = new TextPlaces(problem.place().file(), text).offset(problem.place());
        if (problem.code().equals("hazards-missing")) {
            return hazards(text, offset, problem).stream().toList();
        }
        Matcher nearest = NEAREST.matcher(problem.message());
        return nearest.find()
                ? replaced(text, offset, problem, nearest.group(1)).stream().toList()
                : List.of();
    }

    private static Optional<QuickFix> replaced(String text, int offset, Problem problem, String right) {
        List<String> met = new ArrayList<>();
        Matcher quoted = QUOTED.matcher(problem.message());
        while (quoted.find()) {
            met.add(quoted.group(1));
        }
        met.remove(right);
        Optional<Phrase> phrase = phrase(Sketch.of(text), offset);
        int end = phrase.map(Phrase::to).orElse(text.length());
        return Scan.of(text).stream()
                .filter(t -> t.from() >= offset && t.from() < Math.max(end, offset + 1))
                .filter(t -> met.contains(t.isText() ? t.content() : t.isName() ? t.text() : ""))
                .findFirst()
                .map(t -> new QuickFix(
                        "Write '" + right + "'",
                        t.isText()
                                ? new TextEdit(t.contentFrom(), t.contentTo(), right)
                                : new TextEdit(t.from(), t.to(), right)));
    }

    /** The innermost phrase that holds an offset. */
    private static Optional<Phrase> phrase(List<Phrase> phrases, int offset) {
        for (Phrase phrase : phrases) {
            if (phrase.from() <= offset && offset < phrase.to()) {
                return phrase(phrase.body(), offset).or(() -> Optional.of(phrase));
            }
        }
        return Optional.empty();
    }

    /** Names the item's hazards in the stage's block, or in a new block behind what it uses. */
    private static Optional<QuickFix> hazards(String text, int offset, Problem problem) {
        Matcher item = QUOTED.matcher(problem.message());
        if (!item.find()) {
            return Optional.empty();
        }
        String line = "from '" + item.group(1) + "'";
        Optional<Phrase> stage = Sketch.of(text).stream()
                .filter(p -> p.isWord("stage") && p.from() <= offset && offset < p.to())
                .findFirst();
        Optional<Phrase> block = stage.flatMap(
                s -> s.body().stream().filter(b -> b.isWord("hazards")).findFirst());
        Optional<Phrase> uses = stage.flatMap(s -> s.body().stream()
                .filter(b -> b.from() <= offset && offset < b.to())
                .findFirst());
        TextEdit edit;
        if (block.isPresent() && block.get().braces() && !block.get().bracesOpen()) {
            int brace = text.indexOf('{', block.get().from()) + 1;
            boolean ownLine = text.substring(brace, block.get().to()).contains("\n");
            edit = new TextEdit(
                    brace, brace, ownLine ? "\n" + indent(text, block.get().from()) + "    " + line : " " + line + ";");
        } else if (block.isEmpty() && uses.isPresent()) {
            int end = uses.get().to();
            String indent = indent(text, uses.get().from());
            edit = new TextEdit(end, end, "\n" + indent + "hazards {\n" + indent + "    " + line + "\n" + indent + "}");
        } else {
            return Optional.empty();
        }
        return Optional.of(new QuickFix("Name the hazards of '" + item.group(1) + "'", edit));
    }

    private static String indent(String text, int offset) {
        int start = text.lastIndexOf('\n', offset - 1) + 1;
        String before = text.substring(start, offset);
        return before.isBlank()
                ? before
                : " ".repeat(before.length() - before.stripLeading().length());
    }
}
