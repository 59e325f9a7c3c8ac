package baywright.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/**
 * Records of plain values to JSON and back: texts, numbers, days, times, money, enumerations, lists, sets, maps by text,
 * optional values, and records of these. An empty optional is left out; money is a text such as {@code GBP 12.50}.
 */
final class RecordJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** JSON that is not what a record takes. */
    static final class Misfit extends Exception {
        private static final long serialVersionUID = 1L;

        Misfit(String message) {
            super(message);
        }
    }

    private RecordJson() {}

    // writing

    static JsonNode write(Object value) {
        if (value instanceof Record written) {
            ObjectNode object = NODES.objectNode();
            for (RecordComponent component : written.getClass().getRecordComponents()) {
                Object part = valueOf(written, component);
                if (!(part instanceof Optional<?> maybe) || maybe.isPresent()) {
                    object.set(component.getName(), write(part));
                }
            }
            return object;
        }
        if (value instanceof Optional<?> maybe) {
            return write(maybe.orElseThrow());
        }
        if (value instanceof Collection<?> all) {
            ArrayNode array = NODES.arrayNode();
            all.forEach(one -> array.add(write(one)));
            return array;
        }
        if (value instanceof Map<?, ?> map) {
            ObjectNode object = NODES.objectNode();
            map.forEach((key, one) -> object.set(key.toString(), write(one)));
            return object;
        }
        if (value instanceof Boolean yes) {
            return NODES.booleanNode(yes);
        }
        if (value instanceof Integer number) {
            return NODES.numberNode(number);
        }
        return value instanceof BigDecimal number ? DecimalNode.valueOf(number) : NODES.textNode(value.toString());
    }

    private static Object valueOf(Record written, RecordComponent component) {
        try {
            return component.getAccessor().invoke(written);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    // reading

    /**
     * A record out of JSON; fields that it does not know are passed over.
     *
     * @throws Misfit when a value is missing or of the wrong kind
     */
    static <T extends Record> T read(Class<T> type, JsonNode json) throws Misfit {
        return type.cast(record(type, json, ""));
    }

    private static Object read(Type type, JsonNode json, String at) throws Misfit {
        if (type instanceof ParameterizedType generic) {
            return several(generic, json, at);
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isRecord()) {
            return record(plain, json, at);
        }
        if (plain == boolean.class) {
            return need(json.isBoolean(), json.booleanValue(), at);
        }
        if (plain == int.class) {
            return need(json.isInt(), json.intValue(), at);
        }
        if (plain == BigDecimal.class) {
            return need(json.isNumber(), json.decimalValue(), at);
        }
        need(json.isTextual(), json, at);
        return text(plain, json.textValue(), at);
    }

    private static Object text(Class<?> plain, String text, String at) throws Misfit {
        try {
            if (plain == LocalDate.class) {
                return LocalDate.parse(text);
            }
            if (plain == LocalDateTime.class) {
                return LocalDateTime.parse(text);
            }
            if (plain == Money.class) {
                return Money.parse(text);
            }
            if (plain.isEnum()) {
                return Arrays.stream(plain.getEnumConstants())
                        .filter(one -> ((Enum<?>) one).name().equals(text))
                        .findFirst()
                        .orElseThrow(() -> new Misfit(at + ": '" + text + "' is not known"));
            }
            return text;
        } catch (java.time.DateTimeException | IllegalArgumentException e) {
            throw new Misfit(at + ": " + e.getMessage());
        }
    }

    private static Object several(ParameterizedType generic, JsonNode json, String at) throws Misfit {
        Type[] of = generic.getActualTypeArguments();
        if (generic.getRawType() == Optional.class) {
            return json.isMissingNode() || json.isNull() ? Optional.empty() : Optional.of(read(of[0], json, at));
        }
        if (generic.getRawType() == Map.class) {
            need(json.isObject(), json, at);
            Map<String, Object> map = new LinkedHashMap<>();
            for (Map.Entry<String, JsonNode> entry : json.properties()) {
                map.put(entry.getKey(), read(of[1], entry.getValue(), at + "." + entry.getKey()));
            }
            return map;
        }
        need(json.isArray(), json, at);
        List<Object> all = new ArrayList<>();
        for (JsonNode one : json) {
            all.add(read(of[0], one, at + "[" + all.size() + "]"));
        }
        return generic.getRawType() == Set.class ? new LinkedHashSet<>(all) : all;
    }

    private static Object record(Class<?> type, JsonNode json, String at) throws Misfit {
        need(json.isObject(), json, at);
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            String name = components[i].getName();
            types[i] = components[i].getType();
            values[i] = read(components[i].getGenericType(), json.path(name), at.isEmpty() ? name : at + "." + name);
        }
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new Misfit(at + ": " + e.getCause().getMessage());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + type, e);
        }
    }

    private static <T> T need(boolean fits, T value, String at) throws Misfit {
        if (!fits) {
            throw new Misfit((at.isEmpty() ? "it" : at) + " is missing or of the wrong kind");
        }
        return value;
    }
}
