package baywright.workspace;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * A JSON value that remembers where it was written and, for a number, how. Our own rather than a library's tree because
 * a rewritten file must keep {@code 1.50} as {@code 1.50}, and every message must say where.
 */
sealed interface Json {

    /** The place of a value that no file holds yet. */
    int NOWHERE = -1;

    /** Index of the first character in the file's text, or {@link #NOWHERE}. */
    int offset();

    /** An object; its members are in order of writing and never changed. It ends before the character {@code end}. */
    record Obj(Map<String, Json> members, int offset, int end) implements Json {
        Obj(Map<String, Json> members, int offset) {
            this(members, offset, NOWHERE);
        }
    }

    /** A list. */
    record Arr(List<Json> elements, int offset, int end) implements Json {
        Arr(List<Json> elements, int offset) {
            this(elements, offset, NOWHERE);
        }
    }

    record Text(String value, int offset) implements Json {}

    /** A number as it is written: valid JSON of at most {@link JsonReader#LONGEST_NUMBER} characters. */
    record Num(String written, int offset) implements Json {
        BigDecimal value() {
            return new BigDecimal(written);
        }
    }

    record Bool(boolean value, int offset) implements Json {}

    record Null(int offset) implements Json {}

    /** What kind of value it is, in words for a message: {@code the number 4}, {@code the text 'wet'}. */
    default String described() {
        if (this instanceof Text text) {
            return text.value().isEmpty() ? "an empty text" : "the text " + Shown.quoted(text.value());
        }
        if (this instanceof Num number) {
            return "the number " + Shown.plain(number.written());
        }
        if (this instanceof Bool bool) {
            return bool.value() ? "true" : "false";
        }
        if (this instanceof Arr) {
            return "a list";
        }
        return this instanceof Obj ? "an object" : "null";
    }
}
