package baywright.document;

import baywright.money.Ledger;
import baywright.money.LineKind.Column;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * The lines of a ledger for a spreadsheet: RFC 4180 with a header, numbers with a decimal point whatever the country, at most
 * ten decimals. Nothing in it is rounded to coins, so that it adds up by itself.
 */
public final class LedgerCsv {

    private static final int DECIMALS = 10;
    private static final String LINE_END = "\r\n";

    private LedgerCsv() {}

    /** The text, with a line end at the end. */
    public static String of(Ledger ledger) {
        return text(ledger.lines().stream().map(KeptQuote::line).toList(), ledger.currency());
    }

    /** The same of a kept quote. */
    public static String of(KeptQuote kept) {
        return text(kept.lines(), kept.document().sums().all().net().getCurrencyUnit());
    }

    private static String text(List<KeptQuote.Line> lines, CurrencyUnit currency) {
        StringBuilder text = new StringBuilder();
        row(text, "step", "priority", "column", "kind", "subject", "quantity", "unit", "rate", "amount", "in");
        for (KeptQuote.Line line : lines) {
            Column column = line.kind().column();
            boolean isMoney = column == Column.COST || column == Column.PRICE;
            row(
                    text,
                    line.step().orElse(""),
                    word(line.priority()),
                    word(column.name()),
                    word(line.kind().name()),
                    line.subject(),
                    number(line.quantity()),
                    line.unit(),
                    number(line.rate()),
                    number(line.quantity().multiply(line.rate())),
                    isMoney ? currency.getCode() : "min");
        }
        return text.toString();
    }

    private static void row(StringBuilder text, String... cells) {
        text.append(Stream.of(cells).map(LedgerCsv::cell).collect(Collectors.joining(",")))
                .append(LINE_END);
    }

    /** Quoted where a comma, a quote or a line end would be misread. */
    static String cell(String plain) {
        boolean isPlain = plain.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return isPlain ? plain : "\"" + plain.replace("\"", "\"\"") + "\"";
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String number(BigDecimal exact) {
        BigDecimal cut = exact.setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return cut.signum() == 0 ? "0" : cut.stripTrailingZeros().toPlainString();
    }
}
