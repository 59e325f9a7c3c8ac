package baywright.safety;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The table of hazard codes of the UN Globally Harmonized System, revision 10. A code has a row for each category, with its
 * own signal word. The published file has faults; they are kept out of the rows and listed in {@link #faults}. A shop in
 * the European Union takes its texts from {@link Statements}. Data: see {@code ghs/SOURCE.md}.
 *
 * @param rows          hazard codes that stand, one row for each category
 * @param precautions   texts of the P codes that stand, by code
 * @param faults        what the file has wrong, one line each, in its order
 */
public record UnTable(List<Row> rows, Map<String, String> precautions, List<Fault> faults) {

    /**
     * One category of a hazard.
     *
     * @param code      H code, or several joined by {@code +}
     * @param text      as the table has it, slips of the pen mended
     * @param hazard    class
     * @param category  category within the class
     * @param pictogram GHS01 to GHS09, or empty
     * @param signal    Danger, Warning or empty
     * @param advice    P codes
     */
    public record Row(
            String code,
            String text,
            String hazard,
            String category,
            String pictogram,
            String signal,
            List<String> advice) {
        public Row {
            advice = List.copyOf(advice);
        }
    }

    /** Something wrong in the published file. */
    public record Fault(int line, String code, String what) {}

    private static final int COLUMNS = 8;
    private static final String DELETED = "(Deleted)";
    private static final UnTable READ = parse(Resources.lines("ghs/un-ghs-rev10-codes.tsv"));

    public UnTable {
        rows = List.copyOf(rows);
        precautions = Map.copyOf(precautions);
        faults = List.copyOf(faults);
    }

    public static UnTable read() {
        return READ;
    }

    public boolean has(String code) {
        return precautions.containsKey(code)
                || rows.stream().anyMatch(r -> r.code().equals(code));
    }

    /** All categories of a code. */
    public List<Row> rows(String code) {
        return rows.stream().filter(r -> r.code().equals(code)).toList();
    }

    /**
     * Reads the published form.
     *
     * @param lines the file's lines, the heading first
     */
    static UnTable parse(List<String> lines) {
        List<Row> rows = new ArrayList<>();
        Map<String, String> precautions = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>();
        Set<String> codes = new LinkedHashSet<>();
        for (int i = 1; i < lines.size(); i++) {
            String[] cells = Arrays.copyOf(lines.get(i).split("\t", -1), COLUMNS);
            int line = i + 1;
            String code = cell(cells, 0);
            String text = cell(cells, 1);
            if (code.isEmpty()) {
                if (!text.isEmpty()) {
                    faults.add(new Fault(line, "", "a row without a code"));
                }
                continue;
            }
            if (!code.matches("[HP]\\d{3}.*")) {
                continue;
            }
            if (cells[7] != null && !cells[7].equals(cells[7].stripTrailing())) {
                faults.add(new Fault(line, code, "blanks behind the P codes"));
            }
            if (text.startsWith(DELETED)) {
                String space = text.startsWith(DELETED + " ") ? "" : ", without a space behind it";
                faults.add(new Fault(line, code, "withdrawn, marked (Deleted)" + space));
                continueWith(line, code, cells, faults);
                continue;
            }
            if (code.startsWith("P")) {
                precautions.put(code, mend(line, code, text, faults));
                continue;
            }
            continueWith(line, code, cells, faults);
            if (!codes.add(code)) {
                faults.add(new Fault(line, code, "the code again, for another category"));
            }
            rows.add(new Row(
                    code,
                    mend(line, code, text, faults),
                    cell(cells, 2),
                    cell(cells, 3),
                    cell(cells, 5),
                    cell(cells, 6),
                    advice(line, code, cell(cells, 7), faults)));
        }
        return new UnTable(rows, precautions, faults);
    }

    private static void continueWith(int line, String code, String[] cells, List<Fault> faults) {
        if (code.equals("H205") && cell(cells, 5).equals("GHS02")) {
            faults.add(new Fault(line, code, "shows the flame GHS02, which an explosive does not carry"));
        }
    }

    private static String cell(String[] cells, int column) {
        return cells[column] == null ? "" : cells[column].strip();
    }

    private static String mend(int line, String code, String text, List<Fault> faults) {
        String mended = text.replace("May causes", "May cause")
                .replace("configuraion", "configuration")
                .replace("explorsion", "explosion");
        if (!mended.equals(text)) {
            faults.add(new Fault(line, code, "a slip of the pen, read as '" + mended + "'"));
        }
        return mended;
    }

    private static List<String> advice(int line, String code, String cell, List<Fault> faults) {
        List<String> advice = new ArrayList<>();
        for (String part : cell.split(",", -1)) {
            String written = part.strip();
            if (!written.isEmpty()) {
                advice.add(written);
            }
        }
        if ((code.equals("H230") || code.equals("H231")) && advice.contains("P337")) {
            advice.set(advice.indexOf("P337"), "P377");
            faults.add(new Fault(line, code, "P337 where P377 is meant"));
        }
        if (code.equals("H260")) {
            faults.add(new Fault(line, code, "the list of P codes is cut off"));
        }
        return advice;
    }
}
