package baywright.cli;

import baywright.editor.WordEntry;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright stages explain WORD}: the reference of a word, for each place where it may stand. */
@Command(name = "explain", resourceBundle = CommandTree.HELP)
final class StagesExplainCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORD", arity = "1", descriptionKey = "word")
    private String word;

    StagesExplainCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        List<WordEntry> entries = WordEntry.of(word);
        if (entries.isEmpty()) {
            entries = WordEntry.taking(word);
        }
        if (entries.isEmpty()) {
            String hint = WordEntry.nearest(word)
                    .map(near -> session.text("nearest", near))
                    .orElse("");
            throw session.badInput("explain.none", word, hint);
        }
        if (session.json()) {
            Answers.print(session, json(entries));
            return ExitStatus.FINE;
        }
        for (int i = 0; i < entries.size(); i++) {
            if (i > 0) {
                session.console().out().println();
            }
            print(entries.get(i));
        }
        return ExitStatus.FINE;
    }

    private void print(WordEntry entry) {
        Console console = session.console();
        console.out().println(console.paint(Ink.HEAD, entry.name()) + "  " + entry.where());
        Wrap.lines(entry.means(), Console.WIDTH - 2)
                .forEach(line -> console.out().println("  " + line));
        Table table = new Table("", "~");
        entry.parameters().forEach(p -> table.add(console.paint(Ink.FAINT, p.name()), p.described()));
        if (!table.isEmpty()) {
            console.out().println();
            table.print(console, "  ");
        }
        console.out().println();
        entry.example().lines().forEach(line -> console.out().println("    " + line));
        console.out().println();
        console.out().println("  " + session.text("explain.since", entry.since()));
    }

    private static ArrayNode json(List<WordEntry> entries) {
        ArrayNode all = Answers.array();
        for (WordEntry entry : entries) {
            ObjectNode one = all.addObject();
            one.put("word", entry.name());
            one.put("where", entry.where());
            one.put("means", entry.means());
            ArrayNode parameters = one.putArray("parameters");
            for (WordEntry.Parameter parameter : entry.parameters()) {
                ObjectNode told = parameters.addObject();
                told.put("name", parameter.name());
                told.put("type", parameter.type());
                told.put("required", parameter.required());
                told.put("usual", parameter.usual());
            }
            one.put("example", entry.example());
            one.put("since", entry.since());
        }
        return all;
    }
}
