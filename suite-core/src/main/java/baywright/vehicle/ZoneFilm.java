package baywright.vehicle;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What is known about the film of one zone, and what follows from it before any work is planned.
 *
 * @param zone       id of the zone
 * @param readable   false when it was recorded that a gauge cannot read it, and for plastic, carbon or glass without a
 *                   reading (magnetic and eddy-current gauges do not read there: common practice, no source)
 * @param statistics of its readings; empty without any
 * @param sure       what is surely there at the lowest reading, µm; empty when unread or not readable
 * @param band       what the total says
 * @param signs      what is odd about the readings
 * @param paint      what else is known about the paint
 * @param topcoat    estimate of the topcoat, µm; empty when nothing can be said
 * @param budget     what may still be taken off, µm, not negative; empty when nothing can be said
 * @param wanted     how many readings it should have
 */
public record ZoneFilm(
        String zone,
        boolean readable,
        Optional<FilmStatistics> statistics,
        Optional<BigDecimal> sure,
        FilmBand band,
        Set<FilmSign> signs,
        PaintFacts paint,
        Optional<BigDecimal> topcoat,
        Optional<BigDecimal> budget,
        int wanted) {

    private static final Set<String> BLIND = Set.of("plastic", "carbon", "glass");

    public ZoneFilm {
        signs = Set.copyOf(signs);
    }

    /** Works out what follows from a zone's readings, facts and the shop's limits. */
    public static ZoneFilm of(Zone zone, ZoneSurvey found, PaintFacts paint, FilmLimits limits) {
        Optional<FilmStatistics> all = FilmStatistics.of(found.readings());
        boolean blind = BLIND.contains(zone.substrate().toLowerCase(Locale.ROOT));
        boolean readable = !found.unreadable() && (all.isPresent() || !blind);
        Optional<FilmStatistics> relied = all.filter(s -> readable);
        Optional<BigDecimal> sure = relied.map(s -> limits.sure(s.lowest().micrometres(), s.count()));
        FilmBand band = relied.map(
                        s -> FilmBand.of(sure.orElseThrow(), s.lowest().micrometres(), blind, limits))
                .orElse(FilmBand.UNKNOWN);
        Optional<BigDecimal> topcoat = topcoat(paint, relied, band, limits);
        return new ZoneFilm(
                zone.id(),
                readable,
                all,
                sure,
                band,
                signs(all, readable, band, limits),
                paint,
                topcoat,
                topcoat.map(t -> limits.shares()
                        .life()
                        .multiply(t)
                        .subtract(paint.removed())
                        .max(BigDecimal.ZERO)),
                limits.readings().wanted(zone));
    }

    private static Set<FilmSign> signs(
            Optional<FilmStatistics> read, boolean readable, FilmBand band, FilmLimits limits) {
        Set<FilmSign> signs = EnumSet.noneOf(FilmSign.class);
        read.ifPresent(s -> {
            add(signs, FilmSign.READ_THOUGH_UNREADABLE, !readable);
            add(signs, FilmSign.FEW_READINGS, s.count() < limits.readings().small());
            add(signs, FilmSign.RAGGED, s.isRagged());
            add(signs, FilmSign.FILLER, s.highest().micrometres().compareTo(limits.fillerAbove()) > 0);
        });
        add(signs, FilmSign.REPAINT_SUSPECTED, band == FilmBand.REPAINT || band == FilmBand.FILLER);
        return signs;
    }

    private static void add(Set<FilmSign> signs, FilmSign sign, boolean holds) {
        if (holds) {
            signs.add(sign);
        }
    }

    /**
     * The topcoat: as a layer gauge read it, else estimated by the paint system. Matt paint and wraps have none that
     * could be used up. A repaint that is only suspected counts as the thinner of factory clear and repaint; paint of an
     * unknown system counts as thin.
     */
    private static Optional<BigDecimal> topcoat(
            PaintFacts paint, Optional<FilmStatistics> read, FilmBand band, FilmLimits limits) {
        if (paint.system() == PaintFacts.Kind.MATT || paint.system() == PaintFacts.Kind.WRAP) {
            return Optional.of(BigDecimal.ZERO);
        }
        if (paint.topcoat().isPresent()) {
            return paint.topcoat();
        }
        TopcoatShares shares = limits.shares();
        return read.map(s -> limits.countedFrom(s.lowest().micrometres(), s.count()))
                .map(film -> switch (paint.system()) {
                    case SINGLE_STAGE -> shares.singleStage(film);
                    case UNKNOWN -> shares.factoryClear(film.min(limits.careBelow()));
                    default -> clear(paint.repaint(), band, film, shares);
                });
    }

    private static BigDecimal clear(PaintFacts.Repaint repaint, FilmBand band, BigDecimal film, TopcoatShares shares) {
        if (repaint == PaintFacts.Repaint.PROVEN) {
            return shares.repaint();
        }
        BigDecimal factory = shares.factoryClear(film);
        boolean suspected = band == FilmBand.REPAINT || band == FilmBand.FILLER;
        return suspected && repaint == PaintFacts.Repaint.UNKNOWN ? factory.min(shares.repaint()) : factory;
    }

    /** The lowest reading as it was taken, µm. */
    public Optional<BigDecimal> lowest() {
        return statistics.map(s -> s.lowest().micrometres());
    }

    /** The mean of the readings, µm. */
    public Optional<BigDecimal> mean() {
        return statistics.map(FilmStatistics::mean);
    }

    /** The highest reading, µm. */
    public Optional<BigDecimal> most() {
        return statistics.map(s -> s.highest().micrometres());
    }

    /** How many readings there are. */
    public int count() {
        return statistics.map(FilmStatistics::count).orElse(0);
    }
}
