package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ItemsFileTest {

    @Test
    void aDangerousItemSaysWhatToWear() throws IOException {
        items(Shipped.json(Shipped.STAGES.resolve("items.json")))
                .forEach((id, item) -> assertThat(item.path("hazards").isEmpty()
                                || !item.path("protection").isEmpty())
                        .as(id)
                        .isTrue());
    }

    /** Acid on a thioglycolate gives off hydrogen sulphide; the data sheets of both classes say so. */
    @Test
    void whatMustNotMeetIsInDifferentGroups() throws IOException {
        Map<String, JsonNode> items = items(Shipped.json(Shipped.STAGES.resolve("items.json")));
        assertThat(items.get("iron-remover").path("groups").toString()).isEqualTo("[\"thioglycolate\"]");
        assertThat(items.get("acid-wheel-cleaner").path("groups").toString()).isEqualTo("[\"acid\"]");
        assertThat(items.get("scale-remover").path("groups").toString()).isEqualTo("[\"acid\"]");
    }

    @Test
    void theOtherSiteHasTheSameItemsAtItsOwnPrices() throws IOException {
        JsonNode standard = Shipped.json(Shipped.STAGES.resolve("items.json"));
        JsonNode site = Shipped.json(Shipped.DEMO.resolve("saltmarsh-quay/items.json"));
        assertThat(standard.path("currency").asText()).isEqualTo("GBP");
        assertThat(site.path("currency").asText()).isEqualTo("EUR");
        Map<String, JsonNode> here = items(site);
        Map<String, JsonNode> there = items(standard);
        assertThat(there).hasSize(42);
        assertThat(here.keySet()).isEqualTo(there.keySet());
        there.forEach((id, item) -> assertThat(here.get(id).path("price").decimalValue())
                .as(id)
                .isEqualByComparingTo(item.path("price").decimalValue().multiply(new BigDecimal("1.15"))));
    }

    private static Map<String, JsonNode> items(JsonNode file) {
        Map<String, JsonNode> byId = new LinkedHashMap<>();
        file.path("items")
                .forEach(i -> assertThat(byId.put(i.path("id").asText(), i))
                        .as("item %s once", i.path("id"))
                        .isNull());
        return byId;
    }
}
