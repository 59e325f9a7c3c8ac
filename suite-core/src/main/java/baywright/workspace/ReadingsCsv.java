package baywright.workspace;

import baywright.vehicle.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** {@code readings.csv}: RFC 4180 with the header {@code zone,um} or {@code zone,um,note}; one film reading a row. */
final class ReadingsCsv {

    private static final int MOST_ROWS = 100_000;
    private static final BigDecimal MOST_UM = BigDecimal.valueOf(20_000);
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}(\\.\\d{1,3})?");
    private static final List<String> HEADER = List.of("zone", "um", "note");
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();

    /**
     * Readings by zone in order of writing.
     *
     * @param offsets where each zone is first named
     */
    record Readings(Map<String, List<Reading>> byZone, Map<String, Integer> offsets) {}

    private final Report report;
    private final Readings readings = new Readings(new LinkedHashMap<>(), new LinkedHashMap<>());

    private ReadingsCsv(Report report) {
        this.report = report;
    }

    /** All readings that are sound; the report says what is not. */
    static Readings read(Report report) {
        ReadingsCsv csv = new ReadingsCsv(report);
        try (CSVParser parser = CSVParser.parse(report.source().text(), FORMAT)) {
            csv.rows(parser.iterator());
        } catch (IOException | UncheckedIOException e) {
            report.error(
                    csv.lastOffset,
                    "",
                    "a quotation mark in or after this row does not open and close a cell",
                    "write a quotation mark inside a quoted cell twice");
        }
        return csv.readings;
    }

    private int lastOffset;

    private void rows(Iterator<CSVRecord> rows) {
        if (!rows.hasNext()) {
            report.error(0, "", "the file holds no header", "begin it with zone,um");
            return;
        }
        List<String> header = rows.next().toList();
        if (header.size() < 2 || !header.equals(HEADER.subList(0, Math.min(header.size(), HEADER.size())))) {
            report.error(
                    0,
                    "",
                    "the header is " + Shown.quoted(String.join(",", header)),
                    "give zone,um or zone,um,note with commas");
            return;
        }
        for (int count = 0; rows.hasNext(); count++) {
            CSVRecord row = rows.next();
            lastOffset = (int) row.getCharacterPosition();
            if (count == MOST_ROWS) {
                report.error(lastOffset, "", "there are more than " + MOST_ROWS + " rows", "split the file");
                return;
            }
            row(row, header.size());
        }
    }

    private void row(CSVRecord row, int columns) {
        if (row.size() != columns) {
            report.error(
                    lastOffset,
                    "",
                    "this row has " + row.size() + (row.size() == 1 ? " cell" : " cells") + ", the header has "
                            + columns,
                    "write numbers with a point and put a cell that holds a comma in double quotes");
            return;
        }
        String zone = row.get(0);
        String um = row.get(1);
        if (!Fields.isId(zone)) {
            report.error(lastOffset, "zone", "the text " + Shown.quoted(zone) + " is no id", "use " + Fields.AN_ID);
            return;
        }
        if (!NUMBER.matcher(um).matches()
                || new BigDecimal(um).signum() == 0
                || new BigDecimal(um).compareTo(MOST_UM) > 0) {
            report.error(
                    cell(zone),
                    "um",
                    "the text " + Shown.quoted(um) + " is no film thickness",
                    "give micrometres above 0, at most " + MOST_UM.toPlainString()
                            + ", with a point; mark a zone that a gauge cannot read as unreadable in job.json");
            return;
        }
        readings.offsets().putIfAbsent(zone, lastOffset);
        readings.byZone()
                .computeIfAbsent(zone, z -> new ArrayList<>())
                .add(new Reading(
                        new BigDecimal(um),
                        report.source().file() + ":"
                                + report.source().place(lastOffset).line()));
    }

    /** The cell after the zone; of a row that begins with a quotation mark only the row's place is known. */
    private int cell(String zone) {
        return report.source().text().startsWith(zone, lastOffset) ? lastOffset + zone.length() + 1 : lastOffset;
    }
}
