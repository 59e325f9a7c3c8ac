package baywright.workspace;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * {@link Json} to text for people and for line-by-line comparison: two spaces a level, a small list or object on one line
 * while that fits, a line end at the end. What stands in a file already is taken over letter by letter.
 */
final class JsonForm {

    private static final int WIDTH = 110;

    /** An object of lists of plain values may stand on one line. */
    private static final int DEEPEST_LINE = 2;

    private final Optional<String> before;
    private final StringBuilder out = new StringBuilder();

    private JsonForm(Optional<String> before) {
        this.before = before;
    }

    static String of(Json value) {
        return new JsonForm(Optional.empty()).document(value);
    }

    /** @param before the file that those parts of the value come from that have a place */
    static String of(Json value, Source before) {
        String text = new JsonForm(Optional.of(before.text())).document(value);
        boolean isOfWindows = before.text().contains("\r\n");
        return isOfWindows ? text.replace("\r\n", "\n").replace("\n", "\r\n") : text;
    }

    private String document(Json value) {
        write(value, 0, 0);
        return out.append('\n').toString();
    }

    /** @param used characters of the line that stand before the value */
    private void write(Json value, int level, int used) {
        Optional<String> raw = raw(value);
        if (raw.isPresent()) {
            out.append(raw.get());
            return;
        }
        if (level > 0 && depth(value) <= DEEPEST_LINE) {
            String line = oneLine(value);
            if (used + line.length() <= WIDTH) {
                out.append(line);
                return;
            }
        }
        if (value instanceof Json.Obj object) {
            writeObject(object, level);
        } else if (value instanceof Json.Arr array) {
            writeArray(array, level);
        } else {
            out.append(oneLine(value));
        }
    }

    private Optional<String> raw(Json value) {
        if (value instanceof Json.Obj object && object.end() != Json.NOWHERE) {
            return before.map(text -> text.substring(object.offset(), object.end()));
        }
        if (value instanceof Json.Arr array && array.end() != Json.NOWHERE) {
            return before.map(text -> text.substring(array.offset(), array.end()));
        }
        return Optional.empty();
    }

    private void writeObject(Json.Obj object, int level) {
        out.append('{');
        for (Iterator<Map.Entry<String, Json>> all = object.members().entrySet().iterator(); all.hasNext(); ) {
            Map.Entry<String, Json> member = all.next();
            String name = newLine(level + 1) + quoted(member.getKey()) + ": ";
            out.append(name);
            write(member.getValue(), level + 1, name.length());
            out.append(all.hasNext() ? "," : "");
        }
        out.append(newLine(level)).append('}');
    }

    private void writeArray(Json.Arr array, int level) {
        out.append('[');
        for (Iterator<Json> all = array.elements().iterator(); all.hasNext(); ) {
            out.append(newLine(level + 1));
            write(all.next(), level + 1, 2 * (level + 1));
            out.append(all.hasNext() ? "," : "");
        }
        out.append(newLine(level)).append(']');
    }

    private static String newLine(int level) {
        return "\n" + "  ".repeat(level);
    }

    private static int depth(Json value) {
        if (value instanceof Json.Obj object) {
            return 1
                    + object.members().values().stream()
                            .mapToInt(JsonForm::depth)
                            .max()
                            .orElse(-1);
        }
        if (value instanceof Json.Arr array) {
            return 1 + array.elements().stream().mapToInt(JsonForm::depth).max().orElse(-1);
        }
        return 0;
    }

    private static String oneLine(Json value) {
        if (value instanceof Json.Obj object) {
            return object.members().entrySet().stream()
                    .map(m -> quoted(m.getKey()) + ": " + oneLine(m.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof Json.Arr array) {
            return array.elements().stream().map(JsonForm::oneLine).collect(Collectors.joining(", ", "[", "]"));
        }
        if (value instanceof Json.Text text) {
            return quoted(text.value());
        }
        if (value instanceof Json.Num number) {
            return number.written();
        }
        return value instanceof Json.Bool bool ? Boolean.toString(bool.value()) : "null";
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        JsonStringEncoder.getInstance().quoteAsString(text, quoted);
        return quoted.append('"').toString();
    }
}
