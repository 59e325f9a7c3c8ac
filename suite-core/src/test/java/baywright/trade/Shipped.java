package baywright.trade;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;

/** Where the files that the project ships lie, seen from the module that tests them. */
final class Shipped {

    static final Path STAGES = Path.of("..", "stage-scripts");
    static final Path DEMO = Path.of("..", "demo");

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private Shipped() {}

    /** The file as a plain tree, without any reader of our own in between. */
    static JsonNode json(Path file) throws IOException {
        return JSON.readTree(file.toFile());
    }
}
