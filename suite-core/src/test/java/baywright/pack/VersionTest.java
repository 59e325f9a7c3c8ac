package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the examples of Semantic Versioning 2.0.0 (semver.org). */
class VersionTest {

    /** Section 11, its two rows of examples one behind the other. */
    private static final List<String> IN_ORDER = List.of(
            "1.0.0-alpha",
            "1.0.0-alpha.1",
            "1.0.0-alpha.beta",
            "1.0.0-beta",
            "1.0.0-beta.2",
            "1.0.0-beta.11",
            "1.0.0-rc.1",
            "1.0.0",
            "2.0.0",
            "2.1.0",
            "2.1.1");

    @Test
    void precedenceIsThatOfTheSpecification() {
        for (int i = 0; i < IN_ORDER.size(); i++) {
            for (int j = 0; j < IN_ORDER.size(); j++) {
                assertThat(Integer.signum(Version.of(IN_ORDER.get(i)).compareTo(Version.of(IN_ORDER.get(j)))))
                        .as(IN_ORDER.get(i) + " against " + IN_ORDER.get(j))
                        .isEqualTo(Integer.compare(i, j));
            }
        }
    }

    /** Section 10: "two versions that differ only in the build metadata, have the same precedence"; its own examples. */
    @Test
    void buildMetadataPlaysNoPart() {
        Version one = Version.of("1.0.0+20130313144700");
        Version other = Version.of("1.0.0+21AF26D3----117B344092BD");
        assertThat(one).isEqualByComparingTo(other).isNotEqualTo(other);
    }

    /** Sections 2, 9 and 10 of the specification, and the last from its list of questions and answers, from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.9.0",
                "1.0.0-alpha",
                "1.0.0-0.3.7",
                "1.0.0-x.7.z.92",
                "1.0.0-x-y-z.--",
                "1.0.0-alpha+001",
                "1.0.0-beta+exp.sha.5114f85",
                "0.0.4",
                "1.0.0-0A.is.legal"
            })
    void whatTheSpecificationAllowsIsAVersion(String text) {
        assertThat(Version.of(text)).hasToString(text);
    }

    /** Sections 2 (three numbers, no leading zeroes), 9 (no empty identifier, no leading zeroes) and 10. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1",
                "1.2",
                "1.2.3.4",
                "01.2.3",
                "1.02.3",
                "1.2.03",
                "1.0.0-alpha..1",
                "1.0.0-01",
                "1.0.0-",
                "1.0.0+",
                "-1.0.0",
                "v1.2.3",
                " 1.2.3",
                "1.2.3 ",
                "1.2.3-ä",
                "",
                "alpha",
                "1.0.0+a+b",
                "1.2.3\n"
            })
    void whatItForbidsIsNone(String text) {
        assertThat(Version.isVersion(text)).isFalse();
        assertThatThrownBy(() -> Version.of(text)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Our own bounds: what cannot be reckoned with is refused and not reckoned wrong. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2147483648.0.0",
                "1.0.0-99999999999999999999",
                "1.0.0-aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"
            })
    void whatIsTooLongIsNone(String text) {
        assertThat(Version.isVersion(text)).isFalse();
    }

    /** The worked examples of the page on ranges of the npm registry's version library (node-semver, README), from memory. */
    @ParameterizedTest
    @CsvSource({
        ">=1.2.7 <1.3.0, 1.2.7, true",
        ">=1.2.7 <1.3.0, 1.2.99, true",
        ">=1.2.7 <1.3.0, 1.2.6, false",
        ">=1.2.7 <1.3.0, 1.3.0, false",
        ">1.2.3-alpha.3, 1.2.3-alpha.7, true",
        ">1.2.3-alpha.3, 3.4.5-alpha.9, false",
        ">1.2.3-alpha.3, 3.4.5, true",
        "^1.2.3, 1.9.9, true",
        "^1.2.3, 2.0.0, false",
        "^1.2.3, 2.0.0-rc.1, false",
        "^0.2.3, 0.2.9, true",
        "^0.2.3, 0.3.0, false",
        "^0.0.3, 0.0.4, false",
        "~1.2.3, 1.2.9, true",
        "~1.2.3, 1.3.0, false",
        "1.2.3, 1.2.3, true",
        "=1.2.3, 1.2.4, false",
        "<=1.2.3, 1.2.3, true"
    })
    void aRangeHoldsWhatItsConditionsSay(String range, String version, boolean holds) {
        assertThat(new VersionRange(range).holds(Version.of(version))).isEqualTo(holds);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "*",
                "1.x",
                ">=1.0.0  <2.0.0",
                "1.0.0 || 2.0.0",
                "1.0.0 - 2.0.0",
                ">= 1.0.0",
                "latest",
                ">=1.0.0 <2.0.0 ",
                ">=1.0.0 <2.0.0 <3.0.0 <4.0.0 <5.0.0"
            })
    void otherTextsAreNoRange(String text) {
        assertThat(VersionRange.isRange(text)).isFalse();
    }
}
