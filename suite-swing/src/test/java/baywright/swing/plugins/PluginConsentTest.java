package baywright.swing.plugins;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.swing.api.Settings;
import baywright.swing.plugins.PluginJar.Origin;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PluginConsentTest {

    /** SHA-256 of "abc": FIPS 180-4, example of NIST for one block. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private final Map<String, String> kept = new HashMap<>();
    private final PluginConsent consent = new PluginConsent(new Settings() {
        @Override
        public Optional<String> get(String key) {
            return Optional.ofNullable(kept.get(key));
        }

        @Override
        public void put(String key, String value) {
            kept.put(key, value);
        }

        @Override
        public void remove(String key) {
            kept.remove(key);
        }
    });

    @Test
    void whatTheUserPutThereRuns() {
        assertThat(consent.allows(jar(Origin.USER, ABC))).isTrue();
    }

    @Test
    void whatCameWithAWorkspaceRunsAfterAYesToThisContentOnly() {
        PluginJar jar = jar(Origin.WORKSPACE, ABC);
        assertThat(consent.allows(jar)).isFalse();
        consent.allow(jar, true);
        assertThat(consent.allows(jar)).isTrue();
        assertThat(consent.allows(jar(Origin.WORKSPACE, ABC.replace('b', 'c')))).isFalse();
        consent.allow(jar, false);
        assertThat(consent.allows(jar)).isFalse();
        assertThat(kept).isEmpty();
    }

    @Test
    void oneIsSwitchedOffWithoutTheOthers() {
        consent.switchOff("first", true);
        consent.switchOff("second", true);
        consent.switchOff("first", false);
        assertThat(consent.isOff("first")).isFalse();
        assertThat(consent.isOff("second")).isTrue();
    }

    @Test
    void contentIsKnownByItsSha256() throws Exception {
        Path file = Files.createTempFile("content", ".jar");
        try {
            Files.writeString(file, "abc");
            assertThat(PluginFolders.sha256(file)).isEqualTo(ABC);
        } finally {
            Files.delete(file);
        }
    }

    private static PluginJar jar(Origin origin, String sha256) {
        return new PluginJar(Path.of("roof-work.jar"), origin, sha256);
    }
}
