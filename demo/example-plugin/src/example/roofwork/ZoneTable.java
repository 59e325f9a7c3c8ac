package example.roofwork;

import baywright.site.WorkedJob;
import baywright.swing.api.DocumentMaker;
import baywright.vehicle.Zone;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.stream.Collectors;

/** The zones of the vehicle, one a line, with their surfaces. */
final class ZoneTable implements DocumentMaker {

    @Override
    public String id() {
        return "zone-table";
    }

    @Override
    public String title() {
        return "Table of zones";
    }

    @Override
    public String extension() {
        return "csv";
    }

    @Override
    public boolean canMake(WorkedJob job) {
        return true;
    }

    @Override
    public void write(WorkedJob job, Locale language, Path file) throws IOException {
        String table = job.setting().shape().zones().stream()
                .map(ZoneTable::line)
                .collect(Collectors.joining("\r\n", "zone,title,surface\r\n", "\r\n"));
        Path draft = Files.createTempFile(file.toAbsolutePath().getParent(), "zones", ".csv");
        try {
            Files.writeString(draft, table, StandardCharsets.UTF_8);
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static String line(Zone zone) {
        return zone.id() + ",\"" + zone.title().replace("\"", "\"\"") + "\"," + zone.surface();
    }
}
