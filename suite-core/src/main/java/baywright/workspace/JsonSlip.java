package baywright.workspace;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A slip against JSON's grammar, told in the words of someone who edits the file by hand. The parser's own words speak to
 * programmers; what is not listed here is passed on as it says it.
 *
 * @param what   what was met
 * @param mend   how to mend it
 * @param length how many characters the parser's place lies behind the slip
 */
record JsonSlip(String what, String mend, int length) {

    private static final Pattern UNEXPECTED =
            Pattern.compile("Unexpected character \\('(.*?)' \\(code \\d+.*?\\)\\)(.*)", Pattern.DOTALL);
    private static final Pattern NO_NUMBER = Pattern.compile("Non-standard token '(.*?)'.*", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("Unrecognized token '(.*?)'.*", Pattern.DOTALL);
    private static final Pattern ESCAPE = Pattern.compile("Unrecognized character escape '(.)'.*", Pattern.DOTALL);

    private record Expected(String sign, String mend) {}

    private static final List<Expected> EXPECTED = List.of(
            new Expected("comment", "delete the comment, JSON has none"),
            new Expected("comma to separate", "put a comma before it"),
            new Expected(
                    "double-quote to start field name", "put a name in double quotes here or delete the comma before"),
            new Expected("colon to separate", "put a colon before it"),
            new Expected("plus sign", "delete the plus sign"),
            new Expected(
                    "valid value",
                    "put a text in double quotes, a number, a list, an object, true, false or null here"));

    static JsonSlip of(JsonProcessingException e) {
        String message = e.getOriginalMessage();
        if (e instanceof JsonEOFException) {
            return new JsonSlip(
                    "the file ends too early", "close the bracket, brace or quotation mark that is open", 0);
        }
        Matcher unexpected = UNEXPECTED.matcher(message);
        if (unexpected.matches()) {
            return unexpected(unexpected.group(1), unexpected.group(2));
        }
        Matcher noNumber = NO_NUMBER.matcher(message);
        if (noNumber.matches()) {
            String token = noNumber.group(1);
            return new JsonSlip("met " + Shown.quoted(token), "give a number", token.length());
        }
        Matcher word = WORD.matcher(message);
        if (word.matches()) {
            return new JsonSlip("met " + Shown.quoted(word.group(1)), "put a text in double quotes", 0);
        }
        Matcher escape = ESCAPE.matcher(message);
        if (escape.matches()) {
            return new JsonSlip(
                    "met a backslash before " + Shown.quoted(escape.group(1)), "write two for a backslash itself", 0);
        }
        if (message.contains("Leading zeroes")) {
            return new JsonSlip("met a number that begins with 0", "delete the leading zero", 0);
        }
        if (message.contains("Illegal unquoted character")) {
            return new JsonSlip(
                    "a text holds a line break or another control character", "close the text or write \\n", 0);
        }
        return new JsonSlip(Shown.plain(message.lines().findFirst().orElse("this is not JSON")), "mend the JSON", 0);
    }

    private static JsonSlip unexpected(String met, String wanted) {
        String mend = EXPECTED.stream()
                .filter(e -> wanted.contains(e.sign()))
                .map(Expected::mend)
                .findFirst()
                .orElse("mend the JSON");
        return new JsonSlip("met " + Shown.quoted(met), mend, 0);
    }
}
