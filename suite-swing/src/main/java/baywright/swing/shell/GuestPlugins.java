package baywright.swing.shell;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;
import baywright.swing.api.Task;
import baywright.swing.api.Texts;
import baywright.swing.plugins.JarPlugins;
import baywright.swing.plugins.KnownPlugin;
import baywright.swing.plugins.PluginConsent;
import baywright.swing.plugins.PluginFolders;
import baywright.swing.plugins.PluginsPage;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Plug-ins that come as jars: looked for at the start and with each workspace, in the background. To be used on the event thread. */
final class GuestPlugins {

    private static final Texts TEXTS = Texts.beside(GuestPlugins.class, "texts");

    private final Desk desk;
    private final PluginHost host;
    private final Optional<Path> user;
    private final JarPlugins plugins;
    private final Set<KnownPlugin> told = new HashSet<>();

    /**
     * Looks for nothing yet.
     *
     * @param user     the user's own folder for plug-ins; empty: there is none
     * @param patience how long to wait for one
     */
    GuestPlugins(Desk desk, PluginHost host, Optional<Path> user, Duration patience) {
        this.desk = desk;
        this.host = host;
        this.user = user;
        this.plugins = new JarPlugins(
                new PluginConsent(desk.settings()), new Door(host), GuestPlugins.class.getClassLoader(), patience);
    }

    private record Door(PluginHost host) implements JarPlugins.Host {
        @Override
        public Optional<String> start(SuitePlugin plugin) {
            return host.start(plugin).map(PluginHost.Refused::why);
        }

        @Override
        public void drop(String id) {
            host.drop(id);
        }
    }

    /** Brings the page of the settings on which they are switched on and off. */
    SuitePlugin page() {
        return new SuitePlugin() {
            @Override
            public PluginInfo info() {
                return new PluginInfo("plug-ins", TEXTS.of("guests.title"), "1", ApiVersion.CURRENT);
            }

            @Override
            public void start(PluginContext suite) {
                suite.add(new PluginsPage(plugins));
            }
        };
    }

    /** Starts what lies in the user's folder and in that of a workspace, and tells of what does not run. */
    void look(Optional<Path> workspace) {
        PluginFolders folders = new PluginFolders(user, workspace.map(root -> root.resolve(PluginFolders.NAME)));
        desk.run(new Task<>(
                TEXTS.of("guests.looking"),
                progress -> {
                    plugins.look(folders);
                    return plugins.known();
                },
                this::tell,
                fault -> desk.say(Notice.failed(TEXTS.of("guests.failed", String.valueOf(fault.getMessage()))))));
    }

    /** Notes on the page of plug-ins what is wrong with a rule. */
    void note(String rule, String why) {
        host.ownerOfRule(rule).ifPresent(info -> plugins.note(info.id(), why));
    }

    /** Each matter once. */
    private void tell(List<KnownPlugin> known) {
        for (KnownPlugin plugin : known) {
            boolean matters = plugin.state() == KnownPlugin.State.FAILED || plugin.state() == KnownPlugin.State.ASKS;
            if (matters && told.add(plugin)) {
                desk.say(new Notice(Notice.Weight.WARN, plugin.why(), Optional.empty()));
            }
        }
    }
}
