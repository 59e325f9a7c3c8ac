package baywright.swing.shell;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Writes down faults of the program, for those who mend it. Safe to use from any thread. */
final class FaultReports {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS");

    private final Optional<Path> folder;
    private final Set<String> known = new HashSet<>();

    /** @param folder the user's settings; without it reports go to the folder for temporary files */
    FaultReports(Optional<Path> folder) {
        this.folder = folder;
    }

    /**
     * Writes a report.
     *
     * @return where it is; empty when the same fault has been written down in this run already, or when no disk takes it
     */
    synchronized Optional<Path> write(Throwable fault) {
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace));
        if (!known.add(fault + " " + (fault.getStackTrace().length == 0 ? "" : fault.getStackTrace()[0]))) {
            return Optional.empty();
        }
        String text = "window\njava " + System.getProperty("java.version") + "\nsystem " + System.getProperty("os.name")
                + "\n\n" + trace;
        String name = "report-" + STAMP.format(LocalDateTime.now(ZoneId.systemDefault())) + ".txt";
        return folder.flatMap(settings -> write(settings.resolve("reports").resolve(name), text))
                .or(() -> write(Path.of(System.getProperty("java.io.tmpdir"), "baywright-" + name), text));
    }

    private static Optional<Path> write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            return Optional.of(Files.writeString(file, text, StandardCharsets.UTF_8));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
