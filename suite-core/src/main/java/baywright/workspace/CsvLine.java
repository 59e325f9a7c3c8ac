package baywright.workspace;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes rows of separated values by RFC 4180, so that a spreadsheet does not run what somebody wrote into a note. */
public final class CsvLine {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final String RUN_BY_SPREADSHEETS = "=+-@\t\r";

    private CsvLine() {}

    /** One row with commas and the line end CR LF. */
    public static String of(List<String> cells) {
        return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",", "", "\r\n"));
    }

    /**
     * One cell. A text that begins with {@code = + - @}, a tab or a line break gets an apostrophe in front; a plain
     * number stays one.
     */
    static String cell(String text) {
        boolean runs = !text.isEmpty()
                && RUN_BY_SPREADSHEETS.indexOf(text.charAt(0)) >= 0
                && !NUMBER.matcher(text).matches();
        String safe = runs ? "'" + text : text;
        boolean quoted =
                safe.chars().anyMatch(c -> c == ',' || c == ';' || c == '"' || c == '\n' || c == '\r' || c == '\t');
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
