package baywright.swing.parts;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerDateModel;
import net.miginfocom.swing.MigLayout;

/** Whether a step has a fixed start, and when. Local time of the site; no zone is ever applied to it. */
public final class StartField extends JPanel {

    private static final long serialVersionUID = 1L;

    private final JCheckBox fixed = new JCheckBox();
    private final JSpinner at = new JSpinner(new SpinnerDateModel());
    private boolean showing;

    /**
     * A field without a start.
     *
     * @param fix    words of the box to tick
     * @param name   of the field of day and time, for those who do not see it
     * @param change gets the start; empty: as soon as it can
     */
    public StartField(Locale locale, String fix, String name, Consumer<Optional<LocalDateTime>> change) {
        super(new MigLayout("insets 0, gap 8"));
        setOpaque(false);
        fixed.setText(fix);
        JSpinner.DateEditor editor = new JSpinner.DateEditor(at, "yyyy-MM-dd HH:mm");
        editor.getFormat().setTimeZone(TimeZone.getTimeZone("UTC"));
        editor.getTextField().setLocale(locale);
        at.setEditor(editor);
        at.getAccessibleContext().setAccessibleName(name);
        editor.getTextField().getAccessibleContext().setAccessibleName(name);
        fixed.addActionListener(e -> change.accept(fixed.isSelected() ? Optional.of(chosen()) : Optional.empty()));
        at.addChangeListener(e -> {
            if (!showing) {
                change.accept(Optional.of(chosen()));
            }
        });
        add(fixed);
        add(at);
    }

    @SuppressWarnings("JavaUtilDate") // the spinner of dates speaks no other language
    private LocalDateTime chosen() {
        return LocalDateTime.ofInstant(((Date) at.getValue()).toInstant(), ZoneOffset.UTC);
    }

    /** Shows a start; without a fixed one when the step begins by itself. */
    @SuppressWarnings("JavaUtilDate") // the spinner of dates speaks no other language
    public void show(Optional<LocalDateTime> start, LocalDateTime otherwise) {
        showing = true;
        fixed.setSelected(start.isPresent());
        at.setEnabled(start.isPresent());
        LocalDateTime now = start.orElse(otherwise);
        if (!now.equals(chosen())) {
            at.setValue(Date.from(now.toInstant(ZoneOffset.UTC)));
        }
        showing = false;
    }

    /** The box to tick. */
    public JCheckBox fixed() {
        return fixed;
    }

    /** Gives the keyboard to day and time. */
    public void focusTime() {
        ((JSpinner.DefaultEditor) at.getEditor()).getTextField().requestFocusInWindow();
    }
}
