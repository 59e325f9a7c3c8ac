package baywright.swing.survey;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;

/** A choice of something to add: it shows what it is for, and goes back to that once something was chosen. */
final class PlainChoice extends JComboBox<String> {

    private static final long serialVersionUID = 1L;

    private final String prompt;
    private transient List<Item> items = List.of();
    private boolean offering;

    /**
     * Something that can be chosen.
     *
     * @param id    what is told of it
     * @param words what is shown of it
     */
    record Item(String id, String words) {}

    PlainChoice(String prompt, Consumer<String> chosen) {
        this.prompt = prompt;
        getAccessibleContext().setAccessibleName(prompt);
        addItem(prompt);
        addActionListener(e -> {
            if (!offering && getSelectedIndex() > 0) {
                chosen.accept(items.get(getSelectedIndex() - 1).id());
            }
        });
    }

    /** Offers other things. */
    void offer(List<Item> others) {
        if (items.equals(others) && getSelectedIndex() == 0) {
            return;
        }
        offering = true;
        items = List.copyOf(others);
        removeAllItems();
        addItem(prompt);
        items.forEach(item -> addItem(Plain.text(item.words())));
        setSelectedIndex(0);
        offering = false;
    }

    /** Chooses as a user does. */
    void choose(String id) {
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).id().equals(id)) {
                setSelectedIndex(i + 1);
                return;
            }
        }
        throw new IllegalArgumentException("'" + id + "' is not offered, " + items + " are");
    }
}
