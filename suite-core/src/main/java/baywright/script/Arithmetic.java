package baywright.script;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The operators. Numbers are exact to 34 significant digits and rounded half even beyond, as decimal128 of IEEE 754-2008
 * has it.
 */
final class Arithmetic {

    private static final MathContext EXACT = MathContext.DECIMAL128;
    private static final int MOST_POWER = 100;

    private Arithmetic() {}

    static Set<String> from(Value a, Value b) {
        if (b.from().isEmpty()) {
            return a.from();
        }
        if (a.from().isEmpty()) {
            return b.from();
        }
        Set<String> both = new TreeSet<>(a.from());
        both.addAll(b.from());
        return both;
    }

    static Value negate(Value value, Place place) {
        if (value.raw() instanceof BigDecimal number) {
            return new Value(number.negate(), place, value.from());
        }
        if (value.raw() instanceof Quantity quantity) {
            return new Value(quantity.times(BigDecimal.ONE.negate()), place, value.from());
        }
        throw Fault.of(
                place, "wrong-operand", "a minus stands before a number or an amount, not before " + value.described());
    }

    static Value apply(Operator operator, Value left, Value right, Place place) {
        return new Value(raw(operator, left, right, place), place, from(left, right));
    }

    private static Object raw(Operator operator, Value left, Value right, Place place) {
        return switch (operator) {
            case PLUS -> plus(left, right, place);
            case MINUS -> minus(left, right, place);
            case TIMES -> times(left, right, place);
            case DIVIDE -> divide(left, right, place);
            case REMAINDER -> remainder(left, right, place);
            case POWER -> power(left, right, place);
            case EQUAL -> equal(left, right, place);
            case NOT_EQUAL -> !equal(left, right, place);
            case LESS, AT_MOST, MORE, AT_LEAST -> ordered(operator, left, right, place);
            case IN -> in(left, right, place);
            case AND, OR, NOT -> throw new IllegalArgumentException("no value of two sides: " + operator);
        };
    }

    private static Object plus(Value left, Value right, Place place) {
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof BigDecimal b) {
            return bounded(a.add(b), left, right, place);
        }
        if (left.raw() instanceof Quantity a && right.raw() instanceof Quantity b && a.dimension() == b.dimension()) {
            return sum(a, b);
        }
        if (left.raw() instanceof String a && right.raw() instanceof String b) {
            return text(a + b, place);
        }
        if (left.raw() instanceof List<?> a && right.raw() instanceof List<?> b) {
            List<Object> both = new ArrayList<>(a);
            both.addAll(b);
            return list(both, place);
        }
        if (left.raw() instanceof Map<?, ?> a && right.raw() instanceof Map<?, ?> b) {
            Map<Object, Object> both = new LinkedHashMap<>(a);
            both.putAll(b);
            return both;
        }
        throw unlike("adds", left, right, place);
    }

    private static Object minus(Value left, Value right, Place place) {
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof BigDecimal b) {
            return bounded(a.subtract(b), left, right, place);
        }
        if (left.raw() instanceof Quantity a && right.raw() instanceof Quantity b && a.dimension() == b.dimension()) {
            return sum(a, b.times(BigDecimal.ONE.negate()));
        }
        throw unlike("subtracts", left, right, place);
    }

    private static Quantity sum(Quantity a, Quantity b) {
        return a.unit() == b.unit()
                ? new Quantity(a.amount().add(b.amount()), a.unit())
                : new Quantity(a.inBase().add(b.inBase()), base(a.unit()));
    }

    private static Unit base(Unit unit) {
        return Arrays.stream(Unit.values())
                .filter(u -> u.dimension() == unit.dimension())
                .filter(u -> new Quantity(BigDecimal.ONE, u).inBase().compareTo(BigDecimal.ONE) == 0)
                .findFirst()
                .orElseThrow();
    }

    private static Object times(Value left, Value right, Place place) {
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof BigDecimal b) {
            return bounded(a.multiply(b), left, right, place);
        }
        if (left.raw() instanceof Quantity a && right.raw() instanceof BigDecimal b) {
            return new Quantity(bounded(a.amount().multiply(b), left, right, place), a.unit());
        }
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof Quantity b) {
            return new Quantity(bounded(a.multiply(b.amount()), left, right, place), b.unit());
        }
        throw unlike("multiplies", left, right, place);
    }

    private static Object divide(Value left, Value right, Place place) {
        if (left.raw() instanceof Quantity a && right.raw() instanceof Quantity b && a.dimension() == b.dimension()) {
            return quotient(a.inBase(), b.inBase(), left, right, place);
        }
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof BigDecimal b) {
            return quotient(a, b, left, right, place);
        }
        if (left.raw() instanceof Quantity a && right.raw() instanceof BigDecimal b) {
            return new Quantity(quotient(a.amount(), b, left, right, place), a.unit());
        }
        throw unlike("divides", left, right, place);
    }

    private static BigDecimal quotient(BigDecimal a, BigDecimal b, Value left, Value right, Place place) {
        if (b.signum() == 0) {
            throw Fault.ofValue(place, "divides by zero", List.of(left, right));
        }
        BigDecimal result = a.divide(b, EXACT);
        BigDecimal plain = result.stripTrailingZeros();
        return bounded(plain.scale() < 0 ? plain.setScale(0) : plain, left, right, place);
    }

    private static Object remainder(Value left, Value right, Place place) {
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof BigDecimal b) {
            if (b.signum() == 0) {
                throw Fault.ofValue(place, "divides by zero", List.of(left, right));
            }
            return bounded(a.remainder(b), left, right, place);
        }
        throw unlike("takes the remainder of", left, right, place);
    }

    private static Object power(Value left, Value right, Place place) {
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof BigDecimal b) {
            boolean small = b.signum() >= 0
                    && b.compareTo(BigDecimal.valueOf(MOST_POWER)) <= 0
                    && b.stripTrailingZeros().scale() <= 0;
            if (!small) {
                throw Fault.ofValue(
                        place,
                        "a power is a whole number from 0 to " + MOST_POWER + ", not " + b.toPlainString(),
                        List.of(left, right));
            }
            return bounded(a.pow(b.intValueExact(), EXACT), left, right, place);
        }
        throw unlike("raises", left, right, place);
    }

    static BigDecimal bounded(BigDecimal number, Value left, Value right, Place place) {
        BigDecimal rounded = number.precision() > EXACT.getPrecision() ? number.round(EXACT) : number;
        long magnitude = (long) rounded.precision() - rounded.scale();
        if (Math.abs((long) rounded.scale()) > Limits.COMPUTED_SCALE || Math.abs(magnitude) > Limits.COMPUTED_SCALE) {
            throw Fault.ofValue(place, "the number is too large or too fine to work with", List.of(left, right));
        }
        return rounded;
    }

    static String text(String text, Place place) {
        fits(text, place);
        return text;
    }

    static void fits(CharSequence text, Place place) {
        if (text.length() > Limits.TEXT_RESULT) {
            throw Fault.of(place, "limit", "a text holds at most " + Limits.TEXT_RESULT + " characters");
        }
    }

    /** Steps that an operator takes beyond the one of its own: a power its exponent, else what its sides hold. */
    static long cost(Operator operator, Value left, Value right) {
        boolean power = operator == Operator.POWER && right.raw() instanceof BigDecimal;
        long exponent = power
                ? ((BigDecimal) right.raw()).min(BigDecimal.valueOf(MOST_POWER)).longValue()
                : 0;
        boolean deep = operator == Operator.EQUAL || operator == Operator.NOT_EQUAL || operator == Operator.IN;
        long sides = deep ? inside(left, 0) + inside(right, 0) : cost(left) + cost(right);
        return Math.max(exponent, 0) + sides;
    }

    /** Steps that reading a value once takes beyond the first: one for each 16 digits, 64 characters and entry. */
    static long cost(Value value) {
        Object raw = value.raw();
        if (raw instanceof BigDecimal number) {
            return ((long) number.precision() + Math.abs((long) number.scale())) / 16;
        }
        if (raw instanceof Quantity quantity) {
            return ((long) quantity.amount().precision()
                            + Math.abs((long) quantity.amount().scale()))
                    / 16;
        }
        if (raw instanceof String text) {
            return text.length() / 64;
        }
        if (raw instanceof List<?> list) {
            return list.size();
        }
        return raw instanceof Map<?, ?> map ? map.size() : 0;
    }

    /** The same with what stands in lists in lists; counted no further than to more than anything may cost. */
    private static long inside(Value value, long before) {
        long cost = before + cost(value);
        if (value.raw() instanceof List<?> list) {
            for (Object entry : list) {
                if (cost > Limits.STEPS) {
                    break;
                }
                cost = inside((Value) entry, cost);
            }
        }
        return cost;
    }

    static <T> List<T> list(List<T> list, Place place) {
        if (list.size() > Limits.LIST) {
            throw Fault.of(place, "limit", "a list holds at most " + Limits.LIST + " entries");
        }
        return List.copyOf(list);
    }

    /** Whether two values are the same: numbers and amounts by size, however they were written. */
    static boolean equal(Value left, Value right, Place place) {
        Object a = left.raw();
        Object b = right.raw();
        if (a instanceof BigDecimal x && b instanceof BigDecimal y) {
            return x.compareTo(y) == 0;
        }
        if (a instanceof Quantity x && b instanceof Quantity y && x.dimension() == y.dimension()) {
            return x.compareTo(y) == 0;
        }
        if (a instanceof List<?> x && b instanceof List<?> y) {
            if (x.size() != y.size()) {
                return false;
            }
            for (int i = 0; i < x.size(); i++) {
                if (!equal((Value) x.get(i), (Value) y.get(i), place)) {
                    return false;
                }
            }
            return true;
        }
        boolean comparable = a == Value.NOTHING
                || b == Value.NOTHING
                || (a instanceof String && b instanceof String)
                || (a instanceof Boolean && b instanceof Boolean);
        if (!comparable) {
            throw Fault.of(
                    place,
                    "wrong-operand",
                    "compares " + left.described() + " with " + right.described() + ", which are never equal");
        }
        return a.equals(b);
    }

    private static boolean ordered(Operator operator, Value left, Value right, Place place) {
        if (left.raw() == Value.NOTHING || right.raw() == Value.NOTHING) {
            return false;
        }
        int order;
        if (left.raw() instanceof BigDecimal a && right.raw() instanceof BigDecimal b) {
            order = a.compareTo(b);
        } else if (left.raw() instanceof Quantity a
                && right.raw() instanceof Quantity b
                && a.dimension() == b.dimension()) {
            order = a.compareTo(b);
        } else {
            throw unlike("orders", left, right, place);
        }
        return switch (operator) {
            case LESS -> order < 0;
            case AT_MOST -> order <= 0;
            case MORE -> order > 0;
            default -> order >= 0;
        };
    }

    private static boolean in(Value left, Value right, Place place) {
        if (right.raw() instanceof List<?> list) {
            return list.stream().anyMatch(e -> equal(left, (Value) e, place));
        }
        if (right.raw() instanceof Map<?, ?> map) {
            return map.containsKey(left.raw());
        }
        if (right.raw() instanceof Value.Range range) {
            return ordered(Operator.AT_LEAST, left, range.from(), place)
                    && ordered(Operator.AT_MOST, left, range.to(), place);
        }
        throw Fault.of(
                place, "wrong-operand", "'in' wants a list, a map or a range on its right, not " + right.described());
    }

    private static Fault unlike(String verb, Value left, Value right, Place place) {
        return Fault.of(
                place,
                "wrong-operand",
                verb + " " + left.described() + " and " + right.described() + ", which do not go together");
    }
}
