package baywright.swing.shell;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.Desk;
import baywright.swing.api.DocumentMaker;
import baywright.swing.api.FindingRule;
import baywright.swing.api.Importer;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SettingsPage;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.SuitePlugin;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** Starts plug-ins and keeps what they bring. A plug-in that fails brings nothing and harms no other. Safe to use from any thread. */
public final class PluginHost {

    private static final Texts TEXTS = Texts.beside(PluginHost.class, "texts");

    /**
     * A plug-in that did not start.
     *
     * @param id    its id, or the name of its class when it does not say
     * @param why   one sentence
     * @param fault what it threw
     */
    public record Refused(String id, String why, Optional<Throwable> fault) {}

    /** What one plug-in brings; nothing of it counts before it has started. */
    private static final class Brought implements PluginContext {

        private final Desk desk;
        private final Map<String, Object> byId = new LinkedHashMap<>();

        Brought(Desk desk) {
            this.desk = desk;
        }

        private void put(String kind, String id, Object value) {
            if (byId.putIfAbsent(kind + " '" + id + "'", value) != null) {
                throw new IllegalArgumentException(TEXTS.of("plugin.twice", kind, id));
            }
        }

        @Override
        public void add(Workbench workbench) {
            put("workbench", workbench.id(), workbench);
        }

        @Override
        public void add(SuiteAction action) {
            put("action", action.id(), action);
        }

        @Override
        public void add(FindingRule rule) {
            put("rule", rule.id(), rule);
        }

        @Override
        public void add(Importer importer) {
            put("importer", importer.id(), importer);
        }

        @Override
        public void add(DocumentMaker maker) {
            put("document", maker.id(), maker);
        }

        @Override
        public void add(SettingsPage page) {
            put("settings page", page.id(), page);
        }

        @Override
        public Desk desk() {
            return desk;
        }
    }

    private record Started(SuitePlugin plugin, PluginInfo info, Brought brought) {}

    private final List<Started> started = new CopyOnWriteArrayList<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private volatile Desk desk;

    /** Gives the desk that plug-ins work on; before the first is started. */
    void give(Desk given) {
        desk = given;
    }

    /**
     * Starts a plug-in in the calling thread, which is not the event thread. A time limit is up to the caller.
     *
     * @return why it was refused; empty when it has started
     */
    public Optional<Refused> start(SuitePlugin plugin) {
        String id = plugin.getClass().getName();
        try {
            PluginInfo info = plugin.info();
            id = info.id();
            if (!ApiVersion.CURRENT.serves(info.needsApi())) {
                return Optional.of(new Refused(
                        id,
                        TEXTS.of("plugin.api", info.title(), info.needsApi(), ApiVersion.CURRENT),
                        Optional.empty()));
            }
            Brought brought = new Brought(desk);
            plugin.start(brought);
            return take(new Started(plugin, info, brought));
        } catch (Exception | LinkageError | StackOverflowError | AssertionError e) {
            return Optional.of(
                    new Refused(id, TEXTS.of("plugin.fault", id, String.valueOf(e.getMessage())), Optional.of(e)));
        }
    }

    private synchronized Optional<Refused> take(Started one) {
        for (Started other : started) {
            if (other.info().id().equals(one.info().id())) {
                return Optional.of(new Refused(
                        one.info().id(), TEXTS.of("plugin.same", one.info().id()), Optional.empty()));
            }
            for (String key : one.brought().byId.keySet()) {
                if (other.brought().byId.containsKey(key)) {
                    return Optional.of(new Refused(
                            one.info().id(),
                            TEXTS.of(
                                    "plugin.taken",
                                    one.info().title(),
                                    key,
                                    other.info().title()),
                            Optional.empty()));
                }
            }
        }
        started.add(one);
        listeners.forEach(Runnable::run);
        return Optional.empty();
    }

    /** Takes everything away again that a plug-in brought, and stops it. */
    public synchronized void drop(String id) {
        for (Started one : List.copyOf(started)) {
            if (one.info().id().equals(id)) {
                started.remove(one);
                stop(one);
                listeners.forEach(Runnable::run);
            }
        }
    }

    /** Stops all of them. */
    void stop() {
        started.forEach(PluginHost::stop);
    }

    /** A plug-in that cannot even end is left alone: the program ends anyway. */
    private static void stop(Started one) {
        try {
            one.plugin().stop();
        } catch (RuntimeException | LinkageError e) {
            System.getLogger(PluginHost.class.getName())
                    .log(System.Logger.Level.WARNING, "plug-in " + one.info().id() + " did not stop", e);
        }
    }

    /** Tells, in any thread, when something has come or gone. */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    List<PluginInfo> plugins() {
        return started.stream().map(Started::info).toList();
    }

    /** In the order of the strip. */
    List<Workbench> workbenches() {
        return all(Workbench.class).stream()
                .sorted(Comparator.comparingInt(Workbench::order).thenComparing(Workbench::id))
                .toList();
    }

    List<SuiteAction> actions() {
        return all(SuiteAction.class);
    }

    List<FindingRule> rules() {
        return all(FindingRule.class);
    }

    /** The plug-in that has brought a rule; empty when it is there no more. */
    Optional<PluginInfo> ownerOfRule(String rule) {
        return started.stream()
                .filter(one -> one.brought().byId.values().stream()
                        .anyMatch(value ->
                                value instanceof FindingRule own && own.id().equals(rule)))
                .map(Started::info)
                .findFirst();
    }

    List<Importer> importers() {
        return all(Importer.class);
    }

    List<DocumentMaker> makers() {
        return all(DocumentMaker.class);
    }

    List<SettingsPage> pages() {
        return all(SettingsPage.class);
    }

    private <T> List<T> all(Class<T> kind) {
        List<T> found = new ArrayList<>();
        started.forEach(one -> one.brought().byId.values().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .forEach(found::add));
        return found;
    }
}
