package baywright.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.pack.Consent;
import baywright.pack.Version;
import baywright.workspace.WorkspaceException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackLockTest {

    private static final TakenPack TAKEN = new TakenPack(
            "gentle-wash",
            Version.of("1.2.0"),
            "0".repeat(64),
            Optional.empty(),
            Consent.of("Ines: looked: all of it"),
            Instant.parse("2026-12-07T07:00:00Z"),
            List.of("stage foam"));

    @Test
    void whatIsWrittenIsReadBack() {
        PackLock lock = new PackLock(List.of(TAKEN));
        assertThat(PackLock.read(lock.text())).isEqualTo(lock);
        assertThat(PackLock.read(PackLock.NONE.text())).isEqualTo(PackLock.NONE);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.2.0                | one          | packs/lock.json:6:18: packs[0].version: met the text 'one'
            2026-12-07T07:00:00Z | yesterday    | packs/lock.json:9:16: packs[0].taken: met the text 'yesterday'
            0000                 | 00zz         | packs/lock.json:7:19: packs[0].manifest: met the text
            Ines:                | Ines         | packs/lock.json:8:18: packs[0].consent: met the text 'Ines looked
            gentle-wash          | Gentle wash  | packs/lock.json:5:13: packs[0].id:
            """)
    void aSlipIsNamedWithItsField(String right, String wrong, String message) {
        String text = new PackLock(List.of(TAKEN)).text().replaceFirst(right, wrong);
        if (right.equals("Ines:")) {
            text = text.replace("looked:", "looked");
        }
        String spoilt = text;
        assertThatThrownBy(() -> PackLock.read(spoilt))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith(message);
    }
}
