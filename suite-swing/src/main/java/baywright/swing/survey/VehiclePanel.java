package baywright.swing.survey;

import baywright.library.State;
import baywright.swing.api.Texts;
import baywright.swing.parts.SectionHeading;
import baywright.vehicle.Shape;
import baywright.vehicle.Vin;
import baywright.workspace.Job;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The vehicle as a whole: its shape, how it is known, and what was found on all of it. */
final class VehiclePanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Edits edits;
    private final transient Texts texts;
    private final JComboBox<String> shape = new JComboBox<>();
    private final Entry description;
    private final Entry colour;
    private final Entry vin;
    private final Entry vehicles;
    private final JLabel vinNote = new JLabel();
    private final FactRows facts;
    private final StatesFound states;
    private final PhotosPanel photos;
    private transient List<Shape> shapes = List.of();
    private boolean showing;

    VehiclePanel(Edits edits, PhotoEdits photoEdits) {
        super(new MigLayout("insets 12, wrap 1, gap 0 6, hidemode 3", "[grow,fill,220::]"));
        this.edits = edits;
        texts = edits.texts();
        JLabel shapeLabel = new JLabel(texts.of("shape"));
        shapeLabel.setLabelFor(shape);
        shape.addActionListener(e -> {
            if (!showing && shape.getSelectedIndex() >= 0) {
                takeShape(shapes.get(shape.getSelectedIndex()).id());
            }
        });
        description = new Entry(
                texts.of("description"),
                1,
                text -> vehicle(texts.of("description.change"), v -> with(v, text.strip(), v.colour(), v.vin())));
        colour = new Entry(
                texts.of("colour"),
                1,
                text -> vehicle(texts.of("colour.change"), v -> with(v, v.description(), text.strip(), v.vin())));
        vin = new Entry(texts.of("vin"), 1, this::takeVin);
        vinNote.putClientProperty("html.disable", true);
        vinNote.putClientProperty("FlatLaf.styleClass", "small");
        vehicles = new Entry(texts.of("vehicles"), 1, this::takeVehicles);
        facts = new FactRows(
                texts,
                (fact, value) -> edits.survey(
                        texts.of("fact.change", FactRows.title(fact), texts.of("vehicle.whole")),
                        survey -> survey.withFact(fact.id(), value)));
        states = new StatesFound(
                texts,
                found -> edits.survey(
                        texts.of("states.change", texts.of("vehicle.whole")), survey -> survey.withStates(found)));
        photos = new PhotosPanel(photoEdits, texts);
        add(shapeLabel);
        add(shape, "wmin 60");
        add(description);
        add(colour);
        add(vin);
        add(vinNote, "wmin 0");
        add(vehicles);
        add(new SectionHeading(texts.of("facts.vehicle")), "gaptop 12");
        add(facts);
        add(new SectionHeading(texts.of("states.vehicle"), states), "gaptop 12");
        add(states);
        add(new SectionHeading(texts.of("photos.vehicle"), photos), "gaptop 12");
        add(photos);
    }

    Entry vin() {
        return vin;
    }

    Entry vehicles() {
        return vehicles;
    }

    FactRows facts() {
        return facts;
    }

    StatesFound states() {
        return states;
    }

    PhotosPanel photos() {
        return photos;
    }

    String vinNote() {
        return vinNote.isVisible() ? vinNote.getText() : "";
    }

    void show(Surveyed now) {
        showing = true;
        Job job = now.job();
        List<Shape> all = now.shop().site().workspace().shapes();
        if (!all.equals(shapes)) {
            shapes = List.copyOf(all);
            shape.removeAllItems();
            shapes.forEach(s -> shape.addItem(Plain.text(s.title())));
        }
        for (int i = 0; i < shapes.size(); i++) {
            if (shapes.get(i).id().equals(job.vehicle().shape())) {
                shape.setSelectedIndex(i);
            }
        }
        showing = false;
        description.show(job.id(), job.vehicle().description());
        colour.show(job.id(), job.vehicle().colour());
        vin.show(job.id(), job.vehicle().vin().map(Vin::text).orElse(""));
        Optional<Vin> odd = job.vehicle().vin().filter(v -> !v.checkDigitFits());
        vinNote.setVisible(odd.isPresent());
        odd.ifPresent(v -> vinNote.setText(texts.of("vin.check", v.expectedCheckDigit())));
        vehicles.show(job.id(), Integer.toString(job.vehicles()));
        facts.show(job.id(), now.library().facts(), job.survey().facts(), Map.of(), "fact.usual");
        List<State> may = now.library().states().stream()
                .filter(s -> s.scope() != State.Scope.CONDITION && s.madeOf().isEmpty())
                .toList();
        states.show(job.survey().states(), may, now.library().stateById());
        photos.show(now, Optional.empty(), now.photosOfTheWhole());
    }

    private void vehicle(String title, java.util.function.UnaryOperator<Job.Vehicle> change) {
        edits.job(
                title,
                job -> baywright.workspace.JobEdit.of(job)
                        .vehicle(change.apply(job.vehicle()))
                        .job());
    }

    private static Job.Vehicle with(Job.Vehicle v, String description, String colour, Optional<Vin> vin) {
        return new Job.Vehicle(v.shape(), description, colour, vin, v.zones());
    }

    /** Findings on zones that the other shape has not would keep the job from being read: they stay out of it, undo brings them back. */
    private void takeShape(String id) {
        edits.job(
                texts.of("shape.change"),
                job -> job.vehicle().shape().equals(id)
                        ? job
                        : baywright.workspace.JobEdit.onShape(
                                job,
                                shapes.stream()
                                        .filter(s -> s.id().equals(id))
                                        .findFirst()
                                        .orElseThrow()));
    }

    private void takeVin(String text) {
        String bare = text.strip().toUpperCase(java.util.Locale.ROOT);
        try {
            Optional<Vin> number = bare.isEmpty() ? Optional.empty() : Optional.of(new Vin(bare));
            vehicle(texts.of("vin.change"), v -> with(v, v.description(), v.colour(), number));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(texts.of("vin.wrong", String.valueOf(e.getMessage())), e);
        }
    }

    private void takeVehicles(String text) {
        String bare = text.strip();
        if (!bare.matches("[0-9]{1,4}")) {
            throw new IllegalArgumentException(texts.of("vehicles.wrong", bare));
        }
        edits.values(texts.of("vehicles.change"), job -> job.vehicles(Integer.parseInt(bare)));
    }
}
