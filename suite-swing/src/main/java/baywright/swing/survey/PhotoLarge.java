package baywright.swing.survey;

import baywright.swing.api.Colours;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.swing.parts.TonedLabel;
import baywright.workspace.JobPhoto;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** One photo large; the arrow keys go to the next and the one before, Escape closes. */
final class PhotoLarge extends JPanel {

    private static final long serialVersionUID = 1L;

    /** Enough for a window on a large screen of twice the usual density. */
    private static final int SIDE = 2000;

    private static final Pattern BREAKS = Pattern.compile("(?<=[:;]) ");

    private final transient PhotoEdits edits;
    private final transient Texts texts;
    private final transient Surveyed of;
    private final transient List<JobPhoto> photos;
    private final Sheet sheet = new Sheet();
    private final JLabel caption = new JLabel();
    private final TonedLabel place = new TonedLabel("", "faint");
    private final JButton previous;
    private final JButton next;
    private transient Optional<TaskHandle> loading = Optional.empty();
    private transient Loaded loaded = Loaded.NOT_YET;
    private int at;

    PhotoLarge(PhotoEdits edits, Texts texts, Surveyed of, List<JobPhoto> photos, int from) {
        super(new MigLayout("insets 12, wrap 4, gap 8 8", "[grow,fill][][][]", "[grow,fill][]"));
        this.edits = edits;
        this.texts = texts;
        this.of = of;
        this.photos = List.copyOf(photos);
        at = Math.max(0, from);
        caption.putClientProperty("html.disable", true);
        previous = button("photos.previous", "LEFT", -1);
        next = button("photos.next", "RIGHT", 1);
        add(sheet, "span, grow, push");
        add(caption, "wmin 0");
        add(place);
        add(previous);
        add(next);
        show(0);
    }

    private JButton button(String key, String stroke, int by) {
        JButton button = new JButton(texts.of(key));
        button.addActionListener(e -> show(by));
        registerKeyboardAction(
                e -> show(by), KeyStroke.getKeyStroke(stroke), JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        return button;
    }

    /** Goes on by so many photos; at either end it stays. */
    void show(int by) {
        int to = Math.max(0, Math.min(photos.size() - 1, at + by));
        if (by != 0 && to == at) {
            return;
        }
        at = to;
        JobPhoto photo = photos.get(at);
        String name = PhotosPanel.name(photo);
        caption.setText(name);
        caption.setToolTipText(Plain.text(name));
        place.setText(texts.of("photos.place", at + 1, photos.size()));
        previous.setEnabled(at > 0);
        next.setEnabled(at < photos.size() - 1);
        put(Loaded.NOT_YET);
        loading.ifPresent(TaskHandle::cancel);
        loading = Optional.of(edits.load(of, List.of(photo), SIDE, got -> {
            if (photos.get(at).equals(photo)) {
                put(got.getOrDefault(photo, Loaded.NOT_YET));
            }
        }));
    }

    private void put(Loaded now) {
        loaded = now;
        String name = PhotosPanel.name(photos.get(at));
        sheet.getAccessibleContext().setAccessibleName(now.isBroken() ? name + ": " + now.trouble() : name);
        sheet.repaint();
    }

    String caption() {
        return caption.getText();
    }

    Loaded loaded() {
        return loaded;
    }

    /** Opens it over the window. */
    void open(Component over) {
        JDialog dialog = new JDialog(
                SwingUtilities.getWindowAncestor(over), texts.of("photos.title"), Dialog.ModalityType.DOCUMENT_MODAL);
        dialog.setContentPane(this);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setLocationRelativeTo(SwingUtilities.getWindowAncestor(over));
        sheet.requestFocusInWindow();
        dialog.setVisible(true);
        loading.ifPresent(TaskHandle::cancel);
    }

    /** The photo as large as there is room, or why there is none. */
    private final class Sheet extends JComponent {

        private static final long serialVersionUID = 1L;

        Sheet() {
            setFocusable(true);
            setPreferredSize(UIScale.scale(new Dimension(820, 560)));
        }

        @Override
        public javax.accessibility.AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new Described();
            }
            return accessibleContext;
        }

        private final class Described extends AccessibleJComponent {

            private static final long serialVersionUID = 1L;

            @Override
            public javax.accessibility.AccessibleRole getAccessibleRole() {
                return javax.accessibility.AccessibleRole.ICON;
            }
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setColor(Colours.of("tile"));
            g.fillRect(0, 0, getWidth(), getHeight());
            loaded.image()
                    .ifPresentOrElse(
                            image -> PictureIcon.fit(g, image, new Rectangle2D.Double(0, 0, getWidth(), getHeight())),
                            () -> say(g, loaded.isBroken() ? loaded.trouble() : texts.of("photos.loading")));
            g.dispose();
        }

        private void say(Graphics2D g, String words) {
            g.setFont(PhotoLarge.this.getFont());
            g.setColor(PhotoLarge.this.getForeground());
            Object hints = java.awt.Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints");
            if (hints instanceof java.util.Map<?, ?> all) {
                g.addRenderingHints(all);
            }
            int y = getHeight() / 2;
            // A path in the message may be longer than the sheet is wide.
            for (String line : BREAKS.splitAsStream(words).toList()) {
                g.drawString(line, UIScale.scale(16), y);
                y += g.getFontMetrics().getHeight();
            }
        }
    }
}
