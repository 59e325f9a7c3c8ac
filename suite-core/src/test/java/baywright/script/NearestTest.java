package baywright.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    /** Pairs counted by hand: one letter each of insert, drop, change, swap of neighbours. */
    @ParameterizedTest
    @CsvSource({"washed,wahsed,1", "washed,washe,1", "washed,waschd,2", "ca,abc,3", "dry,dry,0", "'',wet,3", "a,b,1"})
    void editsAreInsertDropChangeAndSwap(String a, String b, int edits) {
        assertThat(Nearest.edits(a, b)).isEqualTo(edits);
    }

    @Test
    void shortNamesNeedToBeNearer() {
        assertThat(Nearest.to("wot", List.of("wet", "dry"))).contains("wet");
        assertThat(Nearest.to("xyz", List.of("wet", "dry"))).isEmpty();
        assertThat(Nearest.hint("xyz", List.of("wet"))).isEmpty();
        assertThat(Nearest.hint("wte", List.of("wet"))).isEqualTo("; nearest is 'wet'");
    }

    @Test
    void aLongerFormIsNearWhenItIsTheOnlyOne() {
        assertThat(Nearest.to("iron", List.of("iron-clear", "dry"))).contains("iron-clear");
        assertThat(Nearest.to("iron", List.of("iron-clear", "iron-free"))).isEmpty();
    }

    @Property(tries = 300)
    void editsAreTheSameBothWaysAndNeverMoreThanTheLongerWord(
            @ForAll @AlphaChars @StringLength(max = 8) String a, @ForAll @AlphaChars @StringLength(max = 8) String b) {
        int edits = Nearest.edits(a, b);
        assertThat(edits).isEqualTo(Nearest.edits(b, a)).isLessThanOrEqualTo(Math.max(a.length(), b.length()));
        assertThat(edits == 0).isEqualTo(a.equals(b));
    }
}
