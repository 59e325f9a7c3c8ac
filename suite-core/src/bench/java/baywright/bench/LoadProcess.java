package baywright.bench;

import baywright.library.Item;
import baywright.library.LibraryLoader;
import baywright.library.LibraryLoader.Loaded;
import baywright.library.ScriptCache;
import baywright.script.ScriptParser;
import groovy.lang.GroovyShell;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.groovy.parser.antlr4.AstBuilder;
import org.codehaus.groovy.ast.ModuleNode;
import org.codehaus.groovy.control.CompilerConfiguration;
import org.codehaus.groovy.control.ErrorCollector;
import org.codehaus.groovy.control.SourceUnit;

/**
 * A whole process that reads scripts in one way and ends. Its arguments: the way, the scripts (a folder or one file), and
 * for the ways {@code library} and {@code cached} the price list and the cache's folder.
 */
public final class LoadProcess {

    private LoadProcess() {}

    /** Prints how many scripts it read; fails when one of them could not be read. */
    public static void main(String[] args) throws IOException {
        Path scripts = Path.of(args[1]);
        int read =
                switch (args[0]) {
                    case "nothing" -> 0;
                    case "library" -> library(scripts, PlainItems.read(Path.of(args[2])), ScriptCache.none());
                    case "cached" ->
                        library(scripts, PlainItems.read(Path.of(args[2])), ScriptCache.in(Path.of(args[3])));
                    case "script" -> script(scripts);
                    case "groovy-parser" -> groovyParser(texts(scripts));
                    case "groovy-shell" -> groovyShell(texts(scripts));
                    default -> throw new IllegalArgumentException("no way to read scripts is called " + args[0]);
                };
        System.out.println(read);
    }

    private static Map<String, String> texts(Path scripts) throws IOException {
        return Files.isDirectory(scripts)
                ? SampleLibrary.read(scripts)
                : Map.of(scripts.getFileName().toString(), Files.readString(scripts));
    }

    /** The program's own load, on all cores, up to the checked library. A cache that is empty is filled. */
    private static int library(Path folder, List<Item> items, ScriptCache cache) throws IOException {
        Loaded loaded = LibraryLoader.load(folder, items, cache);
        if (!loaded.errors().isEmpty()) {
            throw new IllegalStateException(loaded.errors().get(0).toString());
        }
        return loaded.library().stages().size();
    }

    /** The program's own reading of one text, without a library around it. */
    private static int script(Path file) throws IOException {
        String text = Files.readString(file);
        if (!ScriptParser.parse(file.toString(), text).problems().isEmpty()) {
            throw new IllegalStateException(file + " has problems");
        }
        return 1;
    }

    private static int groovyParser(Map<String, String> texts) {
        // As the program sets it: without it the parser forgets what it has learnt now and then, which only costs time.
        System.setProperty("groovy.antlr4.cache.threshold", "-1");
        int read = 0;
        for (Map.Entry<String, String> text : texts.entrySet()) {
            CompilerConfiguration configuration = new CompilerConfiguration();
            SourceUnit unit = new SourceUnit(
                    text.getKey(), text.getValue(), configuration, null, new ErrorCollector(configuration));
            ModuleNode module = new AstBuilder(unit, false, false).buildAST();
            read += module.getStatementBlock().getStatements().isEmpty() ? 0 : 1;
        }
        return read;
    }

    private static int groovyShell(Map<String, String> texts) {
        GroovyShell shell = new GroovyShell();
        int read = 0;
        for (Map.Entry<String, String> text : texts.entrySet()) {
            shell.parse(text.getValue(), "Script" + read + ".groovy");
            read++;
        }
        return read;
    }
}
