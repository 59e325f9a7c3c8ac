package baywright.swing.survey;

import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Texts;
import baywright.swing.api.WorkbenchView;
import baywright.swing.drawing.FilmLegend;
import baywright.swing.drawing.FilmPainter;
import baywright.swing.drawing.VehicleView;
import baywright.swing.parts.Prose;
import baywright.swing.parts.WidePanel;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.ZoneFilm;
import baywright.workspace.ReadingsFile;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.io.File;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.TransferHandler;
import net.miginfocom.swing.MigLayout;

/** The drawing with the film of each zone, and beside it what is known of the chosen zone, the vehicle and the job. */
final class SurveyView implements WorkbenchView {

    private static final String PASTED = "clipboard";

    private final Desk desk;
    private final Texts texts;
    private final Edits edits;
    private final PhotoEdits photos;
    private final JPanel drawing = new JPanel(new BorderLayout());
    private final FilmLegend legend = new FilmLegend();
    private final JPanel nothingRead;
    private final ZonePanel zone;
    private final VehiclePanel vehicle;
    private final JobPanel job;
    private final JTabbedPane beside = new JTabbedPane();
    private final JSplitPane whole;
    private Optional<VehicleView> view = Optional.empty();
    private Optional<Surveyed> shown = Optional.empty();
    private Optional<FilmLimits> limits = Optional.empty();
    private String filmUnit = "";

    SurveyView(Desk desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
        edits = new Edits(desk, texts);
        photos = new PhotoEdits(edits);
        zone = new ZonePanel(edits, photos, this::chooseFile);
        vehicle = new VehiclePanel(edits, photos);
        job = new JobPanel(edits, () -> view.map(VehicleView::chosen).orElse(List.of()));
        nothingRead = hint();
        beside.addTab(texts.of("tab.zone"), scrolled(zone));
        beside.addTab(texts.of("tab.vehicle"), scrolled(vehicle));
        beside.addTab(texts.of("tab.job"), scrolled(job));
        JPanel left = new JPanel(new BorderLayout());
        left.add(nothingRead, BorderLayout.NORTH);
        left.add(drawing, BorderLayout.CENTER);
        left.add(legend, BorderLayout.SOUTH);
        whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, beside);
        whole.setResizeWeight(0.68);
        whole.setBorder(null);
        left.setMinimumSize(UIScale.scale(new Dimension(320, 240)));
        beside.setMinimumSize(UIScale.scale(new Dimension(280, 240)));
        beside.setPreferredSize(UIScale.scale(new Dimension(380, 600)));
        zone.readings()
                .field()
                .setTransferHandler(new Pasting(zone.readings().field().getTransferHandler()));
    }

    private JPanel hint() {
        JPanel hint = new JPanel(new MigLayout("insets 8 12 8 12", "[grow,fill,60::][]"));
        hint.setOpaque(false);
        Prose words = new Prose(texts.of("empty"));
        JButton bring = new JButton(texts.of("import.action"));
        bring.addActionListener(e -> chooseFile());
        hint.add(words, "wmin 0");
        hint.add(bring);
        return hint;
    }

    private static JScrollPane scrolled(JComponent inner) {
        JPanel wide = new WidePanel(new BorderLayout());
        wide.add(inner, BorderLayout.NORTH);
        JScrollPane scroll = new JScrollPane(wide);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(UIScale.scale(16));
        return scroll;
    }

    @Override
    public JComponent component() {
        return whole;
    }

    @Override
    public JComponent focus() {
        return view.map(v -> (JComponent) v).orElse(whole);
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                SuiteAction.of("import-readings", texts.of("import.action"), d -> chooseFile())
                        .withKey("menu shift I")
                        .when(state -> state.job().isPresent()),
                SuiteAction.of("add-photos", texts.of("photos.action"), d -> addPhotos())
                        .withKey("menu shift A")
                        .when(state -> state.job().isPresent()),
                SuiteAction.of("next-unread-zone", texts.of("next.action"), d -> nextUnread())
                        .withKey("menu shift N")
                        .when(state -> state.job().isPresent()));
    }

    ZonePanel zonePanel() {
        return zone;
    }

    VehiclePanel vehiclePanel() {
        return vehicle;
    }

    JobPanel jobPanel() {
        return job;
    }

    Optional<VehicleView> vehicleView() {
        return view;
    }

    boolean saysThatNothingIsRead() {
        return nothingRead.isVisible();
    }

    @Override
    public void show(Destination place) {
        String id = place.where().getOrDefault("zone", "");
        if (shown.filter(s -> s.vehicle().zone(id).isPresent()).isPresent()) {
            view.orElseThrow().choose(List.of(id));
            chosen(List.of(id));
        }
    }

    @Override
    public void show(DeskState state) {
        Optional<Surveyed> before = shown;
        shown = Surveyed.of(state);
        beside.setVisible(shown.isPresent());
        nothingRead.setVisible(shown.filter(s -> !s.hasReadings()).isPresent());
        shown.ifPresent(now -> {
            FilmPainter painter = new FilmPainter(now.films(), now.medians(), now.photos(), desk.readout());
            if (view.isEmpty()) {
                VehicleView made = new VehicleView(texts.of("drawing"), now.vehicle(), painter);
                made.onChoice(this::chosen);
                view = Optional.of(made);
                drawing.add(made);
            }
            VehicleView drawn = view.orElseThrow();
            drawn.show(now.vehicle(), painter);
            if (before.map(b -> !b.job().id().equals(now.job().id())).orElse(true)
                    || drawn.chosen().isEmpty()) {
                drawn.choose(List.of(now.vehicle().zones().get(0).id()));
            }
            if (!limits.equals(Optional.of(now.film().limits()))
                    || !filmUnit.equals(desk.readout().filmUnit())) {
                limits = Optional.of(now.film().limits());
                filmUnit = desk.readout().filmUnit();
                legend.show(now.film().limits(), desk.readout());
            }
            zone.show(now, drawn.chosen());
            vehicle.show(now);
            job.show(now);
            photos.show(now);
        });
        drawing.setVisible(shown.isPresent());
        legend.setVisible(shown.isPresent());
    }

    private void chosen(List<String> zones) {
        shown.filter(s -> !zones.isEmpty()).ifPresent(now -> {
            zone.show(now, zones);
            job.show(now);
            beside.setSelectedIndex(0);
        });
    }

    /** To the vehicle where its tab is shown or several zones are chosen, else to the zone. */
    private void addPhotos() {
        boolean one = view.filter(v -> v.chosen().size() == 1).isPresent();
        (beside.getSelectedIndex() == 0 && one ? zone.photos() : vehicle.photos()).choose();
    }

    /** Goes to the next zone in the vehicle's order that has fewer readings than it should. */
    private void nextUnread() {
        shown.ifPresent(now -> {
            List<ZoneFilm> films = now.film().zones();
            String from = view.orElseThrow().chosen().stream().findFirst().orElse("");
            int start = 0;
            for (int i = 0; i < films.size(); i++) {
                start = films.get(i).zone().equals(from) ? i + 1 : start;
            }
            for (int i = 0; i < films.size(); i++) {
                ZoneFilm film = films.get((start + i) % films.size());
                if (film.readable() && film.count() < film.wanted()) {
                    view.orElseThrow().choose(List.of(film.zone()));
                    chosen(List.of(film.zone()));
                    zone.readings().field().requestFocusInWindow();
                    return;
                }
            }
            desk.say(baywright.swing.api.Notice.done(texts.of("next.none")));
        });
    }

    // importing

    private void chooseFile() {
        shown.ifPresent(now -> {
            JFileChooser chooser = new JFileChooser();
            chooser.setDialogTitle(texts.of("import.title"));
            if (chooser.showOpenDialog(whole) == JFileChooser.APPROVE_OPTION) {
                File file = chooser.getSelectedFile();
                new ImportPanel(
                                edits,
                                now,
                                file.getName(),
                                form -> ReadingsFile.read(file.toPath(), form, now.vehicle()))
                        .open(whole);
            }
        });
    }

    /** Looks at a whole file that was pasted, before any of it is taken. */
    ImportPanel preview(String text) {
        Surveyed now = shown.orElseThrow();
        return new ImportPanel(
                edits, now, texts.of("import.pasted"), form -> ReadingsFile.ofText(PASTED, text, form, now.vehicle()));
    }

    /** Pastes numbers as numbers; a whole file with a header is looked at first. */
    private final class Pasting extends TransferHandler {

        private static final long serialVersionUID = 1L;

        private final transient TransferHandler usual;

        Pasting(TransferHandler usual) {
            this.usual = usual;
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                Object data = support.getTransferable().getTransferData(java.awt.datatransfer.DataFlavor.stringFlavor);
                if (data instanceof String text && TypedReadings.looksLikeFile(text)) {
                    preview(text).open(whole);
                    return true;
                }
            } catch (java.awt.datatransfer.UnsupportedFlavorException | java.io.IOException e) {
                return false;
            }
            return usual.importData(support);
        }

        @Override
        public boolean canImport(TransferSupport support) {
            return usual.canImport(support);
        }

        @Override
        public void exportToClipboard(JComponent c, java.awt.datatransfer.Clipboard clip, int action) {
            usual.exportToClipboard(c, clip, action);
        }
    }
}
