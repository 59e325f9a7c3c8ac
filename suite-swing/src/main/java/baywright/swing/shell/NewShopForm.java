package baywright.swing.shell;

import baywright.swing.api.Desk;
import baywright.swing.api.Task;
import baywright.swing.api.Texts;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.TonedLabel;
import baywright.swing.parts.WidePanel;
import baywright.workspace.FileProblem;
import baywright.workspace.NewShop;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.awt.Component;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.joda.money.CurrencyUnit;

/** Asks for what a new shop needs, says at each field what is wrong with it, and makes the shop. */
final class NewShopForm extends WidePanel {

    private static final long serialVersionUID = 1L;
    private static final Pattern INDEX_AT_END = Pattern.compile("\\[\\d+\\]$");
    private static final List<String> LANGUAGES = List.of("en", "en-GB", "en-US", "de", "de-AT", "de-CH");

    private final transient Texts texts = Texts.beside(NewShopForm.class, "texts");
    private final transient Desk desk;
    private final transient Path library;
    private final transient Path home;
    private final transient Consumer<Path> made;
    private final transient Map<String, Entry> fields = new LinkedHashMap<>();
    private final transient List<BayRow> bays = new ArrayList<>();
    private final transient List<PersonRow> people = new ArrayList<>();
    private final transient List<String> grades;
    private final JPanel bayRows = rows();
    private final JPanel peopleRows = rows();
    private final JTextField folder = new JTextField(30);
    private final TonedLabel folderWrong = new TonedLabel("", "stop");
    private final JButton make = new JButton(texts.of("new.make"));
    private transient boolean folderIsOwn;
    private transient boolean tried;

    /** A control with the place where it is told what is wrong with it. */
    private record Entry(JComponent control, JTextComponent text, TonedLabel wrong) {

        void say(String words) {
            wrong.setText(words);
            wrong.setVisible(!words.isEmpty());
            control.putClientProperty("JComponent.outline", words.isEmpty() ? null : "error");
            text.getAccessibleContext().setAccessibleDescription(words);
        }
    }

    private record BayRow(JPanel row, Entry title, Entry kind, Entry conditions) {}

    private record PersonRow(JPanel row, Entry name, Entry skills) {}

    /**
     * The form at its usual values.
     *
     * @param library the standard stage scripts
     * @param home    where the folder of the shop goes unless another place is chosen
     * @param made    gets the new workspace
     */
    NewShopForm(Desk desk, Path library, Path home, Locale locale, Consumer<Path> made) {
        super(new MigLayout("insets 16, wrap 2, fillx, hidemode 3", "[][grow, fill]", ""));
        this.desk = desk;
        this.library = library;
        this.home = home;
        this.made = made;
        NewShop usual = NewShop.usual(locale, ZoneId.systemDefault());
        this.grades = List.copyOf(usual.charge().keySet());
        section("new.shop");
        text("name", texts.of("new.name"), usual.name());
        where();
        choice("language", texts.of("new.language"), LANGUAGES, usual.language());
        choice(
                "timeZone",
                texts.of("new.time-zone"),
                ZoneId.getAvailableZoneIds().stream()
                        .filter(id -> id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/"))
                        .sorted()
                        .toList(),
                usual.timeZone());
        section("new.money");
        choice(
                "currency",
                texts.of("new.currency"),
                CurrencyUnit.registeredCurrencies().stream()
                        .filter(unit -> !unit.isPseudoCurrency())
                        .map(CurrencyUnit::getCode)
                        .sorted()
                        .toList(),
                usual.currency());
        text("tax.name", texts.of("new.tax-name"), usual.taxName());
        text("tax.percent", texts.of("new.tax"), usual.taxPercent());
        note("new.rates.note");
        usual.charge().forEach((grade, rate) -> text("rates.charge." + grade, texts.of("new.charge", grade), rate));
        text("rates.wage", texts.of("new.wage"), usual.wage());
        section("new.hours");
        note("new.hours.note");
        for (DayOfWeek day : DayOfWeek.values()) {
            text(
                    "hours." + day.name().toLowerCase(Locale.ROOT),
                    day.getDisplayName(TextStyle.FULL_STANDALONE, Locale.getDefault()),
                    usual.hours().getOrDefault(day, ""));
        }
        section("new.bays");
        note("new.bays.note");
        add(bayRows, "span 2, growx, wmin 0");
        add(button("new.bays.add", () -> addBay(new NewShop.NewBay("", "", ""))), "span 2, growx 0");
        section("new.people");
        note("new.people.note");
        add(peopleRows, "span 2, growx, wmin 0");
        add(button("new.people.add", () -> addPerson(new NewShop.NewPerson("", ""))), "span 2, growx 0");
        usual.bays().forEach(this::addBay);
        usual.people().forEach(this::addPerson);
        make.addActionListener(e -> make());
        suggestFolder();
    }

    private static JPanel rows() {
        return new JPanel(new MigLayout("insets 0, wrap 1, fillx, hidemode 3, gapy 4", "[grow, fill]"));
    }

    // parts

    private void section(String key) {
        add(new SectionHeading(texts.of(key)), "span 2, gaptop 12");
    }

    private void note(String key) {
        add(new Prose(texts.of(key)), "span 2, growx, wmin 0");
    }

    private void text(String path, String title, String usual) {
        JTextField field = new JTextField(usual, 30);
        put(path, title, field, field);
    }

    private void choice(String path, String title, List<String> choices, String usual) {
        JComboBox<String> combo = new JComboBox<>(choices.toArray(new String[0]));
        combo.setEditable(true);
        combo.setSelectedItem(usual);
        put(path, title, combo, (JTextComponent) combo.getEditor().getEditorComponent());
    }

    private void put(String path, String title, JComponent control, JTextComponent text) {
        add(label(title, control));
        add(control, "wmin 0");
        Entry entry = entry(control, text, title);
        fields.put(path, entry);
        add(entry.wrong(), "skip 1, wmin 0");
    }

    private static JLabel label(String title, JComponent control) {
        JLabel label = new JLabel();
        label.putClientProperty("html.disable", true);
        label.setText(title);
        label.setLabelFor(control);
        return label;
    }

    private Entry entry(JComponent control, JTextComponent text, String name) {
        TonedLabel wrong = new TonedLabel("", "stop");
        wrong.setVisible(false);
        text.getAccessibleContext().setAccessibleName(name);
        text.getDocument().addDocumentListener(new Heard(this::typed));
        return new Entry(control, text, wrong);
    }

    private void where() {
        JPanel place = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill][]"));
        place.add(folder, "wmin 0");
        place.add(button("new.choose", this::choose));
        add(label(texts.of("new.where"), folder));
        add(place, "wmin 0");
        folderWrong.setVisible(false);
        add(folderWrong, "skip 1, wmin 0");
        folder.getDocument().addDocumentListener(new Heard(() -> {
            folderIsOwn |= folder.isFocusOwner();
            sayFolder("");
        }));
    }

    private JButton button(String key, Runnable does) {
        JButton button = new JButton(texts.of(key));
        button.addActionListener(e -> does.run());
        return button;
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser(home.toFile());
        chooser.setDialogTitle(texts.of("new.choose.title"));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showSaveDialog(this) == JFileChooser.APPROVE_OPTION) {
            folderIsOwn = true;
            folder.setText(chooser.getSelectedFile().toString());
        }
    }

    private void addBay(NewShop.NewBay usual) {
        JPanel row =
                new JPanel(new MigLayout("insets 0, fillx, wrap 4, hidemode 3", "[20%, fill][30%, fill][50%, fill][]"));
        BayRow bay = new BayRow(
                row,
                cell(row, usual.title(), texts.of("new.bays.title")),
                cell(row, usual.kind(), texts.of("new.bays.kind")),
                cell(row, usual.conditions(), texts.of("new.bays.conditions")));
        bays.add(bay);
        row.add(button("new.remove", () -> remove(bays, bay, bayRows, row)));
        List.of(bay.title(), bay.kind(), bay.conditions()).forEach(cell -> row.add(cell.wrong(), "span 4, wmin 0"));
        bayRows.add(row, "wmin 0");
        shapeChanged();
    }

    private void addPerson(NewShop.NewPerson usual) {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx, wrap 3, hidemode 3", "[40%, fill][60%, fill][]"));
        PersonRow person = new PersonRow(
                row,
                cell(row, usual.name(), texts.of("new.people.name")),
                cell(row, usual.skills(), texts.of("new.people.skills")));
        people.add(person);
        row.add(button("new.remove", () -> remove(people, person, peopleRows, row)));
        List.of(person.name(), person.skills()).forEach(cell -> row.add(cell.wrong(), "span 3, wmin 0"));
        peopleRows.add(row, "wmin 0");
        shapeChanged();
    }

    private Entry cell(JPanel row, String usual, String name) {
        JTextField field = new JTextField(usual);
        field.setCaretPosition(0);
        field.putClientProperty("JTextField.placeholderText", name);
        field.setToolTipText(name);
        row.add(field, "wmin 0");
        return entry(field, field, name);
    }

    private <T> void remove(List<T> all, T one, JPanel rows, JPanel row) {
        all.remove(one);
        rows.remove(row);
        shapeChanged();
        typed();
    }

    private void shapeChanged() {
        revalidate();
        repaint();
    }

    // what is typed

    private void typed() {
        suggestFolder();
        if (tried) {
            judge();
        }
    }

    private void suggestFolder() {
        if (!folderIsOwn && fields.containsKey("name")) {
            folder.setText(home.resolve(shop().id()).toString());
        }
    }

    private String value(String path) {
        return fields.get(path).text().getText();
    }

    /** What is typed just now. */
    NewShop shop() {
        Map<String, String> charge = new LinkedHashMap<>();
        grades.forEach(grade -> charge.put(grade, valueOrNothing("rates.charge." + grade)));
        Map<DayOfWeek, String> hours = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            hours.put(day, valueOrNothing("hours." + day.name().toLowerCase(Locale.ROOT)));
        }
        return new NewShop(
                value("name"),
                valueOrNothing("currency"),
                valueOrNothing("timeZone"),
                valueOrNothing("language"),
                valueOrNothing("tax.name"),
                valueOrNothing("tax.percent"),
                charge,
                valueOrNothing("rates.wage"),
                hours,
                bays.stream()
                        .map(bay -> new NewShop.NewBay(
                                bay.title().text().getText(),
                                bay.kind().text().getText(),
                                bay.conditions().text().getText()))
                        .toList(),
                people.stream()
                        .map(person -> new NewShop.NewPerson(
                                person.name().text().getText(),
                                person.skills().text().getText()))
                        .toList());
    }

    /** While the form is being put together the first fields are heard before the last are there. */
    private String valueOrNothing(String path) {
        return fields.containsKey(path) ? value(path) : "";
    }

    private Map<String, Entry> all() {
        Map<String, Entry> all = new LinkedHashMap<>(fields);
        for (int i = 0; i < bays.size(); i++) {
            all.put("bays[" + i + "].title", bays.get(i).title());
            all.put("bays[" + i + "].kind", bays.get(i).kind());
            all.put("bays[" + i + "].conditions", bays.get(i).conditions());
        }
        for (int i = 0; i < people.size(); i++) {
            all.put("people[" + i + "].name", people.get(i).name());
            all.put("people[" + i + "].skills", people.get(i).skills());
        }
        return all;
    }

    /** Says at each field what is wrong with it. */
    private Optional<Entry> judge() {
        Map<String, Entry> all = all();
        Map<Entry, String> wrong = new LinkedHashMap<>();
        for (FileProblem problem : shop().problems()) {
            String path = INDEX_AT_END.matcher(problem.field()).replaceAll("");
            Entry entry = Optional.ofNullable(all.get(path))
                    .or(() -> all.entrySet().stream()
                            .filter(one -> one.getKey().startsWith(path))
                            .map(Map.Entry::getValue)
                            .findFirst())
                    .orElse(fields.get("name"));
            wrong.putIfAbsent(entry, texts.of("new.wrong", problem.what(), problem.mend()));
        }
        all.values().forEach(entry -> entry.say(wrong.getOrDefault(entry, "")));
        return all.values().stream().filter(wrong::containsKey).findFirst();
    }

    private void sayFolder(String why) {
        folderWrong.setText(why);
        folderWrong.setVisible(!why.isEmpty());
        folder.putClientProperty("JComponent.outline", why.isEmpty() ? null : "error");
        folder.getAccessibleContext().setAccessibleDescription(why);
    }

    // making

    /** The button that makes the shop; it stands outside of what scrolls. */
    JButton button() {
        return make;
    }

    JComponent first() {
        return fields.get("name").control();
    }

    /** The text field of a path, for tests. */
    JTextComponent field(String path) {
        return all().get(path).text();
    }

    /** What is said to be wrong at a path; empty when nothing is. */
    String wrong(String path) {
        return path.equals("folder")
                ? folderWrong.getText()
                : all().get(path).wrong().getText();
    }

    JTextField folder() {
        return folder;
    }

    /** Makes the shop in the background when nothing is wrong. */
    void make() {
        tried = true;
        Optional<Entry> wrong = judge();
        if (wrong.isPresent()) {
            show(wrong.get().control());
            return;
        }
        Optional<Path> target = target();
        if (target.isEmpty()) {
            sayFolder(texts.of("new.where.wrong"));
            show(folder);
            return;
        }
        NewShop shop = shop();
        make.setEnabled(false);
        desk.run(new Task<Workspace>(
                texts.of("new.making", target.get()),
                progress -> shop.create(target.get(), library),
                workspace -> made.accept(workspace.root()),
                this::notMade));
    }

    private Optional<Path> target() {
        try {
            return Optional.of(Path.of(folder.getText().strip())).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private void notMade(Exception fault) {
        make.setEnabled(true);
        boolean isSaid = fault instanceof WorkspaceException;
        sayFolder(isSaid ? fault.getMessage() : texts.of("new.failed", String.valueOf(fault.getMessage())));
        show(folder);
    }

    private static void show(Component control) {
        control.requestFocusInWindow();
        if (control instanceof JComponent inner && inner.getParent() instanceof JComponent around) {
            around.scrollRectToVisible(inner.getBounds());
        }
    }

    /** Hears of each change of a text. */
    private record Heard(Runnable then) implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            then.run();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            then.run();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            then.run();
        }
    }
}
