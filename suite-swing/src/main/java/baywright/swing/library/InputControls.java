package baywright.swing.library;

import baywright.library.Fact;
import baywright.library.Input;
import baywright.library.InputValues;
import baywright.quantity.Quantity;
import baywright.script.Place;
import baywright.script.Value;
import baywright.swing.api.Texts;
import baywright.swing.parts.TonedLabel;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;

/** A control for each input of a stage, each fact that it asks for and each thing that it counts. */
final class InputControls extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final Place FIELD = Place.ofFile("trial");
    private static final int MOST_COUNTED = 9999;
    private static final int COLUMNS = 6;

    private final transient Texts texts;
    private final transient Runnable changed;
    private final transient Map<String, Value> with = new LinkedHashMap<>();
    private final transient Map<String, String> facts = new LinkedHashMap<>();
    private final transient Map<String, BigDecimal> drivers = new LinkedHashMap<>();
    private final Map<String, JComponent> controls = new LinkedHashMap<>();
    private transient List<?> shown = List.of();
    private boolean filling;

    InputControls(Texts texts, Runnable changed) {
        super(new MigLayout("insets 0, wrap 2, fillx", "[][grow, fill]", "[]4[]"));
        this.texts = texts;
        this.changed = changed;
    }

    /** Values that differ from the usual ones. */
    Map<String, Value> with() {
        return with;
    }

    Map<String, String> facts() {
        return facts;
    }

    Map<String, BigDecimal> drivers() {
        return drivers;
    }

    /** The control of an input, a fact or a counted thing by its name. */
    Optional<JComponent> control(String name) {
        return Optional.ofNullable(controls.get(name));
    }

    /** Shows controls for these; values that still fit stay. */
    void show(String stage, List<Input> inputs, List<Fact> asked, List<String> counted) {
        List<?> now = List.of(stage, bare(inputs), asked, counted);
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        filling = true;
        removeAll();
        controls.clear();
        with.keySet().retainAll(inputs.stream().map(Input::name).toList());
        inputs.forEach(i -> Optional.ofNullable(with.get(i.name()))
                .filter(v -> InputValues.fit(i, v).isEmpty())
                .ifPresent(v -> with.remove(i.name())));
        facts.keySet().retainAll(asked.stream().map(Fact::id).toList());
        drivers.keySet().retainAll(counted);
        inputs.forEach(this::input);
        asked.forEach(this::fact);
        counted.forEach(this::counted);
        filling = false;
        revalidate();
        repaint();
    }

    /** Inputs without their places: a line above them must not make new controls. */
    private static List<?> bare(List<Input> inputs) {
        return inputs.stream()
                .map(i -> List.of(
                        i.name(),
                        i.kind(),
                        i.choices(),
                        i.least().map(v -> v.raw()),
                        i.most().map(v -> v.raw()),
                        i.usual().raw(),
                        i.why()))
                .toList();
    }

    private void put(String name, String title, String tip, JComponent control) {
        JLabel label = new JLabel();
        label.putClientProperty("html.disable", true);
        label.setText(title);
        label.setLabelFor(control);
        control.setToolTipText(tip.isEmpty() ? null : tip);
        control.getAccessibleContext().setAccessibleName(title);
        control.getAccessibleContext().setAccessibleDescription(tip);
        controls.put(name, control);
        add(label);
    }

    private void input(Input input) {
        Value set = with.getOrDefault(input.name(), input.usual());
        switch (input.kind()) {
            case CHOICE -> {
                JComboBox<String> combo = new JComboBox<>(input.choices().toArray(new String[0]));
                combo.setSelectedItem(set.raw());
                combo.addActionListener(e -> set(input, combo.getSelectedItem()));
                put(input.name(), input.name(), input.why(), combo);
                add(combo, "wmin 0");
            }
            case COUNT -> {
                JSpinner spinner = new JSpinner(new SpinnerNumberModel(
                        whole(set).intValue(),
                        whole(input.least().orElseThrow()).intValue(),
                        whole(input.most().orElseThrow()).intValue(),
                        1));
                spinner.addChangeListener(
                        e -> set(input, BigDecimal.valueOf(((Number) spinner.getValue()).longValue())));
                put(input.name(), input.name(), input.why(), spinner);
                add(spinner, "growx 0, wmin 80");
            }
            case YES_NO -> {
                JCheckBox box = new JCheckBox(texts.of("trial.yes"), Boolean.TRUE.equals(set.raw()));
                box.addActionListener(e -> set(input, box.isSelected()));
                put(input.name(), input.name(), input.why(), box);
                add(box);
            }
            case MEASURE -> measure(input, (Quantity) set.raw());
        }
    }

    private void measure(Input input, Quantity set) {
        JTextField field = new JTextField(set.amount().toPlainString(), COLUMNS);
        TonedLabel wrong = new TonedLabel("", "stop");
        JPanel beside = new JPanel(new MigLayout("insets 0, hidemode 3, wrap 2, fillx", "[][grow, fill]", "[]2[]"));
        beside.setOpaque(false);
        beside.add(field);
        beside.add(new JLabel(set.unit().symbol()));
        beside.add(wrong, "span 2, wmin 0");
        wrong.setVisible(false);
        field.getDocument().addDocumentListener(new Typed(() -> {
            Optional<Value> value = number(field.getText())
                    .flatMap(n -> InputValues.fit(input, Value.of(new Quantity(n, set.unit()), FIELD)));
            wrong.setVisible(value.isEmpty());
            wrong.setText(texts.of("trial.wants", InputValues.wanted(input)));
            field.putClientProperty("JComponent.outline", value.isEmpty() ? "error" : null);
            value.ifPresent(v -> set(input, v.raw()));
        }));
        put(input.name(), input.name(), input.why(), field);
        add(beside, "wmin 0");
    }

    private static Optional<BigDecimal> number(String text) {
        String plain = text.strip().replace(',', '.');
        return plain.matches("-?[0-9]{1,9}(\\.[0-9]{1,9})?") ? Optional.of(new BigDecimal(plain)) : Optional.empty();
    }

    private static BigDecimal whole(Value value) {
        return (BigDecimal) value.raw();
    }

    private void set(Input input, Object raw) {
        if (input.usual().raw().equals(raw)) {
            with.remove(input.name());
        } else {
            with.put(input.name(), Value.of(raw, FIELD));
        }
        tell();
    }

    private void fact(Fact fact) {
        String title = texts.of("trial.found", fact.id());
        switch (fact.kind()) {
            case CHOICE -> {
                JComboBox<String> combo = new JComboBox<>(fact.choices().toArray(new String[0]));
                combo.setSelectedItem(facts.getOrDefault(fact.id(), fact.usual()));
                combo.addActionListener(e -> set(fact, (String) combo.getSelectedItem()));
                put(fact.id(), title, fact.means(), combo);
                add(combo, "wmin 0");
            }
            case YES_NO -> {
                JCheckBox box = new JCheckBox(
                        texts.of("trial.yes"), "true".equals(facts.getOrDefault(fact.id(), fact.usual())));
                box.addActionListener(e -> set(fact, Boolean.toString(box.isSelected())));
                put(fact.id(), title, fact.means(), box);
                add(box);
            }
            case NUMBER -> {
                JTextField field = new JTextField(facts.getOrDefault(fact.id(), fact.usual()), COLUMNS);
                field.getDocument().addDocumentListener(new Typed(() -> {
                    boolean fine =
                            field.getText().isBlank() || number(field.getText()).isPresent();
                    field.putClientProperty("JComponent.outline", fine ? null : "error");
                    if (fine) {
                        set(
                                fact,
                                number(field.getText())
                                        .map(BigDecimal::toPlainString)
                                        .orElse(fact.usual()));
                    }
                }));
                put(fact.id(), title, fact.means(), field);
                add(field, "growx 0");
            }
        }
    }

    private void set(Fact fact, String value) {
        if (value.equals(fact.usual())) {
            facts.remove(fact.id());
        } else {
            facts.put(fact.id(), value);
        }
        tell();
    }

    private void counted(String driver) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(
                drivers.getOrDefault(driver, BigDecimal.ONE).intValue(), 0, MOST_COUNTED, 1));
        drivers.putIfAbsent(driver, BigDecimal.ONE);
        spinner.addChangeListener(e -> {
            drivers.put(driver, BigDecimal.valueOf(((Number) spinner.getValue()).longValue()));
            tell();
        });
        put(driver, texts.of("trial.counted", driver), "", spinner);
        add(spinner, "growx 0, wmin 80");
    }

    private void tell() {
        if (!filling) {
            changed.run();
        }
    }
}
