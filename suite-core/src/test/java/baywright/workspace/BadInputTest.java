package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BadInputTest {

    @TempDir
    private Path folder;

    static List<BadInput> rows() {
        return BadInput.all();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void saysWhereWhatAndHowToMend(BadInput row) {
        Mill mill = Mill.in(folder);
        mill.write(row.file(), row.applied(mill.text(row.file())));

        assertThat(mill.open().problems().stream().map(FileProblem::toString))
                .isNotEmpty()
                .containsExactlyElementsOf(row.says());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void oneBadFileSpoilsNoOther(BadInput row) {
        Mill mill = Mill.in(folder);
        mill.write(row.file(), row.applied(mill.text(row.file())));
        Workspace workspace = mill.open();

        assertThat(workspace.job("vans").orElseThrow().job()).isPresent();
        assertThat(workspace.shop().isEmpty()).isEqualTo(hasError(workspace, "shop.json"));
        assertThat(workspace.items().isEmpty()).isEqualTo(hasError(workspace, "items.json"));
        assertThat(workspace.shapes().isEmpty()).isEqualTo(hasError(workspace, "stages/shapes.json"));
        assertThat(workspace.job("green-estate").orElseThrow().job().isEmpty())
                .isEqualTo(hasError(workspace, Mill.JOB) || hasError(workspace, Mill.READINGS));
    }

    private static boolean hasError(Workspace workspace, String file) {
        return workspace.problems().stream()
                .anyMatch(p -> p.isError() && p.file().equals(file));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void thePublishedFormSaysTheSameWhereAFormCanSayIt(BadInput row) {
        if (row.schema().isEmpty()) {
            return;
        }
        String text = row.applied(Mill.in(folder).text(row.file()));

        assertThat(Forms.of(row.file()).validate(text, InputFormat.JSON).isEmpty() ? "accepts" : "refuses")
                .isEqualTo(row.schema());
    }

    @Test
    void theFormRefusesMostOfIt() {
        long refused = rows().stream().filter(r -> r.schema().equals("refuses")).count();
        long accepted =
                rows().stream().filter(r -> r.schema().equals("accepts")).count();

        assertThat(refused).isGreaterThan(2 * accepted);
    }
}
