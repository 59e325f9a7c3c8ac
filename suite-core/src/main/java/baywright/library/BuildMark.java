package baywright.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.stream.Stream;

/** Tells builds of the program apart, so that nothing is used that another build has kept. */
final class BuildMark {

    private BuildMark() {}

    /** The same for the same classes; the empty text when nobody knows where they come from. */
    static String here() {
        CodeSource source = BuildMark.class.getProtectionDomain().getCodeSource();
        if (source == null) {
            return "";
        }
        try {
            Path place = Path.of(source.getLocation().toURI());
            return Files.isDirectory(place) ? ofFolder(place.resolve("baywright")) : of(place);
        } catch (URISyntaxException | IOException | UncheckedIOException e) {
            return "";
        }
    }

    private static String of(Path archive) throws IOException {
        return Files.size(archive) + " " + Files.getLastModifiedTime(archive).toMillis();
    }

    /** Of the rooms that make a library of texts. */
    private static String ofFolder(Path classes) throws IOException {
        long newest = 0;
        long sizes = 0;
        for (String room : new String[] {"script", "library", "quantity"}) {
            try (Stream<Path> files = Files.list(classes.resolve(room))) {
                for (Path file : files.toList()) {
                    newest = Math.max(newest, Files.getLastModifiedTime(file).toMillis());
                    sizes += Files.size(file);
                }
            }
        }
        return sizes + " " + newest;
    }
}
