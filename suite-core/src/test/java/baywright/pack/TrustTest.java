package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys of one's own, and whose packs are taken. */
class TrustTest {

    private static final TrustList.Trusted QUAY =
            new TrustList.Trusted("Saltmarsh Quay", Packs.key().signer(), LocalDate.of(2026, 12, 1), "Ines");

    @TempDir
    private Path folder;

    @Test
    void aKeyIsItsOwnersAloneFromTheFirstMomentOn() throws IOException {
        KeyFolder keys = new KeyFolder(folder.resolve("settings"));
        SigningKey key = keys.make("saltmarsh-quay");

        assertThat(keys.sites()).containsExactly("saltmarsh-quay");
        assertThat(keys.read("saltmarsh-quay").signer()).isEqualTo(key.signer());
        Path file = keys.fileOf("saltmarsh-quay");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())))
                .isEqualTo("rwx------");
    }

    @Test
    void aKeyIsNeverOverwritten() throws IOException {
        KeyFolder keys = new KeyFolder(folder);
        keys.make("quay");
        byte[] before = Files.readAllBytes(keys.fileOf("quay"));

        assertThatThrownBy(() -> keys.make("quay"))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("there is a key of this name already");
        assertThat(Files.readAllBytes(keys.fileOf("quay"))).isEqualTo(before);
    }

    @Test
    void aKeyThatOthersMayReadIsNotUsed() throws IOException {
        KeyFolder keys = new KeyFolder(folder);
        keys.make("quay");
        Files.setPosixFilePermissions(keys.fileOf("quay"), PosixFilePermissions.fromString("rw-r-----"));

        assertThatThrownBy(() -> keys.read("quay"))
                .hasMessage(keys.fileOf("quay")
                        + ": others may read or use this key; say chmod 600 to it, and make a new one"
                        + " if somebody may have read it");
    }

    @Test
    void aDamagedKeyIsToldWithoutItsSecret() throws IOException {
        KeyFolder keys = new KeyFolder(folder);
        SigningKey key = keys.make("quay");
        Path file = keys.fileOf("quay");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace(key.signer().toString(), Packs.key().signer().toString()));

        assertThatThrownBy(() -> keys.read("quay"))
                .hasMessageContaining("secretKey: the two halves of the key do not belong together")
                .hasMessageNotContaining(key.secret());
    }

    @Test
    void aKeyThatIsNotThereIsToldWithThoseThatAre() {
        KeyFolder keys = new KeyFolder(folder);
        assertThatThrownBy(() -> keys.read("quay"))
                .hasMessage("there is no key 'quay'; make it with 'pack key new quay'");
        keys.make("mill");
        assertThatThrownBy(() -> keys.read("quay")).hasMessage("there is no key 'quay'; there is mill");
        assertThatThrownBy(() -> keys.make("../quay")).hasMessageStartingWith("the name of a key is an id");
        assertThatThrownBy(() -> keys.read("../mill")).hasMessage("there is no key '../mill'; there is mill");
    }

    @Test
    void theListIsKeptAsPlainText() throws IOException {
        Workspace workspace = workspace();
        TrustList.of(folder).with(QUAY).save(workspace);

        assertThat(folder.resolve("packs/trusted.json")).hasContent("""
                {
                  "schema": "baywright/trusted/1",
                  "trusted": [
                    {
                      "name": "Saltmarsh Quay",
                      "publicKey": "PUAXw+hDiVqStwqnTRt+vJyYLM8uxJaMwM1V8Sr0Zgw=",
                      "since": "2026-12-01",
                      "by": "Ines"
                    }
                  ]
                }""");
        assertThat(TrustList.of(folder).all()).containsExactly(QUAY);
        TrustList.of(folder).without("Saltmarsh Quay").save(workspace);
        assertThat(TrustList.of(folder).all()).isEmpty();
    }

    private Workspace workspace() throws IOException {
        Files.createDirectories(folder.resolve("stages"));
        return Workspace.open(folder);
    }

    @Test
    void aListThatSomeoneElseChangedIsNotOverwritten() throws IOException {
        Workspace workspace = workspace();
        TrustList.nobody().with(QUAY).save(workspace);
        TrustList old = TrustList.of(folder);
        TrustList.of(folder).without("Saltmarsh Quay").save(workspace);

        assertThatThrownBy(() -> old.save(workspace))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("packs/trusted.json: not saved, someone else has changed the file");
    }

    @Test
    void nobodyStandsOnTheListTwice() {
        TrustList list = TrustList.nobody().with(QUAY);
        assertThatThrownBy(() -> list.with(QUAY))
                .hasMessageContaining("the name 'Saltmarsh Quay' is on the list already");
        assertThatThrownBy(() -> list.with(new TrustList.Trusted("Another", QUAY.key(), QUAY.since(), "Ines")))
                .hasMessageContaining("the key is on the list already, as that of 'Saltmarsh Quay'");
        assertThatThrownBy(() -> list.without("Saltmarsh Quai"))
                .hasMessageEndingWith("nobody on the list is called 'Saltmarsh Quai'; nearest is 'Saltmarsh Quay'");
    }

    @Test
    void aBadListIsToldWithItsPlaceAndTrustsNobody() throws IOException {
        Files.createDirectories(folder.resolve("packs"));
        Files.writeString(folder.resolve("packs/trusted.json"), """
                {"schema": "baywright/trusted/1", "trusted": [
                  {"name": "Mill", "publicKey": "abc", "since": "2026-12-01", "by": "Ines"}]}
                """);
        assertThatThrownBy(() -> TrustList.of(folder))
                .hasMessage(
                        "packs/trusted.json:2:33: trusted[0].publicKey: met the text 'abc'; give 32 bytes in Base64");
    }

    /** A pack that a stranger has signed anew is sound in itself, and its signer is still a stranger. */
    @Test
    void whoSignedIsToldByTheListAlone() {
        TrustList list = TrustList.nobody().with(QUAY);
        Pack resigned = Packs.signed().signedBy(SigningKey.fresh());
        assertThat(list.standing(Packs.signed())).isEqualTo(new Standing.Known(QUAY));
        assertThat(list.standing(resigned)).isInstanceOf(Standing.Unknown.class);
        assertThat(list.standing(Packs.unsigned())).isEqualTo(new Standing.Unsigned());
        list.standing(Packs.signed()).refuseUnknown("a.pack");
        assertThatThrownBy(() -> list.standing(resigned).refuseUnknown("a.pack"))
                .hasMessage("a.pack: the key "
                        + resigned.signature().orElseThrow().signer().fingerprint()
                        + " that signed this pack is not on the list of trust; compare it with its owner and say 'pack trust"
                        + " add', or --accept-unknown \"NAME: why\" to answer for it");
        assertThatThrownBy(() -> list.standing(Packs.unsigned()).refuseUnknown("a.pack"))
                .hasMessage(
                        "a.pack: nobody has signed this pack; ask its maker to sign it, or say --accept-unknown \"NAME:"
                                + " why\" to answer for it");
    }

    @Test
    void aConsentHasANameAndAReason() {
        assertThat(Consent.of("Ines:  read every script ")).contains(new Consent("Ines", "read every script"));
        assertThat(Consent.of("Ines: ")).isEmpty();
        assertThat(Consent.of(": because")).isEmpty();
        assertThat(Consent.of("because")).isEmpty();
        assertThat(Consent.of("Ines: two\nlines")).isEmpty();
    }
}
