import java.nio.file.*
Files.writeString(Path.of('marker'), 'written')
