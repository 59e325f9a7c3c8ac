package baywright.script;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Places, values and problems as plain data. */
public final class PlainValues {

    private static final int DEPTH = 16;
    private static final int NUMBER = 0;
    private static final int QUANTITY = 1;
    private static final int TEXT = 2;
    private static final int YES = 3;
    private static final int NO = 4;
    private static final int NOTHING = 5;
    private static final int LIST = 6;
    private static final int MAP = 7;
    private static final int RANGE = 8;

    private PlainValues() {}

    public static void write(PlainWriter out, Place place) {
        out.text(place.file());
        out.count(place.line());
        out.count(place.column());
    }

    public static Place place(PlainReader in) throws DamagedData {
        return new Place(in.text(), in.count(Integer.MAX_VALUE), in.count(Integer.MAX_VALUE));
    }

    public static void write(PlainWriter out, Problem problem) {
        write(out, problem.place());
        out.yes(problem.severity() == Problem.Severity.ERROR);
        out.text(problem.code());
        out.text(problem.message());
        out.text(problem.word());
    }

    public static Problem problem(PlainReader in) throws DamagedData {
        Place place = place(in);
        Problem.Severity severity = in.yes() ? Problem.Severity.ERROR : Problem.Severity.WARNING;
        return new Problem(place, severity, in.text(), in.text(), in.text());
    }

    public static void write(PlainWriter out, Quantity quantity) {
        out.number(quantity.amount());
        out.text(quantity.unit().symbol());
    }

    public static Quantity quantity(PlainReader in) throws DamagedData {
        BigDecimal amount = in.number();
        String symbol = in.text();
        return new Quantity(
                amount, Unit.of(symbol).orElseThrow(() -> new DamagedData("no unit is called '" + symbol + "'")));
    }

    public static void write(PlainWriter out, Value value) {
        write(out, value.place());
        out.count(value.from().size());
        new TreeSet<>(value.from()).forEach(out::text);
        Object raw = value.raw();
        if (raw instanceof BigDecimal number) {
            out.count(NUMBER);
            out.number(number);
        } else if (raw instanceof Quantity quantity) {
            out.count(QUANTITY);
            write(out, quantity);
        } else if (raw instanceof String text) {
            out.count(TEXT);
            out.text(text);
        } else if (raw instanceof Boolean yes) {
            out.count(yes ? YES : NO);
        } else if (raw instanceof List<?> list) {
            out.count(LIST);
            out.count(list.size());
            list.forEach(e -> write(out, (Value) e));
        } else if (raw instanceof Map<?, ?> map) {
            out.count(MAP);
            out.count(map.size());
            map.forEach((k, e) -> {
                out.text((String) k);
                write(out, (Value) e);
            });
        } else if (raw instanceof Value.Range range) {
            out.count(RANGE);
            write(out, range.from());
            write(out, range.to());
        } else {
            out.count(NOTHING);
        }
    }

    public static Value value(PlainReader in) throws DamagedData {
        return value(in, 0);
    }

    private static Value value(PlainReader in, int depth) throws DamagedData {
        if (depth > DEPTH) {
            throw new DamagedData("a value is nested too deeply");
        }
        Place place = place(in);
        Set<String> from = new TreeSet<>();
        int names = in.size(Limits.LIST);
        for (int i = 0; i < names; i++) {
            from.add(in.text());
        }
        return new Value(raw(in, depth), place, from);
    }

    private static Object raw(PlainReader in, int depth) throws DamagedData {
        return switch (in.count(RANGE)) {
            case NUMBER -> in.number();
            case QUANTITY -> quantity(in);
            case TEXT -> in.text();
            case YES -> true;
            case NO -> false;
            case NOTHING -> Value.NOTHING;
            case LIST -> list(in, depth);
            case MAP -> map(in, depth);
            default -> new Value.Range(value(in, depth + 1), value(in, depth + 1));
        };
    }

    private static List<Value> list(PlainReader in, int depth) throws DamagedData {
        int size = in.size(Limits.LIST);
        List<Value> list = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            list.add(value(in, depth + 1));
        }
        return list;
    }

    private static Map<String, Value> map(PlainReader in, int depth) throws DamagedData {
        int size = in.size(Limits.LIST);
        Map<String, Value> map = new LinkedHashMap<>();
        for (int i = 0; i < size; i++) {
            String key = in.text();
            map.put(key, value(in, depth + 1));
        }
        return map;
    }
}
