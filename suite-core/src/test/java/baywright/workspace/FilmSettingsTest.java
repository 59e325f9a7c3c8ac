package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.vehicle.FilmLimits;
import baywright.vehicle.GaugeError;
import baywright.vehicle.ReadingCounts;
import baywright.vehicle.TopcoatShares;
import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a shop says of film in its {@code shop.json}. */
class FilmSettingsTest {

    @TempDir
    private Path folder;

    private FilmLimits film(String more) {
        Mill mill = Mill.in(folder.resolve("with-" + more.length()))
                .replace("shop.json", "\"careBelow\": 90", "\"careBelow\": 90" + more);
        return mill.open().shop().orElseThrow().film();
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    @Test
    void whatIsLeftOutIsUsual() {
        assertThat(film("")).isEqualTo(FilmLimits.USUAL);
        assertThat(film(", \"gauge\": {}, \"share\": {}, \"readings\": {}")).isEqualTo(FilmLimits.USUAL);
    }

    @Test
    void everythingCanBeTheShopsOwn() {
        assertThat(film(", \"repaintAbove\": 180, \"fillerAbove\": 500, \"gauge\": {\"offset\": 2, \"percent\": 3},"
                        + " \"share\": {\"factory\": 0.3, \"factoryMost\": 40, \"repaint\": 45, \"singleStage\": 0.35,"
                        + " \"singleStageMost\": 42, \"life\": 0.2},"
                        + " \"readings\": {\"small\": 2, \"panel\": 4, \"large\": 8, \"largeFrom\": 1.5}"))
                .isEqualTo(new FilmLimits(
                        number("60"),
                        number("90"),
                        number("180"),
                        number("500"),
                        new GaugeError(number("2"), number("3")),
                        new TopcoatShares(
                                number("0.3"), number("40"), number("45"), number("0.35"), number("42"), number("0.2")),
                        new ReadingCounts(2, 4, 8, number("1.5"))));
    }

    @Test
    void aHigherLimitMovesTheUsualOnesAboveIt() {
        assertThat(film(", \"repaintAbove\": 700").fillerAbove()).isEqualByComparingTo("700");
        assertThat(film(", \"readings\": {\"small\": 7}").readings())
                .isEqualTo(new ReadingCounts(7, 7, 9, ReadingCounts.USUAL.largeFrom()));
    }
}
