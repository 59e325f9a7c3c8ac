package baywright.swing;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** The window: a strip with the shop's name, and below it the start page, the open workspace, or why it did not open. */
final class MainWindow extends JFrame {

    private static final long serialVersionUID = 1L;

    private final transient ShopReader reader;
    private final JLabel shopName = strip(new JLabel(Words.of("strip.none")));
    private final CardLayout cards = new CardLayout();
    private final JPanel content = new JPanel(cards);
    private final ShopPage shopPage = new ShopPage();
    private final JLabel loading = new JLabel();
    private final TroublePage trouble;
    private final transient Action open = action("strip.open", this::chooseWorkspace);
    private final JButton look = new JButton();

    /**
     * Makes the window without showing it.
     *
     * @param reader reads a workspace off the event thread
     */
    MainWindow(ShopReader reader) {
        super(Words.of("window.title"));
        this.reader = reader;
        this.trouble = new TroublePage(open);
        setDefaultCloseOperation(EXIT_ON_CLOSE);
        content.add(new StartPage(open), "start");
        content.add(centred(loading), "loading");
        content.add(trouble, "trouble");
        content.add(shopPage, "shop");
        add(head(), BorderLayout.NORTH);
        add(content);
        int menu = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
        onKey(KeyStroke.getKeyStroke(KeyEvent.VK_O, menu), "open", open);
        onKey(KeyStroke.getKeyStroke(KeyEvent.VK_L, menu), "look", action("strip.look.name", this::switchLook));
        nameLook();
        setSize(UIScale.scale(new Dimension(1280, 800)));
        setMinimumSize(UIScale.scale(new Dimension(760, 480)));
        setLocationByPlatform(true);
    }

    /** Reads a workspace in the background and shows it, or why it cannot be shown. */
    void open(Path workspace) {
        loading.setText(Words.of("loading", workspace));
        cards.show(content, "loading");
        Background.run(() -> reader.read(workspace), shop -> show(shop), fault -> showTrouble(workspace, fault));
    }

    ShopPage shopPage() {
        return shopPage;
    }

    void show(ShopView shop) {
        shopName.setText(shop.name());
        setTitle(Words.of("window.title.open", shop.name()));
        shopPage.show(shop);
        cards.show(content, "shop");
    }

    private void showTrouble(Path workspace, Throwable fault) {
        shopName.setText(Words.of("strip.none"));
        setTitle(Words.of("window.title"));
        trouble.show(Words.of("failed.heading", workspace), String.valueOf(fault.getMessage()));
        cards.show(content, "trouble");
    }

    private void chooseWorkspace() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(Words.of("chooser.title"));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            open(chooser.getSelectedFile().toPath());
        }
    }

    void switchLook() {
        Look.current().other().apply();
        nameLook();
    }

    private void nameLook() {
        look.setText(Words.of(Look.current() == Look.DARK ? "strip.look.light" : "strip.look.dark"));
    }

    private JComponent head() {
        JPanel head = new JPanel(new MigLayout("insets 8 16 8 16", "[grow, fill]unrel[]rel[]")) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getBackground() {
                return Look.colour("strip");
            }
        };
        shopName.putClientProperty("FlatLaf.styleClass", "h2");
        look.addActionListener(e -> switchLook());
        look.getAccessibleContext().setAccessibleName(Words.of("strip.look.name"));
        head.add(shopName, "wmin 0");
        head.add(new JButton(open));
        head.add(look);
        return head;
    }

    private static JLabel strip(JLabel label) {
        return new JLabel(label.getText()) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getForeground() {
                return Look.colour("strip.ink");
            }
        };
    }

    private static JComponent centred(JComponent content) {
        JPanel panel = new JPanel(new MigLayout("fill"));
        panel.add(content, "center");
        return panel;
    }

    private void onKey(KeyStroke key, String name, Action action) {
        getRootPane().getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(key, name);
        getRootPane().getActionMap().put(name, action);
    }

    private static Action action(String key, Runnable does) {
        return new AbstractAction(Words.of(key)) {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                does.run();
            }
        };
    }
}
