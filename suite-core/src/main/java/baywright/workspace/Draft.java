package baywright.workspace;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What the program would write, before it is brought into what a file holds already. The file's own order, its way of
 * writing a value that has not changed, and everything that the program does not know stay as they are.
 */
sealed interface Draft {

    /** Whether the value may be left out because a reader would assume it. */
    boolean isUsual();

    /**
     * This draft in the place of what was there.
     *
     * @param old what the file holds there, or {@code null}
     * @return {@code old} itself when nothing changes
     */
    Json onto(Json old);

    /** A record of known fields; unknown ones are kept. */
    static Obj object() {
        return new Obj(new LinkedHashMap<>(), true, true);
    }

    static Draft text(String text) {
        return new Leaf(new Json.Text(text, Json.NOWHERE), false);
    }

    static Draft text(Optional<String> text) {
        return text.map(Draft::text).orElse(Leaf.NOTHING);
    }

    /** Nothing, where a field may be left out. */
    static Draft nothing() {
        return Leaf.NOTHING;
    }

    static Draft bool(boolean value) {
        return new Leaf(new Json.Bool(value, Json.NOWHERE), false);
    }

    static Draft number(BigDecimal number) {
        return new Leaf(new Json.Num(number.toPlainString(), Json.NOWHERE), false);
    }

    static Draft number(Optional<BigDecimal> number) {
        return number.map(Draft::number).orElse(Leaf.NOTHING);
    }

    static Draft time(Optional<LocalDateTime> time) {
        return time.map(t -> text(t.toString())).orElse(Leaf.NOTHING);
    }

    static Draft texts(List<String> texts) {
        return list(texts, Draft::text);
    }

    static <T> Draft list(List<T> all, Function<T, Draft> draft) {
        return new Arr(all.stream().map(draft).toList(), "id", true);
    }

    /**
     * A list whose order says nothing: the file's stays, what is new comes last, and what may be left out is only written
     * where the file has it.
     *
     * @param key the field that tells the objects apart
     */
    static <T> Draft loose(Iterable<T> all, String key, Function<T, Draft> draft) {
        List<Draft> elements = new ArrayList<>();
        all.forEach(one -> elements.add(draft.apply(one)));
        return new Arr(elements, key, false);
    }

    /** What the file holds already, whatever it is. */
    static Draft asItWas() {
        return new Kept();
    }

    /** A draft of a part of which nothing need be said when a reader would assume it. */
    static Draft unless(boolean usual, Draft draft) {
        return new Told(draft, usual);
    }

    /** The word for a value. */
    static <T> Draft choice(Map<String, T> words, T value) {
        return text(words.entrySet().stream()
                .filter(word -> word.getValue().equals(value))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("a file cannot say " + value)));
    }

    /** A binary fraction as the shortest decimal that means it. */
    static BigDecimal decimal(double number) {
        return new BigDecimal(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
    }

    /** A map whose keys are all known: what it does not hold is removed from the file. */
    static <T> Draft map(Map<String, T> all, Function<T, Draft> draft) {
        Map<String, Draft> members = new LinkedHashMap<>();
        new TreeMap<>(all).forEach((key, value) -> members.put(key, draft.apply(value)));
        return new Obj(members, false, false);
    }

    /** A map of which members that say nothing are left out, unless the file has them already. */
    static <T> Draft sparseMap(Map<String, T> all, Function<T, Draft> draft) {
        return new Obj(((Obj) map(all, draft)).members(), false, true);
    }

    /** Whatever is there. */
    record Kept() implements Draft {
        @Override
        public boolean isUsual() {
            return true;
        }

        @Override
        public Json onto(Json old) {
            return old == null ? new Json.Null(Json.NOWHERE) : old;
        }
    }

    /** A draft that is known to be usual or not. */
    record Told(Draft draft, boolean isUsual) implements Draft {
        @Override
        public Json onto(Json old) {
            return isUsual && old instanceof Json.Null ? old : draft.onto(old);
        }
    }

    /** A single value. */
    record Leaf(Json json, boolean isUsual) implements Draft {

        static final Leaf NOTHING = new Leaf(new Json.Null(Json.NOWHERE), true);

        @Override
        public Json onto(Json old) {
            return old != null && (means(old) || (isUsual && old instanceof Json.Null)) ? old : json;
        }

        private boolean means(Json old) {
            if (json instanceof Json.Num number && old instanceof Json.Num before) {
                return number.value().compareTo(before.value()) == 0;
            }
            if (json instanceof Json.Text text) {
                return text.value().equals(written(old)) || isSameTime(text.value(), written(old));
            }
            if (json instanceof Json.Bool bool) {
                return old instanceof Json.Bool before && before.value() == bool.value();
            }
            return json instanceof Json.Null && old instanceof Json.Null;
        }

        /** A fact may be written as text, number or truth value; it is the same fact. */
        private static String written(Json old) {
            if (old instanceof Json.Text text) {
                return text.value();
            }
            if (old instanceof Json.Num number) {
                return number.value().toPlainString();
            }
            return old instanceof Json.Bool bool ? Boolean.toString(bool.value()) : "";
        }

        private static boolean isSameTime(String a, String b) {
            if (a.length() < "2026-12-07T08:00".length() || a.charAt(10) != 'T') {
                return false;
            }
            try {
                return LocalDateTime.parse(a).equals(LocalDateTime.parse(b));
            } catch (DateTimeException e) {
                return false;
            }
        }
    }

    /**
     * An object.
     *
     * @param open   whether members that the draft does not name are kept
     * @param sparse whether usual members are left out
     */
    record Obj(Map<String, Draft> members, boolean open, boolean sparse) implements Draft {

        Obj with(String name, Draft value) {
            members.put(name, value);
            return this;
        }

        /** A field that a file may leave out when it is written as {@code usual}. */
        Obj usually(String name, Draft value, String usual) {
            Json json = ((Leaf) value).json();
            return with(name, new Leaf(json, usual.equals(Leaf.written(json))));
        }

        /** A number that a file may leave out when it is {@code usual}. */
        Obj usually(String name, BigDecimal value, BigDecimal usual) {
            return with(name, unless(value.compareTo(usual) == 0, number(value)));
        }

        /** As {@link #usually(String, BigDecimal, BigDecimal)}. */
        Obj usually(String name, double value, double usual) {
            return with(name, unless(value == usual, number(decimal(value))));
        }

        @Override
        public boolean isUsual() {
            return sparse ? members.values().stream().allMatch(Draft::isUsual) : members.isEmpty();
        }

        @Override
        public Json onto(Json old) {
            if (old instanceof Json.Null && isUsual()) {
                return old;
            }
            Map<String, Json> before = old instanceof Json.Obj object ? object.members() : Map.of();
            Map<String, Json> result = new LinkedHashMap<>();
            before.forEach((name, value) -> {
                Draft draft = members.get(name);
                if (draft != null && !(draft == Leaf.NOTHING && !(value instanceof Json.Null))) {
                    result.put(name, draft.onto(value));
                } else if (draft == null && open) {
                    result.put(name, value);
                }
            });
            members.forEach((name, draft) -> {
                if (!before.containsKey(name) && !(sparse && draft.isUsual())) {
                    result.put(name, draft.onto(null));
                }
            });
            return old instanceof Json.Obj && isSame(before, result) ? old : new Json.Obj(result, Json.NOWHERE);
        }

        private static boolean isSame(Map<String, Json> before, Map<String, Json> after) {
            return before.size() == after.size()
                    && after.entrySet().stream().allMatch(m -> before.get(m.getKey()) == m.getValue());
        }
    }

    /**
     * Objects with a key keep what was unknown in the object of the same key, wherever it now stands.
     *
     * @param key     the field that tells objects apart
     * @param ordered whether the order means something; else the file's stays
     */
    record Arr(List<Draft> elements, String key, boolean ordered) implements Draft {

        @Override
        public boolean isUsual() {
            return ordered ? elements.isEmpty() : elements.stream().allMatch(Draft::isUsual);
        }

        @Override
        public Json onto(Json old) {
            if (old instanceof Json.Null && isUsual()) {
                return old;
            }
            List<Json> before = old instanceof Json.Arr array ? array.elements() : List.of();
            List<Json> result = ordered ? inOrder(before) : inOrderOf(before);
            return old instanceof Json.Arr && isSame(before, result) ? old : new Json.Arr(result, Json.NOWHERE);
        }

        private List<Json> inOrder(List<Json> before) {
            List<Json> result = new ArrayList<>();
            for (int i = 0; i < elements.size(); i++) {
                Draft draft = elements.get(i);
                Optional<String> id = id(draft);
                Json same = id.isPresent()
                        ? before.stream()
                                .filter(b -> id(b).equals(id))
                                .findFirst()
                                .orElse(null)
                        : i < before.size() ? before.get(i) : null;
                result.add(draft.onto(same));
            }
            return result;
        }

        private List<Json> inOrderOf(List<Json> before) {
            Map<String, Draft> left = new LinkedHashMap<>();
            elements.forEach(element -> left.put(id(element).orElseThrow(), element));
            List<Json> result = new ArrayList<>();
            for (Json one : before) {
                id(one).map(left::remove).ifPresent(draft -> result.add(draft.onto(one)));
            }
            left.values().stream().filter(draft -> !draft.isUsual()).forEach(draft -> result.add(draft.onto(null)));
            return result;
        }

        private static boolean isSame(List<Json> before, List<Json> after) {
            for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
                if (before.get(i) != after.get(i)) {
                    return false;
                }
            }
            return before.size() == after.size();
        }

        private Optional<String> id(Draft draft) {
            if (draft instanceof Told told) {
                return id(told.draft());
            }
            return draft instanceof Obj object
                            && object.members().get(key) instanceof Leaf leaf
                            && !(leaf.json() instanceof Json.Null)
                    ? Optional.of(Leaf.written(leaf.json()))
                    : Optional.empty();
        }

        private Optional<String> id(Json json) {
            return json instanceof Json.Obj object && object.members().get(key) instanceof Json.Text text
                    ? Optional.of(text.value())
                    : Optional.empty();
        }
    }
}
