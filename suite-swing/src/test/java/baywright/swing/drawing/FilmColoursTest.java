package baywright.swing.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.swing.api.Colours;
import baywright.vehicle.FilmBand;
import baywright.vehicle.FilmSign;
import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FilmColoursTest {

    /** Five times what is just seen; common practice, no source. */
    private static final double APART = 11.5;

    private static void look(String look) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
            if (look.equals("dark")) {
                FlatDarkLaf.setup();
            } else {
                FlatLightLaf.setup();
            }
        });
    }

    @AfterAll
    static void lightAgain() throws Exception {
        look("light");
    }

    @ParameterizedTest
    @CsvSource({
        "light,USUAL", "light,PROTANOPIA", "light,DEUTERANOPIA", "light,TRITANOPIA",
        "dark,USUAL", "dark,PROTANOPIA", "dark,DEUTERANOPIA", "dark,TRITANOPIA"
    })
    void bandsAreToldApartByAllEyes(String look, Sight sight) throws Exception {
        look(look);
        for (FilmBand a : FilmBand.values()) {
            for (FilmBand b : FilmBand.values()) {
                if (a.compareTo(b) < 0) {
                    assertThat(sight.distance(
                                    FilmPainter.of(a).fill(), FilmPainter.of(b).fill()))
                            .as("%s and %s", a, b)
                            .isGreaterThan(APART);
                }
            }
        }
    }

    @Test
    void bandsAreToldApartWithoutColour() {
        assertThat(Stream.of(FilmBand.values()).map(FilmPainter::pattern)).doesNotHaveDuplicates();
        assertThat(Stream.of(FilmSign.values()).map(FilmPainter::mark)).doesNotHaveDuplicates();
    }

    /** WCAG 2.2, success criteria 1.4.3 (text 4.5) and 1.4.11 (outlines 3). */
    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void whatIsWrittenIsReadable(String look) throws Exception {
        look(look);
        Stream<Color> fills = Stream.concat(
                Stream.of(FilmBand.values()).map(b -> FilmPainter.of(b).fill()),
                Stream.of(Colours.of("glass"), Colours.of("body")));
        assertThat(fills)
                .allSatisfy(fill -> assertThat(Ink.contrast(fill, Ink.on(fill))).isGreaterThanOrEqualTo(4.5));
        assertThat(Ink.contrast(Colours.of("outline"), Colours.of("body"))).isGreaterThanOrEqualTo(3);
    }

    /** A grey stays grey for every eye, so that each row of a matrix sums to one. */
    @ParameterizedTest
    @EnumSource
    void greyStaysGrey(Sight sight) {
        for (int i = 0; i < 9; i += 3) {
            assertThat(sight.matrix()[i] + sight.matrix()[i + 1] + sight.matrix()[i + 2])
                    .isCloseTo(1, Offset.offset(2e-6));
        }
    }

    /** WCAG 2.2: black on white is 21, and #767676 on white just over 4.5 (4.54, a figure known from many tools). */
    @Test
    void contrastIsThatOfTheStandard() {
        assertThat(Ink.contrast(Color.BLACK, Color.WHITE)).isCloseTo(21, Offset.offset(1e-9));
        assertThat(Ink.contrast(new Color(0x767676), Color.WHITE)).isCloseTo(4.54, Offset.offset(0.005));
    }
}
