package baywright.swing.shell;

import baywright.swing.api.Settings;
import baywright.workspace.SafeFile;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** What the user has set, in one JSON object of texts. Safe to use from any thread; a change is written shortly after, as a whole. */
public final class UserSettings implements Settings {

    private static final String FILE = "settings.json";
    private static final long LARGEST = 1 << 20;
    private static final long DELAY_MILLIS = 300;

    private final Map<String, String> values;
    private final Optional<Path> file;
    private final AtomicBoolean waits = new AtomicBoolean();
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "baywright settings");
        made.setDaemon(true);
        return made;
    });

    private UserSettings(Map<String, String> values, Optional<Path> file) {
        this.values = new ConcurrentSkipListMap<>(values);
        this.file = file;
    }

    /** Settings that are forgotten with the program. */
    public static UserSettings inMemory() {
        return new UserSettings(Map.of(), Optional.empty());
    }

    /** The settings in a folder. A file that cannot be read is put aside as {@code settings-damaged.json}, and nothing is set. */
    public static UserSettings in(Path folder) {
        Path file = folder.resolve(FILE);
        Map<String, String> values = new TreeMap<>();
        try {
            if (Files.exists(file)) {
                read(file, values);
            }
        } catch (IOException e) {
            values.clear();
            putAside(file);
        }
        return new UserSettings(values, Optional.of(file));
    }

    private static void read(Path file, Map<String, String> values) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new IOException("too large for settings");
        }
        try (JsonParser json = new JsonFactory().createParser(Files.readString(file, StandardCharsets.UTF_8))) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw new IOException("no object");
            }
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String key = json.currentName();
                if (json.nextToken() != JsonToken.VALUE_STRING) {
                    throw new IOException("'" + key + "' is no text");
                }
                values.put(key, json.getText());
            }
            if (json.currentToken() != JsonToken.END_OBJECT) {
                throw new IOException("not whole");
            }
        }
    }

    private static void putAside(Path file) {
        try {
            Files.move(file, file.resolveSibling("settings-damaged.json"), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            // It is in the way of nothing: the next change replaces it.
            return;
        }
    }

    @Override
    public Optional<String> get(String key) {
        return Optional.ofNullable(values.get(key));
    }

    @Override
    public void put(String key, String value) {
        if (!value.equals(values.put(key, value))) {
            writeSoon();
        }
    }

    @Override
    public void remove(String key) {
        if (values.remove(key) != null) {
            writeSoon();
        }
    }

    private void writeSoon() {
        if (file.isPresent() && waits.compareAndSet(false, true)) {
            Future<?> unused = thread.schedule(this::flush, DELAY_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    /** Writes at once what has changed. Settings that cannot be written hold for this run only. */
    public synchronized void flush() {
        if (!waits.getAndSet(false)) {
            return;
        }
        try {
            SafeFile.replace(file.orElseThrow(), text().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            System.getLogger(UserSettings.class.getName())
                    .log(System.Logger.Level.WARNING, "the settings cannot be written", e);
        }
    }

    private String text() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text).useDefaultPrettyPrinter()) {
            json.writeStartObject();
            for (Map.Entry<String, String> value : values.entrySet()) {
                json.writeStringField(value.getKey(), value.getValue());
            }
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text.append('\n').toString();
    }
}
