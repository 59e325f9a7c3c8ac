package baywright.plan;

import baywright.library.Fact;
import baywright.library.Library;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.PaintFacts;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneFilm;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The film of every painted zone before the work. It depends on the setting alone: worked out once, it serves every plan.
 */
public final class FilmSheet {

    private static final String PAINT = "paint";

    private final Map<String, ZoneFilm> zones = new LinkedHashMap<>();
    private final FilmLimits limits;

    private FilmSheet(FilmLimits limits) {
        this.limits = limits;
    }

    /** Every painted zone, and any other that has readings, in the vehicle's order. */
    public static FilmSheet of(Setting setting) {
        FilmSheet sheet = new FilmSheet(setting.film());
        Map<String, String> usual = usual(setting.library());
        for (Zone zone : setting.shape().zones()) {
            var found = setting.survey().zone(zone.id());
            if (zone.surface().equals(PAINT) || !found.readings().isEmpty()) {
                PaintFacts paint = paint(zone.id(), setting.survey(), usual);
                sheet.zones.put(zone.id(), ZoneFilm.of(zone, found, paint, sheet.limits));
            }
        }
        return sheet;
    }

    private static Map<String, String> usual(Library library) {
        Map<String, String> usual = new HashMap<>();
        library.facts().stream().filter(f -> !f.usual().isEmpty()).forEach((Fact f) -> usual.put(f.id(), f.usual()));
        return usual;
    }

    /** A library without these facts has factory clear over base everywhere; a value that cannot be is not heeded. */
    private static PaintFacts paint(String zone, Survey survey, Map<String, String> usual) {
        return new PaintFacts(
                fact(PaintFacts.PAINT, zone, survey, usual)
                        .map(PaintFacts.Kind::of)
                        .orElse(PaintFacts.Kind.CLEAR_OVER_BASE),
                repaint(zone, survey, usual),
                number(PaintFacts.TOPCOAT, zone, survey, usual),
                number(PaintFacts.REMOVED, zone, survey, usual).orElse(BigDecimal.ZERO));
    }

    /** Whoever knows when a zone was repainted knows that it was. */
    private static PaintFacts.Repaint repaint(String zone, Survey survey, Map<String, String> usual) {
        return fact(PaintFacts.REPAINTED_DAYS, zone, survey, usual).isPresent()
                ? PaintFacts.Repaint.PROVEN
                : fact(PaintFacts.REPAINT, zone, survey, usual)
                        .map(PaintFacts.Repaint::of)
                        .orElse(PaintFacts.Repaint.UNKNOWN);
    }

    private static Optional<String> fact(String id, String zone, Survey survey, Map<String, String> usual) {
        String ofVehicle = survey.facts().getOrDefault(id, usual.getOrDefault(id, ""));
        String met = survey.zone(zone).facts().getOrDefault(id, ofVehicle);
        return Optional.of(met).filter(m -> !m.isEmpty());
    }

    private static Optional<BigDecimal> number(String id, String zone, Survey survey, Map<String, String> usual) {
        return fact(id, zone, survey, usual).flatMap(Amounts::sane).filter(n -> n.signum() > 0);
    }

    /** What is known about a zone; empty for one that is neither painted nor read. */
    public Optional<ZoneFilm> zone(String id) {
        return Optional.ofNullable(zones.get(id));
    }

    /** All of them in the vehicle's order. */
    public List<ZoneFilm> zones() {
        return new ArrayList<>(zones.values());
    }

    /** The limits that they were judged by. */
    public FilmLimits limits() {
        return limits;
    }
}
