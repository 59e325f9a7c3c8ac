package baywright.workspace;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * {@link Json} to text for people and for line-by-line comparison: two spaces a level, a list or object of plain values
 * on one line while that fits, a line end at the end.
 */
final class JsonForm {

    private static final int WIDTH = 110;

    private final StringBuilder out = new StringBuilder();

    private JsonForm() {}

    static String of(Json value) {
        JsonForm form = new JsonForm();
        form.write(value, 0, 0, true);
        return form.out.append('\n').toString();
    }

    /** @param used characters of the line that stand before the value */
    private void write(Json value, int level, int used, boolean top) {
        if (value instanceof Json.Obj object) {
            writeObject(object.members(), level, used, top);
        } else if (value instanceof Json.Arr array) {
            writeArray(array.elements(), level, used);
        } else {
            out.append(plain(value));
        }
    }

    private void writeObject(Map<String, Json> members, int level, int used, boolean top) {
        if (!top && members.values().stream().noneMatch(JsonForm::isNested)) {
            String line = oneLine(members);
            if (used + line.length() <= WIDTH) {
                out.append(line);
                return;
            }
        }
        out.append('{');
        for (Iterator<Map.Entry<String, Json>> all = members.entrySet().iterator(); all.hasNext(); ) {
            Map.Entry<String, Json> member = all.next();
            String name = newLine(level + 1) + quoted(member.getKey()) + ": ";
            out.append(name);
            write(member.getValue(), level + 1, name.length(), false);
            out.append(all.hasNext() ? "," : "");
        }
        out.append(newLine(level)).append('}');
    }

    private void writeArray(List<Json> elements, int level, int used) {
        if (elements.stream().noneMatch(JsonForm::isNested)) {
            String line = "["
                    + String.join(", ", elements.stream().map(JsonForm::plain).toList()) + "]";
            if (used + line.length() <= WIDTH) {
                out.append(line);
                return;
            }
        }
        out.append('[');
        for (Iterator<Json> all = elements.iterator(); all.hasNext(); ) {
            out.append(newLine(level + 1));
            write(all.next(), level + 1, 2 * (level + 1), false);
            out.append(all.hasNext() ? "," : "");
        }
        out.append(newLine(level)).append(']');
    }

    private static String newLine(int level) {
        return "\n" + "  ".repeat(level);
    }

    private static boolean isNested(Json value) {
        return (value instanceof Json.Obj object && !object.members().isEmpty())
                || (value instanceof Json.Arr array && !array.elements().isEmpty());
    }

    private static String oneLine(Map<String, Json> members) {
        if (members.isEmpty()) {
            return "{}";
        }
        return "{ "
                + String.join(
                        ", ",
                        members.entrySet().stream()
                                .map(m -> quoted(m.getKey()) + ": " + plain(m.getValue()))
                                .toList())
                + " }";
    }

    private static String plain(Json value) {
        if (value instanceof Json.Text text) {
            return quoted(text.value());
        }
        if (value instanceof Json.Num number) {
            return number.written();
        }
        if (value instanceof Json.Bool bool) {
            return Boolean.toString(bool.value());
        }
        if (value instanceof Json.Obj) {
            return "{}";
        }
        return value instanceof Json.Arr ? "[]" : "null";
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        JsonStringEncoder.getInstance().quoteAsString(text, quoted);
        return quoted.append('"').toString();
    }
}
