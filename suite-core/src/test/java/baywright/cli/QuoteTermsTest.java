package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Terms that a shop may set for its quotes, from its file to the quote. */
class QuoteTermsTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    @TempDir
    private Path folder;

    private Desk desk;
    private Path shop;

    @BeforeEach
    void copyTheDemo() {
        desk = new Desk(folder.resolve("settings"), HOME);
        desk.answerTo("demo", "--no-window", folder.resolve("demo").toString());
        shop = folder.resolve("demo/corner-shop/shop.json");
    }

    private void change(String old, String now) throws IOException {
        String text = Files.readString(shop);
        assertThat(text).contains(old);
        Files.writeString(shop, text.replace(old, now));
    }

    private Desk.Answer quote(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "plan";
        all[1] = "quote";
        System.arraycopy(words, 0, all, 2, words.length);
        all[all.length - 1] =
                folder.resolve("demo/corner-shop/jobs/small-saloon").toString();
        return desk.answerTo(all);
    }

    private JsonNode json() throws IOException {
        Desk.Answer answer = quote("--json");
        assertThat(answer.status()).as(answer.err()).isEqualTo(ExitStatus.FINE);
        return new ObjectMapper().readTree(answer.out());
    }

    /** By hand: of the net 29.75, washing is 16.25 (15 and 1.25 of shampoo) and sealant 13.50; 5 % and 20 % of tax. */
    @Test
    void stagesOfAFamilyMayHaveAnotherRate() throws IOException {
        change("\"on\": \"gross\"", "\"on\": \"total\", \"others\": [{\"percent\": 5, \"families\": [\"wash\"]}]");
        JsonNode price = json().get("price");
        assertThat(price.get("net").decimalValue()).isEqualByComparingTo("29.75");
        assertThat(price.get("tax").decimalValue()).isEqualByComparingTo("3.51"); // 0.81 and 2.70
        assertThat(price.get("taxes")).hasSize(2);
        assertThat(price.at("/taxes/0/net").decimalValue()).isEqualByComparingTo("16.25");
        assertThat(price.at("/taxes/1/tax").decimalValue()).isEqualByComparingTo("2.70");
        assertThat(quote().out()).contains("5 % of GBP 16.25").contains("20 % of GBP 13.50");
    }

    /** By hand: 35.70 to the next 5 is 35; 35 · 20/120 is 5.83. */
    @Test
    void aPriceMayBeRounded() throws IOException {
        change("\"on\": \"gross\"", "\"on\": \"gross\", \"priceStep\": 5");
        JsonNode quote = json();
        assertThat(quote.at("/price/gross").decimalValue()).isEqualByComparingTo("35");
        assertThat(quote.at("/price/tax").decimalValue()).isEqualByComparingTo("5.83");
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode position : quote.get("positions")) {
            sum = sum.add(position.get("net").decimalValue());
        }
        assertThat(sum).isEqualByComparingTo(quote.at("/price/net").decimalValue());
    }

    @Test
    void aShopMayAimForAMargin() throws IOException {
        change("\"afterAllPercent\": 12", "\"afterAllPercent\": 12, \"targetPercent\": 20");
        JsonNode margin = json().get("margin");
        BigDecimal floor = margin.get("floor").decimalValue();
        assertThat(margin.get("target").decimalValue().multiply(new BigDecimal("0.8")))
                .isCloseTo(floor, org.assertj.core.api.Assertions.within(new BigDecimal("0.02")));
        assertThat(quote().out()).contains("Net to aim for");
        change("\"targetPercent\": 20", "\"targetPercent\": 10");
        assertThat(quote().status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(quote().err()).contains("targetPercent").contains("below afterAllPercent");
    }

    @Test
    void aSkillsRateMustBeOneOfTheShops() throws IOException {
        change(
                "\"materialMarkupPercent\": 25",
                "\"materialMarkupPercent\": 25, \"bySkill\": [{\"skill\": \"coating\", \"charge\": \"gold\"}]");
        assertThat(quote().status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(quote().err()).contains("no rate is called").contains("give one of detailing");
        change("\"charge\": \"gold\"", "\"charge\": \"detailing\", \"wage\": 19");
        assertThat(quote().status()).isEqualTo(ExitStatus.FINE);
    }
}
