package baywright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the bundles of sentences to what a reader of them takes for granted. */
class BundlesTest {

    private static final Path RESOURCES = Path.of("src/main/resources/baywright/swing");

    static Stream<Path> bundles() throws IOException {
        try (Stream<Path> all = Files.walk(RESOURCES)) {
            return all.filter(p -> p.getFileName().toString().equals("texts.properties")).sorted().toList().stream();
        }
    }

    /** Of a key that stands twice the first sentence is never seen. */
    @ParameterizedTest
    @MethodSource("bundles")
    void noKeyStandsTwice(Path bundle) {
        List<String> twice = new ArrayList<>();
        read(bundle, new Properties() {
            private static final long serialVersionUID = 1L;

            @Override
            public synchronized Object put(Object key, Object value) {
                Object before = super.put(key, value);
                if (before != null) {
                    twice.add((String) key);
                }
                return before;
            }
        });
        assertThat(twice).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everySentenceIsAPatternAndNoMarkup(Path bundle) {
        for (Map.Entry<Object, Object> entry : read(bundle, new Properties()).entrySet()) {
            String sentence = (String) entry.getValue();
            assertThatCode(() -> new MessageFormat(sentence))
                    .as("%s", entry.getKey())
                    .doesNotThrowAnyException();
            assertThat(sentence).as("%s", entry.getKey()).doesNotContain("<html>");
        }
    }

    private static Properties read(Path bundle, Properties into) {
        try {
            into.load(new StringReader(Files.readString(bundle)));
            return into;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
