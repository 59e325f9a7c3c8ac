package baywright.swing.plugins;

import baywright.swing.api.SuitePlugin;
import baywright.swing.plugins.KnownPlugin.State;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

/**
 * The plug-ins that come as jars: loads those that may run, one after the other, and knows how it stands with each. One that throws,
 * hangs or does not fit is named; the others run. Safe to use from any thread but the event thread, as loading and starting waits.
 */
public final class JarPlugins {

    /** How long a plug-in may take to be made and to start. */
    public static final Duration USUAL_PATIENCE = Duration.ofSeconds(10);

    /** Where plug-ins are started. */
    public interface Host {

        /** Starts a plug-in in the calling thread; a sentence when it is refused. */
        Optional<String> start(SuitePlugin plugin);

        /** Takes away again what the plug-in with this id brought; without effect when it does not run. */
        void drop(String id);
    }

    private final PluginConsent consent;
    private final Host host;
    private final ClassLoader suite;
    private final Duration patience;
    private final List<KnownPlugin> known = new CopyOnWriteArrayList<>();
    private final Map<PluginJar, LoadedJar> loaded = new HashMap<>();
    private List<String> unusable = List.of();

    /** @param patience how long to wait for one plug-in, usually {@link #USUAL_PATIENCE} */
    public JarPlugins(PluginConsent consent, Host host, ClassLoader suite, Duration patience) {
        this.consent = consent;
        this.host = host;
        this.suite = suite;
        this.patience = patience;
    }

    /** Loads and starts what lies in the folders and may run. What ran of other folders before is dropped. */
    public synchronized void look(PluginFolders folders) {
        PluginFolders.Found found = folders.look();
        unusable = found.unusable();
        List<PluginJar> gone = loaded.keySet().stream()
                .filter(jar -> !found.jars().contains(jar))
                .toList();
        gone.forEach(this::unload);
        known.removeIf(one -> !found.jars().contains(one.jar()));
        for (PluginJar jar : found.jars()) {
            if (known.stream().noneMatch(one -> one.jar().equals(jar))) {
                begin(jar);
            }
        }
    }

    /** How it stands, in the order in which they were found. */
    public List<KnownPlugin> known() {
        return List.copyOf(known);
    }

    /** A sentence for each file or folder that cannot be read. */
    public synchronized List<String> unusable() {
        return unusable;
    }

    /** The user's yes to a jar that came with the workspace, or its end. */
    public synchronized void allow(PluginJar jar, boolean yes) {
        consent.allow(jar, yes);
        unload(jar);
        known.removeIf(one -> one.jar().equals(jar));
        begin(jar);
    }

    /** Switches one plug-in off or on; the others of its jar go on. */
    public synchronized void switchOff(KnownPlugin plugin, boolean off) {
        consent.switchOff(plugin.id(), off);
        if (off) {
            host.drop(plugin.id());
            replace(plugin, State.OFF, "");
        } else {
            LoadedJar jar = loaded.get(plugin.jar());
            jar.plugins().stream()
                    .filter(one -> plugin.id().equals(idOf(one)))
                    .findFirst()
                    .ifPresent(one -> {
                        Optional<String> refused =
                                within(jar.jar().name(), () -> host.start(one), () -> host.drop(plugin.id()));
                        replace(plugin, refused.isEmpty() ? State.RUNS : State.FAILED, refused.orElse(""));
                    });
        }
    }

    /** Notes a sentence about a plug-in that runs, until it is started anew. On any thread. */
    public void note(String id, String why) {
        known.replaceAll(one -> one.id().equals(id) && one.state() == State.RUNS
                ? new KnownPlugin(one.jar(), one.id(), one.title(), one.state(), why)
                : one);
    }

    private void replace(KnownPlugin plugin, State state, String why) {
        known.replaceAll(one -> one.jar().equals(plugin.jar()) && one.id().equals(plugin.id())
                ? new KnownPlugin(one.jar(), one.id(), one.title(), state, why)
                : one);
    }

    private void begin(PluginJar jar) {
        if (!consent.allows(jar)) {
            known.add(new KnownPlugin(jar, "", jar.name(), State.ASKS, PluginTexts.of("jar.asks", jar.name())));
            return;
        }
        List<LoadedJar> made = new ArrayList<>();
        Optional<String> slow = within(
                jar.name(),
                () -> {
                    made.add(LoadedJar.of(jar, suite));
                    return Optional.empty();
                },
                () -> made.forEach(JarPlugins::close));
        if (slow.isPresent()) {
            known.add(new KnownPlugin(jar, "", jar.name(), State.FAILED, slow.get()));
            return;
        }
        LoadedJar all = made.get(0);
        loaded.put(jar, all);
        all.faults().forEach(why -> known.add(new KnownPlugin(jar, "", jar.name(), State.FAILED, why)));
        all.plugins().forEach(plugin -> begin(jar, plugin));
    }

    private void begin(PluginJar jar, SuitePlugin plugin) {
        String id = idOf(plugin);
        String title = titleOf(plugin, jar);
        if (consent.isOff(id)) {
            known.add(new KnownPlugin(jar, id, title, State.OFF, ""));
            return;
        }
        Optional<String> refused = within(jar.name(), () -> host.start(plugin), () -> host.drop(id));
        known.add(new KnownPlugin(jar, id, title, refused.isEmpty() ? State.RUNS : State.FAILED, refused.orElse("")));
    }

    /** What a plug-in says of itself; empty when it throws or says nothing, which the host then tells in words. */
    private static String idOf(SuitePlugin plugin) {
        try {
            return plugin.info().id();
        } catch (RuntimeException | LinkageError | StackOverflowError e) {
            return "";
        }
    }

    private static String titleOf(SuitePlugin plugin, PluginJar jar) {
        try {
            return plugin.info().title();
        } catch (RuntimeException | LinkageError | StackOverflowError e) {
            return jar.name();
        }
    }

    /**
     * Does something of a plug-in with patience.
     *
     * @param late takes back what it did, when it ends after it was given up
     * @return why it failed; empty when it did not
     */
    private Optional<String> within(String name, Supplier<Optional<String>> work, Runnable late) {
        CompletableFuture<Optional<String>> result = new CompletableFuture<>();
        AtomicBoolean decided = new AtomicBoolean();
        Thread thread = new Thread(
                () -> {
                    Optional<String> got;
                    try {
                        got = work.get();
                    } catch (RuntimeException | LinkageError | StackOverflowError e) {
                        got = Optional.of(PluginTexts.of("jar.faulty", name, LoadedJar.reason(e)));
                    }
                    if (decided.compareAndSet(false, true)) {
                        result.complete(got);
                    } else {
                        late.run();
                    }
                },
                "baywright plug-in " + name);
        thread.setDaemon(true);
        thread.start();
        try {
            return result.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            if (!decided.compareAndSet(false, true)) {
                return result.join();
            }
            thread.interrupt();
            return Optional.of(PluginTexts.of("jar.hangs", name, patience.toSeconds()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of(PluginTexts.of("jar.hangs", name, patience.toSeconds()));
        } catch (ExecutionException e) {
            throw new IllegalStateException("only results are told", e);
        }
    }

    private void unload(PluginJar jar) {
        known.stream()
                .filter(one -> one.jar().equals(jar) && one.state() == State.RUNS)
                .forEach(one -> host.drop(one.id()));
        LoadedJar old = loaded.remove(jar);
        if (old != null) {
            close(old);
        }
    }

    private static void close(LoadedJar jar) {
        try {
            jar.close();
        } catch (IOException e) {
            System.getLogger(JarPlugins.class.getName())
                    .log(System.Logger.Level.WARNING, jar.jar().file() + " could not be closed", e);
        }
    }
}
