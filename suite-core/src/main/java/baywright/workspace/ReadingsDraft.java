package baywright.workspace;

import baywright.quantity.Unit;
import baywright.vehicle.Reading;
import baywright.workspace.CsvTable.Cell;
import baywright.workspace.ReadingsCsv.Layout;
import baywright.workspace.ReadingsCsv.Row;
import baywright.workspace.ReadingsCsv.Slot;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Readings brought into what {@code readings.csv} holds already. Rows of zones whose readings are the same stay letter by
 * letter; in others only the cells that change do. Its separator, units, decimal mark and further columns stay. A reading
 * is written to the thousandth of the file's unit.
 */
final class ReadingsDraft {

    private static final int DECIMALS = 3;
    private static final Pattern MAY_BE_THOUSANDS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

    private final Layout layout;
    private final String lineEnd;
    private boolean mustTellDecimals;

    private ReadingsDraft(Layout layout, String lineEnd, boolean mustTellDecimals) {
        this.layout = layout;
        this.lineEnd = lineEnd;
        this.mustTellDecimals = mustTellDecimals;
    }

    /** A file of nothing but these readings. */
    static String of(Map<String, List<Reading>> readings) {
        return onto(new Source(Workspace.READINGS, "zone,um\n"), readings, false);
    }

    /**
     * A file with other readings.
     *
     * @param before           sound
     * @param mustTellDecimals whether a number has to show that its comma does not part thousands, by a zero before it
     */
    static String onto(Source before, Map<String, List<Reading>> readings, boolean mustTellDecimals) {
        String text = before.text();
        String lineEnd =
                text.contains("\r\n") ? "\r\n" : text.contains("\n") ? "\n" : text.contains("\r") ? "\r" : "\n";
        return new ReadingsDraft(ReadingsCsv.layout(before), lineEnd, mustTellDecimals).written(text, readings);
    }

    /** A row as it will stand there. */
    private static final class Line {
        private final Map<Integer, String> changed = new LinkedHashMap<>();
        private final List<String> before = new ArrayList<>();
        private final List<String> after = new ArrayList<>();
        private boolean isDropped;
    }

    private String written(String text, Map<String, List<Reading>> readings) {
        Map<Row, Line> lines = new java.util.IdentityHashMap<>();
        Map<String, List<Row>> ofZone = new LinkedHashMap<>();
        for (Row row : layout.rows()) {
            lines.put(row, new Line());
            ofZone.computeIfAbsent(row.zone(), zone -> new ArrayList<>()).add(row);
        }
        ofZone.forEach((zone, rows) -> change(
                zone,
                rows,
                readings.getOrDefault(zone, List.of()).stream()
                        .map(Reading::micrometres)
                        .toList(),
                lines));
        List<String> fresh = new ArrayList<>();
        new TreeMap<>(readings).forEach((zone, all) -> {
            if (!ofZone.containsKey(zone)) {
                fresh.addAll(rows(zone, all.stream().map(Reading::micrometres).toList(), usualUnit()));
            }
        });
        return joined(text, lines, fresh);
    }

    // one zone

    private void change(String zone, List<Row> rows, List<BigDecimal> now, Map<Row, Line> lines) {
        List<At> slots = new ArrayList<>();
        rows.forEach(row -> row.slots().forEach(slot -> slots.add(new At(row, slot))));
        List<At> filled =
                slots.stream().filter(at -> at.slot().micrometres().isPresent()).toList();
        List<Match> matches = Match.of(
                filled.stream().map(at -> at.slot().micrometres().orElseThrow()).toList(), now);
        boolean grows = matches.stream().anyMatch(match -> match.before() < 0);
        if (grows && layout.header().readings().size() > 1) {
            refill(zone, rows, slots, now, lines);
        } else {
            Optional<Row> last = Optional.empty();
            for (Match match : matches) {
                if (match.before() < 0) {
                    add(zone, rows.get(0), last, now.get(match.after()), lines);
                } else {
                    At at = filled.get(match.before());
                    last = Optional.of(at.row());
                    set(at, match.after() < 0 ? Optional.empty() : Optional.of(now.get(match.after())), lines);
                }
            }
        }
        rows.forEach(row -> drop(row, lines.get(row)));
    }

    private record At(Row row, Slot slot) {}

    /** Readings one after the other into the cells of the zone's rows, and the rest into rows of their own. */
    private void refill(String zone, List<Row> rows, List<At> slots, List<BigDecimal> now, Map<Row, Line> lines) {
        for (int i = 0; i < slots.size(); i++) {
            set(slots.get(i), i < now.size() ? Optional.of(now.get(i)) : Optional.empty(), lines);
        }
        if (now.size() > slots.size()) {
            Row last = rows.get(rows.size() - 1);
            lines.get(last).after.addAll(rows(zone, now.subList(slots.size(), now.size()), unitOf(last)));
        }
    }

    /** A row behind another one, or before the first of its zone. */
    private void add(String zone, Row first, Optional<Row> after, BigDecimal um, Map<Row, Line> lines) {
        List<String> rows = after.isPresent() ? lines.get(after.get()).after : lines.get(first).before;
        rows.addAll(rows(zone, List.of(um), unitOf(after.orElse(first))));
    }

    private void set(At at, Optional<BigDecimal> now, Map<Row, Line> lines) {
        Optional<BigDecimal> before = at.slot().micrometres();
        boolean isSame = before.isPresent() == now.isPresent()
                && (now.isEmpty() || now.get().compareTo(before.get()) == 0);
        if (!isSame) {
            Unit unit = at.slot().unit().orElseGet(() -> columnUnit(at.slot().column(), unitOf(at.row())));
            lines.get(at.row())
                    .changed
                    .put(at.slot().column(), now.map(um -> cell(um, unit)).orElse(""));
        }
    }

    /** A row without a reading says nothing. */
    private static void drop(Row row, Line line) {
        line.isDropped = row.slots().stream().allMatch(slot -> {
            String changed = line.changed.get(slot.column());
            return changed == null ? slot.micrometres().isEmpty() : changed.isEmpty();
        });
    }

    // new rows

    private List<String> rows(String zone, List<BigDecimal> all, Unit unit) {
        List<String> rows = new ArrayList<>();
        int across = layout.header().readings().size();
        for (int from = 0; from < all.size(); from += across) {
            rows.add(row(zone, all.subList(from, Math.min(all.size(), from + across)), unit));
        }
        return rows;
    }

    private String row(String zone, List<BigDecimal> readings, Unit unit) {
        String[] cells = new String[layout.header().size()];
        java.util.Arrays.fill(cells, "");
        cells[layout.header().zone()] = zone;
        layout.header().unit().ifPresent(index -> cells[index] = unit.symbol());
        for (int i = 0; i < readings.size(); i++) {
            int column = layout.header().readings().get(i).index();
            cells[column] = cell(readings.get(i), columnUnit(column, unit));
        }
        return String.join(String.valueOf(layout.separator()), cells);
    }

    private Unit usualUnit() {
        return layout.rows().isEmpty() ? Unit.MICROMETRE : unitOf(layout.rows().get(0));
    }

    private static Unit unitOf(Row row) {
        return row.slots().stream()
                .flatMap(slot -> slot.unit().stream())
                .findFirst()
                .orElse(Unit.MICROMETRE);
    }

    private Unit columnUnit(int column, Unit otherwise) {
        return layout.units().getOrDefault(column, otherwise);
    }

    private String cell(BigDecimal um, Unit unit) {
        BigDecimal amount = um.divide(baywright.quantity.Quantity.of(1, unit).inBase(), DECIMALS, RoundingMode.HALF_UP);
        BigDecimal plain = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
        String text = (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
        String marked = layout.comma() ? told(text.replace('.', ',')) : text;
        return marked.indexOf(layout.separator()) >= 0 ? '"' + marked + '"' : marked;
    }

    private String told(String text) {
        if (mustTellDecimals && MAY_BE_THOUSANDS.matcher(text).matches()) {
            mustTellDecimals = false;
            return "0" + text;
        }
        return text;
    }

    // the file

    private String joined(String text, Map<Row, Line> lines, List<String> fresh) {
        List<List<Cell>> all = new ArrayList<>(layout.heads());
        layout.rows().forEach(row -> all.add(row.cells()));
        StringBuilder out =
                new StringBuilder(text.substring(0, all.get(0).get(0).offset()));
        for (int i = 0; i < all.size(); i++) {
            List<Cell> cells = all.get(i);
            int end = cells.get(cells.size() - 1).end();
            int next = i + 1 < all.size() ? all.get(i + 1).get(0).offset() : text.length();
            int ofRows = i - layout.heads().size();
            Line line = ofRows < 0 ? new Line() : lines.get(layout.rows().get(ofRows));
            List<String> rows = new ArrayList<>(line.before);
            if (!line.isDropped) {
                rows.add(withChanges(text, cells, line.changed));
            }
            rows.addAll(line.after);
            if (i + 1 == all.size()) {
                rows.addAll(fresh);
            }
            append(out, rows, text.substring(end, next));
        }
        return out.toString();
    }

    private void append(StringBuilder out, List<String> rows, String gap) {
        for (int i = 0; i < rows.size(); i++) {
            boolean open = out.length() > 0 && "\r\n".indexOf(out.charAt(out.length() - 1)) < 0;
            out.append(open ? lineEnd : "").append(rows.get(i)).append(i + 1 < rows.size() ? lineEnd : gap);
        }
    }

    private String withChanges(String text, List<Cell> cells, Map<Integer, String> changed) {
        List<String> row = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            String was = text.substring(cell.offset(), cell.end());
            row.add(changed.getOrDefault(i, told(was)));
        }
        return String.join(String.valueOf(layout.separator()), row);
    }

    /**
     * How one of two lists became the other.
     *
     * @param before index in the first; below 0: there is none
     * @param after  index in the second; below 0: there is none
     */
    private record Match(int before, int after) {

        /** More pairs than this are not looked at for the best match. */
        private static final long MOST_PAIRS = 4_000_000;

        /** In order of both lists: what is equal in both as often as can be, the rest in pairs while they last. */
        static List<Match> of(List<BigDecimal> before, List<BigDecimal> after) {
            List<Match> all = new ArrayList<>();
            int from = 0;
            while (from < Math.min(before.size(), after.size()) && same(before.get(from), after.get(from))) {
                all.add(new Match(from, from++));
            }
            int tail = 0;
            while (tail < Math.min(before.size(), after.size()) - from
                    && same(before.get(before.size() - 1 - tail), after.get(after.size() - 1 - tail))) {
                tail++;
            }
            between(before, after, new int[] {from, before.size() - tail, from, after.size() - tail}, all);
            for (int i = tail; i > 0; i--) {
                all.add(new Match(before.size() - i, after.size() - i));
            }
            return all;
        }

        private static boolean same(BigDecimal a, BigDecimal b) {
            return a.compareTo(b) == 0;
        }

        /** The longest common part of what lies between, by the textbook's table (Wagner and Fischer, 1974). */
        private static void between(List<BigDecimal> before, List<BigDecimal> after, int[] span, List<Match> all) {
            int rows = span[1] - span[0];
            int columns = span[3] - span[2];
            int i = 0;
            int j = 0;
            if ((long) rows * columns <= MOST_PAIRS) {
                int[][] longest = new int[rows + 1][columns + 1];
                for (int r = rows - 1; r >= 0; r--) {
                    for (int c = columns - 1; c >= 0; c--) {
                        longest[r][c] = same(before.get(span[0] + r), after.get(span[2] + c))
                                ? longest[r + 1][c + 1] + 1
                                : Math.max(longest[r + 1][c], longest[r][c + 1]);
                    }
                }
                int r = 0;
                int c = 0;
                while (r < rows && c < columns) {
                    if (same(before.get(span[0] + r), after.get(span[2] + c))) {
                        gap(span[0] + i, span[0] + r, span[2] + j, span[2] + c, all);
                        all.add(new Match(span[0] + r++, span[2] + c++));
                        i = r;
                        j = c;
                    } else if (longest[r + 1][c] >= longest[r][c + 1]) {
                        r++;
                    } else {
                        c++;
                    }
                }
            }
            gap(span[0] + i, span[1], span[2] + j, span[3], all);
        }

        private static void gap(int before, int beforeEnd, int after, int afterEnd, List<Match> all) {
            for (int i = before, j = after; i < beforeEnd || j < afterEnd; i++, j++) {
                all.add(new Match(i < beforeEnd ? i : -1, j < afterEnd ? j : -1));
            }
        }
    }
}
