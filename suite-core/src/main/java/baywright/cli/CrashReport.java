package baywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** What the program writes down about a fault of its own, for those who mend it. */
final class CrashReport {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS");

    private CrashReport() {}

    /**
     * Writes a report below the user's settings or, where that fails, in the folder for temporary files.
     *
     * @return where it was written
     * @throws IOException when neither place can be written to
     */
    static Path write(Settings settings, Throwable fault, List<String> words) throws IOException {
        String name = "report-" + STAMP.format(LocalDateTime.now(ZoneId.systemDefault())) + ".txt";
        try {
            return write(
                    Files.createDirectories(settings.folder().resolve("reports"))
                            .resolve(name),
                    fault,
                    words);
        } catch (IOException e) {
            return write(Path.of(System.getProperty("java.io.tmpdir"), "baywright-" + name), fault, words);
        }
    }

    private static Path write(Path file, Throwable fault, List<String> words) throws IOException {
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace));
        String head = "version " + Version.text() + "\njava " + System.getProperty("java.version") + "\nsystem "
                + System.getProperty("os.name") + "\nwords " + words + "\n\n";
        return Files.writeString(file, head + trace, StandardCharsets.UTF_8);
    }
}
