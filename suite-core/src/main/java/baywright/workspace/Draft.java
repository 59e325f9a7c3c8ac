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
        return new Arr(all.stream().map(draft).toList());
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

        @Override
        public boolean isUsual() {
            return sparse ? members.values().stream().allMatch(Draft::isUsual) : members.isEmpty();
        }

        @Override
        public Json onto(Json old) {
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

    /** Objects with an id keep what was unknown in the object of the same id, wherever it now stands. */
    record Arr(List<Draft> elements) implements Draft {

        @Override
        public boolean isUsual() {
            return elements.isEmpty();
        }

        @Override
        public Json onto(Json old) {
            List<Json> before = old instanceof Json.Arr array ? array.elements() : List.of();
            List<Json> result = new ArrayList<>();
            for (int i = 0; i < elements.size(); i++) {
                Draft draft = elements.get(i);
                Json same = id(draft).isPresent()
                        ? before.stream()
                                .filter(b -> id(b).equals(id(draft)))
                                .findFirst()
                                .orElse(null)
                        : i < before.size() ? before.get(i) : null;
                result.add(draft.onto(same));
            }
            return old instanceof Json.Arr && isSame(before, result) ? old : new Json.Arr(result, Json.NOWHERE);
        }

        private static boolean isSame(List<Json> before, List<Json> after) {
            for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
                if (before.get(i) != after.get(i)) {
                    return false;
                }
            }
            return before.size() == after.size();
        }

        private static Optional<String> id(Draft draft) {
            return draft instanceof Obj object
                            && object.members().get("id") instanceof Leaf leaf
                            && !(leaf.json() instanceof Json.Null)
                    ? Optional.of(Leaf.written(leaf.json()))
                    : Optional.empty();
        }

        private static Optional<String> id(Json json) {
            return json instanceof Json.Obj object && object.members().get("id") instanceof Json.Text text
                    ? Optional.of(text.value())
                    : Optional.empty();
        }
    }
}
