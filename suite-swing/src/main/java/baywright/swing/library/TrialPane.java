package baywright.swing.library;

import baywright.library.Fact;
import baywright.library.JobFactor;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Origin;
import baywright.plan.ExampleCheck;
import baywright.plan.FindingText;
import baywright.plan.StepWork;
import baywright.plan.Trail;
import baywright.quantity.Dimension;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.safety.Pictogram;
import baywright.script.Place;
import baywright.site.OpenShop;
import baywright.site.Trial;
import baywright.swing.api.Desk;
import baywright.swing.api.Readout;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.swing.parts.HazardSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import net.miginfocom.swing.MigLayout;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The trial bench: the stage being written, on a vehicle, with its inputs as controls and everything that comes of it. */
final class TrialPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int SIGN = 44;
    private static final int DIGITS = 3;

    private final transient Desk desk;
    private final transient Texts texts;
    private final transient Consumer<Place> go;
    private final JComboBox<Choice> shapes = new JComboBox<>();
    private final JComboBox<Choice> zones = new JComboBox<>();
    private final InputControls controls;
    private final JPanel figures =
            new JPanel(new MigLayout("insets 0, wrap 2, fillx", "[60:pref:108][grow, fill]", "[]2[]"));
    private final Prose message = new Prose("");
    private final SectionHeading heading = new SectionHeading("");
    private final JPanel setUp = new JPanel(new MigLayout("insets 0, wrap 2, fillx", "[][grow, fill]", "[]4[]"));
    private transient Optional<OpenShop> shop = Optional.empty();
    private transient Optional<Stage> stage = Optional.empty();
    private transient Optional<Trial> trial = Optional.empty();
    private transient Optional<TaskHandle> running = Optional.empty();
    private String wanted = "";
    private boolean filling;
    private boolean script;

    /** Something to choose: an id and words for people. */
    private record Choice(String id, String title) {
        @Override
        public String toString() {
            return title;
        }
    }

    TrialPane(Desk desk, Texts texts, Consumer<Place> go) {
        super(new MigLayout("insets 0, fill", "[grow, fill]", "[grow, fill]"));
        this.desk = desk;
        this.texts = texts;
        this.go = go;
        controls = new InputControls(texts, this::work);
        label(setUp, texts.of("trial.shape"), shapes);
        label(setUp, texts.of("trial.zones"), zones);
        shapes.addActionListener(e -> {
            if (!filling) {
                fillZones();
                work();
            }
        });
        zones.addActionListener(e -> {
            if (!filling) {
                work();
            }
        });
        ColumnPanel all =
                new ColumnPanel(new MigLayout("insets 8 12 12 12, wrap 1, fillx, hidemode 3", "[grow, fill]", "[]8[]"));
        all.add(heading, "wmin 0");
        all.add(message, "wmin 0");
        all.add(setUp, "wmin 0");
        all.add(controls, "wmin 0");
        all.add(figures, "wmin 0");
        add(all.scrolled());
    }

    private static void label(JPanel on, String text, JComboBox<Choice> combo) {
        JLabel label = new JLabel(text);
        label.setLabelFor(combo);
        on.add(label);
        on.add(combo, "wmin 0");
    }

    /** Tries a stage of the shop; an id that the library does not have yet shows why. */
    void show(OpenShop now, Optional<String> id, boolean anyScript) {
        boolean toldApart = script != anyScript;
        script = anyScript;
        boolean same = shop.map(s -> s.site()
                                        .library()
                                        .hash()
                                        .equals(now.site().library().hash())
                                && s.shop().equals(now.shop()))
                        .orElse(false)
                && id.orElse("").equals(wanted);
        boolean sound = shop.map(OpenShop::isSound).orElse(true) == now.isSound();
        shop = Optional.of(now);
        wanted = id.orElse("");
        if (same && sound && !toldApart) {
            return;
        }
        stage = id.map(i -> now.site().library().stageById().get(i));
        fillShapes(now);
        fillZones();
        work();
    }

    private void fillShapes(OpenShop now) {
        filling = true;
        List<Choice> all = now.site().workspace().shapes().stream()
                .map(s -> new Choice(s.id(), s.title()))
                .toList();
        fill(shapes, all, "saloon");
        filling = false;
    }

    private static void fill(JComboBox<Choice> combo, List<Choice> all, String first) {
        Object before = combo.getSelectedItem();
        List<Choice> had = new ArrayList<>();
        for (int i = 0; i < combo.getItemCount(); i++) {
            had.add(combo.getItemAt(i));
        }
        if (had.equals(all)) {
            return;
        }
        combo.removeAllItems();
        all.forEach(combo::addItem);
        if (before != null && all.contains(before)) {
            combo.setSelectedItem(before);
        } else {
            all.stream().filter(c -> c.id().equals(first)).findFirst().ifPresent(combo::setSelectedItem);
        }
    }

    private void fillZones() {
        filling = true;
        List<Choice> all = new ArrayList<>();
        if (stage.isPresent() && shape().isPresent()) {
            List<String> ids = ExampleCheck.zonesOf(stage.get(), shape().get());
            all.add(new Choice("", texts.of("trial.all-zones", ids.size())));
            Set<String> surfaces = new LinkedHashSet<>();
            List<Zone> works = shape().get().zones().stream()
                    .filter(z -> ids.contains(z.id()))
                    .toList();
            works.forEach(z -> surfaces.add(z.surface()));
            if (surfaces.size() > 1) {
                surfaces.forEach(s -> all.add(new Choice("surface:" + s, texts.of("trial.surface", s))));
            }
            works.forEach(z -> all.add(new Choice(z.id(), z.title())));
        }
        fill(zones, all, "");
        filling = false;
    }

    private Optional<Shape> shape() {
        return shop.flatMap(s -> s.site().workspace().shapes().stream()
                .filter(x -> shapes.getSelectedItem() instanceof Choice c && c.id().equals(x.id()))
                .findFirst());
    }

    private List<String> chosenZones(Shape shape) {
        String id = zones.getSelectedItem() instanceof Choice choice ? choice.id() : "";
        if (id.startsWith("surface:")) {
            List<String> works = ExampleCheck.zonesOf(stage.orElseThrow(), shape);
            return shape.zones().stream()
                    .filter(z -> works.contains(z.id()) && id.equals("surface:" + z.surface()))
                    .map(Zone::id)
                    .toList();
        }
        return id.isEmpty() ? List.of() : List.of(id);
    }

    InputControls controls() {
        return controls;
    }

    /** What came of the last trial. */
    Optional<Trial> trial() {
        return trial;
    }

    /** Chooses zones by the id of a zone, {@code surface:paint}, or the empty text for all. */
    void chooseZones(String id) {
        for (int i = 0; i < zones.getItemCount(); i++) {
            if (zones.getItemAt(i).id().equals(id)) {
                zones.setSelectedIndex(i);
            }
        }
    }

    private void work() {
        running.ifPresent(TaskHandle::cancel);
        if (stage.isEmpty() || shape().isEmpty()) {
            trial = Optional.empty();
            heading.setText("");
            say(
                    wanted.isEmpty()
                            ? texts.of(script ? "trial.no-stage" : "trial.choose")
                            : texts.of("trial.not-yet", wanted));
            setUp.setVisible(false);
            controls.setVisible(false);
            figures.setVisible(false);
            return;
        }
        Stage tried = stage.get();
        OpenShop now = shop.orElseThrow();
        Shape on = shape().get();
        heading.setText(tried.title());
        setUp.setVisible(true);
        controls.setVisible(true);
        controls.show(tried.id(), tried.inputs(), asked(now.site().library(), tried), counted(tried, on));
        Trial.On asked = new Trial.On(on, chosenZones(on), controls.with(), controls.facts(), controls.drivers());
        running = Optional.of(desk.run(new Task<>(
                texts.of("trial.task"),
                progress -> Trial.of(now.site().library(), tried.id(), asked, now.shop()),
                result -> {
                    trial = Optional.of(result);
                    fill(result, now);
                },
                fault -> {
                    trial = Optional.empty();
                    figures.setVisible(false);
                    say(texts.of("trial.failed", String.valueOf(fault.getMessage())));
                })));
    }

    private void say(String text) {
        message.setVisible(!text.isEmpty());
        message.setText(text);
    }

    /** Facts that the stage reads, or that a job factor reads which touches it. */
    private static List<Fact> asked(Library library, Stage stage) {
        StageTerms terms = stage.usualTerms();
        Set<String> ids = new TreeSet<>(terms.dependsOn());
        Stream<String> drivers = Stream.concat(
                terms.attended().stream().map(a -> a.per()),
                terms.uses().stream().map(u -> u.per()));
        List<String> per = drivers.distinct().toList();
        for (JobFactor factor : library.factors()) {
            if (per.stream().anyMatch(d -> factor.touches(stage.id(), stage.family(), d))) {
                ids.add(factor.fact());
            }
        }
        ids.remove("size");
        return library.facts().stream().filter(f -> ids.contains(f.id())).toList();
    }

    /** Drivers that no zone of the shape measures: things that a survey counts. */
    private static List<String> counted(Stage stage, Shape shape) {
        StageTerms terms = stage.usualTerms();
        return Stream.concat(
                        terms.attended().stream().map(a -> a.per()),
                        terms.uses().stream().map(u -> u.per()))
                .filter(d -> !d.equals("vehicle") && !d.equals("zone"))
                .filter(d -> shape.zones().stream().noneMatch(z -> z.measure(d).signum() != 0))
                .distinct()
                .toList();
    }

    // what came of it

    private void fill(Trial result, OpenShop now) {
        say(now.isSound() ? "" : texts.of("trial.last-good"));
        figures.removeAll();
        figures.setVisible(true);
        FindingText sentences =
                new FindingText(result.setting(), result.plan(), desk.readout().locale());
        result.faults().forEach(f -> {
            JLabel label = new JLabel(new SeveritySign(f.severity()));
            figures.add(label);
            figures.add(new Prose(sentences.of(f)), "wmin 0");
        });
        result.step().ifPresent(step -> {
            times(step);
            materials(result, step);
            film(step);
            dangers(result);
            states(result, step);
            cost(result);
        });
        figures.revalidate();
        figures.repaint();
    }

    private void section(String key) {
        figures.add(new SectionHeading(texts.of(key)), "span 2, gaptop 8, wmin 0");
    }

    private void threePoints() {
        figures.add(new TonedLabel(texts.of("trial.points"), "faint", "small"), "span 2, wmin 0");
    }

    /** A line of figures; {@code trail} has the lines of scripts behind it with words for each. */
    private void row(String name, String value, Map<String, Place> trail) {
        TonedLabel label = new TonedLabel(name, "faint");
        label.setToolTipText(name);
        figures.add(label, "wmin 0");
        LineButton[] button = new LineButton[1];
        button[0] = new LineButton(value, () -> trace(button[0], trail));
        button[0].setEnabled(!trail.isEmpty());
        button[0].setToolTipText(texts.of("trial.trace.of", value));
        button[0].getAccessibleContext().setAccessibleName(name + ": " + value);
        label.setLabelFor(button[0]);
        figures.add(button[0], "wmin 0");
    }

    private void trace(LineButton from, Map<String, Place> trail) {
        if (trail.size() == 1) {
            go.accept(trail.values().iterator().next());
            return;
        }
        JPopupMenu menu = new JPopupMenu();
        trail.forEach((words, place) -> {
            JMenuItem item = new JMenuItem();
            item.putClientProperty("html.disable", true);
            item.setText(words);
            item.addActionListener(e -> go.accept(place));
            menu.add(item);
        });
        menu.show(from, 0, from.getHeight());
    }

    private Readout readout() {
        return desk.readout();
    }

    private String points(ThreePoint minutes) {
        return Stream.of(minutes.least(), minutes.likely(), minutes.most())
                .map(readout()::minutes)
                .collect(Collectors.joining(" / "));
    }

    private void times(StepWork step) {
        section("trial.time");
        threePoints();
        Map<String, Place> lines = new LinkedHashMap<>();
        step.attended()
                .forEach(a -> lines.put(
                        texts.of(
                                        "trial.attended.line",
                                        points(a.minutes()),
                                        readout().number(a.trail().amount(), 2),
                                        a.trail().driver(),
                                        a.trail().place().line())
                                + factors(a.trail()),
                        a.trail().place()));
        row(texts.of("trial.attended"), points(step.attendedMinutes()), lines);
        if (step.setUpMinutes().signum() > 0) {
            row(
                    texts.of("trial.set-up"),
                    readout().minutes(step.setUpMinutes()),
                    places(step.setUps().stream().map(StepWork.SetUp::trail)));
        }
        if (!step.standing().isEmpty()) {
            String most = step.mostStanding().map(readout()::minutes).orElse(texts.of("trial.standing.open"));
            row(
                    texts.of("trial.standing"),
                    texts.of(
                            "trial.standing.value",
                            readout().minutes(step.leastStanding()),
                            readout().minutes(step.usualStanding()),
                            most),
                    places(step.standing().stream().map(StepWork.Standing::trail)));
        }
        row(
                texts.of("trial.elapsed"),
                texts.of(
                        "trial.elapsed.value",
                        readout().minutes(step.elapsedMinutes()),
                        step.crew().people()),
                step.crew()
                        .origin()
                        .map(o -> Map.of(line(o.place()), o.place()))
                        .orElse(Map.of()));
    }

    private String factors(Trail trail) {
        return trail.factors().stream()
                .map(f -> texts.of("trial.factor", f.factor(), readout().number(f.by(), 3)))
                .collect(Collectors.joining());
    }

    private Map<String, Place> places(Stream<Trail> trails) {
        Map<String, Place> places = new LinkedHashMap<>();
        trails.forEach(t -> places.put(line(t.place()), t.place()));
        return places;
    }

    private String line(Place place) {
        return texts.of("trial.line", place.file(), place.line());
    }

    private String amount(Quantity quantity) {
        return quantity.dimension() == Dimension.VOLUME
                ? readout().volume(quantity.inBase().movePointLeft(DIGITS))
                : readout().number(quantity.amount(), DIGITS) + " "
                        + texts.of("unit." + quantity.unit().symbol());
    }

    private void materials(Trial result, StepWork step) {
        if (step.uses().isEmpty()) {
            return;
        }
        section("trial.materials");
        step.items().forEach((id, sum) -> {
            Map<String, Place> lines = new LinkedHashMap<>();
            step.uses().stream()
                    .filter(u -> u.item().equals(id))
                    .forEach(u -> lines.put(
                            texts.of(
                                            "trial.use.line",
                                            amount(u.amount()),
                                            readout().number(u.trail().amount(), 2),
                                            u.trail().driver(),
                                            u.trail().place().line())
                                    + factors(u.trail()),
                            u.trail().place()));
            BigDecimal cost = result.ledger().lines(LineKind.MATERIAL_COST).stream()
                    .filter(l -> l.subject().equals(id))
                    .map(LedgerLine::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            String title = Optional.ofNullable(
                            result.setting().library().itemById().get(id))
                    .map(i -> i.title())
                    .orElse(id);
            row(title, texts.of("trial.use", amount(sum), money(result, cost)), lines);
        });
    }

    private String money(Trial result, BigDecimal amount) {
        CurrencyUnit currency = result.ledger().currency();
        Money rounded = BigMoney.of(currency, amount).toMoney(RoundingMode.HALF_UP);
        return readout().money(rounded);
    }

    private void film(StepWork step) {
        if (step.removals().isEmpty()) {
            return;
        }
        section("trial.film");
        threePoints();
        ThreePoint taken = step.zones().stream()
                .map(step::removalOf)
                .max(Comparator.comparing(ThreePoint::likely))
                .orElse(ThreePoint.ZERO);
        row(
                texts.of("trial.removes"),
                Stream.of(taken.least(), taken.likely(), taken.most())
                        .map(readout()::film)
                        .collect(Collectors.joining(" / ")),
                places(step.removals().stream().map(StepWork.Removal::trail)));
    }

    private void dangers(Trial result) {
        if (result.dangers().isEmpty()
                && result.risks().isEmpty()
                && result.protection().isEmpty()) {
            return;
        }
        section("trial.dangers");
        Set<Pictogram> signs = new TreeSet<>();
        result.dangers().forEach(d -> signs.addAll(d.label().pictograms()));
        if (!signs.isEmpty()) {
            JPanel row = new JPanel(new MigLayout("insets 0", "[]4[]"));
            row.setOpaque(false);
            for (Pictogram sign : signs) {
                JLabel label = new JLabel(sign.title(), new HazardSign(sign, SIGN), JLabel.LEADING);
                row.add(label);
            }
            figures.add(row, "span 2, wmin 0");
        }
        result.dangers()
                .forEach(d -> row(
                        d.item().title(),
                        texts.of(
                                "trial.danger." + d.label().signal().name().toLowerCase(Locale.ROOT),
                                String.join(", ", d.label().statements())),
                        Map.of(line(d.place()), d.place())));
        result.risks()
                .forEach(r -> row(
                        texts.of("trial.risk"),
                        r.kind() + r.level().map(q -> " " + amount(q)).orElse(""),
                        Map.of(line(r.origin().place()), r.origin().place())));
        if (!result.protection().isEmpty()) {
            figures.add(new TonedLabel(texts.of("trial.wear"), "faint"), "top");
            figures.add(new Prose(String.join(", ", result.protection())), "wmin 0");
        }
        figures.add(new Prose(texts.of("trial.caution")), "span 2, wmin 0");
    }

    private void states(Trial result, StepWork step) {
        section("trial.states");
        for (StepWork.Part part : step.parts()) {
            part.terms()
                    .needs()
                    .forEach(n -> row(
                            texts.of(n.absent() ? "trial.refuses" : "trial.needs"),
                            String.join(texts.of("trial.or"), n.anyOf()) + where(part.zones(), result),
                            Map.of(line(n.origin().place()), n.origin().place())));
        }
        for (Trial.Change change : result.changes()) {
            StageTerms.Effect effect = change.effect();
            String after = effect.after()
                    .map(q -> texts.of("trial.arrives", readout().minutes(q.inBase())))
                    .orElse("");
            String reach = effect.reach() == StageTerms.Reach.ZONE
                    ? where(change.zones(), result)
                    : texts.of("trial.reach." + effect.reach().name().toLowerCase(Locale.ROOT));
            row(
                    texts.of(effect.sets() ? "trial.sets" : "trial.clears"),
                    effect.state() + after + reach,
                    Map.of(line(effect.origin().place()), effect.origin().place()));
        }
    }

    private String where(List<String> on, Trial result) {
        if (on.size() == 1) {
            String title =
                    result.setting().shape().zone(on.get(0)).map(Zone::title).orElse(on.get(0));
            return texts.of("trial.on", title);
        }
        return texts.of("trial.on-zones", on.size());
    }

    private void cost(Trial result) {
        section("trial.cost");
        row(texts.of("trial.cost.shop"), money(result, result.cost()), lines(result, LineKind.Column.COST));
        row(texts.of("trial.cost.net"), money(result, result.net()), lines(result, LineKind.Column.PRICE));
    }

    /** The lines of the ledger that rest on a line of the script; the others rest on the shop's rates. */
    private Map<String, Place> lines(Trial result, LineKind.Column column) {
        Map<String, Place> lines = new LinkedHashMap<>();
        for (LedgerLine line : result.ledger().linesOf(Trial.STEP)) {
            if (line.kind().column() == column) {
                Place place = line.trail().stream()
                        .flatMap(o -> o instanceof Origin.Work work
                                ? Stream.of(work.trail().place())
                                : Stream.empty())
                        .findFirst()
                        .orElse(result.stage().place());
                lines.put(
                        texts.of(
                                "trial.ledger",
                                texts.of("ledger." + line.kind().name().toLowerCase(Locale.ROOT)),
                                line.subject(),
                                readout().number(line.quantity(), 3),
                                line.unit(),
                                readout().number(line.rate(), 4),
                                money(result, line.amount())),
                        place);
            }
        }
        return lines;
    }
}
