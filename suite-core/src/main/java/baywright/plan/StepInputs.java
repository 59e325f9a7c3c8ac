package baywright.plan;

import baywright.library.Input;
import baywright.library.Stage;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Checks what a step sets on its stage.
 *
 * @param accepted values that fit, by input; a text such as {@code 2 um} has become a quantity where one is wanted
 * @param refused  what does not fit; its stage goes on with the usual value
 */
record StepInputs(Map<String, Value> accepted, List<Refused> refused) {

    /** A value that does not fit its input. */
    record Refused(String input, String met, String wanted) {}

    static StepInputs of(Stage stage, Map<String, Value> with) {
        Map<String, Value> accepted = new TreeMap<>();
        List<Refused> refused = new ArrayList<>();
        new TreeMap<>(with).forEach((name, value) -> {
            Optional<Input> input =
                    stage.inputs().stream().filter(i -> i.name().equals(name)).findFirst();
            Optional<Value> fitting = input.flatMap(i -> fit(i, value));
            if (fitting.isPresent()) {
                accepted.put(name, fitting.get());
            } else {
                refused.add(new Refused(
                        name, Texts.of(value), input.map(StepInputs::wanted).orElse(noSuch(stage, name))));
            }
        });
        return new StepInputs(accepted, refused);
    }

    private static String noSuch(Stage stage, String name) {
        List<String> known = stage.inputs().stream().map(Input::name).toList();
        if (known.isEmpty()) {
            return "no input at all";
        }
        String nearest = Nearest.to(name, known);
        return nearest.isEmpty() ? "one of the inputs " + String.join(", ", known) : "the input '" + nearest + "'";
    }

    private static Optional<Value> fit(Input input, Value value) {
        boolean fits =
                switch (input.kind()) {
                    case CHOICE ->
                        value.raw() instanceof String text && input.choices().contains(text);
                    case YES_NO -> value.raw() instanceof Boolean;
                    case COUNT ->
                        value.raw() instanceof BigDecimal number
                                && Amounts.isSane(number)
                                && number.stripTrailingZeros().scale() <= 0
                                && within(input, number);
                    case MEASURE -> false;
                };
        if (input.kind() == Input.Kind.MEASURE) {
            return quantity(value)
                    .filter(q -> input.dimension().map(d -> d == q.dimension()).orElse(true))
                    .filter(q -> within(input, q))
                    .map(q -> new Value(q, value.place(), value.from()));
        }
        return fits ? Optional.of(value) : Optional.empty();
    }

    private static boolean within(Input input, BigDecimal number) {
        return input.least()
                        .map(l -> !(l.raw() instanceof BigDecimal b) || number.compareTo(b) >= 0)
                        .orElse(true)
                && input.most()
                        .map(m -> !(m.raw() instanceof BigDecimal b) || number.compareTo(b) <= 0)
                        .orElse(true);
    }

    private static boolean within(Input input, Quantity quantity) {
        return input.least()
                        .map(l -> !(l.raw() instanceof Quantity q) || quantity.compareTo(q) >= 0)
                        .orElse(true)
                && input.most()
                        .map(m -> !(m.raw() instanceof Quantity q) || quantity.compareTo(q) <= 0)
                        .orElse(true);
    }

    /** A quantity as such or written {@code 2 um} or {@code 2.um}. */
    private static Optional<Quantity> quantity(Value value) {
        if (value.raw() instanceof Quantity quantity) {
            return Optional.of(quantity).filter(q -> Amounts.isSane(q.amount()));
        }
        if (!(value.raw() instanceof String text)) {
            return Optional.empty();
        }
        return unitAtEnd(text.strip());
    }

    private static Optional<Quantity> unitAtEnd(String text) {
        for (int split = 1; split < text.length(); split++) {
            char c = text.charAt(split);
            boolean separator = c == ' ' || c == '.';
            Optional<Unit> unit = separator ? Unit.of(text.substring(split + 1).strip()) : Optional.empty();
            if (unit.isPresent()) {
                return decimal(text.substring(0, split)).map(n -> new Quantity(n, unit.get()));
            }
        }
        return Optional.empty();
    }

    private static Optional<BigDecimal> decimal(String text) {
        try {
            return Optional.of(new BigDecimal(text.strip())).filter(Amounts::isSane);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static String wanted(Input input) {
        return switch (input.kind()) {
            case CHOICE -> "one of " + String.join(", ", input.choices());
            case YES_NO -> "true or false";
            case COUNT -> "a whole number" + range(input);
            case MEASURE -> input.dimension().map(d -> d.example()).orElse("a quantity") + range(input);
        };
    }

    private static String range(Input input) {
        if (input.least().isEmpty() || input.most().isEmpty()) {
            return "";
        }
        return " from " + Texts.of(input.least().get()) + " to "
                + Texts.of(input.most().get());
    }
}
