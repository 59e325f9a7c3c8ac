package baywright.swing.drawing;

import baywright.swing.api.Colours;
import baywright.swing.api.Readout;
import baywright.swing.api.Texts;
import baywright.vehicle.FilmBand;
import baywright.vehicle.FilmSign;
import baywright.vehicle.FilmStatistics;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneFilm;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Shows the paint film of each zone: the band by colour and pattern, what is odd about the readings by a sign, the lowest reading as a
 * number and below it the median and how many readings there are.
 */
public final class FilmPainter implements ZonePainter {

    /** Bands in the order of a legend. */
    static final List<FilmBand> BANDS = List.of(
            FilmBand.STOP, FilmBand.CARE, FilmBand.ORDINARY, FilmBand.REPAINT, FilmBand.FILLER, FilmBand.UNKNOWN);

    /** Signs that are marked, the gravest first: a zone shows the first that it has. */
    static final List<FilmSign> MARKED = List.of(
            FilmSign.FILLER,
            FilmSign.REPAINT_SUSPECTED,
            FilmSign.READ_THOUGH_UNREADABLE,
            FilmSign.RAGGED,
            FilmSign.FEW_READINGS);

    /** Marks a zone of which there are photos. */
    static final ZoneMark PHOTO = ZoneMark.FRAME;

    private final Map<String, ZoneFilm> films;
    private final Map<String, BigDecimal> medians;
    private final Map<String, Integer> photos;
    private final Readout readout;
    private final Texts texts = Texts.beside(FilmPainter.class, "texts");

    /**
     * @param films   by zone; what has none is shown as body or glass
     * @param medians of the readings by zone, see {@link FilmStatistics#median}
     * @param photos  how many there are of each zone that has any
     */
    public FilmPainter(
            Map<String, ZoneFilm> films,
            Map<String, BigDecimal> medians,
            Map<String, Integer> photos,
            Readout readout) {
        this.photos = Map.copyOf(photos);
        this.films = Map.copyOf(films);
        this.medians = Map.copyOf(medians);
        this.readout = readout;
    }

    @Override
    public ZoneLook look(Zone zone) {
        ZoneLook film = filmOf(zone);
        int count = photos.getOrDefault(zone.id(), 0);
        return count == 0 ? film : film.with(PHOTO, texts.of("photos", count));
    }

    private ZoneLook filmOf(Zone zone) {
        ZoneFilm film = films.get(zone.id());
        if (film == null) {
            return ZoneLook.plain(
                    Colours.of(zone.surface().equals("glass") ? "glass" : "body"), texts.of("film.none", zone.title()));
        }
        Optional<FilmSign> sign = MARKED.stream().filter(film.signs()::contains).findFirst();
        String lesser = film.count() == 0
                ? ""
                : texts.of("film.lesser", readout.filmNumber(medians.get(zone.id())), film.count());
        return new ZoneLook(
                colour(film.band()),
                pattern(film.band()),
                sign.map(FilmPainter::mark),
                film.lowest().map(readout::filmNumber).orElse(""),
                lesser,
                says(zone, film));
    }

    private String says(Zone zone, ZoneFilm film) {
        List<String> parts = new ArrayList<>();
        parts.add(zone.title());
        parts.add(word(film));
        film.lowest()
                .ifPresent(lowest -> parts.add(texts.of(
                        "film.readings", film.count(), readout.film(lowest), readout.film(medians.get(zone.id())))));
        MARKED.stream().filter(film.signs()::contains).forEach(sign -> parts.add(texts.of(key(sign))));
        return String.join(" · ", parts);
    }

    /** The band in words, and for a zone without one why. */
    private String word(ZoneFilm film) {
        if (film.band() == FilmBand.UNKNOWN) {
            return texts.of(film.readable() ? "film.unread" : "film.unreadable");
        }
        return texts.of(key(film.band()));
    }

    static Colour of(FilmBand band) {
        return new Colour(colour(band), pattern(band));
    }

    /** How a band is shown. */
    record Colour(java.awt.Color fill, ZonePattern pattern) {}

    private static java.awt.Color colour(FilmBand band) {
        return Colours.of("film." + band.name().toLowerCase(Locale.ROOT));
    }

    static ZonePattern pattern(FilmBand band) {
        return switch (band) {
            case STOP -> ZonePattern.CROSSED;
            case CARE -> ZonePattern.RISING;
            case ORDINARY -> ZonePattern.PLAIN;
            case REPAINT -> ZonePattern.DOTTED;
            case FILLER -> ZonePattern.BARRED;
            case UNKNOWN -> ZonePattern.BLANK;
        };
    }

    static ZoneMark mark(FilmSign sign) {
        return switch (sign) {
            case FILLER -> ZoneMark.SQUARE;
            case REPAINT_SUSPECTED -> ZoneMark.DIAMOND;
            case READ_THOUGH_UNREADABLE -> ZoneMark.CROSS;
            case RAGGED -> ZoneMark.ZIGZAG;
            case FEW_READINGS -> ZoneMark.DOT;
        };
    }

    static String key(FilmBand band) {
        return "band." + band.name().toLowerCase(Locale.ROOT);
    }

    static String key(FilmSign sign) {
        return "sign." + sign.name().toLowerCase(Locale.ROOT);
    }
}
