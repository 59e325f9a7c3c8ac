package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExcerptTest {

    @Test
    void theCaretStandsUnderTheColumn() {
        Excerpt excerpt = Excerpt.of("    needs 'wahsed'", 11);
        assertThat(excerpt.source().charAt(excerpt.caret().indexOf('^'))).isEqualTo('\'');
    }

    @Test
    void tabsCountAsOneColumnAndStayUnderTheCaret() {
        Excerpt excerpt = Excerpt.of("\t\tneeds 'wahsed'", 9);
        assertThat(excerpt.source()).isEqualTo("  needs 'wahsed'");
        assertThat(excerpt.caret()).isEqualTo("        ^");
    }

    @Test
    void aPlaceFarToTheRightIsStillShown() {
        Excerpt excerpt = Excerpt.of("x".repeat(500) + "!" + "x".repeat(500), 501);
        assertThat(excerpt.source()).hasSizeLessThanOrEqualTo(Console.WIDTH);
        assertThat(excerpt.source().charAt(excerpt.caret().length() - 1)).isEqualTo('!');
    }

    @Test
    void aCharacterBeyondTheBasicPlaneIsOneColumn() {
        assertThat(Excerpt.of("'\uD83D\uDE97' x", 5).caret()).isEqualTo("    ^");
    }

    @Test
    void noEscapeOfTheFileReachesTheTerminal() {
        assertThat(Excerpt.of("a\033[31mb", 1).source()).doesNotContain("\033");
    }

    @Test
    void aFileThatIsNoTextShowsNoLine(@TempDir Path folder) throws Exception {
        Path file = Files.write(folder.resolve("bad"), new byte[] {(byte) 0xff, 10, (byte) 0xfe});
        assertThat(Excerpt.of(file, 1, 1)).isEmpty();
        assertThat(Excerpt.of(folder.resolve("gone"), 1, 1)).isEmpty();
        Path oneLine = Files.writeString(folder.resolve("short"), "one line", StandardCharsets.UTF_8);
        assertThat(Excerpt.of(oneLine, 2, 1)).isEmpty();
    }
}
