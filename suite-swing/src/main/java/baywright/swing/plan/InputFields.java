package baywright.swing.plan;

import baywright.library.Input;
import baywright.library.InputValues;
import baywright.library.Stage;
import baywright.plan.Step;
import baywright.quantity.Quantity;
import baywright.script.Place;
import baywright.script.Value;
import baywright.swing.parts.TonedLabel;
import java.awt.event.ItemEvent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;

/** The inputs of a step's stage as controls: a list of choices, a number with its unit, a tick. */
final class InputFields extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int STEPS_IN_RANGE = 20;

    private final transient BiConsumer<String, Optional<Value>> change;
    private final transient List<Field> fields = new ArrayList<>();
    private transient Optional<Stage> stage = Optional.empty();
    private boolean showing;

    /** {@code change} gets an input's name and its value; empty for the usual one. */
    InputFields(BiConsumer<String, Optional<Value>> change) {
        super(new MigLayout("insets 0, gap 8 4, hidemode 3", "[]unrel[grow, fill][]", ""));
        setOpaque(false);
        this.change = change;
    }

    /** An input with its control: how to put a value in, and the button that brings back the usual one. */
    private record Field(Input input, JComponent control, Consumer<Object> put, JButton usual) {}

    /** Shows the inputs of a step. The controls stay while the stage is the same, so that the one in use keeps the keyboard. */
    void show(Step step, Optional<Stage> of) {
        showing = true;
        try {
            if (!same(of)) {
                stage = of;
                build();
            }
            for (Field field : fields) {
                Optional<Value> own = Optional.ofNullable(
                                step.with().get(field.input().name()))
                        .flatMap(v -> InputValues.fit(field.input(), v));
                field.put().accept(own.orElse(field.input().usual()).raw());
                field.usual().setVisible(step.with().containsKey(field.input().name()));
            }
        } finally {
            showing = false;
        }
    }

    private boolean same(Optional<Stage> of) {
        return of.isPresent() && of.equals(stage);
    }

    private void build() {
        removeAll();
        fields.clear();
        stage.ifPresent(s -> s.inputs().forEach(this::add));
        if (fields.isEmpty()) {
            add(new TonedLabel(Words.of("inputs.none"), "faint"), "span, wrap");
        }
        revalidate();
        repaint();
    }

    private void add(Input input) {
        JLabel label = new JLabel();
        label.putClientProperty("html.disable", true);
        label.setText(Words.capital(input.name().replace('_', ' ')));
        Field field = field(input);
        label.setLabelFor(field.control());
        if (!input.why().isEmpty()) {
            label.setToolTipText(input.why());
            field.control().setToolTipText(input.why());
        }
        field.control().getAccessibleContext().setAccessibleName(label.getText());
        field.usual().addActionListener(e -> change.accept(input.name(), Optional.empty()));
        fields.add(field);
        add(label);
        add(field.control(), "growx 0");
        add(field.usual(), "wrap");
    }

    private Field field(Input input) {
        JButton usual = new JButton(Words.of("inputs.usual"));
        usual.putClientProperty("JButton.buttonType", "borderless");
        return switch (input.kind()) {
            case CHOICE -> {
                JComboBox<String> box = new JComboBox<>(input.choices().toArray(new String[0]));
                box.addItemListener(e -> {
                    if (e.getStateChange() == ItemEvent.SELECTED) {
                        changed(input, e.getItem());
                    }
                });
                yield new Field(input, box, box::setSelectedItem, usual);
            }
            case YES_NO -> {
                JCheckBox tick = new JCheckBox();
                tick.addItemListener(e -> changed(input, tick.isSelected()));
                yield new Field(input, tick, raw -> tick.setSelected(Boolean.TRUE.equals(raw)), usual);
            }
            case COUNT -> number(input, usual, 1);
            case MEASURE -> number(input, usual, span(input) / STEPS_IN_RANGE);
        };
    }

    private static double span(Input input) {
        return size(input.most().orElseThrow()) - size(input.least().orElseThrow());
    }

    private static double size(Value value) {
        return value.raw() instanceof Quantity quantity
                ? quantity.amount().doubleValue()
                : ((BigDecimal) value.raw()).doubleValue();
    }

    private Field number(Input input, JButton usual, double step) {
        double least = size(input.least().orElseThrow());
        double most = size(input.most().orElseThrow());
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(least, least, most, step));
        String unit = input.usual().raw() instanceof Quantity quantity
                ? " " + quantity.unit().symbol()
                : "";
        JSpinner.NumberEditor editor = new JSpinner.NumberEditor(spinner, unit.isEmpty() ? "0" : "0.###");
        spinner.setEditor(editor);
        spinner.addChangeListener(e -> {
            BigDecimal number = BigDecimal.valueOf(((Number) spinner.getValue()).doubleValue())
                    .stripTrailingZeros();
            BigDecimal plain = number.scale() < 0 ? number.setScale(0) : number;
            changed(
                    input,
                    input.usual().raw() instanceof Quantity quantity ? new Quantity(plain, quantity.unit()) : plain);
        });
        Consumer<Object> put = raw -> {
            double now =
                    raw instanceof Quantity quantity ? inUnitOf(input, quantity) : ((BigDecimal) raw).doubleValue();
            if (((Number) spinner.getValue()).doubleValue() != now) {
                spinner.setValue(now);
            }
        };
        if (unit.isEmpty()) {
            return new Field(input, spinner, put, usual);
        }
        JPanel withUnit = new JPanel(new MigLayout("insets 0, gap 4"));
        withUnit.setOpaque(false);
        withUnit.add(spinner);
        withUnit.add(new JLabel(unit.strip()));
        editor.getTextField().getAccessibleContext().setAccessibleName(input.name() + unit);
        return new Field(input, withUnit, put, usual);
    }

    /** A value in another unit than the usual one's is shown in the usual one's. */
    private static double inUnitOf(Input input, Quantity quantity) {
        Quantity like = (Quantity) input.usual().raw();
        if (like.unit() == quantity.unit()) {
            return quantity.amount().doubleValue();
        }
        Quantity one = new Quantity(BigDecimal.ONE, like.unit());
        return quantity.inBase().divide(one.inBase(), Quantity.PRECISION).doubleValue();
    }

    private void changed(Input input, Object raw) {
        if (!showing) {
            change.accept(input.name(), Optional.of(Value.of(raw, Place.ofFile("job.json"))));
        }
    }

    /** The control of an input, if it has one. */
    Optional<JComponent> control(String input) {
        return fields.stream()
                .filter(f -> f.input().name().equals(input))
                .map(Field::control)
                .findFirst();
    }

    /** Gives the keyboard to the first control; whether there is one. */
    boolean focusFirst() {
        return fields.stream()
                .findFirst()
                .map(f -> {
                    JComponent control = f.control();
                    return control instanceof JPanel panel
                            ? panel.getComponent(0).requestFocusInWindow()
                            : control.requestFocusInWindow();
                })
                .orElse(false);
    }
}
