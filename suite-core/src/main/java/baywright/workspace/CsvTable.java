package baywright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A text of separated values by RFC 4180 with the separator as a parameter, and the place of every cell. Rows end with
 * CR, LF or both; rows without any character are passed over. Blanks belong to their cell.
 *
 * @param rows  in order, each with at least one cell
 * @param loose where a quotation mark stands that does not open or close a cell; what follows is not read
 */
record CsvTable(List<List<Cell>> rows, Optional<Integer> loose) {

    /** A cell without its quotation marks, where it begins, and where it ends with them. */
    record Cell(String text, int offset, int end) {}

    /** Reads a whole text. */
    static CsvTable of(String text, char separator) {
        return new Reader(text, separator).read();
    }

    private static final class Reader {
        private final String text;
        private final char separator;
        private final List<List<Cell>> rows = new ArrayList<>();
        private List<Cell> row = new ArrayList<>();
        private int at;

        Reader(String text, char separator) {
            this.text = text;
            this.separator = separator;
        }

        CsvTable read() {
            while (at < text.length()) {
                Optional<Integer> loose = cell();
                if (loose.isPresent()) {
                    return new CsvTable(rows, loose);
                }
                if (at >= text.length() || isLineEnd()) {
                    endRow();
                } else {
                    at++;
                    if (at == text.length()) {
                        row.add(new Cell("", at, at));
                        endRow();
                    }
                }
            }
            return new CsvTable(rows, Optional.empty());
        }

        private boolean isLineEnd() {
            return text.charAt(at) == '\n' || text.charAt(at) == '\r';
        }

        private void endRow() {
            if (row.size() > 1 || !row.get(0).text().isEmpty()) {
                rows.add(row);
            }
            row = new ArrayList<>();
            if (text.startsWith("\r\n", at)) {
                at++;
            }
            at++;
        }

        private Optional<Integer> cell() {
            int start = at;
            if (text.charAt(at) == '"') {
                return quoted(start);
            }
            while (at < text.length() && text.charAt(at) != separator && !isLineEnd()) {
                if (text.charAt(at) == '"') {
                    return Optional.of(at);
                }
                at++;
            }
            row.add(new Cell(text.substring(start, at), start, at));
            return Optional.empty();
        }

        private Optional<Integer> quoted(int start) {
            StringBuilder cell = new StringBuilder();
            at++;
            while (true) {
                int close = text.indexOf('"', at);
                if (close < 0) {
                    return Optional.of(start);
                }
                cell.append(text, at, close);
                at = close + 1;
                if (!text.startsWith("\"", at)) {
                    break;
                }
                cell.append('"');
                at++;
            }
            if (at < text.length() && text.charAt(at) != separator && !isLineEnd()) {
                return Optional.of(at - 1);
            }
            row.add(new Cell(cell.toString(), start, at));
            return Optional.empty();
        }
    }
}
