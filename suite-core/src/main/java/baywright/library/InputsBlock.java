package baywright.library;

import static baywright.script.Word.word;

import baywright.library.Input.Kind;
import baywright.quantity.Dimension;
import baywright.quantity.Quantity;
import baywright.script.Call;
import baywright.script.Place;
import baywright.script.Type;
import baywright.script.Type.Use;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code inputs { }}: what a step may set on its stage. */
final class InputsBlock extends Blocks {

    static final Section SECTION = new Section(
            "inputs",
            "in 'inputs { }'",
            "What a step may set on the stage. A script reads an input by its name, or by input('name') when the name has"
                    + " a hyphen.",
            List.of(
                    word("choice")
                            .takes(
                                    "name",
                                    Type.ID.called("a name", "names", "'load'").naming("input", Use.DECLARES))
                            .needsNamed("from", Type.TEXTS)
                            .needsNamed("usual", Type.TEXT.called("a text", "texts", "'light'"))
                            .named("why", Type.TEXT)
                            .means("one text of a list")
                            .example("choice 'load', from: ['light', 'moderate', 'heavy'], usual: 'moderate'"),
                    word("count")
                            .takes(
                                    "name",
                                    Type.ID
                                            .called("a name", "names", "'passes'")
                                            .naming("input", Use.DECLARES))
                            .needsNamed("from", Type.COUNT)
                            .needsNamed("to", Type.COUNT)
                            .needsNamed("usual", Type.COUNT)
                            .named("why", Type.TEXT)
                            .means("a whole number between two bounds, both included")
                            .example("count 'passes', from: 1, to: 3, usual: 1"),
                    word("measure")
                            .takes(
                                    "name",
                                    Type.ID
                                            .called("a name", "names", "'grit-depth'")
                                            .naming("input", Use.DECLARES))
                            .needsNamed("from", Type.QUANTITY)
                            .needsNamed("to", Type.QUANTITY)
                            .needsNamed("usual", Type.QUANTITY)
                            .named("why", Type.TEXT)
                            .means("an amount with its unit between two bounds, both included")
                            .example("measure 'grit-depth', from: 1.um, to: 5.um, usual: 2.um"),
                    word("yesNo")
                            .takes(
                                    "name",
                                    Type.ID
                                            .called("a name", "names", "'two-sided'")
                                            .naming("input", Use.DECLARES))
                            .needsNamed("usual", Type.YES_NO)
                            .named("why", Type.TEXT)
                            .means("true or false")
                            .example("yesNo 'two-sided', usual: false")));

    private final List<Input> inputs = new ArrayList<>();
    private final Map<String, Place> places = new HashMap<>();

    InputsBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        String name = call.text("name");
        Place before = places.putIfAbsent(name, call.value("name").place());
        if (before != null) {
            call.error(
                    call.value("name").place(), "duplicate", "input '" + name + "' is already declared at " + before);
            return;
        }
        switch (call.word().name()) {
            case "choice" -> choice(call, name);
            case "count" -> bounded(call, name, Kind.COUNT);
            case "measure" -> measure(call, name);
            default -> inputs.add(input(call, name, Kind.YES_NO, List.of(), Optional.empty(), false));
        }
    }

    private void choice(Call call, String name) {
        List<String> choices = call.texts("from");
        if (choices.size() < 2 || choices.stream().distinct().count() != choices.size()) {
            call.error(
                    call.value("from").place(),
                    "wrong-argument",
                    "'from:' of 'choice' wants at least two different texts");
            return;
        }
        String usual = call.text("usual");
        if (!choices.contains(usual)) {
            call.error(
                    call.value("usual").place(),
                    "wrong-argument",
                    "'usual:' of 'choice' is one of the texts of 'from:', not '" + usual + "'; they are '"
                            + String.join("', '", choices) + "'");
        }
        inputs.add(input(call, name, Kind.CHOICE, choices, Optional.empty(), false));
    }

    private void measure(Call call, String name) {
        Dimension dimension = call.quantity("usual").dimension();
        for (String bound : List.of("from", "to")) {
            if (call.quantity(bound).dimension() != dimension) {
                call.error(
                        call.value(bound).place(),
                        "wrong-argument",
                        "'" + bound + ":' of 'measure' wants " + dimension.example() + " as 'usual:' is; it is "
                                + call.value(bound).described());
                return;
            }
        }
        bounded(call, name, Kind.MEASURE);
    }

    private void bounded(Call call, String name, Kind kind) {
        boolean inOrder = size(call.value("from")).compareTo(size(call.value("usual"))) <= 0
                && size(call.value("usual")).compareTo(size(call.value("to"))) <= 0;
        if (!inOrder) {
            call.error(
                    call.value("usual").place(),
                    "wrong-argument",
                    "'usual:' of '" + call.word().name() + "' lies from 'from:' to 'to:', that is from "
                            + InputValues.shown(call.value("from")) + " to "
                            + InputValues.shown(call.value("to")) + "; it is "
                            + InputValues.shown(call.value("usual")));
        }
        Optional<Dimension> dimension =
                kind == Kind.MEASURE ? Optional.of(call.quantity("usual").dimension()) : Optional.empty();
        inputs.add(input(call, name, kind, List.of(), dimension, true));
    }

    private static BigDecimal size(Value value) {
        return value.raw() instanceof Quantity quantity ? quantity.inBase() : (BigDecimal) value.raw();
    }

    private static Input input(
            Call call, String name, Kind kind, List<String> choices, Optional<Dimension> dimension, boolean bounded) {
        return new Input(
                name,
                kind,
                choices,
                dimension,
                bounded ? call.given("from") : Optional.empty(),
                bounded ? call.given("to") : Optional.empty(),
                call.value("usual"),
                call.text("why"),
                call.value("name").place());
    }

    List<Input> build() {
        return List.copyOf(inputs);
    }
}
