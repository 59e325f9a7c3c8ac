package baywright.swing.survey;

import baywright.library.Fact;
import baywright.library.State;
import baywright.swing.api.Readout;
import baywright.swing.api.Texts;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.TonedLabel;
import baywright.vehicle.FilmStatistics;
import baywright.vehicle.PaintFacts;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneFilm;
import baywright.vehicle.ZoneSurvey;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What was found on the chosen zone, or on several of them at once. */
final class ZonePanel extends JPanel {

    private static final long serialVersionUID = 1L;

    /** Facts that are always asked of a painted zone. */
    private static final List<String> OF_PAINT = List.of(
            PaintFacts.PAINT, PaintFacts.REPAINT, PaintFacts.REPAINTED_DAYS, PaintFacts.TOPCOAT, PaintFacts.REMOVED);

    private static final Pattern PARTS = Pattern.compile("[,;\\n]");

    private final transient Edits edits;
    private final transient Texts texts;
    private final transient Readout readout;
    private final JLabel heading = new JLabel();
    private final TonedLabel kind = new TonedLabel("", "faint");
    private final JLabel figures = new JLabel();
    private final JLabel count = new JLabel();
    private final TonedLabel source = new TonedLabel("", "faint", "small");
    private final Entry readings;
    private final TonedLabel severalNote;
    private final JCheckBox unreadable;
    private final JCheckBox otherSubstrate;
    private final FactRows facts;
    private final PlainChoice moreFacts;
    private final StatesFound states;
    private final Entry counts;
    private final Entry notes;
    private final SectionHeading photosHeading;
    private final PhotosPanel photos;
    private transient Optional<Surveyed> shown = Optional.empty();
    private transient List<String> zones = List.of();
    private transient Set<String> asked = Set.of();

    ZonePanel(Edits edits, PhotoEdits photoEdits, Runnable importing) {
        super(new MigLayout("insets 12, wrap 1, gap 0 6, hidemode 3", "[grow,fill,220::]"));
        this.edits = edits;
        texts = edits.texts();
        readout = edits.desk().readout();
        heading.putClientProperty("html.disable", true);
        heading.putClientProperty("FlatLaf.styleClass", "h2");
        figures.putClientProperty("html.disable", true);
        figures.putClientProperty("FlatLaf.styleClass", "figure");
        count.putClientProperty("html.disable", true);
        readings = new Entry(texts.of("readings", readout.filmUnit()), 3, this::takeReadings);
        severalNote = new TonedLabel(texts.of("readings.several"), "faint");
        unreadable = new JCheckBox(texts.of("unreadable"));
        unreadable.addActionListener(e -> edits.zones(
                texts.of("unreadable.change", names()), zones, z -> z.withUnreadable(unreadable.isSelected())));
        otherSubstrate = new JCheckBox();
        otherSubstrate.addActionListener(e -> takeSubstrate(otherSubstrate.isSelected()));
        facts = new FactRows(
                texts,
                (fact, value) -> edits.zones(
                        texts.of("fact.change", FactRows.title(fact), names()),
                        zones,
                        z -> z.withFact(fact.id(), value)));
        moreFacts = new PlainChoice(texts.of("facts.more"), this::askFact);
        states = new StatesFound(
                texts, found -> edits.zones(texts.of("states.change", names()), zones, z -> z.withStates(found)));
        counts = new Entry(texts.of("counts"), 1, this::takeCounts);
        notes = new Entry(
                texts.of("notes"),
                3,
                text -> edits.zones(texts.of("notes.change", names()), zones, z -> z.withNotes(lines(text))));
        photos = new PhotosPanel(photoEdits, texts);
        photosHeading = new SectionHeading(texts.of("photos.zone"), photos);
        JButton bring = new JButton(texts.of("import.action"));
        bring.addActionListener(e -> importing.run());
        readings.field().setToolTipText(texts.of("readings.hint"));

        add(heading, "wmin 0");
        add(kind, "wmin 0");
        add(figures, "wmin 0, gaptop 6");
        add(count, "wmin 0");
        add(source, "wmin 0");
        add(readings);
        add(severalNote, "wmin 0");
        add(unreadable, "split 2, growx 0");
        add(bring, "growx 0, gapleft push");
        add(new SectionHeading(texts.of("facts.zone")), "gaptop 12");
        add(otherSubstrate, "growx 0");
        add(facts);
        add(moreFacts, "wmin 60");
        add(new SectionHeading(texts.of("states.zone"), states), "gaptop 12");
        add(states);
        add(counts, "gaptop 12");
        add(notes, "gaptop 6");
        add(photosHeading, "gaptop 12");
        add(photos);
    }

    Entry readings() {
        return readings;
    }

    Entry counts() {
        return counts;
    }

    Entry notes() {
        return notes;
    }

    PhotosPanel photos() {
        return photos;
    }

    FactRows facts() {
        return facts;
    }

    StatesFound states() {
        return states;
    }

    JCheckBox unreadable() {
        return unreadable;
    }

    /** Shows zones of the vehicle, at least one. */
    void show(Surveyed now, List<String> chosen) {
        shown = Optional.of(now);
        if (!zones.equals(chosen)) {
            asked = Set.of();
        }
        zones = List.copyOf(chosen);
        Zone first = now.vehicle().zone(zones.get(0)).orElseThrow();
        ZoneSurvey found = now.found(first.id());
        boolean one = zones.size() == 1;
        String whose = now.job().id() + "/" + String.join(",", zones);
        heading.setText(one ? first.title() : texts.of("zones.several", zones.size()));
        kind.setText(
                one
                        ? first.surface().replace('-', ' ')
                                + (first.substrate().isEmpty() ? "" : " · " + first.substrate())
                        : names());
        kind.setToolTipText(one ? null : Plain.text(names()));
        showFilm(now, first.id(), one);
        readings.setVisible(one);
        severalNote.setVisible(!one);
        readings.show(whose, typed().shown(found.readings()));
        unreadable.setSelected(found.unreadable());
        showSubstrate(now, first, one);
        Map<String, String> otherwise = new HashMap<>(now.job().survey().facts());
        facts.show(whose, factsFor(now, found, first.surface()), found.facts(), otherwise, "fact.vehicle");
        offerFacts(now, found, first.surface());
        List<State> may = now.library().states().stream()
                .filter(s -> s.scope() == State.Scope.ZONE && s.madeOf().isEmpty())
                .toList();
        states.show(found.states(), may, now.library().stateById());
        counts.show(whose, counted(found));
        notes.show(whose, String.join("\n", found.notes()));
        photosHeading.setVisible(one);
        photos.setVisible(one);
        photos.show(now, Optional.of(first.id()), one ? now.photosAt(first.id()) : List.of());
    }

    private void showFilm(Surveyed now, String zone, boolean one) {
        Optional<ZoneFilm> film = now.film().zone(zone).filter(f -> one);
        figures.setVisible(film.isPresent());
        count.setVisible(film.flatMap(ZoneFilm::statistics).isPresent());
        source.setVisible(film.flatMap(ZoneFilm::statistics).isPresent());
        film.ifPresent(f -> {
            String budget = f.budget()
                    .map(b -> texts.of("film.budget", readout.film(b)))
                    .orElseGet(() -> texts.of("film.nobudget"));
            figures.setText(
                    f.count() == 0
                            ? texts.of("film.unread", f.wanted())
                            : texts.of(
                                    "film.figures",
                                    readout.film(f.lowest().orElseThrow()),
                                    readout.film(FilmStatistics.median(
                                            now.found(zone).readings()))));
            count.setText(texts.of("film.count", f.count(), f.wanted(), budget));
            source.setText(f.statistics()
                    .map(s -> texts.of("film.source", s.lowest().source()))
                    .orElse(""));
        });
    }

    // readings

    private TypedReadings typed() {
        return new TypedReadings(readout, texts);
    }

    private void takeReadings(String text) {
        if (zones.size() == 1) {
            edits.zones(
                    texts.of("readings.change", names()), zones, z -> z.withReadings(typed().read(text, z.readings())));
        }
    }

    // substrate

    /** Whether a panel of this vehicle is of aluminium instead: the repair that is met most. */
    private void showSubstrate(Surveyed now, Zone zone, boolean one) {
        String other = zone.substrate().equals("aluminium") ? "steel" : "aluminium";
        boolean metal = zone.substrate().equals("steel") || zone.substrate().equals("aluminium");
        otherSubstrate.setVisible(one && metal);
        otherSubstrate.setSelected(false);
        otherSubstrate.setText(texts.of("substrate.is", other));
        Job.ZoneChange change = now.job().vehicle().zones().get(zone.id());
        if (change != null && change.substrate().isPresent()) {
            otherSubstrate.setSelected(true);
            otherSubstrate.setText(texts.of("substrate.is", zone.substrate()));
        }
    }

    private void takeSubstrate(boolean other) {
        Surveyed now = shown.orElseThrow();
        Zone zone = now.vehicle().zone(zones.get(0)).orElseThrow();
        Map<String, Job.ZoneChange> all = new HashMap<>(now.job().vehicle().zones());
        Job.ZoneChange before =
                all.getOrDefault(zone.id(), new Job.ZoneChange(Optional.empty(), Optional.empty(), Map.of()));
        Optional<String> substrate =
                other ? Optional.of(zone.substrate().equals("aluminium") ? "steel" : "aluminium") : Optional.empty();
        Job.ZoneChange change = new Job.ZoneChange(before.surface(), substrate, before.measures());
        if (change.surface().isEmpty()
                && change.substrate().isEmpty()
                && change.measures().isEmpty()) {
            all.remove(zone.id());
        } else {
            all.put(zone.id(), change);
        }
        Job.Vehicle vehicle = now.job().vehicle();
        edits.values(
                texts.of("substrate.change", names()),
                job -> job.vehicle(
                        new Job.Vehicle(vehicle.shape(), vehicle.description(), vehicle.colour(), vehicle.vin(), all)));
    }

    // facts

    private List<Fact> factsFor(Surveyed now, ZoneSurvey found, String surface) {
        return now.library().facts().stream()
                .filter(f -> found.facts().containsKey(f.id())
                        || asked.contains(f.id())
                        || (surface.equals("paint") && OF_PAINT.contains(f.id())))
                .toList();
    }

    private void offerFacts(Surveyed now, ZoneSurvey found, String surface) {
        List<Fact> shownAlready = factsFor(now, found, surface);
        moreFacts.offer(now.library().facts().stream()
                .filter(f -> !shownAlready.contains(f))
                .map(f -> new PlainChoice.Item(f.id(), FactRows.title(f) + " – " + f.means()))
                .toList());
    }

    private void askFact(String fact) {
        asked = new java.util.HashSet<>(asked);
        asked.add(fact);
        shown.ifPresent(now -> show(now, zones));
    }

    // counted things

    private static String counted(ZoneSurvey found) {
        return new TreeMap<>(found.counts())
                .entrySet().stream()
                        .map(c -> c.getKey() + " " + c.getValue().toPlainString())
                        .collect(Collectors.joining(", "));
    }

    private void takeCounts(String text) {
        Map<String, BigDecimal> all = new HashMap<>();
        for (String bare : PARTS.splitAsStream(text).map(String::strip).toList()) {
            if (!bare.isEmpty()) {
                if (!bare.matches("[a-z0-9]+(-[a-z0-9]+)* [0-9]{1,6}(\\.[0-9]{1,3})?")) {
                    throw new IllegalArgumentException(texts.of("counts.wrong", bare));
                }
                int blank = bare.lastIndexOf(' ');
                all.put(bare.substring(0, blank), new BigDecimal(bare.substring(blank + 1)));
            }
        }
        edits.zones(texts.of("counts.change", names()), zones, z -> z.withCounts(all));
    }

    static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        text.lines().map(String::strip).filter(l -> !l.isEmpty()).forEach(lines::add);
        return lines;
    }

    private String names() {
        return shown.map(now -> zones.stream()
                        .map(z -> now.vehicle().zone(z).map(Zone::title).orElse(z))
                        .limit(4)
                        .collect(Collectors.joining(", ", "", zones.size() > 4 ? " …" : "")))
                .orElse("");
    }
}
