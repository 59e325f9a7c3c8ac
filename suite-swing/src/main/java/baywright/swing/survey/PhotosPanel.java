package baywright.swing.survey;

import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.swing.parts.TonedLabel;
import baywright.workspace.JobPhoto;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import javax.swing.filechooser.FileNameExtensionFilter;
import net.miginfocom.swing.MigLayout;

/** Photos of a zone or of the whole vehicle: small pictures with their captions. Files can be dropped on it. */
final class PhotosPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient PhotoEdits edits;
    private final transient Texts texts;
    private final TonedLabel none;
    private final JPanel rows = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 8", "[grow,fill]"));
    private final transient Map<String, Row> byFile = new LinkedHashMap<>();
    private final transient Map<JobPhoto, Loaded> loaded = new HashMap<>();
    private transient Optional<Surveyed> shown = Optional.empty();
    private transient Optional<String> zone = Optional.empty();
    private transient List<JobPhoto> photos = List.of();
    private transient Optional<TaskHandle> loading = Optional.empty();
    private String whose = "";

    PhotosPanel(PhotoEdits edits, Texts texts) {
        super(new MigLayout("insets 0, wrap 1, gap 0 6, hidemode 3", "[grow,fill]"));
        this.edits = edits;
        this.texts = texts;
        setOpaque(false);
        rows.setOpaque(false);
        none = new TonedLabel(texts.of("photos.none"), "faint");
        none.setToolTipText(texts.of("photos.none"));
        JButton add = new JButton(texts.of("photos.add"));
        add.addActionListener(e -> choose());
        add(none, "wmin 0");
        add(rows);
        add(add, "growx 0");
        setTransferHandler(new Dropped());
    }

    /** Shows photos of a zone, or with an empty one those of the vehicle; {@code of} are those photos. */
    void show(Surveyed now, Optional<String> at, List<JobPhoto> of) {
        shown = Optional.of(now);
        zone = at;
        photos = List.copyOf(of);
        String place = now.shop().folder() + "/" + now.job().id() + "/" + at.orElse("");
        if (!place.equals(whose)) {
            whose = place;
            loading.ifPresent(TaskHandle::cancel);
            loading = Optional.empty();
            loaded.clear();
        }
        List<String> files = photos.stream().map(JobPhoto::file).toList();
        if (!files.equals(List.copyOf(byFile.keySet()))) {
            Map<String, Row> before = new HashMap<>(byFile);
            byFile.clear();
            rows.removeAll();
            for (String file : files) {
                Row row = before.getOrDefault(file, new Row());
                byFile.put(file, row);
                rows.add(row);
            }
        }
        photos.forEach(photo -> byFile.get(photo.file()).show(photo));
        none.setVisible(photos.isEmpty());
        rows.setVisible(!photos.isEmpty());
        load();
        revalidate();
        repaint();
    }

    private Loaded loaded(JobPhoto photo) {
        return loaded.getOrDefault(key(photo), Loaded.NOT_YET);
    }

    /** Captions change, pictures do not. */
    private static JobPhoto key(JobPhoto photo) {
        return new JobPhoto(photo.file(), "", Optional.empty(), Optional.empty());
    }

    private void load() {
        List<JobPhoto> missing = photos.stream()
                .map(PhotosPanel::key)
                .filter(p -> !loaded.containsKey(p))
                .toList();
        if (missing.isEmpty() || loading.filter(l -> !l.ended()).isPresent()) {
            return;
        }
        String asked = whose;
        loading = Optional.of(edits.load(shown.orElseThrow(), missing, PictureIcon.side(), got -> {
            if (asked.equals(whose)) {
                loaded.putAll(got);
                photos.forEach(photo -> byFile.get(photo.file()).show(photo));
                loading = Optional.empty();
                // Photos that were added meanwhile.
                load();
            }
        }));
    }

    // what the user does

    /** Asks for files. */
    void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(texts.of("photos.choose"));
        chooser.setMultiSelectionEnabled(true);
        chooser.setFileFilter(new FileNameExtensionFilter(texts.of("photos.kinds"), "jpg", "jpeg", "png"));
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            add(Arrays.stream(chooser.getSelectedFiles()).map(File::toPath).toList());
        }
    }

    void add(List<Path> files) {
        shown.ifPresent(now -> edits.add(now, zone, files));
    }

    List<Row> rows() {
        return List.copyOf(byFile.values());
    }

    boolean saysThatThereIsNone() {
        return none.isVisible();
    }

    /** The large view, from a photo on. */
    PhotoLarge large(JobPhoto from) {
        return new PhotoLarge(edits, texts, shown.orElseThrow(), photos, photos.indexOf(from));
    }

    /** One photo. */
    final class Row extends JPanel {

        private static final long serialVersionUID = 1L;

        private final JButton picture = new JButton();
        private final Entry caption;
        private final TonedLabel trouble = new TonedLabel("", "warn", "small");
        private final JButton away = new JButton("\u00D7");
        private transient Optional<JobPhoto> photo = Optional.empty();

        Row() {
            super(new MigLayout("insets 0, gap 8 2, hidemode 3", "[][grow,fill,60::][]", "[top]"));
            setOpaque(false);
            picture.putClientProperty("JButton.buttonType", "toolBarButton");
            picture.addActionListener(e -> photo.ifPresent(p -> large(p).open(PhotosPanel.this)));
            caption = new Entry(texts.of("photos.caption"), 1, words -> photo.ifPresent(p -> edits.caption(p, words)));
            away.putClientProperty("JButton.buttonType", "toolBarButton");
            away.addActionListener(e -> photo.ifPresent(edits::remove));
            add(picture, "spany 2");
            add(caption);
            add(away, "wrap");
            add(trouble, "skip 1, spanx 2, wmin 0");
        }

        void show(JobPhoto now) {
            photo = Optional.of(now);
            Loaded of = loaded(now);
            String name = name(now);
            picture.setIcon(new PictureIcon(of));
            picture.getAccessibleContext().setAccessibleName(texts.of("photos.open", name));
            picture.setToolTipText(Plain.text(texts.of("photos.open", name)));
            away.getAccessibleContext().setAccessibleName(texts.of("photos.remove", name));
            away.setToolTipText(Plain.text(texts.of("photos.remove", name)));
            caption.show(whose + "/" + now.file(), now.caption());
            trouble.setText(of.trouble());
            trouble.setToolTipText(of.isBroken() ? Plain.text(of.trouble()) : null);
            trouble.setVisible(of.isBroken());
        }

        JButton picture() {
            return picture;
        }

        Entry caption() {
            return caption;
        }

        JButton away() {
            return away;
        }

        /** What is said to be wrong with it; empty when nothing is. */
        String trouble() {
            return trouble.isVisible() ? trouble.getText() : "";
        }
    }

    /** How a photo is called: by its caption, else by its file. */
    static String name(JobPhoto photo) {
        return photo.caption().isBlank() ? photo.file() : photo.caption();
    }

    /** Takes files that are dropped on the panel. */
    private final class Dropped extends TransferHandler {

        private static final long serialVersionUID = 1L;

        @Override
        public boolean canImport(TransferSupport support) {
            return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                Object data = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
                List<Path> files = new ArrayList<>();
                if (data instanceof List<?> all) {
                    all.forEach(one -> {
                        if (one instanceof File file) {
                            files.add(file.toPath());
                        }
                    });
                }
                add(files);
                return !files.isEmpty();
            } catch (UnsupportedFlavorException | IOException e) {
                return false;
            }
        }
    }
}
