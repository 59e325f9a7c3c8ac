package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.workspace.SharedItems;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** What packs hold against the published forms (JSON Schema 2020-12), as an independent validator reads them. */
class PackFormsTest {

    private static List<?> faults(String form, byte[] json) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("..", "docs", "schema", form)));
        return schema.validate(new String(json, StandardCharsets.UTF_8), InputFormat.JSON);
    }

    @Test
    void theManifestFitsItsForm() throws IOException {
        byte[] manifest = ManifestJson.bytes(Packs.manifest("wash", "1.2.0-rc.1+7", "base >=1.0.0 <2.0.0"));

        assertThat(faults("pack-1.json", manifest)).isEmpty();
        assertThat(faults("pack-1.json", Packs.signed().manifestBytes())).isEmpty();
        assertThat(faults(
                        "pack-1.json",
                        Packs.bytes(new String(manifest, StandardCharsets.UTF_8).replace("1.2.0-rc.1", "1.2"))))
                .hasSize(1);
    }

    @Test
    void theSignatureFitsItsForm() throws IOException {
        assertThat(faults(
                        "pack-signature-1.json",
                        Packs.signed().signature().orElseThrow().bytes()))
                .isEmpty();
    }

    @Test
    void theItemsFitTheirForm() throws IOException {
        byte[] priced = SharedItems.of(List.of(Packs.shampoo()), Optional.of(CurrencyUnit.GBP))
                .bytes();

        assertThat(faults("shared-items-1.json", Packs.items().bytes())).isEmpty();
        assertThat(faults("shared-items-1.json", priced)).isEmpty();
        assertThat(SharedItems.read("items.json", priced)
                        .value()
                        .orElseThrow()
                        .items()
                        .get(0)
                        .price())
                .contains(Packs.shampoo().price());
    }
}
