package baywright.safety;

import static baywright.safety.Pictogram.GHS01;
import static baywright.safety.Pictogram.GHS02;
import static baywright.safety.Pictogram.GHS04;
import static baywright.safety.Pictogram.GHS05;
import static baywright.safety.Pictogram.GHS06;
import static baywright.safety.Pictogram.GHS07;
import static baywright.safety.Pictogram.GHS08;
import static baywright.safety.Pictogram.GHS09;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rules: Regulation (EC) No 1272/2008, articles 20, 26 and 27. */
class LabelTest {

    private static Label of(String... classes) {
        return Label.of(Arrays.stream(classes).map(HazardClass::of).toList());
    }

    // annex VI, index 603-117-00-0 (from memory), class table
    @Test
    void oneLiquid() {
        Label label = of("Flam. Liq. 2", "Eye Irrit. 2", "STOT SE 3 (narcotic effects)");
        assertThat(label)
                .isEqualTo(new Label(List.of("H225", "H319", "H336"), List.of(GHS02, GHS07), List.of(), Signal.DANGER));
        assertThat(Label.ofCodes(List.of("H225", "H319", "H336"))).isEqualTo(label);
    }

    // art. 26(1)(b)
    @Test
    void skullReplacesTheExclamationMark() {
        Label label = of("Acute Tox. 3 (oral)", "Skin Irrit. 2", "STOT SE 3 (respiratory irritation)");
        assertThat(label.pictograms()).containsExactly(GHS06);
        assertThat(label.signal()).isEqualTo(Signal.DANGER);
        assertThat(label.statements()).containsExactly("H301", "H315", "H335");
    }

    // art. 26(1)(c)
    @Test
    void corrosionReplacesTheExclamationMarkForIrritationOnly() {
        assertThat(of("Skin Corr. 1/1A/1B/1C", "Eye Irrit. 2").pictograms()).containsExactly(GHS05);
        assertThat(of("Eye Dam. 1", "Skin Irrit. 2").pictograms()).containsExactly(GHS05);
        assertThat(of("Eye Dam. 1", "Skin Irrit. 2", "Skin Sens. 1/1A/1B").pictograms())
                .containsExactly(GHS05, GHS07);
        assertThat(of("Skin Corr. 1/1A/1B/1C", "Acute Tox. 4 (oral)").pictograms())
                .containsExactly(GHS05, GHS07);
        assertThat(of("Eye Dam. 1", "STOT SE 3 (narcotic effects)").pictograms())
                .containsExactly(GHS05, GHS07);
    }

    // the cautious side of an open point: corrosion of metals is not corrosion of skin
    @Test
    void corrosiveToMetalsAloneKeepsTheExclamationMark() {
        assertThat(of("Met. Corr. 1", "Eye Irrit. 2").pictograms()).containsExactly(GHS05, GHS07);
    }

    // art. 26(1)(d)
    @Test
    void respiratorySensitiserReplacesTheExclamationMark() {
        assertThat(of("Resp. Sens. 1/1A/1B", "Skin Sens. 1/1A/1B", "Eye Irrit. 2")
                        .pictograms())
                .containsExactly(GHS08);
        assertThat(of("Resp. Sens. 1/1A/1B", "Acute Tox. 4 (inhalation)").pictograms())
                .containsExactly(GHS07, GHS08);
        assertThat(of("Carc. 2", "Skin Sens. 1/1A/1B").pictograms()).containsExactly(GHS07, GHS08);
    }

    // art. 26(1)(a) and (e), 26(2)
    @Test
    void optionalPictogramsAreReportedAsOptional() {
        Label explosive = of("Expl. 1.1", "Flam. Liq. 2");
        assertThat(explosive.pictograms()).containsExactly(GHS01, GHS02);
        assertThat(explosive.optional()).containsExactly(GHS02);
        Label selfReactive = of("Self-react. B");
        assertThat(selfReactive.pictograms()).containsExactly(GHS01, GHS02);
        assertThat(selfReactive.optional()).isEmpty();
        assertThat(of("Aerosol 1", "Press. Gas (Comp./Liq./Diss.)").optional()).containsExactly(GHS04);
        assertThat(of("Acute Tox. 1 (inhalation)", "Press. Gas (Comp./Liq./Diss.)")
                        .optional())
                .containsExactly(GHS04);
        assertThat(of("Press. Gas (Comp./Liq./Diss.)").optional()).isEmpty();
        assertThat(of("Acute Tox. 3 (oral)", "Acute Tox. 4 (dermal)").pictograms())
                .containsExactly(GHS06);
    }

    // art. 20(3) (from memory), class table
    @Test
    void dangerReplacesWarning() {
        assertThat(of("Flam. Liq. 3", "Eye Dam. 1").signal()).isEqualTo(Signal.DANGER);
        assertThat(of("Aquatic Chronic 2").signal()).isEqualTo(Signal.NONE);
        assertThat(of("Aquatic Chronic 2").pictograms()).containsExactly(GHS09);
        assertThat(of("Aerosol 3")).isEqualTo(new Label(List.of("H229"), List.of(), List.of(), Signal.WARNING));
        assertThat(Label.ofCodes(List.of("H229")).signal()).isEqualTo(Signal.WARNING);
        assertThat(Label.ofCodes(List.of("H222", "H229")).signal()).isEqualTo(Signal.DANGER);
    }

    // art. 27 and its guidance (from memory)
    @Test
    void mergingKeepsTheGraverStatement() {
        assertThat(Label.ofCodes(List.of("H290", "H314", "H318")).merged()).containsExactly("H290", "H314");
        assertThat(Label.ofCodes(List.of("H318", "H400", "H410")).merged()).containsExactly("H318", "H410");
        assertThat(Label.ofCodes(List.of("H400", "H318")).merged()).containsExactly("H400", "H318");
    }

    @Test
    void codesWithSuffixesAndCombinationsAreUnderstood() {
        assertThat(Label.ofCodes(List.of("H361d", "H300+H310", "EUH066")).pictograms())
                .containsExactly(GHS06, GHS08);
    }

    @Test
    void anUnknownClassIsNamed() {
        assertThatThrownBy(() -> HazardClass.of("Flam. Liq. 9")).hasMessageContaining("'Flam. Liq. 9'");
    }
}
