package baywright.editor;

import baywright.library.StageLanguage;
import baywright.script.Param;
import baywright.script.Type.Naming;
import baywright.script.Type.Use;
import baywright.script.Word;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds what the condition of a rule means by its texts: arguments of questions, and what answers are compared with. */
final class Condition {

    /** Questions whose answer is a stage. */
    private static final Set<String> ANSWER_STAGES = Set.of("last", "next");

    /** Kinds of what stands behind a dot. */
    private static final Map<String, String> PARTS =
            Map.of("stage", "stage", "family", "family", "surface", "surface", "id", "zone");

    /** Takes what was found. */
    interface Found {
        /** A text that means a thing of a kind, loosely or surely; {@code stage} for an input, else empty. */
        void text(Token text, String kind, boolean loose, String stage);

        /** A name that stands for such texts. */
        void name(Token name, String kind);

        /** A stage that the rule concerns and that has an input. */
        String stageWith(String input);
    }

    private final List<Token> tokens;
    private final Found found;

    Condition(List<Token> tokens, Found found) {
        this.tokens = tokens;
        this.found = found;
    }

    void read() {
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            if (token.isName() && is(i + 1, "(")) {
                Optional<Word> function = StageLanguage.VOCABULARY.function(token.text());
                if (function.isPresent()) {
                    arguments(function.get(), i + 2);
                }
            } else if (token.is("==") || token.is("!=") || token.is("in")) {
                String kind = answered(i - 1);
                if (!kind.isEmpty()) {
                    compared(i + 1, kind);
                }
            }
        }
    }

    private boolean is(int i, String sign) {
        return i >= 0 && i < tokens.size() && tokens.get(i).is(sign);
    }

    private void arguments(Word function, int from) {
        int position = 0;
        String named = "";
        String first = "";
        for (int i = from; i < tokens.size() && !tokens.get(i).is(")"); i++) {
            Token token = tokens.get(i);
            if (token.is(",")) {
                position++;
                named = "";
            } else if (token.isName() && is(i + 1, ":")) {
                named = token.text();
            } else if (token.isText() || token.isName()) {
                String param = named;
                Optional<Naming> naming = (param.isEmpty() ? Phrase.param(function, position) : function.param(param))
                        .map(Param::type)
                        .flatMap(t -> t.naming());
                naming.ifPresent(n -> means(token, n));
                if (token.isText()
                        && naming.filter(n -> n.kind().equals("input")).isPresent()) {
                    String stage = first.isEmpty() ? found.stageWith(token.content()) : first;
                    found.text(token, "input", false, stage);
                }
                first = token.isText() && first.isEmpty() ? token.content() : first;
            }
        }
    }

    private void means(Token token, Naming naming) {
        boolean loose = naming.use() == Use.MAY_REFER;
        if (token.isName()) {
            found.name(token, naming.kind());
        } else if (!naming.kind().equals("input")) {
            found.text(token, naming.kind(), loose, "");
            if (loose && naming.kind().equals("stage")) {
                found.text(token, "family", true, "");
            }
        }
    }

    /** The kind of what the value that ends here is; the empty text when it is none of ours. */
    private String answered(int end) {
        if (end >= 2 && is(end - 1, ".")) {
            return PARTS.getOrDefault(tokens.get(end).text(), "");
        }
        if (!is(end, ")")) {
            return "";
        }
        int depth = 0;
        for (int i = end; i > 0; i--) {
            depth += is(i, ")") ? 1 : is(i, "(") ? -1 : 0;
            if (depth == 0) {
                return ANSWER_STAGES.contains(tokens.get(i - 1).text()) ? "stage" : "";
            }
        }
        return "";
    }

    private void compared(int from, String kind) {
        boolean list = is(from, "[");
        int i = list ? from + 1 : from;
        while (i < tokens.size() && !tokens.get(i).is("]")) {
            Token token = tokens.get(i);
            if (token.isText()) {
                found.text(token, kind, true, "");
            } else if (token.isName() && !is(i + 1, ".") && !is(i + 1, "(")) {
                found.name(token, kind);
            }
            if (!list) {
                return;
            }
            i++;
        }
    }
}
