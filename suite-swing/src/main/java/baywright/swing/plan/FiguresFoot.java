package baywright.swing.plan;

import baywright.money.CapFit;
import baywright.plan.FilmBudget.Verdict;
import baywright.plan.FilmBudget.ZoneBudget;
import baywright.plan.Severity;
import baywright.swing.api.Desk;
import baywright.swing.api.Readout;
import baywright.swing.parts.FigureTile;
import baywright.swing.parts.HazardSigns;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import baywright.swing.parts.TrailLine;
import baywright.swing.parts.TrailPopup;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Film, hazards, exposure, time and price of the plan, always in sight. Each shows what it comes from. */
final class FiguresFoot extends JPanel {

    private static final long serialVersionUID = 1L;

    /** Side of a pictogram: as much as a figure is high. */
    private static final int SIGN = 26;

    private final transient Desk desk;
    private final Tile film = new Tile("foot.film", (figures, trails) -> trails.film(figures.film()));
    private final Tile hazards = new Tile("foot.hazards", (figures, trails) -> trails.hazards(figures.hazards()));
    private final Tile exposure = new Tile("foot.exposure", (figures, trails) -> trails.doses());
    private final Tile time = new Tile("foot.time", (figures, trails) -> trails.time());
    private final Tile price = new Tile("foot.price", (figures, trails) -> trails.price());
    private transient Optional<PlanFigures> shown = Optional.empty();

    FiguresFoot(Desk desk) {
        super(new MigLayout(
                "insets 8, gap 8",
                "[grow, fill, sg][grow, fill, sg][grow, fill, sg][grow, fill, sg][grow, fill, sg]",
                "[fill]"));
        this.desk = desk;
        getAccessibleContext().setAccessibleName(Words.of("foot.name"));
        List.of(film, hazards, exposure, time, price).forEach(tile -> add(tile.tile, "wmin 0"));
        show(Optional.empty());
    }

    /** Asks a plan where a figure comes from. */
    private interface Source {
        List<TrailLine> lines(PlanFigures figures, Trails trails);
    }

    /** A figure with a line below it. */
    private final class Tile {

        private final String key;
        private final Source source;
        private final FigureTile tile;
        private final JLabel below = new TonedLabel("", "faint", "small");

        Tile(String key, Source source) {
            this.key = key;
            this.source = source;
            tile = new FigureTile(Words.of(key));
            tile.add(below, "wmin 0");
            tile.onTrace(Words.of("foot.trace"), this::trace);
        }

        void say(String figure, String more, Optional<Severity> grave) {
            tile.say(figure);
            below.setText(more);
            below.setIcon(grave.<Icon>map(SeveritySign::new).orElse(null));
            tile.getAccessibleContext()
                    .setAccessibleName(Words.of(key) + ": " + figure + (more.isEmpty() ? "" : ", " + more));
        }

        void say(HazardSigns signs, String more) {
            String words = Words.capital(signs.words());
            say(words, more, Optional.empty());
            String name = tile.getAccessibleContext().getAccessibleName();
            tile.say(signs, words);
            tile.getAccessibleContext().setAccessibleName(name);
        }

        List<TrailLine> lines() {
            return shown.map(f -> source.lines(f, new Trails(f.worked(), desk.readout())))
                    .orElse(List.of());
        }

        private void trace() {
            List<TrailLine> lines = lines();
            if (!lines.isEmpty()) {
                TrailPopup.show(tile, Words.of(key), lines, desk::go);
            }
        }
    }

    /** Shows the figures of a plan; empty: nothing is known yet. */
    void show(Optional<PlanFigures> figures) {
        shown = figures;
        Readout readout = desk.readout();
        String none = Words.of("foot.none");
        if (figures.isEmpty() || figures.get().worked().job().plan().steps().isEmpty()) {
            List.of(film, hazards, exposure, time, price).forEach(tile -> tile.say(none, " ", Optional.empty()));
            return;
        }
        PlanFigures now = figures.get();
        Trails trails = new Trails(now.worked(), readout);
        now.film()
                .tightest()
                .ifPresentOrElse(
                        zone -> film(zone, now, trails, readout),
                        () -> film.say(none, Words.of("foot.film.none"), Optional.empty()));
        String products =
                Words.of("foot.hazards.products", now.hazards().products().size());
        if (now.pictograms().isEmpty()) {
            hazards.say(Words.of("foot.hazards.none"), products, Optional.empty());
        } else {
            hazards.say(new HazardSigns(now.pictograms(), SIGN), products);
        }
        now.dose()
                .ifPresentOrElse(
                        dose -> exposure.say(
                                Words.of(
                                        "foot.exposure.share",
                                        readout.number(BigDecimal.valueOf(dose.share() * 100), 0)),
                                trails.dose(dose),
                                dose.share() > 1 ? Optional.of(Severity.STOP) : Optional.empty()),
                        () -> exposure.say(none, Words.of("foot.exposure.none"), Optional.empty()));
        time.say(
                readout.minutes(now.hours()),
                Words.of("foot.time.elapsed", readout.minutes(now.elapsed())),
                Optional.empty());
        now.quote()
                .ifPresentOrElse(
                        quote -> price.say(
                                readout.money(quote.price().gross()),
                                quote.cap().map(trails::cap).orElse(Words.of("foot.price.no-cap")),
                                quote.cap().filter(c -> !c.fits()).map((CapFit c) -> Severity.WARN)),
                        () -> price.say(
                                none,
                                Words.of("foot.price.stopped", now.findings(Severity.STOP)),
                                Optional.of(Severity.STOP)));
    }

    private void film(ZoneBudget zone, PlanFigures now, Trails trails, Readout readout) {
        BigDecimal floor = now.film().limits().stopBelow();
        film.say(
                readout.film(BigDecimal.valueOf(zone.thinnest().orElseThrow().mean())),
                Words.of(
                        "foot.film.below",
                        now.worked()
                                .setting()
                                .shape()
                                .zone(zone.film().zone())
                                .map(z -> z.title())
                                .orElse(zone.film().zone()),
                        trails.chance(zone.chanceBelow(floor).orElse(0.0)),
                        readout.film(floor)),
                zone.verdict() == Verdict.FORBIDS
                        ? Optional.of(Severity.STOP)
                        : zone.verdict() == Verdict.WARNS ? Optional.of(Severity.WARN) : Optional.empty());
    }

    /** What each figure comes from, in the order of the figures. */
    List<List<TrailLine>> lines() {
        return List.of(film, hazards, exposure, time, price).stream()
                .map(Tile::lines)
                .toList();
    }

    /** The figures as components, in their order. */
    List<JComponent> tiles() {
        Function<Tile, JComponent> tile = t -> t.tile;
        return List.of(film, hazards, exposure, time, price).stream().map(tile).toList();
    }
}
