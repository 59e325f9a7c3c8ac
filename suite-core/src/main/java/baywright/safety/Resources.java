package baywright.safety;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Texts that belong to the program. */
final class Resources {

    private Resources() {}

    static byte[] bytes(String name) {
        try (InputStream in = Resources.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("resource (" + name + ") is not part of the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> lines(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8).lines().toList();
    }
}
