package baywright.editor;

import baywright.script.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes, copies and takes out the text of whole stages. */
public final class StageText {

    private static final String INDENT = "    ";

    private StageText() {}

    /** Whether a text may be the id of a stage. */
    public static boolean isId(String id) {
        return Type.isId(id);
    }

    /**
     * A script with one stage to begin with: it loads, and every line of it is meant to be changed.
     *
     * @param surface id of a surface that it works on
     */
    public static String blank(String id, String title, String family, String surface) {
        return "stage(" + quoted(id) + ") {\n"
                + INDENT + "title " + quoted(title) + "\n"
                + INDENT + "family " + quoted(family) + "\n"
                + INDENT + "revision 1\n"
                + INDENT + "worksOn " + quoted(surface) + "\n"
                + INDENT + "time {\n"
                + INDENT + INDENT + "attended 5.min, 10.min, 20.min, per: 'vehicle'\n"
                + INDENT + "}\n"
                + INDENT + "checks {\n"
                + INDENT + INDENT + "confirm 'The work is as agreed'\n"
                + INDENT + "}\n"
                + "}\n";
    }

    /** A script with one stage that has everything from another one. */
    public static String like(String id, String title, String other) {
        return "stage(" + quoted(id) + ", like: " + quoted(other) + ") {\n"
                + INDENT + "title " + quoted(title) + "\n"
                + INDENT + "revision 1\n"
                + "}\n";
    }

    /**
     * A script of its own with a copy of a stage under another id and title, at revision 1; helpers of its file come along, other
     * declarations do not. Empty when the text declares no such stage.
     */
    public static Optional<String> copy(String text, String stage, String id, String title) {
        List<Phrase> all = Sketch.of(text);
        Optional<Phrase> found = find(all, stage);
        return found.map(phrase -> {
            List<TextEdit> edits = new ArrayList<>();
            all.stream()
                    .filter(p -> p.word().isPresent() && p.from() != phrase.from())
                    .forEach(p -> edits.add(cut(text, p)));
            edits.add(replaced(phrase, quoted(id)));
            phrase.body().stream().filter(p -> p.isWord("title")).forEach(p -> edits.add(replaced(p, quoted(title))));
            phrase.body().stream()
                    .filter(p -> p.isWord("revision") && !p.arguments().isEmpty())
                    .map(p -> p.arguments().get(0))
                    .forEach(a -> edits.add(new TextEdit(a.from(), a.to(), "1")));
            return TextEdit.apply(text, edits);
        });
    }

    /** A text without a stage; empty when nothing but blank lines would be left, the same text when it declares no such stage. */
    public static Optional<String> without(String text, String stage) {
        return find(Sketch.of(text), stage)
                .map(phrase -> TextEdit.apply(text, List.of(cut(text, phrase))))
                .or(() -> Optional.of(text))
                .filter(rest -> Sketch.of(rest).stream().findAny().isPresent());
    }

    private static Optional<Phrase> find(List<Phrase> all, String stage) {
        return all.stream()
                .filter(p -> p.isWord("stage") && p.label().equals(stage))
                .findFirst();
    }

    /** Takes a phrase out with the rest of its last line. */
    private static TextEdit cut(String text, Phrase phrase) {
        int to = phrase.to();
        while (to < text.length() && (text.charAt(to) == ' ' || text.charAt(to) == ';')) {
            to++;
        }
        if (to < text.length() && text.charAt(to) == '\r') {
            to++;
        }
        if (to < text.length() && text.charAt(to) == '\n') {
            to++;
        }
        return new TextEdit(phrase.from(), to, "");
    }

    private static TextEdit replaced(Phrase phrase, String with) {
        Phrase.Argument first = phrase.arguments().stream()
                .filter(a -> a.position() == 0)
                .findFirst()
                .orElseThrow();
        return new TextEdit(first.from(), first.to(), with);
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
