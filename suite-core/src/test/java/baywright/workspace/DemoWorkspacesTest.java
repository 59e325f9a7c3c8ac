package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoWorkspacesTest {

    private static final Path LIBRARY = Path.of("..", "stage-scripts");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"millrace-works", "saltmarsh-quay"})
    void aDemoSiteWithTheStandardLibraryHasNoProblem(String site) {
        Workspace workspace = Workspace.create(folder.resolve(site), Path.of("..", "demo", site), LIBRARY);

        assertThat(workspace.problems()).isEmpty();
        assertThat(workspace.jobs()).isNotEmpty().allMatch(j -> j.job().isPresent());
        assertThat(workspace.items()).isNotEmpty();
        assertThat(workspace.stages()).isDirectoryContaining(Files::isDirectory);
        assertThat(workspace.stages().resolve("items.json")).doesNotExist();
    }
}
