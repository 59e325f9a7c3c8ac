package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class TableTest {

    @Test
    void columnsAlignOnTheirSide() {
        Table table = new Table("Stage", ">min");
        table.add("Wash", "5");
        table.add("Contact wash", "38");
        assertThat(printed(table)).isEqualTo("Stage         min\nWash            5\nContact wash   38\n");
    }

    @Test
    void aLongSentenceWrapsInItsColumn() {
        Table table = new Table("~", "");
        table.add("word ".repeat(40).strip(), "end");
        assertThat(printed(table).lines()).hasSizeGreaterThan(1).allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(printed(table).lines().findFirst().orElseThrow()).endsWith("end");
    }

    @Test
    void aRowHasOneTextForEachColumn() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Table("a", "b").add("only one"))
                .withMessageContaining("has 2 texts");
    }

    @Property
    void wrappingLosesNoWordAndKeepsTheWidth(
            @ForAll @NotBlank @StringLength(max = 200) String text, @ForAll @IntRange(min = 1, max = 60) int width) {
        var lines = Wrap.lines(text, width);
        assertThat(String.join(" ", lines)).isEqualTo(text);
        assertThat(lines).allMatch(line -> Wrap.width(line) <= width || !line.contains(" "));
    }

    @Test
    void spacesOfTheTextStay() {
        assertThat(Wrap.lines(" !", 5)).containsExactly(" !");
        assertThat(Wrap.lines(" !", 1)).containsExactly("", "!");
        assertThat(Wrap.lines("aaa  b", 3)).containsExactly("aaa", " b");
    }

    private static String printed(Table table) {
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out);
        table.print(new Console(writer, writer, false, Locale.UK), "");
        return out.toString().replace("\r\n", "\n");
    }
}
