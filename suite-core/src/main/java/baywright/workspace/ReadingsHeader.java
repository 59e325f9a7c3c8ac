package baywright.workspace;

import baywright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The first row of a file of readings.
 *
 * @param zone     index of the column of zones
 * @param unit     index of a column with the unit of each row, if there is one
 * @param readings columns of readings, at least one
 * @param size     how many columns
 */
record ReadingsHeader(int zone, Optional<Integer> unit, List<Column> readings, int size) {

    static final String ZONE = "zone";

    private static final String UNIT = "unit";

    /** What a file may keep beside the readings; the program does not use it. */
    private static final Set<String> BESIDE = Set.of("note", "date", "person", "metal", "mode", "spot");

    private static final Pattern READING =
            Pattern.compile("(?<unit>um|mil)?[ -]?(?<word>reading)?[ -]?(?<number>\\d{1,3})?");

    /** A column of readings; {@code unit} empty when the header does not name it. */
    record Column(int index, String name, Optional<Unit> unit) {}

    ReadingsHeader {
        readings = List.copyOf(readings);
    }

    /** The header, when every one of its cells is understood and there is a zone and a reading. */
    static Optional<ReadingsHeader> of(List<CsvTable.Cell> cells) {
        int zone = -1;
        Optional<Integer> unit = Optional.empty();
        List<Column> readings = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String name = name(cells.get(i).text());
            Optional<Column> reading = reading(i, name);
            if (name.equals(ZONE) && zone < 0) {
                zone = i;
            } else if (name.equals(UNIT) && unit.isEmpty()) {
                unit = Optional.of(i);
            } else if (reading.isPresent()) {
                readings.add(reading.get());
            } else if (!BESIDE.contains(name)) {
                return Optional.empty();
            }
        }
        return zone < 0 || readings.isEmpty()
                ? Optional.empty()
                : Optional.of(new ReadingsHeader(zone, unit, readings, cells.size()));
    }

    private static Optional<Column> reading(int index, String name) {
        Matcher matcher = READING.matcher(name);
        return name.isEmpty() || !matcher.matches()
                ? Optional.empty()
                : Optional.of(new Column(index, name, unit(matcher.group("unit"))));
    }

    /** {@code um} or {@code mil}, with either of the two letters that people write for micro. */
    static Optional<Unit> unit(String text) {
        return text == null ? Optional.empty() : Unit.of(name(text)).filter(u -> u == Unit.MICROMETRE || u == Unit.MIL);
    }

    private static String name(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace('\u00B5', 'u').replace('\u03BC', 'u');
    }
}
