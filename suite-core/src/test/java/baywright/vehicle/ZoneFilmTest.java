package baywright.vehicle;

import static baywright.vehicle.Films.exact;
import static baywright.vehicle.Films.film;
import static baywright.vehicle.Films.fromFive;
import static baywright.vehicle.Films.panel;
import static baywright.vehicle.Films.readings;
import static baywright.vehicle.Films.steel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ZoneFilmTest {

    private static final FilmLimits USUAL = FilmLimits.USUAL;

    /** Common practice, no source: judged on what is surely there. */
    @ParameterizedTest
    @CsvSource({"59.9, STOP", "60.0, CARE", "89.9, CARE", "90.0, ORDINARY"})
    void thinBandsHaveSharpBorders(String lowest, FilmBand band) {
        assertThat(steel(exact(), fromFive(lowest)).band()).isEqualTo(band);
    }

    /** 60 µm, common practice, no source, with the uncertainty of the GUM: 61.9 - 2 · (1 + 0.619)/√3 = 60.03; 61.8 gives 59.93. */
    @ParameterizedTest
    @CsvSource({"61.8, 59.93, STOP", "61.9, 60.03, CARE", "92.1, 89.88, CARE", "92.3, 90.07, ORDINARY"})
    void theLowestReadingIsJudgedLessItsUncertainty(String lowest, String sure, FilmBand band) {
        ZoneFilm film = steel(USUAL, fromFive(lowest));

        assertThat(film.sure().orElseThrow()).isEqualByComparingTo(sure);
        assertThat(film.band()).isEqualTo(band);
    }

    /** Trade practice, from memory: 3 µm less when fewer than five readings were taken. */
    @Test
    void fewReadingsCountForLess() {
        assertThat(steel(USUAL, "92.5", "95", "99", "97").band()).isEqualTo(FilmBand.CARE);
        assertThat(steel(USUAL, "92.5", "95", "99", "97", "98").band()).isEqualTo(FilmBand.ORDINARY);
    }

    /** Common practice, no source: over about 200 a repaint, over about 600 filler. */
    @ParameterizedTest
    @CsvSource({
        "steel, 200, ORDINARY",
        "steel, 200.1, REPAINT",
        "aluminium, 200.1, REPAINT",
        "steel, 600, REPAINT",
        "steel, 600.1, FILLER",
        "plastic, 150, ORDINARY",
        "plastic, 150.1, REPAINT"
    })
    void thickBandsAreJudgedOnTheReadingItself(String substrate, String lowest, FilmBand band) {
        assertThat(film(substrate, PaintFacts.UNSURVEYED, USUAL, fromFive(lowest))
                        .band())
                .isEqualTo(band);
    }

    /** Common practice, from memory: over 1.4 times the lowest or a range over 40 µm. */
    @ParameterizedTest
    @CsvSource({"90, 126, false", "90, 126.1, true", "150, 190, false", "150, 190.1, true"})
    void raggedReadingsAreSeen(String lowest, String highest, boolean ragged) {
        assertThat(steel(USUAL, lowest, highest, lowest).signs().contains(FilmSign.RAGGED))
                .isEqualTo(ragged);
    }

    @Test
    void oneSpotOfFillerIsSeenThoughTheRestIsThin() {
        ZoneFilm film = steel(USUAL, "120", "118", "640", "121", "119");

        assertThat(film.band()).isEqualTo(FilmBand.ORDINARY);
        assertThat(film.signs()).containsExactlyInAnyOrder(FilmSign.FILLER, FilmSign.RAGGED);
    }

    @Test
    void fewerThanThreeReadingsMeanLittle() {
        assertThat(steel(USUAL, "120", "121").signs()).containsExactly(FilmSign.FEW_READINGS);
        assertThat(steel(USUAL, "120", "121", "119").signs()).isEmpty();
    }

    /** Common practice, no source: gauges are blind on plastic and carbon. */
    @ParameterizedTest
    @CsvSource({"plastic, false", "carbon, false", "steel, true", "aluminium, true"})
    void withoutReadingsThePanelItselfSaysWhetherAGaugeReads(String substrate, boolean readable) {
        ZoneFilm film = film(substrate, PaintFacts.UNSURVEYED, USUAL);

        assertThat(film.readable()).isEqualTo(readable);
        assertThat(film.band()).isEqualTo(FilmBand.UNKNOWN);
        assertThat(film.budget()).isEmpty();
    }

    @Test
    void readingsOfAZoneRecordedAsUnreadableAreNotReliedUpon() {
        ZoneSurvey found =
                new ZoneSurvey(Map.of(), List.of(), Map.of(), readings("120", "121", "119"), true, List.of());

        ZoneFilm film = ZoneFilm.of(panel("plastic"), found, PaintFacts.UNSURVEYED, USUAL);

        assertThat(film.readable()).isFalse();
        assertThat(film.sure()).isEmpty();
        assertThat(film.budget()).isEmpty();
        assertThat(film.signs()).containsExactly(FilmSign.READ_THOUGH_UNREADABLE);
    }

    /** Trade arithmetic, common practice, no source: topcoat estimate and a quarter of it. */
    @ParameterizedTest
    @CsvSource({
        "clear-over-base, unknown, 110, 38.5, 9.625",
        "clear-over-base, unknown, 90, 31.5, 7.875",
        "clear-over-base, unknown, 75, 26.25, 6.5625",
        "clear-over-base, unknown, 78, 27.3, 6.825",
        "clear-over-base, unknown, 105, 36.75, 9.1875",
        "clear-over-base, unknown, 140, 45, 11.25",
        "clear-over-base, proven, 260, 50, 12.5",
        "clear-over-base, unknown, 260, 45, 11.25",
        "clear-over-base, none, 260, 45, 11.25",
        "single-stage, unknown, 86, 34.4, 8.6",
        "single-stage, unknown, 130, 50, 12.5",
        "matt, unknown, 120, 0, 0",
        "wrap, unknown, 280, 0, 0",
        "unknown, unknown, 120, 31.5, 7.875"
    })
    void budgets(String system, String repaint, String lowest, String topcoat, String budget) {
        PaintFacts paint = new PaintFacts(
                PaintFacts.Kind.of(system), PaintFacts.Repaint.of(repaint), Optional.empty(), BigDecimal.ZERO);

        ZoneFilm film = film("steel", paint, USUAL, fromFive(lowest));

        assertThat(film.topcoat().orElseThrow()).isEqualByComparingTo(topcoat);
        assertThat(film.budget().orElseThrow()).isEqualByComparingTo(budget);
    }

    /** 0.25 · 0.35 · (113 - 3) with four readings, by the same arithmetic. */
    @Test
    void aBudgetFromFewReadingsCountsThreeLess() {
        assertThat(steel(USUAL, "113", "116", "114", "115").budget().orElseThrow())
                .isEqualByComparingTo("9.625");
    }

    @Test
    void aLayerReadingGoesBeforeEveryEstimate() {
        PaintFacts paint = new PaintFacts(
                PaintFacts.Kind.CLEAR_OVER_BASE,
                PaintFacts.Repaint.PROVEN,
                Optional.of(new BigDecimal("64")),
                new BigDecimal("5"));

        assertThat(film("steel", paint, USUAL, "260", "255", "258").budget().orElseThrow())
                .isEqualByComparingTo("11");
    }

    @Test
    void whatEarlierJobsTookIsGone() {
        PaintFacts paint = new PaintFacts(
                PaintFacts.Kind.CLEAR_OVER_BASE, PaintFacts.Repaint.UNKNOWN, Optional.empty(), new BigDecimal("12"));

        assertThat(film("steel", paint, USUAL, fromFive("110")).budget().orElseThrow())
                .isEqualByComparingTo("0");
    }

    @Test
    void figuresOfAZoneKnowWhereTheyWereRead() {
        ZoneFilm film = steel(USUAL, "112", "108", "116", "108");

        assertThat(film.lowest().orElseThrow()).isEqualByComparingTo("108");
        assertThat(film.statistics().orElseThrow().lowest().source()).isEqualTo("readings.csv:3");
        assertThat(film.mean().orElseThrow()).isEqualByComparingTo("111");
        assertThat(film.most().orElseThrow()).isEqualByComparingTo("116");
        assertThat(film.count()).isEqualTo(4);
    }

    @Test
    void limitsThatCannotBeAreRefused() {
        assertThatThrownBy(() -> FilmLimits.of(BigDecimal.valueOf(95), BigDecimal.valueOf(90)))
                .hasMessage("film limits need 0 < stopBelow <= careBelow, got 95 and 90");
    }
}
