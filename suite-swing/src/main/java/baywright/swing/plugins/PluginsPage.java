package baywright.swing.plugins;

import baywright.swing.api.Colours;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.SettingsPage;
import baywright.swing.api.Task;
import baywright.swing.plugins.KnownPlugin.State;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The page on which plug-ins are switched on and off, and where it stands why one does not run. */
public final class PluginsPage implements SettingsPage {

    private final JarPlugins plugins;

    public PluginsPage(JarPlugins plugins) {
        this.plugins = plugins;
    }

    @Override
    public String id() {
        return "plug-ins";
    }

    @Override
    public String title() {
        return PluginTexts.of("page.title");
    }

    @Override
    public JComponent open(Desk desk) {
        JPanel page = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 12", "[grow, fill]"));
        fill(page, desk);
        return page;
    }

    private void fill(JPanel page, Desk desk) {
        page.removeAll();
        page.add(text(PluginTexts.of("page.about")), "wmin 0");
        List<KnownPlugin> known = plugins.known();
        if (known.isEmpty()) {
            page.add(new JLabel(PluginTexts.of("page.none")));
        }
        known.forEach(plugin -> page.add(row(plugin, page, desk), "wmin 0"));
        plugins.unusable().forEach(why -> page.add(text(why), "wmin 0"));
        page.revalidate();
        page.repaint();
    }

    private JComponent row(KnownPlugin plugin, JPanel page, Desk desk) {
        JPanel row = new JPanel(new MigLayout("insets 8 12 8 12, fillx, wrap 2, gapy 2", "[]12[grow, fill]"));
        row.putClientProperty("FlatLaf.style", "arc: 8");
        row.setBackground(Colours.of("tile"));
        JCheckBox runs = new JCheckBox();
        runs.setSelected(plugin.state() == State.RUNS);
        runs.setEnabled(plugin.state() != State.FAILED);
        runs.getAccessibleContext().setAccessibleName(PluginTexts.of("page.runs", plugin.title()));
        runs.addActionListener(e -> {
            runs.setEnabled(false);
            turn(plugin, runs.isSelected(), page, desk);
        });
        row.add(runs);
        row.add(plain(plugin.title() + " – " + PluginTexts.of("state." + plugin.state())), "wmin 0");
        row.add(text(plugin.why().isEmpty() ? plugin.jar().file().toString() : plugin.why()), "skip 1, wmin 0");
        return row;
    }

    /** Starting a plug-in waits for it, so that it happens off the event thread. */
    private void turn(KnownPlugin plugin, boolean on, JPanel page, Desk desk) {
        desk.run(new Task<>(
                PluginTexts.of(on ? "task.on" : "task.off", plugin.title()),
                progress -> {
                    if (plugin.id().isEmpty()) {
                        plugins.allow(plugin.jar(), on);
                    } else {
                        plugins.switchOff(plugin, !on);
                    }
                    return plugins.known();
                },
                known -> fill(page, desk),
                fault -> {
                    desk.say(Notice.failed(LoadedJar.reason(fault)));
                    fill(page, desk);
                }));
    }

    private static JLabel plain(String text) {
        JLabel label = new JLabel();
        label.putClientProperty("html.disable", true);
        label.setText(text);
        return label;
    }

    /** Sentences that wrap. */
    private static JTextArea text(String text) {
        JTextArea area = new JTextArea(text);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setFocusable(false);
        area.setOpaque(false);
        area.setBorder(null);
        area.setForeground(Colours.of("faint"));
        return area;
    }
}
