package baywright.swing.plugins;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Builds jars of plug-ins while a test runs. */
public final class Jars {

    private static final String SERVICE = "META-INF/services/baywright.swing.api.SuitePlugin";

    private Jars() {}

    /**
     * A jar of one class in the package {@code bad}.
     *
     * @param name  of the class
     * @param body  of the class, which implements SuitePlugin
     */
    public static Path ofClass(Path folder, String name, String body) {
        String source = "package bad; import baywright.swing.api.*; public class " + name + " implements SuitePlugin {"
                + body + "}";
        return build(folder.resolve(name + ".jar"), Map.of("bad/" + name + ".java", source), "bad." + name);
    }

    /** A usual {@code info()} with the given id. */
    public static String info(String id) {
        return "public PluginInfo info() { return new PluginInfo(\"" + id
                + "\", \"Title\", \"1\", new ApiVersion(1, 0)); }";
    }

    /** A jar of a folder with sources and their {@code META-INF}. */
    public static Path ofFolder(Path sources, Path jar) {
        try (Stream<Path> all = Files.walk(sources)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : all.filter(f -> f.toString().endsWith(".java")).toList()) {
                texts.put(sources.relativize(file).toString(), Files.readString(file));
            }
            return build(jar, texts, Files.readString(sources.resolve(SERVICE)).strip());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path build(Path jar, Map<String, String> sources, String services) {
        try {
            Path out = Files.createTempDirectory(jar.toAbsolutePath().getParent(), "classes");
            compile(sources, out);
            try (JarOutputStream to = new JarOutputStream(Files.newOutputStream(jar));
                    Stream<Path> all = Files.walk(out)) {
                for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                    to.putNextEntry(new JarEntry(out.relativize(file).toString().replace('\\', '/')));
                    Files.copy(file, to);
                }
                to.putNextEntry(new JarEntry(SERVICE));
                to.write(services.getBytes(StandardCharsets.UTF_8));
            }
            return jar;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void compile(Map<String, String> sources, Path out) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<JavaFileObject> files = new ArrayList<>();
        sources.forEach((name, text) -> files.add(new Source(name, text)));
        StringWriter said = new StringWriter();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            List<String> options = List.of(
                    "--release",
                    "17",
                    "-proc:none",
                    "-Xlint:all",
                    "-d",
                    out.toString(),
                    "-cp",
                    System.getProperty("java.class.path"));
            boolean fine =
                    compiler.getTask(said, manager, null, options, null, files).call();
            if (!fine) {
                throw new AssertionError(said.toString());
            }
        }
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String text;

        Source(String name, String text) {
            super(URI.create("string:///" + name), Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
