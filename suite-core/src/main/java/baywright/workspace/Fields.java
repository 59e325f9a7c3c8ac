package baywright.workspace;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * The members of one JSON object, asked for one by one with the type that is meant. What does not fit is reported and a
 * stand-in returned, so that the rest is still looked at; {@link #done()} reports what nobody asked for.
 */
public final class Fields {

    static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    static final int LONGEST_ID = 60;

    /** What an id is, in words for a message. */
    public static final String AN_ID = "lower-case letters, digits and single hyphens, at most " + LONGEST_ID
            + " characters, such as 'front-door-left'";

    static final int FIRST_YEAR = 2000;
    static final int LAST_YEAR = 2100;

    private static final int LONGEST_TEXT = 4000;
    private static final String A_TIME = "a day and time such as \"2026-12-07T08:00\"";
    private static final Pattern QUANTITY = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?) ([A-Za-z0-9]+)");

    /** Line end, tab, soft hyphen and the joiner of composed signs: they belong to written text. */
    private static final String KEPT = "\n\t\u00AD\u200D";

    private static final String STAND_IN = "(none)";

    private final Report report;
    private final String path;
    private final Json.Obj object;
    private final boolean isThere;
    private final Set<String> asked = new HashSet<>();

    Fields(Report report, String path, Json.Obj object) {
        this(report, path, object, true);
    }

    /** @param isThere false for what stands in for something that was refused already: nothing is missed in it */
    private Fields(Report report, String path, Json.Obj object, boolean isThere) {
        this.isThere = isThere;
        this.report = report;
        this.path = path;
        this.object = object;
    }

    /** The members of a file's outermost object, when it is of the form {@code baywright/KIND/VERSION}. */
    static Optional<Fields> ofDocument(Report report, String kind, int version) {
        Optional<Json> root = JsonReader.read(report);
        if (root.isEmpty()) {
            return Optional.empty();
        }
        if (!(root.get() instanceof Json.Obj object)) {
            report.error(root.get().offset(), "", "met " + root.get().described(), "begin the file with {");
            return Optional.empty();
        }
        Fields fields = new Fields(report, "", object);
        return fields.isOfForm(kind, version) ? Optional.of(fields) : Optional.empty();
    }

    private boolean isOfForm(String kind, int version) {
        String form = "baywright/" + kind + "/" + version;
        String met = required("schema", "\"" + form + "\"", STAND_IN, v -> text(v, path("schema")));
        if (met.equals(form)) {
            return true;
        }
        if (report.hasErrors()) {
            return false;
        }
        String prefix = "baywright/" + kind + "/";
        if (met.startsWith(prefix) && met.substring(prefix.length()).matches("[1-9]\\d{0,5}")) {
            refuse(
                    "schema",
                    "the file has form " + met.substring(prefix.length()) + ", this version of the program reads form "
                            + version,
                    "open it with a newer version, one that reads '" + met + "'");
        } else {
            refuse("schema", "met the text " + Shown.quoted(met), "give \"" + form + "\"");
        }
        return false;
    }

    Report report() {
        return report;
    }

    Json.Obj object() {
        return object;
    }

    /** Whether a text is what stands for one that was refused already. */
    static boolean isStandIn(String text) {
        return text.equals(STAND_IN);
    }

    String path(String name) {
        return (path.isEmpty() ? "" : path + ".") + Shown.plain(name);
    }

    int offset(String name) {
        Json value = object.members().get(name);
        return value == null ? object.offset() : value.offset();
    }

    /** Reports that a field cannot be used: what was met there, and how to mend it. */
    public void refuse(String name, String what, String mend) {
        if (isThere) {
            report.error(offset(name), path(name), what, mend);
        }
    }

    void warn(String name, String what, String mend) {
        report.warning(offset(name), path(name), what, mend);
    }

    /** The value of a field; empty when it is missing or null. */
    private Optional<Json> given(String name) {
        asked.add(name);
        Json value = object.members().get(name);
        return value == null || value instanceof Json.Null ? Optional.empty() : Optional.of(value);
    }

    private <T> T required(String name, String wanted, T standIn, Function<Json, T> read) {
        Optional<Json> value = given(name);
        if (value.isEmpty()) {
            refuse(name, object.members().containsKey(name) ? "met null" : "is missing", "give " + wanted);
            return standIn;
        }
        return read.apply(value.get());
    }

    <T> T wrongKind(Json value, String at, String wanted, T standIn) {
        report.error(value.offset(), at, "met " + value.described(), "give " + wanted);
        return standIn;
    }

    // texts

    /** A text that must be there. */
    public String text(String name) {
        return required(name, "a text", STAND_IN, v -> text(v, path(name)));
    }

    /** A text; {@code usual} where there is none. */
    public String text(String name, String usual) {
        return given(name).map(v -> text(v, path(name))).orElse(usual);
    }

    /** A text that says something. */
    public String title(String name) {
        String text = text(name);
        if (text.isBlank()) {
            refuse(name, "met an empty text", "give a text that people read");
        }
        return text;
    }

    /** A list of texts; empty where there is none. */
    public List<String> texts(String name) {
        return list(name, this::text);
    }

    String text(Json value, String at) {
        if (!(value instanceof Json.Text text)) {
            return wrongKind(value, at, "a text in double quotes", STAND_IN);
        }
        if (text.value().length() > LONGEST_TEXT) {
            report.error(value.offset(), at, "the text has more than " + LONGEST_TEXT + " characters", "shorten it");
        }
        if (!Shown.isPlain(text.value())) {
            refuseControls(text, at);
        }
        return text.value();
    }

    private void refuseControls(Json.Text text, String at) {
        text.value()
                .codePoints()
                .filter(c -> !Shown.isPrintable(c) && KEPT.indexOf(c) < 0)
                .findFirst()
                .ifPresent(c -> report.error(
                        text.offset(), at, "the text holds the control character " + Shown.named(c), "delete it"));
    }

    // ids

    /** An id that must be there. */
    public String id(String name) {
        return required(name, "an id of " + AN_ID, STAND_IN, v -> id(v, path(name)));
    }

    Optional<String> idIfGiven(String name) {
        return given(name).map(v -> id(v, path(name)));
    }

    /** A list of ids; empty where there is none. */
    public List<String> ids(String name) {
        return list(name, this::id);
    }

    private String id(Json value, String at) {
        String text = text(value, at);
        if (value instanceof Json.Text && !isId(text)) {
            report.error(value.offset(), at, value.described() + " is no id", "use " + AN_ID);
        }
        return text;
    }

    /** What {@link #ID} says, without the cost of starting the pattern machinery for each of a thousand ids. */
    public static boolean isId(String text) {
        boolean hyphen = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean fits = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c == '-' && !hyphen);
            if (!fits) {
                return false;
            }
            hyphen = c == '-';
        }
        return !hyphen && text.length() <= LONGEST_ID;
    }

    /** Texts that each fit a pattern. */
    List<String> texts(String name, Pattern pattern, String wanted) {
        return list(name, (value, at) -> {
            String text = text(value, at);
            if (value instanceof Json.Text && !pattern.matcher(text).matches()) {
                wrongKind(value, at, wanted, text);
            }
            return text;
        });
    }

    // numbers

    BigDecimal number(String name, Span span) {
        return required(name, "a number " + span.words(), BigDecimal.ONE, v -> number(v, path(name), span));
    }

    BigDecimal number(String name, Span span, BigDecimal usual) {
        return given(name).map(v -> number(v, path(name), span)).orElse(usual);
    }

    Optional<BigDecimal> numberIfGiven(String name, Span span) {
        return given(name).map(v -> number(v, path(name), span));
    }

    int whole(String name, Span span, int usual) {
        return given(name).map(v -> whole(v, path(name), span)).orElse(usual);
    }

    /** A whole number that must be there. */
    public int whole(String name, Span span) {
        return required(name, "a whole number " + span.words(), 1, v -> whole(v, path(name), span));
    }

    private int whole(Json value, String at, Span span) {
        int before = report.count();
        BigDecimal number = number(value, at, span);
        if (report.count() > before) {
            return 1;
        }
        if (number.stripTrailingZeros().scale() > 0) {
            return wrongKind(value, at, "a whole number " + span.words(), 1);
        }
        return number.intValue();
    }

    BigDecimal number(Json value, String at, Span span) {
        if (!(value instanceof Json.Num written)) {
            return wrongKind(value, at, "a number " + span.words(), BigDecimal.ONE);
        }
        Optional<BigDecimal> number = sized(written);
        if (number.isEmpty() || !span.holds(number.get())) {
            report.error(value.offset(), at, value.described() + " is out of range", "give a number " + span.words());
            return BigDecimal.ONE;
        }
        if (number.get().stripTrailingZeros().scale() > 9) {
            report.error(value.offset(), at, value.described() + " has too many decimals", "round it to 9 of them");
            return BigDecimal.ONE;
        }
        return number.get();
    }

    /** The number when its exponent is of a size that can be reckoned with. */
    private static Optional<BigDecimal> sized(Json.Num written) {
        try {
            BigDecimal number = written.value();
            return Math.abs((long) number.scale()) > 100 ? Optional.empty() : Optional.of(number);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** A map from id to number, such as measures. */
    Map<String, BigDecimal> numbers(String name, Span span) {
        return map(name, (value, at) -> number(value, at, span));
    }

    /** A map from id to whole number. */
    Map<String, Integer> wholes(String name, Span span) {
        return map(name, (value, at) -> whole(value, at, span));
    }

    /** A text such as {@code 5000 ml}. */
    Quantity quantity(String name, String wanted, List<Unit> units) {
        return required(name, wanted, Quantity.of(1, units.get(0)), v -> {
            Optional<Quantity> quantity = v instanceof Json.Text text ? quantity(text.value()) : Optional.empty();
            return quantity.filter(q -> units.contains(q.unit()) && q.amount().signum() > 0)
                    .orElseGet(() -> wrongKind(v, path(name), wanted, Quantity.of(1, units.get(0))));
        });
    }

    /** What a text such as {@code 2.5 um} means; empty for another text. */
    static Optional<Quantity> quantity(String text) {
        var parts = QUANTITY.matcher(text);
        return parts.matches()
                ? Unit.of(parts.group(2)).map(u -> new Quantity(new BigDecimal(parts.group(1)), u))
                : Optional.empty();
    }

    // other single values

    /** A truth value; {@code usual} where there is none. */
    public boolean yesNo(String name, boolean usual) {
        return given(name)
                .map(v -> v instanceof Json.Bool bool ? bool.value() : wrongKind(v, path(name), "true or false", usual))
                .orElse(usual);
    }

    <T> T choice(String name, Map<String, T> choices) {
        T standIn = choices.values().iterator().next();
        return required(name, choices(choices), standIn, v -> choice(v, path(name), choices));
    }

    <T> T choice(String name, Map<String, T> choices, T usual) {
        return given(name).map(v -> choice(v, path(name), choices)).orElse(usual);
    }

    private <T> T choice(Json value, String at, Map<String, T> choices) {
        T standIn = choices.values().iterator().next();
        T chosen = value instanceof Json.Text text ? choices.get(text.value()) : null;
        return chosen == null ? wrongKind(value, at, choices(choices), standIn) : chosen;
    }

    private static String choices(Map<String, ?> choices) {
        return Shown.oneOf(choices.keySet().stream().map(c -> "\"" + c + "\"").toList());
    }

    /** A local date and time of the years {@value #FIRST_YEAR} to {@value #LAST_YEAR}. */
    Optional<LocalDateTime> time(String name) {
        return given(name).flatMap(v -> {
            if (!(v instanceof Json.Text text)) {
                return wrongKind(v, path(name), A_TIME, Optional.empty());
            }
            Optional<LocalDateTime> time = time(v, path(name), text.value());
            if (time.isPresent()
                    && (time.get().getYear() < FIRST_YEAR || time.get().getYear() > LAST_YEAR)) {
                refuse(
                        name,
                        "the year " + time.get().getYear() + " is out of range",
                        "give a year from " + FIRST_YEAR + " to " + LAST_YEAR);
            }
            return time;
        });
    }

    private Optional<LocalDateTime> time(Json value, String at, String text) {
        try {
            return Optional.of(LocalDateTime.parse(text));
        } catch (DateTimeParseException e) {
            return wrongKind(value, at, A_TIME + ", without a time zone", Optional.empty());
        }
    }

    // lists, maps and objects

    private <T> List<T> list(String name, BiFunction<Json, String, T> read) {
        Optional<Json> value = given(name);
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof Json.Arr array)) {
            return wrongKind(value.get(), path(name), "a list in square brackets", List.of());
        }
        List<T> all = new ArrayList<>();
        for (int i = 0; i < array.elements().size(); i++) {
            all.add(read.apply(array.elements().get(i), path(name) + "[" + i + "]"));
        }
        return all;
    }

    private <T> Map<String, T> map(String name, BiFunction<Json, String, T> read) {
        Map<String, T> all = new LinkedHashMap<>();
        objectIfGiven(name)
                .ifPresent(fields -> fields.object.members().forEach((key, value) -> {
                    if (!isId(key)) {
                        fields.refuse(key, "the name " + Shown.quoted(key) + " is no id", "use " + AN_ID);
                    }
                    all.put(key, read.apply(value, fields.path(key)));
                }));
        return all;
    }

    /** A map from id to anything; the reader is given the value and its path. */
    <T> Map<String, T> values(String name, BiFunction<Json, String, T> read) {
        return map(name, read);
    }

    /** A map from id to text. */
    public Map<String, String> titles(String name) {
        return map(name, this::text);
    }

    /** A map from id to object. */
    Map<String, Fields> objectsById(String name) {
        return map(name, this::fields);
    }

    /** A list of objects; empty where there is none. */
    public List<Fields> objects(String name) {
        return list(name, this::fields);
    }

    /** An object that must be there; without it, an empty one whose own fields are then not missed. */
    Optional<Fields> object(String name) {
        if (given(name).isEmpty()) {
            refuse(name, object.members().containsKey(name) ? "met null" : "is missing", "give an object in braces");
        }
        return objectIfGiven(name);
    }

    /** An object, if it is there. */
    public Optional<Fields> objectIfGiven(String name) {
        return given(name)
                .filter(v -> v instanceof Json.Obj || wrongKind(v, path(name), "an object in braces", false))
                .map(v -> new Fields(report, path(name), (Json.Obj) v));
    }

    private Fields fields(Json value, String at) {
        if (value instanceof Json.Obj members) {
            return new Fields(report, at, members);
        }
        wrongKind(value, at, "an object in braces", "");
        return new Fields(report, at, new Json.Obj(Map.of(), value.offset()), false);
    }

    /** Reports an id that an earlier object of the same list has. */
    static void refuseRepeated(List<Fields> all, List<String> ids) {
        Map<String, String> first = new LinkedHashMap<>();
        for (int i = 0; i < all.size(); i++) {
            String before = first.putIfAbsent(ids.get(i), all.get(i).path);
            if (before != null && !isStandIn(ids.get(i))) {
                all.get(i)
                        .refuse(
                                "id",
                                "the id " + Shown.quoted(ids.get(i)) + " is already used by " + before,
                                "give each its own");
            }
        }
    }

    /** The value that {@code make} makes when nothing was wrong in the whole file so far; else empty. */
    public <T> Optional<T> whenSound(Supplier<T> make) {
        return report.whenSound(make);
    }

    /** Warns of fields that this version of the program does not know; a later save keeps them. */
    public void done() {
        object.members().keySet().stream()
                .filter(name -> !asked.contains(name) && !name.startsWith("$"))
                .forEach(name -> warn(
                        name, "this field is not known here; it is kept and not used", Shown.nearest(name, asked)));
    }
}
