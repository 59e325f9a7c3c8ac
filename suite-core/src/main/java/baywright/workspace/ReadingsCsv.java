package baywright.workspace;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.vehicle.Reading;
import baywright.vehicle.Shape;
import baywright.workspace.CsvTable.Cell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * {@code readings.csv}: RFC 4180 with commas, semicolons or tabs, a header with {@code zone} and one or more columns of
 * readings in micrometres or mil, and one reading or several a row. What the file leaves open is asked for: separator
 * and decimal mark must follow from all rows together, the unit from header, unit row, unit column or the form.
 */
final class ReadingsCsv {

    private static final int MOST_ROWS = 100_000;
    private static final BigDecimal MOST_UM = BigDecimal.valueOf(20_000);
    private static final Pattern NUMBER = Pattern.compile("(\\d{1,6})(?:([.,])(\\d{1,3}))?");
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

    /** Readings in µm below this and in mil above it are more likely in the other unit. */
    private static final BigDecimal UNLIKELY = BigDecimal.valueOf(15);

    /**
     * Readings by zone in order of writing.
     *
     * @param offsets where each zone is first named
     */
    record Readings(Map<String, List<Reading>> byZone, Map<String, Integer> offsets) {

        /** Reports zones that the vehicle does not have. */
        void check(Report report, Shape shape) {
            Set<String> zones = shape.zonesById().keySet();
            offsets.forEach((zone, offset) -> {
                if (!zones.contains(zone)) {
                    String nearest = Shown.nearest(zone, zones);
                    report.error(
                            offset,
                            ReadingsHeader.ZONE,
                            Shown.quoted(zone) + " is no zone of the shape '" + shape.id() + "'",
                            nearest.isEmpty() ? "name one that it has" : nearest);
                }
            });
        }
    }

    /** A number as it is written, with its unit. */
    private record Written(String zone, Cell cell, Matcher number, Unit unit) {}

    /**
     * A cell for a reading.
     *
     * @param unit        of what it says; empty when nothing stands in it
     * @param micrometres what it says
     */
    record Slot(int column, Optional<Unit> unit, Optional<BigDecimal> micrometres) {}

    /** A row of readings of one zone. */
    record Row(String zone, List<Cell> cells, List<Slot> slots) {
        Row {
            cells = List.copyOf(cells);
            slots = List.copyOf(slots);
        }
    }

    /**
     * How a sound file is laid out.
     *
     * @param heads how many rows stand before the readings: the header, and a row of units where there is one
     * @param units unit of each column of readings, by index, where header or unit row name it
     * @param comma whether decimals have a comma
     */
    record Layout(
            char separator,
            ReadingsHeader header,
            List<List<Cell>> heads,
            Map<Integer, Unit> units,
            boolean comma,
            List<Row> rows) {}

    private final Report report;
    private final ReadingsForm form;
    private final Readings readings = new Readings(new LinkedHashMap<>(), new LinkedHashMap<>());
    private final List<Written> numbers = new ArrayList<>();
    private final List<Row> kept = new ArrayList<>();
    private Optional<Layout> layout = Optional.empty();
    private char separatorInUse = ',';
    private boolean unitMissing;

    private ReadingsCsv(Report report, ReadingsForm form) {
        this.report = report;
        this.form = form;
    }

    /** All readings that are sound; the report says what is not. */
    static Readings read(Report report, ReadingsForm form) {
        ReadingsCsv csv = new ReadingsCsv(report, form);
        csv.table().ifPresent(csv::rows);
        return csv.readings;
    }

    /** How a file is laid out that was read without an error. */
    static Layout layout(Source source) {
        ReadingsCsv csv = new ReadingsCsv(new Report(source), ReadingsForm.UNSAID);
        csv.table().ifPresent(csv::rows);
        return csv.layout.orElseThrow(() -> new IllegalArgumentException(source.file() + " holds no readings"));
    }

    /** The table by the separator under which every cell of the header is understood. */
    private Optional<CsvTable> table() {
        String text = report.source().text();
        List<Character> tried = form.separator().map(List::of).orElse(SEPARATORS);
        for (char separator : tried) {
            CsvTable table = CsvTable.of(text, separator);
            if (!table.rows().isEmpty()
                    && ReadingsHeader.of(table.rows().get(0)).isPresent()) {
                table.loose()
                        .ifPresent(at -> report.error(
                                at,
                                "",
                                "this quotation mark does not open and close a cell",
                                "write a quotation mark inside a quoted cell twice"));
                separatorInUse = separator;
                return Optional.of(table);
            }
        }
        String header = text.lines().findFirst().orElse("");
        report.error(
                0,
                "",
                header.isBlank() ? "the file holds no header" : "the header is " + Shown.quoted(header),
                "give zone and um or mil, with commas, semicolons or tabs, such as zone,um or zone;um 1;um 2;note");
        return Optional.empty();
    }

    private void rows(CsvTable table) {
        List<List<Cell>> rows = table.rows();
        ReadingsHeader header = ReadingsHeader.of(rows.get(0)).orElseThrow();
        Map<Integer, Unit> ofRow = rows.size() > 1 ? unitRow(rows.get(1), header) : Map.of();
        Map<Integer, Unit> units = units(header, ofRow);
        if (units.values().stream().distinct().count() > 1) {
            report.error(0, "", "some columns are in um, others in mil", "keep those of one unit");
            return;
        }
        for (int i = ofRow.isEmpty() ? 1 : 2; i < rows.size(); i++) {
            if (i > MOST_ROWS) {
                report.error(
                        rows.get(i).get(0).offset(),
                        "",
                        "there are more than " + MOST_ROWS + " rows",
                        "split the file");
                return;
            }
            row(rows.get(i), header, units);
        }
        if (unitMissing) {
            report.error(
                    0,
                    "",
                    "the file does not say whether its readings are in um or in mil",
                    "name the columns so, such as zone,um or zone,mil 1,mil 2");
            return;
        }
        if (decimalIsClear()) {
            keep();
            boolean comma = numbers.stream().anyMatch(w -> ",".equals(w.number().group(2)));
            List<List<Cell>> heads = rows.subList(0, ofRow.isEmpty() ? 1 : 2);
            layout = Optional.of(new Layout(separatorInUse, header, heads, units, comma, kept));
        }
    }

    /** A second row that names the unit under each reading and no zone. */
    private static Map<Integer, Unit> unitRow(List<Cell> row, ReadingsHeader header) {
        Map<Integer, Unit> units = new LinkedHashMap<>();
        if (row.size() != header.size() || !row.get(header.zone()).text().isBlank()) {
            return units;
        }
        for (ReadingsHeader.Column column : header.readings()) {
            Optional<Unit> unit = ReadingsHeader.unit(row.get(column.index()).text());
            if (unit.isEmpty()) {
                return Map.of();
            }
            units.put(column.index(), unit.get());
        }
        return units;
    }

    private static Map<Integer, Unit> units(ReadingsHeader header, Map<Integer, Unit> ofRow) {
        Map<Integer, Unit> units = new LinkedHashMap<>(ofRow);
        for (ReadingsHeader.Column column : header.readings()) {
            column.unit().ifPresent(u -> units.merge(column.index(), u, (below, named) -> named));
        }
        return units;
    }

    private void row(List<Cell> row, ReadingsHeader header, Map<Integer, Unit> units) {
        if (row.size() != header.size()) {
            report.error(
                    row.get(0).offset(),
                    "",
                    "this row has " + row.size() + (row.size() == 1 ? " cell" : " cells") + ", the header has "
                            + header.size(),
                    "write decimals with a point, or put a cell that holds the separator in double quotes");
            return;
        }
        Cell zone = row.get(header.zone());
        if (!Fields.isId(zone.text())) {
            report.error(
                    zone.offset(),
                    ReadingsHeader.ZONE,
                    "the text " + Shown.quoted(zone.text()) + " is no id",
                    "use " + Fields.AN_ID);
            return;
        }
        boolean empty = true;
        List<Slot> slots = new ArrayList<>();
        for (ReadingsHeader.Column column : header.readings()) {
            Cell cell = row.get(column.index());
            if (cell.text().isBlank()) {
                slots.add(new Slot(column.index(), Optional.empty(), Optional.empty()));
            } else {
                empty = false;
                Optional<Unit> unit = unit(row, header, column, units);
                slots.add(new Slot(column.index(), unit, number(zone.text(), cell, column, unit)));
            }
        }
        kept.add(new Row(zone.text(), row, slots));
        if (empty) {
            refuse(row.get(header.readings().get(0).index()), header.readings().get(0));
            return;
        }
        readings.offsets().putIfAbsent(zone.text(), zone.offset());
    }

    private Optional<Unit> unit(
            List<Cell> row, ReadingsHeader header, ReadingsHeader.Column column, Map<Integer, Unit> units) {
        Optional<Unit> ofColumn = Optional.ofNullable(units.get(column.index()));
        if (header.unit().isEmpty()) {
            return ofColumn.or(form::unit);
        }
        Cell cell = row.get(header.unit().get());
        Optional<Unit> ofRow = ReadingsHeader.unit(cell.text());
        if (ofRow.isEmpty() || ofColumn.filter(u -> u != ofRow.get()).isPresent()) {
            report.error(
                    cell.offset(),
                    "unit",
                    "the text " + Shown.quoted(cell.text()) + " is no unit of this row's readings",
                    "give " + ofColumn.map(Unit::symbol).orElse("um or mil"));
            return Optional.of(ofColumn.orElse(Unit.MICROMETRE));
        }
        return ofRow;
    }

    private Optional<BigDecimal> number(String zone, Cell cell, ReadingsHeader.Column column, Optional<Unit> unit) {
        Matcher number = NUMBER.matcher(cell.text().strip());
        if (!number.matches()) {
            refuse(cell, column);
        } else if (unit.isEmpty()) {
            unitMissing = true;
        } else {
            BigDecimal um = micrometres(number, unit.get());
            if (um.signum() == 0 || um.compareTo(MOST_UM) > 0) {
                refuse(cell, column);
            } else {
                numbers.add(new Written(zone, cell, number, unit.get()));
                return Optional.of(um);
            }
        }
        return Optional.empty();
    }

    private void refuse(Cell cell, ReadingsHeader.Column column) {
        report.error(
                cell.offset(),
                column.name(),
                "the text " + Shown.quoted(cell.text()) + " is no film thickness",
                "give a number above 0, at most " + MOST_UM.toPlainString()
                        + " um; mark a zone that a gauge cannot read as unreadable in job.json");
    }

    private static BigDecimal micrometres(Matcher number, Unit unit) {
        String fraction = number.group(3) == null ? "" : "." + number.group(3);
        return new Quantity(new BigDecimal(number.group(1) + fraction), unit).inBase();
    }

    /** Whether all numbers together leave no doubt about their decimal mark; else the report says so. */
    private boolean decimalIsClear() {
        List<Written> broken =
                numbers.stream().filter(w -> w.number().group(2) != null).toList();
        Set<Character> marks =
                broken.stream().map(w -> w.number().group(2).charAt(0)).collect(Collectors.toCollection(TreeSet::new));
        if (form.decimal().isPresent()) {
            return onlyNamed(broken, form.decimal().get());
        }
        if (marks.size() > 1) {
            return onlyNamed(broken, broken.get(0).number().group(2).charAt(0));
        }
        if (!marks.contains(',') || !broken.stream().allMatch(ReadingsCsv::mayBeThousands)) {
            return true;
        }
        Cell first = broken.get(0).cell();
        report.error(
                first.offset(),
                "",
                "the comma in " + Shown.quoted(first.text()) + " may part thousands or decimals",
                "write all numbers with a point, or one of them with fewer decimals");
        return false;
    }

    private boolean onlyNamed(List<Written> broken, char mark) {
        Optional<Written> other = broken.stream()
                .filter(w -> w.number().group(2).charAt(0) != mark)
                .findFirst();
        other.ifPresent(w -> report.error(
                w.cell().offset(),
                "",
                "the decimal mark of " + Shown.quoted(w.cell().text()) + " is not the "
                        + (mark == ',' ? "comma" : "point") + " of the others",
                "write all numbers with one mark"));
        return other.isEmpty();
    }

    private static boolean mayBeThousands(Written written) {
        String whole = written.number().group(1);
        return written.number().group(3).length() == 3 && whole.length() <= 3 && !whole.startsWith("0");
    }

    private void keep() {
        for (Written written : numbers) {
            readings.byZone()
                    .computeIfAbsent(written.zone(), z -> new ArrayList<>())
                    .add(new Reading(
                            micrometres(written.number(), written.unit()),
                            report.source().file() + ":"
                                    + report.source()
                                            .place(written.cell().offset())
                                            .line()));
        }
        doubt(
                Unit.MICROMETRE,
                Unit.MIL,
                numbers.stream().map(ReadingsCsv::asWritten).allMatch(n -> n.compareTo(UNLIKELY) < 0));
        doubt(
                Unit.MIL,
                Unit.MICROMETRE,
                numbers.stream().map(ReadingsCsv::asWritten).allMatch(n -> n.compareTo(UNLIKELY) > 0));
    }

    private static BigDecimal asWritten(Written written) {
        return new BigDecimal(written.cell().text().strip().replace(',', '.'));
    }

    private void doubt(Unit named, Unit other, boolean looksOther) {
        if (looksOther && !numbers.isEmpty() && numbers.stream().allMatch(w -> w.unit() == named)) {
            report.warning(
                    numbers.get(0).cell().offset(),
                    "",
                    "every reading is given in " + named.symbol() + " and looks like " + other.symbol(),
                    "check the unit in the header");
        }
    }
}
