package baywright.library;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether a value may be given to an input or stand for a fact, and what it is then. */
public final class InputValues {

    private static final Pattern AMOUNT = Pattern.compile("(-?\\d{1,15}(?:\\.\\d{1,15})?)[ .]?([A-Za-z][A-Za-z0-9]*)");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?");

    private InputValues() {}

    /**
     * The value as the input's script sees it; empty when it does not fit. A plan's file holds texts and numbers, so
     * {@code "2.um"} or {@code "2 um"} will do for a measure and {@code "yes"} for a yes-or-no.
     */
    public static Optional<Value> fit(Input input, Value value) {
        Optional<Object> raw =
                switch (input.kind()) {
                    case CHOICE -> text(value).filter(input.choices()::contains).map(t -> t);
                    case COUNT ->
                        number(value)
                                .filter(n -> n.stripTrailingZeros().scale() <= 0)
                                .filter(n -> inside(input, n))
                                .map(n -> n);
                    case MEASURE ->
                        amount(value)
                                .filter(q -> input.dimension().equals(Optional.of(q.dimension())))
                                .filter(q -> inside(input, q.inBase()))
                                .map(q -> q);
                    case YES_NO -> truth(value).map(b -> b);
                };
        return raw.map(r -> new Value(r, value.place(), value.from()));
    }

    /** What an input takes, in words: {@code a whole number from 1 to 3}. */
    public static String wanted(Input input) {
        return switch (input.kind()) {
            case CHOICE -> "one of '" + String.join("', '", input.choices()) + "'";
            case COUNT ->
                "a whole number from " + shown(input.least().orElseThrow()) + " to "
                        + shown(input.most().orElseThrow());
            case MEASURE ->
                "an amount from " + input.least().orElseThrow().described() + " to "
                        + input.most().orElseThrow().described();
            case YES_NO -> "true or false";
        };
    }

    /** The value of a fact as a script sees it; empty when it does not fit. Surveys hold texts. */
    public static Optional<Value> fit(Fact fact, Value value) {
        Optional<Object> raw =
                switch (fact.kind()) {
                    case CHOICE -> text(value).filter(fact.choices()::contains).map(t -> t);
                    case NUMBER ->
                        value.raw() == Value.NOTHING
                                ? Optional.of(Value.NOTHING)
                                : number(value).map(n -> n);
                    case YES_NO -> truth(value).map(b -> b);
                };
        return raw.map(r -> new Value(r, value.place(), value.from()));
    }

    /** What a fact takes, in words. */
    public static String wanted(Fact fact) {
        return switch (fact.kind()) {
            case CHOICE -> "one of '" + String.join("', '", fact.choices()) + "'";
            case NUMBER -> "a number";
            case YES_NO -> "true or false";
        };
    }

    /** The value of a fact when the survey says nothing; {@link Value#NOTHING} when it has no usual value. */
    public static Value usual(Fact fact) {
        Object raw = fact.usual().isEmpty()
                ? Value.NOTHING
                : fit(fact, Value.of(fact.usual(), fact.place())).orElseThrow().raw();
        return Value.of(raw, fact.place());
    }

    private static boolean inside(Input input, BigDecimal size) {
        return size.compareTo(size(input.least().orElseThrow())) >= 0
                && size.compareTo(size(input.most().orElseThrow())) <= 0;
    }

    private static BigDecimal size(Value value) {
        return value.raw() instanceof Quantity quantity ? quantity.inBase() : (BigDecimal) value.raw();
    }

    /** A value as short as a message allows: {@code 3}, {@code 'heavy'}, {@code 2.um}. */
    static String shown(Value value) {
        if (value.raw() instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return value.raw() instanceof String text ? "'" + text + "'" : value.described();
    }

    private static Optional<String> text(Value value) {
        return value.raw() instanceof String text ? Optional.of(text) : Optional.empty();
    }

    private static Optional<BigDecimal> number(Value value) {
        if (value.raw() instanceof BigDecimal number) {
            return Optional.of(number);
        }
        return text(value)
                .map(String::strip)
                .filter(t -> NUMBER.matcher(t).matches())
                .map(BigDecimal::new);
    }

    private static Optional<Boolean> truth(Value value) {
        if (value.raw() instanceof Boolean yes) {
            return Optional.of(yes);
        }
        return text(value).flatMap(t -> switch (t.strip().toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> Optional.of(true);
            case "no", "false" -> Optional.of(false);
            default -> Optional.empty();
        });
    }

    private static Optional<Quantity> amount(Value value) {
        if (value.raw() instanceof Quantity quantity) {
            return Optional.of(quantity);
        }
        return text(value)
                .map(String::strip)
                .map(AMOUNT::matcher)
                .filter(Matcher::matches)
                .flatMap(m -> Unit.of(m.group(2)).map(u -> new Quantity(new BigDecimal(m.group(1)), u)));
    }
}
