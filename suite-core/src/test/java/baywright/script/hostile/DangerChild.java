package baywright.script.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import groovy.lang.Binding;
import groovy.lang.GroovyShell;
import groovy.lang.GroovySystem;
import groovy.lang.MetaClassRegistry;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;

/**
 * The program of a child process: runs hostile scripts one after the other in a plain {@link GroovyShell} and reports
 * what each did. Its working folder is a temporary one; a script that ends or stops the process leaves its line in the
 * report unfinished. Arguments: the report, the file that lists the scripts, the deadline in milliseconds.
 */
public final class DangerChild {

    static final String SECRET = "the-secret-phrase";
    static final int STOPPED_BY_DEADLINE = 42;
    static final int STOPPED_BY_MEMORY = 43;

    private static final Path MARKER = Path.of("marker");
    private static final Path TRANSFORMED = Path.of("transformed");
    private static final Path PRECIOUS = Path.of("precious.txt");
    private static final Path SCRIPT = Path.of("script.groovy");

    private final Path report;
    private final long deadline;
    private final AtomicInteger contacts = new AtomicInteger();
    private final PrintStream terminal = System.out;
    private final Locale locale = Locale.getDefault();
    private final TimeZone timeZone = TimeZone.getDefault();
    private int port;

    private DangerChild(Path report, long deadline) {
        this.report = report;
        this.deadline = deadline;
    }

    public static void main(String[] arguments) throws Exception {
        DangerChild child = new DangerChild(Path.of(arguments[0]), Long.parseLong(arguments[2]));
        child.listen();
        child.warmUp();
        Map<String, HostileScript> all =
                HostileScript.all().stream().collect(Collectors.toMap(HostileScript::name, script -> script));
        for (String name : Files.readAllLines(Path.of(arguments[1]))) {
            child.run(name, all.get(name));
        }
        Runtime.getRuntime().halt(0);
    }

    private void listen() throws IOException {
        ServerSocket socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        port = socket.getLocalPort();
        Thread listener = new Thread(() -> accept(socket), "listener");
        listener.setDaemon(true);
        listener.start();
        Path settings = Path.of("grape.xml").toAbsolutePath();
        Files.writeString(
                settings,
                "<ivysettings><settings defaultResolver='downloadGrapes'/><resolvers><chain name='downloadGrapes'>"
                        + "<ibiblio name='far' m2compatible='true' root='http://127.0.0.1:" + port
                        + "/'/></chain></resolvers></ivysettings>");
        System.setProperty("grape.config", settings.toString());
    }

    private void accept(ServerSocket socket) {
        while (true) {
            try {
                Socket caller = socket.accept();
                contacts.incrementAndGet();
                caller.close();
            } catch (IOException e) {
                throw new IllegalStateException("the listener failed", e);
            }
        }
    }

    /**
     * Every contact made before this one, and this one: a caller may be gone before it is accepted, but callers are
     * accepted in the order in which they came, and counted before they are sent away.
     */
    private int contactsSoFar() throws IOException {
        try (Socket last = new Socket(InetAddress.getLoopbackAddress(), port)) {
            last.setSoTimeout(Math.toIntExact(deadline));
            if (last.getInputStream().read() != -1) {
                throw new IllegalStateException("the listener says something");
            }
        }
        return contacts.get();
    }

    private void warmUp() {
        evaluate("stage('rinse') { title \"Rinse ${1 + 1}\" }", new ArrayList<>());
    }

    private void run(String name, HostileScript script) throws Exception {
        say("BEGIN " + name + "\n");
        boolean exhausts = script != null && script.danger().exhausts();
        if (script == null) {
            Files.writeString(SCRIPT, good(name));
        } else {
            script.writeTo(SCRIPT, port);
        }
        List<String> shown = new ArrayList<>();
        Set<Danger> seen = runOnce(shown);
        if (script != null && script.danger() == Danger.VARIES) {
            List<String> again = new ArrayList<>();
            Thread.sleep(5);
            runOnce(again);
            if (!shown.equals(again)) {
                seen.add(Danger.VARIES);
            }
        }
        if (!exhausts) {
            seen.addAll(Screen.of(shown, new String(Files.readAllBytes(SCRIPT), UTF_8)));
        }
        say("END " + seen.stream().map(Danger::name).collect(Collectors.joining(" ")) + "\n");
    }

    /** The texts of scripts that do no harm, so that the proof can be seen to tell the two apart. */
    static String good(String name) {
        return "stage('" + name + "') {\n    title 'Rinse'\n    def passes = 2\n"
                + "    time { attended passes * 3, per: 'vehicle' }\n}\n";
    }

    private Set<Danger> runOnce(List<String> shown) throws Exception {
        prepare();
        Set<Thread> before = Thread.getAllStackTraces().keySet();
        int contactsBefore = contactsSoFar();
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        PrintStream caught = new PrintStream(printed, true, UTF_8);
        System.setOut(caught);
        Set<Danger> seen = EnumSet.noneOf(Danger.class);
        Binding binding = binding(shown);
        Thread runner = new Thread(null, () -> seen.addAll(evaluateFile(binding)), "runner", 1 << 20);
        runner.start();
        runner.join(deadline);
        if (runner.isAlive()) {
            say("END HANGS\n");
            Runtime.getRuntime().halt(STOPPED_BY_DEADLINE);
        }
        boolean terminalGone = System.out != caught;
        System.setOut(terminal);
        if (terminalGone || harmed(binding)) {
            seen.add(Danger.HARMS);
        }
        if (Files.exists(MARKER, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            seen.add(Danger.MARKER);
        }
        if (Files.exists(TRANSFORMED)) {
            seen.add(Danger.TRANSFORMS);
        }
        if (printed.size() > 0) {
            seen.add(Danger.PRINTS);
        }
        if (contactsSoFar() - 1 > contactsBefore) {
            seen.add(Danger.CONTACTS);
        }
        if (shown.stream().anyMatch(text -> text.contains(SECRET))) {
            seen.add(Danger.LEAKS);
        }
        Set<Thread> left = new HashSet<>(Thread.getAllStackTraces().keySet());
        left.removeAll(before);
        left.removeIf(t -> t == runner || !t.isAlive());
        if (!left.isEmpty()) {
            seen.add(Danger.THREAD);
        }
        restore();
        return seen;
    }

    private Set<Danger> evaluateFile(Binding binding) {
        Thread.currentThread().setContextClassLoader(DangerChild.class.getClassLoader());
        try {
            new GroovyShell(DangerChild.class.getClassLoader(), binding).evaluate(SCRIPT.toFile());
            return Set.of();
        } catch (Throwable thrown) {
            Danger cause = cause(thrown);
            if (cause == Danger.THROWS) {
                terminal.println(thrown);
            }
            return Set.of(cause);
        }
    }

    private static Danger cause(Throwable thrown) {
        for (Throwable t = thrown; t != null; t = t.getCause()) {
            if (t instanceof StackOverflowError) {
                return Danger.STACK;
            }
            if (t instanceof OutOfMemoryError) {
                return Danger.MEMORY;
            }
        }
        return Danger.THROWS;
    }

    private static void evaluate(String text, List<String> shown) {
        Object done = new GroovyShell(binding(shown)).evaluate(text);
        if (done != null) {
            throw new IllegalStateException("the warm-up says " + done);
        }
    }

    private static Binding binding(List<String> shown) {
        NaiveWords words = new NaiveWords(shown, SECRET);
        Binding binding = new Binding();
        for (String word : List.of("stage", "state", "surface", "family", "fact", "factor")) {
            binding.setVariable(word, words.word());
        }
        binding.setVariable("shared", SECRET);
        return binding;
    }

    private boolean harmed(Binding binding) throws IOException {
        return !Files.exists(PRECIOUS)
                || !Files.readString(PRECIOUS).equals(SECRET)
                || System.getProperty("hostile.changed") != null
                || !Locale.getDefault().equals(locale)
                || !TimeZone.getDefault().equals(timeZone)
                || !SECRET.equals(binding.getVariable("shared"))
                || binding.getVariable("stage").getClass().getName().startsWith("script");
    }

    private void prepare() throws IOException {
        Files.deleteIfExists(MARKER);
        Files.deleteIfExists(TRANSFORMED);
        Files.writeString(PRECIOUS, SECRET);
    }

    private void restore() {
        System.clearProperty("hostile.changed");
        Locale.setDefault(locale);
        TimeZone.setDefault(timeZone);
        MetaClassRegistry registry = GroovySystem.getMetaClassRegistry();
        List<Class<?>> changed = new ArrayList<>();
        for (Iterator<?> all = registry.iterator(); all.hasNext(); ) {
            changed.add(((groovy.lang.MetaClass) all.next()).getTheClass());
        }
        changed.forEach(registry::removeMetaClass);
    }

    private void say(String text) {
        try {
            Files.writeString(report, text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        } catch (OutOfMemoryError e) {
            Runtime.getRuntime().halt(STOPPED_BY_MEMORY);
        }
    }
}
