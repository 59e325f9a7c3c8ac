package baywright.vehicle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Zones with readings, built by hand. */
final class Films {

    /** A gauge without error, so that what was read is what is there. */
    static final GaugeError EXACT = new GaugeError(BigDecimal.ZERO, BigDecimal.ZERO);

    private Films() {}

    static FilmLimits exact() {
        FilmLimits usual = FilmLimits.USUAL;
        return new FilmLimits(
                usual.stopBelow(),
                usual.careBelow(),
                usual.repaintAbove(),
                usual.fillerAbove(),
                EXACT,
                usual.shares(),
                usual.readings());
    }

    static Zone panel(String substrate) {
        return new Zone("bonnet", "Bonnet", "paint", substrate, Map.of(), List.of());
    }

    static List<Reading> readings(String... films) {
        List<Reading> readings = new ArrayList<>();
        for (String film : films) {
            readings.add(new Reading(new BigDecimal(film), "readings.csv:" + (readings.size() + 2)));
        }
        return readings;
    }

    /** Steel, factory clear over base, read so. */
    static ZoneFilm steel(FilmLimits limits, String... films) {
        return film("steel", PaintFacts.UNSURVEYED, limits, films);
    }

    static ZoneFilm film(String substrate, PaintFacts paint, FilmLimits limits, String... films) {
        return ZoneFilm.of(panel(substrate), ZoneSurvey.NOTHING.withReadings(readings(films)), paint, limits);
    }

    /** Five readings that begin with the lowest and rise by a micrometre. */
    static String[] fromFive(String lowest) {
        BigDecimal first = new BigDecimal(lowest);
        String[] films = new String[5];
        for (int i = 0; i < films.length; i++) {
            films[i] = first.add(BigDecimal.valueOf(i)).toPlainString();
        }
        return films;
    }
}
