package baywright.workspace;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The published JSON Schemas, as an independent validator reads them. */
final class Forms {

    static final Path FOLDER = Path.of("..", "docs", "schema");

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Map<String, Schema> KNOWN = new ConcurrentHashMap<>();

    private Forms() {}

    /** The form of a file of a workspace, by its path. */
    static Schema of(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1);
        return KNOWN.computeIfAbsent(name.replace(".json", "-1.json"), Forms::read);
    }

    private static Schema read(String form) {
        try {
            return REGISTRY.getSchema(Files.readString(FOLDER.resolve(form)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
