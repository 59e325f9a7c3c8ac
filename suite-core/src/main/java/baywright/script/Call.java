package baywright.script;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One use of a word with its arguments, checked against the word's declaration. */
public final class Call {

    private final Evaluator evaluator;
    private final Word word;
    private final Place place;
    private final Map<String, Value> args;
    private final List<Value> rest;
    private final Optional<Node.Block> block;
    private final Scope scope;
    private final Set<String> from;

    Call(
            Evaluator evaluator,
            Word word,
            Place place,
            Map<String, Value> args,
            List<Value> rest,
            Optional<Node.Block> block,
            Scope scope,
            Set<String> from) {
        this.evaluator = evaluator;
        this.word = word;
        this.place = place;
        this.args = args;
        this.rest = List.copyOf(rest);
        this.block = block;
        this.scope = scope;
        this.from = Set.copyOf(from);
    }

    public Word word() {
        return word;
    }

    /** Where the word stands. */
    public Place place() {
        return place;
    }

    /** Inputs and facts that its arguments, and the conditions that it stands under, depend on. */
    public Set<String> from() {
        return from;
    }

    /** What stands in its braces. */
    public Optional<Node.Block> block() {
        return block;
    }

    /** Locals that it can see. */
    public Scope scope() {
        return scope;
    }

    /** Whether it stands in an {@code if}, {@code switch} or loop. */
    public boolean isConditional() {
        return evaluator.isConditional();
    }

    /** Whether the check walk looks at a branch that the usual values would not take. */
    public boolean isSpeculative() {
        return evaluator.isSpeculative();
    }

    /** Whether the script gives this argument. */
    public boolean has(String param) {
        return args.containsKey(param);
    }

    /** The argument, or its usual value at the place of the word. */
    public Value value(String param) {
        Value given = args.get(param);
        if (given != null) {
            return given;
        }
        Object usual = word.param(param)
                .flatMap(Param::usual)
                .orElseThrow(() -> new IllegalStateException(
                        "word '" + word.name() + "' has no argument '" + param + "' here and no usual value for it"));
        return Value.of(usual, place);
    }

    /** The argument if the script gives it. */
    public Optional<Value> given(String param) {
        return Optional.ofNullable(args.get(param));
    }

    /** The text of an argument; the empty text when it is neither given nor usual. */
    public String text(String param) {
        boolean absent = !has(param) && word.param(param).flatMap(Param::usual).isEmpty();
        return absent ? "" : (String) value(param).raw();
    }

    public BigDecimal number(String param) {
        return (BigDecimal) value(param).raw();
    }

    public Quantity quantity(String param) {
        return (Quantity) value(param).raw();
    }

    public boolean yes(String param) {
        return (Boolean) value(param).raw();
    }

    /** A list argument, or the single value as a list of one; empty when it is not given. */
    public List<Value> list(String param) {
        return given(param).map(Call::asList).orElse(List.of());
    }

    /** The texts of {@link #list}. */
    public List<String> texts(String param) {
        return list(param).stream().map(v -> (String) v.raw()).toList();
    }

    /** A map argument in order of writing; empty when it is not given. */
    public Map<String, Value> map(String param) {
        Map<String, Value> copy = new LinkedHashMap<>();
        given(param).ifPresent(v -> ((Map<?, ?>) v.raw()).forEach((k, e) -> copy.put((String) k, (Value) e)));
        return copy;
    }

    /** The further arguments, lists among them opened. */
    public List<Value> several() {
        return rest;
    }

    private static List<Value> asList(Value value) {
        if (!(value.raw() instanceof List<?> list)) {
            return List.of(value);
        }
        List<Value> entries = new ArrayList<>();
        list.forEach(e -> entries.add((Value) e));
        return entries;
    }

    /** Lets the words in its braces run. */
    public void inside(Handler handler) {
        block.ifPresent(b -> evaluator.run(b.body(), scope.inner(), handler));
    }

    public void error(Place where, String code, String message) {
        evaluator.note(Fault.of(where, code, message), word.name());
    }

    /** What a function throws that has no value; noted by whoever asked for the value. */
    public RuntimeException refusal(Place where, String code, String message) {
        return Fault.of(where, code, message);
    }

    public void warning(Place where, String code, String message) {
        evaluator.warn(where, code, message, word.name());
    }

    /** Something wrong with these values that may be right with other inputs. */
    public void badValue(Place where, String message) {
        Value all = new Value(Value.NOTHING, place, from);
        evaluator.note(Fault.ofValue(where, message, List.of(all)), word.name());
    }
}
