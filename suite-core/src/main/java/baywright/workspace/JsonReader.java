package baywright.workspace;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Text to {@link Json}: strict RFC 8259, no key twice, at most {@link #DEEPEST} levels. */
final class JsonReader {

    static final int DEEPEST = 40;
    static final int LONGEST_NUMBER = 60;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST + 10)
                    .maxNumberLength(LONGEST_NUMBER * 20)
                    .build())
            .build();
    private final Report report;
    private final JsonParser parser;

    private JsonReader(Report report, JsonParser parser) {
        this.report = report;
        this.parser = parser;
    }

    /** The value that the text is; empty when the report says what is wrong. */
    static Optional<Json> read(Report report) {
        try (JsonParser parser = FACTORY.createParser(report.source().text())) {
            return new JsonReader(report, parser).document();
        } catch (StreamConstraintsException e) {
            report.error(offset(e), "", "a number or name is longer than any that is meant here", "shorten it");
        } catch (JsonProcessingException e) {
            JsonSlip slip = JsonSlip.of(e);
            report.error(offset(e) - slip.length(), "", slip.what(), slip.mend());
        } catch (IOException e) {
            throw new IllegalStateException("reading a text from memory cannot fail", e);
        }
        return Optional.empty();
    }

    private static int offset(JsonProcessingException e) {
        return e.getLocation() == null ? 0 : (int) e.getLocation().getCharOffset();
    }

    private Optional<Json> document() throws IOException {
        if (parser.nextToken() == null) {
            report.error(0, "", "the file holds nothing but blanks", "restore it from a copy or delete it");
            return Optional.empty();
        }
        Optional<Json> value = value(1);
        if (value.isPresent() && parser.nextToken() != null) {
            report.error(here(), "", "there is more after the end of the JSON value", "delete the rest");
            return Optional.empty();
        }
        return value;
    }

    private int here() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    /** Empty as soon as the document cannot be used: a key given twice is told, and reading goes on. */
    private Optional<Json> value(int depth) throws IOException {
        int offset = here();
        if (depth > DEEPEST) {
            report.error(offset, "", "lists and objects are nested deeper than " + DEEPEST + " levels", "flatten them");
            return Optional.empty();
        }
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(offset, depth);
            case START_ARRAY -> array(offset, depth);
            case VALUE_STRING -> text(offset);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(offset);
            case VALUE_TRUE, VALUE_FALSE -> Optional.of(new Json.Bool(token == JsonToken.VALUE_TRUE, offset));
            case VALUE_NULL -> Optional.of(new Json.Null(offset));
            default -> throw new IllegalStateException("no value begins with " + token);
        };
    }

    private Optional<Json> text(int offset) throws IOException {
        String text = parser.getText();
        return isWhole(text, offset) ? Optional.of(new Json.Text(text, offset)) : Optional.empty();
    }

    /** Half of a surrogate pair cannot be written back as UTF-8. */
    private boolean isWhole(String text, int offset) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int c = text.codePointAt(i);
            if (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE) {
                report.error(offset, "", "the text holds half a character (" + Shown.named(c) + ")", "delete it");
                return false;
            }
        }
        return true;
    }

    private Optional<Json> number(int offset) throws IOException {
        String written = parser.getText();
        if (written.length() > LONGEST_NUMBER) {
            report.error(offset, "", "a number has more than " + LONGEST_NUMBER + " digits", "round it");
            return Optional.empty();
        }
        return Optional.of(new Json.Num(written, offset));
    }

    private Optional<Json> object(int offset, int depth) throws IOException {
        Map<String, Json> members = new LinkedHashMap<>();
        Map<String, Integer> places = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            int at = here();
            Integer before = places.putIfAbsent(name, at);
            parser.nextToken();
            Optional<Json> value = isWhole(name, at) ? value(depth + 1) : Optional.empty();
            if (value.isEmpty()) {
                return Optional.empty();
            }
            if (before != null) {
                report.error(
                        at,
                        "",
                        "the field " + Shown.quoted(name) + " is already given in line "
                                + report.source().place(before).line(),
                        "keep one of the two");
            }
            members.put(name, value.get());
        }
        return Optional.of(new Json.Obj(members, offset, here() + 1));
    }

    private Optional<Json> array(int offset, int depth) throws IOException {
        List<Json> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            Optional<Json> value = value(depth + 1);
            if (value.isEmpty()) {
                return Optional.empty();
            }
            elements.add(value.get());
        }
        return Optional.of(new Json.Arr(elements, offset, here() + 1));
    }
}
