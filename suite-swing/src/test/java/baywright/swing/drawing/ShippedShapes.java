package baywright.swing.drawing;

import baywright.vehicle.Shape;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The vehicle shapes of the shipped library. */
final class ShippedShapes {

    private static final List<Shape> ALL = read();

    private ShippedShapes() {}

    static List<Shape> all() {
        return ALL;
    }

    private static List<Shape> read() {
        try {
            Path root = Path.of("..");
            Path folder = Files.createTempDirectory("shapes");
            return Workspace.create(folder, root.resolve("demo/millrace-works"), root.resolve("stage-scripts"))
                    .shapes();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
