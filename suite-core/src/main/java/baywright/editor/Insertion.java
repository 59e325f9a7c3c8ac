package baywright.editor;

import baywright.editor.Proposal.Slot;
import baywright.script.Param;
import baywright.script.Type;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.List;

/** What a word looks like when it is put into a script, with the parts that wait to be filled in. */
final class Insertion {

    private final StringBuilder text = new StringBuilder();
    private final List<Slot> slots = new ArrayList<>();

    /** A word with what a script must give it; {@code indent} are the blanks before its line. */
    static Insertion of(Word word, String indent) {
        Insertion made = new Insertion();
        made.text.append(word.name());
        boolean braces = word.opens().isPresent();
        List<Runnable> parts = new ArrayList<>();
        int run = 0;
        for (int i = 0; i < word.positional().size(); i++) {
            Param param = word.positional().get(i);
            run = i > 0 && word.positional().get(i - 1).type().equals(param.type()) ? run + 1 : 0;
            String example = example(param.type(), run);
            if (param.required()) {
                parts.add(() -> made.slot(example));
            }
        }
        word.rest().ifPresent(p -> parts.add(() -> made.slot(example(p.type(), 0))));
        word.named().stream()
                .filter(Param::required)
                .forEach(p -> parts.add(() -> {
                    made.text.append(p.name()).append(": ");
                    made.slot(example(p.type(), 0));
                }));
        boolean round = parts.isEmpty() ? !braces : braces;
        made.text.append(round ? "(" : parts.isEmpty() ? "" : " ");
        for (int i = 0; i < parts.size(); i++) {
            made.text.append(i > 0 ? ", " : "");
            parts.get(i).run();
        }
        made.text.append(round ? ")" : "");
        if (braces) {
            made.text.append(" {\n").append(indent).append("    ");
            made.slot("");
            made.text.append("\n").append(indent).append("}");
        }
        return made;
    }

    /** An argument by name. */
    static Insertion of(Param param, String before) {
        Insertion made = new Insertion();
        made.text.append(before).append(param.name()).append(": ");
        made.slot(param.usual().map(WordEntry::written).orElseGet(() -> example(param.type(), 0)));
        return made;
    }

    /** A plain text that waits for nothing. */
    static Insertion of(String plain) {
        Insertion made = new Insertion();
        made.text.append(plain);
        return made;
    }

    private static String example(Type type, int i) {
        return type.examples().get(Math.min(i, type.examples().size() - 1));
    }

    private void slot(String example) {
        boolean quoted = example.length() > 1 && example.startsWith("'") && example.endsWith("'");
        int from = text.length() + (quoted ? 1 : 0);
        text.append(example);
        slots.add(new Slot(from, text.length() - (quoted ? 1 : 0)));
    }

    Proposal at(int from, int to, String label, String kind, String detail) {
        return new Proposal(label, kind, detail, new TextEdit(from, to, text.toString()), slots);
    }
}
