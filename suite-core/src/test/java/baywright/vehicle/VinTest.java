package baywright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VinTest {

    /** 49 CFR 565.15(c), table V, and the outline for new manufacturers; seventeen ones: 89 = 8 · 11 + 1. */
    @ParameterizedTest
    @CsvSource({"1G4AH59H?5G118341, 4", "1J9RP1A3?A1644345, 6", "11111111?11111111, 1"})
    void publishedNumbersAskForTheirCheckDigit(String pattern, char digit) {
        Vin vin = new Vin(pattern.replace('?', digit));

        assertThat(vin.expectedCheckDigit()).isEqualTo(digit);
        assertThat(vin.checkDigitFits()).isTrue();
    }

    /** Invented numbers, sums 344, 361 and 296 by the same table. */
    @ParameterizedTest
    @CsvSource({"ZZZBW4713ST000392, 3", "ZZZBW08C9TT010077, 9", "ZZZBW3A0XTT000014, X"})
    void inventedNumbersFit(String text, char digit) {
        assertThat(new Vin(text).checkDigitFits()).isTrue();
        assertThat(new Vin(text).expectedCheckDigit()).isEqualTo(digit);
    }

    /** The same numbers with two characters exchanged; check digits by the same table. */
    @ParameterizedTest
    @CsvSource({"ZZZBW4713ST000932, 9", "ZZZBW4713TS000392, 4"})
    void exchangedCharactersAreSeen(String text, char digit) {
        assertThat(new Vin(text).checkDigitFits()).isFalse();
        assertThat(new Vin(text).expectedCheckDigit()).isEqualTo(digit);
    }

    /** The weight 10 of position 8 is -1 modulo 11, so a digit there may change places with the check digit. */
    @Test
    void notEverySlipIsSeen() {
        assertThat(new Vin("ZZZBW4731ST000392").checkDigitFits()).isTrue();
    }

    @Test
    void everyChangeOfOneDigitIsSeen() {
        String right = "11111111111111111";
        List<String> unseen = new ArrayList<>();
        for (int i = 0; i < right.length(); i++) {
            for (char digit = '2'; digit <= '9'; digit++) {
                String wrong = right.substring(0, i) + digit + right.substring(i + 1);
                if (new Vin(wrong).checkDigitFits()) {
                    unseen.add(wrong);
                }
            }
        }
        assertThat(unseen).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ZZZBW4713STO00392", "ZZZBW4713STI00392", "ZZZBW4713STQ00392", "zZZBW4713ST000392"})
    void aCharacterThatNoNumberHasIsRefused(String text) {
        assertThatThrownBy(() -> new Vin(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("capital letters without I, O and Q");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ZZZBW4713ST00039", "ZZZBW4713ST0003921"})
    void anotherLengthIsRefused(String text) {
        assertThatThrownBy(() -> new Vin(text)).hasMessage("a VIN has 17 characters, this one has " + text.length());
    }
}
