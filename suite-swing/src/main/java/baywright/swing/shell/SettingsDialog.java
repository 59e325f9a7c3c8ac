package baywright.swing.shell;

import baywright.swing.api.Desk;
import baywright.swing.api.Settings;
import baywright.swing.api.SettingsPage;
import baywright.swing.api.Texts;
import java.awt.Dimension;
import java.awt.Window;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;

/** The settings, a page each. What is set takes effect at once. */
final class SettingsDialog extends JDialog {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts = Texts.beside(SettingsDialog.class, "texts");

    /** @param changed told when amounts are to be written another way */
    SettingsDialog(Window owner, Desk desk, Appearance appearance, List<SettingsPage> more, Runnable changed) {
        super(owner, ModalityType.APPLICATION_MODAL);
        setTitle(texts.of("settings.title"));
        JTabbedPane pages = new JTabbedPane(JTabbedPane.LEFT);
        pages.getAccessibleContext().setAccessibleName(texts.of("settings.title"));
        pages.addTab(texts.of("settings.look"), page(look(appearance)));
        pages.addTab(texts.of("settings.units"), page(units(desk.settings(), changed)));
        for (SettingsPage page : more) {
            pages.addTab(page.title(), page(page.open(desk)));
        }
        add(pages);
        getRootPane()
                .registerKeyboardAction(
                        e -> dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        pack();
        Dimension size = getSize();
        setSize(Math.max(size.width, 560), Math.max(size.height, 360));
        setLocationRelativeTo(owner);
    }

    private static JComponent page(JComponent content) {
        JScrollPane scroll = new JScrollPane(content);
        scroll.setBorder(null);
        return scroll;
    }

    private JComponent look(Appearance appearance) {
        JPanel page = new JPanel(new MigLayout("insets 16, wrap 1", "[grow, fill]", "[]rel[]unrel[]rel[]"));
        page.add(choices(
                "settings.look", List.of("light", "dark", Appearance.SYSTEM), appearance.chosen(), appearance::choose));
        JLabel label = new JLabel(texts.of("settings.zoom"));
        JSpinner zoom = new JSpinner(new SpinnerNumberModel(appearance.zoom(), Look.LEAST_ZOOM, Look.MOST_ZOOM, 5));
        label.setLabelFor(zoom);
        zoom.addChangeListener(e -> {
            appearance.zoom((Integer) zoom.getValue());
            pack();
        });
        page.add(label);
        page.add(zoom, "growx 0, w 90");
        return page;
    }

    private JComponent units(Settings settings, Runnable changed) {
        JPanel page = new JPanel(new MigLayout("insets 16, wrap 1", "[grow, fill]", "[]unrel[]unrel[]"));
        page.add(unit(settings, UserReadout.FILM, "settings.film", List.of("micrometre", "mil"), changed));
        page.add(unit(settings, UserReadout.VOLUME, "settings.volume", List.of("litre", "gallon"), changed));
        page.add(unit(
                settings, UserReadout.TEMPERATURE, "settings.temperature", List.of("celsius", "fahrenheit"), changed));
        return page;
    }

    private JComponent unit(Settings settings, String key, String text, List<String> units, Runnable changed) {
        return choices(text, units, settings.get(key).orElse(units.get(0)), unit -> {
            settings.put(key, unit);
            changed.run();
        });
    }

    private JComponent choices(String key, List<String> values, String chosen, Consumer<String> choose) {
        JPanel panel = new JPanel(new MigLayout("insets 0"));
        JLabel label = new JLabel(texts.of(key));
        panel.add(label, "wrap");
        ButtonGroup group = new ButtonGroup();
        for (String value : values) {
            JRadioButton button = new JRadioButton(texts.of(key + "." + value), value.equals(chosen));
            button.getAccessibleContext().setAccessibleName(label.getText() + ": " + button.getText());
            button.addActionListener(e -> choose.accept(value));
            group.add(button);
            panel.add(button, "split " + values.size());
        }
        return panel;
    }
}
