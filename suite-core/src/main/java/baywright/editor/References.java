package baywright.editor;

import baywright.editor.Phrase.Argument;
import baywright.editor.Reference.Form;
import baywright.library.StageLanguage;
import baywright.script.Functions;
import baywright.script.Param;
import baywright.script.Type.Naming;
import baywright.script.Type.Use;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds every place of some scripts that declares or means a thing. The vocabulary decides what an argument means; a
 * name is followed to the texts that it was given by {@code def}, a loop or a closure.
 */
final class References {

    /** The section of what a rule asks. */
    private static final String CONDITION = "condition";

    /** The file whose definitions every script of a library may read. */
    private static final String WORDS_FILE = "words.groovy";

    private static final Set<String> FUNCTIONS =
            Functions.all().stream().map(Functions.Info::name).collect(Collectors.toSet());

    /** Tokens that a name stands for, with their file. */
    private record Given(String file, List<Token> tokens) {}

    private final Map<String, String> texts;
    private final Map<String, Set<String>> inputs = new HashMap<>();
    private final Map<String, Given> shared = new HashMap<>();
    private final Map<String, String> parents = new HashMap<>();
    private final Set<Reference> found = new LinkedHashSet<>();

    private References(Map<String, String> texts) {
        this.texts = texts;
    }

    /** All references of some scripts by name, in order of file and place. */
    static List<Reference> of(Map<String, String> texts) {
        return new References(texts).read();
    }

    private List<Reference> read() {
        Map<String, List<Phrase>> sketches = new HashMap<>();
        texts.forEach((file, text) -> sketches.put(file, Sketch.of(text)));
        sketches.forEach((file, phrases) -> phrases.forEach(p -> learn(file, p)));
        texts.keySet().forEach(file -> new Walk(file).phrases(sketches.get(file), "", shared));
        return found.stream()
                .sorted((a, b) -> {
                    int byFile = a.file().compareTo(b.file());
                    return byFile != 0 ? byFile : Integer.compare(a.from(), b.from());
                })
                .toList();
    }

    private void learn(String file, Phrase phrase) {
        if (phrase.head().is("def") && file.equals(WORDS_FILE)) {
            phrase.arguments().stream()
                    .filter(a -> a.name().isPresent())
                    .forEach(a -> shared.put(a.name().get().text(), new Given(file, a.tokens())));
        }
        if (phrase.isWord("stage")) {
            inputs.put(phrase.label(), inputsOf(phrase));
            parents.put(phrase.label(), phrase.named("like"));
        }
    }

    /** Names of the inputs that a stage declares. */
    static Set<String> inputsOf(Phrase stage) {
        Set<String> names = new LinkedHashSet<>();
        for (Phrase block : stage.body()) {
            if (block.isWord("inputs")) {
                block.body().stream()
                        .map(Phrase::label)
                        .filter(l -> !l.isEmpty())
                        .forEach(names::add);
            }
        }
        return names;
    }

    /** Names of the inputs that a stage has, its own and those of the stages that it is like. */
    private Set<String> allInputs(String stage) {
        Set<String> all = new HashSet<>();
        Set<String> seen = new HashSet<>();
        for (String at = stage; seen.add(at) && !at.isEmpty(); at = parents.getOrDefault(at, "")) {
            all.addAll(inputs.getOrDefault(at, Set.of()));
        }
        return all;
    }

    /** One file. */
    private final class Walk {
        private final String file;

        Walk(String file) {
            this.file = file;
        }

        void phrases(List<Phrase> phrases, String stage, Map<String, Given> outer) {
            Map<String, Given> names = new HashMap<>(outer);
            for (Phrase phrase : phrases) {
                if (phrase.head().is("def")) {
                    phrase.arguments().stream()
                            .filter(a -> a.name().isPresent())
                            .forEach(a -> names.put(a.name().get().text(), new Given(file, a.tokens())));
                }
                String inside = phrase.isWord("stage") ? phrase.label() : stage;
                for (Argument argument : phrase.arguments()) {
                    phrase.param(argument)
                            .flatMap(p -> p.type().naming())
                            .ifPresent(n -> named(argument.tokens(), n, inside, names));
                    expression(argument.tokens(), inside, allInputs(inside));
                }
                if (phrase.word().flatMap(Word::opens).filter(CONDITION::equals).isPresent()) {
                    condition(phrase, phrases, names);
                } else {
                    phrases(phrase.body(), inside, bound(phrase, names));
                }
            }
        }

        private void condition(Phrase phrase, List<Phrase> rule, Map<String, Given> names) {
            List<Token> tokens = Scan.of(texts.get(file)).stream()
                    .filter(t -> t.from() > phrase.head().from() && t.to() <= phrase.to())
                    .filter(t -> t.kind() != Token.Kind.COMMENT && t.kind() != Token.Kind.LINE_END)
                    .toList();
            new Condition(tokens, new Asked(rule, names)).read();
        }

        /** What the condition of a rule asks for, noted with the texts behind its names. */
        private final class Asked implements Condition.Found {
            private final List<Phrase> rule;
            private final Map<String, Given> names;

            Asked(List<Phrase> rule, Map<String, Given> names) {
                this.rule = rule;
                this.names = names;
            }

            @Override
            public void text(Token text, String kind, boolean loose, String stage) {
                if (!text.hasParts() && text.closed()) {
                    Form form = loose ? Form.LOOSE_TEXT : Form.TEXT;
                    found.add(new Reference(file, kind, text.content(), form, stage, text.from(), text.to()));
                }
            }

            @Override
            public void name(Token name, String kind) {
                Given given = names.get(name.text());
                if (given != null) {
                    texts(given.file(), given.tokens(), kind, Form.TEXT, "", names, 0);
                }
            }

            @Override
            public String stageWith(String input) {
                return rule.stream()
                        .filter(p -> p.isWord("at"))
                        .flatMap(p -> p.arguments().stream())
                        .filter(a -> a.name().filter(n -> n.is("stages")).isPresent())
                        .flatMap(a -> a.tokens().stream())
                        .filter(Token::isText)
                        .map(Token::content)
                        .filter(stage -> allInputs(stage).contains(input))
                        .findFirst()
                        .orElse("");
            }
        }

        /** The names with those that a loop or a closure gives to what stands in its braces. */
        private Map<String, Given> bound(Phrase phrase, Map<String, Given> names) {
            if (phrase.word().isPresent() || !phrase.braces()) {
                return names;
            }
            Map<String, Given> more = new HashMap<>(names);
            List<Token> tokens = phrase.arguments().stream()
                    .flatMap(a -> a.tokens().stream())
                    .toList();
            if (phrase.head().is("for") && tokens.size() > 2) {
                more.put(tokens.get(1).text(), new Given(file, tokens.subList(2, tokens.size())));
            } else if (!phrase.head().is("if")) {
                more.put("it", new Given(file, tokens));
                phrase.parameters().forEach(p -> more.put(p.text(), new Given(file, tokens)));
            }
            return more;
        }

        private void named(List<Token> tokens, Naming naming, String stage, Map<String, Given> names) {
            if (naming.use() == Use.KEYS) {
                keys(tokens, naming.kind(), stage);
                return;
            }
            Form form =
                    switch (naming.use()) {
                        case DECLARES -> Form.DECLARATION;
                        case MAY_REFER -> Form.LOOSE_TEXT;
                        default -> Form.TEXT;
                    };
            texts(file, tokens, naming.kind(), form, stage, names, 0);
        }

        private void texts(
                String where,
                List<Token> tokens,
                String kind,
                Form form,
                String stage,
                Map<String, Given> names,
                int depth) {
            for (int i = 0; i < tokens.size(); i++) {
                Token token = tokens.get(i);
                if (!Expression.isValue(tokens, i)) {
                    continue;
                }
                if (token.isText() && !token.hasParts() && token.closed()) {
                    found.add(new Reference(where, kind, token.content(), form, stage, token.from(), token.to()));
                } else if (token.isName() && names.containsKey(token.text()) && isWhole(tokens, i) && depth < 4) {
                    Given given = names.get(token.text());
                    texts(given.file(), given.tokens(), kind, Form.TEXT, stage, names, depth + 1);
                }
            }
        }

        /** Whether a name is taken as a whole, or entry by entry, and not for one of its parts. */
        private static boolean isWhole(List<Token> tokens, int i) {
            if (i + 1 == tokens.size()
                    || !(tokens.get(i + 1).is(".") || tokens.get(i + 1).is("["))) {
                return true;
            }
            return i + 2 < tokens.size() && FUNCTIONS.contains(tokens.get(i + 2).text());
        }

        private void keys(List<Token> tokens, String kind, String stage) {
            for (int i = 1; i + 1 < tokens.size(); i++) {
                Token token = tokens.get(i);
                boolean key = (tokens.get(i - 1).is("[") || tokens.get(i - 1).is(","))
                        && tokens.get(i + 1).is(":");
                if (key && token.isText() && !token.hasParts()) {
                    found.add(new Reference(file, kind, token.content(), Form.TEXT, stage, token.from(), token.to()));
                } else if (key && token.isName()) {
                    found.add(new Reference(file, kind, token.text(), Form.BARE_KEY, stage, token.from(), token.to()));
                }
            }
        }

        /** Inputs by name and what functions are asked for. */
        private void expression(List<Token> tokens, String stage, Set<String> known) {
            for (int i = 0; i < tokens.size(); i++) {
                Token token = tokens.get(i);
                if (token.isText()) {
                    for (List<Token> part : Scan.parts(texts.get(file), token)) {
                        boolean alone = part.size() == 1
                                && texts.get(file).charAt(part.get(0).from() - 1) == '$';
                        part(part, alone, stage, known);
                    }
                } else if (Expression.asks(tokens, i)) {
                    Token asked = tokens.get(i + 2);
                    function(token)
                            .map(n -> new Reference(
                                    file, n.kind(), asked.content(), Form.TEXT, stage, asked.from(), asked.to()))
                            .ifPresent(found::add);
                } else if (known.contains(token.text()) && Expression.isRead(tokens, i)) {
                    found.add(new Reference(file, "input", token.text(), Form.NAME, stage, token.from(), token.to()));
                }
            }
        }

        private void part(List<Token> part, boolean alone, String stage, Set<String> known) {
            if (alone && known.contains(part.get(0).text())) {
                Token token = part.get(0);
                found.add(
                        new Reference(file, "input", token.text(), Form.NAME_IN_TEXT, stage, token.from(), token.to()));
            } else if (!alone) {
                expression(part, stage, known);
            }
        }
    }

    /** What the first argument of a function of the vocabulary names. */
    static Optional<Naming> function(Token name) {
        return StageLanguage.VOCABULARY
                .function(name.text())
                .map(Word::positional)
                .filter(p -> !p.isEmpty())
                .map(p -> p.get(0))
                .map(Param::type)
                .flatMap(t -> t.naming());
    }

    /** The declared ids of a kind. */
    static List<String> declared(List<Reference> all, String kind) {
        List<String> ids = new ArrayList<>();
        all.stream()
                .filter(r -> r.kind().equals(kind) && r.form() == Form.DECLARATION)
                .forEach(r -> ids.add(r.id()));
        return ids;
    }
}
