package baywright.script;

import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * Reads the text of a script into plain data. Nothing of the text runs, no class that it names is loaded. Any text at
 * all gives a result; what is wrong with it is listed with its place.
 */
public final class ScriptParser {

    private ScriptParser() {}

    /** Parses one file on a thread of its own with a stack of known size. */
    public static Script parse(String file, String text) {
        return onDeepStack(() -> parseHere(file, text));
    }

    /** A thread whose stack is deep enough for everything that the limits let through. */
    public static Thread deepThread(Runnable work) {
        Thread thread = new Thread(null, work, "stage-parser", Limits.STACK);
        thread.setDaemon(true);
        return thread;
    }

    private static <T> T onDeepStack(Callable<T> work) {
        CompletableFuture<T> result = new CompletableFuture<>();
        Thread thread = deepThread(() -> {
            try {
                result.complete(work.call());
            } catch (Exception | Error e) {
                result.completeExceptionally(e);
            }
        });
        thread.start();
        try {
            return result.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e.getCause());
        }
    }

    /** Parses on the caller's thread, which must come from {@link #deepThread}. */
    public static Script parseHere(String file, String text) {
        Problems problems = new Problems();
        SourceText source = new SourceText(file, text);
        Effort effort = new Effort();
        boolean parsed = false;
        int again = 0;
        for (int round = 0; round <= Limits.SYNTAX_ERRORS; round++) {
            Problems found = new Problems();
            Guard.Verdict verdict = Guard.look(source, round == 0 ? problems : found);
            if (verdict.fatal()) {
                // After a line was emptied a bracket may be missing only because of that.
                return new Script(file, List.of(), problems.sorted());
            }
            problems.addAll(found.sorted());
            if (!verdict.badLines().isEmpty()) {
                if (!blankAll(source, verdict.badLines())) {
                    break;
                }
                continue;
            }
            // A text with an error takes the parser several times as long as a right one.
            again += parsed ? verdict.tokens() : 0;
            if (again > Limits.TOKENS_AGAIN) {
                break;
            }
            parsed = true;
            GroovyReader.Result result = round == 0
                    ? GroovyReader.read(source, verdict.blocks(), effort)
                            .orElseGet(() -> GroovyReader.read(source, effort))
                    : GroovyReader.read(source, effort);
            if (result.body().isPresent()) {
                result.problems().sorted().stream()
                        .filter(p -> !source.isEmptied(p.place().line()))
                        .forEach(problems::add);
                return new Script(file, result.body().get(), problems.sorted());
            }
            GroovyReader.Result exact = closer(source, result, effort);
            exact.problems().sorted().stream()
                    .filter(p -> !source.isEmptied(p.place().line()))
                    .forEach(problems::add);
            if (exact.errorLine() == 0 || !source.blank(exact.errorLine())) {
                break;
            }
        }
        return new Script(file, List.of(), problems.sorted());
    }

    /**
     * Groovy's parser gives the opening brace of a block as the place of some errors inside it. Then what stands inside
     * is read alone, to find where exactly; if nothing is wrong there the brace it is.
     */
    private static GroovyReader.Result closer(SourceText source, GroovyReader.Result result, Effort effort) {
        if (result.errorLine() == 0) {
            return result;
        }
        Place where = result.problems().sorted().get(0).place();
        int end = source.closing(where);
        if (!source.from(where.line(), where.column()).startsWith("{") || end <= where.line() + 1) {
            return result;
        }
        SourceText part = source.between(where.line(), end);
        Guard.Verdict verdict = Guard.look(part, new Problems());
        if (verdict.fatal() || !verdict.badLines().isEmpty()) {
            return result;
        }
        GroovyReader.Result inside = GroovyReader.read(part, effort);
        return inside.body().isPresent() || inside.errorLine() == 0 ? result : closer(source, inside, effort);
    }

    private static boolean blankAll(SourceText source, Set<Integer> lines) {
        boolean changed = false;
        for (int line : lines) {
            changed |= source.blank(line);
        }
        return changed;
    }
}
