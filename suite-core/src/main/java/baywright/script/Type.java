package baywright.script;

import baywright.quantity.Dimension;
import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * What an argument of a word may be.
 *
 * @param one      in words, for one: {@code a duration}
 * @param many     in words, for several: {@code durations}
 * @param examples as written in a script, at least one; more for words that take several in order
 * @param complaint what is wrong with a value, in words that follow "is"; the empty text when it fits
 * @param naming   what kind of thing its texts are the ids of, where they are ids of something
 */
public record Type(
        String one, String many, List<String> examples, Function<Value, String> complaint, Optional<Naming> naming) {

    /**
     * What the texts of an argument stand for; whoever completes, explains or renames an id reads this.
     *
     * @param kind the kind of thing: {@code state}
     * @param use  how the argument names it
     */
    public record Naming(String kind, Use use) {}

    /** How an argument names a thing. */
    public enum Use {
        /** It gives the thing its id. */
        DECLARES,
        /** It means a thing that is declared elsewhere. */
        REFERS,
        /** It is a text that means such a thing when one has this id, and something else when none has. */
        MAY_REFER,
        /** The keys of the map mean such things. */
        KEYS
    }

    private static final Pattern KEBAB = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final int ID_LENGTH = 60;

    public static final Type TEXT = new Type("a text", "texts", List.of("'rinse twice'"), Type::textComplaint);
    public static final Type ID = new Type("an id", "ids", List.of("'iron-clear'"), Type::idComplaint);
    public static final Type IDS = new Type(
            "an id or a list of ids",
            "lists of ids",
            List.of("['wet', 'dry']"),
            v -> v.raw() instanceof List<?> ? eachOf(v, Type::idComplaint) : idComplaint(v));
    public static final Type TEXTS = new Type(
            "a list of texts",
            "lists of texts",
            List.of("['light', 'heavy']"),
            v -> v.raw() instanceof List<?> ? eachOf(v, Type::textComplaint) : v.described());
    public static final Type NUMBER =
            new Type("a number", "numbers", List.of("0.5"), v -> v.raw() instanceof BigDecimal ? "" : v.described());
    public static final Type COUNT = new Type(
            "a whole number from 0",
            "whole numbers",
            List.of("2"),
            v -> v.raw() instanceof BigDecimal n && n.signum() >= 0 && isWhole(n) ? "" : v.described());
    public static final Type YES_NO =
            new Type("true or false", "truths", List.of("true"), v -> v.raw() instanceof Boolean ? "" : v.described());
    public static final Type DURATION = of(Dimension.DURATION, "a duration", "durations", "3.min", "4.min", "8.min");
    public static final Type THICKNESS =
            of(Dimension.THICKNESS, "a film thickness", "film thicknesses", "1.um", "2.um", "3.um");
    public static final Type TEMPERATURE = of(Dimension.TEMPERATURE, "a temperature", "temperatures", "5.C", "30.C");
    public static final Type RATIO = of(Dimension.RATIO, "a share", "shares", "40.percent", "65.percent");
    public static final Type QUANTITY =
            new Type("an amount", "amounts", List.of("70.ml"), v -> v.raw() instanceof Quantity ? "" : v.described());
    public static final Type MAP =
            new Type("a map", "maps", List.of("[passes: 1]"), v -> v.raw() instanceof Map<?, ?> ? "" : v.described());
    public static final Type ANY = new Type(
            "a value", "values", List.of("'soft'", "2", "true"), v -> v.raw() == Value.NOTHING ? v.described() : "");
    public static final Type DURATIONS = range(DURATION, "12.min..14.min");
    public static final Type THICKNESSES = range(THICKNESS, "1.um..3.um");

    public Type {
        examples = List.copyOf(examples);
    }

    /** A type whose texts are no ids. */
    public Type(String one, String many, List<String> examples, Function<Value, String> complaint) {
        this(one, many, examples, complaint, Optional.empty());
    }

    /** The same, as ids of things of this kind that are declared elsewhere. */
    public Type naming(String kind) {
        return naming(kind, Use.REFERS);
    }

    /** The same, with what its texts stand for. */
    public Type naming(String kind, Use use) {
        return new Type(one, many, examples, complaint, Optional.of(new Naming(kind, use)));
    }

    /** Quantities of one dimension. */
    public static Type of(Dimension dimension, String one, String many, String... examples) {
        return new Type(
                one,
                many,
                List.of(examples),
                v -> v.raw() instanceof Quantity q && q.dimension() == dimension ? "" : v.described());
    }

    private static Type range(Type end, String example) {
        return new Type("a range of " + end.many, "ranges", List.of(example), v -> {
            if (!(v.raw() instanceof Value.Range range)) {
                return v.described();
            }
            boolean fits = end.fits(range.from()) && end.fits(range.to());
            return fits
                    ? ""
                    : "a range from " + range.from().described() + " to "
                            + range.to().described();
        });
    }

    /** The same rules under another name and example, for a clearer message. */
    public Type called(String newOne, String newMany, String... newExamples) {
        return new Type(newOne, newMany, List.of(newExamples), complaint, naming);
    }

    /** One text of a fixed list. */
    public static Type oneOf(String... allowed) {
        List<String> list = List.of(allowed);
        String words = "one of '" + String.join("', '", list) + "'";
        return new Type(words, words, List.of("'" + list.get(0) + "'"), v -> {
            if (v.raw() instanceof String text && list.contains(text)) {
                return "";
            }
            return v.described() + (v.raw() instanceof String text ? Nearest.hint(text, list) : "");
        });
    }

    public boolean fits(Value value) {
        return complaint.apply(value).isEmpty();
    }

    /** Whether a text is an id: lower-case ASCII letters, digits, single hyphens, a letter first, up to 60 characters. */
    public static boolean isId(String text) {
        return text.length() <= ID_LENGTH && KEBAB.matcher(text).matches();
    }

    private static boolean isWhole(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0;
    }

    private static String eachOf(Value list, Function<Value, String> complaint) {
        for (Object entry : (List<?>) list.raw()) {
            String wrong = complaint.apply((Value) entry);
            if (!wrong.isEmpty()) {
                return "a list with " + wrong;
            }
        }
        return "";
    }

    private static String textComplaint(Value value) {
        if (!(value.raw() instanceof String text)) {
            return value.described();
        }
        if (text.isBlank()) {
            return "an empty text";
        }
        if (Characters.hasForbidden(text)) {
            return "a text with control, direction or zero-width characters";
        }
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            return "a text of several lines";
        }
        if (text.strip().regionMatches(true, 0, "<html", 0, 5)) {
            return "a text that begins with <html, which a window would take for markup";
        }
        return "";
    }

    private static String idComplaint(Value value) {
        if (!(value.raw() instanceof String text)) {
            return value.described();
        }
        if (!isId(text)) {
            return value.described() + ", and an id has only lower-case letters a to z, digits and single hyphens";
        }
        return "";
    }
}
